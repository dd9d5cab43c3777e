import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { backUpLog, type Checked, restoreLog } from '../../db/backup.ts';
import { type Recovered, recoverLog } from '../../db/recover.ts';
import type { FromRecord } from '../../db/recover-records.ts';
import type { Finding } from '../evidence/held-against.ts';
import { verifyRecord } from '../evidence/verify.ts';
import { ProblemError } from '../problem.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { readBytes } from './input.ts';
import { readTrust, TRUST_FILE } from './station.ts';
import { MAX_RECORD_BYTES } from './verify-limit.ts';
import { folderOf, type Whose } from './whose.ts';

const LOG = 'station.db';

/** Copies the station log while others may write to it, and reads the copy through. */
export async function backUp(to: string, options: Whose): Promise<ExitCode> {
  const path = join(await folderOf(options), LOG);
  if (!existsSync(path)) throw noLog(path);
  const seen = process.stderr.isTTY === true;
  const checked = await backUpLog(path, to, (share) => {
    if (seen) process.stderr.write(`\rcopying: ${Math.round(100 * share)} %`);
  });
  if (seen) process.stderr.write('\r\u001b[K');
  print([`Backed up to ${to}, and read through: ${contentOf(checked)}.`, KEYS_APART]);
  return EXIT.done;
}

const KEYS_APART =
  'It holds the log alone. Keys (the folder keys) and certificates are files: keep copies of them too, the keys where nobody else reads them.';

/** Puts a backup in the place of the station log; what was there is kept beside it. */
export async function restore(backup: string, options: Whose): Promise<ExitCode> {
  const path = join(await folderOf(options), LOG);
  const now = new Date().toISOString().slice(0, 19).replace(/[-:]/g, '');
  const restored = await restoreLog(backup, path, `before-${now}`);
  print([
    `Restored from ${backup}, after all of it was read: ${contentOf(restored)}.`,
    ...(restored.before === null ? [] : [`What was there is kept as ${restored.before}.`]),
    'If the log went on after the backup was made, checkpoints and records of that time show that its end is missing: "plugmark log check".',
  ]);
  return EXIT.done;
}

const contentOf = ({ entries, jobs, lastAt }: Checked) =>
  `${entries} entries, ${jobs} jobs, the last entry ${lastAt ?? 'never'}`;

export interface RecoverOptions extends Whose {
  readonly out: string;
  readonly records?: string;
  readonly trust?: string;
}

/** Saves what can be read of a damaged log into a new one. Exit code 1 where anything is lost or not as it was signed. */
export async function recover(options: RecoverOptions): Promise<ExitCode> {
  const folder = await folderOf(options);
  const path = join(folder, LOG);
  if (!existsSync(path)) throw noLog(path);
  const records =
    options.records === undefined
      ? []
      : await readRecords(options.records, options.trust ?? join(folder, TRUST_FILE));
  const beside = `${options.out}.beside.jsonl`;
  const report = await recoverLog(path, { out: options.out, beside }, records);
  print(wordsOf(report, options.out, beside));
  return losesAny(report) || divergedIn(report) ? EXIT.failed : EXIT.done;
}

const losesAny = ({ lost, beside, checkpoints }: Recovered) =>
  lost.length > 0 || beside > 0 || checkpoints.some(({ kind }) => kind === 'cut');
const divergedIn = ({ checkpoints }: Recovered) => checkpoints.some(({ kind }) => kind === 'diverged');

function headOf(report: Recovered): string {
  if (divergedIn(report))
    return losesAny(report) ? 'LOSSES, and NOT AS IT WAS SIGNED' : 'NOT AS IT WAS SIGNED';
  return losesAny(report) ? 'LOSSES' : 'Everything that is known of was saved';
}

function wordsOf(report: Recovered, out: string, beside: string): readonly string[] {
  const { kept, fromRecords, leftOut, lost, cutJobs, checkpoints } = report;
  return [
    ...leftOut.map((name) => `Left out: ${name}: it is not known to be of this log.`),
    `${headOf(report)}: ${kept} entries are in ${out}, from the first on without a gap${fromRecords === 0 ? '' : `, ${fromRecords} of them from records`}.`,
    ...lost.map(({ from, to }) => `LOST: ${from === to ? `entry ${from}` : `entries ${from} to ${to}`}.`),
    ...(report.beside === 0
      ? []
      : [
          `${report.beside} readable entries behind the first gap cannot stand in the log; they are in ${beside}.`,
        ]),
    ...(cutJobs.length === 0
      ? []
      : [
          `Jobs that are not whole in it: ${cutJobs.slice(0, 20).join(', ')}${cutJobs.length > 20 ? ` and ${cutJobs.length - 20} more` : ''}.`,
        ]),
    ...checkpoints.map(checkpointWords),
    ...(!losesAny(report) && checkpoints.length === 0
      ? ['No checkpoint was found: entries at the very end may be gone without a trace.']
      : []),
    ...(divergedIn(report)
      ? ['Entries were changed, removed or added since: keep the damaged file, and find out why first.']
      : []),
    `Put it in place with: plugmark restore ${out}`,
  ];
}

function checkpointWords(finding: Finding): string {
  const about = `Checkpoint of ${finding.size} entries:`;
  switch (finding.kind) {
    case 'extends':
      return `${about} the saved log agrees with it.`;
    case 'cut':
      return `${about} entries ${finding.from} to ${finding.to} are missing.`;
    case 'diverged':
      return `${about} DIVERGED between entry ${finding.from} and entry ${finding.to}.`;
    case 'other-log':
      return `${about} of another log.`;
    case 'not-signed':
      return `${about} not signed by a key of this station.`;
  }
}

/** Records of a folder whose signatures and places in the log hold; all others are named and left out. */
async function readRecords(folder: string, trustFile: string): Promise<readonly FromRecord[]> {
  const trust = await readTrust(trustFile);
  const names = await readdir(folder, { recursive: true }).catch(() => null);
  if (names === null) throw noFolder(folder);
  const found: FromRecord[] = [];
  for (const name of names.filter((one) => one.endsWith('.record.json')).sort()) {
    const file = join(folder, name);
    const { record, checks } = verifyRecord(await readBytes(file, 'record', MAX_RECORD_BYTES), trust);
    const fault = checks.find((check) => NEEDED.has(check.name) && check.outcome === 'failed');
    if (record !== null && fault === undefined)
      found.push({
        name: file,
        entries: [...record.background, ...record.entries],
        checkpoint: record.log.checkpoint,
      });
    else print([`Left out: ${file}: ${fault?.detail ?? 'not readable as a record.'}`]);
  }
  return found;
}

/** A job that was not complete, or a clock that jumped, is no reason to lose its entries. */
const NEEDED: ReadonlySet<string> = new Set(['signatures', 'signer', 'log']);

function noLog(path: string): ProblemError {
  return new ProblemError({
    code: 'no-station',
    where: path,
    message: 'there is no station log',
    next: 'Name the station file with --station, or the folder of its data with --data.',
  });
}

function noFolder(folder: string): ProblemError {
  return new ProblemError({
    code: 'file-unreadable',
    where: folder,
    message: 'this is no folder that can be read',
    next: 'Name the folder that holds the exported records.',
  });
}

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.map(safeLine).join('\n')}\n`);
