/** A log in memory that can be forked. */
import type { KeyObject } from 'node:crypto';
import { readCheckpoint, type SignedCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { consistencyProof, leafHash, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { verifierKey } from '../../src/evidence/note.ts';
import { addCheckpointText } from '../../src/evidence/witness.ts';
import { orThrow } from '../../src/result.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';

export const ORIGIN = 'shop.example/log';
export const LOG_KEY = keyOfSeed('a1'.repeat(32));
export const LOG_VKEY = verifierKey(ORIGIN, publicJwk(LOG_KEY));

/** A log of these entries; one with a `fork` has other entries from there on. */
export function logOf(size: number, fork = size, key: KeyObject = LOG_KEY, origin = ORIGIN) {
  const leaves = Array.from({ length: size }, (_, i) =>
    leafHash(Buffer.from(`${i < fork ? 'entry' : 'other'} ${i}`)),
  );
  const tree = treeOf(leaves);
  const note = (at = size) => signCheckpoint({ origin, size: at, root: treeRoot(tree, at) }, key);
  return {
    tree,
    note,
    checkpoint: (at = size): SignedCheckpoint => orThrow(readCheckpoint(note(at), 'note')),
    /** What a log sends: that it goes on from `old`. */
    request: (old: number, at = size) => addCheckpointText(old, consistencyProof(tree, old, at), note(at)),
  };
}
