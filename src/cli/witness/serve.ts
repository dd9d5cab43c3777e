import type { WitnessFile } from '../../../db/witness.ts';
import type { PublicJwk } from '../../evidence/jwk.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { ProblemError } from '../../problem.ts';
import { USUAL_LIMITS, type WitnessStore, witnessServer } from '../../serve/witness.ts';
import { now } from '../station/clock.ts';
import { unlocked } from '../station/station-keys.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import {
  addressIn,
  isLoopback,
  type Listening,
  noTls,
  notListening,
  tlsOf,
  untilEnded,
} from './listening.ts';
import { keysOfWitness, type WitnessScope, withWitness, witnessKeyPath } from './witness-folder.ts';

export type ServeWitness = WitnessScope & Listening;

/** Answers logs until somebody ends it; what was asked by then is answered. */
export function serveWitness(options: ServeWitness): Promise<ExitCode> {
  return withWitness(options, async (file) => {
    const { host, port } = addressIn(options.listen);
    const tls = await tlsOf(options);
    if (tls === null && options.withoutTls !== true && !isLoopback(host))
      throw new ProblemError(noTls(options.listen));
    const { name, kid } = file.identity();
    const path = witnessKeyPath(options.data, kid);
    const key = await unlocked(path, 'passphrase', "Passphrase of the witness's key: ");
    const server = await witnessServer(
      {
        store: storeOf(file),
        keys: keysOfWitness(name, key),
        nowS: () => Math.floor(Date.now() / 1000),
        heard: (line) => void process.stdout.write(`${now()} ${safeLine(line)}\n`),
      },
      { ...USUAL_LIMITS, tls },
    );
    const ended = untilEnded();
    try {
      const address = await server.listen({ host, port }).catch((cause: unknown) => {
        throw notListening(options.listen, cause);
      });
      print([
        `Witness ${safeLine(name)} listens on ${safeLine(address)} and knows ${file.logs().length} logs. Ctrl-C ends it.`,
      ]);
      await ended;
    } finally {
      await server.close();
    }
    print(['Ended. All that was cosigned is on disk.']);
    return EXIT.done;
  });
}

/** The keys of a log are read for each request, so that one that is added counts at once. */
function storeOf(file: WitnessFile): WitnessStore {
  const read = new Map<string, PublicJwk>();
  const keyOf = (vkey: string): readonly PublicJwk[] => {
    const before = read.get(vkey);
    if (before !== undefined) return [before];
    const key = readVerifierKey(vkey);
    if (key?.kind !== 'log') return [];
    read.set(vkey, key.jwk);
    return [key.jwk];
  };
  return {
    keysOf: (origin) => file.verifierKeys(origin).flatMap(keyOf),
    advance: file.advance,
    noteOf: file.noteOf,
  };
}
