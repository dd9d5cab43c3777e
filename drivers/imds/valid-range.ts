import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import { decode, encode } from '../bluetooth/layout.ts';
import type { IntegerFormat } from './numbers.ts';
import { readInteger, writeInteger } from './value.ts';

/** Both ends included, in counts of the characteristic that the descriptor belongs to. */
export interface ValidRange {
  readonly lowerCounts: number;
  readonly upperCounts: number;
}

const WHAT = 'Valid Range 0x2906';

/** Lower then upper value, each in the format of the characteristic. */
export function decodeValidRange(format: IntegerFormat, bytes: Uint8Array): Result<ValidRange, Problem> {
  return decode(WHAT, bytes, (cursor) => {
    const lowerCounts = readInteger(cursor, format, 'the lower value');
    const upperCounts = readInteger(cursor, format, 'the upper value');
    if (upperCounts < lowerCounts) {
      cursor.fail(format.size, `expected an upper value of at least ${lowerCounts}, found ${upperCounts}`);
    }
    return { lowerCounts, upperCounts };
  });
}

export function encodeValidRange(format: IntegerFormat, range: ValidRange): Result<Uint8Array, Problem> {
  return encode(WHAT, (writer) => {
    writeInteger(writer, format, range.lowerCounts, 'the lower value');
    if (range.upperCounts < range.lowerCounts) {
      writer.fail(`expected an upper value of at least ${range.lowerCounts}, got ${range.upperCounts}`);
    }
    writeInteger(writer, format, range.upperCounts, 'the upper value');
  });
}
