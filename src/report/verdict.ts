import type { AttemptRow, Censored } from '../audit/attempt.ts';
import type { AskedJob } from '../audit/questions.ts';
import { marksOf } from '../job/proof.ts';
import { type CylinderState, isOver } from '../job/state.ts';
import type { Evaluation, Judgement } from '../metrology/judgement.ts';
import { phrases, w } from '../words/catalogue.ts';
import { KIND_WORDS, MARK_WORD, outOfOrderWord } from './words/index.ts';

/** What the paper says of one measurement or of one cylinder; each has its own word and its own symbol. */
export type Verdict =
  | 'ok'
  | 'not-ok'
  | 'not-decidable'
  | 'question'
  | 'not-judged'
  | 'not-done'
  /** Not proven by torque; left so by somebody who answers for it, or turned by an angle. */
  | 'accepted'
  | 'by-angle';

export const VERDICT_WORD: Readonly<Record<Verdict, string>> = phrases({
  ok: 'OK',
  'not-ok': 'NOT OK',
  'not-decidable': 'UNDECIDED',
  question: 'QUESTION OPEN',
  'not-judged': 'NOT JUDGED',
  'not-done': 'NOT DONE',
  accepted: 'NOT PROVEN',
  'by-angle': 'BY ANGLE',
});

const OF_RESULT: Readonly<Record<Evaluation, Verdict>> = {
  OK: 'ok',
  NotOK: 'not-ok',
  NotDecidable: 'not-decidable',
};

export function verdictOf(judgement: Pick<Judgement, 'result'> | null): Verdict {
  return judgement === null ? 'not-judged' : OF_RESULT[judgement.result];
}

/** The worst that is still true of a cylinder: an OK needs a proven gap and a proven torque. */
export function cylinderVerdict(state: CylinderState): Verdict {
  if (state.gap === 'ask' || state.torque === 'ask') return 'question';
  const open: Verdict[] = [];
  if (state.torque === 'again') open.push(lastVerdict(state.pulls));
  if (state.gap === 'again') open.push(lastVerdict(state.gaps.filter(({ takenBack }) => takenBack !== true)));
  if (open.includes('not-ok')) return 'not-ok';
  if (open.includes('not-decidable')) return 'not-decidable';
  if (state.gap === 'done' && state.torque === 'done') return 'ok';
  if (isOver(state.gap) && isOver(state.torque))
    return state.settlement?.kind === 'by-angle' ? 'by-angle' : 'accepted';
  return 'not-done';
}

function lastVerdict(attempts: readonly { readonly judgement: Judgement | null }[]): Verdict {
  return verdictOf(attempts.findLast(({ judgement }) => judgement !== null)?.judgement ?? null);
}

/** How a job ended, for tables; CSV and JSON keep the codes. */
export const STATE_WORDS: Readonly<Record<AskedJob['state'], string>> = phrases({
  open: 'open',
  complete: 'complete',
  incomplete: 'NOT COMPLETE',
  void: 'VOID',
});

/** The same with what a reader of a list must not overlook: figures that prove nothing, and work out of order. */
export function jobStateWords({
  state,
  sources,
  outOfOrder,
}: Pick<AskedJob, 'state' | 'sources' | 'outOfOrder'>): string {
  const typed = sources.includes('typed') ? [w`typed`] : [];
  const stands = outOfOrder.some(({ doneAgain }) => doneAgain !== true);
  const marks = marksOf(sources).map((mark) => MARK_WORD[mark]);
  return [STATE_WORDS[state], ...marks, ...typed, ...(stands ? [outOfOrderWord()] : [])].join(', ');
}

/** UNDECIDED is a verdict; a pull that nobody placed has none. */
const NO_VALUE: Readonly<Record<Censored, string>> = phrases({
  cut: 'cut off',
  saturated: 'end of scale',
  undecided: 'not answered',
  bounded: '-',
});

export const kindWords = ({ kind }: Pick<AttemptRow, 'kind'>): string =>
  kind === 'gap' ? w`gap` : KIND_WORDS[kind];

export const verdictWords = ({ result, censored }: Pick<AttemptRow, 'result' | 'censored'>): string => {
  if (result !== null) return VERDICT_WORD[verdictOf({ result })];
  return censored === null ? '-' : NO_VALUE[censored];
};
