import { impactsOf } from '../../audit/impact-state.ts';
import { byYear, type Kept, keptOf, type Retention } from '../../audit/retention.ts';
import { ProblemError } from '../../problem.ts';
import type { Column } from '../../report/rows.ts';
import { rowsCsv } from '../../report/rows-csv.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { retained } from '../answers/retention.ts';
import { today } from '../station/clock.ts';
import { readStationFile } from '../station/station-file.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type AskedScope, withRecords } from './asked.ts';

interface RetentionOptions extends AskedScope {
  readonly years?: number;
  readonly csv?: true;
  readonly csvLocale?: string;
  readonly json?: true;
}

/** How old the records are, and what the shop's retention time says of them. Deletes nothing. */
export async function retention(options: RetentionOptions): Promise<ExitCode> {
  const rule = await ruleOf(options);
  return withRecords(options, async ({ records }) => {
    const on = today();
    const kept: Kept[] = [];
    // Two stations may have a job of one number: what one assesses is nothing to the other's.
    for (const { log, entries } of await records.stations()) {
      const jobs = await records.jobsOf(log === null ? {} : { log });
      kept.push(...keptOf(jobs, rule, impactsOf(entries), on));
    }
    if (options.csv === true)
      process.stdout.write(rowsCsv(columnsOf(kept), kept, csvStyle(options.csvLocale)));
    else if (options.json === true) printJson(retained(on, rule, kept));
    else print(lines(kept, rule, on));
    return EXIT.done;
  });
}

async function ruleOf({ years, station, data, archive }: RetentionOptions): Promise<Retention> {
  if (years !== undefined && years >= 1 && years <= 100) return { years };
  const stated =
    years === undefined && data === undefined && archive === undefined
      ? (await readStationFile(station)).retention
      : undefined;
  if (stated !== undefined) return stated;
  throw new ProblemError({
    code: 'retention-unknown',
    where: years === undefined ? 'retention' : '--years',
    message: w`the retention time is not set (1 to 100 years)`,
    next:
      archive === undefined
        ? w`Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.`
        : w`Ask what law and contracts require. Then name it: --years 7. Each shop of an archive may have its own.`,
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

/** With the station in front, where they are of several. */
const columnsOf = (kept: readonly Kept[]): readonly Column<Kept>[] =>
  kept.some(({ station }) => station !== undefined)
    ? [{ header: 'Station', value: ({ station }) => station ?? null }, ...COLUMNS]
    : COLUMNS;

const nameOf = ({ station, job }: Kept): string =>
  safeLine(station === undefined ? job : `${station}, ${job}`);

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
    ...held.slice(0, 10).map((one) => w`  held: ${nameOf(one)}, ${one.because ?? ''}`),
    ...(held.length > 10 ? [w`  and ${held.length - 10} more are held`] : []),
    w`Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.`,
  ];
}
