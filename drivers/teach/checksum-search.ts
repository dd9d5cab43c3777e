import { CHECKSUM_KINDS, type ChecksumKind, checksumOf, checksumSize } from '../profile/checksum.ts';
import { readUnsigned } from '../profile/number.ts';
import { FEWEST } from './observed.ts';

export interface ChecksumPlace {
  readonly at: number;
  readonly size: 1 | 2;
  readonly kind: ChecksumKind;
  readonly from: number;
  readonly byteOrder: 'little' | 'big';
}

const MOST_FROM = 3;

/** A checksum that holds in every one of many different frames; undefined where there is none behind what it covers. */
export function findChecksum(frames: readonly Buffer[]): ChecksumPlace | undefined {
  const distinct = [...new Map(frames.map((frame) => [frame.toString('latin1'), frame])).values()];
  const [first] = distinct;
  if (first === undefined || distinct.length < FEWEST) return undefined;
  const few = distinct.slice(0, FEWEST);
  for (const kind of CHECKSUM_KINDS) {
    const size = checksumSize(kind);
    const sum = checksumOf(kind);
    for (let at = first.length - size; at > first.length - size - 4 && at > 1; at--)
      for (let from = 0; from <= MOST_FROM && from < at - 1; from++)
        for (const byteOrder of size === 1 ? (['big'] as const) : (['little', 'big'] as const)) {
          const holds = (frame: Buffer) =>
            readUnsigned(frame, at, size, byteOrder) === sum(frame, from, at, at, at);
          if (few.every(holds) && distinct.every(holds)) return { at, size, kind, from, byteOrder };
        }
  }
  return undefined;
}
