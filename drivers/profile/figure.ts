import type { ByteField, Part, SampleField, TextField } from './field-schema.ts';
import type { Layout } from './layout-schema.ts';
import { integerKind } from './number.ts';
import { common, decimal, type Scale, scaleOf, type Worth } from './unit.ts';

// What the numbers of a layout are worth: its value, and its angle where it has one.

type Item = ByteField | SampleField | Part | TextField;
export type Path = readonly (string | number)[];

/** A part of a layout, wherever it is. */
export interface Placed {
  readonly item: Item;
  readonly path: Path;
  readonly inSamples: boolean;
}

/** All parts, those of samples and of bits behind what they are in. */
export function placedIn({ fields }: Layout): readonly Placed[] {
  const placed = (items: readonly Item[], path: Path, inSamples: boolean): readonly Placed[] =>
    items.flatMap((item, i) => {
      const here = [...path, i];
      const self: Placed = { item, path: here, inSamples };
      if (item.is === 'samples') return [self, ...placed(item.fields, [...here, 'fields'], true)];
      if (item.is === 'bits') return [self, ...placed(item.parts, [...here, 'parts'], inSamples)];
      return [self];
    });
  return placed(fields, ['layout', 'fields'], false);
}

type FigureItem = Extract<Item, { readonly is: 'value' | 'angle' }>;
type UnitItem = Extract<Item, { readonly is: 'unit' }>;

export const isFigure = (item: Item): item is FigureItem => item.is === 'value' || item.is === 'angle';
const isUnit = (item: Item): item is UnitItem => item.is === 'unit';

interface UnitCode {
  readonly unit: Worth['unit'];
  readonly scale?: string;
  readonly resolution?: string;
  readonly decimals?: number;
}

/** What a field `unit` can say, in its order; empty where there is none. */
export function unitCodes(layout: Layout): readonly UnitCode[] {
  const unit = placedIn(layout)
    .map(({ item }) => item)
    .find(isUnit);
  if (unit === undefined) return [];
  return 'texts' in unit ? unit.texts : unit.codes;
}

/** Whether its numbers are whole, in bytes; a text is digits. */
function isExact(item: FigureItem): boolean {
  if (!('type' in item)) return true;
  return integerKind(item.type) !== undefined;
}

/** What 1 is worth; the text says what is missing. */
export function worthOf(
  item: FigureItem,
  code?: UnitCode,
): Worth | { readonly missing: 'scale' | 'unit' | 'resolution' } {
  const isText = !('type' in item);
  const scale = code?.scale ?? item.scale ?? (isText ? '1' : undefined);
  if (scale === undefined) return { missing: 'scale' };
  const unit = code?.unit ?? item.unit;
  if (unit === undefined) return { missing: 'unit' };
  const exact = isExact(item);
  const step = code?.resolution ?? item.resolution ?? (exact && !isText ? scale.replace('-', '') : undefined);
  if (step === undefined) return { missing: 'resolution' };
  const decimals = isText ? (code?.decimals ?? item.decimals ?? decimalsOf(step)) : 0;
  return { scale, step, unit, decimals, exact };
}

const decimalsOf = (text: string) => text.split('.')[1]?.length ?? 0;

/** How numbers become counts. `counts` and `decimals`: by number of the unit code, or one where there are none. */
export interface Scaling {
  readonly exponent: number;
  readonly resolutionCounts: number;
  readonly counts: readonly number[];
  /** Of a text: digits behind the mark. */
  readonly decimals: readonly number[];
}

/** Of a layout that has been checked. */
export function scalingOf(layout: Layout, of: 'value' | 'angle'): Scaling | undefined {
  const item = placedIn(layout)
    .map((one) => one.item)
    .filter(isFigure)
    .find(({ is }) => is === of);
  if (item === undefined) return undefined;
  const codes = of === 'value' ? unitCodes(layout) : [];
  const worths = (codes.length === 0 ? [undefined] : codes).map((code) => worthOf(item, code));
  const scales: Scale[] = [];
  const decimals: number[] = [];
  for (const worth of worths) {
    if ('missing' in worth) throw new Error(`a checked layout lacks the ${worth.missing} of its ${of}`);
    scales.push(scaleOf(worth));
    decimals.push(worth.decimals);
  }
  return { ...common(scales), decimals };
}

/** Whether the step is finer than the numbers can tell. */
export function isTooFine({ scale, step, decimals, exact }: Worth): boolean {
  if (!exact) return false;
  const one = decimal(scale);
  const least = decimal(step);
  return least.digits * 10 ** (least.exponent - one.exponent + decimals) < Math.abs(one.digits) * (1 - 1e-9);
}
