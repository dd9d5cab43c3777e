import type { Answer } from './event.ts';
import { comesOut } from './started.ts';
import type { Question, TorqueAttempt } from './state.ts';

/** What has to be asked about a pull that was given to a cylinder; null for nothing. `held`: it came before a binding step. */
export function questionFor(attempt: TorqueAttempt, cylinder: number, held: boolean): Question | null {
  const { pull, judgement } = attempt;
  if (attempt.kind === 'unsure') {
    const kind = attempt.ask !== undefined && isOwn(attempt.ask) ? attempt.ask : 'unsure';
    return { pull: pull.pull, cylinder, kind, answers: ANSWERS[kind] };
  }
  if (judgement?.side !== 'high' || attempt.answer !== null) {
    const tightened = attempt.kind === 'tightening' || attempt.kind === 'continuation';
    const goesOn = held && tightened && judgement !== null && !comesOut(attempt);
    return goesOn ? { pull: pull.pull, cylinder, kind: 'early', answers: AGAIN } : null;
  }
  return { pull: pull.pull, cylinder, kind: 'over-window', answers: AGAIN };
}

const AGAIN: readonly Answer[] = ['refit', 'replace'];

/** What may be answered to each question about a pull of which nobody knows what it was. */
const ANSWERS: Readonly<Record<Exclude<Question['kind'], 'over-window' | 'early'>, readonly Answer[]>> = {
  loosened: [...AGAIN, 'handling'],
  cut: [...AGAIN, 'handling'],
  'end-of-scale': AGAIN,
  'already-tight': ['rehit', 'handling', ...AGAIN],
  'other-plug': ['fresh', 'unfinished', 'handling', ...AGAIN],
  'no-click': ['fresh', 'unfinished', ...AGAIN],
  loose: ['fresh', 'rehit', 'handling', ...AGAIN],
  'by-plan': ['fresh', 'rehit', 'unfinished', 'handling'],
  unsure: ['fresh', 'rehit', 'handling'],
};

const isOwn = (ask: string): ask is keyof typeof ANSWERS => Object.hasOwn(ANSWERS, ask);
