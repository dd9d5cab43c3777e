/** What the commands on impact assessments share: the log's own entries, telling of an impact assessment, its papers, and what a person gives. */
import { join } from 'node:path';
import type { Sorted } from '../../audit/impact-items.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import type { Stamp, StationEntry } from '../../evidence/log.ts';
import { stationOf } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { figure, UNIT_TEXT } from '../../report/figures.ts';
import { impactPaper, outcomeOf, proofWords, SORT_WORD, sortWords, standOf } from '../../report/impact.ts';
import { judgedAgainCsv, vehiclesCsv } from '../../report/impact-csv.ts';
import { writePaper } from '../../report/paper.ts';
import { orThrow } from '../../result.ts';
import { programVersion } from '../help/version.ts';
import { newCheckpoint, type Signer, signerOf } from '../station/log.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { textTable } from '../terminal/text-table.ts';

/** A station at its impact assessments: its own entries, which a long-lived station has many of, are read once a command. */
export interface AuditSession {
  readonly stationFolder: StationFolder;
  readonly entries: readonly StationEntry[];
  readonly impacts: readonly ImpactAssessment[];
}

const sessionWith = (stationFolder: StationFolder, entries: readonly StationEntry[]): AuditSession => ({
  stationFolder,
  entries,
  impacts: impactsOf(entries),
});

export function inSession(
  scope: Scope,
  work: (session: AuditSession) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> {
  return withStationFolder(scope, (stationFolder) =>
    work(sessionWith(stationFolder, stationFolder.log.stationEntries())),
  );
}

/** To be asked for before anything is written: what nobody can sign is not to stand in the log. */
export function sessionSigner({ stationFolder, entries }: AuditSession): Promise<Signer> {
  return signerOf(stationFolder, stationOf(entries) ?? stateOf(stationFolder));
}

/** Puts events of impact assessments into the log, of which no trust list tells; the desk as it is then. */
export function record(
  { stationFolder, entries }: AuditSession,
  events: readonly StationEvent[],
  by: string,
): AuditSession {
  const drafts = events.map((event) => ({ by, event }));
  return sessionWith(stationFolder, [...entries, ...stationFolder.log.appendStation(drafts, now())]);
}

/** A impact assessment with its jobs, as lines for people. */
export function linesOf(one: ImpactAssessment): readonly string[] {
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
    `Impact assessment ${assessment} on ${safeLine(made.tool)} (${safeLine(made.serial)}), ${made.from} to ${made.to}, ${made.attempts} attempts`,
    `${word}. ${safeLine(text)}${made.simulated ? ' SIMULATED tools among them.' : ''}`,
    proofWords(made),
    ...beyondLine(one),
    ...(rows.length === 0 ? [] : ['', ...textTable(head, rows), '', OUT_IS, ...proofTable(one)]),
  ];
}

const OUT_IS =
  'OUT: beyond the limits if the tool had the found error already then; "with both": the value of then was beyond them too.';

/** Each proof that does not hold any more, with both values. */
function proofTable({ items }: ImpactAssessment): readonly string[] {
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

/** Else an impact assessment with points too few to tell looks like one of a tool that was far out. */
function beyondLine({ asFound, items }: ImpactAssessment): readonly string[] {
  const beyond = items.flatMap(({ attempts }) => attempts).filter(({ covered }) => !covered).length;
  if (beyond === 0 || asFound === null) return [];
  const { unit, points } = asFound;
  const readings = points.map(({ reading }) => reading);
  const [from, to] = [Math.min(...readings), Math.max(...readings)].map((reading) => figure(reading, unit));
  return [
    `${beyond} of the doubtful ones were read beyond the points that the laboratory looked at, ${from} to ${to} ${UNIT_TEXT[unit]}: nobody knows the error there.`,
  ];
}

/** By its number, of which the figures do: `IA-1`, `ia-1` or `1`. Problem: `impact-unknown`. */
export function impactOf({ impacts }: AuditSession, assessment: string): ImpactAssessment {
  const figures = /^(?:ia-?)?(\d+)$/i.exec(assessment.trim())?.[1];
  const found = impacts.find((one) => one.assessment === `IA-${figures}`);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'impact-unknown',
    where: safeLine(assessment),
    message: 'this station has no impact assessment of that number',
    next: 'List them with "plugmark impact list".',
  });
}

/** Writes the paper and the lists of an impact assessment as it stands; returns a line a file. */
export async function writeImpact(
  { stationFolder }: AuditSession,
  signer: Signer,
  one: ImpactAssessment,
  out: string | undefined,
  sorted: readonly Sorted[] | null,
): Promise<readonly string[]> {
  const folder = out ?? stationFolder.folder;
  outputFolder(folder);
  const note = orThrow(readCheckpoint(await newCheckpoint(stationFolder, signer), 'checkpoint'));
  const log = { size: note.size, root: note.root.toString('hex') };
  const paper = impactPaper(one, { log, program: `plugmark ${programVersion()}` });
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
