import { err, ok, type Result } from '../result.ts';

/** Which columns of a CSV file hold what, and in which units; factors take a figure to seconds, N·m and degrees. */
export interface ColumnNames {
  readonly time: string;
  readonly torque: string;
  /** Null: the file tells no angle. */
  readonly angle: string | null;
  readonly secondsPerUnit: number;
  readonly nmPerUnit: number;
}

/** Rows without a torque, or between which readings are missing; said aloud because they may hide a pull. */
export interface Gap {
  readonly row: number;
  readonly atUs: number;
  readonly why: string;
}

/** A trace as columns, ready for a detector. */
export interface TraceColumns {
  readonly atUs: Float64Array;
  readonly nm: Float64Array;
  readonly angleDeg: Float64Array | null;
  readonly gaps: readonly Gap[];
}

const CODE = 'trace-unreadable';
/** An empty cell, or one that says that there is no number. */
const NOTHING = /^(|nan|na|n\/a|null|-)$/i;

/**
 * Reads a trace: a header line, then one sample a line, comma, semicolon or tab between. A row without a torque becomes a
 * gap; everything else that is no sample ends the reading with the row (the header is row 1). `file` is only named.
 */
export function parseTrace(text: string, names: ColumnNames, file: string): Result<TraceColumns> {
  if (text.trim() === '') return problem(`${file}: row 1`, 'the file is empty');
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const header = lines[0] ?? '';
  const separator = [';', '\t', ','].find((one) => header.includes(one)) ?? ',';
  const titles = header.split(separator).map(cell);
  const columns = placesOf(titles, names, file);
  if (!columns.ok) return columns;
  const { time, torque, angle } = columns.value;
  const rows = lines.length - 1;
  const atUs = new Float64Array(rows);
  const nm = new Float64Array(rows);
  const angleDeg = angle === null ? null : new Float64Array(rows);
  const gaps: Gap[] = [];
  let count = 0;
  let lastUs = 0;
  for (let i = 1; i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (line.trim() === '') continue;
    const cells = line.split(separator);
    const fault = (message: string) => problem(`${file}: row ${i + 1}`, message);
    if (cells.length !== titles.length)
      return fault(`expected ${titles.length} columns as in the header, found ${cells.length}`);
    const seconds = figure(cells[time]);
    if (seconds === null)
      return fault(`column ${names.time}: expected a time, found "${shown(cells[time])}"`);
    const us = Math.round(seconds * names.secondsPerUnit * 1e6);
    if (us < lastUs)
      return fault(us < 0 ? 'the time is below zero' : 'the time goes back behind that of the row before it');
    if (!Number.isSafeInteger(us)) return fault('the time is too large');
    lastUs = us;
    const value = figure(cells[torque]);
    if (value === null) {
      if (!NOTHING.test(cell(cells[torque] ?? '')))
        return fault(`column ${names.torque}: expected a torque, found "${shown(cells[torque])}"`);
      gaps.push({ row: i + 1, atUs: us, why: 'no torque' });
      continue;
    }
    atUs[count] = us;
    nm[count] = value * names.nmPerUnit;
    if (angleDeg !== null && angle !== null) angleDeg[count] = figure(cells[angle]) ?? Number.NaN;
    count++;
  }
  if (count === 0) return problem(file, 'the file holds no samples');
  if (count > 1 && atUs[0] === atUs[count - 1])
    return problem(`${file}: row 2`, 'the time stands still from here to the end of the file');
  return ok({
    atUs: atUs.subarray(0, count),
    nm: nm.subarray(0, count),
    angleDeg: angleDeg?.subarray(0, count) ?? null,
    gaps,
  });
}

interface Places {
  readonly time: number;
  readonly torque: number;
  readonly angle: number | null;
}

function placesOf(titles: readonly string[], names: ColumnNames, file: string): Result<Places> {
  const indexOf = (name: string) => titles.findIndex((title) => title.toLowerCase() === name.toLowerCase());
  const missing = [names.time, names.torque, ...(names.angle === null ? [] : [names.angle])].find(
    (name) => indexOf(name) < 0,
  );
  if (missing !== undefined)
    return problem(
      `${file}: row 1`,
      `the header has no column "${missing}"; it has: ${titles.map(shown).join(', ')}`,
    );
  return ok({
    time: indexOf(names.time),
    torque: indexOf(names.torque),
    angle: names.angle === null ? null : indexOf(names.angle),
  });
}

const cell = (text: string) =>
  text
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim();
const shown = (text: string | undefined) => cell(text ?? '').slice(0, 40);

/** A finite number as programs write it; null for everything else. */
function figure(text: string | undefined): number | null {
  const digits = cell(text ?? '');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(digits)) return null;
  const value = Number(digits);
  return Number.isFinite(value) ? value : null;
}

function problem(where: string, message: string): Result<never> {
  return err({
    code: CODE,
    where,
    message,
    next: 'Name the columns with --time-column, --torque-column and --angle-column, or repair the row; nothing of the file was used.',
  });
}
