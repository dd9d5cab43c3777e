/** Why there is no record of a job, and what a package was made for. */
import type { NoRecord } from '../../evidence/record.ts';

export const NO_RECORD_WORDS: { readonly [R in NoRecord['because']]: (one: NoRecord) => string } = {
  'still-open': () => 'it is still open',
  'too-many-entries': ({ count, most }) => `${count} entries; a record holds ${most}`,
  'too-many-attempts': ({ count, most }) => `${count} attempts; a record holds ${most}`,
  'too-many-bytes': ({ count, most }) => `its record has ${count} bytes; one holds ${most}`,
};

export const noRecordText = (one: NoRecord): string => NO_RECORD_WORDS[one.because](one);

const PURPOSE_WORDS = { audit: 'Audit', dispute: 'Dispute' } as const;

export const purposeText = (made: {
  readonly purpose: keyof typeof PURPOSE_WORDS;
  readonly claim?: string;
}): string => `${PURPOSE_WORDS[made.purpose]}${made.claim === undefined ? '' : `, claim ${made.claim}`}`;
