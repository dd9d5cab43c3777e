/** The lines that a budget for a torque wrench or a gap gauge is made of; every amount in the unit of the result. */
import { type Budget, combine } from './budget.ts';
import { COVERAGE_FACTOR } from './coverage.ts';
import type { PermissibleDeviation } from './permissible.ts';
import type { Distribution, Term } from './term.ts';

/** The part of an instrument's description that its uncertainty rests on; amounts in N·m or mm. */
export interface Promised {
  readonly permissible: PermissibleDeviation;
  /** The step of its display or of its readings. */
  readonly resolution: number;
}

/**
 * Budget of one reading of an instrument of which only the promise is known: permissible deviation and resolution, both
 * rectangular, k = 2. `value` in the unit of the resolution.
 */
export function expandedFromPermissible({ permissible, resolution }: Promised, value: number): Budget {
  return combine([permissibleTerm(permissible, value), resolutionTerm(resolution)], {
    k: COVERAGE_FACTOR,
  });
}

/** What the maker promises: anywhere within ±a, so rectangular. A relative promise is a share of the reading. */
export function permissibleTerm(permissible: PermissibleDeviation, value: number): Term {
  const amount =
    permissible.kind === 'relative' ? (permissible.percent / 100) * Math.abs(value) : permissible.amount;
  return typeB('permissible deviation', 'promise of the maker', amount, { kind: 'rectangular' });
}

/** A digital step: half a step to either side, rectangular, so step/√12 (GUM F.2.2.1). */
export function resolutionTerm(step: number): Term {
  return typeB('resolution', 'step of the readings', step / 2, { kind: 'rectangular' });
}

/** Drift since the last calibration: anywhere within ±`halfWidth`, from the history of certificates or a data sheet. */
export function driftTerm(halfWidth: number, source: string): Term {
  return typeB('drift since calibration', source, halfWidth, { kind: 'rectangular' });
}

/**
 * Repeatability from at least two readings of the same thing (GUM 4.2): the standard deviation of one reading, or of the
 * mean of `meanOf` readings where the result is such a mean.
 */
export function repeatabilityTerm(readings: readonly number[], meanOf = 1): Term {
  const count = readings.length;
  if (count < 2) throw new RangeError(`repeatability needs at least 2 readings, not ${count}`);
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const variance = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) / (count - 1);
  return {
    name: 'repeatability',
    source: `${count} readings`,
    type: 'A',
    amount: Math.sqrt(variance / meanOf),
    distribution: { kind: 'standard' },
    sensitivity: 1,
    degreesOfFreedom: count - 1,
  };
}

/**
 * A peak that falls between two samples. The highest sample lies up to slope·interval below it, never above; left
 * uncorrected, its root mean square deviation is slope·interval/√3, which is that of a rectangular term of this width.
 * `slopeNmPerS` is the rise just before the peak.
 */
export function peakSamplingTerm(slopeNmPerS: number, intervalMs: number): Term {
  return typeB('peak between samples', 'sampling interval', (slopeNmPerS * intervalMs) / 1000, {
    kind: 'rectangular',
  });
}

/** An adapter on the drive: arm from the drive's centre to the hand, offset to the fastener's, angle between the two. */
export interface AdapterLengths {
  readonly armMm: number;
  readonly offsetMm: number;
  readonly angleDeg: number;
}

/**
 * What is not known of an adapter's geometry, for a wrench that reads `settingNm`: derivatives of
 * setting·(L + E·cos θ)/L with half-widths `within`. First order: at 0° the angle drops out.
 */
export function adapterTerms(
  adapter: AdapterLengths,
  within: AdapterLengths,
  settingNm: number,
): readonly Term[] {
  const { armMm, offsetMm, angleDeg } = adapter;
  const angle = (angleDeg * Math.PI) / 180;
  const perMm = (settingNm * Math.cos(angle)) / armMm;
  const perDeg = (-settingNm * offsetMm * Math.sin(angle) * Math.PI) / 180 / armMm;
  const term = (name: string, amount: number, sensitivity: number): Term => ({
    ...typeB(name, 'measured on the adapter', amount, { kind: 'rectangular' }),
    sensitivity,
  });
  return [
    term('arm of the wrench', within.armMm, (-perMm * offsetMm) / armMm),
    term('offset of the adapter', within.offsetMm, perMm),
    term('angle of the adapter', within.angleDeg, perDeg),
  ];
}

function typeB(name: string, source: string, amount: number, distribution: Distribution): Term {
  return {
    name,
    source,
    type: 'B',
    amount,
    distribution,
    sensitivity: 1,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  };
}
