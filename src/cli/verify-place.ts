/** What lies where: whether a folder is an audit package, and whether the reader's trust list is the reader's own. */
import { lstat, realpath } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { PACKAGE_FILES } from '../audit/package.ts';
import type { TrustList } from '../evidence/trust.ts';
import { readTrust } from './station.ts';

/** No link, no folder, no device. */
export const isPlain = async (file: string) => (await lstat(file).catch(() => null))?.isFile() === true;

/** Whether a folder is a package: it has an index, or what only stands beside one, so that a lost index shows. */
export async function isPackage(folder: string): Promise<boolean> {
  const { index, signature, proofs } = PACKAGE_FILES;
  const found = await Promise.all([index, signature, proofs].map((name) => isPlain(join(folder, name))));
  return found.includes(true);
}

/**
 * The keys that the reader trusts. Every package holds a list, which is its maker's word about himself: one that lies in
 * a package trusts nobody, and `fault` is the sentence that says so.
 */
export async function readersTrust(
  file: string,
  verified: string,
): Promise<{ readonly list: TrustList; readonly fault: string | null }> {
  const real = await realpath(file).catch(() => null);
  const itself = (await isPackage(verified)) && real !== null && isWithin(await realpath(verified), real);
  if (!itself && (real === null || !(await isPackage(dirname(real)))))
    return { list: await readTrust(file), fault: null };
  return {
    list: { keys: [] },
    fault: `The trust list ${file} lies in a package and is no trust: name with --trust the one that the station gave you by another way.`,
  };
}

function isWithin(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
