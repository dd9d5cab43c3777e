/**
 * What a process can do and what it delivered, from attempts. First attempts show the process, the ones that stand show the
 * product; an attempt without a value of its own (cut, saturated, undecided, between wires) is counted and never mixed in.
 */
import type { Problem } from '../problem.ts';
import { type Capability, capability } from '../statistics/capability.ts';
import { mean, momentsOf, standardDeviation } from '../statistics/moments.ts';
import { type Proportion, proportion } from '../statistics/proportion.ts';
import type { AttemptRow, Censored } from './attempt.ts';

/** By what attempts of one specification are told apart. */
export const GROUPINGS = ['specification', 'tool', 'technician', 'cylinder'] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** Values of one kind of attempt, in the order of time. */
export interface Series {
  readonly rows: readonly AttemptRow[];
  readonly n: number;
  /** Null of nothing. */
  readonly mean: number | null;
  /** Null of fewer than two. */
  readonly standardDeviation: number | null;
  /** Or why there is none. */
  readonly capability: Capability | Problem;
}

export interface ProcessGroup {
  readonly quantity: 'torque' | 'length';
  readonly specificationKey: string;
  readonly engine: string | null;
  readonly lowerLimit: number;
  readonly upperLimit: number;
  /** Serial number, name or number; empty where attempts are grouped by specification alone. */
  readonly member: string;
  /** First attempts on their plugs. */
  readonly process: Series;
  /** Attempts that their plugs stand with. */
  readonly product: Series;
  /** Of first attempts that were judged. */
  readonly notOkFirst: Proportion;
  readonly notDecidableFirst: Proportion;
  /** First attempts without a value, by reason. */
  readonly leftOut: Readonly<Record<Censored, number>>;
  /** Some of the tools were simulated. */
  readonly simulated: boolean;
}

/**
 * Attempts of one quantity by specification and limits, and within these by `grouping`; void jobs prove nothing and are
 * left out. Groups with most first attempts come first.
 */
export function processGroups(
  rows: readonly AttemptRow[],
  grouping: Grouping,
  confidence = 0.95,
): readonly ProcessGroup[] {
  const groups = new Map<string, AttemptRow[]>();
  for (const row of rows) {
    if (row.voided || row.stage === 'first') continue;
    const { quantity, specificationKey, lowerLimit, upperLimit } = row;
    const key = `${quantity} ${specificationKey} ${lowerLimit} ${upperLimit} ${memberOf(row, grouping)}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()]
    .flatMap((group) => {
      const [first] = group;
      return first === undefined ? [] : [groupOf(first, group, grouping, confidence)];
    })
    .sort((a, b) => b.process.n - a.process.n || byText(a.member, b.member));
}

function groupOf(
  { quantity, specificationKey, engine, lowerLimit, upperLimit, ...first }: AttemptRow,
  rows: readonly AttemptRow[],
  grouping: Grouping,
  confidence: number,
): ProcessGroup {
  const limits = { lower: lowerLimit, upper: upperLimit };
  const firsts = rows.filter((row) => row.first);
  const judged = firsts.filter(hasValue);
  const share = (result: AttemptRow['result']) =>
    proportion(judged.filter((row) => row.result === result).length, judged.length, confidence);
  const leftOut = { cut: 0, saturated: 0, undecided: 0, bounded: 0 };
  for (const { censored } of firsts) if (censored !== null) leftOut[censored]++;
  const series = (some: readonly AttemptRow[]) => seriesOf(some, limits, confidence);
  return {
    quantity,
    specificationKey,
    engine,
    lowerLimit,
    upperLimit,
    member: memberOf({ ...first }, grouping),
    process: series(judged),
    product: series(rows.filter((row) => row.last && hasValue(row))),
    notOkFirst: share('NotOK'),
    notDecidableFirst: share('NotDecidable'),
    leftOut,
    simulated: rows.some((row) => row.simulated),
  };
}

function seriesOf(
  rows: readonly AttemptRow[],
  limits: { readonly lower: number; readonly upper: number },
  confidence: number,
): Series {
  const values = valuesOf(rows);
  const moments = momentsOf(values);
  const computed = capability(values, limits, confidence);
  return {
    rows,
    n: values.length,
    mean: values.length === 0 ? null : mean(moments),
    standardDeviation: values.length < 2 ? null : standardDeviation(moments),
    capability: computed.ok ? computed.value : computed.error,
  };
}

/** Judged, and with a value of its own. */
const hasValue = ({ censored, result }: AttemptRow) => censored === null && result !== null;

/** The judged values of attempts, N·m or mm. */
export function valuesOf(rows: readonly AttemptRow[]): readonly number[] {
  const values: number[] = [];
  for (const { valueSi } of rows) if (valueSi !== null) values.push(valueSi);
  return values;
}

function memberOf(
  row: Pick<AttemptRow, 'serial' | 'tool' | 'technician' | 'cylinder'>,
  grouping: Grouping,
): string {
  switch (grouping) {
    case 'specification':
      return '';
    case 'tool':
      return row.serial ?? row.tool;
    case 'technician':
      return row.technician;
    case 'cylinder':
      return String(row.cylinder);
  }
}

/** By code unit, numbers as numbers: the same on every machine. */
function byText(a: string, b: string): number {
  const numbers = Number(a) - Number(b);
  if (!Number.isNaN(numbers) && numbers !== 0) return numbers;
  return a < b ? -1 : a > b ? 1 : 0;
}
