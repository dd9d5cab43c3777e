import { USUAL_LIMITS, witnessServer } from '../../serve/witness.ts';
import { plural, w } from '../../words/catalogue.ts';
import { unlocked } from '../station/station-keys.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { endpointOf, HERE, type Listening, serveUntilEnded } from './listening.ts';
import { keysOfWitness, storeOf, type WitnessScope, withWitness, witnessKeyPath } from './witness-folder.ts';

export type ServeWitness = WitnessScope & Listening;

/** Answers logs until somebody ends it; what was asked by then is answered. */
export function serveWitness(options: ServeWitness): Promise<ExitCode> {
  return withWitness(options, async (file) => {
    const endpoint = await endpointOf(options);
    const { name, kid } = file.identity();
    const path = witnessKeyPath(options.data, kid);
    const key = await unlocked(path, 'passphrase', w`Passphrase of the witness's key: `);
    const server = await witnessServer(
      { ...HERE, store: storeOf(file), keys: keysOfWitness(name, key) },
      { ...USUAL_LIMITS, tls: endpoint.tls },
    );
    await serveUntilEnded(
      server,
      { listen: options.listen, endpoint },
      (address) =>
        w`Witness ${safeLine(name)} listens on ${address} and knows ${plural(file.logs().length, { one: '# log', other: '# logs' })}. Ctrl-C ends it.`,
    );
    print([w`Ended. All that was cosigned is on disk.`]);
    return EXIT.done;
  });
}
