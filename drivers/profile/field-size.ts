import { checksumSize } from './checksum.ts';
import type { ByteField, SampleField } from './field-schema.ts';
import { sizeOf } from './number.ts';

/** Bytes of a field; undefined where the frame decides. */
export function fieldSize(field: ByteField | SampleField): number | undefined {
  switch (field.is) {
    case 'fixed':
      return field.hex.length / 2;
    case 'unused':
      return field.bytes;
    case 'checksum':
      return checksumSize(field.kind);
    case 'samples':
      return field.count === 'rest' ? undefined : field.count * sampleSize(field.fields);
    default:
      return sizeOf(field.type);
  }
}

/** Bytes of one sample. */
export const sampleSize = (fields: readonly SampleField[]): number =>
  fields.reduce((sum, field) => sum + (fieldSize(field) ?? 0), 0);

/** Bytes of all fields whose size is their own. */
export const ownSize = (fields: readonly ByteField[]): number =>
  fields.reduce((sum, field) => sum + (fieldSize(field) ?? 0), 0);
