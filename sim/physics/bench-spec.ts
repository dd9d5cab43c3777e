import type { Plug, Specification } from '../../src/plug/specification.ts';
import type { Random } from '../random.ts';
import type { GaugeSpec } from './gauge.ts';
import type { GasketState } from './seat.ts';
import type { SensorSpec } from './sensor.ts';

/** The plugs of the job and their windows. */
export interface PlugSpec {
  readonly thread: Plug['thread'];
  readonly seat: Plug['seat'];
  readonly gasket: GasketState;
  readonly lowerNm: number;
  readonly upperNm: number;
  readonly gapLowerMm: number;
  readonly gapUpperMm: number;
  /** True state of the threads; dry unless told. */
  readonly threads?: Specification['threads'];
  /** Cylinders whose plug goes in askew the first time. */
  readonly crossThreaded?: readonly number[];
}

export interface WrenchSpec extends SensorSpec {
  readonly settingNm: number;
  /** Time between samples, and the standard deviation of each sample's own delay. */
  readonly sampleIntervalUs: number;
  readonly jitterUs: number;
}

export interface BenchSpec {
  readonly seed: number | string;
  readonly cylinders: readonly number[];
  readonly plug: PlugSpec;
  /** What is not given is drawn, or the usual. */
  readonly wrench?: Partial<WrenchSpec>;
  readonly gauge?: Partial<GaugeSpec>;
}

/** Wrenches at hand: the smallest that has the setting in its lower four fifths. Assumption. */
const CAPACITIES_NM = [25, 60, 120];
const GAIN_SIGMA = 0.008;
const OFFSET_SIGMA_NM = 0.03;
const NOISE_NM = 0.025;
const SAMPLE_INTERVAL_US = 10_000;
const JITTER_US = 150;
const GAUGE_BIAS_SIGMA_MM = 0.002;
const GAUGE_REPEATABILITY_MM = 0.004;
const GAUGE_RESOLUTION_MM = 0.01;

/** The wrench of a bench with its draws made. Throws when the setting lies outside the window or the scale. */
export function wrenchOf({ plug, wrench = {} }: BenchSpec, random: Random): WrenchSpec {
  const settingNm = wrench.settingNm ?? (plug.lowerNm + plug.upperNm) / 2;
  if (settingNm < plug.lowerNm || settingNm > plug.upperNm)
    throw new RangeError(
      `setting ${settingNm} N·m lies outside the window ${plug.lowerNm} to ${plug.upperNm} N·m`,
    );
  const capacityNm = wrench.capacityNm ?? CAPACITIES_NM.find((nm) => settingNm <= 0.8 * nm);
  if (capacityNm === undefined || settingNm > capacityNm)
    throw new RangeError(`no wrench goes to ${settingNm} N·m`);
  return {
    gain: 1 + random.within(0, GAIN_SIGMA, 2.5),
    offsetNm: random.within(0, OFFSET_SIGMA_NM, 2.5),
    noiseNm: NOISE_NM,
    sampleIntervalUs: SAMPLE_INTERVAL_US,
    jitterUs: JITTER_US,
    ...wrench,
    settingNm,
    capacityNm,
  };
}

/** The gauge of a bench with its draws made. */
export function gaugeOf({ gauge = {} }: BenchSpec, random: Random): GaugeSpec {
  return {
    biasMm: random.within(0, GAUGE_BIAS_SIGMA_MM, 2),
    repeatabilityMm: GAUGE_REPEATABILITY_MM,
    resolutionMm: GAUGE_RESOLUTION_MM,
    ...gauge,
  };
}
