import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import type { Observable, Subject } from 'rxjs';
import type { Tool } from '../../drivers/driver.ts';
import { due, type Exercise, measured, takenBack } from '../audit/gauge-exercise.ts';
import { ProblemError } from '../problem.ts';
import { figure, UNIT_TEXT, type Unit } from '../report/figures.ts';
import { safeLine } from './exit.ts';
import type { StudyValue } from './study-values.ts';

export interface Session {
  readonly value$: Observable<StudyValue>;
  /** Where lines go that are no commands: figures that somebody, or a gauge, typed. */
  readonly typed$: Subject<string>;
  readonly unit: Unit;
  readonly connect: Tool['connect'];
  /** Commands, a line each; destroyed at the end. */
  readonly input: Readable;
  readonly say: (line: string) => void;
}

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** One reading after the other, in plain lines; null where somebody left before the end. Throws what the tool cannot. */
export function exerciseWith(begun: Exercise, session: Session): Promise<Exercise | null> {
  const { value$, typed$, unit, connect, input, say } = session;
  let exercise = begun;
  const keyboard = createInterface({ input, terminal: false });
  const ask = () => {
    const next = due(exercise);
    if (next === null) return;
    const { appraiser, part, trial, step, steps } = next;
    say(`[${step} of ${steps}] trial ${trial}: ${safeLine(appraiser)}, measure part ${safeLine(part)}`);
  };
  say('"back" and Enter takes the last reading back, "quit" leaves without recording.');
  return new Promise<Exercise | null>((resolve, reject) => {
    const release = () => {
      taking.unsubscribe();
      keyboard.removeAllListeners();
      keyboard.close();
      // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
      input.destroy();
      for (const signal of SIGNALS) process.off(signal, leave);
    };
    const end = (outcome: Exercise | null) => {
      release();
      resolve(outcome);
    };
    const leave = () => end(null);
    const taking = value$.subscribe((one) => {
      if (one.kind === 'said') return say(safeLine(one.words));
      exercise = measured(exercise, one.value);
      say(`  ${figure(one.value, unit)} ${UNIT_TEXT[unit]}`);
      if (due(exercise) === null) end(exercise);
      else ask();
    });
    for (const signal of SIGNALS) process.on(signal, leave);
    keyboard.on('line', (line) => {
      const command = line.trim().toLowerCase();
      if (command === 'quit') return leave();
      if (command !== 'back') return typed$.next(line);
      exercise = takenBack(exercise);
      ask();
    });
    keyboard.on('close', () => {
      if (due(exercise) !== null) leave();
    });
    // Joined before the first question, so that no answer to it is missed.
    const joining = connect();
    ask();
    void joining.then((joined) => {
      if (joined.ok) return;
      release();
      reject(new ProblemError(joined.error));
    });
  });
}
