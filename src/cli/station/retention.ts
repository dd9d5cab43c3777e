import { impactsOf } from '../../audit/impact-state.ts';
import { byYear, type Kept, keptOf, type Retention } from '../../audit/retention.ts';
import { ProblemError } from '../../problem.ts';
import type { Column } from '../../report/rows.ts';
import { rowsCsv } from '../../report/rows-csv.ts';
import { plural, w } from '../../words/catalogue.ts';
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
    message: w`the retention time is not set (1 to 100 years)`,
    next: w`Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.`,
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
  const head = [w`last entry in`, w`jobs`, w`must be kept`, w`held`, w`may go`];
  const rows = byYear(kept).map((one) => [
    one.year,
    String(one.jobs),
    String(one.must),
    String(one.held),
    String(one.may),
  ]);
  return [
    w`Retention of ${plural(years, { one: '# year', other: '# years' })} from the last entry of a job on${basis === undefined ? '' : ` (${safeLine(basis)})`}, as of ${today}.`,
    ...(oldest === undefined
      ? [w`There are no jobs.`]
      : ['', ...textTable(head, rows), '', w`The oldest is of ${oldest}.`]),
    ...(next === undefined ? [] : [w`The next time runs out on ${next}.`]),
    ...held.slice(0, 10).map(({ job, because }) => w`  held: ${safeLine(job)}, ${because ?? ''}`),
    ...(held.length > 10 ? [w`  and ${held.length - 10} more are held`] : []),
    w`Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.`,
  ];
}
