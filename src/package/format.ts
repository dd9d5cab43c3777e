/**
 * The audit package: a folder of records with what proves where they stand, which anybody can check offline. Its index
 * names every file by its digest, and the station signs the index: a file that is changed, added or taken away shows.
 */
import type { KeyObject } from 'node:crypto';
import { z } from 'zod';
import { fromBase64url, toBase64url } from '../evidence/base64url.ts';
import { canonicalBytes } from '../evidence/canonical.ts';
import { importPublicKey, type PublicJwk, publicJwk, publicJwkSchema, thumbprint } from '../evidence/jwk.ts';
import { signatureHolds, signatureOf } from '../evidence/jws.ts';
import { stationEntrySchema } from '../evidence/log.ts';
import { impactDecisionSchema } from '../evidence/station-event.ts';
import { parseCanonicalJson, parseStrictJson } from '../evidence/strict-json.ts';
import { workOrderSchema } from '../job/order.ts';
import { problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';

/** The files that every package has, by what they are. */
export const PACKAGE_FILES = {
  index: 'index.json',
  signature: 'index.jws',
  checkpoint: 'log.checkpoint',
  /** The one that the auditor gave; only where there was one. */
  kept: 'auditor.checkpoint',
  proofs: 'proofs.json',
  station: 'station-entries.json',
  trust: 'trusted-keys.json',
  records: 'records',
  papers: 'papers',
  impacts: 'impacts',
} as const;

/** Names the form, and its edition. */
export const PACKAGE_FORM = 'plugmark/package/2';
const PACKAGE_TYPE = 'plugmark-package+json';

/** Forward slashes, no way out of the folder. */
const path = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}(?:\/[A-Za-z0-9][A-Za-z0-9._-]{0,79})?$/);
const digest = z.string().regex(/^[0-9a-f]{64}$/);
const text = z.string().max(200);

const packageFileSchema = z.strictObject({ path, bytes: z.int().nonnegative(), sha256: digest });
export type PackageFile = z.infer<typeof packageFileSchema>;
export const packageFilesSchema = z.array(packageFileSchema);

const packageJobSchema = z.strictObject({
  job: workOrderSchema.shape.job,
  record: path,
  /** The record as pages for people; null where the package was made without. */
  paper: path.nullable(),
  /** Impact assessments that found some of its proofs doubtful or out, later. */
  impacts: z
    .array(
      z.strictObject({
        assessment: text,
        sort: z.enum(['doubtful', 'out']),
        decided: impactDecisionSchema.nullable(),
      }),
    )
    .max(1000),
});
export type PackageJob = z.infer<typeof packageJobSchema>;

const indexSchema = z.strictObject({
  form: z.literal(PACKAGE_FORM),
  program: text,
  station: z.string().min(1).max(80),
  at: z.iso.datetime({ precision: 3 }),
  /** What it was made for, in words: an audit, or the claim of a dispute. */
  purpose: text,
  /** By what its jobs were chosen; empty for all of the station. */
  asked: z.record(z.string().max(20), text),
  /** Jobs that were asked for and of which there is no record, with the reason. */
  leftOut: z.array(z.strictObject({ job: z.string().max(40), because: text })).max(200_000),
  /** A job for each record, in order of the records' paths. */
  jobs: z.array(packageJobSchema).max(200_000),
  /** All files but the index and its signature, in order of their paths. */
  files: z.array(packageFileSchema).max(500_000),
});
export type PackageIndex = z.infer<typeof indexSchema>;

const hash = z.base64().length(44);
const proofsSchema = z.strictObject({
  /** What proves that the package's checkpoint stands for a log that begins as an older one has it (RFC 9162, 2.1.4). */
  consistency: z
    .array(z.strictObject({ from: z.int().nonnegative(), path: z.array(hash).max(64) }))
    .max(100_000),
  /** What proves that the entries of the station stand in that log. */
  station: z.array(hash).max(100_000),
});
export type PackageProofs = z.infer<typeof proofsSchema>;

/** The bytes of an index. */
export function indexBytes(index: Omit<PackageIndex, 'form'>): Buffer {
  return canonicalBytes(indexSchema.parse({ form: PACKAGE_FORM, ...index }));
}

/** A detached JWS (RFC 7515, appendix F) over the bytes of the index. */
export function signIndex(bytes: Uint8Array, key: KeyObject): string {
  const jwk = publicJwk(key);
  const header = toBase64url(
    canonicalBytes({ alg: 'Ed25519', typ: PACKAGE_TYPE, kid: thumbprint(jwk), jwk }),
  );
  return `${header}..${signatureOf(header, toBase64url(bytes), key)}\n`;
}

const headerSchema = z.strictObject({
  alg: z.literal('Ed25519'),
  typ: z.literal(PACKAGE_TYPE),
  kid: z.string(),
  jwk: publicJwkSchema,
});

/** The key that signed these bytes; null where the signature does not hold. Whom to trust is another matter. */
export function indexSigner(bytes: Uint8Array, signature: string): PublicJwk | null {
  const [head = '', payload, mark = '', ...more] = signature.trimEnd().split('.');
  const raw = fromBase64url(head);
  const json = raw === null ? null : parseStrictJson(raw, 'signature');
  const header = headerSchema.safeParse(json?.ok === true ? json.value : null);
  if (payload !== '' || more.length > 0 || !header.success) return null;
  const { kid, jwk } = header.data;
  if (kid !== thumbprint(jwk)) return null;
  const input = Buffer.from(`${head}.${toBase64url(bytes)}`, 'ascii');
  return signatureHolds(input, mark, importPublicKey(jwk)) ? jwk : null;
}

const stationSchema = z.array(stationEntrySchema).min(1).max(200_000);

const NEXT = 'Ask for the package again.';

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
  const index = read(indexSchema, PACKAGE_FILES.index)(bytes);
  const fault = index.ok ? indexFault(index.value) : null;
  if (fault === null) return index;
  return err({ code: 'package-form', where: PACKAGE_FILES.index, message: fault, next: NEXT });
}

/** What an index says of its own files is said once, and hangs together. */
function indexFault({ files, jobs }: PackageIndex): string | null {
  const paths = new Set<string>();
  for (const { path } of files) {
    if (path === PACKAGE_FILES.index || path === PACKAGE_FILES.signature)
      return `${path} stands in the list of files, and can have no digest there`;
    if (paths.has(path)) return `the file ${path} stands twice in the list of files`;
    paths.add(path);
  }
  const named = new Set<string>();
  for (const { job, record, paper } of jobs)
    for (const path of paper === null ? [record] : [record, paper]) {
      if (!paths.has(path)) return `job ${job} names ${path}, which is not in the list of files`;
      if (named.has(path)) return `two jobs name the file ${path}`;
      named.add(path);
    }
  const stray = files.find(({ path }) => path.startsWith(`${PACKAGE_FILES.records}/`) && !named.has(path));
  return stray === undefined ? null : `no job names the file ${stray.path}`;
}

export const readProofs = read(proofsSchema, PACKAGE_FILES.proofs);
export const readStationEntries = read(stationSchema, PACKAGE_FILES.station);
