/** The same as mldsa.ts in a browser, which signs nothing. */
import { ml_dsa44 } from '@noble/post-quantum/ml-dsa.js';

export const mlDsaHolds = (publicKey: Uint8Array, message: Uint8Array, signature: Uint8Array): boolean =>
  signature.length === ml_dsa44.lengths.signature && ml_dsa44.verify(signature, message, publicKey);
