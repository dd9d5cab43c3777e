import { BehaviorSubject, type Observable } from 'rxjs';
import type { Kept, Sitting, SittingInput } from '../audit/gauge-sitting.ts';
import { sat } from '../audit/gauge-sitting.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import type { Result } from '../result.ts';

export type StudyEvent = Extract<StationEvent, { readonly type: 'gauge-study-made' }>;

/** A study at work: who sits there, and once it is whole and recorded what came of it. */
export interface StudyState {
  readonly sitting: Sitting;
  readonly made: StudyEvent | null;
}

/** What somebody says to a study; a line that is none of these words is a figure. */
export type StudyCommand = 'back' | 'pause' | 'record' | { readonly typed: string };

export interface StudyRun {
  /** Completes when somebody leaves; fails with what the tool or the disk cannot. */
  readonly state$: Observable<StudyState>;
  readonly state: () => StudyState;
  readonly hear: (input: SittingInput) => void;
  readonly command: (command: StudyCommand) => void;
  readonly fail: (error: unknown) => void;
  readonly leave: () => void;
}

export interface StudySetUp {
  readonly sitting: Sitting;
  /** Puts a reading on disk before it is shown. */
  readonly keep: (kept: Kept) => void;
  /** Records the whole study. */
  readonly record: (sitting: Sitting) => Promise<StudyEvent>;
  /** What a typed line comes to, in N·m or mm; null where the line goes to the tool itself, which types. */
  readonly typed: (line: string) => Result<number> | null;
}

/** One study from its first reading to its record, whatever shows it. */
export function createStudyRun({ sitting, keep, record, typed }: StudySetUp): StudyRun {
  const state$ = new BehaviorSubject<StudyState>({ sitting, made: null });
  let state: StudyState = { sitting, made: null };
  let recording = false;
  const become = (next: StudyState) => {
    state = next;
    state$.next(next);
  };
  const fail = (error: unknown) => state$.error(error);
  const hear = (input: SittingInput) => {
    if (recording) return;
    const after = sat(state.sitting, input);
    try {
      if (after.kept !== null) keep(after.kept);
    } catch (error) {
      return fail(error);
    }
    become({ ...state, sitting: after.sitting });
  };
  const whole = () => state.sitting.exercise.readings.length === state.sitting.exercise.order.length;
  return {
    state$: state$.asObservable(),
    state: () => state,
    hear,
    fail,
    leave: () => state$.complete(),
    command(command) {
      if (command === 'record') {
        if (recording || !whole()) return;
        recording = true;
        record(state.sitting).then((made) => become({ ...state, made }), fail);
      } else if (typeof command === 'string') hear({ kind: command });
      else {
        const figure = typed(command.typed);
        if (figure === null) return;
        if (figure.ok) hear({ kind: 'value', value: figure.value, by: 'hand' });
        else hear({ kind: 'refused', words: 'That is no figure that can be read.' });
      }
    },
  };
}
