import { Guesses } from './guesses.ts';
import type { Samples } from './samples.ts';
import { BENDS, Spline } from './spline.ts';

/** Samples further back than this say nothing of the end of the rise. */
const REACH_US = 120_000;
const AT_LEAST = 3;

/** The torque at the end of a rise. */
export interface RiseEnd {
  readonly nm: number;
  readonly standardNm: number;
}

/**
 * The rise carried on from sample number `last` to `toUs`; null where too few samples came before. How much its pace
 * wanders the samples tell themselves: a plug that slips and sticks does, a hand on a soft spring hardly.
 */
export function riseTo(samples: Samples, last: number, toUs: number, sigma: number): RiseEnd | null {
  let first = last;
  while (samples.has(first - 1) && samples.timeUs(last) - samples.timeUs(first - 1) <= REACH_US) first--;
  if (last - first + 1 < AT_LEAST) return null;
  const scaleNm = Math.max(sigma, Math.abs(samples.nm(last)));
  const noise = sigma * sigma;
  const guesses = new Guesses();
  for (const bend of BENDS) {
    const spline = new Spline(samples.nm(first), noise, scaleNm, bend);
    for (let i = first + 1; i <= last; i++)
      spline.take((samples.timeUs(i) - samples.timeUs(i - 1)) / 1e6, samples.nm(i), noise);
    const { evidence } = spline;
    spline.predict(Math.max(0, toUs - samples.timeUs(last)) / 1e6);
    guesses.add(spline.nm, spline.p00, toUs, evidence);
  }
  return { nm: guesses.nm, standardNm: Math.sqrt(guesses.variance) };
}
