/** The lists of an impact assessment: vehicles to decide about, and every attempt with both verdicts. */
import type { Sorted } from '../audit/impact-items.ts';
import type { ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import { marksOf } from '../job/proof.ts';
import { byGravity, cylindersOf, SORT_WORD, standOf } from './impact.ts';
import type { Column } from './rows.ts';
import { rowsCsv } from './rows-csv.ts';
import { marksText, SOURCE_WORD } from './words/index.ts';

const VEHICLES: readonly Column<{ readonly impact: ImpactAssessment; readonly item: ItemState }>[] = [
  { header: 'Impact assessment', value: ({ impact }) => impact.assessment },
  { header: 'Proves nothing', value: ({ impact }) => marksText(marksOf(impact.assessed.sources)) || 'no' },
  { header: 'Tool', value: ({ impact }) => impact.assessed.tool },
  { header: 'Serial', value: ({ impact }) => impact.assessed.serial },
  { header: 'Job', value: ({ item }) => item.job },
  { header: 'Day', value: ({ item }) => item.on },
  { header: 'VIN', value: ({ item }) => item.vin },
  { header: 'Plate', value: ({ item }) => item.plate },
  { header: 'Fleet number', value: ({ item }) => item.fleet },
  { header: 'Worst', value: ({ item }) => SORT_WORD[item.sort] },
  { header: 'Cylinders out', value: ({ item }) => cylindersOf(item, 'out') },
  { header: 'Cylinders doubtful', value: ({ item }) => cylindersOf(item, 'doubtful') },
  { header: 'Stands', value: ({ item }) => standOf(item) },
  { header: 'Decided because', value: ({ item }) => item.decided.at(-1)?.because ?? null },
  { header: 'Decided by', value: ({ item }) => item.decided.at(-1)?.by ?? null },
  { header: 'Decided at (UTC)', value: ({ item }) => item.decided.at(-1)?.at ?? null },
];

/** One row a job that is touched, what is out first. */
export function vehiclesCsv(impact: ImpactAssessment): string {
  const items = [...impact.items].sort(byGravity);
  return rowsCsv(
    VEHICLES,
    items.map((item) => ({ impact, item })),
  );
}

const ATTEMPTS: readonly Column<Sorted>[] = [
  { header: 'Job', value: ({ row }) => row.job },
  { header: 'Figure from', value: ({ row }) => SOURCE_WORD[row.source] },
  { header: 'Void', value: ({ row }) => (row.voided ? 'VOID' : 'no') },
  { header: 'Entry', value: ({ row }) => row.seq },
  { header: 'Time (UTC)', value: ({ row }) => row.at },
  { header: 'VIN', value: ({ row }) => row.vin },
  { header: 'Plate', value: ({ row }) => row.plate },
  { header: 'Fleet number', value: ({ row }) => row.fleet },
  { header: 'Technician', value: ({ row }) => row.technician },
  { header: 'Cylinder', value: ({ row }) => row.cylinder },
  { header: 'Quantity', value: ({ row }) => (row.quantity === 'torque' ? 'torque (N·m)' : 'gap (mm)') },
  { header: 'Number', value: ({ row }) => row.number },
  { header: 'Kind', value: ({ row }) => row.kind },
  { header: 'Stands for its plug', value: ({ row }) => (row.last ? 'yes' : 'no') },
  { header: 'Proof then', value: ({ isProof }) => (isProof ? 'yes' : 'no') },
  { header: 'Certificate then', value: ({ row }) => row.certificate },
  { header: 'Tool read', value: ({ row }) => row.readingSi },
  { header: 'Lower limit', value: ({ row }) => row.lowerLimit },
  { header: 'Upper limit', value: ({ row }) => row.upperLimit },
  { header: 'Value then', value: ({ row }) => row.valueSi },
  { header: 'U then, 95 %', value: ({ row }) => row.expanded },
  { header: 'Verdict then', value: ({ row }) => row.result },
  { header: 'Value with the error found', value: ({ again }) => again?.value ?? null },
  { header: 'U with the error found, 95 %', value: ({ again }) => again?.expandedUncertainty ?? null },
  { header: 'Verdict with the error found', value: ({ again }) => again?.result ?? null },
  { header: 'With both', value: withBoth },
  {
    header: 'Probability within limits (%)',
    value: ({ again }) => again && 100 * again.conformanceProbability,
  },
  { header: 'Sort', value: sortOf },
  { header: 'Within the points looked at', value: ({ covered }) => (covered ? 'yes' : 'no') },
];

/** One row an attempt, in the order of the log. The sorts of a column add up to what the impact assessment counts. */
export const judgedAgainCsv = (sorted: readonly Sorted[]): string =>
  rowsCsv(sorted.some(({ row }) => row.station !== undefined) ? [STATION, ...ATTEMPTS] : ATTEMPTS, sorted);

const STATION: Column<Sorted> = { header: 'Station', value: ({ row }) => row.station ?? null };

function sortOf({ counts, overtakenBy }: Sorted): string | null {
  if (counts !== null) return SORT_WORD[counts];
  return overtakenBy === null ? null : `SEE PULL ${overtakenBy}`;
}

/** What the attempt is whichever error the tool had then; on either side of the limits it may have been within between. */
function withBoth({ row, again }: Sorted): string | null {
  if (again === null || row.result === null) return null;
  return again.result === row.result && again.side === row.side ? row.result : 'differs';
}
