import type { AttemptRow } from './attempts.ts';
import { clean } from './clean.ts';
import type { ReportModel } from './model.ts';
import { marksText, SOURCE_WORD } from './words/index.ts';

type Value = string | number | null;

interface CsvColumn {
  readonly header: string;
  readonly value: (row: AttemptRow, model: ReportModel) => Value;
}

const gap =
  (value: (row: AttemptRow, model: ReportModel) => Value) => (row: AttemptRow, model: ReportModel) =>
    row.quantity === 'gap' ? value(row, model) : null;
const torque =
  (value: (row: AttemptRow, model: ReportModel) => Value) => (row: AttemptRow, model: ReportModel) =>
    row.quantity === 'torque' ? value(row, model) : null;

const COLUMNS: readonly CsvColumn[] = [
  { header: 'Job', value: (_, model) => model.job },
  { header: 'Proves nothing', value: (_, model) => marksText(model.marks) || 'no' },
  { header: 'Job out of order', value: (_, model) => model.outOfOrder || 'no' },
  {
    header: 'Specification',
    value: (_, model) => (model.inventedSpecification ? 'INVENTED EXAMPLE' : 'as recorded'),
  },
  { header: 'Vehicle', value: (_, model) => model.vehicle.description },
  { header: 'VIN', value: (_, model) => model.vehicle.vin },
  { header: 'Plate', value: (_, model) => model.vehicle.plate },
  { header: 'Technician', value: (row, model) => row.technician || model.technician },
  { header: 'Cylinder', value: (row) => row.cylinder },
  { header: 'Quantity', value: (row) => row.quantity },
  { header: 'Attempt', value: (row) => row.attempt },
  { header: 'Figure from', value: ({ source }) => (source === null ? null : SOURCE_WORD[source]) },
  { header: 'Verdict', value: (row) => row.verdictWord },
  { header: 'Grade', value: (row) => row.grade },
  { header: 'Probability within limits (%)', value: (row) => scaled(row.conformanceProbability, 100) },
  { header: 'Gap (mm)', value: gap((row) => row.value) },
  { header: 'Gap U, 95 % (mm)', value: gap((row) => row.expandedUncertainty) },
  { header: 'Gap lower limit (mm)', value: gap((_, model) => model.gapWindow?.figures.lowerLimit ?? null) },
  { header: 'Gap upper limit (mm)', value: gap((_, model) => model.gapWindow?.figures.upperLimit ?? null) },
  { header: 'Gap accepted from (mm)', value: gap((_, model) => accepted(model.gapWindow, 'acceptLower')) },
  { header: 'Gap accepted to (mm)', value: gap((_, model) => accepted(model.gapWindow, 'acceptUpper')) },
  { header: 'Peak torque (N·m)', value: torque((row) => row.value) },
  { header: 'Torque U, 95 % (N·m)', value: torque((row) => row.expandedUncertainty) },
  { header: 'First release (N·m)', value: torque((row) => row.releaseNm) },
  { header: 'Follow-through (N·m)', value: torque((row) => row.followThroughNm) },
  { header: 'Torque lower limit (N·m)', value: torque((_, model) => model.torqueWindow.figures.lowerLimit) },
  { header: 'Torque upper limit (N·m)', value: torque((_, model) => model.torqueWindow.figures.upperLimit) },
  {
    header: 'Torque accepted from (N·m)',
    value: torque((_, model) => accepted(model.torqueWindow, 'acceptLower')),
  },
  {
    header: 'Torque accepted to (N·m)',
    value: torque((_, model) => accepted(model.torqueWindow, 'acceptUpper')),
  },
  { header: 'Rise 20 to 80 % (ms)', value: torque((row) => row.riseMs) },
  { header: 'Plug turned (deg)', value: torque((row) => row.turn?.turnedDeg ?? null) },
  { header: 'Turn U, 95 % (deg)', value: torque((row) => row.turn?.expandedUncertainty ?? null) },
  { header: 'Turned to the snug point (deg)', value: torque((row) => row.turn?.runDownDeg ?? null) },
  { header: 'Turned from the snug point (deg)', value: torque((row) => row.turn?.beyondDeg ?? null) },
  { header: 'Tools wound up (deg)', value: torque((row) => row.turn?.windUpDeg ?? null) },
  { header: 'Turn', value: torque((row) => row.turnNote) },
  { header: 'Pull', value: (row) => row.pull },
  { header: 'Kind of pull', value: (row) => row.kind },
  { header: 'Taken so because', value: (row) => row.because },
  { header: 'Cut off', value: (row) => row.cut },
  { header: 'Out of order', value: (row) => row.outOfOrder },
  { header: 'Answer', value: (row) => row.answer },
  { header: 'Instrument', value: (row) => row.tool },
  { header: 'Time (UTC)', value: (row) => row.at },
  { header: 'Entered by', value: (row) => row.by },
  { header: 'Record SHA-256', value: (_, model) => model.fingerprint.digest },
];

const BYTE_ORDER_MARK = '\uFEFF';

/**
 * The measurements as RFC 4180: one row an attempt, commas, CRLF, decimal points. It begins with a byte order mark,
 * because without one the commonest spreadsheet takes UTF-8 for the local code page and spoils names and `N·m`.
 */
export function writeCsv(model: ReportModel): string {
  const header = COLUMNS.map((column) => csvCell(column.header));
  const rows = model.rows.map((row) => COLUMNS.map((column) => csvCell(column.value(row, model))));
  return BYTE_ORDER_MARK + [header, ...rows].map((cells) => `${cells.join(',')}\r\n`).join('');
}

/** What a spreadsheet takes for the start of a formula, in full width too, behind any space; and our own mark. */
const FORMULA = /^\s*['=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/;

/**
 * One cell. Numbers are written as numbers, negative ones too. A text that a spreadsheet could run as a formula gets an
 * apostrophe in front, and so does one that begins with an apostrophe: taking one off gives the text back.
 */
export function csvCell(value: Value): string {
  if (value === null) return '';
  if (typeof value === 'number') return decimal(value);
  const text = clean(value);
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** Four decimals are finer than any instrument here; what binary fractions add beyond is dropped. */
function decimal(value: number): string {
  return String(Number(value.toFixed(4)) + 0);
}

function scaled(value: number | null, factor: number): number | null {
  return value === null ? null : value * factor;
}

function accepted(window: ReportModel['gapWindow'], bound: 'acceptLower' | 'acceptUpper'): number | null {
  return window?.figures.decidable === true ? window.figures[bound] : null;
}
