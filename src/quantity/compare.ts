import { type AngleUnit, degrees } from './angle.ts';
import { type LengthUnit, millimetres } from './length.ts';
import type { PrintedRange } from './range.ts';
import { fromNewtonMetres, newtonMetres, type TorqueUnit } from './torque.ts';

/**
 * Relative difference below which two figures are the same figure. A conversion there and back moves a double by a few
 * parts in 10^16 and no instrument resolves one part in 10^12, so this can undo rounding and can decide nothing else.
 */
const BINARY_ROUNDING = 1e-12;

/** -1, 0 or 1 as `a` lies below, on or above `b`, the noise of binary arithmetic counting as equal. */
export function order(a: number, b: number): -1 | 0 | 1 {
  if (Math.abs(a - b) <= BINARY_ROUNDING * Math.max(Math.abs(a), Math.abs(b))) return 0;
  return a < b ? -1 : 1;
}

/** Where a figure lies with regard to a range whose limits belong to it. */
export type Position = 'low' | 'inside' | 'high';

function position<U>(figure: number, range: PrintedRange<U>): Position {
  if (order(figure, range.lower) < 0) return 'low';
  return order(figure, range.upper) > 0 ? 'high' : 'inside';
}

/** A torque in N·m held against a printed range, in the unit of the range: 30 lbf·ft lies within `25-30 lbf·ft`. */
export function compareTorque(nm: number, range: PrintedRange<TorqueUnit>): Position {
  return position(fromNewtonMetres(nm, range.unit), range);
}

/** The limits of a printed torque range in N·m. */
export function limitsNm(range: PrintedRange<TorqueUnit>): {
  readonly lowerNm: number;
  readonly upperNm: number;
} {
  return { lowerNm: newtonMetres(range.lower, range.unit), upperNm: newtonMetres(range.upper, range.unit) };
}

/** The limits of a printed range of lengths in mm. */
export function limitsMm(range: PrintedRange<LengthUnit>): {
  readonly lowerMm: number;
  readonly upperMm: number;
} {
  return { lowerMm: millimetres(range.lower, range.unit), upperMm: millimetres(range.upper, range.unit) };
}

/** The limits of an advised angle in degrees. */
export function limitsDeg(range: PrintedRange<AngleUnit>): {
  readonly lowerDeg: number;
  readonly upperDeg: number;
} {
  return { lowerDeg: degrees(range.lower, range.unit), upperDeg: degrees(range.upper, range.unit) };
}
