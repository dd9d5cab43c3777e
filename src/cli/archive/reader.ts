/** Who may ask the archive: readers with a token of their own, for a tenant or for one log of it, and for some time. */
import { randomBytes } from 'node:crypto';
import { tokenHash } from '../../archive/enrolment.ts';
import { logId } from '../../archive/log-id.ts';
import type { Reader } from '../../archive/readers.ts';
import type { ArchiveStore } from '../../archive/store.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { optionText } from '../terminal/option-text.ts';
import { SECRETS } from '../terminal/secret.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveScope, withArchive } from './archive-folder.ts';

/** A token that is lost is good for no longer than that. */
const MOST_DAYS = 400;
const DAY_MS = 86_400_000;

export function makeReader(
  options: ArchiveScope & {
    readonly tenant: string;
    readonly reader: string;
    readonly days: number;
    readonly log?: string;
  },
): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const reader = await readerOf(store, options);
    if (options.days > MOST_DAYS)
      throw new ProblemError({
        code: 'option-not-valid',
        where: '--days',
        message: w`a token is good for ${MOST_DAYS} days at most`,
        next: w`Make another one when its time is over.`,
      });
    const token = randomBytes(24).toString('base64url');
    const until = new Date(Date.now() + options.days * DAY_MS).toISOString();
    await store.readers.add(tokenHash(token), reader, until);
    process.stdout.write(`${token}\n`);
    process.stderr.write(
      `${w`Until ${until.slice(0, 10)} whoever has it reads all records of ${safeLine(reader.log === null ? reader.tenant : (options.log ?? ''))}, names and plates with them. There: ${SECRETS.reader}=TOKEN plugmark ask --archive URL`}\n`,
    );
    return EXIT.done;
  });
}

async function readerOf(
  store: ArchiveStore,
  options: { readonly tenant: string; readonly reader: string; readonly log?: string },
): Promise<Reader> {
  const { tenant } = options;
  const name = optionText(options.reader, '--reader', 80);
  const logs = (await store.logs()).filter((one) => one.tenant === tenant);
  const log = options.log === undefined ? null : logId(options.log);
  if (logs.length > 0 && (log === null || logs.some(({ id }) => id === log))) return { tenant, log, name };
  throw new ProblemError({
    code: 'option-not-valid',
    where: logs.length === 0 ? '--tenant' : '--log',
    message:
      logs.length === 0 ? w`no station of "${safeLine(tenant)}" has joined` : w`that tenant has no such log`,
    next: w`See "plugmark archive stations".`,
  });
}

export function listReaders(scope: ArchiveScope): Promise<ExitCode> {
  return withArchive(scope, async (store) => {
    const readers = await store.readers.all(now());
    const logs = await store.logs();
    const of = (log: string | null) => logs.find(({ id }) => id === log)?.station ?? w`all stations`;
    print(
      readers.length === 0
        ? [w`Nobody may ask this archive.`]
        : textTable(
            [w`tenant`, w`reader`, w`may read`, w`until`],
            readers.map(({ tenant, name, log, until }) => [tenant, name, of(log), until.slice(0, 10)]),
          ),
    );
    return EXIT.done;
  });
}

export function removeReader(
  options: ArchiveScope & { readonly tenant: string; readonly reader: string },
): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const gone = await store.readers.remove(options.tenant, options.reader);
    if (gone === 0)
      throw new ProblemError({
        code: 'option-not-valid',
        where: '--reader',
        message: w`"${safeLine(options.reader)}" has no token`,
        next: w`See "plugmark archive readers".`,
      });
    print([
      w`${safeLine(options.reader)} reads nothing more. What was read before is in "plugmark archive reads".`,
    ]);
    return EXIT.done;
  });
}

export function listReads(options: ArchiveScope & { readonly last: number }): Promise<ExitCode> {
  return withArchive(options, async (store) => {
    const reads = await store.readers.reads(options.last);
    print(
      reads.length === 0
        ? [w`Nobody has asked this archive yet.`]
        : textTable(
            [w`time (UTC)`, w`tenant`, w`reader`, w`question`],
            reads.map(({ at, tenant, reader, question }) => [
              at.slice(0, 19).replace('T', ' '),
              tenant,
              reader,
              question,
            ]),
          ),
    );
    return EXIT.done;
  });
}
