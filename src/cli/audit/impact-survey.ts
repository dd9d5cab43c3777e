/**
 * A tool that was out of tolerance and was lent from station to station: what it was used for is judged again over all of
 * them in one go. Each station records its own impact assessment and decides; the survey says what each has decided so far.
 */
import type { JudgedAgain } from '../../audit/impact.ts';
import { type Assessment, assess } from '../../audit/impact-items.ts';
import { type Span, spanOf } from '../../audit/impact-span.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import type { StationOfRecords } from '../../audit/records.ts';
import type { StationEntry } from '../../evidence/log.ts';
import type { ImpactItem } from '../../evidence/station-event.ts';
import { writeInPlace } from '../../files/output.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import { marksOf } from '../../job/proof.ts';
import { ProblemError } from '../../problem.ts';
import { cylindersOf, SORT_WORD, standOf } from '../../report/impact.ts';
import { judgedAgainCsv } from '../../report/impact-csv.ts';
import { marksText } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { today } from '../station/clock.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { entriesOfAll, withRecords } from './asked.ts';
import { readCertificateFile } from './certificate.ts';
import { judgedIn, ofJobsRepeated } from './impact.ts';

interface SurveyOptions {
  readonly asFound: string;
  readonly archive: string;
  readonly since?: string;
  readonly out?: string;
}

/** A station that used the tool in the time in question. */
interface Surveyed {
  readonly name: string;
  readonly assessed: Assessment;
  /** Those that the station has recorded on this very file. */
  readonly recorded: readonly ImpactAssessment[];
}

/** Exit code 1 where a proof no longer holds. */
export function surveyImpact(serial: string, options: SurveyOptions): Promise<ExitCode> {
  const { archive, since = null } = options;
  return withRecords({ station: '', archive }, async ({ records }) => {
    const { certificate: asFound, digest } = await readCertificateFile(options.asFound);
    if (asFound.serial !== serial)
      throw new ProblemError({
        code: 'certificate-other-serial',
        where: options.asFound,
        message: safeLine(w`it is of ${asFound.serial}, and not of ${serial}`),
        next: w`Take the certificate of this tool.`,
      });
    const stations = await records.stations();
    const entries = entriesOfAll(stations).filter((entry) => isOfTool(entry, serial));
    const tool = nameOf(entries) ?? serial;
    const span = orThrow(spanOf(entries, { tool, asFound, since, today: today() }));
    const judged = await judgedIn(records, tool, asFound, span, []);
    const repeated = await ofJobsRepeated(records, judged);
    const surveyed = stations.flatMap((station): Surveyed[] => {
      const own = judged.filter((one) => isAt(one, station));
      const again = repeated.filter((row) => isAt({ row }, station));
      if (own.length === 0) return [];
      const recorded = impactsOf(station.entries).filter(({ assessed }) => assessed.digest === digest);
      return [{ name: station.name, assessed: assess(own, again), recorded }];
    });
    if (options.out !== undefined)
      await writeInPlace(options.out, judgedAgainCsv(surveyed.flatMap(({ assessed }) => assessed.sorted)));
    print([
      ...headLines(asFound, span, { all: stations.length, using: surveyed.length }),
      ...markLines(judged),
      '',
      ...stationTable(surveyed),
      ...itemTable(surveyed),
      '',
      ...nextLines(surveyed, tool),
      ...(options.out === undefined ? [] : [w`Written: ${safeLine(options.out)}`]),
    ]);
    return surveyed.some(({ assessed }) => assessed.items.length > 0) ? EXIT.failed : EXIT.done;
  });
}

/** An archive names a job by its log and its stream. */
const isAt = ({ row }: Pick<JudgedAgain, 'row'>, { log }: StationOfRecords) =>
  row.stream.startsWith(`${log} `);

/** Other tools of the same name say nothing of this one. */
const isOfTool = ({ event }: StationEntry, serial: string) =>
  event.type !== 'instrument-recorded' || event.instrument.serial === serial;

/** As the last station that recorded it calls it. */
const nameOf = (entries: readonly StationEntry[]): string | null =>
  entries
    .flatMap(({ event }) => (event.type === 'instrument-recorded' ? [event.instrument.id] : []))
    .at(-1) ?? null;

function headLines(
  { number, serial }: Certificate,
  { lastGood, from, foundOn }: Span,
  { all, using }: { readonly all: number; readonly using: number },
): readonly string[] {
  const since = lastGood === null ? w`its first use on ${from}` : w`${lastGood.number} of ${lastGood.date}`;
  return [
    safeLine(w`${serial}, by what ${number} of ${foundOn} found: everything since ${since} judged again.`),
    w`Used in that time at ${using} of ${all} stations.`,
  ];
}

function markLines(judged: readonly JudgedAgain[]): readonly string[] {
  const marks = marksOf(judged.map(({ row }) => row.source));
  return marks.length === 0 ? [] : [w`${marksText(marks)}: it says nothing about real engines.`];
}

const stationTable = (surveyed: readonly Surveyed[]): readonly string[] =>
  textTable(
    [w`station`, w`attempts`, w`proofs still in`, w`doubtful`, w`out`, w`jobs touched`, w`recorded there`],
    surveyed.map(({ name, assessed: { attempts, stillIn, doubtful, out, items }, recorded }) => [
      name,
      ...[attempts, stillIn, doubtful, out, items.length].map(String),
      recorded.map(({ assessment }) => assessment).join(', ') || w`not yet`,
    ]),
  );

function itemTable(surveyed: readonly Surveyed[]): readonly string[] {
  const rows = surveyed.flatMap(({ name, assessed, recorded }) =>
    assessed.items.map((item) => [
      name,
      item.job,
      item.on,
      item.vin ?? '-',
      item.plate ?? '-',
      item.fleet ?? '-',
      SORT_WORD[item.sort],
      cylinders(item),
      standOfItem(recorded, item),
    ]),
  );
  if (rows.length === 0) return [];
  return [
    '',
    ...textTable(
      [w`station`, w`job`, w`day`, w`VIN`, w`plate`, w`fleet`, w`sort`, w`cylinders`, w`decided there`],
      rows,
    ),
  ];
}

const cylinders = ({ attempts }: ImpactItem): string =>
  (['out', 'doubtful'] as const).flatMap((sort) => cylindersOf({ attempts }, sort) || []).join(', ');

function standOfItem(recorded: readonly ImpactAssessment[], { job }: ImpactItem): string {
  const item = recorded.flatMap(({ items }) => items).findLast((one) => one.job === job);
  return item === undefined ? w`not recorded` : standOf(item);
}

function nextLines(surveyed: readonly Surveyed[], tool: string): readonly string[] {
  const missing = surveyed.filter(({ recorded }) => recorded.length === 0).map(({ name }) => name);
  return [
    w`The survey records nothing.`,
    ...(missing.length === 0
      ? []
      : [
          safeLine(
            w`Still to be recorded and decided at ${missing.join(', ')}: plugmark impact ${tool} --as-found FILE --by NAME`,
          ),
        ]),
  ];
}
