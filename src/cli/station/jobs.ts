import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { JobRow } from '../../../db/jobs.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { againstJob } from '../../audit/impact-vehicle.ts';
import type { LogEntry } from '../../evidence/log.ts';
import { openRecord } from '../../evidence/record.ts';
import { personNamed } from '../../evidence/station.ts';
import { byName } from '../../evidence/writers.ts';
import { outputFolder } from '../../files/output.ts';
import { writerOf } from '../../job/command-event.ts';
import type { JobEvent } from '../../job/event.ts';
import { foldAll } from '../../job/fold.ts';
import type { JobState } from '../../job/state.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { jobStateWords } from '../../report/verdict.ts';
import { noteLines, questionText } from '../../report/words/index.ts';
import { summaryLines } from '../../ui/summary.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { listedJobs, shownJob } from '../answers/jobs.ts';
import { linesOnJob, tagOf } from '../audit/impact-on-vehicle.ts';
import { finish } from '../bench/finish.ts';
import { sealedBefore } from '../bench/papers.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { optionText } from '../terminal/option-text.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type AudienceOptions, audienceOf } from './audience.ts';
import { stamp } from './clock.ts';
import { type JobFilter, matchingJobs } from './job-filter.ts';
import { folderOf, type Scope, withStationFolder } from './scope.ts';
import { openStation, openStationFolder, recordStation, type StationFolder, stateOf } from './station.ts';

/** Lists the jobs that match, the latest first. */
export function listJobs(options: Scope & JobFilter & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, ({ log }) => {
    const { from, to, open } = options;
    const days = { ...(from !== undefined && { from }), ...(to !== undefined && { to }) };
    const some = log.history.jobsOf({ ...days, ...(open === true && { state: 'open' as const }) });
    const rows = matchingJobs(some, options);
    const impacts = impactsOf(log.stationEntries());
    if (options.json === true) printJson(listedJobs(rows, impacts));
    else print(jobLines(rows, impacts));
    return EXIT.done;
  });
}

/** A row a job: number, where it stands, when it was opened, vehicle, and the impact assessments that put it in question. */
export function jobLines(
  rows: readonly JobRow[],
  impacts: readonly ImpactAssessment[] = [],
): readonly string[] {
  if (rows.length === 0) return [w`No job matches.`];
  const impactTags = rows.map(({ job }) => againstJob(impacts, job).map(tagOf).join('; '));
  const hasImpacts = impactTags.some((text) => text !== '');
  const cells = rows.map((row, at) => [
    row.job,
    jobStateWords(row),
    minute(row.openedAt),
    row.vin ?? '-',
    row.plate ?? '-',
    ...(hasImpacts ? [impactTags[at] || '-'] : []),
  ]);
  const head = [w`job`, w`state`, w`opened (UTC)`, w`VIN`, w`plate`, ...(hasImpacts ? [w`impact`] : [])];
  return textTable(head, cells);
}

const minute = (at: string) => at.slice(0, 16).replace('T', ' ');

/** Where a job stands, from its entries alone. */
export function showJob(number: string, options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, (stationFolder) => {
    const { entries, state } = jobOf(stationFolder, number);
    const impacts = impactsOf(stationFolder.log.stationEntries());
    if (options.json === true) {
      printJson(shownJob(state, entries, impacts));
      return EXIT.done;
    }
    const sessions = plural(state.session, { one: '# session', other: '# sessions' });
    const [first, last] = [entries[0]?.at ?? '', entries.at(-1)?.at ?? ''];
    const facts = [
      w`opened ${minute(first)}, last entry ${minute(last)} (UTC); ${sessions}, ${plural(entries.length, { one: '# entry', other: '# entries' })}`,
      ...byName(entries).flatMap(({ at, by, event }) =>
        event.type === 'job-handed-over'
          ? [w`handed over ${minute(at)} from ${safeLine(by)} to ${safeLine(event.to)}`]
          : [],
      ),
      ...noteLines(state.order, state.basis.notes).map((note) => w`note: ${safeLine(note)}`),
      ...state.questions.map(
        (question) => w`question about pull ${question.pull}: ${safeLine(questionText(state, question))}`,
      ),
    ];
    // In front of "complete", which is what was judged then.
    const questioned = linesOnJob(impacts, state.order.job);
    const since =
      questioned.length === 0 ? [] : [...questioned.map((line) => `! ${line}`), w`As it was judged then:`];
    print([...since, ...summaryLines(state, !speaksUtf8()), ...facts]);
    return EXIT.done;
  });
}

/** Declares a job void, open or closed. Records that were sealed before still say what they said. */
export function voidJob(
  number: string,
  { by, because, ...scope }: Scope & { readonly by: string; readonly because: string },
): Promise<ExitCode> {
  return withStationFolder(scope, (stationFolder) => {
    const { stream, entries, state } = jobOf(stationFolder, number);
    if (state.voided !== null)
      throw problem(
        'job-void',
        w`${state.voided.by} already declared job ${number} void`,
        w`There is nothing to do.`,
      );
    append(stationFolder, stream, {
      type: 'job-voided',
      by: optionText(by, '--by', 80),
      reason: optionText(because, '--because', 200),
    });
    const sealed = entries.some(({ event }) => event.type === 'job-closed');
    const lines = [
      w`Job ${safeLine(number)} is VOID. Its readings stay in the log and prove nothing.`,
      ...(sealed
        ? [w`Records sealed before do not show this. Write the papers again and recall the old ones.`]
        : []),
      w`Write papers that show it: plugmark jobs papers ${safeLine(number)}`,
    ];
    process.stdout.write(`${lines.join('\n')}\n`);
    return EXIT.done;
  });
}

/** Gives an open job to another technician, who is put on the station's list of people where he is not yet. */
export function handOver(number: string, to: string, scope: Scope): Promise<ExitCode> {
  return withStationFolder(scope, async (stationFolder) => {
    const { stream, state } = jobOf(stationFolder, number);
    const from = state.technician;
    const name = optionText(to, 'person', 80);
    if (state.closed !== null)
      throw problem('job-closed', w`job ${number} is closed`, w`Only an open job can be handed over.`);
    if (name === from)
      throw problem('job-same-person', w`${from} already works on job ${number}`, w`Name another person.`);
    if (personNamed(stateOf(stationFolder), name) === null)
      await recordStation(stationFolder, [{ type: 'person-recorded', person: name, key: null }], stamp());
    append(stationFolder, stream, { type: 'job-handed-over', to: name });
    process.stdout.write(
      w`Job ${safeLine(number)} is now ${safeLine(name)}'s. Go on with: plugmark job --resume ${safeLine(number)}\n`,
    );
    return EXIT.done;
  });
}

/** Writes a closed job's papers, sealing it anew where it is not sealed as it stands; never over a record that somebody countersigned. */
export async function papersAgain(
  number: string,
  {
    out,
    csvLocale,
    ...scope
  }: Scope & AudienceOptions & { readonly out?: string; readonly csvLocale?: string },
): Promise<ExitCode> {
  const style = csvStyle(csvLocale);
  const audience = await audienceOf(scope);
  const folder = await folderOf(scope);
  const station = await openStation(await nameOf(folder), folder, stamp);
  try {
    const { stream, state } = jobOf(station, number);
    if (state.closed === null)
      throw problem(
        'job-open',
        w`job ${number} is not closed`,
        w`Finish it with "plugmark job --resume", or declare it void with "plugmark jobs void".`,
      );
    const to = out ?? folder;
    outputFolder(to);
    const sealed = await sealedBefore(station, stream);
    await refuseCountersigned(join(to, `${state.order.job}.record.json`), sealed?.bytes ?? null);
    return (await finish(station, stream, stamp, { folder: to, audience, style })).code;
  } finally {
    station.log.close();
  }
}

/** The name of a station that is there already: opening one that is not would set it up. */
async function nameOf(folder: string): Promise<string> {
  const stationFolder = await openStationFolder(folder);
  try {
    return stateOf(stationFolder).name;
  } finally {
    stationFolder.log.close();
  }
}

/** The sealed record itself is not written again. */
async function refuseCountersigned(path: string, sealed: Uint8Array | null): Promise<void> {
  const there = await readFile(path).catch(() => null);
  if (there === null || (sealed !== null && Buffer.compare(there, sealed) === 0)) return;
  const opened = openRecord(there);
  if (!opened.ok || opened.value.jws.signatures.length <= opened.value.record.signers.length) return;
  throw new ProblemError({
    code: 'record-countersigned',
    where: path,
    message: w`this record is countersigned and is never overwritten`,
    next: w`Name another folder with --out.`,
  });
}

interface Job {
  readonly stream: string;
  readonly entries: readonly LogEntry[];
  readonly state: JobState;
}

function jobOf({ log }: StationFolder, number: string): Job {
  const stream = `job:${number}`;
  const entries = log.entries(stream);
  const state = foldAll(entries.map(({ event }) => event));
  if (state !== null) return { stream, entries, state };
  throw problem('job-unknown', w`this station has no job ${number}`, w`List them with "plugmark jobs".`);
}

function append({ log }: StationFolder, stream: string, event: JobEvent): void {
  log.append(stream, [{ by: writerOf(event), event }], stamp());
}

const problem = (code: ProblemCode, message: string, next: string) =>
  new ProblemError({ code, message, next });
