/** One-time tokens: with one a station joins, with the other a station that lost its log gets it back. */

import { randomBytes } from 'node:crypto';
import { tokenHash } from '../../archive/enrolment.ts';
import { logId } from '../../archive/log-id.ts';
import type { ArchiveStore, TokenUse } from '../../archive/store.ts';
import { ProblemError } from '../../problem.ts';
import { plural, w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { type ArchiveScope, withArchive } from './archive-folder.ts';

/** Long enough for a station that is set up next week. */
const ENROL_DAYS = 7;
/** Whoever has it reads all plates and names of a station. */
const RETURN_DAYS = 1;
const TENANT = /^[a-z0-9][a-z0-9-]{0,39}$/;

export function makeToken(
  options: ArchiveScope & { readonly tenant: string; readonly log?: string },
): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const { tenant } = options;
    if (!TENANT.test(tenant))
      throw new ProblemError({
        code: 'option-not-valid',
        where: '--tenant',
        message: w`"${tenant}" cannot be the name of a tenant`,
        next: w`Take small letters, digits and hyphens: north-street.`,
      });
    return await printed(
      store,
      { use: 'enrol', tenant, origin: options.log ?? null },
      ENROL_DAYS,
      'plugmark archive join URL',
    );
  });
}

export function tokenToGiveBack(options: ArchiveScope & { readonly log: string }): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const log = logId(options.log);
    if ((await store.log(log))?.head == null)
      throw new ProblemError({
        code: 'option-not-valid',
        where: '--log',
        message: w`the archive has nothing cosigned of a log "${safeLine(options.log)}"`,
        next: w`Take the origin that "plugmark archive stations" prints behind the station.`,
      });
    return await printed(store, { use: 'restore', log }, RETURN_DAYS, 'plugmark restore --from-archive URL');
  });
}

/** Kept as its hash alone. */
async function printed(
  store: ArchiveStore,
  use: TokenUse,
  days: number,
  atTheStation: string,
): Promise<ExitCode> {
  const token = randomBytes(24).toString('base64url');
  await store.addToken(tokenHash(token), use, new Date(Date.now() + days * 86_400_000).toISOString());
  process.stdout.write(`${token}\n`);
  process.stderr.write(
    w`Good once, for ${plural(days, { one: '# day', other: '# days' })}. At the station: ${atTheStation}, and give it this token.\n`,
  );
  return EXIT.done;
}
