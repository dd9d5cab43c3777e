import { plainFigure } from '../words/catalogue.ts';
import { rounded } from './rounded.ts';

/** Units of a tightening angle by their UCUM codes: the degree and the whole turn. */
export type AngleUnit = 'deg' | 'circ';

/** Degrees in one of each unit. */
const DEGREES_IN: Readonly<Record<AngleUnit, number>> = { deg: 1, circ: 360 };

/** An angle in `unit`, in degrees. */
export function degrees(figure: number, unit: AngleUnit): number {
  return figure * DEGREES_IN[unit];
}

/** `180°`, `22.5°`. */
export function formatAngle(deg: number): string {
  return `${plainFigure(rounded(deg, 1))}°`;
}
