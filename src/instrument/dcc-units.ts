import type { Element } from '@xmldom/xmldom';
import { millimetres } from '../quantity/length.ts';
import { spellingAt } from '../quantity/spelling.ts';
import { newtonMetres } from '../quantity/torque.ts';
import { phrases, w } from '../words/catalogue.ts';
import { all, first, textOf } from './dcc-tree.ts';

/** One of ours, and how many of it are in one of the certificate's. `si`: as D-SI writes it. */
export interface DccUnit {
  readonly name: 'N.m' | 'mm';
  readonly scale: number;
  readonly si: boolean;
}

const PREFIXES: Readonly<Record<string, number>> = {
  kilo: 1e3,
  deci: 1e-1,
  centi: 1e-2,
  milli: 1e-3,
  micro: 1e-6,
};
const SI_UNIT = /^(?:\\(kilo|deci|centi|milli|micro))?(\\newton\\metre|\\metre)$/;

/** The unit of a text in the manner of D-SI, or as people write lbf·ft and inches, which D-SI has no name for; null for any other. */
export function dccUnit(text: string): DccUnit | null {
  const si = SI_UNIT.exec(text.replaceAll('\\tothe{1}', ''));
  if (si !== null) {
    const prefix = si[1] === undefined ? 1 : (PREFIXES[si[1]] ?? 1);
    return si[2] === '\\metre'
      ? { name: 'mm', scale: Number((prefix * 1e3).toPrecision(12)), si: true }
      : { name: 'N.m', scale: prefix, si: true };
  }
  const plain = text
    .replaceAll('\\', ' ')
    .replace(/pound ?force/i, 'lbf')
    .trim();
  const found = spellingAt(plain, 0);
  if (found === null || found.length < plain.length) return null;
  const { unit } = found.spelling;
  if (unit !== null && isTorque(unit)) return { name: 'N.m', scale: newtonMetres(1, unit), si: false };
  if (unit === 'mm' || unit === '[in_i]') return { name: 'mm', scale: millimetres(1, unit), si: false };
  return null;
}

const TORQUES = ['N.m', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', 'kgf.m', 'kgf.cm'] as const;
const isTorque = (unit: string): unit is (typeof TORQUES)[number] => TORQUES.some((one) => one === unit);

/** The units of a value or list; a unit may be written with a space in it. */
export function unitTexts(element: Element, suffix: '' | 'XMLList'): readonly string[] {
  const text = textOf(first(element, 'si', `unit${suffix}`));
  if (text === null) return [];
  return dccUnit(text) === null ? text.split(/\s+/) : [text];
}

/** What people call the units that certificates of other instruments are in. */
const WORDS: Readonly<Record<string, string>> = phrases({
  '\\kelvin': 'kelvins',
  '\\degreecelsius': 'degrees Celsius',
  '\\degreeCelsius': 'degrees Celsius',
  '\\ohm': 'ohms',
  '\\kilogram\\metre\\tothe{2}\\ampere\\tothe{-2}\\second\\tothe{-3}': 'ohms',
  '\\volt': 'volts',
  '\\newton': 'newtons, a force',
  '\\pascal': 'pascals',
  '\\hecto\\pascal': 'hectopascals',
  '\\kilogram': 'kilograms',
  '\\gram': 'grams',
  '\\centi\\metre\\tothe{3}': 'cubic centimetres',
  '\\joule': 'joules',
  '\\one': 'figures without a unit',
  '\\percent': 'per cent',
});

/** Units of these quantities that no torque wrench and no gap gauge is calibrated in; null where there are none. */
export function otherUnits(quantities: readonly Element[]): string | null {
  const units = new Set<string>();
  for (const quantity of quantities)
    for (const [kind, suffix] of [
      ['realListXMLList', 'XMLList'],
      ['real', ''],
    ] as const)
      for (const values of all(quantity, 'si', kind))
        for (const unit of unitTexts(values, suffix)) if (dccUnit(unit) === null) units.add(unit);
  const named = [...units].slice(0, 4).map((unit) => WORDS[unit] ?? w`in the unit ${unit.slice(0, 40)}`);
  return named.length === 0 ? null : [...new Set(named)].reduce((all, one) => w`${all} and ${one}`);
}
