import { BehaviorSubject, type Observable } from 'rxjs';
import { due } from '../../audit/gauge-exercise.ts';
import type { StudyFinished } from '../../audit/gauge-log.ts';
import type { Kept, Sitting, SittingInput } from '../../audit/gauge-sitting.ts';
import { sat } from '../../audit/gauge-sitting.ts';
import type { Result } from '../../result.ts';

/** A study at work: who sits there, and once it is whole and recorded what came of it. */
export interface StudyState {
  readonly sitting: Sitting;
  readonly made: StudyFinished | null;
}

/** What somebody says to a study; a line that is none of these words is a figure. */
export type StudyCommand = 'take' | 'back' | 'pause' | 'record' | { readonly typed: string };

export interface StudyRun {
  /** Completes when somebody leaves; fails with what the tool or the log cannot. */
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
  /** What a typed line comes to, in N·m or mm; null where the line goes to the tool itself, which types. */
  readonly typed: (line: string) => Result<number> | null;
}

/** One study from its first reading to its record, whatever shows it. */
export function createStudyRun({ sitting, keep, record, typed }: StudySetUp): StudyRun {
  const state$ = new BehaviorSubject<StudyState>({ sitting, made: null });
  let state: StudyState = { sitting, made: null };
  /** Left, or failed: what comes then nobody would see, so nothing is kept of it. */
  let over = false;
  const fail = (error: unknown) => {
    over = true;
    state$.error(error);
  };
  const become = (work: () => StudyState) => {
    if (over || state.made !== null) return;
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
        if (isWhole()) become(() => ({ ...state, made: record(state.sitting) }));
      } else if (typeof command === 'string') hear({ kind: command });
      else {
        const figure = typed(command.typed);
        if (figure === null) return;
        if (figure.ok) hear({ kind: 'value', value: figure.value, from: 'hand' });
        else hear({ kind: 'refused', words: 'That is no figure that can be read.' });
      }
    },
  };
}
