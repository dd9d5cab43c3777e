import { createCipheriv } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { valueScaling } from '../../drivers/profile/decoder.ts';
import { bluetoothProfile } from '../../drivers/profile/file.ts';
import { framerOf } from '../../drivers/profile/framer.ts';
import type { Profile } from '../../drivers/profile/schema.ts';
import { AIR } from '../../drivers/radio/air.ts';
import { CATALOGUE, type DeviceName } from '../../sim/devices/catalogue.ts';
import { Sender } from '../../sim/devices/device.ts';
import { realScheduler } from '../../sim/scheduler.ts';
import { airOn } from '../../sim/serve/air.ts';
import { onAir } from '../../sim/serve/on-air.ts';
import type { Port } from '../../sim/serve/player.ts';
import { pseudoTerminal } from '../../src/cli/bench/pseudo-terminal.ts';
import { scaled } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { taughtLive } from '../drivers/teach/live.ts';
import type { Measurement } from './measurement.ts';

const ADDRESS = 'c2:00:00:00:00:41';
const CHECKED_NM = [0, 0.5, 3.33, -2.5, 12.05, 27.41, 44.4, -38.9, 55];

/** Devices that cannot be described: what is sent in place of each packet. */
const UNDESCRIBABLE: Readonly<Record<string, (packet: Uint8Array, n: number) => Uint8Array>> = {
  'encrypts what it sends': (packet, n) => {
    const iv = Buffer.alloc(16);
    iv.writeUInt32BE(n);
    return createCipheriv('aes-128-ctr', Buffer.alloc(16, 7), iv).update(packet);
  },
  'sends the square of its torque': (packet) => {
    const bytes = Buffer.from(packet);
    const nm = bytes.readInt16LE(1) / 100;
    bytes.writeInt16LE(Math.round(Math.sign(nm) * nm * nm * 10), 1);
    return bytes;
  },
  'has a byte that nothing explains': (packet, n) => Buffer.concat([packet, Buffer.of((n * n * 7) % 251)]),
};

/** Every invented device taught live: over a virtual controller and noble, and those that stream over pseudo-terminals too. */
export const teachLive: Measurement = {
  name: 'teach',
  what: 'every invented device taught live by a person who pulls as asked: known figures, seconds, outcome; takes 6 minutes',
  run: async ({ progress }) => {
    const folder = mkdtempSync(join(tmpdir(), 'teach-'));
    const rows: string[] = [];
    let wrongly = 0;
    const names = Object.keys(CATALOGUE) as DeviceName[];
    const lines = names.filter((name) => CATALOGUE[name].frames.by !== 'packet');
    const all = names.length + lines.length + Object.keys(UNDESCRIBABLE).length;
    const row = (
      name: string,
      way: string,
      made: Awaited<ReturnType<typeof taughtLive>>,
      profile: Profile,
    ) => {
      const { taught, figures, seconds } = made;
      const error = taught.outcome === 'taught' ? worstOf(profile, taught.profile) : null;
      if (error !== null && error > 0.06) wrongly += 1;
      const outcome = error === null ? taught.outcome : `taught, ${error.toFixed(3)} N·m off at most`;
      rows.push(
        `${name.padEnd(34)} ${way.padEnd(10)} ${String(figures.length).padStart(2)} figures ${seconds.toFixed(0).padStart(4)} s  ${outcome}`,
      );
      if ('why' in taught) rows.push(`    ${taught.why}`);
      progress(rows.filter((text) => !text.startsWith(' ')).length / all, name);
    };
    for (const name of names) row(name, 'Bluetooth', await overAir(folder, CATALOGUE[name]), CATALOGUE[name]);
    for (const name of lines) row(name, 'serial', await overLine(folder, CATALOGUE[name]), CATALOGUE[name]);
    for (const [name, change] of Object.entries(UNDESCRIBABLE))
      row(
        name,
        'Bluetooth',
        await overAir(folder, CATALOGUE['negative scale'], change),
        CATALOGUE['negative scale'],
      );
    rmSync(folder, { recursive: true });
    return [...rows, '', `taught wrongly: ${wrongly}`];
  },
};

async function overAir(
  folder: string,
  profile: Profile,
  change?: (packet: Uint8Array, n: number) => Uint8Array,
) {
  const scheduler = realScheduler();
  const path = join(folder, 'air');
  const air = await airOn(path, scheduler);
  process.env[AIR] = path;
  try {
    const described = orThrow(bluetoothProfile(profile, 'catalogue'));
    const device = onAir(air.controller, described, { address: ADDRESS, name: 'invented', serial: 'D-1' });
    let packets = 0;
    const port: Port =
      change === undefined ? device : { ...device, send: (bytes) => device.send(change(bytes, packets++)) };
    return await taughtLive({ profile, port, scheduler, options: { from: ADDRESS, restMs: 2_000 } });
  } finally {
    delete process.env[AIR];
    await air.close();
  }
}

async function overLine(folder: string, profile: Profile) {
  const path = join(folder, 'line');
  const port = pseudoTerminal(path);
  await port.plug();
  try {
    return await taughtLive({
      profile,
      port,
      scheduler: realScheduler(),
      options: { from: path, restMs: 2_000 },
    });
  } finally {
    port.close();
  }
}

/** How far the taught profile is off at most, in N·m, where the device sends these torques; infinite where it reads nothing. */
function worstOf(device: Profile, taught: Profile): number {
  const { exponent } = valueScaling(taught.layout);
  const sender = new Sender(device);
  const samples = device.layout.fields.some(({ is }) => is === 'samples') ? 4 : 1;
  let worst = 0;
  let read = 0;
  for (const nm of CHECKED_NM) {
    const values: number[] = [];
    const framer = framerOf(taught, { openedUs: 0, fromStart: true });
    framer.push(sender.frame(Array.from({ length: samples }, () => ({ si: nm }))), 0, ({ frame }) => {
      for (const counts of frame?.counts ?? []) values.push(scaled(counts ?? Number.NaN, exponent));
    });
    // Bytes that the lesson did not show are raw, and no reading.
    read += values.length;
    for (const value of values) worst = Math.max(worst, Math.abs(value - nm));
  }
  return read === 0 ? Number.POSITIVE_INFINITY : worst;
}
