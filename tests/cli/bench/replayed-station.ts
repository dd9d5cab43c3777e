import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { recorder } from '../../../drivers/replay/recorder.ts';
import { GAUGE, WRENCH } from '../../job/workshop.ts';
import { type Corner, drawn } from '../../pull/shapes.ts';
import { exampleJson } from '../program.ts';

/** As recorded: at any other speed the samples would carry times that cannot be true, and the record would say so. */
const SPEED = 1;

/** A station whose tools are recordings: the wrench draws the corners, the gauge measures the gaps. */
export function replayedStation(
  dir: string,
  corners: readonly Corner[],
  gapsMm: readonly number[],
  more: object = {},
): string {
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
  writeFileSync(join(dir, 'station.json'), JSON.stringify({ ...file, routine: 'none', tools, ...more }));
  return join(dir, 'station.json');
}

export const later = (corners: readonly Corner[], byMs: number) =>
  corners.map(({ atMs, nm }) => ({ atMs: atMs + byMs, nm }));
export const rest = { atMs: 0, nm: 0 };
export const loosened: Corner[] = [
  { atMs: 0, nm: 0 },
  { atMs: 150, nm: -16 },
  { atMs: 500, nm: 0 },
  { atMs: 1200, nm: 0 },
];
