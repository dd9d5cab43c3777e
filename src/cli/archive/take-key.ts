/** Takes in by hand the new key of a log whose old key is lost and could name nobody. */

import { logKeyOf } from '../../archive/keys.ts';
import { logId } from '../../archive/log-id.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveScope, withArchive } from './archive-folder.ts';

export function takeLostKey(options: ArchiveScope & { readonly vkey: string }): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const { vkey } = options;
    const origin = logKeyOf(vkey) === null ? null : (readVerifierKey(vkey)?.name ?? null);
    const taken =
      origin === null
        ? null
        : await store.change(logId(origin), ({ keys, station }) => {
            const isNow = keys.at(-1)?.vkey === vkey;
            const isEarlier = !isNow && keys.some((key) => key.vkey === vkey);
            const writes = isNow || isEarlier ? null : { key: { vkey, statement: null } };
            return { answer: { station, isNew: !isNow, isEarlier }, writes };
          });
    if (taken?.isEarlier === true)
      throw new ProblemError({
        code: 'key-retired',
        where: '--vkey',
        message: 'the log had this key before, and such a key does not come back',
        next: 'Take the key of now: "plugmark log vkey" at the station.',
      });
    if (taken === null)
      throw new ProblemError({
        code: 'option-not-valid',
        where: '--vkey',
        message: w`this is not the key of a log that the archive has`,
        next: w`Take what "plugmark log vkey" prints at the station, from somebody whom you know.`,
      });
    print([
      taken.isNew
        ? w`${safeLine(taken.station)} signs with this key from now on. The archive has nobody's word for it but yours.`
        : w`${safeLine(taken.station)} signs with this key already.`,
    ]);
    return EXIT.done;
  });
}
