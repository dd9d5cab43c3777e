import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it, vi } from 'vitest';
import { entryOf, entryTable } from '../../../db/entries.ts';
import { isJobEntry } from '../../../src/evidence/entry.ts';
import type { LogEntry } from '../../../src/evidence/log.ts';
import { decodeSamples } from '../../../src/pull/trace.ts';
import { turningPull } from '../../pull/shapes.ts';
import { example, folder, run, start } from '../program.ts';
import { later, loosened, replayedStation, rest } from './replayed-station.ts';

/** The log as another program reads it, while the first still writes. */
function entriesOnDisk(dir: string): LogEntry[] {
  const db = new Database(join(dir, 'example-bay', 'station.db'), { readonly: true, fileMustExist: true });
  try {
    return [...entryTable(db).all()].map((stored) => entryOf(stored, dir)).filter(isJobEntry);
  } finally {
    db.close();
  }
}

describe('a program that is killed in the middle of a pull', () => {
  it('has lost nothing that it acknowledged, asks about the pull, and finishes the job', async () => {
    const dir = folder();
    const longPull = [
      { atMs: 4000, nm: 0 },
      { atMs: 5000, nm: 15 },
      { atMs: 64_000, nm: 20 },
    ];
    const station = replayedStation(
      dir,
      [rest, ...turningPull(1000, 700, 27, 22, 22), ...longPull],
      [0.75, 0.75, 0.75, 0.75],
    );

    const first = start(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
    await first.says('cylinder 1  torque  OK');
    const inPull = () =>
      entriesOnDisk(dir).some(({ event }) => {
        if (event.type !== 'readings' || event.tool !== 'wrench') return false;
        const samples = decodeSamples(event);
        return (
          samples.ok &&
          samples.value.atUs.some((at, i) => at > 4_000_000 && (samples.value.counts[i] ?? 0) > 1000)
        );
      });
    await vi.waitFor(() => expect(inPull()).toBe(true), { timeout: 60_000, interval: 50 });
    const acknowledged = entriesOnDisk(dir);
    first.child.kill('SIGKILL');
    expect((await first.ended).signal).toBe('SIGKILL');

    const kept = entriesOnDisk(dir);
    expect(kept.slice(0, acknowledged.length)).toEqual(acknowledged);
    for (const verdict of first.output().matchAll(/cylinder (\d) {2}torque {2}OK {2}([\d.]+)/g))
      expect(
        kept.some(
          ({ event }) =>
            event.type === 'pull-placed' &&
            event.cylinder === Number(verdict[1]) &&
            event.judgement?.value.toFixed(2) === verdict[2],
        ),
      ).toBe(true);

    const rest2 = [
      rest,
      ...later(loosened, 1500),
      ...[4000, 8000, 12_000].flatMap((at) => turningPull(at, 700, 27, 22, 22)),
    ];
    replayedStation(dir, rest2, []);
    const second = start(['job', '--resume', '--station', station, '--plain']);
    await second.says('broke off in the middle of a pull');
    second.type('b');
    await second.says('answered');
    await second.says('cylinder 4  torque  OK');
    second.type('s');
    const ended = await second.ended;
    expect(ended.stderr).toBe('');
    expect(ended.stdout).toContain('Authentic and complete, but NOT PROVEN.');
    expect(ended.stdout).toContain('REPLAYED');
    expect(ended.code).toBe(1);
    const cut = entriesOnDisk(dir).flatMap(({ event }) =>
      event.type === 'pull-detected' && event.cut !== null ? [event.cut] : [],
    );
    expect(cut).toEqual(['stopped']);
  }, 120_000);

  it('refuses to open the same job again, and says how to go on', async () => {
    const dir = folder();
    const station = replayedStation(dir, [rest, { atMs: 60_000, nm: 0 }], []);
    const first = start(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
    await first.says('wrench  linked');
    first.child.kill('SIGINT');
    const left = await first.ended;
    expect(left).toMatchObject({ code: 5, stderr: '' });
    expect(left.stdout).toContain('--resume');
    const again = await run(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
    expect(again.code).toBe(2);
    expect(again.stderr).toContain('--resume');
    const other = await run(['job', '--resume', 'NOT-THERE', '--station', station, '--plain']);
    expect(other.stderr).toContain('NOT-THERE');
  }, 60_000);
});
