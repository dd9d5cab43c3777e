import { impactsOf } from '../../audit/impact-state.ts';
import { byYear, type Kept, keptOf, type Retention } from '../../audit/retention.ts';
import { ProblemError } from '../../problem.ts';
import { type CsvColumn, rowsCsv } from '../../report/rows-csv.ts';
import { printJson } from '../answers/answer.ts';
import { retained } from '../answers/jobs.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { readStationFile } from './station-file.ts';

interface RetentionOptions extends Scope {
  readonly years?: number;
  readonly csv?: true;
  readonly json?: true;
}

/** How old the records are, and what the shop's retention time says of them. Deletes nothing. */
export async function retention(options: RetentionOptions): Promise<ExitCode> {
  const rule = await ruleOf(options);
  return withStationFolder(options, ({ log }) => {
    const today = new Date().toISOString().slice(0, 10);
    const kept = keptOf(log.history.jobsOf({}), rule, impactsOf(log.stationEntries()), today);
    if (options.csv === true) process.stdout.write(rowsCsv(COLUMNS, kept));
    else if (options.json === true) printJson(retained(today, rule, kept));
    else print(lines(kept, rule, today));
    return EXIT.done;
  });
}

async function ruleOf({ years, station, data }: RetentionOptions): Promise<Retention> {
  if (years !== undefined && years >= 1 && years <= 100) return { years };
  const told =
    years === undefined && data === undefined ? (await readStationFile(station)).retention : undefined;
  if (told !== undefined) return told;
  throw new ProblemError({
    code: 'retention-unknown',
    where: years === undefined ? 'retention' : '--years',
    message: 'nothing says for how many years (1 to 100) this shop keeps its records',
    next: 'Ask what the law of the place and your contracts ask for, then name it: --years 7, or "retention" in the station file.',
  });
}

const COLUMNS: readonly CsvColumn<Kept>[] = [
  { header: 'Job', value: ({ job }) => job },
  { header: 'State', value: ({ state }) => state },
  { header: 'Last entry (UTC)', value: ({ lastOn }) => lastOn },
  { header: 'To be kept until', value: ({ until }) => until },
  { header: 'Standing', value: ({ standing }) => standing },
  { header: 'Held because', value: ({ because }) => because },
];

function lines(kept: readonly Kept[], { years, basis }: Retention, today: string): readonly string[] {
  const oldest = kept.map(({ lastOn }) => lastOn).sort()[0];
  const held = kept.filter(({ standing }) => standing === 'held');
  const next = kept.flatMap(({ until }) => (until >= today ? [until] : [])).sort()[0];
  const head = ['last entry in', 'jobs', 'must be kept', 'held', 'need not be kept'];
  const rows = byYear(kept).map((one) => [
    one.year,
    String(one.jobs),
    String(one.must),
    String(one.held),
    String(one.may),
  ]);
  return [
    `Retention of ${years} ${years === 1 ? 'year' : 'years'} from the last entry of a job on${basis === undefined ? '' : ` (${safeLine(basis)})`}, as of ${today}.`,
    ...(oldest === undefined
      ? ['There are no jobs.']
      : ['', ...textTable(head, rows), '', `The oldest is of ${oldest}.`]),
    ...(next === undefined ? [] : [`The next time runs out on ${next}.`]),
    ...held.slice(0, 10).map(({ job, because }) => `  held: ${safeLine(job)}, ${because ?? ''}`),
    ...(held.length > 10 ? [`  and ${held.length - 10} more are held`] : []),
    'Nothing was deleted. The log is one chain of proof, so that no entry of it can go by itself; what may go are papers and records that were handed on.',
  ];
}
