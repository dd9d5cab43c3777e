/** Logs and witnesses for tests: a log in memory that can be forked, and a witness that answers on this computer. */
import { createHash, type KeyObject } from 'node:crypto';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { createWitnessFile, openWitnessFile, type WitnessFile } from '../../db/witness.ts';
import { keysOfWitness, type OwnKey, storeOf } from '../../src/cli/witness/witness-folder.ts';
import { readCheckpoint, type SignedCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { consistencyProof, leafHash, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { verifierKey } from '../../src/evidence/note.ts';
import { addCheckpointText } from '../../src/evidence/witness.ts';
import { orThrow } from '../../src/result.ts';
import { USUAL_LIMITS, witnessServer } from '../../src/serve/witness.ts';
import { folder } from '../cli/program.ts';
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

export function witnessKeys(name: string, seed: string): readonly OwnKey[] {
  const privateKey = keyOfSeed(seed.repeat(32));
  const jwk = publicJwk(privateKey);
  return keysOfWitness(name, { privateKey, jwk, kid: thumbprint(jwk) });
}

export const WITNESS = 'witness.example/one';

export interface Answering {
  readonly url: string;
  readonly file: WitnessFile;
  readonly path: string;
  readonly keys: readonly OwnKey[];
  readonly heard: readonly string[];
  readonly post: (
    body: string | Uint8Array,
  ) => Promise<{ status: number; type: string | null; text: string }>;
  readonly stop: () => Promise<void>;
}

/** Answers until its test is over. */
export async function witnessHere({
  name = WITNESS,
  seed = 'b2',
  vkeys = [LOG_VKEY],
  requestsAMinute = 100_000,
  patienceMs = USUAL_LIMITS.patienceMs as number,
  path = join(folder(), 'witness.db'),
  isNew = true,
  nowS = (): number => 1_790_000_000,
} = {}): Promise<Answering> {
  if (isNew) await createWitnessFile(path, { name, kid: 'none' });
  const file = await openWitnessFile(path);
  for (const vkey of vkeys) file.addLog(vkey.split('+')[0] ?? '', vkey);
  const keys = witnessKeys(name, seed);
  const heard: string[] = [];
  const server = await witnessServer(
    { store: storeOf(file), keys, nowS, heard: (line) => void heard.push(line) },
    { tls: null, requestsAMinute, patienceMs },
  );
  const url = await server.listen({ host: '127.0.0.1', port: 0 });
  let isOpen = true;
  const stop = async () => {
    if (!isOpen) return;
    isOpen = false;
    await server.close();
    file.close();
  };
  onTestFinished(stop);
  return {
    url,
    file,
    path,
    keys,
    heard,
    stop,
    post: async (body) => {
      const response = await fetch(`${url}/add-checkpoint`, { method: 'POST', body });
      return {
        status: response.status,
        type: response.headers.get('content-type'),
        text: await response.text(),
      };
    },
  };
}

export const hashOfOrigin = createHash('sha256').update(ORIGIN).digest('hex');
