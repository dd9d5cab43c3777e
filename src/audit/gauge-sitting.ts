/**
 * A gauge study while people are at it: the exercise, the tool in somebody's hand, a pause. Pure: each thing that happens
 * makes another sitting, and tells what has to be on disk before anybody sees it.
 */
import type { ToolState } from '../job/state.ts';
import type { LinkState } from '../reading.ts';
import { due, type Exercise, lastMeasured, measured, takenBack } from './gauge-exercise.ts';

export interface Sitting {
  readonly exercise: Exercise;
  readonly tool: ToolState;
  /** The torque now; null for a gauge, and until a wrench has sent some. */
  readonly live: { readonly nowNm: number; readonly pulling: boolean } | null;
  /** Nothing is taken meanwhile. */
  readonly paused: boolean;
  /** What was done with a reading last, in this sitting. */
  readonly last: 'taken' | 'back' | null;
  /** Why the last thing that came was not taken; another object each time. */
  readonly notice: { readonly words: string } | null;
}

/** `value` in N·m or mm, sent by the tool or typed by somebody who read it off; `refused` says why none could be had. */
export type SittingInput =
  | { readonly kind: 'link'; readonly link: LinkState }
  | { readonly kind: 'live'; readonly nowNm: number; readonly pulling: boolean }
  | { readonly kind: 'value'; readonly value: number; readonly by: 'tool' | 'hand' }
  | { readonly kind: 'refused'; readonly words: string }
  | { readonly kind: 'back' | 'pause' };

/** What the file of an open study keeps: a reading, or that the last one was taken back. */
export type Kept =
  | { readonly took: number; readonly by: 'tool' | 'hand' }
  | { readonly back: true; readonly took?: never };

export interface Sat {
  readonly sitting: Sitting;
  readonly kept: Kept | null;
}

export const sittingWith = (exercise: Exercise, tool: string): Sitting => ({
  exercise,
  tool: { tool, link: 'seeking' },
  live: null,
  paused: false,
  last: null,
  notice: null,
});

/** The sitting after one more thing that happened. */
export function sat(before: Sitting, input: SittingInput): Sat {
  const only = (change: Partial<Sitting>): Sat => ({ sitting: { ...before, ...change }, kept: null });
  switch (input.kind) {
    case 'link':
      return only({ tool: joined(before.tool, input.link), live: null });
    case 'live': {
      const { nowNm, pulling } = input;
      const begins = pulling && before.live?.pulling !== true;
      return only({ live: { nowNm, pulling }, ...(begins ? { notice: null } : {}) });
    }
    case 'refused':
      return only({ notice: { words: input.words } });
    case 'pause':
      return only({ paused: !before.paused, notice: null });
    case 'back':
      return back(before);
    case 'value':
      return value(before, input.value, input.by);
  }
}

function value(before: Sitting, took: number, by: 'tool' | 'hand'): Sat {
  if (before.paused || due(before.exercise) === null)
    return { sitting: { ...before, notice: { words: 'A reading came and was not taken.' } }, kept: null };
  const exercise = measured(before.exercise, took);
  return { sitting: { ...before, exercise, last: 'taken', notice: null }, kept: { took, by } };
}

function back(before: Sitting): Sat {
  if (lastMeasured(before.exercise) === null)
    return { sitting: { ...before, notice: { words: 'There is no reading to take back.' } }, kept: null };
  const exercise = takenBack(before.exercise);
  return { sitting: { ...before, exercise, last: 'back', notice: null }, kept: { back: true } };
}

/** As a job has it: a tool that was lost stays lost until it is there again. */
function joined(before: ToolState, link: LinkState): ToolState {
  if (link.state === 'linked') return { tool: before.tool, link: 'linked', description: link.description };
  return link.state === 'lost' ? { tool: before.tool, link: 'lost', reason: link.reason } : before;
}

/** The exercise as its file has it: what was taken, less what was taken back. */
export const continued = (begun: Exercise, kept: readonly Kept[]): Exercise =>
  kept.reduce(
    (exercise, one) => (one.took === undefined ? takenBack(exercise) : measured(exercise, one.took)),
    begun,
  );

/**
 * The figure that was taken last, as far as whoever measures next may see it. A study is blind: an appraiser who sees an
 * earlier reading of the part in his hand reads it again, and the gauge seems to repeat better than it does. So no figure
 * outlives the turn it was taken in; within a turn each part comes once, and the next one is another.
 */
export function lastSeen({ exercise, last }: Sitting): number | null {
  const taken = last === 'taken' ? lastMeasured(exercise) : null;
  if (taken === null) return null;
  const next = exercise.order[exercise.readings.length];
  const { cell, reading } = taken;
  const sameTurn = next === undefined || (next.appraiser === cell.appraiser && next.trial === cell.trial);
  return sameTurn ? reading : null;
}
