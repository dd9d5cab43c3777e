import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStationLog } from '../../../db/log.ts';
import { consistencyProof, inclusionProof, treeRoot } from '../../../src/evidence/merkle.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import type { Measurement } from '../measurement.ts';

const EVENT: JobEvent = {
  type: 'readings',
  tool: 'wrench',
  first: 1,
  count: 3,
  startUs: 1000,
  times: 'AAAA',
  counts: 'AAAA',
};
const STAMP = { at: '2026-03-02T09:30:00.000Z', monoUs: 1000 };
const BATCH = 100;
const SAMPLES = 200;

/** What an append and a proof cost as the log grows: both must hardly grow with it. */
export const logCost: Measurement = {
  name: 'log-cost',
  what: 'append and proof cost of the station log from 10^3 events on [most=1000000]',
  async run({ number, progress }) {
    const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
    const path = join(folder, 'station.db');
    const log = await openStationLog(path);
    const lines = [
      '    events  append, one on disk  append in a batch      root  inclusion  consistency    file',
    ];
    try {
      const most = number('most', 1_000_000);
      const one = [{ by: 'station', event: EVENT }];
      const batch = Array(BATCH).fill(one[0]);
      for (let target = 1000; target <= most; target *= 10) {
        const before = log.size();
        const filled = timed(() => {
          while (log.size() + SAMPLES < target) {
            log.append('job:A', batch, STAMP);
            progress(log.size() / most, `${log.size()} events`);
          }
        });
        const single = timed(() => {
          for (let i = 0; i < SAMPLES; i++) log.append('job:A', one, STAMP);
        });
        const size = log.size();
        const places = [...Array(SAMPLES).keys()].map((i) => Math.floor((i * size) / SAMPLES));
        const each = (work: (place: number) => unknown) => timed(() => places.forEach(work)) / SAMPLES;
        const cells = [
          micro(single / SAMPLES).padStart(20),
          micro(filled / (size - SAMPLES - before)).padStart(18),
          micro(each(() => treeRoot(log.tree, size))).padStart(9),
          micro(each((place) => inclusionProof(log.tree, place, size))).padStart(10),
          micro(each((place) => consistencyProof(log.tree, place, size))).padStart(12),
          `${(statSync(path).size / (1 << 20)).toFixed(0)} MB`.padStart(7),
        ];
        lines.push(`${String(size).padStart(10)} ${cells.join(' ')}`);
      }
      const checked = timed(() => {
        if (log.check() !== null) throw new Error('the log is not whole');
      });
      lines.push(`whole check of ${log.size()} events: ${(checked / 1000).toFixed(1)} s`);
      return lines;
    } finally {
      log.close();
      rmSync(folder, { recursive: true });
    }
  },
};

function timed(work: () => void): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

const micro = (ms: number) => `${(ms * 1000).toFixed(0)} µs`;
