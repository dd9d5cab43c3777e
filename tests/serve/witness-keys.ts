import { keysOfWitness, type OwnKey } from '../../src/cli/witness/witness-folder.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';

/** Ed25519 and ML-DSA-44 from a seed of one byte. */
export function witnessKeys(name: string, seed: string): readonly OwnKey[] {
  const privateKey = keyOfSeed(seed.repeat(32));
  const jwk = publicJwk(privateKey);
  return keysOfWitness(name, { privateKey, jwk, kid: thumbprint(jwk) });
}
