/** Whether tools can be reached over Bluetooth: software, kernel, adapter, rights. */

import { readdirSync, readFileSync, realpathSync } from 'node:fs';
import type { Problem } from '../../../problem.ts';
import { w } from '../../../words/catalogue.ts';
import { type Finding, fromProblem, good } from './finding.ts';

/** What was found on this machine. */
export interface RadioFacts {
  /** What keeps a Bluetooth socket from being opened. */
  readonly socket: Problem | null;
  readonly linux: boolean;
  readonly adapters: readonly string[];
  /** Switched off by rfkill, by hand or by a key. */
  readonly blocked: boolean;
  /** Both rights that raw Bluetooth needs; null where the system does not say. */
  readonly permitted: boolean | null;
  /** The program that would need the rights. */
  readonly node: string;
}

/** Bits of the capability sets, as in linux/capability.h. */
const CAP_NET_ADMIN = 12n;
const CAP_NET_RAW = 13n;

/** Without a tool on the radio, a missing Bluetooth is only worth knowing. */
export function radioFindings(facts: RadioFacts, radioTools: readonly string[]): readonly Finding[] {
  const name = w`bluetooth`;
  const state = radioTools.length > 0 ? 'bad' : 'warning';
  if (facts.socket !== null) return [fromProblem(name, facts.socket, state)];
  if (!facts.linux)
    return [good(name, w`its software loads; adapter and rights are checked when a tool connects`)];
  const { adapters, blocked, permitted, node } = facts;
  if (adapters.length === 0) {
    const next = w`Plug one in; "bluetoothctl list" shows them.`;
    return [{ name, state, text: w`no Bluetooth adapter found`, next }];
  }
  const text = w`adapter ${adapters.join(', ')}`;
  const adapter: Finding = blocked
    ? { name, state, text: w`${text}, switched off`, next: w`Switch it on: rfkill unblock bluetooth` }
    : good(name, text);
  const rights: Finding =
    permitted === false
      ? {
          name: w`rights`,
          state,
          text: w`this user may not use the adapter`,
          next: rightsFor(node),
        }
      : good(w`rights`, permitted === null ? w`not known here` : w`Bluetooth may be used directly`);
  return [adapter, rights];
}

/** The Debian package gives the right to a Node that the members of a group can start (tests/install/debian/postinst). */
const PACKAGED_NODE = '/usr/lib/plugmark/node';

const rightsFor = (node: string) =>
  node === PACKAGED_NODE
    ? w`Add this user to the group plugmark, and log in again: sudo adduser "$USER" plugmark`
    : w`Allow the node program to use it: sudo setcap cap_net_raw,cap_net_admin+eip ${quoted(node)}`;

export async function radioFacts(): Promise<RadioFacts> {
  const { probeSocket } = await import('../../../../drivers/radio/probe.ts');
  return {
    socket: probeSocket(),
    linux: process.platform === 'linux',
    adapters: entriesOf('/sys/class/bluetooth').filter((name) => /^hci\d+$/.test(name)),
    blocked: isBlocked('/sys/class/rfkill'),
    permitted: permittedBy(textOf('/proc/self/status')),
    node: realpathSync(process.execPath),
  };
}

/** From /proc/self/status: what the kernel lets this very process do, whatever gave it the right. */
export function permittedBy(status: string): boolean | null {
  const effective = /^CapEff:\s*([0-9a-f]+)$/m.exec(status)?.[1];
  if (effective === undefined) return null;
  const bits = BigInt(`0x${effective}`);
  return [CAP_NET_ADMIN, CAP_NET_RAW].every((bit) => ((bits >> bit) & 1n) === 1n);
}

/** All Bluetooth switches of rfkill stand on off. */
export function isBlocked(folder: string): boolean {
  const switches = entriesOf(folder).filter(
    (name) => textOf(`${folder}/${name}/type`).trim() === 'bluetooth',
  );
  const off = (name: string) =>
    ['soft', 'hard'].some((kind) => textOf(`${folder}/${name}/${kind}`).trim() === '1');
  return switches.length > 0 && switches.every(off);
}

/** For a shell: as it stands where that is safe, else in single quotes. */
const quoted = (path: string) => (/^[\w./+-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`);

function entriesOf(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return []; // The kernel knows nothing of the kind.
  }
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
