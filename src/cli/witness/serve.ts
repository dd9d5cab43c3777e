import { ProblemError } from '../../problem.ts';
import { USUAL_LIMITS, witnessServer } from '../../serve/witness.ts';
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
import { keysOfWitness, storeOf, type WitnessScope, withWitness, witnessKeyPath } from './witness-folder.ts';

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
