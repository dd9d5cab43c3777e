import type { Element } from '@xmldom/xmldom';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { labelOf, turnsBack } from './dcc-direction.ts';
import { all, first, textOf } from './dcc-tree.ts';
import { type DccUnit, dccUnit, unitTexts } from './dcc-units.ts';

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
type Role = keyof DccQuantities;

/** The refTypes of the good-practice examples. */
const REF_TYPES: Readonly<Record<Role, RegExp>> = {
  reading: /\bbasic_(?:measuredValue|indicatedValue)/i,
  error: /\bbasic_measurementError/i,
  reference: /\bbasic_referenceValue/i,
};
/** Schema 2 knew no refTypes: there a quantity is what its name says, in English or German. */
const NAMES: Readonly<Record<Role, RegExp>> = {
  error: /\b(?:error|(?<!standard )deviation)\b|(?<!standard)abweichung/i,
  reference: /\b(?:reference|true value|standard)\b|referenz|bezugs|normal/i,
  reading: /\b(?:measured|indicated|indication|reading)\b|messwert|anzeige/i,
};
const ROLES = ['error', 'reference', 'reading'] as const;

/** What a quantity is to a calibration; null for none of it. */
export function roleOf(quantity: Element): Role | null {
  const refType = quantity.getAttribute('refType');
  const [text, patterns] = refType ? [refType, REF_TYPES] : [labelOf(quantity), NAMES];
  return ROLES.find((role) => patterns[role].test(text)) ?? null;
}

/** The quantities of a table or a group by what they are; those of other units (temperature, angle) are passed over. */
export function quantitiesOf(group: Element): Result<DccQuantities, string> {
  const quantities: Record<Role, DccQuantity | null> = { reading: null, error: null, reference: null };
  for (const quantity of all(group, 'dcc', 'quantity')) {
    const role = roleOf(quantity);
    if (role === null || quantities[role] !== null || turnsBack(quantity)) continue;
    const read = quantityOf(quantity);
    if (!read.ok) return read;
    quantities[role] = read.value;
  }
  return ok(quantities);
}

/** The first list or value of the quantity in a unit known here, those of the SI before others; a hybrid holds the same in several. */
function quantityOf(quantity: Element): Result<DccQuantity | null, string> {
  const lists: InUnit[] = [];
  for (const list of all(quantity, 'si', 'realListXMLList')) {
    const read = valuesOf(list, 'XMLList');
    if (!read.ok) return read;
    if (read.value !== null) lists.push(read.value);
  }
  if (lists.length > 0) return ok((lists.find(({ si }) => si) ?? lists[0])?.quantity ?? null);
  const values: InUnit[] = [];
  for (const real of all(quantity, 'si', 'real')) {
    const read = valuesOf(real, '');
    if (!read.ok) return read;
    if (read.value !== null) values.push(read.value);
  }
  const some = values.filter(({ si }) => si);
  return ok(together((some.length > 0 ? some : values).map((value) => value.quantity)));
}

interface InUnit {
  readonly quantity: DccQuantity;
  readonly si: boolean;
}

/** What of an uncertainty each spelling of D-SI gives: U with its k, or u alone. */
const EXPANDED = ['valueExpandedMU', 'uncertainty'] as const;
const STANDARD = ['valueStandardMU', 'standardUnc'] as const;
/** k of an expanded uncertainty that is made from a standard one. */
const USUAL_K = 2;

function valuesOf(element: Element, suffix: '' | 'XMLList'): Result<InUnit | null, string> {
  const texts = unitTexts(element, suffix);
  const units = texts.map(dccUnit);
  const [unit] = units;
  if (unit === undefined || unit === null) return ok(null);
  if (units.some((other) => !isSame(other, unit))) return err(w`one list holds several units`);
  const { name, scale } = unit;
  const list = (field: string) => numbers(element, `${field}${suffix}`);
  const values = list('value');
  const factors = list('coverageFactor');
  const expanded = oneOf(EXPANDED.map(list));
  const standard = oneOf(STANDARD.map(list));
  if (values === null || factors === null || expanded === null || standard === null)
    return err(w`a list of "${texts[0] ?? ''}" holds something that is no number`);
  const scaled = values.map((value) => clean(value * scale));
  const at = (list: readonly number[], i: number) => (list.length === 1 ? list[0] : list[i]) ?? Number.NaN;
  const uncertainty =
    expanded.length > 0
      ? scaled.map((_, i) => ({ expanded: clean(at(expanded, i) * scale), k: at(factors, i) }))
      : standard.length > 0
        ? scaled.map((_, i) => ({ expanded: clean(USUAL_K * at(standard, i) * scale), k: USUAL_K }))
        : null;
  return ok({ quantity: { unit: name, values: scaled, uncertainty }, si: unit.si });
}

const isSame = (a: DccUnit | null, b: DccUnit) => a !== null && a.name === b.name && a.scale === b.scale;

/** The first that holds something; null where any of them cannot be read. */
const oneOf = (lists: readonly (readonly number[] | null)[]): readonly number[] | null =>
  lists.includes(null) ? null : (lists.find((list) => list !== null && list.length > 0) ?? []);

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

/** Null where something in the list is no plain decimal number. */
function numbers(element: Element, name: string): readonly number[] | null {
  const texts = textOf(first(element, 'si', name))?.split(/\s+/) ?? [];
  return texts.every((text) => /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d{1,2})?$/.test(text))
    ? texts.map(Number)
    : null;
}

/** Takes off the noise that a change of unit brings. */
const clean = (value: number): number => Number(value.toPrecision(12));
