/**
 * Signatures over a record: JWS general JSON serialization (RFC 7515, 7.2.1) with Ed25519 (RFC 8037). Every header is
 * protected and holds the signer's public key, so that any JOSE library can check it; whom to trust is another matter.
 */
import { z } from 'zod';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { canonical, canonicalBytes } from './canonical.ts';
import { keyBytes, type PublicJwk, publicJwk, publicJwkSchema, thumbprint } from './jwk.ts';
import { fromBase64url, toBase64url, utf8 } from './platform/bytes.ts';
import { holds, type PrivateKey, sign } from './platform/signature.ts';
import { parseCanonicalJson } from './strict-json.ts';

/** What the payload is (RFC 7515, 4.1.9): a signature made for something else is not accepted here. */
export const RECORD_TYPE = 'plugmark-record+json';

/** In what capacity a key signs. Stations and technicians sign at sealing; countersigners may come years later. */
export const roleSchema = z.enum(['station', 'technician', 'countersigner']);
export type Role = z.infer<typeof roleSchema>;

export const recordHeaderSchema = z.strictObject({
  alg: z.literal('Ed25519').describe('The fully specified name (RFC 9864), and no other.'),
  typ: z.literal(RECORD_TYPE),
  kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
  jwk: publicJwkSchema.describe('The key that signed.'),
  role: roleSchema.describe('In what capacity it signed.'),
  signedAt: z.iso.datetime({ precision: 3 }).describe('Wall clock as the signer states it.'),
});

const base64url = z.string().refine((text) => fromBase64url(text) !== null, 'expected strict base64url');

/** Each takes a check of the whole content: a file with thousands would keep a reader busy for hours. */
const MAX_SIGNATURES = 16;

export const jwsSchema = z.strictObject({
  payload: base64url.describe('What is signed: the record in canonical JSON, base64url.'),
  signatures: z
    .array(
      z.strictObject({
        protected: base64url.describe('Header of the signature: canonical JSON, base64url.'),
        signature: base64url.describe('Ed25519 over header and payload (RFC 7515, 5.1), base64url.'),
        header: z
          .strictObject({
            disclosures: z
              .array(z.string())
              .min(1)
              .max(100_000)
              .describe('The personal texts that travel with the record (RFC 9901).'),
          })
          .exactOptional()
          .describe('Unprotected, in the first signature alone.'),
      }),
    )
    .max(MAX_SIGNATURES)
    .refine(
      (signatures) => signatures.slice(1).every(({ header }) => header === undefined),
      'expected disclosures in the first signature alone',
    )
    .describe('One for each signer.'),
});
export type Jws = z.infer<typeof jwsSchema>;

/** The disclosures that travel with the content. */
export const disclosuresIn = ({ signatures: [first] }: Jws): readonly string[] =>
  first?.header?.disclosures ?? [];

/** The same file with these disclosures in place of those that it had. */
export function withDisclosures(
  { payload, signatures: [first, ...rest] }: Jws,
  disclosures: readonly string[],
): Jws {
  if (first === undefined) throw new Error('disclosures travel with a signature, and there is none');
  const { header, ...signed } = first;
  const own = disclosures.length === 0 ? signed : { ...signed, header: { disclosures: [...disclosures] } };
  return { payload, signatures: [own, ...rest] };
}

/** A key about to sign, and as what. */
export interface Signer {
  readonly privateKey: PrivateKey;
  readonly role: Role;
  readonly signedAt: string;
}

export interface SignatureReport {
  /** Null where the header could not be read. */
  readonly signer: { readonly kid: string; readonly role: Role; readonly signedAt: string } | null;
  /** Null when the signature holds, else why it does not. */
  readonly fault: Sentence | null;
}

/** Puts one more signature over the payload. */
export function addSignature(jws: Jws, { privateKey, role, signedAt }: Signer): Jws {
  const jwk = publicJwk(privateKey);
  const header = { alg: 'Ed25519', typ: RECORD_TYPE, kid: thumbprint(jwk), jwk, role, signedAt };
  const head = toBase64url(canonicalBytes(header));
  const signature = signatureOf(head, jws.payload, privateKey);
  return { ...jws, signatures: [...jws.signatures, { protected: head, signature }] };
}

/** Checks each signature by itself, in the order of the file. `payload` is that of the JWS, as ASCII. */
export function checkSignatures(
  { signatures }: Pick<Jws, 'signatures'>,
  payload: Uint8Array,
): readonly SignatureReport[] {
  const input = signingInput(payload, Math.max(0, ...signatures.map(({ protected: head }) => head.length)));
  return signatures.map((one) => {
    const header = readHeader(one.protected);
    if (typeof header === 'function') return { signer: null, fault: header };
    const { kid, role, signedAt, jwk } = header;
    const signer = { kid, role, signedAt };
    if (kid !== thumbprint(jwk))
      return { signer, fault: sentence`its key does not carry the name that its header gives` };
    const isGood = signatureHolds(input(one.protected), one.signature, jwk);
    return { signer, fault: isGood ? null : sentence`it does not belong to this content` };
  });
}

/** RFC 7515, 5.1: Ed25519 over `BASE64URL(header) . BASE64URL(payload)`; all three in base64url. */
export function signatureOf(header: string, payload: string, key: PrivateKey): string {
  return toBase64url(sign(utf8(`${header}.${payload}`), key));
}

/** RFC 7515, 5.2, over the whole signing input. */
export function signatureHolds(input: Uint8Array, signature: string, key: PublicJwk): boolean {
  const bytes = fromBase64url(signature);
  return bytes !== null && holds(keyBytes(key), input, bytes);
}

/** New memory of a record's size costs as much as copying into it; a record that is larger than usual has its own. */
const USUAL = new Uint8Array(1 << 20);
const DOT = 0x2e;

/** Signing inputs of several headers over one payload, which is copied once: each header is written in front of it in turn. */
function signingInput(payload: Uint8Array, longestHeader: number): (header: string) => Uint8Array {
  const size = longestHeader + 1 + payload.length;
  const bytes = size <= USUAL.length ? USUAL : new Uint8Array(size);
  bytes[longestHeader] = DOT;
  bytes.set(payload, longestHeader + 1);
  return (header) => {
    const from = longestHeader - header.length;
    bytes.set(utf8(header), from);
    return bytes.subarray(from, size);
  };
}

function readHeader(text: string): z.infer<typeof recordHeaderSchema> | Sentence {
  const bytes = fromBase64url(text);
  const json = bytes === null ? null : parseCanonicalJson(bytes, 'header');
  if (json === null || !json.ok) return sentence`its header is not canonical JSON`;
  const header = recordHeaderSchema.safeParse(json.value);
  if (header.success) return header.data;
  const issue = header.error.issues[0];
  return issue?.path[0] === 'alg'
    ? sentence`its header asks for an algorithm other than Ed25519`
    : sentence`its header is not of the expected form (${canonical(issue?.path.map(String).join('.') ?? '')})`;
}
