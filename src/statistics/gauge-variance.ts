import { fisherTail } from '../metrology/fisher.ts';
import { ok, type Result } from '../result.ts';
import {
  type CheckedStudy,
  checkStudy,
  type GaugeResult,
  type GaugeStudy,
  gaugeResult,
} from './gauge-study.ts';
import { mean, momentsOf } from './moments.ts';

/**
 * Above this p the interaction counts as not there. High on purpose, so that a small study does not pool away an
 * interaction which it merely could not see (T. A. Bancroft, 1964: 0.25).
 */
const POOL_ABOVE = 0.25;

/** A line of the table: sum of squares, degrees of freedom, mean square. */
export interface Source {
  readonly squares: number;
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
}

/** Analysis of variance of a gauge study, parts and appraisers random, crossed. */
export interface GaugeVariance {
  readonly part: Source;
  readonly appraiser: Source;
  readonly interaction: Source;
  readonly repeatability: Source;
  /** Interaction and repeatability in one. */
  readonly pooledError: Source;
  /** All readings about their mean: the other four together. */
  readonly total: Source;
  /** F of the interaction and its p; null when repeatability is zero, and F with it without meaning. */
  readonly interactionTest: { readonly f: number; readonly p: number } | null;
  readonly withInteraction: GaugeResult;
  readonly pooled: GaugeResult;
  /** Which of the two the test speaks for: `pooled` when p > 0.25. */
  readonly advised: 'pooled' | 'withInteraction';
}

/** Expected mean squares solved for the variances; what comes out below zero is zero, and said. Problems: those of {@link checkStudy}. */
export function gaugeVariance(study: GaugeStudy): Result<GaugeVariance> {
  const checked = checkStudy(study);
  if (!checked.ok) return checked;
  const { part, appraiser, interaction, repeatability, total } = sources(checked.value);
  const pooledError = source(
    interaction.squares + repeatability.squares,
    interaction.degreesOfFreedom + repeatability.degreesOfFreedom,
  );
  const interactionTest = test(interaction, repeatability);
  const sizes = checked.value;
  return ok({
    part,
    appraiser,
    interaction,
    repeatability,
    pooledError,
    total,
    interactionTest,
    withInteraction: gaugeResult(
      {
        ev: repeatability.meanSquare,
        interaction: excess(interaction, repeatability, sizes.trials),
        ...main(part, appraiser, interaction, sizes),
      },
      study.limits,
    ),
    pooled: gaugeResult(
      { ev: pooledError.meanSquare, interaction: null, ...main(part, appraiser, pooledError, sizes) },
      study.limits,
    ),
    advised: interactionTest !== null && interactionTest.p > POOL_ABOVE ? 'pooled' : 'withInteraction',
  });
}

function main(part: Source, appraiser: Source, error: Source, { parts, appraisers, trials }: CheckedStudy) {
  return {
    av: excess(appraiser, error, parts.length * trials),
    pv: excess(part, error, appraisers.length * trials),
  };
}

/** Variance behind what `upper` has more than `error`, when each level is a mean of `each` readings; below zero if it has less. */
function excess(upper: Source, error: Source, each: number): number {
  return (upper.meanSquare - error.meanSquare) / each;
}

function test(interaction: Source, repeatability: Source): { f: number; p: number } | null {
  if (repeatability.meanSquare === 0) return null;
  const f = interaction.meanSquare / repeatability.meanSquare;
  return { f, p: fisherTail(f, [interaction.degreesOfFreedom, repeatability.degreesOfFreedom]) };
}

/** Each sum of squares from its own differences, never as what is left over, so that none loses its figures. */
function sources({ appraisers, parts, readings, trials }: CheckedStudy) {
  const grand = average(readings.flat(2));
  const byPart = parts.map((_, p) => average(readings.flatMap((row) => row[p] ?? [])) - grand);
  const byAppraiser = readings.map((row) => average(row.flat()) - grand);
  const cells = readings.map((row) => row.map(average));
  const crossed = cells.flatMap((row, a) =>
    row.map((cell, p) => cell - grand - (byAppraiser[a] ?? 0) - (byPart[p] ?? 0)),
  );
  const within = readings.flatMap((row, a) =>
    row.flatMap((values, p) => values.map((value) => value - (cells[a]?.[p] ?? 0))),
  );
  const [o, n] = [appraisers.length, parts.length];
  return {
    part: source(o * trials * sumOfSquares(byPart), n - 1),
    appraiser: source(n * trials * sumOfSquares(byAppraiser), o - 1),
    interaction: source(trials * sumOfSquares(crossed), (o - 1) * (n - 1)),
    repeatability: source(sumOfSquares(within), o * n * (trials - 1)),
    total: source(momentsOf(readings.flat(2)).squares, o * n * trials - 1),
  };
}

function source(squares: number, degreesOfFreedom: number): Source {
  return { squares, degreesOfFreedom, meanSquare: squares / degreesOfFreedom };
}

function average(values: readonly number[]): number {
  return mean(momentsOf(values));
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
