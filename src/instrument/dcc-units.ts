import type { Element } from '@xmldom/xmldom';
import { REF_TYPES, UNITS, words } from './dcc-quantity.ts';
import { all } from './dcc-tree.ts';

/** What people call the units that certificates of other instruments are in. */
const WORDS: Readonly<Record<string, string>> = {
  '\\kelvin': 'kelvins',
  '\\degreecelsius': 'degrees Celsius',
  '\\degreeCelsius': 'degrees Celsius',
  '\\ohm': 'ohms',
  '\\volt': 'volts',
  '\\newton': 'newtons, a force',
  '\\pascal': 'pascals',
  '\\kilogram': 'kilograms',
  '\\gram': 'grams',
  '\\joule': 'joules',
  '\\one': 'figures without a unit',
  '\\percent': 'per cent',
};

/** Units of readings and reference values that no torque wrench and no gap gauge is calibrated in; null where there are none. */
export function otherUnits(groups: readonly Element[]): string | null {
  const units = new Set<string>();
  for (const group of groups)
    for (const quantity of all(group, 'dcc', 'quantity')) {
      const refType = quantity.getAttribute('refType') ?? '';
      if (!Object.values(REF_TYPES).some((pattern) => pattern.test(refType))) continue;
      for (const [kind, suffix] of [
        ['realListXMLList', 'XMLList'],
        ['real', ''],
      ] as const)
        for (const values of all(quantity, 'si', kind))
          for (const unit of words(values, `unit${suffix}`)) if (UNITS[unit] === undefined) units.add(unit);
    }
  const named = [...units].slice(0, 4).map((unit) => WORDS[unit] ?? `in the unit ${unit.slice(0, 40)}`);
  return named.length === 0 ? null : [...new Set(named)].join(' and ');
}
