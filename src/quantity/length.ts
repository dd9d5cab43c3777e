import { fixed } from '../words/catalogue.ts';

/** Units of an electrode gap by their UCUM codes; `[mil_i]` is the thousandth of an inch (mil, thou). */
export type LengthUnit = 'mm' | '[in_i]' | '[mil_i]';

/** Millimetres in one of each unit; exact by definition. */
const MILLIMETRES_IN: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  '[in_i]': 25.4,
  '[mil_i]': 0.0254,
};

/** A length in `unit`, in mm. */
export function millimetres(figure: number, unit: LengthUnit): number {
  return figure * MILLIMETRES_IN[unit];
}

/** `0.75 mm`. */
export function formatGap(mm: number, decimals = 2): string {
  return `${fixed(mm, decimals)} mm`;
}
