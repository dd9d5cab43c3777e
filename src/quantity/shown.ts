/**
 * Figures in the units that the shop reads. Everything is measured, judged and kept in N·m and mm; a reader's units are a scope
 * around the making of a text, like the reader's language (`src/words/catalogue.ts`).
 */
import { fixed, plainFigure } from '../words/catalogue.ts';
import { type LengthUnit, millimetres } from './length.ts';
import { rounded } from './rounded.ts';
import { fromNewtonMetres, type TorqueUnit } from './torque.ts';

export const SHOWN_TORQUE = ['N.m', '[ft_i].[lbf_av]'] as const satisfies readonly TorqueUnit[];
export const SHOWN_LENGTH = ['mm', '[in_i]'] as const satisfies readonly LengthUnit[];

export interface ShownUnits {
  readonly torque: (typeof SHOWN_TORQUE)[number];
  readonly length: (typeof SHOWN_LENGTH)[number];
}

export const SI: ShownUnits = { torque: 'N.m', length: 'mm' };

/** How a unit is written, and the decimals that a reader sees: the record keeps every digit. */
const WRITTEN = {
  'N.m': { text: 'N·m', decimals: 2 },
  '[ft_i].[lbf_av]': { text: 'lbf·ft', decimals: 2 },
  mm: { text: 'mm', decimals: 3 },
  '[in_i]': { text: 'in', decimals: 4 },
} as const;

let reader = SI;

/** Makes a text in these units. */
export function inUnits<T>(units: ShownUnits, make: () => T): T {
  const before = reader;
  reader = units;
  try {
    const text = make();
    if (text instanceof Promise) throw new Error('a text in the units of its reader is made without waiting');
    return text;
  } finally {
    reader = before;
  }
}

/** For a program with one reader, from now on. */
export function showIn(units: ShownUnits): void {
  reader = units;
}

export const shownUnits = (): ShownUnits => reader;

type Measured = 'N.m' | 'mm';

/** The unit that a figure in N·m or mm is shown in, as people write it. */
export const shownUnit = (unit: Measured): string => WRITTEN[shown(unit)].text;

/** Decimals of a figure in the unit that it is shown in. */
export const shownDecimals = (unit: Measured): number => WRITTEN[shown(unit)].decimals;

/** A torque in N·m or a length in mm as a number in the reader's unit. */
export const shownValue = (value: number, unit: Measured): number =>
  unit === 'N.m' ? fromNewtonMetres(value, reader.torque) : value / millimetres(1, reader.length);

/** Without its unit: `25.00`, `0.750`; never a zero with a minus sign. */
export function shownFigure(value: number, unit: Measured): string {
  return fixed(shownValue(value, unit), shownDecimals(unit));
}

/** A limit of a window, without its unit, rounded into the window, so that nothing reads as inside that lies outside. */
export function shownLimit(value: number, unit: Measured, which: 'lower' | 'upper'): string {
  const steps = 10 ** shownDecimals(unit);
  const exact = shownValue(value, unit) * steps;
  // A limit that comes to a whole step but for the last bit is that step.
  const nearest = Math.round(exact);
  const inward = which === 'lower' ? Math.ceil(exact) : Math.floor(exact);
  const whole = Math.abs(exact - nearest) < 1e-6 ? nearest : inward;
  return fixed(whole / steps, shownDecimals(unit));
}

/** The same without needless zeros: `25`, `0.75`. */
export const briefFigure = (value: number, unit: Measured): string =>
  plainFigure(rounded(shownValue(value, unit), shownDecimals(unit)));

/** A torque to a tenth, as tables have it, without needless zeros: `20`, `22.1`. */
export const roughTorque = (nm: number): string => plainFigure(rounded(shownValue(nm, 'N.m'), 1));

/** `25.00 N·m`, `18.44 lbf·ft`. */
export const torqueText = (nm: number): string => `${shownFigure(nm, 'N.m')} ${shownUnit('N.m')}`;

/** `0.750 mm`, `0.0295 in`. */
export const gapText = (mm: number): string => `${shownFigure(mm, 'mm')} ${shownUnit('mm')}`;

const shown = (unit: Measured): keyof typeof WRITTEN => (unit === 'N.m' ? reader.torque : reader.length);
