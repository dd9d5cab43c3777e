import { inUnits, type ShownUnits, SI, shownLimit } from '../quantity/shown.ts';
import type { AttemptRow } from './attempts.ts';
import { type CsvStyle, USUAL_CSV } from './csv-style.ts';
import { figure, lowerBound, UNIT_TEXT, upperBound } from './figures.ts';
import type { ReportModel } from './model.ts';
import { rowsCsv } from './rows-csv.ts';
import type { WindowText } from './window-text.ts';
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
  {
    header: 'Limits by',
    value: (_, { shopPercent }) =>
      shopPercent === null ? 'the source' : `SHOP RULE, plus/minus ${shopPercent} %, not the maker's`,
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
  { header: 'Gap by wires (mm)', value: gap(({ value, valueText }) => (value === null ? valueText : null)) },
  { header: 'Gap U, 95 % (mm)', value: gap((row) => row.expandedUncertainty) },
  { header: 'Gap lower limit (mm)', value: gap((_, model) => model.gapWindow?.figures.lowerLimit ?? null) },
  { header: 'Gap upper limit (mm)', value: gap((_, model) => model.gapWindow?.figures.upperLimit ?? null) },
  { header: 'Gap accepted from (mm)', value: gap((_, model) => accepted(model.gapWindow, 'acceptLower')) },
  { header: 'Gap accepted to (mm)', value: gap((_, model) => accepted(model.gapWindow, 'acceptUpper')) },
  { header: 'Peak torque (N·m)', value: torque((row) => row.value) },
  { header: 'Torque U, 95 % (N·m)', value: torque((row) => row.expandedUncertainty) },
  { header: 'First release (N·m)', value: torque((row) => row.releaseNm) },
  { header: 'Follow-through (N·m)', value: torque((row) => row.followThroughNm) },
  { header: 'Shown by the wrench (N·m)', value: torque(({ wrenchNm }) => wrenchNm) },
  { header: 'Torque lower limit (N·m)', value: torque((row, model) => torqueWindow(row, model).lowerLimit) },
  { header: 'Torque upper limit (N·m)', value: torque((row, model) => torqueWindow(row, model).upperLimit) },
  {
    header: 'Torque accepted from (N·m)',
    value: torque((row, model) => accepted({ figures: torqueWindow(row, model) }, 'acceptLower')),
  },
  {
    header: 'Torque accepted to (N·m)',
    value: torque((row, model) => accepted({ figures: torqueWindow(row, model) }, 'acceptUpper')),
  },
  { header: 'Value as shown', value: ({ value, quantity }) => shown(value, quantity) },
  { header: 'U as shown, 95 %', value: ({ expandedUncertainty: u, quantity }) => shown(u, quantity) },
  { header: 'Lower limit as shown', value: (row, model) => shownEdge(row, model, 'lowerLimit') },
  { header: 'Upper limit as shown', value: (row, model) => shownEdge(row, model, 'upperLimit') },
  { header: 'Accepted from as shown', value: (row, model) => shownEdge(row, model, 'acceptLower') },
  { header: 'Accepted to as shown', value: (row, model) => shownEdge(row, model, 'acceptUpper') },
  { header: 'Unit as shown', value: ({ quantity }) => UNIT_TEXT[UNIT_OF[quantity]] },
  { header: 'Rise 20 to 80 % (ms)', value: torque((row) => row.riseMs) },
  { header: 'Plug turned (deg)', value: torque((row) => row.turn?.turnedDeg ?? null) },
  { header: 'Turn U, 95 % (deg)', value: torque((row) => row.turn?.expandedUncertainty ?? null) },
  { header: 'Turned to the snug point (deg)', value: torque((row) => row.turn?.runDownDeg ?? null) },
  { header: 'Turned from the snug point (deg)', value: torque((row) => row.turn?.beyondDeg ?? null) },
  { header: 'Tools wound up (deg)', value: torque((row) => row.turn?.windUpDeg ?? null) },
  { header: 'Turn from contact, judged (deg)', value: torque((row) => row.judgedTurn?.value ?? null) },
  {
    header: 'Turn from contact U, 95 % (deg)',
    value: torque((row) => row.judgedTurn?.expandedUncertainty ?? null),
  },
  { header: 'Turn lower limit (deg)', value: torque((_, { turnLimits }) => turnLimits?.lowerDeg ?? null) },
  { header: 'Turn upper limit (deg)', value: torque((_, { turnLimits }) => turnLimits?.upperDeg ?? null) },
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

/**
 * The measurements as RFC 4180: one row an attempt, commas, CRLF, decimal points; or as the spreadsheets of a country have
 * it. csv-columns.ts says what the columns are. Words and codes are English for every reader, so the model is one for
 * anybody; figures in `units` have columns of their own.
 */
export function writeCsv(model: ReportModel, style: CsvStyle = USUAL_CSV, units: ShownUnits = SI): string {
  const columns = COLUMNS.map(({ header, value }) => ({
    header,
    value: (row: AttemptRow) => value(row, model),
  }));
  return inUnits(units, () => rowsCsv(columns, model.rows, style));
}

const UNIT_OF = { torque: 'N.m', gap: 'mm' } as const;

/** As the shop reads it, with the decimals of its unit. */
const shown = (value: number | null, quantity: AttemptRow['quantity']): number | null =>
  value === null ? null : Number(figure(value, UNIT_OF[quantity]));

const lower = (value: number, unit: 'N.m' | 'mm') => shownLimit(value, unit, 'lower');
const upper = (value: number, unit: 'N.m' | 'mm') => shownLimit(value, unit, 'upper');
const ROUNDED = { lowerLimit: lower, upperLimit: upper, acceptLower: lowerBound, acceptUpper: upperBound };

function shownEdge(row: AttemptRow, model: ReportModel, edge: keyof typeof ROUNDED): number | null {
  const { quantity } = row;
  const window = quantity === 'gap' ? (model.gapWindow?.figures ?? null) : torqueWindow(row, model);
  const isEnd = edge === 'acceptLower' || edge === 'acceptUpper';
  if (window === null || (isEnd && !window.decidable)) return null;
  return Number(ROUNDED[edge](window[edge], UNIT_OF[quantity]));
}

function scaled(value: number | null, factor: number): number | null {
  return value === null ? null : value * factor;
}

/** That of the step for which it was pulled. */
const torqueWindow = ({ window }: AttemptRow, model: ReportModel) => window ?? model.torqueWindow.figures;

function accepted(
  window: Pick<WindowText, 'figures'> | null,
  bound: 'acceptLower' | 'acceptUpper',
): number | null {
  return window?.figures.decidable === true ? window.figures[bound] : null;
}
