import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { parseTrace, type TraceColumns } from '../../pull/columns.ts';
import type { Seating } from '../../pull/seat.ts';
import { spellingAt } from '../../quantity/spelling.ts';
import { newtonMetres, type TorqueUnit } from '../../quantity/torque.ts';
import { orThrow } from '../../result.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { traceRows } from '../../ui/trace.ts';
import { fixed, phrases, plural, w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { type PullsReport, reportOn } from './pulls-report.ts';

export interface TraceOptions {
  readonly timeColumn: string;
  readonly torqueColumn: string;
  readonly angleColumn?: string;
  readonly timeUnit: string;
  readonly torqueUnit: string;
}

export interface PullsOptions extends TraceOptions {
  readonly lower?: string;
  readonly maxima?: true;
  readonly json?: true;
}

const MAX_BYTES = 512 << 20;
const COLUMNS = 72;
const ROWS = 10;
/** Shown on both sides of a pull, as a share of it. */
const MARGIN = 0.08;
const SECONDS_IN: Readonly<Record<string, number>> = { s: 1, ms: 1e-3, us: 1e-6 };
const ANGLE = 'angle_deg';

/** Reads a trace, prints each pull with its figures and draws it; or the same as JSON. */
export async function pulls(file: string, options: PullsOptions): Promise<ExitCode> {
  const trace = await readTrace(file, options);
  const looking = { lowerNm: lowerOf(options.lower), maxima: options.maxima === true };
  const report = reportOn(trace, file, looking);
  process.stdout.write(
    options.json === true ? jsonText(report) : `${reportLines(report, trace, !speaksUtf8()).join('\n')}\n`,
  );
  return EXIT.done;
}

/** A trace with the columns and units that the options name. The angle is optional unless it was named. */
export async function readTrace(file: string, options: TraceOptions): Promise<TraceColumns> {
  return traceIn(await readBytes(file, w`trace`, MAX_BYTES), file, options);
}

/** The same of bytes that were read already. */
export function traceIn(bytes: Uint8Array, file: string, options: TraceOptions): TraceColumns {
  const text = new TextDecoder().decode(bytes);
  const header = text.slice(0, text.search(/[\r\n]|$/)).toLowerCase();
  const names = {
    time: options.timeColumn,
    torque: options.torqueColumn,
    angle: options.angleColumn ?? (header.includes(ANGLE) ? ANGLE : null),
    secondsPerUnit: secondsIn(options.timeUnit),
    nmPerUnit: newtonMetresIn(options.torqueUnit),
  };
  return orThrow(parseTrace(text, names, file));
}

/** The report for people. */
export function reportLines(report: PullsReport, trace: TraceColumns, ascii: boolean): string[] {
  const { file, samples, durationS, startNm, gaps, pulls: found } = report;
  const head = w`${safeLine(file)}: ${samples} samples in ${fixed(durationS, 3)} s, ${plural(found.length, { one: '# pull', other: '# pulls' })} above ${fixed(startNm, 2)} N·m`;
  const missing = gaps.slice(0, 5).map(({ row, why }) => w`  row ${row}: ${why}`);
  const more = gaps.length > 5 ? [w`  and ${gaps.length - 5} more rows like these`] : [];
  const drawn = found.flatMap((pull) => ['', ...pullLines(pull), ...plot(pull, trace, ascii)]);
  return [head, ...missing, ...more, ...drawn].map((line) => (ascii ? line.replaceAll('N·m', 'Nm') : line));
}

type ReportedPull = PullsReport['pulls'][number];

function pullLines(pull: ReportedPull): string[] {
  const { peakNm, peakStandardNm, releaseNm, dropShare, riseMs, turn, seating, saturated, cut } = pull;
  const seconds = (us: number) => fixed(us / 1e6, 3);
  const release = {
    seen: w`click ${fixed(releaseNm ?? 0, 2)} N·m, fell by ${fixed(100 * (dropShare ?? 0), 0)} %`,
    none: w`no click`,
    'not-visible': w`a click could not be seen`,
  }[pull.release];
  const notes = [
    ...(saturated ? [w`the readings reached the end of the scale`] : []),
    ...(cut === null ? [] : [w`the readings end in the middle of the pull`]),
    ...(pull.zeroSettled || pull.stream === 'maxima' ? [] : [w`the zero was not settled`]),
  ];
  return [
    w`pull ${pull.pull}: peak ${fixed(peakNm, 2)} N·m (u = ${fixed(peakStandardNm, 3)}) at ${seconds(pull.peakUs)} s; ${release}`,
    w`  from ${seconds(pull.startUs)} to ${seconds(pull.endUs)} s, rise ${fixed(riseMs, 0)} ms, highest reading ${fixed(pull.highestNm, 2)} N·m, zero ${fixed(pull.zeroNm, 3)} N·m, noise ${fixed(pull.noiseNm, 3)} N·m`,
    ...(turn === null
      ? []
      : [
          w`  turned ${fixed(turn.startToPeakDeg, 1)}° to the peak, ${fixed(turn.from10PercentDeg, 1)}° of it from 10 %; work ${fixed(turn.workJ, 2)} J`,
        ]),
    ...(seating === null ? [] : [w`  by its angle: ${SEATED[seating]}`]),
    ...notes.map((note) => w`  note: ${note}`),
  ];
}

const SEATED: Readonly<Record<Seating, string>> = phrases({
  hardly: 'a plug that was already tight, or a missing gasket',
  hard: 'a used gasket, or a conical seat',
  soft: 'a new gasket',
  doubled: 'more than one gasket',
  binding: 'it turned far and evenly, like a binding thread',
});

/** Torque over time, as a filled curve; where the click and the peak lie stands below it. */
function plot(pull: ReportedPull, { atUs, nm }: TraceColumns, ascii: boolean): string[] {
  const lengthUs = Math.max(1, pull.endUs - pull.startUs);
  const fromUs = pull.startUs - MARGIN * lengthUs;
  const perColumnUs = (lengthUs * (1 + 2 * MARGIN)) / COLUMNS;
  const sign = Math.sign(pull.peakNm) || 1;
  const columns = Array.from({ length: COLUMNS }, () => Number.NEGATIVE_INFINITY);
  for (let i = 0; i < atUs.length; i++) {
    const column = Math.floor(((atUs[i] ?? 0) - fromUs) / perColumnUs);
    const value = sign * ((nm[i] ?? 0) - pull.zeroNm);
    if (column >= 0 && column < COLUMNS) columns[column] = Math.max(columns[column] ?? 0, value);
  }
  const top = Math.abs(pull.peakNm);
  const filled = columns.map((value, i) => (Number.isFinite(value) ? value : before(columns, i)));
  const rows = traceRows(filled, COLUMNS, ROWS, top, glyphsFor(ascii));
  const marks = Array.from({ length: COLUMNS }, () => ' ');
  const mark = (us: number, sign_: string) => {
    marks[Math.min(COLUMNS - 1, Math.max(0, Math.floor((us - fromUs) / perColumnUs)))] = sign_;
  };
  mark(pull.peakUs, 'P');
  if (pull.releaseUs !== null) mark(pull.releaseUs, 'c');
  const label = (text: string) => text.padStart(8);
  return [
    ...rows.map((row, i) => `${label(i === 0 ? fixed(pull.peakNm, 2) : '')} |${row}`),
    `${label('0.00')} +${'-'.repeat(COLUMNS)}`,
    `${label('')}  ${marks.join('').trimEnd()}   ${pull.releaseUs === null ? w`P peak` : w`P peak, c click`}`,
  ];
}

/** Between samples the torque stays as it was last read. */
function before(columns: readonly number[], at: number): number {
  for (let i = at; i >= 0; i--) if (Number.isFinite(columns[i])) return columns[i] ?? 0;
  return 0;
}

function lowerOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const value = Number(text);
  if (Number.isFinite(value) && value > 0) return value;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--lower',
    message: w`expected a torque above 0 N·m, found "${text}"`,
    next: w`Give the lower limit of the window in N·m, or leave it out.`,
  });
}

function secondsIn(unit: string): number {
  const seconds = SECONDS_IN[unit];
  if (seconds !== undefined) return seconds;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--time-unit',
    message: w`"${unit}" is no unit of time here`,
    next: w`Choose one of: ${Object.keys(SECONDS_IN).join(', ')}.`,
  });
}

function newtonMetresIn(unit: string): number {
  const spelling = spellingAt(unit, 0);
  if (
    spelling?.length === unit.length &&
    spelling.spelling.measured === 'torque' &&
    isTorque(spelling.spelling.unit)
  )
    return newtonMetres(1, spelling.spelling.unit);
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--torque-unit',
    message: w`"${unit}" is no unit of torque`,
    next: w`Choose for example N·m, lbf·ft, lbf·in, kgf·m or kgf·cm.`,
  });
}

const TORQUE_UNITS: readonly string[] = ['N.m', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', 'kgf.m', 'kgf.cm'];
const isTorque = (unit: string | null): unit is TorqueUnit => unit !== null && TORQUE_UNITS.includes(unit);
