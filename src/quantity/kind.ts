import { phrases } from '../words/catalogue.ts';
import { type AngleUnit, degrees } from './angle.ts';
import { type LengthUnit, millimetres } from './length.ts';
import { newtonMetres, type TorqueUnit } from './torque.ts';

/** What tells one quantity from another when it is read from print. */
export interface Kind<U> {
  readonly measured: 'torque' | 'length' | 'angle';
  readonly units: readonly U[];
  readonly words: { readonly measured: string; readonly units: string; readonly example: string };
  readonly toSi: (figure: number, unit: U) => number;
  /** In N·m, mm or degrees; anything above is a slip of the pen, not a spark plug. */
  readonly largest: number;
  /** Angles are printed in fractions of a turn; elsewhere `25/30` would be a range to one reader and 0.83 to another. */
  readonly fractions: boolean;
  /** An advised angle is often one figure; a torque or a gap without a tolerance cannot be judged. */
  readonly bareFigure: boolean;
}

export const TORQUE: Kind<TorqueUnit> = {
  measured: 'torque',
  units: ['N.m', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', 'kgf.m', 'kgf.cm'],
  words: phrases({
    measured: 'torque',
    units: 'N·m, lbf·ft, lbf·in, kgf·m or kgf·cm',
    example: '25-30 N·m or 18 N·m ±10 %',
  }),
  toSi: newtonMetres,
  largest: 1000,
  fractions: false,
  bareFigure: false,
};
export const LENGTH: Kind<LengthUnit> = {
  measured: 'length',
  units: ['mm', '[in_i]', '[mil_i]'],
  words: phrases({ measured: 'length', units: 'mm, in or mil', example: '0.7-0.8 mm or 1.0 +0/-0.1 mm' }),
  toSi: millimetres,
  largest: 100,
  fractions: false,
  bareFigure: false,
};
export const ANGLE: Kind<AngleUnit> = {
  measured: 'angle',
  units: ['deg', 'circ'],
  words: phrases({ measured: 'angle', units: '° or turn', example: '1/2-2/3 turn or 90°' }),
  toSi: degrees,
  largest: 3600,
  fractions: true,
  bareFigure: true,
};
