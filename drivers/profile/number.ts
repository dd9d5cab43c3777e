import { type Decimal, medicalFloat16, medicalFloat32 } from './medical-float.ts';

/** How a number is written in a frame of bytes. */
export const NUMBER_TYPES = [
  'uint8',
  'uint16',
  'uint24',
  'uint32',
  'sint8',
  'sint16',
  'sint24',
  'sint32',
  'signmag8',
  'signmag16',
  'signmag24',
  'signmag32',
  'bcd8',
  'bcd16',
  'bcd24',
  'bcd32',
  'float32',
  'float64',
  'medfloat16',
  'medfloat32',
] as const;
export type NumberType = (typeof NUMBER_TYPES)[number];
export const UNSIGNED_TYPES = ['uint8', 'uint16', 'uint24', 'uint32'] as const;
/** How some bits of a word are a whole number. */
export const INTEGER_KINDS = ['uint', 'sint', 'signmag', 'bcd'] as const;
export type IntegerKind = (typeof INTEGER_KINDS)[number];
export type ByteOrder = 'little' | 'big';

/** `none`: a code that means that there is no value. `wrong`: no number of this type. */
export type NumberIn = Decimal | { readonly none: string } | { readonly wrong: string };

export const sizeOf = (type: NumberType): number => Number(/\d+$/.exec(type)?.[0] ?? 0) / 8;

/** What a type is as a whole number; undefined for floating point. */
export function integerKind(type: NumberType | IntegerKind): IntegerKind | undefined {
  return INTEGER_KINDS.find((kind) => type.startsWith(kind));
}

/** By hand: Node's own reader takes several times as long. NaN where a byte is not there. */
export function readUnsigned(bytes: Uint8Array, at: number, size: number, order: ByteOrder): number {
  let value = 0;
  for (let i = 0; i < size; i++)
    value = value * 256 + (bytes[order === 'big' ? at + i : at + size - 1 - i] ?? Number.NaN);
  return value;
}

/** The whole number that the lowest `bits` of `raw` are; NaN where a decimal digit is beyond 9. */
export function integerOf(raw: number, bits: number, kind: IntegerKind): number {
  switch (kind) {
    case 'uint':
      return raw;
    case 'sint':
      return raw >= 2 ** (bits - 1) ? raw - 2 ** bits : raw;
    case 'signmag': {
      const half = 2 ** (bits - 1);
      return raw > half ? half - raw : raw % half;
    }
    case 'bcd': {
      let value = 0;
      for (let place = 1, rest = raw; rest > 0; rest = Math.floor(rest / 16), place *= 10) {
        const digit = rest % 16;
        if (digit > 9) return Number.NaN;
        value += digit * place;
      }
      return value;
    }
  }
}

/** The number at `at`. The whole field must be within `bytes`. */
export function readNumber(bytes: Buffer, at: number, type: NumberType, order: ByteOrder): NumberIn {
  const little = order === 'little';
  switch (type) {
    case 'float32':
      return binary(little ? bytes.readFloatLE(at) : bytes.readFloatBE(at));
    case 'float64':
      return binary(little ? bytes.readDoubleLE(at) : bytes.readDoubleBE(at));
    case 'medfloat16':
      return medical(medicalFloat16(readUnsigned(bytes, at, 2, order)));
    case 'medfloat32':
      return medical(medicalFloat32(readUnsigned(bytes, at, 4, order)));
    default: {
      const size = sizeOf(type);
      return whole(readUnsigned(bytes, at, size, order), 8 * size, integerKind(type) ?? 'uint');
    }
  }
}

/** The same of some bits. */
export function whole(raw: number, bits: number, kind: IntegerKind): NumberIn {
  const mantissa = integerOf(raw, bits, kind);
  return Number.isNaN(mantissa)
    ? { wrong: `0x${raw.toString(16)} has a digit beyond 9` }
    : { mantissa, exponent: 0 };
}

const binary = (value: number): NumberIn =>
  Number.isFinite(value) ? { mantissa: value, exponent: 0 } : { none: `it is ${value}` };
const medical = (value: ReturnType<typeof medicalFloat32>): NumberIn =>
  'none' in value ? { none: `it is the code ${value.none}` } : value;
