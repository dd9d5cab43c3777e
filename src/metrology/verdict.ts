import { phrases } from '../words/catalogue.ts';
import type { Evaluation } from './judgement.ts';

/** How the verdict on a measurement reads, wherever people read it: on the screen, on paper, in lists. */
export const EVALUATION_WORD: Readonly<Record<Evaluation, string>> = phrases({
  OK: 'OK',
  NotOK: 'NOT OK',
  NotDecidable: 'UNDECIDED',
});
