/** The steps of the work in their order, and what came before its turn. */

import type { Step } from '../../job/order-of-work.ts';
import type { OutOfOrder, OutOfTurn } from '../../job/out-of-order.ts';
import type { ListPhase } from '../../job/routine.ts';

/** The lists of the routine. */
export const LIST_WORDS: Readonly<Record<ListPhase, string>> = {
  'before-removal': 'the list before removal',
  fitting: 'the list before fitting',
  afterwards: 'the list for afterwards',
};

/** As an instruction. */
export const STEP_TO_DO: Readonly<Record<Step, string>> = {
  windows: 'confirm the windows',
  'before-removal': 'confirm the list before removal',
  'old-plugs': 'read the old plug',
  'new-plugs': 'check the new plug',
  gap: 'measure the gap of the plug',
  fitting: 'confirm the list before fitting',
  afterwards: 'confirm the list for afterwards',
};

/** As what had not been done. */
export const STEP_MISSED: Readonly<Record<Step, string>> = {
  windows: 'the windows were confirmed',
  'before-removal': 'the list before removal was confirmed',
  'old-plugs': 'its old plug was read',
  'new-plugs': 'its new plug was checked',
  gap: 'the gap of its plug was proven',
  fitting: 'the list before fitting was confirmed',
  afterwards: 'the list for afterwards was confirmed',
};

export const stepsToDo = (steps: readonly Step[]): string => listed(steps.map((step) => STEP_TO_DO[step]));

/** Why a gap belongs to no plug. */
export const OUT_OF_TURN_WORDS: Readonly<Record<OutOfTurn, string>> = {
  windows: 'the windows are not confirmed',
  'before-removal': 'the list before removal is not confirmed',
  'old-plugs': 'the old plugs are not read',
  'new-plugs': 'the new plugs are not checked',
  'old-gap-known': 'the gap of this old plug was measured already',
  'plug-fitted': 'the plug whose gap is open is in the engine',
  'none-due': 'no gap is due',
  'not-possible': 'no spark plug has such a gap',
};

/** What to do about it. */
export const OUT_OF_TURN_NEXT: Readonly<Record<OutOfTurn, string>> = {
  windows: 'First confirm the windows.',
  'before-removal': 'First confirm the list before removal.',
  'old-plugs': 'First read the old plugs.',
  'new-plugs': 'First check the new plugs.',
  'old-gap-known': 'Confirm how this plug looks, then measure the next.',
  'plug-fitted': 'Take the plug out and start it again.',
  'none-due': 'Go on.',
  'not-possible': 'Measure again, and check the unit.',
};

/** Of a pull, for a cell. */
export const earlyText = (step: Step): string =>
  `${step === 'afterwards' ? 'after' : 'before'} ${STEP_MISSED[step]}`;

/** `pull 3 on cylinder 2 came before the windows were confirmed`. */
export function outOfOrderText({ step, what, cylinder, pull, doneAgain }: OutOfOrder): string {
  const where = cylinder === undefined ? '' : ` cylinder ${cylinder}`;
  const subject = {
    pull: `pull ${pull ?? ''} on${where}`,
    loosening: `an old plug was loosened (pull ${pull ?? ''}) and`,
    'old-plug': `the old plug of${where}`,
    'by-angle': `the plug of${where}, by angle,`,
    gap: `the gap of${where}`,
  }[what];
  const turn = step === 'afterwards' ? 'came after' : 'came before';
  return `${subject} ${turn} ${STEP_MISSED[step]}${doneAgain === true ? '; done again since' : ''}`;
}

/** In front of all that came out of order, wherever it is told. */
export const OUT_OF_ORDER = 'OUT OF ORDER';

/** What a reader of a verdict must know at once; empty where nothing stands out of order. */
export function outOfOrderCaveat(all: readonly OutOfOrder[]): string {
  const standing = all.filter(({ doneAgain }) => doneAgain !== true);
  const [first, ...others] = [...new Set(standing.map(outOfOrderText))];
  if (first === undefined) return '';
  return `${OUT_OF_ORDER}: ${first}${others.length === 0 ? '' : `, and ${others.length} more`}.`;
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
