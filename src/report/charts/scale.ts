/** A stretch of values that a chart shows. */
export interface Scale {
  readonly low: number;
  readonly high: number;
}

/**
 * All values with a little air, but never more than twice the height of the limits beyond them: one absurd reading must
 * not press the rest into a line. What is beyond is drawn at the edge.
 */
export function scaleAround(values: readonly number[], lines: readonly number[]): Scale {
  const [lowest, highest] = [least(lines), greatest(lines)];
  const height = highest - lowest || Math.abs(highest) || 1;
  const low = Math.max(Math.min(lowest, least(values)), lowest - 2 * height);
  const high = Math.min(Math.max(highest, greatest(values)), highest + 2 * height);
  const air = (high - low || height) * 0.05;
  return { low: low - air, high: high + air };
}

/** Where in the scale a value lies, 0 to 1, held within. */
export function share(value: number, { low, high }: Scale): number {
  return Math.min(1, Math.max(0, (value - low) / (high - low)));
}

/** Round values within the scale, about `wanted` of them, in steps of 1, 2 or 5 times a power of ten. */
export function ticks({ low, high }: Scale, wanted: number): readonly number[] {
  const step = roundStep((high - low) / wanted);
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step);
}

/** The smallest of 1, 2 or 5 times a power of ten that is not below `rough`. */
export function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10);
}

export function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY);
}

export function greatest(values: readonly number[]): number {
  return values.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY);
}
