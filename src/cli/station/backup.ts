import { existsSync, statSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { backUpLog, type Checked, restoreLog } from '../../../db/backup.ts';
import type { Courses } from '../../../db/courses.ts';
import { type Recovered, recoverLog } from '../../../db/recover.ts';
import type { FromRecord } from '../../../db/recover-records.ts';
import type { Finding } from '../../evidence/kept-checkpoints.ts';
import { stationOf } from '../../evidence/station.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { outputFile } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { printJson } from '../answers/answer.ts';
import { backedUp, recovered } from '../answers/station.ts';
import { type Dialogue, openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, problemText, safeLine } from '../terminal/exit.ts';
import { progress, watched } from '../terminal/progress.ts';
import { askYes } from '../terminal/questions.ts';
import { print as printWrapped } from '../terminal/wrapped.ts';
import { MAX_RECORD_BYTES } from '../verify-limit.ts';
import { folderOf, type Scope } from './scope.ts';
import { inLogsPlace, keyMissing, keyPath, openStationFolder, readTrust, renewTrust } from './station.ts';
import { logPath, logThere, stationKeysIn, TRUST_FILE } from './station-log.ts';

/** Copies the station log while others may write to it, and reads the copy through. */
export async function backUp(to: string, options: Scope & { readonly json?: true }): Promise<ExitCode> {
  const path = logThere(await folderOf(options));
  outputFile(to);
  const checked = await backUpLog(path, to, {
    copied: watched('pages copied'),
    checked: watched('entries checked'),
  }).catch(inLogsPlace(path));
  if (options.json === true) printJson(backedUp(to, checked));
  else print([`Backed up to ${to}, and read through: ${contentOf(checked)}.`, KEYS_APART]);
  return EXIT.done;
}

const KEYS_APART =
  'It holds the log alone. Keys (the folder keys) and certificates are files: keep copies of them too, the keys where nobody else reads them.';

export interface RestoreOptions extends Scope {
  /** Entries of the log that is there are not in the backup, and are to lie beside it. */
  readonly setAside?: true;
}

/** Puts a backup in the place of the station log; what was there is kept beside it. */
export async function restore(
  backup: string,
  options: RestoreOptions,
  open: () => Dialogue = openDialogue,
): Promise<ExitCode> {
  const folder = await folderOf(options);
  const now = new Date().toISOString().slice(0, 19).replace(/[-:]/g, '');
  const restored = await restoreLog(backup, logPath(folder), {
    suffix: `before-${now}`,
    keys: await knownKeys(folder),
    checked: watched('entries checked'),
    agree: (courses) => agreed(logPath(folder), courses, options.setAside === true, open),
  });
  const { before, courses } = restored;
  print([
    `Restored from ${backup}, after all of it was read: ${contentOf(restored)}.`,
    ...(courses.apart.entries > 0 ? [`${sentence(apartWords(courses))} are set aside.`] : []),
    ...(before === null ? [] : [`What was there is kept as ${before}.`]),
    'If the log went on after the backup was made, checkpoints and records of that time show that its end is missing: "plugmark log check".',
    ...(await keyAndTrust(folder)),
  ]);
  return EXIT.done;
}

/** Nothing is set aside that somebody did not say is to be. */
async function agreed(
  path: string,
  courses: Courses,
  setAside: boolean,
  open: () => Dialogue,
): Promise<void> {
  if (courses.apart.entries === 0 || setAside) return;
  const words = `${apartWords(courses)} would be set aside`;
  const dialogue = open();
  try {
    if (dialogue.patient) {
      dialogue.say(safeLine(`${sentence(words)}.`));
      if (await askYes(dialogue, 'Restore all the same?', 'no')) return;
    }
  } finally {
    dialogue.leave();
  }
  const first = courses.kind === 'unreadable' ? 'Save them first with "plugmark recover". ' : '';
  throw new ProblemError({
    code: 'restore-newer',
    where: path,
    message: `nothing was restored: ${words}`,
    next: `${first}With --set-aside they are kept in a file beside the log, and the backup takes its place.`,
  });
}

/** What the log holds and the backup does not. */
function apartWords({ kind, common, apart, onlyInBackup }: Courses): string {
  const entries = counted(apart.entries, 'entry', 'entries');
  const of = [
    ...apart.jobs.slice(0, MOST_JOBS).map(({ job, became }) => `${job} ${became}`),
    ...(apart.jobs.length > MOST_JOBS ? [`${apart.jobs.length - MOST_JOBS} more jobs`] : []),
    ...(apart.station > 0 ? [`${apart.station} of the station itself`] : []),
  ].join(', ');
  switch (kind) {
    case 'parted':
      return `the log and the backup took two courses behind entry ${common}: ${entries} of the log (${of}), where the backup has ${onlyInBackup} of its own,`;
    case 'another':
      return `the log that is there is another one of this station, begun anew: its ${entries} (${of})`;
    case 'unreadable':
      return `the log that is there is damaged, and ${entries} newer than the backup can still be read in it: ${of}; they`;
    default:
      return `${entries} newer than the backup (${of})`;
  }
}

const MOST_JOBS = 6;
const counted = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;
const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** The trust list as the restored log has it, and what to do where the file of its key is missing. */
async function keyAndTrust(folder: string): Promise<readonly string[]> {
  const stationFolder = await openStationFolder(folder);
  try {
    const state = stationOf(stationFolder.log.stationEntries());
    const kid = state?.keys.at(-1)?.kid;
    if (kid === undefined) return [];
    await renewTrust(stationFolder);
    const path = keyPath(folder, 'station', kid);
    if (existsSync(path)) return [];
    const { message, next } = keyMissing(path);
    return [`${path}: ${message}. ${next}`];
  } catch (cause) {
    if (cause instanceof ProblemError) return [problemText(cause.problem).trimEnd()];
    throw cause;
  } finally {
    stationFolder.log.close();
  }
}

/** Thumbprints of the keys in the folder, and of those that its trust list has under the same name. */
async function knownKeys(folder: string): Promise<readonly string[]> {
  const kids = stationKeysIn(folder);
  const listed = (await readTrust(join(folder, TRUST_FILE)).catch(() => ({ keys: [] }))).keys.filter(
    ({ role }) => role === 'station',
  );
  const names = new Set(listed.flatMap(({ kid, name }) => (kids.includes(kid) ? [name] : [])));
  const same = listed.filter(({ name }) => kids.length === 0 || names.has(name));
  return [...new Set([...kids, ...same.map(({ kid }) => kid)])];
}

const contentOf = ({ entries, jobs, lastAt }: Checked) =>
  `${entries} entries, ${jobs} jobs, the last entry ${lastAt ?? 'never'}`;

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
      ? { found: [], leftOut: [] }
      : await readRecords(options.records, options.trust ?? join(folder, TRUST_FILE));
  const beside = `${options.out}.beside.jsonl`;
  const keys = await knownKeys(folder);
  const report = await recoverLog(path, { out: options.out, beside }, records.found, keys, {
    read: watched('pages read'),
    written: watched('entries written'),
  });
  if (options.json === true) {
    const unread = records.leftOut.map(({ file }) => file);
    printJson(recovered(report, options.out, beside, unread));
  } else
    print([
      ...records.leftOut.map(({ file, why }) => `Left out: ${file}: ${why}`),
      ...(path === null ? ['There is no log here: this is from records alone.'] : []),
      ...wordsOf(report, options.out, beside),
    ]);
  return losesAny(report) || divergedIn(report) ? EXIT.failed : EXIT.done;
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
    return losesAny(report) ? 'LOSSES, and NOT AS IT WAS SIGNED' : 'NOT AS IT WAS SIGNED';
  if (losesAny(report)) return 'LOSSES';
  return report.fromRecordsAlone
    ? 'All that the records hold was saved'
    : 'Everything that is known of was saved';
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
    ...(report.fromRecordsAlone
      ? [
          'What no record holds cannot be known: jobs that were never closed, what became of a job after its record, and how long the log was.',
        ]
      : []),
    `Put it in place with: plugmark restore ${out}${report.beside > 0 ? ' --set-aside' : ''}`,
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

interface ReadRecords {
  readonly found: readonly FromRecord[];
  readonly leftOut: readonly { readonly file: string; readonly why: string }[];
}

/** Records of a folder whose signatures and places in the log hold; all others are named and left out. */
async function readRecords(folder: string, trustFile: string): Promise<ReadRecords> {
  const trust = await readTrust(trustFile);
  const names = await readdir(folder, { recursive: true }).catch(() => null);
  if (names === null) throw noFolder(folder);
  const found: FromRecord[] = [];
  const leftOut: { file: string; why: string }[] = [];
  const records = names.filter((one) => one.endsWith('.record.json')).sort();
  const bar = progress('records read', records.length);
  for (const [i, name] of records.entries()) {
    bar.at(i);
    const file = join(folder, name);
    const { record, checks } = verifyRecord(await readBytes(file, 'record', MAX_RECORD_BYTES), trust);
    const fault = checks.find((check) => NEEDED.has(check.name) && check.outcome === 'failed');
    if (record !== null && fault === undefined)
      found.push({
        name: file,
        entries: [...record.background, ...record.entries],
        checkpoint: record.log.checkpoint,
        proof: record.log.proof,
      });
    else leftOut.push({ file, why: fault?.detail ?? 'not readable as a record.' });
  }
  bar.end();
  return { found, leftOut };
}

/** A job that was not complete, or a clock that jumped, is no reason to lose its entries. */
const NEEDED: ReadonlySet<string> = new Set(['signatures', 'signer', 'log']);

function noFolder(folder: string): ProblemError {
  return new ProblemError({
    code: 'file-unreadable',
    where: folder,
    message: 'this is no folder that can be read',
    next: 'Name the folder that holds the exported records.',
  });
}

const print = (lines: readonly string[]) => printWrapped(lines.map(safeLine));
