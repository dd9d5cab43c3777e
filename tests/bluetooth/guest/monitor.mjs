// Runs in the guest: what the kernel's own monitor saw between hci1 and the host, as a witness independent of plugmark.
import { spawn } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

const FILE = '/run/out/hci.btsnoop';
/** A slow guest gives the witness its turn late: the kernel keeps for it what came meanwhile. */
const KEPT_BYTES = 64 << 20;

/** Starts to write down all that passes; the returned function ends it. */
export async function watch(tools) {
  for (const name of ['rmem_max', 'rmem_default'])
    writeFileSync(`/proc/sys/net/core/${name}`, String(KEPT_BYTES));
  const btmon = spawn(`${tools}/usr/bin/btmon`, ['-w', FILE], { stdio: 'ignore' });
  const ended = new Promise((resolve) => btmon.once('close', resolve));
  await new Promise((resolve, reject) => {
    btmon.once('spawn', resolve);
    btmon.once('error', reject);
  });
  return () => {
    btmon.kill('SIGTERM');
    return ended;
  };
}

const EVENT = 3;
const ACL_RECEIVED = 5;
const ATT = 0x0004;
const NOTIFICATION = 0x1b;

/** By the device's address: the counts that hci1 gave to the host, in order, and how many of its links were encrypted. */
export function witnessed() {
  const addresses = new Map();
  const seen = new Map();
  for (const { kind, bytes } of packets(readFileSync(FILE))) {
    const event = kind === EVENT ? bytes[0] : undefined;
    if (event === 0x3e && bytes[2] === 0x01 && bytes[3] === 0) {
      const address = [...bytes.subarray(8, 14)].reverse();
      addresses.set(
        bytes.readUInt16LE(4),
        address.map((octet) => octet.toString(16).padStart(2, '0')).join(':'),
      );
    }
    const handle =
      event === 0x08 ? bytes.readUInt16LE(3) : kind === ACL_RECEIVED && bytes.readUInt16LE(0) & 0xfff;
    const address = addresses.get(handle);
    if (address === undefined) continue;
    const of = seen.get(address) ?? { counts: [], encrypted: 0 };
    seen.set(address, of);
    if (event === 0x08 && bytes[2] === 0 && bytes[5] === 1) of.encrypted += 1;
    // Handle and length, L2CAP length and channel, then the notification: its code, a handle and four bytes of a count.
    if (
      kind === ACL_RECEIVED &&
      bytes.readUInt16LE(6) === ATT &&
      bytes[8] === NOTIFICATION &&
      bytes.length === 15
    )
      of.counts.push(bytes.readInt32LE(11));
  }
  return (address) => seen.get(address) ?? { counts: [], encrypted: 0 };
}

/** The packets of hci1 in a file of btmon's: a head of 16 bytes, then records whose flags hold index and kind. */
function packets(file) {
  const found = [];
  for (let at = 16; at + 24 <= file.length; ) {
    const length = file.readUInt32BE(at + 4);
    if (file.readUInt16BE(at + 8) === 1)
      found.push({ kind: file.readUInt16BE(at + 10), bytes: file.subarray(at + 24, at + 24 + length) });
    at += 24 + length;
  }
  return found;
}
