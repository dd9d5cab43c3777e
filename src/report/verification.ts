/** How a verification came out, for scripts and for people: one table for a record, many records, a package and papers. */

import type { Check } from '../evidence/check.ts';
import { COMPLETENESS } from '../evidence/completeness.ts';
import type { PackageVerdict, Verdict } from '../evidence/verdict.ts';
import type { VerificationReport } from '../evidence/verify.ts';
import { phrases, w } from '../words/catalogue.ts';
import { proofCaveats, proofText } from './words/index.ts';

interface VerdictRow {
  /** Exit code of a command about one record. */
  readonly exit: 0 | 1 | 2 | 3 | 4;
  /** Exit code about many: they are asked whether they are as sealed, and an unfinished job is no fault of theirs. */
  readonly exitOfMany: 0 | 1 | 2 | 3 | 4;
  /** In a list or a count. */
  readonly word: string;
  readonly ofRecord: string;
}

export const VERIFICATION: Readonly<Record<Verdict, VerdictRow>> = phrases({
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
    ofRecord: 'Authentic, but NOT complete: not all of the job is done. Signed by a station that you trust.',
  },
  unproven: {
    exit: 1,
    exitOfMany: 0,
    word: 'authentic, not proven',
    ofRecord: 'Authentic and complete, but NOT PROVEN. Signed by a station that you trust.',
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
  newer: {
    exit: 4,
    exitOfMany: 4,
    word: 'made by a newer version',
    ofRecord: 'NOT verified. A newer version of plugmark made this record. Verify it with that version.',
  },
  unreadable: { exit: 2, exitOfMany: 2, word: 'unreadable', ofRecord: 'Not a job record.' },
  rejected: {
    exit: 1,
    exitOfMany: 1,
    word: 'not authentic',
    ofRecord: 'NOT authentic. Do not rely on it.',
  },
});

/** Of a key that is on the list and has ended. */
const keyEnded = () =>
  w`NOT trusted. The content is as it was sealed, and the station is on your list, but this key of it has ended: nothing shows that it signed before. Put the proof from the station (*.record.json.proof) beside the record, or give a time stamp with --time.`;

/** Beside a verdict that weighs more. */
const alsoIncomplete = () => w`The job is NOT complete either.`;

/** Of a job that was declared void, however far it had come. */
const isVoidText = () =>
  w`Authentic, but VOID: the job was declared void, and proves nothing. Signed by a station that you trust.`;
const alsoVoid = () => w`The job was declared VOID, and proves nothing.`;

/** Who says nothing false of a record that is not even authentic. */
const NOT_BELIEVED: readonly Verdict[] = ['rejected', 'unreadable'];

/** The signer is trusted, and what the reader's policy asks for is missing. */
const tooFewWitnesses = () =>
  w`NOT trusted. The content is as a station that you trust sealed it, but your policy asks for witnesses that it does not have.`;

const isTrusted = (checks: readonly Check[]): boolean =>
  checks.some(({ name, outcome }) => name === 'signer' && outcome !== 'failed');

const isVoid = ({ record }: VerificationReport): boolean =>
  record?.entries.some(({ event }) => event.type === 'job-voided') ?? false;

/** The first line about a record: authentic or not is one thing, what its figures prove another. */
export function headlineOf(report: VerificationReport): string {
  const { verdict, checks, proof } = report;
  const incomplete = checks.some(({ name, outcome }) => name === COMPLETENESS && outcome === 'failed');
  const weighsMore = verdict === 'untrusted' || verdict === 'other-rules';
  return [
    verdict === 'incomplete' && isVoid(report)
      ? isVoidText()
      : verdict === 'untrusted' && isTrusted(checks)
        ? tooFewWitnesses()
        : verdict === 'untrusted' && report.keyEnded
          ? keyEnded()
          : VERIFICATION[verdict].ofRecord,
    ...(weighsMore && isVoid(report) ? [alsoVoid()] : weighsMore && incomplete ? [alsoIncomplete()] : []),
    ...(proof === null || NOT_BELIEVED.includes(verdict) ? [] : proofCaveats(proof)),
  ]
    .join(' ')
    .concat(doubtsIn(checks));
}

/** What its figures are worth; empty where they are worth nothing, because it is not authentic or void. */
export const worthText = (report: VerificationReport): string =>
  report.proof === null || NOT_BELIEVED.includes(report.verdict) || isVoid(report)
    ? ''
    : proofText(report.proof);

export const OF_PACKAGE: Readonly<Record<PackageVerdict, string>> = phrases({
  authentic: 'Authentic and whole. Made by a station that you trust.',
  'other-rules':
    'Authentic and whole, but some jobs were NOT judged again: this version does not know the rules that judged them.',
  newer: 'NOT verified. A newer version of plugmark made some of its records. Verify it with that version.',
  untrusted: 'NOT trusted. The content is as it was sealed, by a station that you do not trust.',
  rejected: 'NOT authentic or NOT whole. Do not rely on it.',
});

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
