/**
 * What shows that a record was sealed before its key ended: a later checkpoint by a key that is believed now, and the proof
 * that its log begins with that of the record (RFC 9162, 2.1.4). `plugmark log prove consistency` writes it.
 */
import { z } from 'zod';
import { problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { sentence } from '../words/catalogue.ts';
import { checkpointSigners, readCheckpoint, type SignedCheckpoint } from './checkpoint.ts';
import { heirsOf } from './line-of-keys.ts';
import { consistencyHolds, hashesOf, hashSchema } from './merkle.ts';
import { parseStrictJson } from './strict-json.ts';
import { endOf, type TrustList } from './trust.ts';

export const laterLogSchema = z.strictObject({
  form: z.literal('plugmark/consistency/1'),
  from: z.int().nonnegative().describe('Size of the older log.'),
  to: z.int().nonnegative().describe('Size of the later one.'),
  path: z.array(hashSchema).max(64).describe('The hashes of the proof (RFC 9162, 2.1.4), base64.'),
  checkpoint: z.string().max(128_000).describe('The checkpoint of the later log.'),
});
export type LaterLog = z.infer<typeof laterLogSchema>;

/** Reads the file. Problems: those of `parseStrictJson`, and `proof-form`. */
export function parseLaterLog(bytes: Uint8Array, source: string): Result<LaterLog> {
  const json = parseStrictJson(bytes, source);
  if (!json.ok) return json;
  const parsed = laterLogSchema.safeParse(json.value);
  return parsed.success ? ok(parsed.data) : err(problemFromZod(parsed.error, source, 'proof-form', NEXT));
}

const NEXT = sentence`Make it again with "plugmark log prove consistency".`;

/**
 * Whether the later log begins with the older one, which `kid` signed, and a key of the same station that is believed now
 * signed it: one that took the place of `kid`, or that the reader's policy names for this log. Any other station of the list
 * could sign a log under this origin.
 */
export function isInLaterLog(
  older: SignedCheckpoint,
  later: LaterLog,
  list: TrustList,
  kid: string,
): boolean {
  const read = readCheckpoint(later.checkpoint, 'proof');
  if (!read.ok || read.value.origin !== older.origin) return false;
  const heirs = heirsOf(list, kid);
  const now = list.keys.filter(
    (key) =>
      (key.role === undefined || key.role === 'station') &&
      endOf(list, key.kid) === null &&
      (heirs.has(key.kid) || key.ofLog === older.origin),
  );
  return (
    checkpointSigners(read.value, now).length > 0 && consistencyHolds(older, read.value, hashesOf(later.path))
  );
}
