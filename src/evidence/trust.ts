/** The trust list: a JSON Web Key set (RFC 7517, 5) of the keys that a reader of records believes. */
import { z } from 'zod';
import { problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { publicJwkSchema, thumbprint } from './jwk.ts';
import { type Role, roleSchema } from './jws.ts';
import { revocationReasonSchema } from './station-event.ts';
import { parseStrictJson } from './strict-json.ts';

const NEXT = 'Put in the public keys as `keys` of a JSON Web Key set, each with its thumbprint as `kid`.';

const trustedKeySchema = publicJwkSchema
  .extend({
    kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
    alg: z.literal('Ed25519').exactOptional().describe('The algorithm.'),
    use: z.literal('sig').exactOptional().describe('For signatures.'),
    name: z.string().min(1).max(80).exactOptional().describe('Whose key it is, in words.'),
    role: roleSchema.exactOptional().describe('In what capacity it is believed; in any when left out.'),
    validFrom: z.iso.datetime().exactOptional().describe('Believed from this time on.'),
    validUntil: z.iso.datetime().exactOptional().describe('Believed up to this time.'),
    revoked: z
      .strictObject({
        from: z.iso.datetime().describe('From when on.'),
        reason: revocationReasonSchema.describe('A `compromised` key may have signed under any date.'),
      })
      .exactOptional()
      .describe('Not to be believed any more.'),
  })
  .refine((key) => key.kid === thumbprint(key), {
    path: ['kid'],
    message: 'expected the RFC 7638 thumbprint of the key',
  });

export const trustListSchema = z
  .strictObject({ keys: z.array(trustedKeySchema).describe('The keys, none twice.') })
  .refine(({ keys }) => new Set(keys.map(({ kid }) => kid)).size === keys.length, 'a key stands twice');
export type TrustList = z.infer<typeof trustListSchema>;

/** Reads a trust list; problems: those of `parseStrictJson`, and `trust-list`. */
export function parseTrustList(bytes: Uint8Array, source: string): Result<TrustList> {
  const json = parseStrictJson(bytes, source);
  if (!json.ok) return json;
  const list = trustListSchema.safeParse(json.value);
  return list.success ? ok(list.data) : err(problemFromZod(list.error, source, 'trust-list', NEXT));
}

export type Trust =
  | { readonly trusted: true; readonly name: string }
  | { readonly trusted: false; readonly reason: string };

/** A signature as the list is asked about it. */
export interface Signed {
  readonly kid: string;
  readonly role: Role;
  /** As the signer states it. */
  readonly signedAt: string;
  /** Before when it was certainly made, by somebody else's clock; null where nobody vouches for that. */
  readonly before: string | null;
}

/** Whether the list believes this key in this role at the time that the signature states. */
export function trustIn(list: TrustList, { kid, role, signedAt, before }: Signed): Trust {
  const key = list.keys.find((one) => one.kid === kid);
  if (key === undefined) return no('the key is not on the trust list');
  const { name = key.kid, validFrom, validUntil, revoked } = key;
  const at = Date.parse(signedAt);
  if (key.role !== undefined && key.role !== role)
    return no(`the key is on the trust list as ${key.role}, not as ${role}`);
  if (validFrom !== undefined && at < Date.parse(validFrom))
    return no(`the key is trusted from ${validFrom}, but signed on ${signedAt}`);
  if (validUntil !== undefined && at > Date.parse(validUntil))
    return no(`the key was trusted until ${validUntil}, but signed on ${signedAt}`);
  if (revoked !== undefined && at >= Date.parse(revoked.from))
    return no(`the key was revoked from ${revoked.from} (${revoked.reason}), but signed on ${signedAt}`);
  if (
    revoked?.reason === 'compromised' &&
    !(before !== null && Date.parse(before) < Date.parse(revoked.from))
  )
    return no(
      `the key was compromised on ${revoked.from}, and only a trusted time stamp from before could tell this signature from a forged one`,
    );
  return { trusted: true, name };
}

const no = (reason: string): Trust => ({ trusted: false, reason });
