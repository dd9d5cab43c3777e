/** What the record calls by the names of its enums, in the words of the job screen, for tables; CSV and JSON keep the names. */
import type { AttemptRow, Censored } from '../../audit/attempt.ts';
import type { AskedJob } from '../../audit/questions.ts';
import { KIND_WORD, VERDICT_WORD, verdictOf } from '../../report/verdict.ts';

export const STATE_WORDS: Readonly<Record<AskedJob['state'], string>> = {
  open: 'open',
  complete: 'complete',
  incomplete: 'NOT COMPLETE',
  void: 'VOID',
};

/** UNDECIDED is a verdict; of a pull that nobody placed there is none. */
const NO_VALUE: Readonly<Record<Censored, string>> = {
  cut: 'cut off',
  saturated: 'end of scale',
  undecided: 'not said',
  bounded: '-',
};

export const kindWords = ({ kind }: Pick<AttemptRow, 'kind'>): string =>
  kind === 'gap' ? 'gap' : KIND_WORD[kind];

export const verdictWords = ({ result, censored }: Pick<AttemptRow, 'result' | 'censored'>): string => {
  if (result !== null) return VERDICT_WORD[verdictOf({ result })];
  return censored === null ? '-' : NO_VALUE[censored];
};
