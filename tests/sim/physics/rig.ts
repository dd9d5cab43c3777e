import type { BenchAction } from '../../../sim/physics/action.ts';
import { type Bench, type BenchSpec, createBench, type PlugSpec } from '../../../sim/physics/bench.ts';
import type { PullStyle } from '../../../sim/physics/style.ts';
import type { TruePull } from '../../../sim/physics/truth.ts';

export const GASKET: PlugSpec = {
  thread: 'M14x1.25',
  seat: 'gasket',
  gasket: 'new',
  lowerNm: 25,
  upperNm: 30,
  gapLowerMm: 0.7,
  gapUpperMm: 0.8,
};
export const USED: PlugSpec = { ...GASKET, gasket: 'used' };
export const CONICAL: PlugSpec = { ...GASKET, seat: 'conical', lowerNm: 15, upperNm: 20 };

/** A sweep at an even temper; each test changes what it is about. */
export const SWEEP: PullStyle = {
  speedDegPerS: 70,
  easeFromShare: 0.8,
  reactionMs: 90,
  effortAfterShare: 0.9,
  followThroughDeg: 0,
  stopAtShare: null,
  leanToShare: null,
  holdMs: 60,
  letOffDegPerS: 90,
  strokeDeg: 300,
};

export interface Sample {
  readonly atUs: number;
  readonly counts: number;
}

/** Sees every step of the physics, and nothing but the truth. */
export const PERFECT = { sampleIntervalUs: 500, jitterUs: 0, gain: 1, offsetNm: 0, noiseNm: 0 } as const;

export function benchOf(plug: PlugSpec, seed: number, wrench: BenchSpec['wrench'] = {}): Bench {
  return createBench({ seed, cylinders: [1, 2, 3, 4], plug, wrench });
}

/** Carries an action out and returns what the wrench sent meanwhile. */
export function perform(bench: Bench, action: BenchAction): Sample[] {
  const samples: Sample[] = [];
  bench.begin(action);
  for (let e = bench.next(); e !== null; e = bench.next())
    if (e.kind === 'torque') samples.push({ atUs: e.atUs, counts: e.counts });
  return samples;
}

export function lastPull(bench: Bench): TruePull {
  const pull = bench.truth.pulls.at(-1);
  if (pull === undefined) throw new Error('nothing was pulled');
  return pull;
}

/** Fits a plug and pulls once in the style given. */
export function fitAndPull(
  bench: Bench,
  style: PullStyle,
  cylinder = 1,
): { samples: Sample[]; pull: TruePull } {
  perform(bench, { do: 'fit', cylinder });
  const samples = perform(bench, { do: 'pull', cylinder, style });
  return { samples, pull: lastPull(bench) };
}

export function pullAgain(
  bench: Bench,
  style: PullStyle,
  cylinder = 1,
): { samples: Sample[]; pull: TruePull } {
  return { samples: perform(bench, { do: 'pull', cylinder, style }), pull: lastPull(bench) };
}

/** Milliseconds from 20 % to 80 % of the pull's peak, by first crossings. */
export function riseMs(samples: readonly Sample[], pull: TruePull): number {
  const within = samples.filter(({ atUs }) => atUs >= pull.startUs && atUs <= pull.peakUs);
  const crossing = (share: number) => within.find(({ counts }) => counts / 100 >= share * pull.peakNm)?.atUs;
  const [low, high] = [crossing(0.2), crossing(0.8)];
  if (low === undefined || high === undefined) throw new Error('the samples do not reach the peak');
  return (high - low) / 1000;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)];
  if (middle === undefined) throw new Error('no values');
  return middle;
}

export const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);
