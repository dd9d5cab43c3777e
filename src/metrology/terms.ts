/** The lines that a budget for a torque wrench or a gap gauge is made of; every amount in the unit of the result. */
import type { Calibrated } from './calibration.ts';
import { COVERAGE_FACTOR } from './coverage.ts';
import type { FurtherTerm } from './further-term.ts';
import { type PermissibleDeviation, permissibleAt } from './permissible.ts';
import type { AmountSource, Cause, Distribution, Term } from './term.ts';

/** What the maker promises: anywhere within ±a, so rectangular. A relative promise is a share of the reading. */
export function permissibleTerm(
  permissible: PermissibleDeviation,
  value: number,
  source: AmountSource,
): Term {
  return typeB('permissible-deviation', source, permissibleAt(permissible, value), { kind: 'rectangular' });
}

/** A laboratory's U is at most this share of the limits that it holds an instrument against. Usual practice; assumption. */
const SHARE_OF_LIMIT = 1 / 4;

/**
 * Limits of a class say that an instrument was seen within them, not that it is: what whoever saw it leaves open comes on
 * top. `expanded` is that U (k = 2); the usual share of the limit where nobody states it.
 */
export function classLaboratoryTerm(
  permissible: PermissibleDeviation,
  value: number,
  stated: { readonly within: PermissibleDeviation; readonly basis: string } | undefined,
): Term {
  const expanded =
    stated === undefined
      ? SHARE_OF_LIMIT * permissibleAt(permissible, value)
      : permissibleAt(stated.within, value);
  const source: AmountSource =
    stated === undefined ? { kind: 'usual-share' } : { kind: 'station-file', basis: stated.basis };
  return typeB('class-laboratory', source, expanded, { kind: 'normal', k: COVERAGE_FACTOR });
}

/** What a shop states of its own accord, with its basis. */
export function furtherTerm({ cause, within, spread, basis }: FurtherTerm, value: number): Term {
  const distribution: Distribution =
    spread === 'normal' ? { kind: 'normal', k: COVERAGE_FACTOR } : { kind: spread ?? 'rectangular' };
  return typeB(cause, { kind: 'station-file', basis }, permissibleAt(within, value), distribution);
}

/**
 * A universal joint passes its torque on unevenly: bent by β, between cos β and 1/cos β of it, by where in its turn it
 * stands; most of the time near either end, so arcsine. Friction in it is not counted.
 */
export function bendTerm(bentDeg: number, valueNm: number): Term {
  const most = 1 / Math.cos((bentDeg * Math.PI) / 180) - 1;
  return typeB('flex-joint', { kind: 'bend' }, most * Math.abs(valueNm), { kind: 'arcsine' });
}

/** A joint or a wobble extension of which somebody measured how far the torque may be off. */
export function statedJointTerm(
  { percent, basis }: { readonly percent: number; readonly basis: string },
  valueNm: number,
): Term {
  const amount = permissibleAt({ kind: 'relative', percent }, valueNm);
  return typeB('flex-joint', { kind: 'work-order', basis }, amount, { kind: 'rectangular' });
}

/** A digital step: half a step to either side, rectangular, so step/√12 (GUM F.2.2.1). */
export function resolutionTerm(step: number): Term {
  return typeB('resolution', { kind: 'step' }, step / 2, { kind: 'rectangular' });
}

/** What the laboratory leaves open about the error that its certificate states. */
export function calibrationTerm(
  { expanded, standard, degreesOfFreedom, extrapolated }: Calibrated,
  source: AmountSource,
): Term {
  const cause = extrapolated ? 'calibration-extrapolated' : 'calibration';
  return { ...typeB(cause, source, expanded, { kind: 'normal', k: expanded / standard }), degreesOfFreedom };
}

/** Drift since the last calibration: anywhere within ±`halfWidth`, from the history of certificates or a data sheet. */
export function driftTerm(halfWidth: number, source: AmountSource): Term {
  return typeB('drift', source, halfWidth, { kind: 'rectangular' });
}

/**
 * An error that the certificate states and nobody takes off: as if its size were a standard deviation, which covers 95 %
 * whatever its share (the root-sum-of-squares way with an uncorrected bias, S. D. Phillips et al., NIST, 1997).
 */
export function uncorrectedTerm(error: number, source: AmountSource): Term {
  return { ...typeB('uncorrected-error', source, Math.abs(error), { kind: 'standard' }), shift: error };
}

/**
 * Repeatability from at least two readings of the same thing (GUM 4.2): the standard deviation of one reading.
 */
export function repeatabilityTerm(readings: readonly number[], basis: string): Term {
  const count = readings.length;
  if (count < 2) throw new RangeError(`repeatability needs at least 2 readings, not ${count}`);
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const variance = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) / (count - 1);
  return {
    cause: 'repeatability',
    source: { kind: 'own-readings', count, basis },
    type: 'A',
    amount: Math.sqrt(variance),
    distribution: { kind: 'standard' },
    sensitivity: 1,
    degreesOfFreedom: count - 1,
  };
}

/** What sampling, noise and zero leave open about the peak of this very pull; a standard deviation from its own samples. */
export function peakTerm(standard: number): Term {
  return typeB('peak', { kind: 'samples' }, standard, { kind: 'standard' });
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
  const term = (cause: Cause, amount: number, sensitivity: number): Term => ({
    ...typeB(cause, { kind: 'adapter' }, amount, { kind: 'rectangular' }),
    sensitivity,
  });
  return [
    term('adapter-arm', within.armMm, (-perMm * offsetMm) / armMm),
    term('adapter-offset', within.offsetMm, perMm),
    term('adapter-angle', within.angleDeg, perDeg),
  ];
}

function typeB(cause: Cause, source: AmountSource, amount: number, distribution: Distribution): Term {
  return {
    cause,
    source,
    type: 'B',
    amount,
    distribution,
    sensitivity: 1,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  };
}
