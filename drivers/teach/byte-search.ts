import type { Observed, Parts } from './observed.ts';
import { type Place, placesIn } from './place.ts';
import { type Point, scalesOf, type Worth } from './scale-search.ts';

/** A number that agrees with every stated figure. */
export interface ByteFigure {
  readonly place: Place;
  readonly worth: Worth;
  /** The bit that tells that the figure is below 0, where the number does not. */
  readonly sign: { readonly at: number; readonly bit: number } | null;
}

/** All of them. `taken`: bytes that are something else already. */
export function figuresIn(
  observed: Observed,
  parts: Parts,
  taken: ReadonlySet<number>,
): readonly ByteFigure[] {
  const length = parts.rest[0]?.length ?? 0;
  const found: ByteFigure[] = [];
  for (const place of placesIn(length)) {
    if (Array.from({ length: place.size }, (_, i) => place.at + i).some((byte) => taken.has(byte))) continue;
    const peaks = peaksAt(observed, parts, place);
    if (peaks === undefined) continue;
    for (const worth of scalesOf(observed, peaks, place.isExact)) found.push({ place, worth, sign: null });
    if (place.isSigned || peaks.every(({ figure }) => figure >= 0)) continue;
    const sign = signOf(peaks, place, length, taken);
    if (sign === undefined) continue;
    const sizes = peaks.map(({ figure, number }) => ({ figure: Math.abs(figure), number }));
    for (const worth of scalesOf(observed, sizes, place.isExact)) found.push({ place, worth, sign });
  }
  return found;
}

interface Peak extends Point {
  readonly frame: Buffer;
}

/** At rest a wrench reads nothing: this share of the largest figure. */
const AT_REST = 0.03;

/** The number at each stated figure; undefined where it cannot be the one. */
function peaksAt(
  { quantity }: Observed,
  { rest, stated }: Parts,
  { numberIn }: Place,
): readonly Peak[] | undefined {
  const peaks: Peak[] = [];
  for (const { figure, frames } of stated) {
    let peak: Peak | undefined;
    for (const frame of quantity === 'length' ? frames.slice(-1) : frames) {
      const number = numberIn(frame);
      if (number === undefined) return undefined;
      if (peak === undefined || Math.abs(number) > Math.abs(peak.number)) peak = { figure, number, frame };
    }
    if (peak === undefined) return undefined;
    peaks.push(peak);
  }
  const largest = Math.max(...peaks.map(({ number }) => Math.abs(number)));
  if (largest === 0) return undefined;
  if (quantity === 'length') return peaks;
  const isStill = rest.every((frame) => Math.abs(numberIn(frame) ?? Number.NaN) <= AT_REST * largest);
  return isStill ? peaks : undefined;
}

/** A bit elsewhere that is set just where the figure is below 0. */
function signOf(peaks: readonly Peak[], place: Place, length: number, taken: ReadonlySet<number>) {
  for (let at = 0; at < length; at++) {
    if (taken.has(at) || (at >= place.at && at < place.at + place.size)) continue;
    for (let bit = 0; bit < 8; bit++)
      if (peaks.every(({ figure, frame }) => (((frame[at] ?? 0) >> bit) & 1) === (figure < 0 ? 1 : 0)))
        return { at, bit };
  }
  return undefined;
}
