import type { Element } from '@xmldom/xmldom';
import { err, ok, type Result } from '../result.ts';
import { all, first, textOf } from './dcc-tree.ts';

/** One quantity of a DCC: a value a point, with its expanded uncertainty where it carries one. */
export interface DccQuantity {
  readonly unit: 'N.m' | 'mm';
  readonly values: readonly number[];
  readonly uncertainty: readonly { readonly expanded: number; readonly k: number }[] | null;
}

export interface DccQuantities {
  readonly reading: DccQuantity | null;
  readonly error: DccQuantity | null;
  readonly reference: DccQuantity | null;
}

/** Units as D-SI writes them, and how many of ours they are. */
export const UNITS: Readonly<Record<string, readonly [DccQuantity['unit'], number]>> = {
  '\\newton\\metre': ['N.m', 1],
  '\\milli\\newton\\metre': ['N.m', 1e-3],
  '\\metre': ['mm', 1e3],
  '\\milli\\metre': ['mm', 1],
  '\\micro\\metre': ['mm', 1e-3],
};

/** The refTypes of the good-practice examples. */
export const REF_TYPES = {
  reading: /\bbasic_(?:measuredValue|indicatedValue)/i,
  error: /\bbasic_measurementError/i,
  reference: /\bbasic_referenceValue/i,
} as const;

/** The quantities of a table or a group by what they are; those of other units (temperature, angle) are passed over. */
export function quantitiesOf(group: Element): Result<DccQuantities, string> {
  const quantities: Record<keyof DccQuantities, DccQuantity | null> = {
    reading: null,
    error: null,
    reference: null,
  };
  for (const quantity of all(group, 'dcc', 'quantity')) {
    const refType = quantity.getAttribute('refType') ?? '';
    for (const key of ['reading', 'error', 'reference'] as const) {
      if (!REF_TYPES[key].test(refType) || quantities[key] !== null) continue;
      const read = quantityOf(quantity);
      if (!read.ok) return read;
      quantities[key] = read.value;
    }
  }
  return ok(quantities);
}

/** The first list or value of the quantity in a unit known here; a hybrid holds the same in several units. */
function quantityOf(quantity: Element): Result<DccQuantity | null, string> {
  const lists = all(quantity, 'si', 'realListXMLList');
  for (const list of lists) {
    const read = valuesOf(list, 'XMLList');
    if (!read.ok || read.value !== null) return read;
  }
  const reals = all(quantity, 'si', 'real');
  const values: DccQuantity[] = [];
  for (const real of reals) {
    const read = valuesOf(real, '');
    if (!read.ok) return read;
    if (read.value !== null) values.push(read.value);
  }
  return ok(together(values));
}

function valuesOf(element: Element, suffix: '' | 'XMLList'): Result<DccQuantity | null, string> {
  const units = words(element, `unit${suffix}`);
  const scales = units.map((unit) => UNITS[unit]);
  const [unit] = scales;
  if (unit === undefined) return ok(null);
  if (scales.some((other) => other !== unit)) return err('one list holds several units');
  const [name, scale] = unit;
  const [values, expanded, older, factors] = (
    ['value', 'valueExpandedMU', 'uncertainty', 'coverageFactor'] as const
  ).map((field) => numbers(element, `${field}${suffix}`));
  if (values === undefined || expanded === undefined || older === undefined || factors === undefined)
    return err(`a list of "${units[0] ?? ''}" holds something that is no number`);
  const scaled = values.map((value) => clean(value * scale));
  // D-SI before 2.2 wrote expandedUnc/uncertainty.
  const amounts = expanded.length === 0 ? older : expanded;
  if (amounts.length === 0) return ok({ unit: name, values: scaled, uncertainty: null });
  const at = (list: readonly number[], i: number) => (list.length === 1 ? list[0] : list[i]);
  const uncertainty = scaled.map((_, i) => ({
    expanded: clean((at(amounts, i) ?? Number.NaN) * scale),
    k: at(factors, i) ?? Number.NaN,
  }));
  return ok({ unit: name, values: scaled, uncertainty });
}

/** Single values of one quantity as a list. */
function together(values: readonly DccQuantity[]): DccQuantity | null {
  const [head] = values;
  if (head === undefined) return null;
  const uncertainty = values.flatMap((value) => value.uncertainty ?? []);
  return {
    unit: head.unit,
    values: values.flatMap((value) => value.values),
    uncertainty: uncertainty.length === values.length ? uncertainty : null,
  };
}

export function words(element: Element, name: string): string[] {
  return textOf(first(element, 'si', name))?.split(/\s+/) ?? [];
}

/** Undefined where something in the list is no plain decimal number. */
function numbers(element: Element, name: string): number[] | undefined {
  const texts = words(element, name);
  return texts.every((text) => /^[-+]?\d+(?:\.\d+)?(?:[eE][-+]?\d{1,2})?$/.test(text))
    ? texts.map(Number)
    : undefined;
}

/** Takes off the noise that a change of unit brings. */
const clean = (value: number): number => Number(value.toPrecision(12));
