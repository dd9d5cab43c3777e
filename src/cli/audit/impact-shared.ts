/** What the commands on look-backs share: the log's own entries, telling of a look-back, its papers, and what a person gives. */
import { join } from 'node:path';
import type { Sorted } from '../../audit/impact-items.ts';
import { type LookBack, lookBacksOf } from '../../audit/impact-state.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import type { Stamp, StationEntry } from '../../evidence/log.ts';
import { stationOf } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { figure, UNIT_TEXT } from '../../report/figures.ts';
import { lookBackPaper, outcomeOf, proofWords, SORT_WORD, sortWords, standOf } from '../../report/impact.ts';
import { judgedAgainCsv, vehiclesCsv } from '../../report/impact-csv.ts';
import { writePaper } from '../../report/paper.ts';
import { orThrow } from '../../result.ts';
import { programVersion } from '../help/version.ts';
import { newCheckpoint, type Signer, signerOf } from '../station/log.ts';
import { type Whose, withArchive } from '../station/scope.ts';
import { type Archive, stateOf } from '../station/station.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { textTable } from '../terminal/text-table.ts';

/** A station at its look-backs: its own entries, which a long-lived station has many of, are read once a command. */
export interface Desk {
  readonly archive: Archive;
  readonly entries: readonly StationEntry[];
  readonly lookBacks: readonly LookBack[];
}

const deskWith = (archive: Archive, entries: readonly StationEntry[]): Desk => ({
  archive,
  entries,
  lookBacks: lookBacksOf(entries),
});

export function atDesk(whose: Whose, work: (desk: Desk) => ExitCode | Promise<ExitCode>): Promise<ExitCode> {
  return withArchive(whose, (archive) => work(deskWith(archive, archive.log.stationEntries())));
}

/** To be asked for before anything is written: what nobody can sign is not to stand in the log. */
export function deskSigner({ archive, entries }: Desk): Promise<Signer> {
  return signerOf(archive, stationOf(entries) ?? stateOf(archive));
}

/** Puts events of look-backs into the log, of which no trust list tells; the desk as it is then. */
export function record({ archive, entries }: Desk, events: readonly StationEvent[], by: string): Desk {
  const drafts = events.map((event) => ({ by, event }));
  return deskWith(archive, [...entries, ...archive.log.appendStation(drafts, now())]);
}

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
    proofWords(made),
    ...beyondLine(one),
    ...(rows.length === 0 ? [] : ['', ...textTable(head, rows), '', OUT_IS, ...proofTable(one)]),
  ];
}

const OUT_IS =
  'OUT: beyond the limits if the tool had the found error already then; "with both": the value of then was beyond them too.';

/** Each proof that does not hold any more, with both values. */
function proofTable({ items }: LookBack): readonly string[] {
  const head = ['job', 'cylinder', 'pull or reading', 'then', 'with the error found', 'limits', 'finding'];
  const rows = items.flatMap(({ job, attempts }) =>
    attempts.map((one) => {
      const unit = one.quantity === 'torque' ? 'N.m' : 'mm';
      return [
        job,
        String(one.cylinder),
        `${one.quantity === 'torque' ? 'pull' : 'gap reading'} ${one.number}`,
        one.was === null ? 'not judged' : figure(one.was, unit),
        `${figure(one.value, unit)} ± ${figure(one.expanded, unit)}`,
        `${figure(one.lowerLimit, unit)} to ${figure(one.upperLimit, unit)} ${UNIT_TEXT[unit]}`,
        sortWords(one),
      ];
    }),
  );
  return textTable(head, rows);
}

/** Else a look-back with points too few to tell looks like one of a tool that was far out. */
function beyondLine({ asFound, items }: LookBack): readonly string[] {
  const beyond = items.flatMap(({ attempts }) => attempts).filter(({ covered }) => !covered).length;
  if (beyond === 0 || asFound === null) return [];
  const { unit, points } = asFound;
  const readings = points.map(({ reading }) => reading);
  const [from, to] = [Math.min(...readings), Math.max(...readings)].map((reading) => figure(reading, unit));
  return [
    `${beyond} of the doubtful ones were read beyond the points that the laboratory looked at, ${from} to ${to} ${UNIT_TEXT[unit]}: nobody knows the error there.`,
  ];
}

/** By its number, of which the figures do: `LB-1`, `lb-1` or `1`. Problem: `lookback-unknown`. */
export function lookBackOf({ lookBacks }: Desk, assessment: string): LookBack {
  const figures = /^(?:lb-?)?(\d+)$/i.exec(assessment.trim())?.[1];
  const found = lookBacks.find((one) => one.assessment === `LB-${figures}`);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'lookback-unknown',
    where: safeLine(assessment),
    message: 'this station has no look-back of that number',
    next: 'List them with "plugmark lookback list".',
  });
}

/** Writes the paper and the lists of a look-back as it stands; returns a line a file. */
export async function writeLookBack(
  { archive }: Desk,
  signer: Signer,
  one: LookBack,
  out: string | undefined,
  sorted: readonly Sorted[] | null,
): Promise<readonly string[]> {
  const folder = out ?? archive.folder;
  outputFolder(folder);
  const note = orThrow(readCheckpoint(await newCheckpoint(archive, signer), 'checkpoint'));
  const log = { size: note.size, root: note.root.toString('hex') };
  const paper = lookBackPaper(one, { log, program: `plugmark ${programVersion()}` });
  const { assessment } = one;
  const files: (readonly [string, string | Uint8Array])[] = [
    [`${assessment}.pdf`, await writePaper(paper)],
    [`${assessment}.vehicles.csv`, vehiclesCsv(one)],
    ...(sorted === null ? [] : [[`${assessment}.attempts.csv`, judgedAgainCsv(sorted)] as const]),
  ];
  for (const [name, content] of files) await writeWhole(join(folder, name), content);
  return files.map(([name]) => `  ${join(folder, name)}`);
}

export const person = (name: string) => optionText(name, '--by', 80);
export const words = (text: string, where: string) => optionText(text, where, 200);

export { print } from '../terminal/wrapped.ts';
export const now = (): Stamp => ({
  at: new Date().toISOString(),
  monoUs: Number(process.hrtime.bigint() / 1000n),
});
