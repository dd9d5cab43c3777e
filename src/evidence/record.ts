/**
 * The job record: one job's entries of the station log with what proves that they stand in it, and who signed. The file is
 * the canonical JSON of a JWS object and one newline, so that any changed bit of what is signed shows. What is not signed and may
 * differ from copy to copy: countersignatures behind the others, and which texts are disclosed, in which order.
 */
import { z } from 'zod';
import { workOrderSchema } from '../job/order.ts';
import { isWithheld } from '../personal.ts';
import type { Problem } from '../problem.ts';
import { problemFromZod, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { budgetSchema } from '../rules/budgets.ts';
import { editionOf } from '../rules/editions.ts';
import { summarySchema } from '../rules/summary.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { canonicalBytes, type JsonValue } from './canonical.ts';
import { DIGEST_NAME, revealed } from './disclosures.ts';
import { byEntry, concealmentFault, MAY_NOT_BE_CONCEALED } from './entry.ts';
import type { PublicJwk } from './jwk.ts';
import {
  addSignature,
  checkSignatures,
  disclosuresIn,
  type Jws,
  jwsSchema,
  roleSchema,
  type Signer,
  withDisclosures,
} from './jws.ts';
import { jobEntrySchema, type LogEntry, type StationEntry, stationEntrySchema } from './log.ts';
import { hashSchema, leafHash } from './merkle.ts';
import { fromBase64url, isSame, joined, utf8 } from './platform/bytes.ts';
import type { StationState } from './station.ts';
import { parseCanonicalJson, parseStrictJson } from './strict-json.ts';

/** An hour with a tool that sends 100 samples a second takes 1.4 megabytes; a larger file is not read at all. */
export const MAX_RECORD_BYTES = 32 << 20;

export const RECORD_FORM = 'plugmark/record/1';

export const signerSchema = z.strictObject({
  role: roleSchema.exclude(['countersigner']).describe('In what capacity.'),
  kid: z.string().describe('Thumbprint of the key.'),
});

/** `no-key`: the technician has none. `not-given`: has one, and did not sign. `shop-does-without`: as the shop decided. */
const technicianSignatureSchema = z.enum(['given', 'no-key', 'not-given', 'shop-does-without']);

/** A tool at rest brings some three hundred an hour: more than two days of them are made to keep a reader busy. */
const MAX_ENTRIES = 20_000;
/**
 * Playing a job back takes longer than in step with the pulls of one cylinder: five seconds for so many, all on one, which
 * is ten times what thirty-two plugs with six pulls each take.
 */
const MAX_ATTEMPTS = 4000;
const ATTEMPTS: ReadonlySet<string> = new Set(['gap-measured', 'pull-detected', 'pull-placed']);
const attemptsIn = (entries: readonly Pick<LogEntry, 'event'>[]) =>
  entries.filter(({ event }) => ATTEMPTS.has(event.type)).length;

/** Why there is no record of a job. */
export const noRecordReasonSchema = z.enum([
  'still-open',
  'too-many-entries',
  'too-many-attempts',
  'too-many-bytes',
]);
export interface NoRecord {
  readonly because: z.infer<typeof noRecordReasonSchema>;
  /** How many there are, and how many a record holds; absent for a job that is open. */
  readonly count?: number;
  readonly most?: number;
}

/** Why a job is too long for a record; null for any that people worked. */
export function tooLong(entries: readonly LogEntry[]): NoRecord | null {
  const attempts = attemptsIn(entries);
  if (entries.length > MAX_ENTRIES)
    return { because: 'too-many-entries', count: entries.length, most: MAX_ENTRIES };
  if (attempts > MAX_ATTEMPTS) return { because: 'too-many-attempts', count: attempts, most: MAX_ATTEMPTS };
  return null;
}

/** What is signed, with the texts that are disclosed in their places. */
export const recordSchema = z.strictObject({
  form: z.literal(RECORD_FORM),
  _sd_alg: z.literal(DIGEST_NAME).describe('The hash of its digests (RFC 9901).'),
  program: z
    .strictObject({
      name: z.string().min(1).max(40).describe('Its name.'),
      version: z.string().min(1).max(40).describe('Its version.'),
    })
    .describe('The program that sealed it.'),
  station: z.string().min(1).max(80).describe('Name of the station.'),
  job: workOrderSchema.shape.job.describe('Number of the job.'),
  replaces: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .exactOptional()
    .describe('SHA-256 of the record of this job that lay at the station when this one was sealed.'),
  signers: z
    .array(signerSchema)
    .refine(
      (signers) => signers.filter(({ role }) => role === 'station').length === 1,
      'expected one station',
    )
    .describe('Who signs at sealing, so that a signature taken off shows. One of them is the station.'),
  technicianSignature: technicianSignatureSchema.describe(
    'Whether the technician signed, and if not, why not.',
  ),
  background: z
    .array(stationEntrySchema)
    .min(1)
    .max(MAX_ENTRIES)
    .describe("The station's own entries that explain keys, technician and instruments of this job."),
  entries: z
    .array(jobEntrySchema)
    .min(1)
    .max(MAX_ENTRIES)
    .refine((entries) => attemptsIn(entries) <= MAX_ATTEMPTS, `expected at most ${MAX_ATTEMPTS} attempts`)
    .describe('All entries of the job, from its first.'),
  log: z
    .strictObject({
      checkpoint: z.string().max(1000).describe('The signed checkpoint of the log at sealing.'),
      proof: z
        .array(hashSchema)
        .max(100_000)
        .describe('The hashes that lead from the entries to its root, base64.'),
    })
    .describe('What proves that these entries stand in the station log.'),
  budgets: z.array(budgetSchema).max(100).describe('The uncertainty budget of each tool at each limit.'),
  summary: summarySchema.describe('The result in short. Verification works it out again.'),
});
export type Content = z.infer<typeof recordSchema>;
export interface JobRecord extends Omit<Content, 'background' | 'entries'> {
  readonly background: readonly StationEntry[];
  readonly entries: readonly LogEntry[];
}

/** A record as read; its signatures have not been looked at. */
export interface OpenedRecord {
  readonly jws: Jws;
  readonly record: JobRecord;
  /** The payload of the JWS where it stands in the file: base64url in ASCII. */
  readonly payload: Uint8Array;
  /** Leaves of the Merkle tree, in order of the log: background and entries. */
  readonly leaves: readonly { readonly index: number; readonly hash: Uint8Array }[];
}

/**
 * `unreadable`: not a JWS object at all. `damaged`: it is or was one, but is not a record as this program writes it. `newer`:
 * nor as this program writes it, but it is as it was signed, and names a form or rules that only a later version has.
 */
export interface RecordFault {
  readonly kind: 'unreadable' | 'damaged' | 'newer';
  readonly problem: Problem;
}

/** The rules that a job names in its opening; empty where it has none. */
export function rulesOf(entries: readonly Pick<LogEntry, 'event'>[]): string {
  const opened = entries.find(({ event }) => event.type === 'job-opened')?.event;
  return opened?.type === 'job-opened' ? opened.rules : '';
}

/**
 * The technician's key by the entries that a record holds, which tell of no other person: so it is found as well where one
 * of the two names is withheld.
 */
export function technicianKey(background: readonly StationEntry[], technician: string): PublicJwk | null {
  const recorded = background.flatMap(({ event }) => (event.type === 'person-recorded' ? [event] : []));
  const last = recorded.findLast(
    ({ person }) => person === technician || isWithheld(person) || isWithheld(technician),
  );
  return last?.key ?? null;
}

/** How it stands with the technician's own signature, as the station's log explains it; `key` is the technician's. */
export function technicianSignature(
  station: StationState,
  key: PublicJwk | null,
  signers: readonly { readonly role: Signer['role'] }[],
): JobRecord['technicianSignature'] {
  if (signers.some(({ role }) => role === 'technician')) return 'given';
  if (station.technicians === 'do-not-sign') return 'shop-does-without';
  return key === null ? 'no-key' : 'not-given';
}

/** The file with a countersignature added; what was signed before stays untouched. */
export function countersignRecord(
  bytes: Uint8Array,
  signer: Omit<Signer, 'role'>,
): Result<Uint8Array, RecordFault> {
  const opened = openRecord(bytes);
  if (!opened.ok) return opened;
  return ok(fileBytes(addSignature(opened.value.jws, { ...signer, role: 'countersigner' })));
}

/**
 * What was sealed, whatever came later or was taken away: without countersignatures, which stand behind the signatures
 * announced inside, and without disclosures. A time stamp is made over this.
 */
export function asSealed({ jws, record }: OpenedRecord): Uint8Array {
  const sealed = { ...jws, signatures: jws.signatures.slice(0, record.signers.length) };
  return fileBytes(withDisclosures(sealed, []));
}

/** Reads a record file: strict JSON of the right form in its one canonical writing, inside and out. */
export function openRecord(bytes: Uint8Array): Result<OpenedRecord, RecordFault> {
  const ends = bytes.at(-1) === NEWLINE;
  const outer = parseCanonicalJson(ends ? bytes.subarray(0, -1) : bytes, 'record');
  if (!outer.ok) {
    const loose = parseStrictJson(bytes, 'record');
    const damaged = beginsAsRecord(bytes) || (loose.ok && looksLikeJws(loose.value));
    return err({ kind: damaged ? 'damaged' : 'unreadable', problem: outer.error });
  }
  const jws = jwsSchema.safeParse(outer.value);
  if (!jws.success) {
    const kind = looksLikeJws(outer.value) || beginsAsRecord(bytes) ? 'damaged' : 'unreadable';
    return err({ kind, problem: problemFromZod(jws.error, 'record', 'record-form', NEXT) });
  }
  if (!ends) return damaged('record', sentence`the file does not end as a record does`);
  return openPayload(jws.data, bytes.subarray(BEGINNING.length, BEGINNING.length + jws.data.payload.length));
}

function openPayload(jws: Jws, payload: Uint8Array): Result<OpenedRecord, RecordFault> {
  const content = parseCanonicalJson(fromBase64url(jws.payload) ?? new Uint8Array(), 'record payload');
  if (!content.ok) return err({ kind: 'damaged', problem: content.error });
  const back = revealed(content.value, disclosuresIn(jws), 'record payload');
  if (!back.ok) return err({ kind: 'damaged', problem: back.error });
  const record = recordSchema.safeParse(back.value.value);
  if (!record.success)
    return err({
      kind: isNewer(back.value.value) && isAsSigned(jws, payload) ? 'newer' : 'damaged',
      problem: problemFromZod(record.error, 'record payload', 'record-form', NEXT),
    });
  const placesOf = byEntry(back.value.concealed, 2);
  const withPlaces = <T extends AnyContent>(list: string, entry: T, i: number) => ({
    ...entry,
    concealed: placesOf.get(`${list}/${i}`) ?? [],
  });
  const background = record.data.background.map((entry, i) => withPlaces('background', entry, i));
  const entries = record.data.entries.map((entry, i) => withPlaces('entries', entry, i));
  for (const [list, some] of Object.entries({ background, entries }))
    for (const [i, entry] of some.entries()) {
      const fault = concealmentFault(entry, `record payload: ${list}[${i}]`);
      if (fault !== null) return err({ kind: 'damaged', problem: fault });
    }
  const concealedElsewhere = back.value.concealed.find(
    ({ place: [list, i] }) => (list !== 'background' && list !== 'entries') || typeof i !== 'number',
  );
  if (concealedElsewhere !== undefined)
    return damaged(`record payload: ${concealedElsewhere.place.join('.')}`, MAY_NOT_BE_CONCEALED);
  const whole = { ...record.data, background, entries };
  return ok({ jws, record: whole, payload, leaves: leavesOf(content.value) });
}

const newerSchema = z.union([
  z.object({ form: z.string().regex(/^plugmark\/record\/([2-9]|[1-9]\d{1,3})$/) }),
  z.object({
    entries: z
      .array(z.unknown())
      .min(1)
      .transform(([opened]) => opened)
      .pipe(
        z.object({
          event: z.object({
            type: z.literal('job-opened'),
            rules: z.string().refine((rules) => editionOf(rules) === 'newer'),
          }),
        }),
      ),
  }),
]);

/** Whoever changes a record cannot pass it off as one of a later version without signing it anew. */
const isAsSigned = (jws: Jws, payload: Uint8Array): boolean =>
  jws.signatures.length > 0 && checkSignatures(jws, payload).every(({ fault }) => fault === null);

/** Whether a content that this program cannot read says that a later one wrote it. */
const isNewer = (content: JsonValue): boolean => newerSchema.safeParse(content).success;

type AnyContent = z.infer<typeof jobEntrySchema> | z.infer<typeof stationEntrySchema>;

/** The content is canonical and was read in its own order, so that each entry written again gives its own bytes. */
function leavesOf(payload: JsonValue): OpenedRecord['leaves'] {
  const { background, entries } = leavesSchema.parse(payload);
  return [...background, ...entries]
    .map((entry) => ({ index: entry.seq - 1, hash: leafHash(utf8(JSON.stringify(entry))) }))
    .sort((a, b) => a.index - b.index);
}

const seqSchema = z.custom<{ readonly seq: number }>();
const leavesSchema = z.object({ background: z.array(seqSchema), entries: z.array(seqSchema) });

const NEXT = sentence`Ask for the record again from the station that made it.`;

function damaged(where: string, message: Sentence): Result<never, RecordFault> {
  return err({ kind: 'damaged', problem: spokenProblem('record-form', where, message, NEXT) });
}

const NEWLINE = 0x0a;

/** The file of a record. */
export function fileBytes(jws: Jws): Uint8Array {
  return joined(canonicalBytes(jws), Uint8Array.of(NEWLINE));
}

/** Canonical order puts `payload` first, so every record file begins with these bytes. */
const BEGINNING = utf8('{"payload":"');

function beginsAsRecord(bytes: Uint8Array): boolean {
  return isSame(BEGINNING, bytes.subarray(0, BEGINNING.length));
}

function looksLikeJws(value: JsonValue): boolean {
  return typeof value === 'object' && value !== null && 'payload' in value && 'signatures' in value;
}
