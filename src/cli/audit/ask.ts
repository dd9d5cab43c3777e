import { extname } from 'node:path';
import { z } from 'zod';
import type { AttemptRow } from '../../audit/attempt.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import { type AskedJob, answerFor, attemptException, type JobAnswer } from '../../audit/questions.ts';
import type { AttemptFilter, Records } from '../../audit/records.ts';
import { writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { attemptColumns, attemptsCsv, jobColumns, jobsCsv } from '../../report/ask-csv.ts';
import type { CsvStyle } from '../../report/csv-style.ts';
import type { Column } from '../../report/rows.ts';
import { rowsCsv } from '../../report/rows-csv.ts';
import { jobStateWords, kindWords, verdictWords } from '../../report/verdict.ts';
import { noted } from '../../report/words/index.ts';
import { ENGLISH, fixed, inLanguage, plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { askedAttempts, askedJobs } from '../answers/ask.ts';
import { type Asked, askedIn } from '../declare/filters.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type AskedScope, withRecords } from './asked.ts';

interface AskOptions extends AskedScope, Asked {
  readonly exceptions?: true;
  readonly attempts?: true;
  readonly csv?: true;
  readonly out?: string;
  readonly csvLocale?: string;
  readonly json?: true;
}

/** Answers one question to the records: the jobs, or the attempts, to which all that was named applies. */
export function ask(options: AskOptions): Promise<ExitCode> {
  return withRecords(options, async ({ records }) => {
    const { exceptions, attempts, csv, json, out } = options;
    const style = csvStyle(options.csvLocale);
    if ([csv, json, out].filter((one) => one !== undefined).length > 1)
      throw problem('--csv', w`CSV, JSON or a file at once`, w`Choose one of them.`);
    const filter = filterOf(options);
    if (attempts === true) {
      const rows = (await records.attemptsOf(filter)).filter(
        (row) => exceptions !== true || attemptException(row).length > 0,
      );
      if (out !== undefined) await writeList(out, attemptColumns(rows), rows, style);
      else if (csv === true) process.stdout.write(attemptsCsv(rows, style));
      else if (json === true) printJson(askedAttempts(rows));
      else print(attemptLines(rows));
      return EXIT.done;
    }
    const answersIn = csv === true || out !== undefined ? answersForPrograms : answersTo;
    const answers = (await answersIn(records, filter)).filter(
      (one) => exceptions !== true || one.exceptions.length > 0,
    );
    if (out !== undefined) await writeList(out, jobColumns(answers), answers, style);
    else if (csv === true) process.stdout.write(jobsCsv(answers, style));
    else if (json === true) printJson(askedJobs(answers));
    else print(jobLines(answers, exceptions === true));
    return EXIT.done;
  });
}

/** A list as a file of the kind that its name ends with. The libraries for it are loaded when they are wanted. */
async function writeList<T>(
  file: string,
  columns: readonly Column<T>[],
  rows: readonly T[],
  style: CsvStyle,
): Promise<void> {
  writeWhole(file, await listFile(extname(file), columns, rows, style));
  process.stdout.write(
    `${w`Written: ${safeLine(file)}, ${plural(rows.length, { one: '# row', other: '# rows' })}`}\n`,
  );
}

async function listFile<T>(
  kind: string,
  columns: readonly Column<T>[],
  rows: readonly T[],
  style: CsvStyle,
): Promise<string | Uint8Array> {
  if (kind === '.csv') return rowsCsv(columns, rows, style);
  if (kind === '.xlsx') return (await import('../../report/rows-workbook.ts')).rowsWorkbook(columns, rows);
  if (kind === '.parquet') return (await import('../../report/rows-parquet.ts')).rowsParquet(columns, rows);
  throw problem(
    '--out',
    w`the name of this file does not say what it is to be`,
    w`Let it end in .csv, .xlsx or .parquet.`,
  );
}

/** The jobs to which a question applies, the latest first, each with what there is to say of it. */
export const answersTo = (records: Records, filter: AttemptFilter) =>
  answersMade(records, filter, (make) => make());

/** The same where they get into a table or a package, whose words are the same for every reader. */
export const answersForPrograms = (records: Records, filter: AttemptFilter) =>
  answersMade(records, filter, (make) => inLanguage(ENGLISH, make));

async function answersMade(
  records: Records,
  filter: AttemptFilter,
  said: (make: () => readonly JobAnswer[]) => readonly JobAnswer[],
): Promise<readonly JobAnswer[]> {
  const jobs = await records.jobsOf(filter);
  const attempts = new Map(jobs.map(({ stream }) => [stream, [] as AttemptRow[]]));
  for (const row of await records.attemptsIn(jobs)) attempts.get(row.stream)?.push(row);
  const setups = await records.setupsOf(
    new Set([...attempts.values()].flatMap(([first]) => (first === undefined ? [] : [first.setupKey]))),
  );
  const impacts = new Map(
    (await records.stations()).map(({ log, entries }) => [log, impactsOf(entries)] as const),
  );
  return said(() =>
    jobs.map((job) => {
      const own = attempts.get(job.stream) ?? [];
      const setup = own[0] === undefined ? null : (setups.get(own[0].setupKey) ?? null);
      return answerFor(job, own, setup, impacts.get(logOf(job)) ?? []);
    }),
  );
}

/** An archive names a job by its log and its stream. */
function logOf({ stream, station }: JobAnswer | AskedJob): string | null {
  return station === undefined ? null : stream.slice(0, stream.indexOf(' '));
}

/** Throws a {@link ProblemError} for a day that is none, and for days in the wrong order. */
export function filterOf(options: Asked): AttemptFilter {
  const { from, to } = options;
  for (const [name, day] of [
    ['--from', from],
    ['--to', to],
  ] as const)
    if (day !== undefined && !z.iso.date().safeParse(day).success)
      throw problem(name, w`this is not a date`, w`Write it as 2026-03-02.`);
  if (from !== undefined && to !== undefined && from > to)
    throw problem('--from', w`${from} is after ${to}`, w`Name the earlier day first.`);
  return askedIn(options);
}

function jobLines(answers: readonly JobAnswer[], withExceptions: boolean): readonly string[] {
  if (answers.length === 0) return [w`No job matches.`];
  const head = [
    w`job`,
    w`state`,
    w`opened (UTC)`,
    w`VIN`,
    w`plate`,
    w`fleet`,
    w`technician`,
    w`proofs`,
    w`exceptions`,
  ];
  const some = answers.some(({ station }) => station !== undefined);
  const rows = answers.map((one) => [
    ...(some ? [one.station ?? '-'] : []),
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
  const details = answers.flatMap(({ job, station, exceptions }) => [
    '',
    `${safeLine(station === undefined ? job : `${station}, ${job}`)}:`,
    ...exceptions.map((words) => `  ${safeLine(words)}`),
  ]);
  return [
    ...textTable(some ? [w`station`, ...head] : head, rows),
    ...(withExceptions ? details : []),
    '',
    plural(answers.length, { one: '# job.', other: '# jobs.' }),
  ];
}

function attemptLines(rows: readonly AttemptRow[]): readonly string[] {
  if (rows.length === 0) return [w`No attempt matches.`];
  const head = [
    w`time (UTC)`,
    w`job`,
    w`cylinder`,
    w`what`,
    w`kind`,
    w`value`,
    w`verdict`,
    w`tool`,
    w`technician`,
    w`part`,
    w`lot`,
  ];
  const some = rows.some(({ station }) => station !== undefined);
  const cells = rows.map((row) => [
    ...(some ? [row.station ?? '-'] : []),
    row.at.slice(0, 16).replace('T', ' '),
    row.job,
    String(row.cylinder),
    row.quantity === 'torque' ? w`pull ${row.number}` : w`gap ${row.number}`,
    kindWords(row),
    figureOf(row),
    noted(verdictWords(row), row.source),
    row.serial === null ? row.tool : `${row.tool} (${row.serial})`,
    row.technician,
    row.part,
    row.lot ?? '-',
  ]);
  return [
    ...textTable(some ? [w`station`, ...head] : head, cells),
    '',
    plural(rows.length, { one: '# attempt.', other: '# attempts.' }),
  ];
}

function figureOf({ valueSi, readingSi, quantity }: AttemptRow): string {
  const value = valueSi ?? readingSi;
  if (value === null) return '-';
  return quantity === 'torque' ? `${fixed(value, 2)} N·m` : `${fixed(value, 3)} mm`;
}

function problem(where: string, message: string, next: string): ProblemError {
  return new ProblemError({ code: 'option-not-valid', where, message, next });
}
