/**
 * Time stamps (RFC 3161) by a library: who signed the token, whether the reader's authorities lead to him, what it is over and
 * when it was made. Runs in a browser as well; no network, so that a certificate that was revoked is not known to be.
 */
import * as asn1js from 'asn1js';
import * as pki from 'pkijs';

/** Why a token holds for nothing. */
export type TokenFault =
  | 'unreadable'
  | 'not-granted'
  | 'weak-hash'
  | 'other-data'
  | 'not-bound'
  | 'not-for-time'
  | 'not-signed'
  | 'not-trusted';

export interface TimeToken {
  /** What it was asked for was there before this time (ISO): the time in the token and its stated accuracy. */
  readonly before: string;
  /** The authority's policy, an object identifier. */
  readonly policy: string;
  /** Which of the given bytes it is over, from 0. */
  readonly over: number;
  /** The number that the request carried, in hex; null where it carried none. */
  readonly nonce: string | null;
}

const TIME_STAMPING = '1.3.6.1.5.5.7.3.8';
const EXTENDED_KEY_USAGE = '2.5.29.37';
const CONTENT_TYPE = '1.2.840.113549.1.9.3';
const SIGNING_CERTIFICATE = '1.2.840.113549.1.9.16.2.12';
const SIGNING_CERTIFICATE_V2 = '1.2.840.113549.1.9.16.2.47';
const ED25519 = '1.3.101.112';
/** Nobody can make two texts of one such hash. By SHA-1 somebody can: a stamp over one would hold for the other. */
const SAFE_HASHES: Readonly<Record<string, string>> = {
  '2.16.840.1.101.3.4.2.1': 'SHA-256',
  '2.16.840.1.101.3.4.2.2': 'SHA-384',
  '2.16.840.1.101.3.4.2.3': 'SHA-512',
};

class Fault extends Error {
  readonly code: TokenFault;
  constructor(code: TokenFault) {
    super(code);
    this.code = code;
  }
}

/** The library, with the signatures of RFC 8410 that it does not know. */
class Engine extends pki.CryptoEngine {
  override async verifyWithPublicKey(
    ...[data, signature, key, algorithm, hash]: Parameters<pki.CryptoEngine['verifyWithPublicKey']>
  ): Promise<boolean> {
    if (algorithm.algorithmId !== ED25519)
      return super.verifyWithPublicKey(data, signature, key, algorithm, hash);
    const spki = key.toSchema().toBER();
    const imported = await this.subtle.importKey('spki', spki, { name: 'Ed25519' }, false, ['verify']);
    return this.subtle.verify({ name: 'Ed25519' }, imported, bytesOf(signature), data);
  }
}

const engine = () => new Engine({ name: 'web', crypto: globalThis.crypto });

/** A request for a token over these bytes, which must be answered with the same number. */
export async function timeQuery(data: Uint8Array, nonce: Uint8Array): Promise<Uint8Array> {
  const request = new pki.TimeStampReq({
    version: 1,
    messageImprint: await pki.MessageImprint.create('SHA-256', own(data), engine()),
    nonce: new asn1js.Integer({ valueHex: own(nonce).buffer }),
    certReq: true,
  });
  return new Uint8Array(request.toSchema().toBER());
}

/**
 * Checks the answer of an authority (`TimeStampResp`, DER) over one of these bytes. `authorities` are the certificates that the
 * reader believes, as PEM. A code says why nothing can be taken from it.
 */
export async function readTimeToken(
  answer: Uint8Array,
  authorities: string,
  candidates: readonly Uint8Array[],
): Promise<TimeToken | TokenFault> {
  try {
    return await tokenIn(answer, certificatesIn(authorities), candidates);
  } catch (fault) {
    if (fault instanceof Fault) return fault.code;
    throw fault;
  }
}

async function tokenIn(
  answer: Uint8Array,
  trusted: readonly pki.Certificate[],
  candidates: readonly Uint8Array[],
): Promise<TimeToken> {
  const { signed, info } = parsed(answer);
  const hash = SAFE_HASHES[info.messageImprint.hashAlgorithm.algorithmId];
  const [signer, ...more] = signed.signerInfos;
  if (signer === undefined || more.length > 0) throw new Fault('not-signed');
  if (hash === undefined || SAFE_HASHES[signer.digestAlgorithm.algorithmId] === undefined)
    throw new Fault('weak-hash');
  const imprint = bytesOf(info.messageImprint.hashedMessage);
  const digests = await Promise.all(candidates.map((data) => digest(hash, data)));
  const over = digests.findIndex((one) => isSame(one, imprint));
  const data = candidates[over];
  if (data === undefined) throw new Fault('other-data');
  const certificate = await signerOf(signed, trusted, data);
  await checkBound(signer, certificate);
  checkForTime(certificate);
  return {
    before: new Date(info.genTime.getTime() + accuracyMs(info)).toISOString(),
    policy: info.policy,
    over,
    nonce: info.nonce === undefined ? null : hex(bytesOf(info.nonce)),
  };
}

function parsed(answer: Uint8Array): { readonly signed: pki.SignedData; readonly info: pki.TSTInfo } {
  const token = orUnreadable(() => pki.TimeStampResp.fromBER(own(answer).buffer));
  // Granted, or granted with changes; anything else has no token.
  if (token.status.status > 1 || token.timeStampToken === undefined) throw new Fault('not-granted');
  const content = token.timeStampToken;
  return orUnreadable(() => {
    const signed = new pki.SignedData({ schema: content.content });
    const { eContentType, eContent } = signed.encapContentInfo;
    if (eContentType !== pki.id_eContentType_TSTInfo || eContent === undefined) throw new Error();
    return { signed, info: pki.TSTInfo.fromBER(eContent.getValue()) };
  });
}

/** The library throws errors of every kind over what is not DER. */
function orUnreadable<T>(read: () => T): T {
  try {
    return read();
  } catch {
    throw new Fault('unreadable');
  }
}

/** The certificate of whoever signed, where the signature holds and the authorities lead to him at the time of the token. */
async function signerOf(
  signed: pki.SignedData,
  trusted: readonly pki.Certificate[],
  data: Uint8Array,
): Promise<pki.Certificate> {
  const verified = (checkChain: boolean) =>
    signed
      .verify(
        {
          signer: 0,
          data: own(data).buffer,
          trustedCerts: [...trusted],
          passedWhenNotRevValues: true,
          checkChain,
          extendedMode: true,
        },
        engine(),
      )
      .catch(() => null);
  const holds = await verified(false);
  if (holds?.signatureVerified !== true || holds.signerCertificate == null) throw new Fault('not-signed');
  const chain = await verified(true);
  if (chain?.signerCertificateVerified !== true) throw new Fault('not-trusted');
  return holds.signerCertificate;
}

/** The signed attributes name the content and the certificate, so that neither can be exchanged (RFC 3161, 2.4.2; RFC 5816). */
async function checkBound(signer: pki.SignerInfo, certificate: pki.Certificate): Promise<void> {
  const attributes = signer.signedAttrs?.attributes ?? [];
  const attributeOf = (wanted: string): unknown => attributes.find(({ type }) => type === wanted)?.values[0];
  const type = attributeOf(CONTENT_TYPE);
  if (!(type instanceof asn1js.ObjectIdentifier) || type.getValue() !== pki.id_eContentType_TSTInfo)
    throw new Fault('not-bound');
  const [stated, hash] =
    attributeOf(SIGNING_CERTIFICATE_V2) === undefined
      ? [attributeOf(SIGNING_CERTIFICATE), 'SHA-1']
      : [attributeOf(SIGNING_CERTIFICATE_V2), null];
  // SEQUENCE { SEQUENCE OF SEQUENCE { hashAlgorithm DEFAULT SHA-256, certHash, ... } }; the first is the signer's.
  const [first, second] = itemsOf(itemsOf(itemsOf(stated)[0])[0]);
  const by = hash ?? (first instanceof asn1js.OctetString ? 'SHA-256' : hashNamed(first));
  const certHash = first instanceof asn1js.OctetString ? first : second;
  if (by === undefined || !(certHash instanceof asn1js.OctetString)) throw new Fault('not-bound');
  const actual = await digest(by, new Uint8Array(certificate.toSchema().toBER()));
  if (!isSame(actual, bytesOf(certHash))) throw new Fault('not-bound');
}

const itemsOf = (value: unknown): readonly unknown[] =>
  value instanceof asn1js.Sequence ? value.valueBlock.value : [];

function hashNamed(value: unknown): string | undefined {
  const [name] = itemsOf(value);
  return name instanceof asn1js.ObjectIdentifier ? SAFE_HASHES[name.getValue()] : undefined;
}

/** The certificate is for stamping times and nothing else, and says so as something that must not be overlooked. */
function checkForTime({ extensions = [] }: pki.Certificate): void {
  const usage = extensions.find(({ extnID }) => extnID === EXTENDED_KEY_USAGE);
  const purposes = usage?.parsedValue instanceof pki.ExtKeyUsage ? usage.parsedValue.keyPurposes : [];
  if (usage?.critical !== true || purposes.length !== 1 || purposes[0] !== TIME_STAMPING)
    throw new Fault('not-for-time');
}

function accuracyMs({ accuracy }: pki.TSTInfo): number {
  const { seconds = 0, millis = 0, micros = 0 } = accuracy ?? {};
  return seconds * 1000 + millis + Math.ceil(micros / 1000);
}

/** Whether a text holds certificates (PEM), and nothing that only looks like one. */
export function areCertificates(pem: string): boolean {
  try {
    return certificatesIn(pem).length > 0;
  } catch (fault) {
    if (fault instanceof Fault) return false;
    throw fault;
  }
}

function certificatesIn(pem: string): readonly pki.Certificate[] {
  const blocks = [
    ...pem.matchAll(/-----BEGIN CERTIFICATE-----([A-Za-z0-9+/=\s]+)-----END CERTIFICATE-----/g),
  ];
  return blocks.map(([, base64 = '']) =>
    orUnreadable(() => {
      const binary = atob(base64.replace(/\s+/g, ''));
      return pki.Certificate.fromBER(Uint8Array.from(binary, (one) => one.charCodeAt(0)).buffer);
    }),
  );
}

const digest = async (hash: string, data: Uint8Array) =>
  new Uint8Array(await globalThis.crypto.subtle.digest(hash, own(data)));

/** The library wants bytes that own their memory. */
const own = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => Uint8Array.from(bytes);
const bytesOf = (value: asn1js.OctetString | asn1js.BitString | asn1js.Integer): Uint8Array<ArrayBuffer> =>
  own(value.valueBlock.valueHexView);
const hex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
const isSame = (some: Uint8Array, others: Uint8Array) =>
  some.length === others.length && some.every((byte, i) => byte === others[i]);
