/** The steps of the work in their order, and what came before its turn. */

import type { Step } from '../../job/order-of-work.ts';
import { EARLY_WORDS, type OutOfOrder, type OutOfTurn } from '../../job/out-of-order.ts';
import type { ListPhase } from '../../job/routine.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { listed } from './list.ts';

/** The lists of the routine. */
export const LIST_WORDS: Readonly<Record<ListPhase, string>> = phrases({
  'before-removal': 'the list before removal',
  fitting: 'the list before fitting',
  afterwards: 'the list for afterwards',
});

/** As an instruction. */
export const STEP_TO_DO: Readonly<Record<Step, string>> = phrases({
  windows: 'confirm the windows',
  'before-removal': 'confirm the list before removal',
  'old-plugs': 'read the old plug',
  'new-plugs': 'check the new plug',
  gap: 'measure the gap of the plug',
  fitting: 'confirm the list before fitting',
  afterwards: 'confirm the list for afterwards',
});

export const stepsToDo = (steps: readonly Step[]): string => listed(steps.map((step) => STEP_TO_DO[step]));

/** Why a gap belongs to no plug. */
export const OUT_OF_TURN_WORDS: Readonly<Record<OutOfTurn, string>> = phrases({
  windows: 'the windows are not confirmed',
  'before-removal': 'the list before removal is not confirmed',
  'old-plugs': 'the old plugs are not read',
  'new-plugs': 'the new plugs are not checked',
  'old-gap-known': 'the gap of this old plug was measured already',
  'plug-fitted': 'the plug whose gap is open is in the engine',
  'pulled-early': 'a plug was pulled before its gap was measured',
  'none-due': 'no gap is due',
  'not-possible': 'no spark plug has such a gap',
});

/** What to do about it. */
export const OUT_OF_TURN_NEXT: Readonly<Record<OutOfTurn, string>> = phrases({
  windows: 'First confirm the windows.',
  'before-removal': 'First confirm the list before removal.',
  'old-plugs': 'First read the old plugs.',
  'new-plugs': 'First check the new plugs.',
  'old-gap-known': 'Confirm how this plug looks, then measure the next.',
  'plug-fitted': 'Take the plug out and start it again.',
  'pulled-early': 'Back that plug out and press b. Then measure it.',
  'none-due': 'Go on.',
  'not-possible': 'Measure again, and check the unit.',
});

/** Of a pull, for a cell: `before the windows were confirmed`. */
export const earlyText = (step: Step): string => EARLY_WORDS[step];

/** `pull 3 on cylinder 2 came before the windows were confirmed`. */
export function outOfOrderText(one: OutOfOrder): string {
  const text = orderText(one, earlyText(one.step));
  return one.doneAgain === true ? w`${text}; done again since` : text;
}

function orderText(one: OutOfOrder, early: string): string {
  const { cylinder = '?', pull = '?' }: { cylinder?: number | string; pull?: number | string } = one;
  switch (one.what) {
    case 'pull':
      return w`pull ${pull} on cylinder ${cylinder} came ${early}`;
    case 'loosening':
      return w`an old plug was loosened (pull ${pull}) and came ${early}`;
    case 'old-plug':
      return w`the old plug of cylinder ${cylinder} came ${early}`;
    case 'by-angle':
      return w`the plug of cylinder ${cylinder}, by angle, came ${early}`;
    case 'gap':
      return w`the gap of cylinder ${cylinder} came ${early}`;
  }
}

/** In front of all that came out of order, wherever it is told. */
export const outOfOrderWord = (): string => w`OUT OF ORDER`;

/** What a reader of a verdict must know at once; empty where nothing stands out of order. */
export function outOfOrderCaveat(all: readonly OutOfOrder[]): string {
  const standing = all.filter(({ doneAgain }) => doneAgain !== true);
  const [first, ...others] = [...new Set(standing.map(outOfOrderText))];
  if (first === undefined) return '';
  const word = outOfOrderWord();
  return others.length === 0 ? w`${word}: ${first}.` : w`${word}: ${first}, and ${others.length} more.`;
}
