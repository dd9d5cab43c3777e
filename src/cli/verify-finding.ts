import { readFileSync, statSync } from 'node:fs';
import type { TrustList } from '../evidence/trust.ts';
import { type Verdict, verifyRecord } from '../evidence/verify.ts';
import { MAX_RECORD_BYTES } from './verify-limit.ts';

/** What came out for one file. */
export interface Finding {
  readonly file: string;
  readonly verdict: Verdict;
  /** The first check that failed, in words. */
  readonly fault: string | null;
  /** Names of all checks that failed. */
  readonly failed: readonly string[];
}

/** Checks one record file; one that cannot be read is a finding as well. */
export function findingOf(file: string, trust: TrustList): Finding {
  try {
    if (statSync(file).size > MAX_RECORD_BYTES) return unreadable(file, 'larger than any record');
    const { verdict, checks } = verifyRecord(readFileSync(file), trust, null, new Date().toISOString());
    const failed = checks.filter(({ outcome }) => outcome === 'failed');
    const [fault] = failed;
    return {
      file,
      verdict,
      fault: fault === undefined ? null : `${fault.name}: ${fault.detail}`,
      failed: failed.map(({ name }) => name),
    };
  } catch (cause) {
    return unreadable(file, cause instanceof Error ? cause.message : 'cannot be read');
  }
}

const unreadable = (file: string, fault: string): Finding => ({
  file,
  verdict: 'unreadable',
  fault,
  failed: [],
});
