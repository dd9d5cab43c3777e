import { BehaviorSubject, type Observable } from 'rxjs';
import { due } from '../audit/gauge-exercise.ts';
import type { StudyFinished } from '../audit/gauge-log.ts';
import type { Kept, Sitting, SittingInput } from '../audit/gauge-sitting.ts';
import { sat } from '../audit/gauge-sitting.ts';
import type { Result } from '../result.ts';
import { w } from '../words/catalogue.ts';

/** A study at work; once all is measured and recorded, its result. */
export interface StudyState {
  readonly sitting: Sitting;
  readonly finished: StudyFinished | null;
}

/** What somebody types: one of these words, or a figure. */
export type StudyCommand = 'take' | 'back' | 'pause' | 'record' | { readonly typed: string };

export interface StudyRun {
  /** Completes when somebody leaves; fails where the tool or the log fails. */
  readonly state$: Observable<StudyState>;
  readonly state: () => StudyState;
  readonly hear: (input: SittingInput) => void;
  readonly command: (command: StudyCommand) => void;
  readonly fail: (error: unknown) => void;
  readonly leave: () => void;
}

export interface StudySetUp {
  readonly sitting: Sitting;
  /** Puts readings into the log before they are shown. */
  readonly keep: (kept: readonly Kept[]) => void;
  /** Records the whole study. */
  readonly record: (sitting: Sitting) => StudyFinished;
  /** A typed line in N·m or mm; null where the line belongs to a tool that types its readings. */
  readonly typed: (line: string) => Result<number> | null;
}

/** One study from its first reading to its record, on the screen or in plain lines. */
export function createStudyRun({ sitting, keep, record, typed }: StudySetUp): StudyRun {
  const state$ = new BehaviorSubject<StudyState>({ sitting, finished: null });
  let state: StudyState = { sitting, finished: null };
  /** Left or failed: nobody would see what comes now, so nothing of it is kept. */
  let over = false;
  const fail = (error: unknown) => {
    over = true;
    state$.error(error);
  };
  const become = (work: () => StudyState) => {
    if (over || state.finished !== null) return;
    try {
      state = work();
    } catch (error) {
      return fail(error);
    }
    state$.next(state);
  };
  const hear = (input: SittingInput) =>
    become(() => {
      const after = sat(state.sitting, input);
      keep(after.kept);
      return { ...state, sitting: after.sitting };
    });
  const isWhole = () => due(state.sitting.exercise) === null;
  return {
    state$: state$.asObservable(),
    state: () => state,
    hear,
    fail,
    leave() {
      if (state.sitting.asked !== null) hear({ kind: 'back' });
      over = true;
      state$.complete();
    },
    command(command) {
      if (command === 'record') {
        if (isWhole()) become(() => ({ ...state, finished: record(state.sitting) }));
      } else if (typeof command === 'string') hear({ kind: command });
      else {
        const figure = typed(command.typed);
        if (figure === null) return;
        if (figure.ok) hear({ kind: 'value', value: figure.value, source: 'typed' });
        else hear({ kind: 'refused', words: w`This is not a figure.` });
      }
    },
  };
}
