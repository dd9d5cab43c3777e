/**
 * The audit package: a folder of records with what proves where they stand, which anybody can check offline. Its index
 * names every file by its digest, and the station signs the index: a file that is changed, added or taken away shows.
 */
import { z } from 'zod';
import { canonicalBytes, type JsonValue } from '../evidence/canonical.ts';
import { disclosuresOf, isStationEntry, readEntries, signedEntry } from '../evidence/entry.ts';
import { type PublicJwk, publicJwk, publicJwkSchema, thumbprint } from '../evidence/jwk.ts';
import { signatureHolds, signatureOf } from '../evidence/jws.ts';
import { type StationEntry, stationEntrySchema } from '../evidence/log.ts';
import { hashSchema } from '../evidence/merkle.ts';
import { fromBase64url, toBase64url, utf8 } from '../evidence/platform/bytes.ts';
import type { PrivateKey } from '../evidence/platform/signature.ts';
import { noRecordReasonSchema } from '../evidence/record.ts';
import { impactDecisionSchema } from '../evidence/station-event.ts';
import { parseCanonicalJson } from '../evidence/strict-json.ts';
import { workOrderSchema } from '../job/order.ts';
import { problemFromZod, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';

/** The files that every package has, by what they are. */
export const PACKAGE_FILES = {
  index: 'index.json',
  signature: 'index.jws',
  checkpoint: 'log.checkpoint',
  /** The one that the auditor gave; only where there was one. */
  kept: 'auditor.checkpoint',
  /** The newest one that witnesses cosigned; only where there was one. */
  cosigned: 'cosigned.checkpoint',
  proofs: 'proofs.json',
  station: 'station-entries.json',
  trust: 'trusted-keys.json',
  records: 'records',
  papers: 'papers',
  impacts: 'impacts',
} as const;

/** Where the files of a job lie. */
export const recordPath = (job: string) => `${PACKAGE_FILES.records}/${job}.record.json`;
export const paperPath = (job: string) => `${PACKAGE_FILES.papers}/${job}.pdf`;

/** Names the form, and its edition. */
export const PACKAGE_FORM = 'plugmark/package/1';
const PACKAGE_TYPE = 'plugmark-package+json';

/** Forward slashes, no way out of the folder. */
const path = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}(?:\/[A-Za-z0-9][A-Za-z0-9._-]{0,79})?$/);
const digest = z.string().regex(/^[0-9a-f]{64}$/);
const text = z.string().max(200);

const packageFileSchema = z.strictObject({
  path: path.describe('The file, seen from the folder of the package.'),
  bytes: z.int().nonnegative().describe('Its size.'),
  sha256: digest.describe('Its SHA-256.'),
});
export type PackageFile = z.infer<typeof packageFileSchema>;
export const packageFilesSchema = z.array(packageFileSchema);

const packageJobSchema = z.strictObject({
  job: workOrderSchema.shape.job.describe('Number of the job.'),
  record: path.describe('File of its record.'),
  paper: path.nullable().describe('File of its PDF; null where the package was made without.'),
  impacts: z
    .array(
      z.strictObject({
        assessment: text.describe('Number of the impact assessment.'),
        sort: z.enum(['doubtful', 'out']).describe('Too near a limit to tell, or beyond it.'),
        decided: impactDecisionSchema.nullable().describe('What was decided; null where nothing was.'),
      }),
    )
    .max(1000)
    .describe('Later impact assessments that put some of its proofs in question.'),
});
export type PackageJob = z.infer<typeof packageJobSchema>;

export const packageIndexSchema = z.strictObject({
  form: z.literal(PACKAGE_FORM),
  program: text.describe('The program that made it.'),
  station: z.string().min(1).max(80).describe('Name of the station.'),
  at: z.iso.datetime({ precision: 3 }).describe('When it was made.'),
  purpose: z.enum(['audit', 'dispute']).describe('What it was made for.'),
  claim: text.exactOptional().describe('Number of the claim; only for a dispute.'),
  asked: z
    .record(z.string().max(20), text.nullable())
    .describe(
      'By what its jobs were chosen; empty for all of the station. Null in the place of a personal text: the index is signed, and given away with it.',
    ),
  leftOut: z
    .array(
      z.strictObject({
        job: z.string().max(40).describe('The job.'),
        because: noRecordReasonSchema.describe('Why.'),
        count: z.int().min(1).exactOptional().describe('How many entries, attempts or bytes it has.'),
        most: z.int().min(1).exactOptional().describe('How many a record holds.'),
      }),
    )
    .max(200_000)
    .describe('Jobs that were asked for and of which there is no record.'),
  jobs: z.array(packageJobSchema).max(200_000).describe("The jobs, in order of their records' paths."),
  files: z
    .array(packageFileSchema)
    .max(500_000)
    .describe('All files but the index and its signature, in order of their paths.'),
});
export type PackageIndex = z.infer<typeof packageIndexSchema>;

export const packageProofsSchema = z.strictObject({
  consistency: z
    .array(
      z.strictObject({
        from: z.int().nonnegative().describe('Size of the older log.'),
        path: z.array(hashSchema).max(64).describe('The hashes of the proof, base64.'),
      }),
    )
    .max(100_000)
    .describe('What proves that the log begins as an older checkpoint has it (RFC 9162, 2.1.4).'),
  station: z
    .array(hashSchema)
    .max(100_000)
    .describe("The hashes that prove that the station's entries are in the log, base64."),
});
export type PackageProofs = z.infer<typeof packageProofsSchema>;

/** The bytes of an index. */
export function indexBytes(index: Omit<PackageIndex, 'form'>): Uint8Array {
  return canonicalBytes(packageIndexSchema.parse({ form: PACKAGE_FORM, ...index }));
}

/** A detached JWS (RFC 7515, appendix F) over the bytes of the index. */
export function signIndex(bytes: Uint8Array, key: PrivateKey): string {
  const jwk = publicJwk(key);
  const header = toBase64url(
    canonicalBytes({ alg: 'Ed25519', typ: PACKAGE_TYPE, kid: thumbprint(jwk), jwk }),
  );
  return `${header}..${signatureOf(header, toBase64url(bytes), key)}\n`;
}

export const packageHeaderSchema = z.strictObject({
  alg: z.literal('Ed25519').describe('The fully specified name (RFC 9864), and no other.'),
  typ: z.literal(PACKAGE_TYPE),
  kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
  jwk: publicJwkSchema.describe('The key that signed.'),
});

/** The key that signed these bytes; null where the signature does not hold. Whom to trust is another matter. */
export function indexSigner(bytes: Uint8Array, signature: string): PublicJwk | null {
  const [head = '', payload, last = '', ...more] = signature.split('.');
  const raw = fromBase64url(head);
  const json = raw === null ? null : parseCanonicalJson(raw, 'signature');
  const header = packageHeaderSchema.safeParse(json?.ok === true ? json.value : null);
  if (payload !== '' || more.length > 0 || !last.endsWith('\n') || !header.success) return null;
  const { kid, jwk } = header.data;
  if (kid !== thumbprint(jwk)) return null;
  const input = utf8(`${head}.${toBase64url(bytes)}`);
  return signatureHolds(input, last.slice(0, -1), jwk) ? jwk : null;
}

export const packageStationSchema = z.strictObject({
  disclosures: z
    .array(z.string())
    .max(200_000)
    .describe('The personal texts that travel with them (RFC 9901).'),
  entries: z.array(stationEntrySchema).min(1).max(200_000).describe('The entries, in the order of the log.'),
});

const NEXT = sentence`Ask for the package again.`;

const read =
  <T extends z.ZodType>(schema: T, name: string) =>
  (bytes: Uint8Array): Result<z.infer<T>> => {
    const json = parseCanonicalJson(bytes, name);
    if (!json.ok) return json;
    const parsed = schema.safeParse(json.value);
    return parsed.success ? ok(parsed.data) : err(problemFromZod(parsed.error, name, 'package-form', NEXT));
  };

/** Problems: those of `parseCanonicalJson`, and `package-form`. */
export function readIndex(bytes: Uint8Array): Result<PackageIndex> {
  const index = read(packageIndexSchema, PACKAGE_FILES.index)(bytes);
  const fault = index.ok ? indexFault(index.value) : null;
  if (fault === null) return index;
  return err(spokenProblem('package-form', PACKAGE_FILES.index, fault, NEXT));
}

/** What an index says of its own files is said once, and hangs together. */
function indexFault({ files, jobs }: PackageIndex): Sentence | null {
  const paths = new Set<string>();
  for (const { path } of files) {
    if (path === PACKAGE_FILES.index || path === PACKAGE_FILES.signature)
      return sentence`${path} stands in the list of files, and can have no digest there`;
    if (paths.has(path)) return sentence`the file ${path} stands twice in the list of files`;
    paths.add(path);
  }
  const named = new Set<string>();
  for (const { job, record, paper } of jobs)
    for (const path of paper === null ? [record] : [record, paper]) {
      if (!paths.has(path)) return sentence`job ${job} names ${path}, which is not in the list of files`;
      if (named.has(path)) return sentence`two jobs name the file ${path}`;
      named.add(path);
    }
  const stray = files.find(({ path }) => path.startsWith(`${PACKAGE_FILES.records}/`) && !named.has(path));
  return stray === undefined ? null : sentence`no job names the file ${stray.path}`;
}

export const readProofs = read(packageProofsSchema, PACKAGE_FILES.proofs);

/** The file of the station's own entries. */
export function stationFile(entries: readonly StationEntry[]): Uint8Array {
  return canonicalBytes({ disclosures: entries.flatMap(disclosuresOf), entries: entries.map(signedEntry) });
}

const stationFileSchema = z.strictObject({
  disclosures: z.array(z.string()),
  entries: z.array(z.custom<JsonValue>()),
});

/** Reads it back. Problems: those of `parseCanonicalJson`, `package-form`, `disclosure`, `entry-form`. */
export function readStationFile(bytes: Uint8Array): Result<readonly StationEntry[]> {
  const file = read(stationFileSchema, PACKAGE_FILES.station)(bytes);
  if (!file.ok) return file;
  const entries = readEntries(file.value.entries, file.value.disclosures, PACKAGE_FILES.station);
  if (!entries.ok) return entries;
  const own = entries.value.filter(isStationEntry);
  return own.length > 0 && own.length === entries.value.length
    ? ok(own)
    : err(
        spokenProblem(
          'package-form',
          PACKAGE_FILES.station,
          sentence`expected the station's own entries alone`,
          NEXT,
        ),
      );
}
