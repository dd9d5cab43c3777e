import { archiveServer, USUAL_LIMITS } from '../../serve/archive.ts';
import { plural, w } from '../../words/catalogue.ts';
import { unlocked } from '../station/station-keys.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { endpointOf, HERE, type Listening, serveUntilEnded } from '../witness/listening.ts';
import { keysOfWitness } from '../witness/witness-folder.ts';
import { type ArchiveScope, archiveKeyPath, withArchive } from './archive-folder.ts';

/** Takes what stations ship until somebody ends it; what was asked by then is answered. */
export function serveArchive(options: ArchiveScope & Listening): Promise<ExitCode> {
  return withArchive(options, async (store, { name, kid }) => {
    const endpoint = await endpointOf(options);
    const path = archiveKeyPath(options.data, kid);
    const key = await unlocked(path, 'passphrase', w`Passphrase of the archive's key: `);
    const server = await archiveServer(
      { ...HERE, name, store, keys: keysOfWitness(name, key) },
      { ...USUAL_LIMITS, tls: endpoint.tls },
    );
    await serveUntilEnded(server, { listen: options.listen, endpoint }, async (address) => {
      const { length } = await store.logs();
      const logs = plural(length, { one: '# log', other: '# logs' });
      return w`Archive ${safeLine(name)} listens on ${address} and has ${logs}. Ctrl-C ends it.`;
    });
    print([w`Ended. All that was acknowledged is on disk.`]);
    return EXIT.done;
  });
}
