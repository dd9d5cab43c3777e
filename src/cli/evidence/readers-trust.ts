/** Whether the reader's trust list is the reader's own. */
import { realpath, stat } from 'node:fs/promises';
import { dirname, isAbsolute, relative, sep } from 'node:path';
import type { TrustList } from '../../evidence/trust.ts';
import { ProblemError } from '../../problem.ts';
import { type Sentence, sentence, w } from '../../words/catalogue.ts';
import { TRUST_FILE } from '../station/station-log.ts';
import { readTrust } from '../station/trust-file.ts';
import { isPackage } from './package-folder.ts';

/**
 * The keys that the reader trusts. Every package holds a list, which is its maker's word about himself: one that lies in
 * a package trusts nobody, nor does a reader who names none and has none at hand; `fault` is the sentence that says so.
 * Problem: `trust-list` where the one that is named is not there.
 */
export async function readersTrust(
  named: string | undefined,
  verified: string,
): Promise<{ readonly list: TrustList; readonly fault: Sentence | null }> {
  const file = named ?? TRUST_FILE;
  if ((await stat(file).catch(() => null)) === null) {
    if (named !== undefined) throw notThere(named);
    const fault = sentence`There is no ${TRUST_FILE} in this folder, so that nobody is trusted: name with --trust the one that the station gave you.`;
    return { list: { keys: [] }, fault };
  }
  const real = await realpath(file).catch(() => null);
  const itself = (await isPackage(verified)) && real !== null && isWithin(await realpath(verified), real);
  if (!itself && (real === null || !(await isPackage(dirname(real)))))
    return { list: await readTrust(file), fault: null };
  return {
    list: { keys: [] },
    fault: sentence`The trust list ${file} lies in a package and is no trust: name with --trust the one that the station gave you by another way.`,
  };
}

const notThere = (file: string) =>
  new ProblemError({
    code: 'trust-list',
    where: file,
    message: w`there is no trust list here`,
    next: w`Check the path. Without --trust it is said what can be said without trusting anybody.`,
  });

function isWithin(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
