import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What the guest is made of, unpacked in the user's cache: nothing of it is installed on the host. */
export interface Pieces {
  readonly kernel: string;
  readonly initrd: string;
  /** `bin/busybox`, `usr/bin/btvirt`, `usr/libexec/bluetooth/bluetoothd`. */
  readonly tools: string;
  readonly kernelVersion: string;
}

/** Programs of the host that the guest uses too, and the Debian packages that bring them. */
const NEEDED: readonly { readonly package: string; readonly there: () => boolean }[] = [
  { package: 'qemu-system-x86', there: () => runs('qemu-system-x86_64', ['--version']) },
  { package: 'dbus', there: () => runs('dbus-daemon', ['--version']) },
  { package: 'python3-dbus', there: () => runs('/usr/bin/python3', ['-c', 'import dbus']) },
  { package: 'python3-gi', there: () => runs('/usr/bin/python3', ['-c', 'from gi.repository import GLib']) },
  // Unpacked for the guest, but its libraries are the host's.
  { package: 'bluez', there: () => LIBRARIES.every((name) => loadable().includes(name)) },
];

/** What bluetoothd, btmgmt and btmon are linked against beside the C library. */
const LIBRARIES = [
  'libasound.so.2',
  'libdbus-1.so.3',
  'libdw.so.1',
  'libglib-2.0.so.0',
  'libreadline.so.8',
  'libudev.so.1',
];
const loadable = () => output('/sbin/ldconfig', ['-p']);

/** Why the test cannot run on this machine whatever is installed; undefined where it can. */
export function wrongMachine(): string | undefined {
  if (process.arch !== 'x64') return "The guest runs this machine's Node on a kernel for x86-64.";
  if (!runs('apt-get', ['--version']))
    return 'The guest is made of Debian packages, and there is no apt here.';
  return undefined;
}

/** The packages that have to be installed before the test can run; empty when it can. */
export const missingPackages = (): readonly string[] =>
  NEEDED.filter(({ there }) => !there()).map((needed) => needed.package);

const runs = (program: string, args: readonly string[]) =>
  spawnSync(program, args, { stdio: 'ignore' }).status === 0;

/** Modules that the guest needs before it can see the host's files; the rest it loads from there. */
const EARLY = [
  'kernel/drivers/virtio/virtio_pci.ko',
  'kernel/net/9p/9pnet_virtio.ko',
  'kernel/fs/9p/9p.ko',
  'kernel/fs/overlayfs/overlay.ko',
];

const FOLDER = join(process.env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'plugmark', 'bluetooth-test');
const ROOT = join(FOLDER, 'root');

/** The newest kernel's package, as far as apt has heard of one. */
const kernelPackage = () =>
  /Depends: (linux-image-\S+)/.exec(output('apt-cache', ['depends', 'linux-image-amd64']))?.[1];

/** Whether the guest's parts are in the cache or apt knows where to get them. */
export const arePiecesInReach = () => existsSync(ROOT) || kernelPackage() !== undefined;

/** Downloads and unpacks what is not in the cache yet, and makes the first file system from `init`. */
export function preparePieces(init: string): Pieces {
  const root = ROOT;
  if (!existsSync(root)) unpack(FOLDER, root);
  const kernelVersion = only(readdirSync(join(root, 'lib', 'modules')), 'kernel');
  const initrd = join(FOLDER, 'initrd.gz');
  writeFileSync(initrd, initialFiles(root, kernelVersion, init));
  return {
    kernel: join(root, 'boot', `vmlinuz-${kernelVersion}`),
    initrd,
    tools: root,
    kernelVersion,
  };
}

function unpack(folder: string, root: string): void {
  const packages = join(folder, 'packages');
  const part = `${root}.part`;
  for (const made of [packages, part]) {
    rmSync(made, { recursive: true, force: true });
    mkdirSync(made, { recursive: true });
  }
  const kernel = kernelPackage();
  if (kernel === undefined) throw new Error('apt knows no linux-image-amd64; run apt-get update first');
  const wanted = [kernel, 'bluez', 'bluez-test-tools', 'busybox-static'];
  execFileSync('apt-get', ['download', '-qq', ...wanted], {
    cwd: packages,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  for (const file of readdirSync(packages)) execFileSync('dpkg', ['-x', join(packages, file), part]);
  const version = only(readdirSync(join(part, 'lib', 'modules')), 'kernel');
  execFileSync(join(part, 'bin', 'busybox'), ['depmod', '-b', part, version]);
  rmSync(packages, { recursive: true });
  renameSync(part, root);
}

/** What it printed; nothing where it failed. */
const output = (program: string, args: readonly string[]) =>
  spawnSync(program, args, { encoding: 'utf8' }).stdout ?? '';

function only(names: readonly string[], what: string): string {
  const [name] = names;
  if (name === undefined || names.length > 1) throw new Error(`expected one ${what}, found ${names.length}`);
  return name;
}

/** busybox, the early modules in the order in which they load, and `init`. */
function initialFiles(root: string, kernelVersion: string, init: string): Buffer {
  const modules = join(root, 'lib', 'modules', kernelVersion);
  const needs = new Map(
    readFileSync(join(modules, 'modules.dep'), 'utf8')
      .split('\n')
      .map((line) => line.split(':'))
      .map(([name = '', list = '']) => [name, list.trim().split(' ').filter(Boolean)] as const),
  );
  const order: string[] = [];
  const visit = (name: string) => {
    for (const needed of needs.get(name) ?? []) visit(needed);
    if (!order.includes(name)) order.push(name);
  };
  for (const name of EARLY) visit(name);
  const stationFolder = new StationFolder();
  for (const name of ['bin', 'mods', 'proc', 'sys', 'dev']) stationFolder.folder(name);
  stationFolder.console();
  stationFolder.file('bin/busybox', readFileSync(join(root, 'bin', 'busybox')));
  stationFolder.file('init', readFileSync(init));
  order.forEach((name, i) => {
    stationFolder.file(`mods/${String(i).padStart(2, '0')}.ko`, readFileSync(join(modules, name)));
  });
  return gzipSync(stationFolder.end(), { level: 1 });
}

/** A cpio archive in the "newc" form that the kernel unpacks (Documentation/driver-api/early-userspace). */
class StationFolder {
  readonly #parts: Buffer[] = [];
  #inode = 0;

  folder(name: string): void {
    this.#entry(name, 0o040755);
  }

  file(name: string, content: Buffer): void {
    this.#entry(name, 0o100755, content);
  }

  console(): void {
    this.#entry('dev/console', 0o020600, Buffer.alloc(0), [5, 1]);
  }

  end(): Buffer {
    this.#entry('TRAILER!!!', 0);
    return Buffer.concat(this.#parts);
  }

  #entry(
    name: string,
    mode: number,
    content: Uint8Array = Buffer.alloc(0),
    device: readonly [number, number] = [0, 0],
  ): void {
    this.#inode += 1;
    const fields = [this.#inode, mode, 0, 0, 1, 0, content.length, 0, 0, ...device, name.length + 1, 0];
    const head = `070701${fields.map((value) => value.toString(16).padStart(8, '0')).join('')}${name}\0`;
    this.#parts.push(padded(Buffer.from(head, 'ascii')), padded(content));
  }
}

const padded = (bytes: Uint8Array) => Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
