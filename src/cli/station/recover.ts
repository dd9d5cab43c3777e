import { statSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type Recovered, recoverLog } from '../../../db/recover.ts';
import type { FromRecord } from '../../../db/recover-records.ts';
import type { Finding } from '../../evidence/kept-checkpoints.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { recovered } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { progress, watched } from '../terminal/progress.ts';
import { print as printWrapped } from '../terminal/wrapped.ts';
import { folderOf, type Scope } from './scope.ts';
import { logPath, logThere, TRUST_FILE } from './station-log.ts';
import { ownKeys, readTrust } from './trust-file.ts';

export interface RecoverOptions extends Scope {
  readonly out: string;
  readonly records?: string;
  readonly trust?: string;
  readonly json?: true;
}

/**
 * Saves what can be read of a damaged log, or of exported records where the log is gone, into a new one. Exit code 1 where
 * anything is lost or not as it was signed.
 */
export async function recover(options: RecoverOptions): Promise<ExitCode> {
  const folder = await folderOf(options);
  const path = options.records === undefined ? logThere(folder) : logIfThere(folder);
  const records =
    options.records === undefined
      ? { readable: [], leftOut: [] }
      : await readRecords(options.records, options.trust ?? join(folder, TRUST_FILE));
  const beside = `${options.out}.beside.jsonl`;
  const keys = await ownKeys(folder);
  const report = await recoverLog(path, { out: options.out, beside }, records.readable, keys, {
    read: watched(w`pages read`),
    written: watched(w`entries written`),
  });
  const outcome = losesAny(report) || divergedIn(report) ? EXIT.failed : EXIT.done;
  if (options.json === true) {
    const unread = records.leftOut.map(({ file }) => file);
    printJson(recovered(report, options.out, beside, unread));
    return outcome;
  }
  print([
    ...records.leftOut.map(({ file, why }) => w`Left out: ${file}: ${why}`),
    ...(path === null ? [w`No log here: rebuilt from records only.`] : []),
    ...wordsOf(report, options.out, beside),
  ]);
  return outcome;
}

function logIfThere(folder: string): string | null {
  const path = logPath(folder);
  return (statSync(path, { throwIfNoEntry: false })?.size ?? 0) > 1 ? path : null;
}

const losesAny = ({ lost, beside, checkpoints }: Recovered) =>
  lost.length > 0 || beside > 0 || checkpoints.some(({ kind }) => kind === 'cut');
const divergedIn = ({ checkpoints }: Recovered) => checkpoints.some(({ kind }) => kind === 'diverged');

function headOf(report: Recovered): string {
  if (divergedIn(report))
    return losesAny(report) ? w`LOSSES, and NOT AS IT WAS SIGNED` : w`NOT AS IT WAS SIGNED`;
  if (losesAny(report)) return w`LOSSES`;
  return report.fromRecordsAlone ? w`Saved everything in the records` : w`Saved everything that was found`;
}

function wordsOf(report: Recovered, out: string, beside: string): readonly string[] {
  const { kept, fromRecords, leftOut, lost, cutJobs, checkpoints } = report;
  return [
    ...leftOut.map((name) => w`Left out: ${name}: not shown to belong to this log.`),
    fromRecords === 0
      ? w`${headOf(report)}: ${kept} entries are in ${out}, from the first on without a gap.`
      : w`${headOf(report)}: ${kept} entries are in ${out}, from the first on without a gap, ${fromRecords} of them from records.`,
    ...lost.map(({ from, to }) =>
      from === to ? w`LOST: entry ${from}.` : w`LOST: entries ${from} to ${to}.`,
    ),
    ...(report.beside === 0
      ? []
      : [
          w`${report.beside} readable entries after the first gap cannot be part of the log; they are in ${beside}.`,
        ]),
    ...(cutJobs.length === 0
      ? []
      : [
          cutJobs.length > 20
            ? w`Incomplete jobs: ${cutJobs.slice(0, 20).join(', ')} and ${cutJobs.length - 20} more.`
            : w`Incomplete jobs: ${cutJobs.join(', ')}.`,
        ]),
    ...checkpoints.map(checkpointWords),
    ...(!losesAny(report) && checkpoints.length === 0
      ? [w`No checkpoint found: entries at the very end may be missing without a trace.`]
      : []),
    ...(divergedIn(report)
      ? [w`Entries were changed, removed or added. Keep the damaged file and find the cause first.`]
      : []),
    ...(report.fromRecordsAlone
      ? [
          w`Not in any record: jobs that were never closed, changes after a record, and the length of the log.`,
        ]
      : []),
    w`Put it in place: plugmark restore ${out}${report.beside > 0 ? ' --set-aside' : ''}`,
  ];
}

function checkpointWords(finding: Finding): string {
  const { size } = finding;
  switch (finding.kind) {
    case 'extends':
      return w`Checkpoint of ${size} entries: the saved log agrees with it.`;
    case 'cut':
      return w`Checkpoint of ${size} entries: entries ${finding.from} to ${finding.to} are missing.`;
    case 'diverged':
      return w`Checkpoint of ${size} entries: DIVERGED between entry ${finding.from} and entry ${finding.to}.`;
    case 'other-log':
      return w`Checkpoint of ${size} entries: of another log.`;
    case 'not-signed':
      return w`Checkpoint of ${size} entries: not signed by a key of this station.`;
  }
}

interface ReadRecords {
  readonly readable: readonly FromRecord[];
  readonly leftOut: readonly { readonly file: string; readonly why: string }[];
}

/** Records of a folder whose signatures and places in the log hold; all others are named and left out. */
async function readRecords(folder: string, trustFile: string): Promise<ReadRecords> {
  const trust = await readTrust(trustFile);
  const names = await readdir(folder, { recursive: true }).catch(() => null);
  if (names === null) throw noFolder(folder);
  const readable: FromRecord[] = [];
  const leftOut: { file: string; why: string }[] = [];
  const records = names.filter((one) => one.endsWith('.record.json')).sort();
  const bar = progress(w`records read`, records.length);
  for (const [i, name] of records.entries()) {
    bar.at(i);
    const file = join(folder, name);
    const { record, checks } = verifyRecord(await readBytes(file, w`record`, MAX_RECORD_BYTES), trust);
    const kid = record?.signers.find(({ role }) => role === 'station')?.kid;
    const isOwn = trust.keys.some((key) => key.kid === kid && key.revoked?.reason !== 'compromised');
    const fault = checks.find(
      ({ name: what, outcome }) => outcome === 'failed' && NEEDED.has(what) && !(what === 'signer' && isOwn),
    );
    if (record !== null && fault === undefined)
      readable.push({
        name: file,
        entries: [...record.background, ...record.entries],
        checkpoint: record.log.checkpoint,
      });
    else leftOut.push({ file, why: fault?.detail ?? w`not readable as a record.` });
  }
  bar.end();
  return { readable, leftOut };
}

/**
 * A job that was not complete, or a clock that jumped, is no reason to lose its entries. Nor is a key of the station that has
 * ended since: each entry is held against all others.
 */
const NEEDED: ReadonlySet<string> = new Set(['signatures', 'signer', 'log']);

function noFolder(folder: string): ProblemError {
  return new ProblemError({
    code: 'file-unreadable',
    where: folder,
    message: w`this folder cannot be read`,
    next: w`Name the folder that holds the exported records.`,
  });
}

const print = (lines: readonly string[]) => printWrapped(lines.map(safeLine));
