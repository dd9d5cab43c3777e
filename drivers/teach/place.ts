import {
  type ByteOrder,
  type IntegerKind,
  integerKind,
  NUMBER_TYPES,
  type NumberType,
  readNumber,
  readUnsigned,
  sizeOf,
  whole,
} from '../profile/number.ts';
import type { Field } from './candidate.ts';
import { allFrames, bitParts } from './leftover.ts';
import type { Parts } from './observed.ts';
import type { Worth } from './scale-search.ts';

/** Where and how a number may be written in a frame of bytes. */
export interface Place {
  readonly at: number;
  readonly size: number;
  readonly byteOrder: ByteOrder;
  /** What it is, without where. */
  readonly kind: string;
  readonly isSigned: boolean;
  /** Whole numbers: their own step is the tool's. */
  readonly isExact: boolean;
  /** The number less its zero; undefined where the bytes are none. */
  readonly numberIn: (frame: Buffer) => number | undefined;
  /** The field of a profile; undefined where other bits of its bytes are not explained. */
  readonly field: (worth: Worth, parts: Parts) => Field | undefined;
}

export function* placesIn(length: number): Iterable<Place> {
  for (const type of NUMBER_TYPES)
    for (let at = 0; at + sizeOf(type) <= length; at++)
      for (const byteOrder of sizeOf(type) === 1 ? (['big'] as const) : (['big', 'little'] as const))
        for (const zero of zerosOf(type)) yield plain(at, type, byteOrder, zero);
  for (const size of [2, 3] as const)
    for (let at = 0; at + size <= length; at++)
      for (const byteOrder of ['big', 'little'] as const)
        for (const bit of [0, 8 * size - 12])
          for (const kind of ['uint', 'sint'] as const) yield ofTwelve({ at, size, byteOrder, bit, kind });
}

/** Where the middle of its range means zero. */
const zerosOf = (type: NumberType): readonly number[] =>
  integerKind(type) === 'uint' ? [0, 2 ** (8 * sizeOf(type) - 1)] : [0];

function plain(at: number, type: NumberType, byteOrder: ByteOrder, zero: number): Place {
  const isExact = integerKind(type) !== undefined;
  return {
    at,
    size: sizeOf(type),
    byteOrder,
    kind: `${type}${zero === 0 ? '' : `, ${zero} is 0`}`,
    isSigned: !type.startsWith('uint') && !type.startsWith('bcd'),
    isExact,
    numberIn: (frame) => {
      const number = readNumber(frame, at, type, byteOrder);
      return 'mantissa' in number ? (number.mantissa - zero) * 10 ** number.exponent : undefined;
    },
    field: ({ scale, unit, step }, parts) => {
      const value = { is: 'value', type, scale, unit, ...(zero !== 0 && { zero }) };
      if (!isExact) return { ...value, resolution: step };
      const kind = integerKind(type);
      const size = sizeOf(type);
      const words = allFrames(parts).map((frame) => readUnsigned(frame, at, size, byteOrder));
      const low = kind === 'uint' || kind === 'sint' ? stillBits(words, 8 * size) : 0;
      if (low === 0) return { ...value, within: within(parts, numberOf, zero) };
      // Bits below those that moved may be something else, and would pass for a small change of the figure.
      const worth = 2 ** low;
      const bits = 8 * size - low;
      const above = {
        is: 'value',
        bit: low,
        bits,
        type: kind,
        scale: timesText(scale, worth),
        unit,
        ...(zero !== 0 && { zero: zero / worth }),
        within: within(parts, (frame) => Math.floor(numberOf(frame) / worth), zero / worth),
      };
      const below = { is: 'fixed', bit: 0, bits: low, number: (words[0] ?? 0) % worth };
      return { is: 'bits', type: unsignedOf(size), parts: [above, below] };
    },
  };

  function numberOf(frame: Buffer): number {
    const number = readNumber(frame, at, type, byteOrder);
    return 'mantissa' in number ? number.mantissa : zero;
  }
}

const unsignedOf = (size: number) => `uint${8 * size}`;

/** Lowest bits that are the same in all words. */
function stillBits(words: readonly number[], width: number): number {
  const [first = 0] = words;
  let bits = 0;
  while (bits < width - 2 && words.every((word) => (word - first) % 2 ** (bits + 1) === 0)) bits += 1;
  return bits;
}

/** As far as the bits go that the lesson moved: those above may be flags, and would pass for a large figure. */
function within(parts: Parts, numberOf: (frame: Buffer) => number, zero: number) {
  const largest = allFrames(parts).reduce(
    (most, frame) => Math.max(most, Math.abs(numberOf(frame) - zero)),
    0,
  );
  const span = 2 ** Math.ceil(Math.log2(largest + 1));
  return { least: zero - span, most: zero + span - 1 };
}

/** A decimal figure times a power of two, as text. */
const timesText = (text: string, times: number) => (Number(text) * times).toFixed(9).replace(/\.?0+$/, '');

interface Twelve {
  readonly at: number;
  readonly size: 2 | 3;
  readonly byteOrder: ByteOrder;
  readonly bit: number;
  readonly kind: IntegerKind;
}

/** A number of 12 bits at one end of two or three bytes. */
function ofTwelve({ at, size, byteOrder, bit, kind }: Twelve): Place {
  const wordIn = (frame: Buffer) => readUnsigned(frame, at, size, byteOrder);
  const numberOf = (frame: Buffer) => {
    const number = whole(Math.floor(wordIn(frame) / 2 ** bit) % 4_096, 12, kind);
    return 'mantissa' in number ? number.mantissa : 0;
  };
  return {
    at,
    size,
    byteOrder,
    kind: `12 bits from bit ${bit} (${kind})`,
    isSigned: kind === 'sint',
    isExact: true,
    numberIn: numberOf,
    field: ({ scale, unit }, parts) => {
      const others = bitParts(parts, wordIn, 8 * size, { bit, bits: 12 });
      const range = within(parts, numberOf, 0);
      const value = { is: 'value', bit, bits: 12, type: kind, scale, unit, within: range };
      return others === undefined
        ? undefined
        : { is: 'bits', type: size === 2 ? 'uint16' : 'uint24', parts: [value, ...others] };
    },
  };
}
