import type { Samples } from './samples.ts';
import { Spline } from './spline.ts';

/** Between two samples torque is looked at so finely. */
const MOMENT_US = 3_000;
const MOMENTS = 12;

/** Level and pace at one sample as one side alone has them; what comes from behind counts its pace backwards. */
export interface Side {
  readonly nm: number;
  readonly nmPerS: number;
  readonly p00: number;
  readonly p01: number;
  readonly p11: number;
  readonly evidence: number;
}

const sideOf = ({ nm, nmPerS, p00, p01, p11, evidence }: Spline): Side => ({
  nm,
  nmPerS,
  p00,
  p01,
  p11,
  evidence,
});

/** A spline from the front up to each sample near the top, and one from behind down to each. */
export interface Sides {
  readonly before: ReadonlyMap<number, Side>;
  readonly behind: ReadonlyMap<number, Side>;
  /** Of one spline through all. */
  readonly evidence: number;
  readonly bend: number;
}

/** Numbers of samples: what is looked at, and where the top may be. */
export interface Reach {
  readonly first: number;
  readonly last: number;
  readonly from: number;
  readonly to: number;
}

export function bothSides(
  samples: Samples,
  { first, last, from, to }: Reach,
  sigma: number,
  scaleNm: number,
  bend: number,
): Sides {
  const run = (start: number, end: number): { at: Map<number, Side>; evidence: number } => {
    const step = start <= end ? 1 : -1;
    const spline = new Spline(samples.nm(start), sigma, scaleNm, bend);
    const at = new Map<number, Side>();
    for (let i = start; ; i += step) {
      if (i !== start) {
        spline.take(Math.abs(samples.timeUs(i) - samples.timeUs(i - step)) / 1e6, samples.nm(i));
      }
      if (i >= from - 1 && i <= to + 1) at.set(i, sideOf(spline));
      if (i === end) return { at, evidence: spline.evidence };
    }
  };
  const forward = run(first, last);
  const backward = run(last, Math.max(first, from));
  return {
    before: forward.at,
    behind: backward.at,
    evidence: forward.evidence,
    bend: (bend * scaleNm) ** 2,
  };
}

/** The side `s` seconds further on. */
export function carried({ nm, nmPerS, p00, p01, p11, evidence }: Side, s: number, bend: number): Side {
  return {
    nm: nm + nmPerS * s,
    nmPerS,
    p00: p00 + s * (2 * p01 + s * p11) + (bend * s ** 3) / 3,
    p01: p01 + s * p11 + (bend * s * s) / 2,
    p11: p11 + bend * s,
    evidence,
  };
}

/** At how many moments to look within so long. */
export const momentsIn = (us: number): number => Math.min(MOMENTS, Math.max(1, Math.round(us / MOMENT_US)));
