/** A witness for tests, which answers on this computer. */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { createWitnessFile, openWitnessFile, type WitnessFile } from '../../db/witness.ts';
import { type OwnKey, storeOf } from '../../src/cli/witness/witness-folder.ts';
import { USUAL_LIMITS, witnessServer } from '../../src/serve/witness.ts';
import { folder } from '../cli/program.ts';
import { LOG_VKEY, ORIGIN } from './logs.ts';
import { witnessKeys } from './witness-keys.ts';

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

/** As "plugmark witness add" does. */
export const addTo = (file: WitnessFile, vkey: string) =>
  file.addLog({ origin: vkey.split('+')[0] ?? '', vkey, at: '2026-09-21T12:00:00.000Z' });

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
  for (const vkey of vkeys) addTo(file, vkey);
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
