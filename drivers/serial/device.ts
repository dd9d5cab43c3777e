import { readFile, realpath, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** What stands behind the name of a port. A name says nothing: anybody who may write the folder may put something else there. */
export type PortDevice =
  /** No device that takes and gives characters. */
  | { readonly kind: 'none' }
  /** A pseudo-terminal: at the other end is a program, and no instrument. */
  | { readonly kind: 'pseudo-terminal' }
  /** `identity`: vendor, product and serial number of a USB device; undefined where it has none, or nobody can tell. */
  | { readonly kind: 'port'; readonly identity?: string };

export interface Devices {
  readonly look: (path: string) => Promise<{ readonly rdev: number; isCharacterDevice(): boolean }>;
  /** Where the system says what its devices are. */
  readonly sys: string;
}

const HERE: Devices = { look: stat, sys: '/sys' };

/** Major numbers of pseudo-terminals on Linux, old and new. */
const PSEUDO: ReadonlySet<number> = new Set([2, 3, 136, 137, 138, 139, 140, 141, 142, 143]);

export async function deviceAt(
  path: string,
  platform: NodeJS.Platform = process.platform,
  { look, sys }: Devices = HERE,
): Promise<PortDevice> {
  if (platform === 'win32') return { kind: 'port' }; // names of ports are no files there
  const device = await look(path);
  if (!device.isCharacterDevice()) return { kind: 'none' };
  if (platform !== 'linux')
    return { kind: /^\/dev\/ttys\d+$/.test(await realpath(path)) ? 'pseudo-terminal' : 'port' };
  const major = (device.rdev >>> 8) & 0xfff;
  const minor = (device.rdev & 0xff) | ((device.rdev >>> 12) & 0xfff00);
  if (PSEUDO.has(major)) return { kind: 'pseudo-terminal' };
  const identity = await usbAbove(join(sys, 'dev', 'char', `${major}:${minor}`, 'device'));
  return { kind: 'port', ...(identity !== undefined && { identity }) };
}

/** The USB device that the port belongs to: one of the folders above it. */
async function usbAbove(link: string): Promise<string | undefined> {
  let folder = await realpath(link).catch(() => '/');
  for (; folder !== dirname(folder); folder = dirname(folder)) {
    const textOf = (name: string) =>
      readFile(join(folder, name), 'utf8').then(
        (text) => text.trim(),
        () => undefined,
      );
    const vendor = await textOf('idVendor');
    if (vendor !== undefined)
      return [vendor, await textOf('idProduct'), await textOf('serial')]
        .filter((part) => part !== undefined)
        .join(':');
  }
  return undefined;
}
