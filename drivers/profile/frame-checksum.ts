import { checksumOf, checksumSize } from './checksum.ts';
import { fieldSize, ownSize } from './field-size.ts';
import type { Layout } from './layout-schema.ts';
import { readUnsigned } from './number.ts';

/** Whether the checksum of a frame holds, whatever else is in it; undefined where the layout has none. */
export function checksumHolds(layout: Layout, frame: Buffer): boolean | undefined {
  if (layout.of === 'text') {
    const last = layout.fields.at(-1);
    if (last?.is !== 'checksum') return undefined;
    const at = frame.length - 2 * checksumSize(last.kind);
    const stated = Number.parseInt(frame.toString('latin1', Math.max(0, at)), 16);
    return at > 0 && stated === checksumOf(last.kind)(frame, last.from ?? 0, at, at, at);
  }
  const { fields, byteOrder: order } = layout;
  const i = fields.findIndex(({ is }) => is === 'checksum');
  const field = fields[i];
  if (field?.is !== 'checksum') return undefined;
  const { kind, from = 0, to, byteOrder = order } = field;
  const size = checksumSize(kind);
  const isBehindRest = fields.slice(0, i).some((before) => fieldSize(before) === undefined);
  const at = isBehindRest ? frame.length - ownSize(fields.slice(i)) : ownSize(fields.slice(0, i));
  if (at < from || at + size > frame.length) return false;
  const end = to === 'end' ? frame.length : at;
  return readUnsigned(frame, at, size, byteOrder) === checksumOf(kind)(frame, from, end, at, at + size);
}
