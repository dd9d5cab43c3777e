import { err, ok } from '../../src/result.ts';
import { type Checksum, checksumOf, checksumSize } from './checksum.ts';
import type { ByteField, Part, SampleField } from './field-schema.ts';
import { fieldSize, ownSize, sampleSize } from './field-size.ts';
import { scalingOf, unitCodes } from './figure.ts';
import { countsOf, type Decoder, Draft, TOO_LARGE, wrongFrame } from './frame.ts';
import type { Layout } from './layout-schema.ts';
import { type ByteOrder, type NumberIn, readNumber, readUnsigned, sizeOf, whole } from './number.ts';

// A layout of bytes as a list of steps, made once: each reads its field at a place that is known to be there.

/** Reads a field into the draft, or says what is wrong with it. */
type Read = (bytes: Buffer, at: number, into: Draft) => string | undefined;

interface Step {
  /** From the beginning of the fields that it is in. */
  readonly offset: number;
  readonly read: Read;
}

export function byteDecoder(layout: Extract<Layout, { readonly of: 'bytes' }>): Decoder {
  const { fields, byteOrder } = layout;
  const repeated = fields.find((field) => field.is === 'samples');
  const cut = repeated === undefined ? fields.length : fields.indexOf(repeated);
  const head = stepsOf(fields.slice(0, cut), byteOrder);
  const tail = stepsOf(fields.slice(cut + 1), byteOrder);
  const group = repeated === undefined ? [] : stepsOf(repeated.fields, byteOrder);
  const headSize = ownSize(fields.slice(0, cut));
  const tailSize = ownSize(fields.slice(cut + 1));
  const each = repeated === undefined ? 0 : sampleSize(repeated.fields);
  const value = scalingOf(layout, 'value');
  const angle = scalingOf(layout, 'angle');
  const codes = unitCodes(layout);
  const counted = fields.findIndex(({ is }) => is === 'count');
  const countAt = counted < 0 ? undefined : offsetOf(fields, counted, cut);
  const frame = new Draft();
  const sample = new Draft();

  return (bytes) => {
    const room = bytes.length - headSize - tailSize;
    const count = repeated === undefined ? 1 : repeated.count === 'rest' ? room / each : repeated.count;
    if (!Number.isInteger(count) || count < 1 || room !== (repeated === undefined ? 0 : count * each))
      return wrong(Math.min(bytes.length, headSize + tailSize + each), sizeWords(bytes.length));
    frame.why = undefined;
    frame.negative = false;
    frame.unit = 0;
    frame.counter = undefined;
    for (const { offset, read } of head) {
      const fault = read(bytes, offset, frame);
      if (fault !== undefined) return wrong(offset, fault);
    }
    const tailAt = headSize + room;
    for (const { offset, read } of tail) {
      const fault = read(bytes, tailAt + offset, frame);
      if (fault !== undefined) return wrong(tailAt + offset, fault);
    }
    if (countAt !== undefined) {
      const { at, fromEnd, size } = countAt;
      const place = fromEnd ? tailAt + at : at;
      const stated = readUnsigned(bytes, place, size, byteOrder);
      if (stated !== count) return wrong(place, `it counts ${stated} samples, but ${count} are there`);
    }
    const counts: (number | null)[] = [];
    const angles: (number | null)[] | undefined = angle === undefined ? undefined : [];
    let noValue: string | undefined = frame.why;
    let from: Draft = frame;
    for (let i = 0; i < count; i++) {
      const at = headSize + i * each;
      if (repeated !== undefined) {
        from = sample;
        sample.from(frame);
        for (const { offset, read } of group) {
          const fault = read(bytes, at + offset, sample);
          if (fault !== undefined) return wrong(at + offset, fault);
        }
        noValue ??= sample.why;
      }
      const own = countsOf(from.value, value?.counts[from.unit] ?? Number.NaN, from.negative);
      const turned = angle === undefined ? null : countsOf(from.angle, angle.counts[0] ?? Number.NaN, false);
      if (Number.isNaN(own) || Number.isNaN(turned)) return wrong(at, TOO_LARGE);
      counts.push(from.why === undefined ? own : null);
      angles?.push(from.why === undefined ? turned : null);
    }
    const unit = codes[from.unit]?.unit;
    return ok({
      counts,
      angleCounts: angles,
      noValue,
      counter: frame.counter,
      unit: unit === '°' || unit === 'turn' ? undefined : unit,
    });
  };

  function sizeWords(length: number): string {
    const least =
      headSize + tailSize + (repeated?.count === 'rest' ? each : each * Number(repeated?.count ?? 0));
    return repeated?.count === 'rest'
      ? `expected ${headSize + tailSize} bytes and ${each} for each sample, found ${length}`
      : `expected a frame of ${least} bytes, found ${length}`;
  }
}

const wrong = (at: number, message: string) => err(wrongFrame(at, message));

/** Where a field is: from the beginning of the frame, or from what is behind the samples. */
function offsetOf(fields: readonly ByteField[], i: number, cut: number) {
  const field = fields[i];
  const size = field === undefined ? 0 : (fieldSize(field) ?? 0);
  return i < cut
    ? { at: ownSize(fields.slice(0, i)), fromEnd: false, size }
    : { at: ownSize(fields.slice(cut + 1, i)), fromEnd: true, size };
}

function stepsOf(fields: readonly (ByteField | SampleField)[], order: ByteOrder): readonly Step[] {
  let offset = 0;
  return fields.flatMap((field) => {
    const at = offset;
    offset += fieldSize(field) ?? 0;
    const read = readOf(field, order);
    return read === undefined ? [] : [{ offset: at, read }];
  });
}

function readOf(field: ByteField | SampleField, order: ByteOrder): Read | undefined {
  switch (field.is) {
    case 'unused':
    case 'samples':
    case 'count':
      return undefined;
    case 'fixed':
      return fixedRead(field.hex);
    case 'value':
    case 'angle': {
      const { type } = field;
      const take = taking(field);
      return (bytes, at, into) => take(readNumber(bytes, at, type, order), into);
    }
    case 'unit': {
      const size = sizeOf(field.type);
      const take = unitTaking(field.codes);
      return (bytes, at, into) => take(readUnsigned(bytes, at, size, order), into);
    }
    case 'counter': {
      const size = sizeOf(field.type);
      return (bytes, at, into) => {
        into.counter = readUnsigned(bytes, at, size, order);
        return undefined;
      };
    }
    case 'size': {
      const { adds } = field;
      const size = sizeOf(field.type);
      return (bytes, at) => {
        const stated = readUnsigned(bytes, at, size, order) + adds;
        return stated === bytes.length
          ? undefined
          : `it says ${stated} bytes, but the frame has ${bytes.length}`;
      };
    }
    case 'bits':
      return bitsRead(field, order);
    case 'checksum':
      return checksumRead(field, order);
  }
}

function fixedRead(hex: string): Read {
  const wanted = Buffer.from(hex, 'hex');
  return (bytes, at) => {
    for (let i = 0; i < wanted.length; i++)
      if (bytes[at + i] !== wanted[i])
        return `expected the fixed bytes ${hex}, found ${bytes.toString('hex', at, at + wanted.length)}`;
    return undefined;
  };
}

type Figure = Extract<ByteField | SampleField | Part, { readonly is: 'value' | 'angle' }>;

const EVERY = { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };

function taking(field: Figure): (number: NumberIn, into: Draft) => string | undefined {
  const { is, zero = 0, noValue = [] } = field;
  const { least, most } = (field.is === 'value' && field.within) || EVERY;
  return (number, into) => {
    if ('wrong' in number) return number.wrong;
    const slot = is === 'value' ? into.value : into.angle;
    slot.none = 'none' in number || noValue.includes(number.mantissa);
    if (!('mantissa' in number)) return undefined;
    if (!slot.none && (number.mantissa < least || number.mantissa > most))
      return `expected a number from ${least} to ${most}, found ${number.mantissa}`;
    slot.mantissa = number.mantissa - zero;
    slot.exponent = number.exponent;
    return undefined;
  };
}

function unitTaking(codes: readonly { readonly code: number }[]) {
  const places = new Map(codes.map(({ code }, i) => [code, i]));
  return (number: number, into: Draft): string | undefined => {
    const place = places.get(number);
    if (place === undefined) return `the unit code ${number} is not described`;
    into.unit = place;
    return undefined;
  };
}

function bitsRead({ type, parts }: Extract<ByteField, { readonly is: 'bits' }>, order: ByteOrder): Read {
  const size = sizeOf(type);
  const described = parts.reduce(
    (mask, part) => mask + (part.is === 'flag' ? 2 ** part.bit : (2 ** part.bits - 1) * 2 ** part.bit),
    0,
  );
  const takes = parts.map(partTake);
  return (bytes, at, into) => {
    const word = readUnsigned(bytes, at, size, order);
    const strange = (word & ~described) >>> 0;
    if (strange !== 0) return `bits 0x${strange.toString(16)} are set, which are not described`;
    for (const take of takes) {
      const fault = take(word, into);
      if (fault !== undefined) return fault;
    }
    return undefined;
  };
}

function partTake(part: Part): (word: number, into: Draft) => string | undefined {
  const { bit } = part;
  if (part.is === 'flag') {
    const { means, label } = part;
    const words = label ?? `bit ${bit} is ${means === 'valid' ? 'clear' : 'set'}`;
    return (word, into) => {
      into.means(means, ((word >>> bit) & 1) === 1, words);
      return undefined;
    };
  }
  const span = 2 ** part.bits;
  const numberIn = (word: number) => Math.floor(word / 2 ** bit) % span;
  switch (part.is) {
    case 'unused':
      return () => undefined;
    case 'fixed': {
      const { number } = part;
      return (word) =>
        numberIn(word) === number
          ? undefined
          : `expected ${number} in the bits from ${bit} on, found ${numberIn(word)}`;
    }
    case 'counter':
      return (word, into) => {
        into.counter = numberIn(word);
        return undefined;
      };
    case 'unit': {
      const take = unitTaking(part.codes);
      return (word, into) => take(numberIn(word), into);
    }
    default: {
      const { bits, type } = part;
      const take = taking(part);
      return (word, into) => take(whole(numberIn(word), bits, type), into);
    }
  }
}

function checksumRead(
  { kind, from = 0, to, byteOrder }: Extract<ByteField, { readonly is: 'checksum' }>,
  order: ByteOrder,
): Read {
  const size = checksumSize(kind);
  const sum: Checksum = checksumOf(kind);
  return (bytes, at) => {
    const stated = readUnsigned(bytes, at, size, byteOrder ?? order);
    const actual = sum(bytes, from, to === 'end' ? bytes.length : at, at, at + size);
    return stated === actual
      ? undefined
      : `the checksum is 0x${stated.toString(16)}, but the bytes make 0x${actual.toString(16)}`;
  };
}
