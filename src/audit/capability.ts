/**
 * What a process can do and what it delivered, from attempts. First attempts show the process, the ones that stand show the
 * product. An attempt without a value of its own (cut, saturated, undecided, between wires) is in no mean and no index; a
 * verdict that is known of it counts all the same, else a share would be of the good ones alone.
 */
import { type Mark, markOf } from '../job/proof.ts';
import type { Problem } from '../problem.ts';
import { type Capability, capability } from '../statistics/capability.ts';
import { individualsLimits } from '../statistics/individuals.ts';
import { mean, momentsOf, standardDeviation } from '../statistics/moments.ts';
import { type Proportion, proportion } from '../statistics/proportion.ts';
import { type Stability, stabilityOf } from '../statistics/run-rules.ts';
import type { Censored, ProcessRow } from './attempt.ts';

/** How attempts of one specification are grouped further. */
export const GROUPINGS = ['specification', 'tool', 'technician', 'cylinder'] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** Values of one kind of attempt, in the order of time. */
export interface Series {
  readonly rows: readonly ProcessRow[];
  readonly n: number;
  /** Null without any value. */
  readonly mean: number | null;
  /** Null with fewer than two. */
  readonly standardDeviation: number | null;
  /** Or the problem that there is none for. */
  readonly capability: Capability | Problem;
}

/** A series in the order in which the process made it: what stands for plugs was chosen from it, and shows no order. */
export interface ProcessSeries extends Series {
  /** Null where there are too few for limits. */
  readonly stability: Stability | null;
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
  readonly process: ProcessSeries;
  /** The last attempts on plugs in closed jobs. */
  readonly product: Series;
  /** Of the plugs in these jobs, those without an OK. */
  readonly notProven: Proportion;
  /** Of first attempts with a verdict. One whose end was lost counts if it was over the upper limit before. */
  readonly notOkFirst: Proportion;
  /** Of all first attempts, if those without a verdict were NOT OK. */
  readonly notOkAtWorst: Proportion;
  readonly notDecidableFirst: Proportion;
  /** First attempts without a value for mean and indices, by reason. */
  readonly leftOut: Readonly<Record<Censored, number>>;
  /** Its figures were simulated or replayed, and prove nothing; null for figures of instruments and people. */
  readonly mark: Mark | null;
}

/**
 * Attempts of one quantity by specification and limits, and within these by `grouping`; simulated and replayed figures are never put
 * together with real ones, void jobs prove nothing and are left out. Groups with most first attempts come first, marked
 * ones last.
 */
export function processGroups(
  rows: readonly ProcessRow[],
  grouping: Grouping,
  confidence = 0.95,
): readonly ProcessGroup[] {
  const groups = new Map<string, ProcessRow[]>();
  for (const row of rows) {
    if (row.voided || row.stage === 'first') continue;
    const { quantity, specificationKey, lowerLimit, upperLimit, source } = row;
    const key = `${quantity} ${specificationKey} ${lowerLimit} ${upperLimit} ${markOf(source) ?? ''} ${memberOf(row, grouping)}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()]
    .flatMap((group) => {
      const [first] = group;
      return first === undefined ? [] : [groupOf(first, group, grouping, confidence)];
    })
    .sort(
      (a, b) =>
        Number(a.mark !== null) - Number(b.mark !== null) ||
        b.process.n - a.process.n ||
        byText(a.member, b.member),
    );
}

function groupOf(
  { quantity, specificationKey, engine, lowerLimit, upperLimit, ...first }: ProcessRow,
  rows: readonly ProcessRow[],
  grouping: Grouping,
  confidence: number,
): ProcessGroup {
  const limits = { lower: lowerLimit, upper: upperLimit };
  const firsts = rows.filter((row) => row.first);
  const tally = { OK: 0, NotOK: 0, NotDecidable: 0, unknown: 0 };
  for (const row of firsts) tally[verdictOf(row) ?? 'unknown']++;
  const { OK, NotOK, NotDecidable, unknown } = tally;
  const known = OK + NotOK + NotDecidable;
  const leftOut = { cut: 0, saturated: 0, undecided: 0, bounded: 0 };
  for (const { censored } of firsts) if (censored !== null) leftOut[censored]++;
  const series = (some: readonly ProcessRow[]) => seriesOf(some, limits, confidence);
  return {
    quantity,
    specificationKey,
    engine,
    lowerLimit,
    upperLimit,
    member: memberOf({ ...first }, grouping),
    process: withStability(series(firsts.filter(hasValue))),
    product: series(rows.filter((row) => row.last && !row.open && hasValue(row))),
    notProven: notProvenIn(rows, confidence),
    notOkFirst: proportion(NotOK, known, confidence),
    notOkAtWorst: proportion(NotOK + unknown, firsts.length, confidence),
    notDecidableFirst: proportion(NotDecidable, known, confidence),
    leftOut,
    mark: markOf(first.source),
  };
}

/** A plug whose last pull nobody could place has no OK, and must not be lost from the figures. */
function notProvenIn(rows: readonly ProcessRow[], confidence: number): Proportion {
  const proven = new Map<string, boolean>();
  for (const { stream, cylinder, open, last, result } of rows) {
    if (open) continue;
    const plug = `${cylinder} ${stream}`;
    proven.set(plug, proven.get(plug) === true || (last && result === 'OK'));
  }
  const count = [...proven.values()].filter((is) => !is).length;
  return proportion(count, proven.size, confidence);
}

function seriesOf(
  rows: readonly ProcessRow[],
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

function withStability(series: Series): ProcessSeries {
  const values = valuesOf(series.rows);
  const own = individualsLimits(values);
  return {
    ...series,
    stability: own.ok ? stabilityOf(values, own.value.centre, own.value.sigma) : null,
  };
}

/** Judged, and with a value of its own. */
const hasValue = ({ censored, result }: ProcessRow) => censored === null && result !== null;

/** The verdict, also of one that nobody judged because its end is missing, where what it came to at least tells it. */
function verdictOf({ result, censored, valueSi, expanded, upperLimit }: ProcessRow): ProcessRow['result'] {
  if (result !== null || (censored !== 'saturated' && censored !== 'cut')) return result;
  return valueSi !== null && expanded !== null && valueSi - expanded > upperLimit ? 'NotOK' : null;
}

/** The judged values of attempts, N·m or mm. */
export function valuesOf(rows: readonly Pick<ProcessRow, 'valueSi'>[]): readonly number[] {
  const values: number[] = [];
  for (const { valueSi } of rows) if (valueSi !== null) values.push(valueSi);
  return values;
}

function memberOf(
  row: Pick<ProcessRow, 'serial' | 'tool' | 'technician' | 'cylinder'>,
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
