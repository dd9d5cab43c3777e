import { ProblemError } from '../../problem.ts';
import { archiveServer, USUAL_LIMITS } from '../../serve/archive.ts';
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
} from '../witness/listening.ts';
import { keysOfWitness } from '../witness/witness-folder.ts';
import { type ArchiveScope, archiveKeyPath, withArchive } from './archive-folder.ts';

/** Takes what stations ship until somebody ends it; what was asked by then is answered. */
export function serveArchive(options: ArchiveScope & Listening): Promise<ExitCode> {
  return withArchive(options, async (store, { name, kid }) => {
    const { host, port } = addressIn(options.listen);
    const tls = await tlsOf(options);
    if (tls === null && options.withoutTls !== true && !isLoopback(host))
      throw new ProblemError(noTls(options.listen));
    const key = await unlocked(
      archiveKeyPath(options.data, kid),
      'passphrase',
      "Passphrase of the archive's key: ",
    );
    const server = await archiveServer(
      {
        name,
        store,
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
      const { length } = await store.logs();
      print([
        `Archive ${safeLine(name)} listens on ${safeLine(address)} and has ${length === 1 ? '1 log' : `${length} logs`}. Ctrl-C ends it.`,
      ]);
      await ended;
    } finally {
      await server.close();
    }
    print(['Ended. All that was acknowledged is on disk.']);
    return EXIT.done;
  });
}
