/** Rows of an archive's tables, whichever database they came from, and what they are made of. */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { z } from 'zod';
import { MAX_REQUEST_BYTES } from '../../src/archive/bundle.ts';
import {
  FAULT_KINDS,
  type KeptBundle,
  type KeptLog,
  type LogKey,
  type SignedNote,
} from '../../src/archive/kept-log.ts';

const HASH_BYTES = 32;
/** PostgreSQL gives a bigint as text. */
const count = z.coerce.number().pipe(z.int().nonnegative());
const bytes = z.instanceof(Uint8Array);

const logRowSchema = z.object({
  log: z.string(),
  tenant: z.string(),
  origin: z.string(),
  station: z.string(),
  standing: z.enum(['open', 'frozen']),
  entries: count,
  pending_size: count.nullable(),
  pending_root: bytes.nullable(),
  pending_note: z.string().nullable(),
  head_size: count.nullable(),
  head_root: bytes.nullable(),
  head_note: z.string().nullable(),
});

export function keptLog(row: unknown, keys: readonly LogKey[]): KeptLog {
  const { log, tenant, origin, station, standing, entries, ...rest } = logRowSchema.parse(row);
  return {
    id: log,
    tenant,
    origin,
    station,
    keys,
    standing,
    entries,
    pending: noteIn(origin, rest.pending_size, rest.pending_root, rest.pending_note),
    head: noteIn(origin, rest.head_size, rest.head_root, rest.head_note),
  };
}

function noteIn(
  origin: string,
  size: number | null,
  root: Uint8Array | null,
  note: string | null,
): SignedNote | null {
  return size === null || root === null || note === null
    ? null
    : { origin, size, root: Buffer.from(root), note };
}

const bundleRowSchema = z.object({ number: count, hashes: bytes, body: bytes });

export function keptBundle(row: unknown): KeptBundle {
  const { number, hashes, body } = bundleRowSchema.parse(row);
  const whole = Buffer.from(hashes);
  return {
    number,
    hashes: Array.from({ length: whole.length / HASH_BYTES }, (_, i) =>
      whole.subarray(i * HASH_BYTES, (i + 1) * HASH_BYTES),
    ),
    text: inflateRawSync(body, { maxOutputLength: MAX_REQUEST_BYTES }).toString('utf8'),
  };
}

/** What of a bundle goes into a row. */
export const packedBundle = ({ hashes, text }: KeptBundle) => ({
  hashes: Buffer.concat(hashes),
  body: deflateRawSync(text),
});

export const tokenRowSchema = z.object({
  used_for: z.enum(['enrol', 'restore']),
  about: z.string(),
  origin: z.string().nullable(),
  until: z.string(),
});

export const faultRowSchema = z.object({
  kind: z.enum(FAULT_KINDS),
  kept: z.string(),
  offered: z.string(),
  at: z.string(),
});
