import type { AttemptRow } from '../../audit/attempt.ts';
import { type DriftFinding, driftFinding, permissibleOf } from '../../audit/drift-finding.ts';
import type { Records } from '../../audit/records.ts';
import type { StationEntry } from '../../evidence/log.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { ProblemError } from '../../problem.ts';
import { chartSvg } from '../../report/charts/chart.ts';
import { driftCharts, driftPaper } from '../../report/drift.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { toolDrift } from '../answers/drift.ts';
import { programVersion } from '../help/version.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { now } from '../station/clock.ts';
import { readerOf } from '../station/paper-reader.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type AskedScope, entriesOfAll, listedInstruments, withRecords } from './asked.ts';
import { keptFor } from './kept-certificates.ts';
import { PICTURE, printPaper, writeFiles } from './papers.ts';

export interface DriftOptions extends AskedScope, AudienceOptions {
  /** Per cent of the reading; what the tool's own data permit where it is left out. */
  readonly permissible?: number;
  readonly last: number;
  readonly out?: string;
  readonly json?: true;
}

/** Has a tool drifted? By its pulls since its calibration and by its certificates. Exit code 1 where it wants a look before it is due. */
export async function showDrift(tool: string, options: DriftOptions): Promise<ExitCode> {
  const listed = await listedInstruments(options);
  return await withRecords(options, async ({ records, stationFolder }) => {
    const entries = entriesOfAll(await records.stations());
    const instrument = await instrumentOf(records, entries, tool, listed);
    const rows = await attemptsWith(records, instrument);
    const permissible = orThrow(permissibleOf(instrument, options.permissible));
    // Files of certificates stay at their station; what jobs were done by is in its log.
    const { certificates, lost } =
      stationFolder === null
        ? { certificates: [], lost: [] }
        : await keptFor(stationFolder, entries, instrument);
    const finding = orThrow(
      driftFinding({ name: instrument.serial ?? instrument.id, instrument, rows, permissible }, entries, [
        ...certificates,
        ...(await ofJobs(records, rows, instrument)),
      ]),
    );
    const code = finding.verdict === null ? EXIT.done : EXIT.failed;
    const madeAt = now();
    const paper = () =>
      driftPaper(finding, { last: options.last, lost, program: `plugmark ${programVersion()}`, madeAt });
    const written =
      options.out === undefined
        ? []
        : writeFiles(options.out, [
            ['drift.pdf', await writePaper(paper, { reader: await readerOf(await audienceOf(options)) })],
            ...pictures(finding, options.last),
          ]);
    if (options.json === true) {
      printJson(toolDrift(finding, lost));
      return code;
    }
    printPaper(paper());
    print(written);
    return code;
  });
}

function pictures(finding: DriftFinding, last: number): readonly (readonly [string, string])[] {
  const { pulls, certificates } = driftCharts(finding, last);
  return [
    ...(pulls === null ? [] : [['pulls.svg', chartSvg(pulls, PICTURE)] as const]),
    ...(certificates === null ? [] : [['certificates.svg', chartSvg(certificates, PICTURE)] as const]),
  ];
}

/** By its name or serial number, as the station file or else the log has it last. Problem: `tool-unknown`. */
async function instrumentOf(
  records: Records,
  entries: readonly StationEntry[],
  tool: string,
  listed: readonly Instrument[],
): Promise<Instrument> {
  const isIt = ({ id, serial }: Instrument) => id === tool || serial === tool;
  const recorded = entries.flatMap(({ event }) =>
    event.type === 'instrument-recorded' ? [event.instrument] : [],
  );
  const ofLastJob = async () => {
    const row = (await records.attemptsOf({ tool })).at(-1);
    if (row === undefined) return undefined;
    const setup = (await records.setupsOf([row.setupKey])).get(row.setupKey);
    return setup?.instruments.find(({ id }) => id === row.tool);
  };
  const instrument = listed.find(isIt) ?? recorded.findLast(isIt) ?? (await ofLastJob());
  if (instrument !== undefined) return instrument;
  throw new ProblemError({
    code: 'tool-unknown',
    where: tool,
    message: w`neither the log nor the station file has a tool of this name or serial number`,
    next: w`See "plugmark calendar" for the tools of this station.`,
  });
}

/** By serial number: a tool keeps that under another name, and its name may have been another tool's. */
async function attemptsWith(records: Records, { serial, id }: Instrument): Promise<readonly AttemptRow[]> {
  const rows = await records.attemptsOf({ tool: serial ?? id });
  return rows.filter((row) =>
    serial === undefined ? row.serial === null && row.tool === id : row.serial === serial,
  );
}

/** The certificates that its jobs were done by. */
async function ofJobs(
  records: Records,
  rows: readonly AttemptRow[],
  instrument: Instrument,
): Promise<readonly Certificate[]> {
  const setups = await records.setupsOf(new Set(rows.map(({ setupKey }) => setupKey)));
  return [...setups.values()].flatMap(({ instruments }) =>
    instruments.flatMap(({ serial, certificate }) =>
      serial === instrument.serial && certificate !== undefined ? [certificate] : [],
    ),
  );
}
