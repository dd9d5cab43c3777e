import { openItems } from '../../job/closing.ts';
import type { JobState } from '../../job/state.ts';
import type { Step } from '../../pipeline/run-job.ts';
import { jobResult, outcomeOf } from '../../report/joining-results.ts';
import { programVersion } from '../help/version.ts';
import { stamp } from '../station/clock.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { openEventFile } from './event-file.ts';
import { type EventLine, eventLines } from './event-lines.ts';

/** Somebody who follows a job by its lines. */
export interface Follower {
  readonly started: (station: string, job: JobState, resumed: boolean) => void;
  readonly step: (step: Pick<Step, 'happened' | 'state'>) => void;
  readonly ended: (exit: ExitCode, record?: string) => void;
  readonly close: () => Promise<void>;
}

export const NOBODY: Follower = {
  started: () => {},
  step: () => {},
  ended: () => {},
  close: () => Promise.resolve(),
};

export function openFollower(path: string): Follower {
  const file = openEventFile(path);
  const lines = eventLines();
  const write = (line: EventLine) => file.write(line);
  let state: JobState | null = null;
  let over = false;
  const ended = (exit: ExitCode, record?: string) => {
    if (state === null || over) return;
    over = true;
    const outcome = outcomeOf(state);
    const { at } = stamp();
    write({
      kind: 'ended',
      at,
      outcome,
      exit,
      open: [...(state.closed?.open ?? openItems(state))],
      result: jobResult(state, outcome, at),
      ...(record !== undefined && { record }),
    });
  };
  return {
    started(station, job, resumed) {
      state = job;
      const program = `plugmark ${programVersion()}`;
      write({
        kind: 'started',
        form: 'plugmark/events/1',
        at: stamp().at,
        program,
        station,
        job: job.order.job,
        resumed,
      });
    },
    step(step) {
      state = step.state;
      for (const line of lines(step)) write(line);
    },
    ended,
    close() {
      // What ends a run in another way is a problem, and the job lies open.
      ended(EXIT.badInput);
      return file.close();
    },
  };
}
