import type { Command } from '../src/job/command.ts';
import type { Action } from './physics/action.ts';
import type { Bench, Emission } from './physics/bench.ts';
import type { Scheduler } from './scheduler.ts';
import type { Screen } from './technician/screen.ts';
import type { Leaving } from './technician/technician.ts';

/** What joins a simulated person and bench to the program that is tried on them. */
export interface Work<S extends Screen> {
  readonly bench: Bench;
  readonly technician: Generator<Action, Leaving, S>;
  readonly scheduler: Scheduler;
  /** A reading leaves its tool; called when the scheduler's clock has come to it. */
  readonly deliver: (emission: Readonly<Emission>) => void;
  /** The screen as it is now. */
  readonly look: () => S;
  readonly press: (command: Command) => void;
  readonly signal: AbortSignal;
}

/**
 * Lets the technician work until he leaves or `signal` says stop: each of his actions moves the bench, each reading of
 * the bench is delivered at its time on the scheduler, and after each action he looks at the screen.
 */
export function work<S extends Screen>(job: Work<S>): Promise<Leaving> {
  const { bench, technician, scheduler, signal } = job;
  const originUs = scheduler.nowUs() - bench.nowUs;
  return new Promise((resolve, reject) => {
    const after = (us: number, run: () => void) => {
      scheduler.after(us, () => {
        if (signal.aborted) return resolve({ finished: false, why: 'was stopped' });
        try {
          run();
        } catch (error) {
          reject(error);
        }
      });
    };
    const act = (screen: S) => {
      const step = technician.next(screen);
      if (step.done === true) return resolve(step.value);
      if (step.value.do === 'press') {
        job.press(step.value.command);
        return after(0, () => act(job.look()));
      }
      bench.begin(step.value);
      go();
    };
    const go = () => {
      const emission = bench.next();
      if (emission === null) return after(originUs + bench.nowUs - scheduler.nowUs(), () => act(job.look()));
      after(originUs + emission.atUs - scheduler.nowUs(), () => {
        job.deliver(emission);
        go();
      });
    };
    after(0, () => act(job.look()));
  });
}
