import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import { type Cursor, decode, encode, type Writer } from '../bluetooth/layout.ts';
import type { IntegerFormat, QuantityFormat } from './numbers.ts';

/** What a measurement characteristic carries. */
export type MeasuredValue =
  | { readonly kind: 'value'; readonly counts: number }
  | { readonly kind: 'not-known' };

export function readInteger(cursor: Cursor, format: IntegerFormat, field: string): number {
  return format.signed ? cursor.int(format.size, field) : cursor.uint(format.size, field);
}

export function writeInteger(writer: Writer, format: IntegerFormat, value: number, field: string): void {
  if (format.signed) writer.int(value, format.size, field);
  else writer.uint(value, format.size, field);
}

export function readMeasured(cursor: Cursor, format: QuantityFormat, field: string): MeasuredValue {
  const counts = readInteger(cursor, format.integer, field);
  return counts === format.notKnown ? { kind: 'not-known' } : { kind: 'value', counts };
}

export function writeMeasured(
  writer: Writer,
  format: QuantityFormat,
  value: MeasuredValue,
  field: string,
): void {
  if (value.kind === 'value' && value.counts === format.notKnown) {
    writer.fail(`${value.counts} counts cannot be sent as ${field}: the bytes mean "not known"`);
  }
  writeInteger(writer, format.integer, value.kind === 'value' ? value.counts : format.notKnown, field);
}

/** The value of Torque 0x2C0B or Length 0x2C0A, 4 bytes. */
export function decodeValue(format: QuantityFormat, bytes: Uint8Array): Result<MeasuredValue, Problem> {
  return decode(format.name, bytes, (cursor) => readMeasured(cursor, format, 'the value'));
}

export function encodeValue(format: QuantityFormat, value: MeasuredValue): Result<Uint8Array, Problem> {
  return encode(format.name, (writer) => writeMeasured(writer, format, value, 'the value'));
}
