/** Plain questions on a terminal or a pipe, a line an answer. */
import { createInterface } from 'node:readline';
import { ProblemError } from '../problem.ts';

export interface Dialogue {
  say(line: string): void;
  /** The next answer without the spaces around it. Throws a {@link ProblemError} when none comes any more. */
  ask(prompt: string): Promise<string>;
  /** Somebody is there to try again. On a pipe the answers behind a wrong one would be taken for it. */
  readonly patient: boolean;
  close(): void;
}

/** What keeps answers from coming. */
const STOPPED = {
  interrupted: 'the questions were broken off',
  ended: 'the input ended before the last question',
} as const;

/** Asks on standard input and output. Ctrl-C ends the questions with a problem, so that whoever asks can clean up. */
export function openDialogue(): Dialogue {
  const { stdin, stdout } = process;
  const patient = stdin.isTTY === true && stdout.isTTY === true;
  const lines = createInterface(
    patient ? { input: stdin, output: stdout, terminal: true } : { input: stdin, terminal: false },
  );
  const waiting: string[] = [];
  let stopped: keyof typeof STOPPED | null = null;
  let look = () => {};
  const stop = (why: keyof typeof STOPPED) => () => {
    stopped ??= why;
    look();
  };
  const interrupted = stop('interrupted');
  lines.on('line', (line) => {
    waiting.push(line);
    look();
  });
  lines.on('close', stop('ended'));
  lines.on('SIGINT', interrupted);
  process.on('SIGINT', interrupted);
  return {
    patient,
    say: (line) => void stdout.write(`${line}\n`),
    ask: async (prompt) => {
      if (patient) {
        lines.setPrompt(prompt);
        lines.prompt();
      } else stdout.write(prompt);
      const answer = await new Promise<string | null>((resolve) => {
        const settle = (line: string | null) => {
          look = () => {};
          resolve(line);
        };
        look = () => {
          const line = stopped === 'interrupted' ? undefined : waiting.shift();
          if (line !== undefined) settle(line.trim());
          else if (stopped !== null) settle(null);
        };
        look();
      });
      if (answer === null || !patient) stdout.write(`${answer ?? ''}\n`);
      if (answer === null) throw new ProblemError(brokenOff(stopped ?? 'ended'));
      return answer;
    },
    close: () => {
      process.off('SIGINT', interrupted);
      lines.close();
      // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
      stdin.destroy();
    },
  };
}

function brokenOff(why: keyof typeof STOPPED) {
  return {
    code: `questions-${why}`,
    message: STOPPED[why],
    next: 'Nothing was written. Start again when ready.',
  };
}
