import { type CalendarLine, calendar, cyclesAre, type InUse, USUAL_MONTHS } from '../../audit/calendar.ts';
import { icalendar } from '../../audit/calendar-ics.ts';
import { firstBeyond } from '../../audit/certificate-line.ts';
import { certificateDrift } from '../../audit/drift-finding.ts';
import type { Since } from '../../audit/impact-held.ts';
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import { lastFound, withFindings } from '../../audit/out-of-tolerance.ts';
import type { Records } from '../../audit/records.ts';
import type { StationEntry } from '../../evidence/log.ts';
import { writeInPlace } from '../../files/output.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { offBy, unitOf } from '../../instrument/unfit.ts';
import { ProblemError } from '../../problem.ts';
import type { IntervalBounds, NextInterval } from '../../statistics/staircase.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { toolCalendar } from '../answers/calendar.ts';
import { now } from '../station/clock.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type AskedScope, entriesOfAll, listedInstruments, withRecords } from './asked.ts';
import { jobsSince, sinceLines } from './impact-since.ts';
import { keptFor } from './kept-certificates.ts';

export interface CalendarOptions extends AskedScope {
  readonly soon: number;
  readonly staircase?: true;
  readonly shortest: number;
  readonly longest: number;
  readonly ics?: string;
  readonly json?: true;
}

/** Which tool must be calibrated when. Exit code 1 where one is due. */
export async function showCalendar(options: CalendarOptions): Promise<ExitCode> {
  const named = await listedInstruments(options);
  return await withRecords(options, async ({ records, name, stationFolder }) => {
    const at = now();
    const stations = await records.stations();
    const entries = entriesOfAll(stations);
    const impacts = stations.flatMap((station) => impactsOf(station.entries));
    const inUse = await inUseOf(records, { entries, impacts, named });
    const lines = calendar(inUse, {
      today: at.slice(0, 10),
      soonDays: options.soon,
      staircase: options.staircase === true ? boundsOf(options) : null,
    });
    if (lines.length === 0) throw noTools();
    const drifting = await driftingIn(stationFolder, entries, inUse);
    const since: Since[] = [];
    for (const { log, entries: own } of stations)
      since.push(...(await jobsSince(records, impactsOf(own), log)));
    if (options.ics !== undefined) {
      if (lines.every(({ due }) => due === null)) throw nothingDue();
      await writeInPlace(options.ics, icalendar(lines, name(), at));
    }
    if (options.json === true) printJson(toolCalendar(at.slice(0, 10), lines, drifting, since));
    else
      print([
        ...tableOf(lines, drifting),
        ...usualLines(lines),
        ...outOfToleranceLines(inUse),
        ...sinceLines(since),
        ...driftLines(drifting),
        cyclesAre(),
        ...(options.ics === undefined ? [] : [w`Written: ${safeLine(options.ics)}`]),
      ]);
    return lines.some(({ state }) => state === 'due' || state === 'out-of-tolerance')
      ? EXIT.failed
      : EXIT.done;
  });
}

function boundsOf({ shortest, longest }: CalendarOptions): IntervalBounds {
  if (shortest >= 1 && shortest <= longest) return { shortestDays: shortest, longestDays: longest };
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--shortest',
    message: w`intervals from ${shortest} to ${longest} days leave no room`,
    next: w`Give the shortest interval first, one day or more.`,
  });
}

/** Every instrument as the station file or else the log has it last, by serial number where it has one. */
async function inUseOf(
  records: Records,
  {
    entries,
    impacts,
    named,
  }: {
    readonly entries: readonly StationEntry[];
    readonly impacts: readonly ImpactAssessment[];
    readonly named: readonly Instrument[];
  },
): Promise<readonly InUse[]> {
  const latest = new Map<string, Instrument>();
  const firstUsed = new Map<string, string>();
  const take = (instrument: Instrument) => latest.set(nameOf(instrument), instrument);
  for (const { at, event } of entries) {
    if (event.type !== 'instrument-recorded') continue;
    const name = nameOf(event.instrument);
    if (!firstUsed.has(name)) firstUsed.set(name, at.slice(0, 10));
    take(event.instrument);
  }
  for (const instrument of named) take(instrument);
  const inUse: InUse[] = [];
  for (const instrument of withFindings([...latest.values()], impacts)) {
    const name = nameOf(instrument);
    const from = instrument.certificate?.date ?? '0001-01-01';
    const { count, lastAt } = await records.toolUse(name, from);
    const asFound = lastFound(instrument, entries);
    inUse.push({
      instrument,
      cycles: count,
      lastUsed: lastAt?.slice(0, 10) ?? null,
      firstUsed: firstUsed.get(name) ?? null,
      asFound,
    });
  }
  return inUse;
}

const nameOf = ({ serial, id }: Instrument) => serial ?? id;

/** The day from which a tool may lie beyond what is permitted, by the line through its certificates; by serial number. */
async function driftingIn(
  stationFolder: StationFolder | null,
  entries: readonly StationEntry[],
  inUse: readonly InUse[],
): Promise<ReadonlyMap<string, string>> {
  const drifting = new Map<string, string>();
  for (const { instrument } of inUse) {
    const { serial, permissibleDeviation: permissible } = instrument;
    if (serial === undefined || permissible === undefined) continue;
    const certificates =
      stationFolder === null ? [] : (await keptFor(stationFolder, entries, instrument)).certificates;
    const drift = certificateDrift(instrument, entries, certificates, { permissible, usedAt: null });
    const first = drift.ok ? firstBeyond(drift.value) : null;
    if (first?.finding === 'warning' && first.outsideOn !== null) drifting.set(serial, first.outsideOn);
  }
  return drifting;
}

const driftLines = (drifting: ReadonlyMap<string, string>): readonly string[] =>
  [...drifting].map(([serial, from]) =>
    safeLine(
      w`Drift: by its certificates ${serial} may lie beyond what is permitted from ${from} on; see "plugmark drift ${serial}".`,
    ),
  );

const outOfToleranceLines = (inUse: readonly InUse[]): readonly string[] =>
  inUse.flatMap(({ instrument }) => {
    const { id, serial, outOfTolerance } = instrument;
    if (outOfTolerance === undefined) return [];
    return safeLine(
      w`Out of tolerance: ${id} (${serial ?? '-'}) on ${outOfTolerance.on}, ${offBy(outOfTolerance, unitOf(instrument))}; see "plugmark impact show ${outOfTolerance.impact}". It is due now. A certificate of that day or later makes it fit again.`,
    );
  });

const STATE_WORDS: Readonly<Record<CalendarLine['state'], string>> = phrases({
  'out-of-tolerance': '! OUT OF TOLERANCE',
  due: '! DUE',
  soon: '~ soon',
  'in-date': '  in date',
  'data-sheet': '  on data sheet',
  'no-certificate': '? not used yet, no certificate',
});

function stateWords(
  { state, serial, outOfTolerance, onDataSheetSince }: CalendarLine,
  drifting: ReadonlyMap<string, string>,
): string {
  if (outOfTolerance !== null) return `${STATE_WORDS['out-of-tolerance']} (${outOfTolerance.impact})`;
  if (serial === null || !drifting.has(serial))
    return onDataSheetSince !== null && state !== 'data-sheet'
      ? w`${STATE_WORDS[state]}, on data sheet`
      : STATE_WORDS[state];
  return w`${state === 'in-date' ? w`~ in date` : STATE_WORDS[state]}, drift`;
}

function dueWords({ outOfTolerance, dueByDate, byUsualMonths }: CalendarLine, due: string): string {
  if (outOfTolerance !== null) return w`${due}, now`;
  if (due !== dueByDate) return w`${due} by cycles`;
  return byUsualMonths ? `${due} *` : due;
}

/** What a star behind a day means, and what a tool on its data sheet lacks. */
const usualLines = (lines: readonly CalendarLine[]): readonly string[] => [
  ...(lines.some(({ byUsualMonths }) => byUsualMonths)
    ? [
        w`* Nobody named a day: ${USUAL_MONTHS} months after the calibration or the first use are usual. Give the tool an interval in the station file for another.`,
      ]
    : []),
  ...(lines.some(({ onDataSheetSince }) => onDataSheetSince !== null)
    ? [
        w`On data sheet: nobody calibrated the tool. Its data sheet says what it was when it was made, and not what it is now.`,
      ]
    : []),
];

function tableOf(lines: readonly CalendarLine[], drifting: ReadonlyMap<string, string>): readonly string[] {
  const withNext = lines.some(({ next }) => next !== null);
  const head = [
    w`state`,
    w`due`,
    w`tool`,
    w`serial number`,
    w`calibration certificate`,
    w`calibrated`,
    w`cycles`,
    w`last used`,
  ];
  return textTable(
    withNext ? [...head, w`next interval`] : head,
    lines.map((line) => [
      stateWords(line, drifting),
      line.due === null ? '-' : dueWords(line, line.due),
      line.tool,
      line.serial ?? '-',
      line.certificate ?? '-',
      line.calibrated ?? '-',
      line.cycleLimit === null ? String(line.cycles) : `${line.cycles} / ${line.cycleLimit}`,
      line.lastUsed ?? '-',
      ...(withNext ? [line.next === null ? '-' : nextWords(line.next)] : []),
    ]),
  );
}

const STEP_WORDS: Readonly<Record<NextInterval['step'], string>> = phrases({
  longer: 'longer',
  kept: 'unchanged',
  shorter: 'shorter',
});

const nextWords = ({ days, step }: NextInterval) =>
  `${plural(days, { one: '# day', other: '# days' })} (${STEP_WORDS[step]})`;

function nothingDue(): ProblemError {
  return new ProblemError({
    code: 'nothing-due',
    where: '--ics',
    message: w`no tool of this station has a due day, so there is nothing to write`,
    next: w`A tool gets a due day with its certificate or with its first job.`,
  });
}

function noTools(): ProblemError {
  return new ProblemError({
    code: 'no-tools',
    message: w`no tool was ever used at this station`,
    next: w`A tool gets onto the calendar with its first job.`,
  });
}
