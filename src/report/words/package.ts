/** Why there is no record of a job, and what a package was made for. */
import type { NoRecord } from '../../evidence/record.ts';
import { phrases, w } from '../../words/catalogue.ts';

export const NO_RECORD_WORDS: { readonly [R in NoRecord['because']]: (one: NoRecord) => string } = {
  'still-open': () => w`it is still open`,
  'too-many-entries': ({ count = 0, most = 0 }) => w`${count} entries; a record holds ${most}`,
  'too-many-attempts': ({ count = 0, most = 0 }) => w`${count} attempts; a record holds ${most}`,
  'too-many-bytes': ({ count = 0, most = 0 }) => w`its record has ${count} bytes; one holds ${most}`,
};

export const noRecordText = (one: NoRecord): string => NO_RECORD_WORDS[one.because](one);

const PURPOSE_WORDS = phrases({ audit: 'Audit', dispute: 'Dispute' });

export const purposeText = (made: {
  readonly purpose: keyof typeof PURPOSE_WORDS;
  readonly claim?: string;
}): string => {
  const purpose = PURPOSE_WORDS[made.purpose];
  return made.claim === undefined ? purpose : w`${purpose}, claim ${made.claim}`;
};
