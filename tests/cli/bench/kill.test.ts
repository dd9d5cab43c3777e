import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { entryOf, entryTable } from '../../../db/entries.ts';
import { recorder } from '../../../drivers/replay/recorder.ts';
import { isJobEntry } from '../../../src/evidence/entry.ts';
import type { LogEntry } from '../../../src/evidence/log.ts';
import { decodeSamples } from '../../../src/pull/trace.ts';
import { GAUGE, WRENCH } from '../../job/workshop.ts';
import { type Corner, drawn, turningPull } from '../../pull/shapes.ts';
import { example, exampleJson, folder, run, start } from '../program.ts';

/** As recorded: at any other speed the samples would carry times that cannot be true, and the record would say so. */
const SPEED = 1;

/** A station whose tools are recordings: the wrench draws the corners, the gauge measures the gaps. */
function stationOf(dir: string, corners: readonly Corner[], gapsMm: readonly number[]): string {
  const lines: string[] = [];
  const wrench = recorder(
    { form: 'plugmark/readings/1', tool: 'wrench', timing: { stamps: 'arrival' }, description: WRENCH },
    (line) => lines.push(line),
  );
  for (const [i, { atUs, nm }] of drawn(corners).entries())
    wrench.add({ kind: 'value', n: i + 1, atUs, counts: Math.round(nm * 100) });
  wrench.end();
  writeFileSync(join(dir, 'wrench.ndjson'), lines.splice(0).join(''));
  const gauge = recorder(
    { form: 'plugmark/readings/1', tool: 'gauge', timing: { stamps: 'arrival' }, description: GAUGE },
    (line) => lines.push(line),
  );
  for (const [i, mm] of gapsMm.entries())
    gauge.add({ kind: 'value', n: i + 1, atUs: (i + 1) * 200_000, counts: Math.round(mm * 10_000) });
  gauge.end();
  writeFileSync(join(dir, 'gauge.ndjson'), lines.join(''));
  const file = exampleJson('station.json');
  const tools = file.tools.map((tool: { id: string }) => ({
    ...tool,
    driver: { use: 'replay', file: `${tool.id}.ndjson`, speed: SPEED },
  }));
  writeFileSync(join(dir, 'station.json'), JSON.stringify({ ...file, routine: 'none', tools }));
  return join(dir, 'station.json');
}

/** The log as another program reads it, while the first still writes. */
function entriesOnDisk(dir: string): LogEntry[] {
  const db = new Database(join(dir, 'example-bay', 'station.db'), { readonly: true, fileMustExist: true });
  try {
    return [...entryTable(db).all()].map((stored) => entryOf(stored, dir)).filter(isJobEntry);
  } finally {
    db.close();
  }
}

const later = (corners: readonly Corner[], byMs: number) =>
  corners.map(({ atMs, nm }) => ({ atMs: atMs + byMs, nm }));
const rest = { atMs: 0, nm: 0 };
const loosened: Corner[] = [
  { atMs: 0, nm: 0 },
  { atMs: 150, nm: -16 },
  { atMs: 500, nm: 0 },
  { atMs: 1200, nm: 0 },
];

describe('a program that is killed in the middle of a pull', () => {
  it('has lost nothing that it acknowledged, asks about the pull, and finishes the job', async () => {
    const dir = folder();
    const longPull = [
      { atMs: 4000, nm: 0 },
      { atMs: 5000, nm: 15 },
      { atMs: 64_000, nm: 20 },
    ];
    const station = stationOf(
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
    while (!inPull()) await new Promise((resolve) => setTimeout(resolve, 50));
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
    stationOf(dir, rest2, []);
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
  }, 60_000);

  it('refuses to open the same job again, and says how to go on', async () => {
    const dir = folder();
    const station = stationOf(dir, [rest, { atMs: 60_000, nm: 0 }], []);
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
  }, 30_000);
});
