/** What the commands on impact assessments share: the log's own entries, the paper and its files, and what a person types. */

import { join } from 'node:path';
import type { Sorted } from '../../audit/impact-items.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import type { StationEntry } from '../../evidence/log.ts';
import { toHex } from '../../evidence/platform/bytes.ts';
import { stationOf } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { judgedAgainCsv, vehiclesCsv } from '../../report/impact-csv.ts';
import { impactPaper } from '../../report/impact-paper.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import type { Audience } from '../../report/reader.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { programVersion } from '../help/version.ts';
import { stamp } from '../station/clock.ts';
import { readerOf } from '../station/paper-reader.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { newCheckpoint, type Signer, signerOf } from '../station/sign-log.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { printPaper } from './papers.ts';

const PROGRAM = `plugmark ${programVersion()}`;

/** A station and its impact assessments. Its own entries are read once a command: an old station has many. */
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

/** Asked for before anything is written: what nobody can sign must not get into the log. */
export function sessionSigner({ stationFolder, entries }: AuditSession): Promise<Signer> {
  return signerOf(stationFolder, stationOf(entries) ?? stateOf(stationFolder));
}

/** Puts events of impact assessments into the log; returns the session as it is then. */
export function record(
  { stationFolder, entries }: AuditSession,
  events: readonly StationEvent[],
  by: string,
): AuditSession {
  const drafts = events.map((event) => ({ by, event }));
  return sessionWith(stationFolder, [...entries, ...stationFolder.log.appendStation(drafts, stamp())]);
}

/** The paper of an impact assessment on the terminal. */
export const printImpact = (one: ImpactAssessment): void =>
  printPaper(impactPaper(one, { log: null, program: PROGRAM }));

/** By its number: `IA-1`, `ia-1` or `1`. Problem: `impact-unknown`. */
export function impactOf({ impacts }: AuditSession, assessment: string): ImpactAssessment {
  const number = /^(?:ia-?)?(\d+)$/i.exec(assessment.trim())?.[1];
  const impact = impacts.find((one) => one.assessment === `IA-${number}`);
  if (impact !== undefined) return impact;
  throw new ProblemError({
    code: 'impact-unknown',
    where: safeLine(assessment),
    message: w`this station has no impact assessment of that number`,
    next: w`List them with "plugmark impact list".`,
  });
}

/** Writes the paper and the lists of an impact assessment; returns a line for each file. */
export async function writeImpact(
  { stationFolder }: AuditSession,
  signer: Signer,
  one: ImpactAssessment,
  { out, audience }: { readonly out: string | undefined; readonly audience: Audience },
  sorted: readonly Sorted[] | null,
): Promise<readonly string[]> {
  const folder = out ?? stationFolder.folder;
  outputFolder(folder);
  const note = orThrow(readCheckpoint(await newCheckpoint(stationFolder, signer), 'checkpoint'));
  const log = { size: note.size, root: toHex(note.root) };
  const paper = () => impactPaper(one, { log, program: PROGRAM });
  const { assessment } = one;
  const files: (readonly [string, string | Uint8Array])[] = [
    [`${assessment}.pdf`, await writePaper(paper, { reader: await readerOf(audience) })],
    [`${assessment}.vehicles.csv`, vehiclesCsv(one)],
    ...(sorted === null ? [] : [[`${assessment}.attempts.csv`, judgedAgainCsv(sorted)] as const]),
  ];
  for (const [name, content] of files) writeWhole(join(folder, name), content);
  return files.map(([name]) => `  ${join(folder, name)}`);
}

export const person = (name: string) => optionText(name, '--by', 80);
export const words = (text: string, where: string) => optionText(text, where, 200);

export { print } from '../terminal/wrapped.ts';
