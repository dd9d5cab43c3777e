/** Whether the reader's trust list is the reader's own. */
import { realpath, stat } from 'node:fs/promises';
import { dirname, isAbsolute, relative, sep } from 'node:path';
import type { TrustList } from '../../evidence/trust.ts';
import { ProblemError } from '../../problem.ts';
import { type Sentence, sentence, w } from '../../words/catalogue.ts';
import { TRUST_FILE } from '../station/station-log.ts';
import { readTrust } from '../station/trust-file.ts';
import { isPackage } from './package-folder.ts';

export interface ReadersTrust {
  readonly list: TrustList;
  readonly fault: Sentence | null;
  readonly unnamed: Sentence | null;
}

const UNNAMED = sentence`The trust list is ${TRUST_FILE} of the folder that you are in: yours only if you put it there. Another one: --trust.`;

/**
 * The keys that the reader trusts. Every package holds a list, which is its maker's word about himself: one that lies in
 * a package trusts nobody, nor does a reader who names none and has none at hand; `fault` is the sentence that says so.
 * One that nobody named is taken from the folder at hand, and `unnamed` says so: whoever was sent that folder was sent the list.
 * Problem: `trust-list` where the one that is named is not there.
 */
export async function readersTrust(named: string | undefined, verified: string): Promise<ReadersTrust> {
  const file = named ?? TRUST_FILE;
  if ((await stat(file).catch(() => null)) === null) {
    if (named !== undefined) throw notThere(named);
    const fault = sentence`There is no ${TRUST_FILE} in this folder, so that nobody is trusted: name with --trust the one that the station gave you.`;
    return { list: { keys: [] }, fault, unnamed: null };
  }
  if (!(await liesInPackage(file, verified)))
    return { list: await readTrust(file), fault: null, unnamed: named === undefined ? UNNAMED : null };
  return {
    list: { keys: [] },
    fault: sentence`The trust list ${file} lies in a package and is no trust: name with --trust the one that the station gave you by another way.`,
    unnamed: null,
  };
}

/** Whether a file of the reader lies in the package that is verified, or beside the index of another one. */
export async function liesInPackage(file: string, verified: string): Promise<boolean> {
  const real = await realpath(file).catch(() => null);
  if (real === null) return false;
  const isInside = (await isPackage(verified)) && isWithin(await realpath(verified), real);
  return isInside || isPackage(dirname(real));
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
