/** The window laid along a row of columns: where the limits, the guard bands and the acceptance zone fall. */
import type { Window } from '../metrology/judgement.ts';

export type Zone = 'outside' | 'limit' | 'guard' | 'accept';

export interface Scale {
  readonly columns: number;
  /** The value at the right-hand end; the left-hand end is zero. */
  readonly top: number;
}

/** A scale from zero to a fifth above the window. */
export const scaleFor = (window: Window, columns: number): Scale => ({
  columns,
  top: window.upperLimit * 1.2,
});

/** The column of a value, kept within the scale. */
export const columnOf = (value: number, { columns, top }: Scale): number =>
  Math.max(0, Math.min(columns - 1, Math.floor((value / top) * columns)));

/**
 * The zone of every column. A guard band has at least one column at its limit, however narrow it is, as long as the
 * window has columns enough; the middle is left to the acceptance zone only when the window can be decided at all.
 */
export function zonesOf(window: Window, scale: Scale): Zone[] {
  const low = columnOf(window.lowerLimit, scale);
  const high = columnOf(window.upperLimit, scale);
  const guarded = window.guardBandFactor > 0 ? 1 : 0;
  const acceptFrom = Math.max(columnOf(window.acceptLower, scale), low + 1 + guarded);
  const acceptTo = Math.min(columnOf(window.acceptUpper, scale), high - 1 - guarded);
  return Array.from({ length: scale.columns }, (_, column): Zone => {
    if (column === low || column === high) return 'limit';
    if (column < low || column > high) return 'outside';
    return window.decidable && column >= acceptFrom && column <= acceptTo ? 'accept' : 'guard';
  });
}

/** Neighbouring columns of the same zone taken together. */
export function runsOf(zones: readonly Zone[]): { readonly zone: Zone; readonly length: number }[] {
  const runs: { zone: Zone; length: number }[] = [];
  for (const zone of zones) {
    const last = runs.at(-1);
    if (last?.zone === zone) last.length += 1;
    else runs.push({ zone, length: 1 });
  }
  return runs;
}
