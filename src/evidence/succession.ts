/**
 * How a key of a station names the one that follows it: a compact JWS (RFC 7515, 7.1) by the old key, so that whoever
 * trusts the old one can trust the new one without asking again.
 */
import { z } from 'zod';
import { canonicalBytes } from './canonical.ts';
import { type PublicJwk, publicJwk, publicJwkSchema, thumbprint } from './jwk.ts';
import { signatureHolds, signatureOf } from './jws.ts';
import { fromBase64url, toBase64url, utf8 } from './platform/bytes.ts';
import type { PrivateKey } from './platform/signature.ts';
import { parseCanonicalJson } from './strict-json.ts';

const headerSchema = z.strictObject({
  alg: z.literal('Ed25519'),
  typ: z.literal('plugmark-succession+json'),
  kid: z.string(),
});
export const successionSchema = z.strictObject({
  log: z.string().describe('Origin of the station log.'),
  next: publicJwkSchema.describe('The key that signs from then on.'),
  at: z.iso.datetime({ precision: 3 }).describe('From when on.'),
});
/** What the old key says: in this log, from this time on, that key signs. */
export type Succession = z.infer<typeof successionSchema>;

/** The statement, signed by the old key. */
export function stateSuccession(said: Succession, oldKey: PrivateKey): string {
  const kid = thumbprint(publicJwk(oldKey));
  const header = toBase64url(canonicalBytes({ alg: 'Ed25519', typ: 'plugmark-succession+json', kid }));
  const payload = toBase64url(canonicalBytes(said));
  return `${header}.${payload}.${signatureOf(header, payload, oldKey)}`;
}

/** What the statement says, if `old` signed it; null for anything else. */
export function successionBy(statement: string, old: PublicJwk): Succession | null {
  const [header = '', payload = '', signature = '', ...more] = statement.split('.');
  const head = headerSchema.safeParse(jsonOf(header));
  const said = successionSchema.safeParse(jsonOf(payload));
  if (more.length > 0 || !head.success || !said.success || head.data.kid !== thumbprint(old)) return null;
  const input = utf8(`${header}.${payload}`);
  const holds = signatureHolds(input, signature, old);
  return holds ? said.data : null;
}

function jsonOf(part: string): unknown {
  const bytes = fromBase64url(part);
  const json = bytes === null ? null : parseCanonicalJson(bytes, 'statement');
  return json?.ok === true ? json.value : null;
}
