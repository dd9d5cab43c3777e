import { chiSquareCdf } from '../metrology/chi-square.ts';

/**
 * The four rules of the "Statistical Quality Control Handbook", Western Electric, 1956, as e-Handbook 6.3.2 lists them.
 * Together they raise a false alarm about every 92 readings, the first alone every 370; rules without such a published
 * source are left out on purpose, because each one adds false alarms.
 */
export const RUN_RULES = [
  'one-beyond-3',
  'two-of-three-beyond-2',
  'four-of-five-beyond-1',
  'eight-on-one-side',
] as const;

export type RunRule = (typeof RUN_RULES)[number];

export interface Signal {
  /** The reading that completes the pattern. */
  readonly index: number;
  readonly rule: RunRule;
  readonly side: 'above' | 'below';
}

interface Pattern {
  readonly rule: RunRule;
  readonly needed: number;
  readonly of: number;
  readonly beyond: number;
}

const PATTERNS: readonly Pattern[] = [
  { rule: 'one-beyond-3', needed: 1, of: 1, beyond: 3 },
  { rule: 'two-of-three-beyond-2', needed: 2, of: 3, beyond: 2 },
  { rule: 'four-of-five-beyond-1', needed: 4, of: 5, beyond: 1 },
  { rule: 'eight-on-one-side', needed: 8, of: 8, beyond: 0 },
];

/** Readings until a stable process completes one of the rules by chance: Champ and Woodall, Technometrics 29 (1987), from memory. */
const CHANCE_EVERY = 91.75;
/** A count that chance reaches less often is no chance. */
const RARE = 0.01;

/** Whether a process is stable, by how many readings complete a rule. */
export interface Stability {
  readonly readings: number;
  /** Readings that complete a rule, counted anew behind each. */
  readonly signals: number;
  readonly byChance: number;
  /** More than chance brings in about one of a hundred stable processes. */
  readonly unstable: boolean;
}

/**
 * How the readings stand to limits that were made of them. Behind a signal the rules begin anew, because that run length is
 * to the first signal: a run of nine is not two signals.
 */
export function stabilityOf(readings: readonly number[], centre: number, sigma: number): Stability {
  let signals = 0;
  let since = 0;
  for (let index = 0; index < readings.length; index++) {
    if (completedAt(readings, index, since, centre, sigma).length === 0) continue;
    signals++;
    since = index + 1;
  }
  const byChance = readings.length / CHANCE_EVERY;
  // P(N >= k) of a Poisson count with mean m is the chi-square distribution with 2k degrees of freedom at 2m.
  const unstable = signals > byChance && chiSquareCdf(2 * byChance, 2 * signals) < RARE;
  return { readings: readings.length, signals, byChance, unstable };
}

/** Every rule that a reading completes. A reading on a line is not beyond it. */
export function runSignals(readings: readonly number[], centre: number, sigma: number): readonly Signal[] {
  return readings.flatMap((reading, index) => {
    const side = reading > centre ? 'above' : 'below';
    return completedAt(readings, index, 0, centre, sigma).map(({ rule }) => ({ index, rule, side }));
  });
}

/** The rules that the reading at `index` completes with those from `since` on. */
function completedAt(
  readings: readonly number[],
  index: number,
  since: number,
  centre: number,
  sigma: number,
): readonly Pattern[] {
  const off = (readings[index] ?? centre) - centre;
  const sign = off > 0 ? 1 : -1;
  return PATTERNS.filter(({ needed, of, beyond }) => {
    const edge = beyond * sigma;
    if (!(sign * off > edge)) return false;
    let count = 0;
    for (let i = Math.max(since, index + 1 - of); i <= index; i++)
      if (sign * ((readings[i] ?? centre) - centre) > edge) count++;
    return count >= needed;
  });
}
