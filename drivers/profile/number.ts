import { type Decimal, medicalFloat16, medicalFloat32 } from './medical-float.ts';

/** How a number lies in a packet. */
export const NUMBER_TYPES = [
  'uint8',
  'uint16',
  'uint24',
  'uint32',
  'sint8',
  'sint16',
  'sint24',
  'sint32',
  'float32',
  'float64',
  'medfloat16',
  'medfloat32',
] as const;
export type NumberType = (typeof NUMBER_TYPES)[number];
export type UnsignedType = 'uint8' | 'uint16' | 'uint24' | 'uint32';
export type ByteOrder = 'little' | 'big';

export const sizeOf = (type: NumberType): number => Number(/\d+$/.exec(type)?.[0] ?? 0) / 8;

/** Whether the numbers of a type have a step of their own; the others need to be told one. */
export const hasOwnStep = (type: NumberType): boolean => /^[us]int/.test(type);

export function readUnsigned(bytes: Buffer, at: number, type: UnsignedType, order: ByteOrder): number {
  const size = sizeOf(type);
  return order === 'little' ? bytes.readUIntLE(at, size) : bytes.readUIntBE(at, size);
}

/** The number at `at`, or why the bytes there are none. The whole field must be within `bytes`. */
export function readNumber(bytes: Buffer, at: number, type: NumberType, order: ByteOrder): Decimal | string {
  const little = order === 'little';
  switch (type) {
    case 'uint8':
    case 'uint16':
    case 'uint24':
    case 'uint32':
      return whole(readUnsigned(bytes, at, type, order));
    case 'sint8':
    case 'sint16':
    case 'sint24':
    case 'sint32':
      return whole(little ? bytes.readIntLE(at, sizeOf(type)) : bytes.readIntBE(at, sizeOf(type)));
    case 'float32':
      return binary(little ? bytes.readFloatLE(at) : bytes.readFloatBE(at));
    case 'float64':
      return binary(little ? bytes.readDoubleLE(at) : bytes.readDoubleBE(at));
    case 'medfloat16':
      return medical(medicalFloat16(readUnsigned(bytes, at, 'uint16', order)));
    case 'medfloat32':
      return medical(medicalFloat32(readUnsigned(bytes, at, 'uint32', order)));
  }
}

const whole = (mantissa: number): Decimal => ({ mantissa, exponent: 0 });
const binary = (value: number) => (Number.isFinite(value) ? whole(value) : `it is ${value}`);
const medical = (value: ReturnType<typeof medicalFloat32>) =>
  'none' in value ? `it is the code ${value.none}` : value;
