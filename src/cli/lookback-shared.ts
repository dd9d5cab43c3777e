/** What the commands on look-backs share: finding one, telling of it, writing its papers, and what a person gives. */
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { JudgedAgain } from '../audit/lookback.ts';
import { type LookBack, lookBacksOf } from '../audit/lookback-state.ts';
import { readCheckpoint } from '../evidence/checkpoint.ts';
import type { Stamp } from '../evidence/log.ts';
import { ProblemError } from '../problem.ts';
import { lookBackPaper, outcomeOf, SORT_WORD, standOf } from '../report/lookback.ts';
import { judgedAgainCsv, vehiclesCsv } from '../report/lookback-csv.ts';
import { writePaper } from '../report/paper.ts';
import { orThrow } from '../result.ts';
import { safeLine } from './exit.ts';
import { newCheckpoint } from './log.ts';
import { optionText } from './option-text.ts';
import { writeWhole } from './papers.ts';
import type { Archive } from './station.ts';
import { textTable } from './text-table.ts';
import { programVersion } from './version.ts';

/** A look-back with its jobs, as lines for people. */
export function linesOf(one: LookBack): readonly string[] {
  const { assessment, made, items } = one;
  const { word, text } = outcomeOf(one);
  const head = ['job', 'day', 'VIN', 'plate', 'fleet', 'worst', 'proofs', 'decided'];
  const rows = items.map((item) => [
    item.job,
    item.on,
    item.vin ?? '-',
    item.plate ?? '-',
    item.fleet ?? '-',
    SORT_WORD[item.sort],
    String(item.attempts.length),
    standOf(item),
  ]);
  return [
    `Look-back ${assessment} on ${safeLine(made.tool)} (${safeLine(made.serial)}), ${made.from} to ${made.to}, ${made.attempts} attempts`,
    `${word}. ${safeLine(text)}${made.simulated ? ' SIMULATED tools among them.' : ''}`,
    ...(rows.length === 0 ? [] : ['', ...textTable(head, rows)]),
  ];
}

/** Problem: `lookback-unknown`. */
export function lookBackOf({ log }: Archive, assessment: string): LookBack {
  const all = lookBacksOf(log.stationEntries());
  const found = all.find((one) => one.assessment === assessment);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'lookback-unknown',
    where: safeLine(assessment),
    message: 'this station has no look-back of that number',
    next: 'List them with "plugmark lookback list".',
  });
}

/** Writes the paper and the lists of a look-back as it stands now; returns a line a file. */
export async function writeLookBack(
  archive: Archive,
  assessment: string,
  out: string | undefined,
  judged: readonly JudgedAgain[] | null,
): Promise<readonly string[]> {
  const folder = out ?? archive.folder;
  await mkdir(folder, { recursive: true });
  const note = orThrow(readCheckpoint(await newCheckpoint(archive), 'checkpoint'));
  const one = lookBackOf(archive, assessment);
  const log = { size: note.size, root: note.root.toString('hex') };
  const paper = lookBackPaper(one, { log, program: `plugmark ${programVersion()}` });
  const files: (readonly [string, string | Uint8Array])[] = [
    [`${assessment}.pdf`, await writePaper(paper)],
    [`${assessment}.vehicles.csv`, vehiclesCsv(one)],
    ...(judged === null ? [] : [[`${assessment}.attempts.csv`, judgedAgainCsv(judged)] as const]),
  ];
  for (const [name, content] of files) await writeWhole(join(folder, name), content);
  return files.map(([name]) => `  ${join(folder, name)}`);
}

export const person = (name: string) => optionText(name, '--by', 80);
export const words = (text: string, where: string) => optionText(text, where, 200);

export const print = (lines: readonly string[]) => process.stdout.write(`${lines.join('\n')}\n`);
export const now = (): Stamp => ({
  at: new Date().toISOString(),
  monoUs: Number(process.hrtime.bigint() / 1000n),
});
