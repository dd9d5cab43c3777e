import { mkdirSync, rmSync } from 'node:fs';
import { backUpLog, type Checked, restoreLog } from '../../../db/backup.ts';
import type { Courses } from '../../../db/courses.ts';
import { stationOf } from '../../evidence/station.ts';
import { outputFile } from '../../files/output.ts';
import { unfinishedName } from '../../files/whole-file.ts';
import { ProblemError } from '../../problem.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { backedUp } from '../answers/station.ts';
import { fetchBack } from '../archive/fetch-back.ts';
import { type Dialogue, openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, problemText, safeLine } from '../terminal/exit.ts';
import { watched } from '../terminal/progress.ts';
import { askYes } from '../terminal/questions.ts';
import { print as printWrapped } from '../terminal/wrapped.ts';
import { now } from './clock.ts';
import { folderOf, type Scope } from './scope.ts';
import { inLogsPlace, openStationFolder, renewTrust } from './station.ts';
import { isKeyHere, keyMissing, keyPath } from './station-keys.ts';
import { logPath, logThere } from './station-log.ts';
import { ownKeys } from './trust-file.ts';

/** Copies the station log while others may write to it, and reads the copy through. */
export async function backUp(to: string, options: Scope & { readonly json?: true }): Promise<ExitCode> {
  const path = logThere(await folderOf(options));
  outputFile(to);
  const checked = await backUpLog(path, to, {
    copied: watched(w`pages copied`),
    checked: watched(w`entries checked`),
  }).catch(inLogsPlace(path));
  if (options.json === true) printJson(backedUp(to, checked));
  else print([w`Backed up to ${to} and checked: ${contentOf(checked)}.`, keysApart()]);
  return EXIT.done;
}

const keysApart = () =>
  w`The backup contains the log only. Copy the folder keys and the certificates too; keep the keys private.`;

export interface RestoreOptions extends Scope {
  /** Entries of the log that is there are not in the backup, and are to lie beside it. */
  readonly setAside?: true;
  /** The archive that the log is fetched back from. */
  readonly fromArchive?: string;
}

/** Puts a backup, or what the archive has, in the place of the station log; what was there is kept beside it. */
export async function restore(
  backup: string | undefined,
  options: RestoreOptions,
  open: () => Dialogue = openDialogue,
): Promise<ExitCode> {
  const folder = await folderOf(options);
  const url = options.fromArchive;
  if ((backup === undefined) === (url === undefined))
    throw new ProblemError({
      code: 'option-not-valid',
      where: 'restore',
      message: w`expected either a backup or --from-archive URL`,
      next: w`Name the file of the backup, or the archive that the station shipped to.`,
    });
  if (backup !== undefined) return putBack(folder, { backup, name: backup }, options, open);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const part = unfinishedName(logPath(folder));
  try {
    await fetchBack(url ?? '', part);
    const outcome = await putBack(
      folder,
      { backup: part, name: w`the archive at ${url ?? ''}` },
      options,
      open,
    ).catch((cause: unknown) => {
      if (!(cause instanceof ProblemError) || cause.problem.where !== part) throw cause;
      throw new ProblemError({ ...cause.problem, where: url ?? '' }, { cause });
    });
    print([w`What the station wrote after its last shipping is not in the archive.`]);
    return outcome;
  } finally {
    for (const end of ['', '-wal', '-shm']) rmSync(`${part}${end}`, { force: true });
  }
}

async function putBack(
  folder: string,
  { backup, name }: { readonly backup: string; readonly name: string },
  options: RestoreOptions,
  open: () => Dialogue,
): Promise<ExitCode> {
  const at = now().slice(0, 19).replace(/[-:]/g, '');
  const restored = await restoreLog(backup, logPath(folder), {
    suffix: `before-${at}`,
    keys: await ownKeys(folder),
    checked: watched(w`entries checked`),
    agree: (courses) => agreed(logPath(folder), courses, options.setAside === true, open),
  });
  const { before, courses } = restored;
  print([
    w`Checked and restored from ${name}: ${contentOf(restored)}.`,
    ...(courses.apart.entries > 0 ? [sentence(apartWords(courses, 'set-aside'))] : []),
    ...(before === null ? [] : [w`The old log is kept as ${before}.`]),
    w`If work went on after this backup, later checkpoints and records show the missing end: run "plugmark log check". The station signs nothing then before you fill it in, or say that it is lost: plugmark log lost --because "..."`,
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
  const words = apartWords(courses, 'would-be');
  const dialogue = open();
  try {
    if (dialogue.patient) {
      dialogue.say(safeLine(sentence(words)));
      if (await askYes(dialogue, w`Restore anyway?`, 'no')) return;
    }
  } finally {
    dialogue.leave();
  }
  const aside = w`Use --set-aside to keep them in a file beside the log and restore the backup.`;
  throw new ProblemError({
    code: 'restore-newer',
    where: path,
    message: w`nothing was restored: ${words}`,
    next: courses.kind === 'unreadable' ? w`Save them first with "plugmark recover". ${aside}` : aside,
  });
}

/** What the log holds and the backup does not. */
function apartWords({ kind, common, apart, onlyInBackup }: Courses, done: 'set-aside' | 'would-be'): string {
  const entries = plural(apart.entries, { one: '# entry', other: '# entries' });
  const of = [
    ...apart.jobs.slice(0, MOST_JOBS).map(({ job, became }) => `${job} ${BECAME[became]}`),
    ...(apart.jobs.length > MOST_JOBS
      ? [plural(apart.jobs.length - MOST_JOBS, { one: '# more job', other: '# more jobs' })]
      : []),
    ...(apart.station > 0 ? [w`${apart.station} of the station itself`] : []),
  ].join(', ');
  const isDone = done === 'set-aside';
  switch (kind) {
    case 'parted':
      return isDone
        ? w`the log and the backup took two courses behind entry ${common}: ${entries} of the log (${of}), where the backup has ${onlyInBackup} of its own, are set aside`
        : w`the log and the backup took two courses behind entry ${common}: ${entries} of the log (${of}), where the backup has ${onlyInBackup} of its own, would be set aside`;
    case 'another':
      return isDone
        ? w`the log that is there is another one of this station, begun anew: its ${entries} (${of}) are set aside`
        : w`the log that is there is another one of this station, begun anew: its ${entries} (${of}) would be set aside`;
    case 'unreadable':
      return isDone
        ? w`the log that is there is damaged, and ${entries} newer than the backup can still be read in it: ${of}; they are set aside`
        : w`the log that is there is damaged, and ${entries} newer than the backup can still be read in it: ${of}; they would be set aside`;
    default:
      return isDone
        ? w`${entries} newer than the backup (${of}) are set aside`
        : w`${entries} newer than the backup (${of}) would be set aside`;
  }
}

const MOST_JOBS = 6;

/** What became of a job in those entries. */
const BECAME = phrases({ opened: 'opened', closed: 'closed', void: 'void', 'went on': 'went on' });
const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** The trust list as the restored log has it, and what to do where the file of its key is missing. */
async function keyAndTrust(folder: string): Promise<readonly string[]> {
  const stationFolder = await openStationFolder(folder);
  try {
    const state = stationOf(stationFolder.log.stationEntries());
    const kid = state?.keys.at(-1)?.kid;
    if (state === null || kid === undefined) return [];
    await renewTrust(stationFolder);
    const path = keyPath(folder, 'station', kid);
    if (isKeyHere(folder, kid)) return [];
    const { message, next } = keyMissing(path);
    // Without its key nothing here says whose log this is.
    return [
      w`It is the log of the station "${state.name}" (${state.origin}). Is it yours?`,
      `${path}: ${message}. ${next}`,
    ];
  } catch (cause) {
    if (cause instanceof ProblemError) return [problemText(cause.problem).trimEnd()];
    throw cause;
  } finally {
    stationFolder.log.close();
  }
}

function contentOf({ entries, jobs, lastAt }: Checked): string {
  const content = [
    plural(entries, { one: '# entry', other: '# entries' }),
    plural(jobs, { one: '# job', other: '# jobs' }),
  ].join(', ');
  return lastAt === null ? content : w`${content}, the last entry ${lastAt}`;
}

const print = (lines: readonly string[]) => printWrapped(lines.map(safeLine));
