import { impactsOf } from '../../audit/impact-state.ts';
import { byYear, type Kept, keptOf, type Retention } from '../../audit/retention.ts';
import { ProblemError } from '../../problem.ts';
import type { Column } from '../../report/rows.ts';
import { rowsCsv } from '../../report/rows-csv.ts';
import { printJson } from '../answers/answer.ts';
import { retained } from '../answers/retention.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { today } from './clock.ts';
import { type Scope, withStationFolder } from './scope.ts';
import { readStationFile } from './station-file.ts';

interface RetentionOptions extends Scope {
  readonly years?: number;
  readonly csv?: true;
  readonly csvLocale?: string;
  readonly json?: true;
}

/** How old the records are, and what the shop's retention time says of them. Deletes nothing. */
export async function retention(options: RetentionOptions): Promise<ExitCode> {
  const rule = await ruleOf(options);
  return withStationFolder(options, ({ log }) => {
    const on = today();
    const kept = keptOf(log.history.jobsOf({}), rule, impactsOf(log.stationEntries()), on);
    if (options.csv === true) process.stdout.write(rowsCsv(COLUMNS, kept, csvStyle(options.csvLocale)));
    else if (options.json === true) printJson(retained(on, rule, kept));
    else print(lines(kept, rule, on));
    return EXIT.done;
  });
}

async function ruleOf({ years, station, data }: RetentionOptions): Promise<Retention> {
  if (years !== undefined && years >= 1 && years <= 100) return { years };
  const stated =
    years === undefined && data === undefined ? (await readStationFile(station)).retention : undefined;
  if (stated !== undefined) return stated;
  throw new ProblemError({
    code: 'retention-unknown',
    where: years === undefined ? 'retention' : '--years',
    message: 'the retention time is not set (1 to 100 years)',
    next: 'Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.',
  });
}

const COLUMNS: readonly Column<Kept>[] = [
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
  const head = ['last entry in', 'jobs', 'must be kept', 'held', 'may go'];
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
    'Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.',
  ];
}
