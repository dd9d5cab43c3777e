import { z } from 'zod';
import type { AttemptFilter } from '../../../db/history-filter.ts';
import type { AttemptRow } from '../../audit/attempt.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import { answerFor, attemptException, type JobAnswer } from '../../audit/questions.ts';
import { ProblemError } from '../../problem.ts';
import { attemptsCsv, jobsCsv } from '../../report/ask-csv.ts';
import { jobStateWords, kindWords, verdictWords } from '../../report/verdict.ts';
import { noted } from '../../report/words/index.ts';
import { ENGLISH, inLanguage } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { askedAttempts, askedJobs } from '../answers/ask.ts';
import { type Asked, askedIn } from '../declare/filters.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';

interface AskOptions extends Scope, Asked {
  readonly exceptions?: true;
  readonly attempts?: true;
  readonly csv?: true;
  readonly csvLocale?: string;
  readonly json?: true;
}

/** Answers one question to the records: the jobs, or the attempts, to which all that was named applies. */
export function ask(options: AskOptions): Promise<ExitCode> {
  return withStationFolder(options, (stationFolder) => {
    const { exceptions, attempts, csv, json } = options;
    const style = csvStyle(options.csvLocale);
    if (csv === true && json === true) throw problem('--csv', 'CSV and JSON at once', 'Choose one of them.');
    const filter = filterOf(options);
    if (attempts === true) {
      const rows = stationFolder.log.history
        .attemptsOf(filter)
        .filter((row) => exceptions !== true || attemptException(row).length > 0);
      if (csv === true) process.stdout.write(attemptsCsv(rows, style));
      else if (json === true) printJson(askedAttempts(rows));
      else print(attemptLines(rows));
      return EXIT.done;
    }
    const answersIn = csv === true ? answersForPrograms : answersTo;
    const answers = answersIn(stationFolder, filter).filter(
      (one) => exceptions !== true || one.exceptions.length > 0,
    );
    if (csv === true) process.stdout.write(jobsCsv(answers, style));
    else if (json === true) printJson(askedJobs(answers));
    else print(jobLines(answers, exceptions === true));
    return EXIT.done;
  });
}

/** The jobs to which a question applies, the latest first, each with what there is to say of it. */
function answersTo({ log }: StationFolder, filter: AttemptFilter): readonly JobAnswer[] {
  const impacts = impactsOf(log.stationEntries());
  return log.history.jobsOf(filter).map((job) => {
    const attempts = log.history.attemptsOf({ job: job.job });
    const key = attempts[0]?.setupKey;
    return answerFor(job, attempts, key === undefined ? null : log.history.setupOf(key), impacts);
  });
}

/** The same where they get into a table or a package, whose words are the same for every reader. */
export const answersForPrograms = (stationFolder: StationFolder, filter: AttemptFilter) =>
  inLanguage(ENGLISH, () => answersTo(stationFolder, filter));

/** Throws a {@link ProblemError} for a day that is none, and for days in the wrong order. */
export function filterOf(options: Asked): AttemptFilter {
  const { from, to } = options;
  for (const [name, day] of [
    ['--from', from],
    ['--to', to],
  ] as const)
    if (day !== undefined && !z.iso.date().safeParse(day).success)
      throw problem(name, 'this is not a date', 'Write it as 2026-03-02.');
  if (from !== undefined && to !== undefined && from > to)
    throw problem('--from', `${from} is after ${to}`, 'Name the earlier day first.');
  return askedIn(options);
}

function jobLines(answers: readonly JobAnswer[], withExceptions: boolean): readonly string[] {
  if (answers.length === 0) return ['No job matches.'];
  const head = [
    'job',
    'state',
    'opened (UTC)',
    'VIN',
    'plate',
    'fleet',
    'technician',
    'proofs',
    'exceptions',
  ];
  const rows = answers.map((one) => [
    one.job,
    jobStateWords(one),
    one.openedAt.slice(0, 16).replace('T', ' '),
    one.vin ?? '-',
    one.plate ?? '-',
    one.fleet ?? '-',
    one.technicians.join(', ') || '-',
    String(one.proven),
    String(one.exceptions.length),
  ]);
  const details = answers.flatMap(({ job, exceptions }) => [
    '',
    `${safeLine(job)}:`,
    ...exceptions.map((words) => `  ${safeLine(words)}`),
  ]);
  return [...textTable(head, rows), ...(withExceptions ? details : []), '', count(answers.length, 'job')];
}

function attemptLines(rows: readonly AttemptRow[]): readonly string[] {
  if (rows.length === 0) return ['No attempt matches.'];
  const head = [
    'time (UTC)',
    'job',
    'cylinder',
    'what',
    'kind',
    'value',
    'verdict',
    'tool',
    'technician',
    'part',
    'lot',
  ];
  const cells = rows.map((row) => [
    row.at.slice(0, 16).replace('T', ' '),
    row.job,
    String(row.cylinder),
    `${row.quantity === 'torque' ? 'pull' : 'gap'} ${row.number}`,
    kindWords(row),
    figureOf(row),
    noted(verdictWords(row), row.source),
    row.serial === null ? row.tool : `${row.tool} (${row.serial})`,
    row.technician,
    row.part,
    row.lot ?? '-',
  ]);
  return [...textTable(head, cells), '', count(rows.length, 'attempt')];
}

function figureOf({ valueSi, readingSi, quantity }: AttemptRow): string {
  const value = valueSi ?? readingSi;
  if (value === null) return '-';
  return quantity === 'torque' ? `${value.toFixed(2)} N·m` : `${value.toFixed(3)} mm`;
}

const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}.`;

function problem(where: string, message: string, next: string): ProblemError {
  return new ProblemError({ code: 'option-not-valid', where, message, next });
}
