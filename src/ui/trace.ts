import type { Glyphs } from './glyphs.ts';

/** As many columns as asked, each the highest of its share, so that a short peak is never drawn away. */
export function condensed(samples: readonly number[], columns: number): number[] {
  if (samples.length <= columns) return [...samples];
  return Array.from({ length: columns }, (_, column) => {
    const from = Math.floor((column * samples.length) / columns);
    const to = Math.floor(((column + 1) * samples.length) / columns);
    return Math.max(...samples.slice(from, to));
  });
}

/** The last seconds of torque as a filled curve, newest at the right; `top` is the torque of the uppermost edge. */
export function traceRows(
  samples: readonly number[],
  columns: number,
  rows: number,
  top: number,
  glyphs: Glyphs,
): string[] {
  const steps = glyphs.upward.length - 1;
  const heights = condensed(samples, columns).map((value) =>
    Math.round(Math.max(0, Math.min(1, value / top)) * rows * steps),
  );
  return Array.from({ length: rows }, (_, row) => {
    const below = (rows - 1 - row) * steps;
    const drawn = heights.map((height) => glyphs.upward[Math.max(0, Math.min(steps, height - below))] ?? ' ');
    return drawn.join('').padStart(columns);
  });
}
