import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { introduce, visit } from '../../../drivers/bluetooth/survey.ts';
import { TORQUE } from '../../../drivers/imds/numbers.ts';
import { type Bond, bondsIn } from '../../../drivers/radio/bonds.ts';
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';
import { ProblemError } from '../../../src/problem.ts';
import { type Bench, counts, good, onBench, WRENCH, wrench } from '../bench.ts';
import { guarded, listen } from './guarded.ts';

const SECOND_US = 1_000_000;
const SOMEBODY_S: Bond = { key: '11'.repeat(16), diversifier: '2233', random: '44'.repeat(8) };
const ENCRYPTED = { kind: 'bluetooth-le', address: WRENCH.address, encrypted: true, authenticated: false };

let folder: string;
let path: string;
beforeEach(async () => {
  vi.stubEnv('HCI_CHANNEL_USER', '1');
  folder = await mkdtemp(join(tmpdir(), 'bonds-'));
  path = join(folder, 'bonds.json');
});
afterEach(() => {
  vi.unstubAllEnvs();
  return rm(folder, { recursive: true });
});

const onBonds = (body: (bench: Bench) => Promise<void>) => onBench(body, undefined, bondsIn(path));

/** Links to the device for some seconds while it sends, and says what came of it. */
async function worked({ controller, scheduler, ...bench }: Bench, device: PeripheralDefinition) {
  const sender = controller.addPeripheral(device);
  const { tool, ...said } = listen({ scheduler, ...bench });
  const outcome = tool.connect();
  for (let i = 0; i < 20; i++) {
    sender.notify(0x2c0b, counts(TORQUE, i));
    await scheduler.runFor(SECOND_US);
  }
  await scheduler.runUntil(tool.close());
  return { ...said, outcome: await outcome, sender };
}

describe('a tool that pairs and bonds, with an adapter that plugmark has for itself', () => {
  test('hands out a key once, by which every later link is encrypted: it pairs with nobody again', () =>
    onBonds(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(guarded('encryption', 'bonding'));
      const { tool, readings, linked } = listen(bench);
      good(await scheduler.runUntil(tool.connect()));
      for (let i = 1; i <= 3; i++) {
        sender.dropLink(0x08);
        await scheduler.runFor(5 * SECOND_US);
        sender.notify(0x2c0b, counts(TORQUE, i));
        await scheduler.runFor(SECOND_US);
      }
      expect(linked).toEqual([ENCRYPTED, ENCRYPTED, ENCRYPTED, ENCRYPTED]);
      expect(readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []))).toEqual([
        1, 2, 3,
      ]);
      await scheduler.runUntil(tool.close());
      const found = await scheduler.runUntil(visit(bench.radio, WRENCH.address, introduce));
      expect(good(found).link).toEqual(ENCRYPTED);
    }));

  test('is known again by the next run, from a file that is for its owner alone', async () => {
    await onBonds(async (bench) => {
      const { linked } = await worked(bench, guarded('encryption', 'bonding'));
      expect(linked).toEqual([ENCRYPTED]);
    });
    expect(await readdir(folder)).toEqual(['bonds.json']);
    expect((await stat(path)).mode & 0o777).toBe(0o600);
    const first = bondsIn(path).get(WRENCH.address);
    expect(first?.key).toMatch(/^[0-9a-f]{32}$/);
    expect(bondsIn(path).get('c0:00:00:00:00:99')).toBeUndefined();
  });

  test('a stranger in its place that does not know the key is refused, whatever serial number it bears', async () => {
    good(bondsIn(path).keep(WRENCH.address, SOMEBODY_S));
    await onBonds(async (bench) => {
      const { linked, readings, reasons } = await worked(bench, guarded('encryption', 'bonding'));
      expect(linked).toEqual([]);
      expect(readings).toEqual([]);
      expect(reasons.length).toBeGreaterThan(0);
      for (const reason of reasons) expect(reason).toMatch(/does not have the pairing key/);
    });
    expect(bondsIn(path).get(WRENCH.address)).toEqual(SOMEBODY_S);
  });

  test('a stranger that leaves the encryption out is refused', async () => {
    good(bondsIn(path).keep(WRENCH.address, SOMEBODY_S));
    await onBonds(async (bench) => {
      const { linked, readings, outcome } = await worked(bench, wrench());
      expect(linked).toEqual([]);
      expect(readings).toEqual([]);
      expect(outcome).toMatchObject({
        ok: false,
        error: { code: 'tool-not-encrypted', where: WRENCH.address },
      });
    });
  });

  test('with another serial number than the adopted one leaves no key behind', async () => {
    const device = guarded('encryption', 'bonding');
    const other = {
      ...device,
      services: device.services.map((service) => ({
        ...service,
        characteristics: service.characteristics.map((one) =>
          one.uuid === 0x2a25 ? { ...one, value: Buffer.from('W-2') } : one,
        ),
      })),
    };
    await onBonds(async (bench) => {
      const { linked, reasons } = await worked(bench, other);
      expect(linked).toEqual([]);
      expect(reasons[0]).toMatch(/has serial number W-2/);
    });
    expect(await readdir(folder)).toEqual([]);
  });

  test('a key that is sent in the clear, while the pairing goes on, is not kept', () =>
    onBonds(async (bench) => {
      const { controller, scheduler, socket } = bench;
      controller.addPeripheral(guarded('encryption', 'just-works'));
      const { tool, linked } = listen(bench);
      const write = socket.write.bind(socket);
      let slipped = 0;
      socket.write = (packet) => {
        write(packet);
        if (packet[0] !== 0x02 || packet.readUInt16LE(7) !== 0x0006 || packet[9] !== 0x01) return;
        for (const command of [Buffer.alloc(17, 0x06), Buffer.alloc(11, 0x07)]) {
          const head = Buffer.from([0x02, 0x40, 0x20, command.length + 4, 0, command.length, 0, 0x06, 0]);
          socket.emit('data', Buffer.concat([head, command]));
          slipped += 1;
        }
      };
      good(await scheduler.runUntil(tool.connect()));
      expect(linked).toEqual([ENCRYPTED]);
      expect(slipped).toBe(2);
      expect(await readdir(folder)).toEqual([]);
      await scheduler.runUntil(tool.close());
    }));

  test('beside a kernel that may pair too, no bond is asked for', async () => {
    vi.unstubAllEnvs();
    await onBonds(async (bench) => {
      const { linked } = await worked(bench, guarded('encryption', 'bonding'));
      expect(linked).toEqual([ENCRYPTED]);
    });
    expect(await readdir(folder)).toEqual([]);
  });

  test('a key that cannot be written down keeps the tool from being used, and it is said why', async () => {
    const bonds = bondsIn(path);
    await rm(folder, { recursive: true });
    await onBench(
      async (bench) => {
        const { linked, reasons } = await worked(bench, guarded('encryption', 'bonding'));
        expect(linked).toEqual([]);
        expect(reasons[0]).toMatch(/cannot be saved: ENOENT/);
      },
      undefined,
      bonds,
    );
    folder = await mkdtemp(join(tmpdir(), 'bonds-'));
  });
});

test.each([
  ['is no JSON', '{'],
  ['has another form', '{"form":"plugmark/bonds/9","bonds":{}}'],
  [
    'holds a key of another length',
    '{"form":"plugmark/bonds/1","bonds":{"a":{"key":"11","diversifier":"2233","random":"00"}}}',
  ],
])('a file of bonds that %s is named and not written over', async (_name, text) => {
  await writeFile(path, text);
  expect(() => bondsIn(path)).toThrow(ProblemError);
  expect(await readFile(path, 'utf8')).toBe(text);
});
