/** The trust list: a JSON Web Key set (RFC 7517, 5) of the keys that a reader of records believes. */
import { z } from 'zod';
import { problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { phrases, type Sentence, sentence } from '../words/catalogue.ts';
import { publicJwkSchema, thumbprint } from './jwk.ts';
import { type Role, roleSchema } from './jws.ts';
import { revocationReasonSchema } from './station-event.ts';
import { parseStrictJson } from './strict-json.ts';

const NEXT = sentence`Put in the public keys as "keys" of a JSON Web Key set, each with its thumbprint as "kid".`;

const trustedKeySchema = publicJwkSchema
  .extend({
    kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
    alg: z.literal('Ed25519').exactOptional().describe('The algorithm.'),
    use: z.literal('sig').exactOptional().describe('For signatures.'),
    name: z.string().min(1).max(80).exactOptional().describe('Whose key it is, in words.'),
    role: roleSchema.exactOptional().describe('In what capacity it is believed; in any when left out.'),
    validFrom: z.iso.datetime().exactOptional().describe('Believed from this time on.'),
    validUntil: z.iso
      .datetime()
      .exactOptional()
      .describe('Believed up to this time, where something else than the key shows that it signed before.'),
    follows: z
      .string()
      .exactOptional()
      .describe('Thumbprint of the key that this one took the place of: that one names no other.'),
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
  .strictObject({
    keys: z.array(trustedKeySchema).describe('The keys, none twice, and no two that follow the same one.'),
  })
  .refine(({ keys }) => areDistinct(keys.map(({ kid }) => kid)), 'a key stands twice')
  .refine(
    ({ keys }) => areDistinct(keys.flatMap(({ follows }) => follows ?? [])),
    'two keys follow the same one, and a key names only one that takes its place',
  );

const areDistinct = (kids: readonly string[]): boolean => new Set(kids).size === kids.length;

/** A key that the reader believes. */
export type TrustedKey = z.infer<typeof trustedKeySchema> & {
  /** The origin of a log that it signs, where the reader's policy says so; no list of a file has this. */
  readonly ofLog?: string;
};
export interface TrustList {
  readonly keys: readonly TrustedKey[];
}

/** Reads a trust list; problems: those of `parseStrictJson`, and `trust-list`. */
export function parseTrustList(bytes: Uint8Array, source: string): Result<TrustList> {
  const json = parseStrictJson(bytes, source);
  if (!json.ok) return json;
  const list = trustListSchema.safeParse(json.value);
  return list.success ? ok(list.data) : err(problemFromZod(list.error, source, 'trust-list', NEXT));
}

export type Trust =
  | {
      readonly trusted: true;
      /** As people read it. */
      readonly name: string | Sentence;
      /** As the list has it: of the key itself, or of the one that named it. */
      readonly listed: string;
    }
  | { readonly trusted: false; readonly reason: Sentence };

/** What a time-stamping authority said about the file; `before` is null where its token does not hold. */
export interface TrustedTime {
  readonly before: string | null;
  readonly detail: Sentence;
  /** The stamp is over the file as it is: over its countersignatures too, and not only over what was sealed. */
  readonly ofWholeFile?: boolean;
}

/** A signature as the list is asked about it. */
export interface Signed {
  readonly kid: string;
  readonly role: Role;
  /** As the signer states it: a holder of the key may state anything. */
  readonly signedAt: string;
  /** Before when it was certainly made, by somebody else's clock; null where nobody vouches for that. */
  readonly before: string | null;
  /** A log contains what was signed, and a key that is believed now signed that log. */
  readonly inLog: boolean;
}

/** The list as it is at this time: what ends later has not ended. */
export const asOf = ({ keys }: TrustList, at: string | null): TrustList => ({
  keys: keys.map(({ validUntil, ...key }) =>
    validUntil === undefined || (at !== null && Date.parse(at) < Date.parse(validUntil))
      ? key
      : { ...key, validUntil },
  ),
});

/** From when on a key is not believed: it was revoked, its time is over, or it named another. Null for a key of now. */
export function endOf(list: TrustList, kid: string): { readonly at: string | null } | null {
  const key = list.keys.find((one) => one.kid === kid);
  const next = list.keys.find(({ follows }) => follows === kid);
  const ends = [key?.revoked?.from, key?.validUntil, next?.validFrom].filter((one) => one !== undefined);
  if (ends.length === 0) return next === undefined ? null : { at: null };
  return { at: ends.reduce((a, b) => (Date.parse(a) <= Date.parse(b) ? a : b)) };
}

/** Whether the list believes this key in this role. Whoever holds a key that is gone can state any time. */
export function trustIn(list: TrustList, { kid, role, signedAt, before, inLog }: Signed): Trust {
  const key = list.keys.find((one) => one.kid === kid);
  if (key === undefined) return no(sentence`the key is not on the trust list`);
  const { name = key.kid, validFrom, revoked } = key;
  if (key.role !== undefined && key.role !== role)
    return no(sentence`the key is on the trust list as ${roleText(key.role)}, not as ${roleText(role)}`);
  if (validFrom !== undefined && Date.parse(signedAt) < Date.parse(validFrom))
    return no(sentence`the key is trusted from ${validFrom}, but signed on ${signedAt}`);
  const end = endOf(list, kid);
  const wasBefore =
    end !== null && end.at !== null && before !== null && Date.parse(before) <= Date.parse(end.at);
  if (end === null || inLog || wasBefore) return { trusted: true, name, listed: name };
  const over =
    revoked !== undefined
      ? sentence`the key was revoked from ${revoked.from} (${reasonText(revoked.reason)})`
      : end.at === null
        ? sentence`the key named another one`
        : sentence`the key was trusted until ${end.at}`;
  return end.at !== null && Date.parse(signedAt) > Date.parse(end.at)
    ? no(sentence`${over}, but signed on ${signedAt}`)
    : no(
        sentence`${over}, and only its own word says that it signed before: a proof from the log, or a trusted time stamp, can show it`,
      );
}

const ROLE_WORDS = phrases({
  station: 'station',
  technician: 'technician',
  countersigner: 'countersigner',
});
export const roleText =
  (role: Role): Sentence =>
  () =>
    ROLE_WORDS[role];

const REASON_WORDS = phrases({ retired: 'retired', lost: 'lost', compromised: 'compromised' });
/** Why a key was revoked. */
export const reasonText =
  (reason: keyof typeof REASON_WORDS): Sentence =>
  () =>
    REASON_WORDS[reason];

const no = (reason: Sentence): Trust => ({ trusted: false, reason });
