/** Records before both verifiers: what this program says, in the words of the other, and what the other says. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { checkClock } from '../../src/evidence/clock.ts';
import { type LaterLog, parseLaterLog } from '../../src/evidence/later-log.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { type Found, verifiedByPython } from './python.ts';

/** A record, with what lies beside it to prove that a later log contains it. */
export interface WithProof {
  readonly record: Uint8Array;
  readonly proof: string;
}
export type Given = Uint8Array | WithProof;

function said(file: Uint8Array, later: LaterLog | null, trust: TrustList) {
  const { verdict, checks, record, withheld } = verifyRecord(
    file,
    trust,
    null,
    new Date().toISOString(),
    later,
  );
  const outcome = (name: string) => checks.find((check) => check.name === name)?.outcome;
  const failures = checks.filter((check) => check.outcome === 'failed');
  const failed = failures.map(({ name }) => name);
  const why = failures[0]?.detail ?? '';
  const words = (found: Omit<Found, 'path' | 'why'>) => ({ plugmark: found, failed, why });
  if (verdict === 'unreadable') return words({ verdict });
  if (verdict === 'rejected' || record === null) return words({ verdict: 'not authentic' });
  return words({
    verdict: 'authentic',
    trusted: outcome('signer') !== 'failed',
    complete: outcome('completeness') === 'passed',
    withheld: Object.fromEntries(withheld.map(({ kind, count }) => [kind, count])),
    jumps: checkClock(record.entries, record.background).jumps.map(({ n }) => n),
  });
}

/** Both on all files, by name; what is written for the other lies in `folder`. */
export function both(folder: string, files: Readonly<Record<string, Given>>, trust: TrustList) {
  const all = Object.entries(files).map(([what, given]) =>
    given instanceof Uint8Array ? { what, record: given, proof: null } : { what, ...given },
  );
  const paths = all.map(({ record, proof }, i) => {
    const path = join(folder, `${i}.record.json`);
    writeFileSync(path, record);
    // An empty one is no proof.
    writeFileSync(`${path}.proof`, proof ?? '');
    return path;
  });
  const found = verifiedByPython(paths, { trust });
  return all.map(({ what, record, proof }, i) => {
    const { path: _path, why: _why, ...python } = found[i] ?? { path: '', verdict: 'said nothing' };
    const later = proof === null ? null : parseLaterLog(Buffer.from(proof), 'proof');
    return { what, python, ...said(record, later?.ok === true ? later.value : null, trust) };
  });
}
export type Result = ReturnType<typeof both>[number];

export const alike = ({ python, plugmark }: Result) => isDeepStrictEqual(python, plugmark);
