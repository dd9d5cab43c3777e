/** Plain questions on a terminal or a pipe, a line an answer. */
import { createInterface } from 'node:readline';
import { type Problem, ProblemError } from '../../problem.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { LONGEST_LINE } from './lines.ts';
import { wrapped } from './wrapped.ts';

export interface Dialogue {
  say(line: string): void;
  /** The next answer without the spaces around it. Throws a {@link ProblemError} when none comes any more. */
  ask(prompt: string): Promise<string>;
  /** The last answer was refused, and is asked for again. */
  refused?(): void;
  /** Somebody is there to try again. On a pipe the answers behind a wrong one would be taken for it. */
  readonly patient: boolean;
  /** Ends the questions; whoever reads on gets what a pipe still holds. */
  leave(): void;
  /** Ends the questions and the input with them. */
  close(): void;
}

/** What keeps answers from coming. */
const STOPPED = phrases({
  interrupted: 'the questions were broken off',
  ended: 'the input ended before the last question',
});

/** Where lines come from. It calls back whenever something was heard. */
interface Source {
  show(prompt: string): void;
  /** The next line that is there. */
  take(): string | undefined;
  ended(): boolean;
  /** Nothing is there to take: more is wanted. */
  more(): void;
  leave(): void;
}

/** Asks on standard input and output. Ctrl-C ends the questions with a problem, so that whoever asks can clean up. */
export function openDialogue(): Dialogue {
  const { stdin, stdout } = process;
  const patient = stdin.isTTY === true && stdout.isTTY === true;
  let interrupted = false;
  let look = () => {};
  const heard = () => look();
  const interrupt = () => {
    interrupted = true;
    look();
  };
  const source = patient ? fromTerminal(heard, interrupt) : fromPipe(heard);
  process.on('SIGINT', interrupt);
  const leave = () => {
    process.off('SIGINT', interrupt);
    source.leave();
  };
  return {
    patient,
    say: (text) => {
      const columns = stdout.columns ?? Number.POSITIVE_INFINITY;
      const lines = text.split('\n').flatMap((line) => wrapped(line, columns));
      stdout.write(`${lines.join('\n')}\n`);
    },
    ask: async (prompt) => {
      source.show(patient ? lastLine(prompt, stdout.columns) : prompt);
      const answer = await new Promise<string | null>((resolve) => {
        look = () => {
          const line = interrupted ? undefined : source.take();
          if (line === undefined && !interrupted && !source.ended()) return source.more();
          look = () => {};
          resolve(line ?? null);
        };
        look();
      });
      if (answer === null || !patient) stdout.write(`${answer ?? ''}\n`);
      if (answer === null) throw new ProblemError(brokenOff(interrupted ? 'interrupted' : 'ended'));
      return answer.trim();
    },
    leave,
    close: () => {
      leave();
      // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
      stdin.destroy();
    },
  };
}

/** Lines with their editing. What was typed ahead when the questions end was meant for no question, and is dropped. */
function fromTerminal(heard: () => void, interrupt: () => void): Source {
  // The screen, when it was there before, left the input so that it keeps no program waiting.
  process.stdin.ref();
  const lines = createInterface({ input: process.stdin, output: process.stdout, terminal: true });
  const waiting: string[] = [];
  let ended = false;
  lines.on('line', (line) => {
    waiting.push(line);
    heard();
  });
  lines.on('close', () => {
    ended = true;
    heard();
  });
  lines.on('SIGINT', interrupt);
  return {
    show: (prompt) => {
      lines.setPrompt(prompt);
      lines.prompt();
    },
    take: () => waiting.shift(),
    ended: () => ended,
    more: () => {},
    leave: () => lines.close(),
  };
}

/** Reads no further than it must, so that what stands behind the answers is left for whoever reads on. */
function fromPipe(heard: () => void): Source {
  const { stdin, stdout } = process;
  let rest = '';
  let ended = false;
  const onData = (text: string) => {
    // No answer is longer; of one that is, the end is not wanted, and its question refuses the rest.
    const end = rest.length > LONGEST_LINE ? text.indexOf('\n') : 0;
    rest += end < 0 ? '' : text.slice(end);
    stdin.pause();
    heard();
  };
  const onEnd = () => {
    ended = true;
    heard();
  };
  stdin.setEncoding('utf8').pause().on('end', onEnd);
  return {
    show: (prompt) => void stdout.write(prompt),
    take: () => {
      const end = rest.indexOf('\n');
      if (end < 0 && !(ended && rest !== '')) return undefined;
      const line = (end < 0 ? rest : rest.slice(0, end)).slice(0, LONGEST_LINE + 1);
      rest = end < 0 ? '' : rest.slice(end + 1);
      return line;
    },
    ended: () => ended,
    more: () => {
      stdin.off('data', onData).on('data', onData).resume();
    },
    leave: () => {
      stdin.off('data', onData).off('end', onEnd).pause();
      if (rest !== '') stdin.unshift(rest);
    },
  };
}

/** A question longer than the terminal is broken between words: its first lines are written, the last one takes the answer. */
function lastLine(prompt: string, columns = Number.POSITIVE_INFINITY): string {
  const lines = wrapped(prompt.trimEnd(), columns - 1);
  const last = lines.pop() ?? '';
  for (const line of lines) process.stdout.write(`${line}\n`);
  return last + prompt.slice(prompt.trimEnd().length);
}

function brokenOff(why: keyof typeof STOPPED): Problem {
  return {
    code: 'questions-stopped',
    message: STOPPED[why],
    next: w`Nothing was written. Start again when ready.`,
  };
}
