/**
 * A gauge study while people are at it: the exercise, the tool in somebody's hand, a pause. Pure: each thing that happens
 * makes another sitting, and tells what has to be in the log before anybody sees it.
 */
import type { StationEvent } from '../evidence/station-event.ts';
import type { ToolState } from '../job/state.ts';
import type { FigureSource, LinkState } from '../reading.ts';
import { type Believable, isBelievable } from './gauge-doubt.ts';
import { due, type Exercise, lastMeasured, measured, takenBack } from './gauge-exercise.ts';

export interface Sitting {
  readonly exercise: Exercise;
  readonly believable: Believable;
  readonly tool: ToolState;
  /** The torque now; null for a gauge, and until a wrench has sent some. */
  readonly live: { readonly nowNm: number; readonly pulling: boolean } | null;
  /** Nothing is taken meanwhile. */
  readonly paused: boolean;
  /** What was done with a reading last, in this sitting. */
  readonly last: 'taken' | 'back' | null;
  /** Why the last thing that came was not taken; another object each time. */
  readonly notice: { readonly words: string } | null;
  /** A reading that is not believed, and does not count until somebody takes it all the same; another object each time. */
  readonly asked: Asked | null;
}

export interface Asked extends Believable {
  readonly value: number;
  readonly source: FigureSource;
}

/**
 * `value` in N·m or mm, sent by the tool or typed by somebody who read it off; `refused` says why none could be had; `take`
 * answers for the reading that is asked about, `back` sets it aside, as a further reading does.
 */
export type SittingInput =
  | { readonly kind: 'link'; readonly link: LinkState }
  | { readonly kind: 'live'; readonly nowNm: number; readonly pulling: boolean }
  | { readonly kind: 'value'; readonly value: number; readonly source: FigureSource }
  | { readonly kind: 'refused'; readonly words: string }
  | { readonly kind: 'take' | 'back' | 'pause' };

type OfOpen<T> = T extends { readonly type: 'gauge-study-read' | 'gauge-study-taken-back' }
  ? Omit<T, 'study'>
  : never;
/** What the log keeps of a sitting, its study left out. */
export type Kept = OfOpen<StationEvent>;

export interface Sat {
  readonly sitting: Sitting;
  readonly kept: readonly Kept[];
}

export const sittingWith = (exercise: Exercise, believable: Believable, tool: string): Sitting => ({
  exercise,
  believable,
  tool: { tool, link: 'seeking' },
  live: null,
  paused: false,
  last: null,
  notice: null,
  asked: null,
});

/** The sitting after one more thing that happened. */
export function sat(before: Sitting, input: SittingInput): Sat {
  const only = (change: Partial<Sitting>): Sat => ({ sitting: { ...before, ...change }, kept: [] });
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
    case 'pause': {
      const { sitting, kept } = setAside(before);
      return { sitting: { ...sitting, paused: !before.paused, notice: null }, kept };
    }
    case 'take':
      return before.asked === null ? only({}) : taken(before, before.asked);
    case 'back':
      return before.asked === null ? back(before) : setAside(before);
    case 'value':
      return value(before, input.value, input.source);
  }
}

/** Beyond it the log takes no figure. */
const MOST = 1e6;

function value(before: Sitting, value: number, source: FigureSource): Sat {
  const not = (words: string): Sat => ({ sitting: { ...before, notice: { words } }, kept: [] });
  if (before.paused || due(before.exercise) === null) return not('A reading came and was not taken.');
  if (!(Math.abs(value) <= MOST)) return not('This is not a figure.');
  const { sitting, kept } = setAside(before);
  const { believable } = before;
  if (!isBelievable(value, believable))
    return { sitting: { ...sitting, notice: null, asked: { ...believable, value, source } }, kept };
  const after = taken(sitting, { value, source });
  return { ...after, kept: [...kept, ...after.kept] };
}

function taken(before: Sitting, { value, source }: Pick<Asked, 'value' | 'source'>): Sat {
  const exercise = measured(before.exercise, value);
  return {
    sitting: { ...before, exercise, last: 'taken', notice: null, asked: null },
    kept: [{ type: 'gauge-study-read', turn: exercise.readings.length, value, source }],
  };
}

/** The reading that was asked about does not count; no reading is dropped, so the log has it as one that was taken back. */
function setAside(before: Sitting): Sat {
  if (before.asked === null) return { sitting: before, kept: [] };
  const { kept } = taken(before, before.asked);
  const turn = before.exercise.readings.length + 1;
  return {
    sitting: { ...before, last: 'back', notice: null, asked: null },
    kept: [...kept, { type: 'gauge-study-taken-back', turn }],
  };
}

function back(before: Sitting): Sat {
  if (lastMeasured(before.exercise) === null)
    return { sitting: { ...before, notice: { words: 'There is no reading to take back.' } }, kept: [] };
  const exercise = takenBack(before.exercise);
  return {
    sitting: { ...before, exercise, last: 'back', notice: null },
    kept: [{ type: 'gauge-study-taken-back', turn: before.exercise.readings.length }],
  };
}

/** As a job has it: a tool that was lost stays lost until it is there again. */
function joined(before: ToolState, link: LinkState): ToolState {
  if (link.state === 'linked') return { tool: before.tool, link: 'linked', description: link.description };
  if (link.state !== 'lost') return before;
  const { state: _lost, ...end } = link;
  return { tool: before.tool, link: 'lost', end };
}

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
