import type { z } from 'zod';
import type { Quantity } from '../../src/reading.ts';
import { phrases, w } from '../../src/words/catalogue.ts';
import { type ByteField, MOST_BYTES, type TextField } from './field-schema.ts';
import { fieldSize, ownSize, sampleSize } from './field-size.ts';
import {
  isFigure,
  isTooFine,
  type Path,
  type Placed,
  placedIn,
  scalingOf,
  unitCodes,
  worthOf,
} from './figure.ts';
import type { Frames, Layout } from './layout-schema.ts';
import type { linkSchema } from './link-schema.ts';
import { sizeOf } from './number.ts';
import { unitMeasures } from './unit.ts';

/** What the parts of a profile say of each other and cannot both be. */

interface Checked {
  readonly quantity: Quantity;
  readonly link: z.infer<typeof linkSchema>;
  readonly frames: Frames;
  readonly layout: Layout;
}

export interface Fault {
  readonly path: Path;
  readonly message: string;
}

export function faultsOf(profile: Checked): readonly Fault[] {
  const { layout } = profile;
  const placed = placedIn(layout);
  const faults = [
    ...figureFaults(profile, placed),
    ...onceFaults(placed),
    ...bitFaults(placed),
    ...frameFaults(profile),
    ...(layout.of === 'bytes' ? sizeFaults(layout.fields) : textFaults(layout.fields)),
  ];
  return faults.length > 0 ? faults : [...stepFaults(layout, placed)];
}

function* figureFaults({ quantity, layout }: Checked, placed: readonly Placed[]): Iterable<Fault> {
  const figures = placed.filter(({ item }) => isFigure(item));
  const values = figures.filter(({ item }) => item.is === 'value');
  if (values.length !== 1)
    yield { path: ['layout', 'fields'], message: w`expected one field "value", found ${values.length}` };
  const angles = figures.filter(({ item }) => item.is === 'angle');
  if (angles.length > 1) yield { path: angles[1]?.path ?? [], message: w`the angle is there twice` };
  if (angles.length > 0 && quantity !== 'torque')
    yield { path: angles[0]?.path ?? [], message: w`only a torque tool sends an angle` };
  if (angles.some(({ inSamples }) => inSamples !== values[0]?.inSamples))
    yield { path: angles[0]?.path ?? [], message: w`expected the angle beside the value` };
  const codes = unitCodes(layout);
  for (const { item, path } of figures) {
    if (!isFigure(item)) continue;
    const own = item.is === 'angle' || codes.length === 0 ? [undefined] : codes;
    if (item.is === 'value' && item.unit !== undefined && codes.length > 0)
      yield { path: [...path, 'unit'], message: w`the unit is given here and told by the frame` };
    for (const code of own) {
      const worth = worthOf(item, code);
      if ('missing' in worth) {
        yield { path: [...path, worth.missing], message: MISSING[worth.missing] };
        break;
      }
      const { unit, step } = worth;
      if (unit !== '°' && unit !== 'turn' && unitMeasures(unit) !== quantity)
        yield { path: [...path, 'unit'], message: w`${unit} is no unit of ${quantity}` };
      if (isTooFine(worth))
        yield {
          path: [...path, 'resolution'],
          message: w`expected a step that the numbers can tell, not ${step}`,
        };
    }
    if ('type' in item && /float/.test(item.type) && (item.noValue !== undefined || item.zero !== undefined))
      yield {
        path: [...path, item.zero === undefined ? 'noValue' : 'zero'],
        message: w`a ${item.type} has codes of its own for that`,
      };
  }
}

const MISSING = phrases({
  scale: 'expected the value of 1',
  unit: 'expected a unit, or a field that tells it',
  resolution: 'expected the smallest step of the tool, because the numbers do not tell it',
});

/** What a frame has once at most. */
const ONCE = ['samples', 'counter', 'size', 'count', 'checksum', 'unit'] as const;

function* onceFaults(placed: readonly Placed[]): Iterable<Fault> {
  for (const is of ONCE) {
    const [first, second] = placed.filter(({ item }) => item.is === is);
    if (second !== undefined) yield { path: second.path, message: w`there is a "${is}" already` };
    if (is === 'counter' && first?.inSamples === true)
      yield { path: first.path, message: w`expected the counter outside of the samples` };
  }
  const count = placed.find(({ item }) => item.is === 'count');
  if (count !== undefined && placed.every(({ item }) => item.is !== 'samples'))
    yield { path: count.path, message: w`there are no "samples" that it could count` };
  const samples = placed.find(({ item }) => item.is === 'samples');
  if (samples !== undefined && placed.every(({ item, inSamples }) => item.is !== 'value' || !inSamples))
    yield { path: samples.path, message: w`expected the "value" in the samples` };
}

function* bitFaults(placed: readonly Placed[]): Iterable<Fault> {
  for (const { item, path } of placed) {
    if (item.is !== 'bits') continue;
    let taken = 0;
    for (const [i, part] of item.parts.entries()) {
      const width = part.is === 'flag' ? 1 : part.bits;
      const at = [...path, 'parts', i];
      if (part.bit + width > 8 * sizeOf(item.type))
        yield { path: at, message: w`a ${item.type} has no bit ${part.bit + width - 1}` };
      for (let bit = part.bit; bit < part.bit + width && bit < 32; bit++) {
        if (taken & (1 << bit)) {
          yield { path: at, message: w`bit ${bit} is there twice` };
          break;
        }
        taken |= 1 << bit;
      }
      if ('type' in part && part.type === 'bcd' && width % 4 !== 0)
        yield { path: [...at, 'bits'], message: w`a decimal digit takes 4 bits` };
    }
  }
}

function* frameFaults({ link, frames, layout }: Checked): Iterable<Fault> {
  if (link.kind === 'serial' && frames.by === 'packet')
    yield { path: ['frames', 'by'], message: w`a serial port has no packets` };
  if (frames.by !== 'length') return;
  if (layout.of === 'text') {
    yield {
      path: ['frames', 'by'],
      message: w`text has no length of its own; expected "delimiter", "time" or "packet"`,
    };
    return;
  }
  const { fields } = layout;
  const size = fields.find((field) => field.is === 'size');
  const rest = fields.findIndex((field) => fieldSize(field) === undefined);
  if (rest >= 0 && (size === undefined || fields.indexOf(size) > rest))
    yield {
      path: ['layout', 'fields', rest],
      message: w`expected a field "size" in front, because nothing else tells where the frame ends`,
    };
  const proven = fields.some(({ is }) => is === 'checksum') || fields.at(-1)?.is === 'fixed';
  if (!proven && frames.quietMs === undefined)
    yield {
      path: ['frames', 'quietMs'],
      message: w`expected a pause, a checksum, or fixed bytes at the end: without them a lost byte would shift every number unseen`,
    };
}

function* sizeFaults(fields: readonly ByteField[]): Iterable<Fault> {
  const own = ownSize(fields);
  if (own > MOST_BYTES)
    yield {
      path: ['layout', 'fields'],
      message: w`${own} bytes are more than the ${MOST_BYTES} of the longest frame`,
    };
  for (const [i, field] of fields.entries()) {
    if (field.is === 'checksum' && (field.from ?? 0) >= startOf(fields, i) && field.to === 'itself')
      yield { path: ['layout', 'fields', i, 'from'], message: w`it would cover nothing` };
    if (field.is === 'samples' && sampleSize(field.fields) === 0)
      yield { path: ['layout', 'fields', i], message: w`a sample has no bytes` };
  }
}

/** The least that lies in front of a field. */
const startOf = (fields: readonly ByteField[], i: number) => ownSize(fields.slice(0, i));

/** Behind a figure, only what cannot be a part of it. */
function* textFaults(fields: readonly TextField[]): Iterable<Fault> {
  for (const [i, field] of fields.entries()) {
    const path = ['layout', 'fields', i];
    if (field.is === 'unused' && (field.characters === undefined) === (field.until === undefined))
      yield { path, message: w`expected either "characters" or "until"` };
    const before = fields.slice(0, i).findLast(({ is }) => is !== 'blanks');
    if ((before?.is === 'value' || before?.is === 'angle') && mayGoOn(field, before.decimalMark))
      yield { path, message: w`nothing tells where the figure in front of it ends` };
  }
}

/** Whether it could be taken for more of a figure. */
function mayGoOn(field: TextField, mark: string): boolean {
  const texts =
    field.is === 'text' ? [field.text] : 'texts' in field ? field.texts.map(({ text }) => text) : [];
  if (texts.some((text) => /^[0-9]/.test(text) || text.startsWith(mark))) return true;
  return (
    ['counter', 'checksum', 'value', 'angle'].includes(field.is) ||
    (field.is === 'unused' && field.characters !== undefined)
  );
}

function* stepFaults(layout: Layout, placed: readonly Placed[]): Iterable<Fault> {
  for (const [of, least, most] of [
    ['value', -12, 3],
    ['angle', -6, 2],
  ] as const) {
    const scaling = scalingOf(layout, of);
    if (scaling !== undefined && (scaling.exponent < least || scaling.exponent > most))
      yield {
        path: [...(placed.find(({ item }) => item.is === of)?.path ?? []), 'scale'],
        message: w`this step is too fine or too coarse to be recorded`,
      };
  }
}
