/** Packages before both verifiers, in the same words. */
import { readFileSync } from 'node:fs';
import { verify } from '../../src/cli/evidence/verify.ts';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { ProblemError } from '../../src/problem.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import type { Content } from './hostile/forged.ts';
import { verifiedByPython } from './python.ts';

/** Files of the reader. */
export interface Reader {
  readonly trust: string;
  readonly kept?: string;
}

/** What this program says, in the words of the other. */
export async function plugmark(folder: string, reader: Reader): Promise<Readonly<Record<string, unknown>>> {
  try {
    const { text } = await said(() => verify(folder, { ...reader, json: true }));
    const { verdict, withheld, checks } = JSON.parse(text);
    const failed = checks
      .filter(({ outcome }: Content) => outcome === 'failed')
      .map(({ name }: Content) => name);
    // Only the program that wrote the files for people can write them again.
    const isReadings = failed.length > 0 && failed.every((name: string) => name === 'papers');
    if (verdict === 'rejected' && !isReadings) return { verdict: 'not authentic' };
    return {
      verdict: 'authentic',
      trusted: checks.find(({ name }: Content) => name === 'signer')?.outcome === 'passed',
      withheld: Object.fromEntries(withheld.map(({ kind, count }: Content) => [kind, count])),
    };
  } catch (fault) {
    if (fault instanceof ProblemError) return { verdict: 'unreadable' };
    throw fault;
  }
}

/** What the Python says, in as many words. */
export function python(paths: readonly string[], { trust, kept }: Reader) {
  const list = orThrow(parseTrustList(readFileSync(trust), 'trust'));
  const given = { trust: list, ...(kept === undefined ? {} : { kept }) };
  return verifiedByPython(paths, given).map(({ verdict, trusted, withheld, why }) => ({
    found: verdict === 'authentic' ? { verdict, trusted, withheld } : { verdict },
    why,
  }));
}
