/** The folder of a witness: its file, and the one key file that both of its keys come from. */
import { hkdfSync } from 'node:crypto';
import { join } from 'node:path';
import { z } from 'zod';
import type { FileKey } from '../../../db/keyfile.ts';
import { openWitnessFile, type WitnessFile } from '../../../db/witness.ts';
import type { CosigningKey } from '../../evidence/cosignature.ts';
import type { PublicJwk } from '../../evidence/jwk.ts';
import { mlDsaKeyOf } from '../../evidence/platform/mldsa.ts';
import { sign } from '../../evidence/platform/signature.ts';
import { readVerifierKey, type WitnessKey, witnessVerifierKey } from '../../evidence/verifier-key.ts';
import type { WitnessStore } from '../../serve/witness.ts';

export interface WitnessScope {
  readonly data: string;
}

export const witnessPath = (folder: string) => join(folder, 'witness.db');
export const witnessKeyPath = (folder: string, kid: string) => join(folder, `witness.${kid}.pem`);

/** Opens the file of a witness for one command, and closes it behind it. */
export async function withWitness<T>(
  { data }: WitnessScope,
  work: (file: WitnessFile) => T | Promise<T>,
): Promise<T> {
  const file = await openWitnessFile(witnessPath(data));
  try {
    return await work(file);
  } finally {
    file.close();
  }
}

/** A key of a witness with its verifier key. */
export interface OwnKey extends CosigningKey {
  readonly vkey: string;
}

/**
 * The Ed25519 key of the file, and the ML-DSA-44 key that is derived from its seed (RFC 5869): one file to keep and to lock.
 * Whoever breaks Ed25519 learns the number that it signs with, and not the seed.
 */
export function keysOfWitness(name: string, { privateKey, jwk }: FileKey): readonly OwnKey[] {
  const { d } = z.object({ d: z.string() }).parse(privateKey.export({ format: 'jwk' }));
  const seed = hkdfSync('sha256', Buffer.from(d, 'base64url'), '', 'plugmark witness ML-DSA-44', 32);
  const mlDsa = mlDsaKeyOf(new Uint8Array(seed));
  return [
    ownKey(name, 'ed25519-cosignature', Buffer.from(jwk.x, 'base64url'), (message) =>
      sign(message, privateKey),
    ),
    ownKey(name, 'ml-dsa-44-cosignature', mlDsa.publicKey, mlDsa.sign),
  ];
}

function ownKey(name: string, kind: WitnessKey['kind'], publicKey: Uint8Array, sign: OwnKey['sign']): OwnKey {
  const vkey = witnessVerifierKey(name, kind, publicKey);
  const key = readVerifierKey(vkey);
  if (key === null || key.kind === 'log') throw new Error('the verifier key of a witness cannot be read');
  return { key, sign, vkey };
}

/** The key of a log is read for each request, so that one that is added counts at once, and the one before it no more. */
export function storeOf(file: WitnessFile): WitnessStore {
  const read = new Map<string, PublicJwk>();
  const jwkOf = (vkey: string): PublicJwk | null => {
    const before = read.get(vkey);
    if (before !== undefined) return before;
    const key = readVerifierKey(vkey);
    if (key?.kind !== 'log') return null;
    read.set(vkey, key.jwk);
    return key.jwk;
  };
  return {
    keyOf: (origin) => {
      const vkey = file.verifierKey(origin);
      return vkey === null ? null : jwkOf(vkey);
    },
    advance: file.advance,
    noteOf: file.noteOf,
  };
}
