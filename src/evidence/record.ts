/**
 * The job record: one job's entries of the station log, its summary, and who signed. The file is the canonical JSON of
 * a JWS object and one newline, so that a single file stands for a record and any changed bit shows.
 */
import { z } from 'zod';
import { foldAll } from '../job/fold.ts';
import { workOrderSchema } from '../job/order.ts';
import type { Problem } from '../problem.ts';
import { problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { canonicalBytes, type JsonValue } from './canonical.ts';
import { entryHash } from './chain.ts';
import { publicJwk, thumbprint } from './jwk.ts';
import { addSignature, type Jws, jwsSchema, roleSchema, type Signer } from './jws.ts';
import { type LogEntry, logEntrySchema } from './log.ts';
import { parseStrictJson } from './strict-json.ts';
import { summaryOf, summarySchema } from './summary.ts';

export const RECORD_FORM = 'plugmark/record/1';

const signerSchema = z.strictObject({ role: roleSchema.exclude(['countersigner']), kid: z.string() });

/** What is signed. */
export const recordSchema = z.strictObject({
  form: z.literal(RECORD_FORM),
  program: z.strictObject({ name: z.string().min(1).max(40), version: z.string().min(1).max(40) }),
  station: z.string().min(1).max(80),
  job: workOrderSchema.shape.job,
  /** Who signs at sealing: a signature taken off, or one put in its place, shows. One of them is the station. */
  signers: z
    .array(signerSchema)
    .refine(
      (signers) => signers.filter(({ role }) => role === 'station').length === 1,
      'expected one station',
    ),
  /** All entries of the job's stream, from its first. */
  entries: z.array(logEntrySchema).min(1),
  /** Last of `entries`. */
  head: z.strictObject({ seq: z.int().min(1), hash: z.string().regex(/^[0-9a-f]{64}$/) }),
  summary: summarySchema,
});
export type JobRecord = z.infer<typeof recordSchema>;

/** A record as read; its signatures have not been looked at. */
export interface OpenedRecord {
  readonly jws: Jws;
  readonly record: JobRecord;
}

/** `unreadable`: not a JWS object at all. `damaged`: it is or was one, but is not a record as this program writes it. */
export interface RecordFault {
  readonly kind: 'unreadable' | 'damaged';
  readonly problem: Problem;
}

export interface RecordContent {
  readonly program: { readonly name: string; readonly version: string };
  readonly station: string;
  /** All entries of one job's stream. */
  readonly entries: readonly LogEntry[];
}

/** The file of a record, signed by the station and perhaps the technician. Entries that are no job are a bug and throw. */
export function sealRecord({ program, station, entries }: RecordContent, signers: readonly Signer[]): Buffer {
  const state = foldAll(entries.map(({ event }) => event));
  const last = entries.at(-1);
  if (state === null || last === undefined) throw new Error('a record needs the entries of a job');
  const record: JobRecord = recordSchema.parse({
    form: RECORD_FORM,
    program,
    station,
    job: state.order.job,
    signers: signers.map(({ privateKey, role }) => ({ role, kid: thumbprint(publicJwk(privateKey)) })),
    entries,
    head: { seq: last.seq, hash: entryHash(last) },
    summary: summaryOf(state),
  });
  const unsigned: Jws = { payload: toBase64url(canonicalBytes(record)), signatures: [] };
  return fileBytes(signers.reduce(addSignature, unsigned));
}

/** The file with a countersignature added; what was signed before stays untouched. */
export function countersignRecord(
  bytes: Uint8Array,
  signer: Omit<Signer, 'role'>,
): Result<Buffer, RecordFault> {
  const opened = openRecord(bytes);
  if (!opened.ok) return opened;
  return ok(fileBytes(addSignature(opened.value.jws, { ...signer, role: 'countersigner' })));
}

/** Reads a record file: strict JSON of the right form in its one canonical writing, inside and out. */
export function openRecord(bytes: Uint8Array): Result<OpenedRecord, RecordFault> {
  const outer = parseStrictJson(bytes, 'record');
  if (!outer.ok) return err({ kind: beginsAsRecord(bytes) ? 'damaged' : 'unreadable', problem: outer.error });
  const jws = jwsSchema.safeParse(outer.value);
  if (!jws.success) {
    const kind = looksLikeJws(outer.value) || beginsAsRecord(bytes) ? 'damaged' : 'unreadable';
    return err({ kind, problem: problemFromZod(jws.error, 'record', 'record-form', NEXT) });
  }
  if (!fileBytes(jws.data).equals(bytes)) return damaged('record', 'the file is not written as a record is');
  return openPayload(jws.data);
}

function openPayload(jws: Jws): Result<OpenedRecord, RecordFault> {
  const bytes = fromBase64url(jws.payload) ?? Buffer.of();
  const payload = parseStrictJson(bytes, 'record payload');
  if (!payload.ok) return err({ kind: 'damaged', problem: payload.error });
  if (!canonicalBytes(payload.value).equals(bytes))
    return damaged('record payload', 'the content is not canonical JSON');
  const record = recordSchema.safeParse(payload.value);
  if (!record.success)
    return err({
      kind: 'damaged',
      problem: problemFromZod(record.error, 'record payload', 'record-form', NEXT),
    });
  return ok({ jws, record: record.data });
}

const NEXT = 'Ask for the record again from the station that made it.';

function damaged(where: string, message: string): Result<never, RecordFault> {
  return err({ kind: 'damaged', problem: { code: 'record-form', where, message, next: NEXT } });
}

function fileBytes(jws: Jws): Buffer {
  return Buffer.concat([canonicalBytes(jws), Buffer.from('\n')]);
}

/** Canonical order puts `payload` first, so every record file begins with these bytes. */
const BEGINNING = Buffer.from('{"payload":"');

function beginsAsRecord(bytes: Uint8Array): boolean {
  return BEGINNING.equals(bytes.subarray(0, BEGINNING.length));
}

function looksLikeJws(value: JsonValue): boolean {
  return typeof value === 'object' && value !== null && 'payload' in value && 'signatures' in value;
}
