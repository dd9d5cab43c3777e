/**
 * How a station asks to be taken in by an archive: a compact JWS (RFC 7515, 7.1) by its key that names the archive, its log
 * and the one-time token it was given. Nobody can use it at another archive, or a second time.
 */
import { z } from 'zod';
import { canonicalBytes } from '../evidence/canonical.ts';
import { publicJwk } from '../evidence/jwk.ts';
import { signatureHolds, signatureOf } from '../evidence/jws.ts';
import { verifierKey } from '../evidence/note.ts';
import { fromBase64url, toBase64url, toHex, utf8 } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import type { PrivateKey } from '../evidence/platform/signature.ts';
import { parseCanonicalJson } from '../evidence/strict-json.ts';
import { readVerifierKey } from '../evidence/verifier-key.ts';

const HEADER = { alg: 'Ed25519', typ: 'plugmark-enrolment+json' } as const;
const headerSchema = z.strictObject({ alg: z.literal(HEADER.alg), typ: z.literal(HEADER.typ) });

const enrolmentSchema = z.strictObject({
  archive: z.string().min(1).max(200).describe('Name of the archive.'),
  origin: z.string().min(1).max(200).describe('Origin of the station log.'),
  station: z.string().min(1).max(80).describe('Name of the station.'),
  vkey: z.string().max(400).describe('The verifier key of the log: the key that signs this.'),
  token: z.string().length(64).describe('SHA-256 of the one-time token, hex.'),
});
export type Enrolment = z.infer<typeof enrolmentSchema>;

export const tokenHash = (token: string): string => toHex(sha256(utf8(token)));

/** What the station signs, with the key that its log is signed with now. */
export function stateEnrolment(said: Omit<Enrolment, 'vkey'>, key: PrivateKey): string {
  const content: Enrolment = { ...said, vkey: verifierKey(said.origin, publicJwk(key)) };
  const header = toBase64url(canonicalBytes(HEADER));
  const payload = toBase64url(canonicalBytes(content));
  return `${header}.${payload}.${signatureOf(header, payload, key)}`;
}

/** What it says, where the key that it names signed it; null for anything else. */
export function readEnrolment(statement: string): Enrolment | null {
  const [header = '', payload = '', signature = '', ...more] = statement.split('.');
  const said = enrolmentSchema.safeParse(jsonOf(payload));
  if (more.length > 0 || !headerSchema.safeParse(jsonOf(header)).success || !said.success) return null;
  const key = readVerifierKey(said.data.vkey);
  if (key?.kind !== 'log' || key.name !== said.data.origin) return null;
  const holds = signatureHolds(utf8(`${header}.${payload}`), signature, key.jwk);
  return holds ? said.data : null;
}

function jsonOf(part: string): unknown {
  const bytes = fromBase64url(part);
  const json = bytes === null ? null : parseCanonicalJson(bytes, 'statement');
  return json?.ok === true ? json.value : null;
}
