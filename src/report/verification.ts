/** How a verification came out, for scripts and for people: one table for a record, many records, a package and papers. */
import type { Check } from '../evidence/check.ts';
import type { PackageVerdict, Verdict } from '../evidence/verdict.ts';

interface VerdictRow {
  /** Exit code of a command about one record. */
  readonly exit: 0 | 1 | 2 | 3 | 4;
  /** Exit code about many: they are asked whether they are as sealed, and an unfinished job is no fault of theirs. */
  readonly exitOfMany: 0 | 1 | 2 | 3 | 4;
  /** In a list or a count. */
  readonly word: string;
  readonly ofRecord: string;
}

export const VERIFICATION: Readonly<Record<Verdict, VerdictRow>> = {
  authentic: {
    exit: 0,
    exitOfMany: 0,
    word: 'authentic',
    ofRecord: 'Authentic and complete. Signed by a station that you trust.',
  },
  incomplete: {
    exit: 1,
    exitOfMany: 0,
    word: 'authentic, not complete',
    ofRecord:
      'Authentic, but NOT complete: not all of the job is proven. Signed by a station that you trust.',
  },
  'other-rules': {
    exit: 4,
    exitOfMany: 4,
    word: 'not judged again',
    ofRecord:
      'Authentic, but NOT judged again: this version does not know the rules that judged it. Signed by a station that you trust.',
  },
  untrusted: {
    exit: 3,
    exitOfMany: 3,
    word: 'not trusted',
    ofRecord: 'NOT trusted. The content is as it was sealed, by a station that you do not trust.',
  },
  unreadable: { exit: 2, exitOfMany: 2, word: 'unreadable', ofRecord: 'Not a job record.' },
  rejected: {
    exit: 1,
    exitOfMany: 1,
    word: 'not authentic',
    ofRecord: 'NOT authentic. Do not rely on it.',
  },
};

/** Beside a verdict that weighs more. */
export const ALSO_INCOMPLETE = 'The job is NOT complete either.';

export const OF_PACKAGE: Readonly<Record<PackageVerdict, string>> = {
  authentic: 'Authentic and whole. Made by a station that you trust.',
  'other-rules':
    'Authentic and whole, but some jobs were NOT judged again: this version does not know the rules that judged them.',
  untrusted: 'NOT trusted. The content is as it was sealed, by a station that you do not trust.',
  rejected: 'NOT authentic or NOT whole. Do not rely on it.',
};

/** In front of each check; never colour alone. */
export const CHECK_MARK: Readonly<Record<Check['outcome'], string>> = {
  passed: '[ok]  ',
  failed: '[FAIL]',
  doubtful: '[!]   ',
  'not-applicable': '[-]   ',
};

/** What a reader should know before anything else, beside the verdict; empty where there is nothing. */
export const doubtsIn = (checks: readonly Check[]): string =>
  checks.flatMap(({ outcome, detail }) => (outcome === 'doubtful' ? [` ${detail}`] : [])).join('');
