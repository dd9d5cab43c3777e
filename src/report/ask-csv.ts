import type { AttemptRow } from '../audit/attempt.ts';
import { attemptException, type JobAnswer } from '../audit/questions.ts';
import type { CsvStyle } from './csv-style.ts';
import type { Column } from './rows.ts';
import { rowsCsv } from './rows-csv.ts';
import { marksText, outOfOrderText, SOURCE_WORD } from './words/index.ts';

/** One row a job. */
const JOBS: readonly Column<JobAnswer>[] = [
  { header: 'Job', value: ({ job }) => job },
  { header: 'Proves nothing', value: ({ marks }) => marksText(marks) || 'no' },
  { header: 'State', value: ({ state }) => state },
  { header: 'Out of order', value: ({ outOfOrder }) => outOfOrder.map(outOfOrderText).join('; ') || 'no' },
  { header: 'Opened (UTC)', value: ({ openedAt }) => openedAt },
  { header: 'Last entry (UTC)', value: ({ lastAt }) => lastAt },
  { header: 'VIN', value: ({ vin }) => vin },
  { header: 'Plate', value: ({ plate }) => plate },
  { header: 'Fleet number', value: ({ fleet }) => fleet },
  { header: 'Technicians', value: ({ technicians }) => technicians.join('; ') },
  { header: 'Tools', value: ({ tools }) => tools.join('; ') },
  { header: 'Parts', value: ({ parts }) => parts.join('; ') },
  { header: 'Attempts', value: ({ attempts }) => attempts, isFigure: true },
  { header: 'Proofs', value: ({ proven }) => proven, isFigure: true },
  { header: 'Attested', value: ({ attested }) => attested, isFigure: true },
  { header: 'Put in question later', value: ({ questioned }) => questioned.join('; ') || 'no' },
  { header: 'Exceptions', value: ({ exceptions }) => exceptions.join('; ') },
];

export const jobColumns = (answers: readonly JobAnswer[]) => withStation(JOBS, answers);

export const jobsCsv = (answers: readonly JobAnswer[], style?: CsvStyle): string =>
  rowsCsv(jobColumns(answers), answers, style);

const ATTEMPTS: readonly Column<AttemptRow>[] = [
  { header: 'Job', value: ({ job }) => job },
  { header: 'Figure from', value: ({ source }) => SOURCE_WORD[source] },
  { header: 'Void', value: ({ voided }) => (voided ? 'VOID' : 'no') },
  { header: 'Entry', value: ({ seq }) => seq, isFigure: true },
  { header: 'Time (UTC)', value: ({ at }) => at },
  { header: 'VIN', value: ({ vin }) => vin },
  { header: 'Plate', value: ({ plate }) => plate },
  { header: 'Fleet number', value: ({ fleet }) => fleet },
  { header: 'Technician', value: ({ technician }) => technician },
  { header: 'Part', value: ({ part }) => part },
  { header: 'Lot', value: ({ lot }) => lot },
  { header: 'Tool', value: ({ tool }) => tool },
  { header: 'Serial', value: ({ serial }) => serial },
  { header: 'Certificate', value: ({ certificate }) => certificate },
  { header: 'Cylinder', value: ({ cylinder }) => cylinder, isFigure: true },
  { header: 'Quantity', value: ({ quantity }) => (quantity === 'torque' ? 'torque (N·m)' : 'gap (mm)') },
  { header: 'Number', value: ({ number }) => number, isFigure: true },
  { header: 'Kind', value: ({ kind }) => kind },
  { header: 'Verdict', value: ({ result }) => result },
  { header: 'Value', value: ({ valueSi }) => valueSi, isFigure: true },
  { header: 'U, 95 %', value: ({ expanded }) => expanded, isFigure: true },
  {
    header: 'Lower limit',
    value: ({ lowerLimit }) => (Number.isNaN(lowerLimit) ? null : lowerLimit),
    isFigure: true,
  },
  {
    header: 'Upper limit',
    value: ({ upperLimit }) => (Number.isNaN(upperLimit) ? null : upperLimit),
    isFigure: true,
  },
  { header: 'First on its plug', value: ({ first }) => (first ? 'yes' : 'no') },
  { header: 'Stands for its plug', value: ({ last }) => (last ? 'yes' : 'no') },
  { header: 'Out of order', value: ({ early }) => (early ? 'OUT OF ORDER' : 'no') },
  { header: 'Exception', value: (row) => attemptException(row).join('; ') },
];

/** One row an attempt. */
export const attemptColumns = (rows: readonly AttemptRow[]) => withStation(ATTEMPTS, rows);

export const attemptsCsv = (rows: readonly AttemptRow[], style?: CsvStyle): string =>
  rowsCsv(attemptColumns(rows), rows, style);

/** With the station in front, where the rows are of several. */
const withStation = <T extends { readonly station?: string }>(
  columns: readonly Column<T>[],
  rows: readonly T[],
): readonly Column<T>[] =>
  rows.some(({ station }) => station !== undefined)
    ? [{ header: 'Station', value: ({ station }) => station ?? null }, ...columns]
    : columns;
