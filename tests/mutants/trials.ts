/** The process that tries mutants, from outside: started when needed, ended with all it started where it does not answer. */
import { type ChildProcess, fork } from 'node:child_process';
import { join } from 'node:path';
import type { Mutant } from './mutators.ts';
import type { Answer, Request } from './trial.ts';

export interface Trials {
  /** Every test file once, unharmed, with what it reaches of the files written to the folder. */
  readonly reach: (files: readonly string[], tests: readonly string[]) => Promise<Answer>;
  readonly try: (
    mutant: Pick<Mutant, 'file' | 'start' | 'end' | 'by'>,
    tests: readonly string[],
    mostMs: number,
  ) => Promise<Answer | 'no-end'>;
  readonly end: () => void;
}

/** The unharmed tests take no longer, however busy the machine is. */
const REACH_MOST_MS = 1_800_000;

export function trials(root: string, folder: string): Trials {
  let child: ChildProcess | null = null;
  const started = () => {
    // A group of its own, so that its workers end with it.
    child ??= fork(join(import.meta.dirname, 'trial.ts'), {
      cwd: root,
      detached: true,
      execArgv: ['--import', 'tsx'],
      env: { ...process.env, REACHED_FOLDER: folder, NODE_ENV: 'test' },
    });
    return child;
  };
  const end = () => {
    if (child?.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    child = null;
  };
  const ask = (request: Request, mostMs: number): Promise<Answer | 'no-end'> =>
    new Promise((resolve, reject) => {
      const asked = started();
      const done = (act: () => void) => {
        clearTimeout(timer);
        asked.removeAllListeners();
        act();
      };
      const timer = setTimeout(() => {
        done(() => resolve('no-end'));
        end();
      }, mostMs);
      asked.once('message', (answer: Answer) => done(() => resolve(answer)));
      asked.once('exit', (code) => {
        child = null;
        done(() => reject(new Error(`the process that tries mutants ended with ${code}`)));
      });
      asked.send(request);
    });
  return {
    end,
    try: (mutant, tests, mostMs) => {
      const { file, start, end: to, by } = mutant;
      return ask({ ask: 'try', mutant: { file, start, end: to, by }, tests }, mostMs);
    },
    reach: async (files, tests) => {
      const answer = await ask({ ask: 'reach', files, tests }, REACH_MOST_MS);
      if (answer === 'no-end') throw new Error('the tests do not end, though nothing was changed');
      return answer;
    },
  };
}
