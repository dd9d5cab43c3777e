import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bluetoothProfile } from '../../../drivers/profile/file.ts';
import { AIR } from '../../../drivers/radio/air.ts';
import { CATALOGUE } from '../../../sim/devices/catalogue.ts';
import { realScheduler } from '../../../sim/scheduler.ts';
import { airOn } from '../../../sim/serve/air.ts';
import { onAir } from '../../../sim/serve/on-air.ts';
import { pseudoTerminal } from '../../../src/cli/bench/pseudo-terminal.ts';
import { good } from '../../drivers/bench.ts';
import { NO_LINE } from '../../drivers/serial/lines.ts';
import { taughtLive } from '../../drivers/teach/live.ts';

// A device at the bench is taught while somebody pulls and reads its display. Every device of the catalogue: npm run bench -- teach

const ADDRESS = 'c2:00:00:00:00:41';
const PRESENTED = { address: ADDRESS, name: 'invented', serial: 'D-1' };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'teach-'));
});
afterEach(() => {
  delete process.env[AIR];
  rmSync(folder, { recursive: true });
});

describe('a device at the bench', () => {
  it('on Bluetooth is taught with four figures, and asked for what separates', async () => {
    const scheduler = realScheduler();
    const path = join(folder, 'air');
    const air = await airOn(path, scheduler);
    process.env[AIR] = path;
    const profile = good(bluetoothProfile(CATALOGUE['sign and magnitude'], 'catalogue'));
    const port = onAir(air.controller, profile, PRESENTED);
    const { taught, figures, said } = await taughtLive({
      profile,
      port,
      scheduler,
      options: { from: ADDRESS, restMs: 1_000 },
    });
    await air.close();
    expect(taught, JSON.stringify([taught, said], null, 1)).toMatchObject({
      outcome: 'taught',
      profile: {
        link: {
          kind: 'bluetooth-le',
          service: profile.link.service,
          characteristic: profile.link.characteristic,
        },
        taught: { unit: 'N·m', step: '0.01', proof: 30.55 },
      },
    });
    expect(figures).toHaveLength(4);
    expect(said.join('\n')).toMatch(/against the tightening direction/);
  }, 60_000);

  it.skipIf(NO_LINE !== null)(
    'on a serial port is taught as well',
    async () => {
      const path = join(folder, 'line');
      const port = pseudoTerminal(path);
      await port.plug();
      const { taught, said } = await taughtLive({
        profile: CATALOGUE['lines of text'],
        port,
        scheduler: realScheduler(),
        options: { from: path, restMs: 1_000 },
      });
      port.close();
      expect(taught, JSON.stringify([taught, said], null, 1)).toMatchObject({
        outcome: 'taught',
        profile: { link: { kind: 'serial', baud: 9_600 }, frames: { by: 'delimiter', hex: '0d0a' } },
      });
    },
    60_000,
  );

  it.skipIf(NO_LINE !== null)(
    'that says nothing by itself is told from one that cannot be described',
    async () => {
      const path = join(folder, 'line');
      const port = pseudoTerminal(path);
      await port.plug();
      const { taught } = await taughtLive({
        profile: CATALOGUE['lines of text'],
        port: { ...port, send: () => {} },
        scheduler: realScheduler(),
        options: { from: path, restMs: 300 },
      });
      port.close();
      expect(taught).toMatchObject({ outcome: 'failed', why: expect.stringMatching(/sent nothing/) });
    },
    60_000,
  );
});
