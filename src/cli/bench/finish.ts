import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import type { StationKey } from '../../../db/keyfile.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import type { Stamp } from '../../evidence/log.ts';
import { personNamed } from '../../evidence/station.ts';
import type { Verdict } from '../../evidence/verdict.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { technicianOf } from '../../job/hand-over.ts';
import { ProblemError } from '../../problem.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { w } from '../../words/catalogue.ts';
import { countersign } from '../evidence/countersign.ts';
import { sealedLines } from '../evidence/report-lines.ts';
import { type Station, stateOf } from '../station/station.ts';
import { keyPath, technicianKey } from '../station/station-keys.ts';
import { readTrust } from '../station/trust-file.ts';
import { quoted } from '../terminal/command-line.ts';
import { openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, problemText, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type Papers, papersOf, type Sealing, sealedBefore, writePapers } from './papers.ts';

/** What became of a closed job: its verification, and where its papers are. */
export interface Finished {
  readonly verdict: Verdict;
  readonly code: ExitCode;
  readonly papers: Papers;
}

/**
 * Seals a closed job where it is not sealed as it stands, writes its papers into a folder, then reads the record back and verifies it as a stranger would.
 * A technician with a key of his own is asked for the PIN, unless the shop does without.
 */
export async function finish(
  station: Station,
  stream: string,
  stamp: () => Stamp,
  papersFor: Pick<Sealing, 'folder' | 'audience' | 'style'>,
): Promise<Finished> {
  const sealed = await sealedBefore(station, stream);
  const papers =
    sealed === null
      ? await writePapers(station, stream, {
          ...papersFor,
          signedAt: stamp().at,
          technician: await signingTechnician(station, stream),
        })
      : await papersOf(sealed, papersFor);
  const report = verifyRecord(await readFile(papers.record), await readTrust(station.trustFile));
  print([
    '',
    ...sealedLines(papers.record, report),
    `  ${w`papers`.padEnd(13)} ${papers.pdf}, ${papers.csv}`,
  ]);
  const isVoid = report.record?.entries.some(({ event }) => event.type === 'job-voided') === true;
  const code = isVoid && report.verdict === 'incomplete' ? EXIT.void : VERIFICATION[report.verdict].exit;
  return { verdict: report.verdict, code, papers };
}

/** With somebody at the terminal: a second signature if it is wanted, then how the papers are printed. */
export async function afterwards(station: Station, stream: string, { record, pdf }: Papers): Promise<void> {
  await countersigned(station, workerOf(station, stream), record);
  const print = commandThere('lp') ? `lp ${quoted(pdf)}` : w`open it and print it from there`;
  process.stdout.write(
    `${w`The paper for the customer: ${safeLine(pdf)}`}\n${w`To print it: ${safeLine(print)}`}\n`,
  );
}

/** Asks once, and again only after an answer that did not work. */
async function countersigned(station: Station, worker: string | null, record: string): Promise<void> {
  for (;;) {
    const dialogue = openDialogue();
    const answer = await dialogue
      .ask(w`Countersign now? Name, or file of the key (Enter: not now): `)
      .catch(whenBrokenOff)
      .finally(dialogue.leave);
    if (answer === '') return;
    try {
      await countersign(record, { key: keyFileOf(station, worker, answer) });
      return;
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      process.stdout.write(problemText(error.problem));
    }
  }
}

/** The job is closed and sealed: whoever presses Ctrl-C here does not countersign, and that is all. */
function whenBrokenOff(error: unknown): string {
  if (error instanceof ProblemError) return '';
  throw error;
}

/** The key of somebody who has one at this station; else what was typed is the file. */
function keyFileOf(station: Station, worker: string | null, answer: string): string {
  const named = (name: string) => name.toLowerCase() === answer.toLowerCase();
  if (worker !== null && named(worker))
    throw new ProblemError({
      code: 'countersigned-by-worker',
      message: w`${worker} did this job; a second person must countersign`,
      next: w`Name another person, or press Enter.`,
    });
  const jwk = stateOf(station).people.find(({ name }) => named(name))?.key ?? null;
  return jwk === null ? answer : keyPath(station.folder, 'technician', thumbprint(jwk));
}

const commandThere = (name: string): boolean =>
  (process.env['PATH'] ?? '')
    .split(delimiter)
    .some((folder) => folder !== '' && existsSync(join(folder, name)));

function signingTechnician(station: Station, stream: string): Promise<StationKey | null> {
  const state = stateOf(station);
  const technician = workerOf(station, stream);
  if (state.technicians === 'do-not-sign' || technician === null) return Promise.resolve(null);
  return technicianKey(station.folder, technician, personNamed(state, technician)?.key ?? null);
}

const workerOf = ({ log }: Station, stream: string): string | null =>
  technicianOf(log.entries(stream).map(({ event }) => event));
