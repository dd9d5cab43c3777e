import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stamp } from '../../../src/cli/station/clock.ts';
import { newCheckpoint } from '../../../src/cli/station/sign-log.ts';
import { openStation, stateOf } from '../../../src/cli/station/station.ts';
import type { Measurement } from '../measurement.ts';

const LATER = 50;

/** What a signature costs a station that has sealed many records: the first one of a run looks through their folder. */
export const signCost: Measurement = {
  name: 'sign-cost',
  what: 'a checkpoint signed beside that many records in the folder [most=20000]',
  async run({ number, progress }) {
    const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
    const lines = ['   records   first of a run   each one later'];
    try {
      const most = number('most', 20_000);
      let there = 0;
      for (const target of [0, Math.ceil(most / 10), most]) {
        for (; there < target; there++) {
          writeFileSync(join(folder, `J-${there}.record.json`), '{}');
          if (there % 1000 === 0) progress(there / most, `${there} records`);
        }
        const station = await openStation('bench', folder, stamp);
        try {
          const signer = { state: stateOf(station), key: station.key };
          const first = await timed(() => newCheckpoint(station, signer));
          const later = await timed(async () => {
            for (let i = 0; i < LATER; i++) await newCheckpoint(station, signer);
          });
          lines.push(
            `${String(target).padStart(10)} ${millis(first).padStart(16)} ${millis(later / LATER).padStart(16)}`,
          );
        } finally {
          station.log.close();
        }
      }
      return lines;
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};

async function timed(work: () => Promise<unknown>): Promise<number> {
  const before = performance.now();
  await work();
  return performance.now() - before;
}

const millis = (ms: number) => `${ms.toFixed(1)} ms`;
