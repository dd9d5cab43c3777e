import { checksumOf, checksumSize } from '../../drivers/profile/checksum.ts';
import type { ByteField, Part, SampleField, TextField } from '../../drivers/profile/field-schema.ts';
import { fieldSize, ownSize, sampleSize } from '../../drivers/profile/field-size.ts';
import { placedIn, unitCodes, worthOf } from '../../drivers/profile/figure.ts';
import type { Layout } from '../../drivers/profile/layout-schema.ts';
import {
  type ByteOrder,
  type IntegerKind,
  integerKind,
  type NumberType,
  sizeOf,
} from '../../drivers/profile/number.ts';

/** What a simulated device sends: frames made from the same description that they are read by. */

/** Numbers as the device counts: in its own steps, from its own zero. Null: it has no value. */
export interface Sample {
  readonly value: number | null;
  readonly angle?: number | null;
}

export interface FrameContent {
  readonly samples: readonly Sample[];
  readonly counter?: number;
  /** Which of the units that the frame can tell, from 0. */
  readonly unit?: number;
  /** What bytes and bits hold that say nothing. */
  readonly filler?: number;
}

/** One frame, without what is between frames. */
export function encodeFrame(layout: Layout, content: FrameContent): Buffer {
  return layout.of === 'bytes' ? bytesOf(layout, content) : textOf(layout, content);
}

type Bytes = Extract<Layout, { readonly of: 'bytes' }>;
type Text = Extract<Layout, { readonly of: 'text' }>;

function bytesOf(layout: Bytes, content: FrameContent): Buffer {
  const { fields, byteOrder } = layout;
  const repeated = fields.find((field) => field.is === 'samples');
  const each = repeated === undefined ? 0 : sampleSize(repeated.fields);
  const count = content.samples.length;
  const length = ownSize(fields.filter(({ is }) => is !== 'samples')) + count * each;
  const frame = Buffer.alloc(length, content.filler ?? 0);
  const first = content.samples[0] ?? { value: null };
  let at = 0;
  const checksums: (() => void)[] = [];
  const hasSign = placedIn(layout).some(({ item }) => item.is === 'flag' && item.means === 'negative');
  const writer = { frame, order: byteOrder, content, hasSign };
  for (const field of fields) {
    if (field.is === 'samples') {
      for (const sample of content.samples)
        for (const part of field.fields) {
          write(writer, part, at, sample);
          at += fieldSize(part) ?? 0;
        }
      continue;
    }
    const here = at;
    at += fieldSize(field) ?? 0;
    if (field.is === 'checksum') checksums.push(() => writeChecksum(writer, field, here));
    else write(writer, field, here, repeated === undefined ? first : { value: 0 });
  }
  for (const fill of checksums) fill();
  return frame;
}

interface Writer {
  readonly frame: Buffer;
  readonly order: ByteOrder;
  readonly content: FrameContent;
  /** The sign of the value is a bit of its own. */
  readonly hasSign: boolean;
}

function write(writer: Writer, field: ByteField | SampleField, at: number, told: Sample): void {
  const { frame, order, content, hasSign } = writer;
  const put = (value: number, size: number) => void putUnsigned(frame, at, value, size, order);
  switch (field.is) {
    case 'fixed':
      frame.set(Buffer.from(field.hex, 'hex'), at);
      return;
    case 'value':
    case 'angle':
      putNumber(frame, at, rawOf(field, told, hasSign), field.type, order);
      return;
    case 'unit':
      put(field.codes[content.unit ?? 0]?.code ?? 0, sizeOf(field.type));
      return;
    case 'counter':
      put(content.counter ?? 0, sizeOf(field.type));
      return;
    case 'size':
      put(frame.length - field.adds, sizeOf(field.type));
      return;
    case 'count':
      put(content.samples.length, sizeOf(field.type));
      return;
    case 'bits': {
      const word = field.parts.reduce((sum, part) => sum + bitsOf(part, writer, told) * 2 ** part.bit, 0);
      put(word, sizeOf(field.type));
      return;
    }
    default:
      return;
  }
}

type Figure = Extract<ByteField | SampleField | Part, { readonly is: 'value' | 'angle' }>;

/** The number as it is written: a code where there is no value and one for that. */
function rawOf(field: Figure, told: Sample, hasSign: boolean): number {
  const own = field.is === 'value' ? told.value : (told.angle ?? null);
  if (own === null) return field.noValue?.[0] ?? Number.NaN;
  return (field.is === 'value' && hasSign ? Math.abs(own) : own) + (field.zero ?? 0);
}

function bitsOf(part: Part, { content, hasSign }: Writer, told: Sample): number {
  switch (part.is) {
    case 'flag': {
      if (part.means === 'valid') return told.value === null ? 0 : 1;
      if (part.means === 'negative') return (told.value ?? 0) < 0 ? 1 : 0;
      return part.means === 'no-value' && told.value === null ? 1 : 0;
    }
    case 'unused':
      return (content.filler ?? 0) % 2 ** part.bits;
    case 'fixed':
      return part.number;
    case 'unit':
      return part.codes[content.unit ?? 0]?.code ?? 0;
    case 'counter':
      return content.counter ?? 0;
    default:
      return unsigned(rawOf(part, told, hasSign), part.bits, part.type);
  }
}

/** The bits of a whole number; 0 where it is none. */
function unsigned(value: number, bits: number, kind: IntegerKind): number {
  if (Number.isNaN(value)) return 0;
  if (kind === 'sint') return value < 0 ? value + 2 ** bits : value;
  if (kind === 'signmag') return value < 0 ? 2 ** (bits - 1) - value : value;
  return kind === 'bcd' ? Number.parseInt(String(value), 16) : value;
}

function putUnsigned(frame: Buffer, at: number, value: number, size: number, order: ByteOrder): void {
  if (order === 'little') frame.writeUIntLE(value, at, size);
  else frame.writeUIntBE(value, at, size);
}

function putNumber(frame: Buffer, at: number, value: number, type: NumberType, order: ByteOrder): void {
  const little = order === 'little';
  switch (type) {
    case 'float32':
      if (little) frame.writeFloatLE(value, at);
      else frame.writeFloatBE(value, at);
      return;
    case 'float64':
      if (little) frame.writeDoubleLE(value, at);
      else frame.writeDoubleBE(value, at);
      return;
    // IEEE 11073: the mantissa with exponent 0; "not a number" is its largest positive one.
    case 'medfloat16':
      putUnsigned(frame, at, Number.isNaN(value) ? 0x07ff : value & 0x0fff, 2, order);
      return;
    case 'medfloat32':
      putUnsigned(frame, at, Number.isNaN(value) ? 0x7fffff : value & 0xffffff, 4, order);
      return;
    default: {
      const size = sizeOf(type);
      putUnsigned(frame, at, unsigned(value, 8 * size, integerKind(type) ?? 'uint'), size, order);
    }
  }
}

function writeChecksum(
  { frame, order }: Writer,
  { kind, from = 0, to, byteOrder }: Extract<ByteField, { readonly is: 'checksum' }>,
  at: number,
): void {
  const size = checksumSize(kind);
  const sum = checksumOf(kind)(frame, from, to === 'end' ? frame.length : at, at, at + size);
  putUnsigned(frame, at, sum, size, byteOrder ?? order);
}

function textOf(layout: Text, content: FrameContent): Buffer {
  const told = content.samples[0] ?? { value: null };
  let text = '';
  for (const field of layout.fields) text += textField(layout, field, content, told, text);
  return Buffer.from(text, 'latin1');
}

function textField(
  layout: Text,
  field: TextField,
  content: FrameContent,
  told: Sample,
  before: string,
): string {
  switch (field.is) {
    case 'text':
      return field.text;
    case 'fixed':
      return Buffer.from(field.hex, 'hex').toString('latin1');
    case 'blanks':
      return ' '.repeat((content.filler ?? 0) % 4);
    case 'value':
    case 'angle': {
      const own = field.is === 'value' ? told.value : (told.angle ?? null);
      if (own === null && field.noValue !== undefined) return field.noValue[0] ?? '';
      const worth = worthOf(field, field.is === 'value' ? unitCodes(layout)[content.unit ?? 0] : undefined);
      const decimals = 'missing' in worth ? 0 : worth.decimals;
      return decimalText(own ?? 0, decimals).replace('.', field.decimalMark);
    }
    case 'unit':
      return field.texts[content.unit ?? 0]?.text ?? '';
    case 'status': {
      const wanted = told.value === null ? ['no-value'] : ['valid', 'nothing'];
      return (field.texts.find(({ means }) => wanted.includes(means)) ?? field.texts[0])?.text ?? '';
    }
    case 'counter':
      return String(content.counter ?? 0).padStart(field.digits, '0');
    case 'unused':
      return field.characters === undefined ? '' : 'x'.repeat(field.characters);
    case 'checksum': {
      const { kind, from = 0 } = field;
      const bytes = Buffer.from(before, 'latin1');
      const sum = checksumOf(kind)(bytes, from, bytes.length, bytes.length, bytes.length);
      return sum
        .toString(16)
        .toUpperCase()
        .padStart(2 * checksumSize(kind), '0');
    }
  }
}

/** `+025.34` for 2534 with two decimals. */
function decimalText(number: number, decimals: number): string {
  const digits = String(Math.abs(number)).padStart(3 + decimals, '0');
  const cut = digits.length - decimals;
  const sign = number < 0 ? '-' : '+';
  return `${sign}${digits.slice(0, cut)}${decimals > 0 ? `.${digits.slice(cut)}` : ''}`;
}
