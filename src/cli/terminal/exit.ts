import { fileProblem } from '../../files/file-problem.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { printable } from '../../ui/printable.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { warn } from './wrapped.ts';

/** What the program's exit tells a script. */
export const EXIT = {
  done: 0,
  failed: 1,
  badInput: 2,
  untrusted: 3,
  otherRules: 4,
  leftOpen: 5,
  void: 6,
  /** As in sysexits.h. */
  fault: 70,
} as const;
export type ExitName = keyof typeof EXIT;
export type ExitCode = (typeof EXIT)[ExitName];

/** One way to end: what a script sees, what people call it, and what it means of any command. */
interface ExitRow {
  readonly key: ExitName;
  readonly name: string;
  readonly meaning: string;
}

/** The one table of exit codes: the help of each command, the manual and the help of the program print from it. */
const EXIT_WORDS: Readonly<Record<ExitName, Omit<ExitRow, 'key'>>> = phrases({
  done: { name: 'done', meaning: 'done, and the answer is good' },
  failed: {
    name: 'failed',
    meaning: 'the answer is bad, or it could not be done; the output says why',
  },
  badInput: {
    name: 'bad input',
    meaning: 'the command line, a file or a device is not as it should be; one sentence says what to do',
  },
  untrusted: {
    name: 'not trusted',
    meaning: 'as it was sealed, but the signer is not on your trust list',
  },
  otherRules: {
    name: 'other rules',
    meaning: 'made or judged by a newer version of the program, whose form or rules this one does not know',
  },
  leftOpen: { name: 'left open', meaning: 'not finished; all that was read is kept' },
  void: {
    name: 'void',
    meaning: 'the job was declared void; its readings are kept and prove nothing',
  },
  fault: { name: 'fault', meaning: 'a fault in the program itself; what was on disk is kept' },
});

/** In the language of whoever reads it when it is read. */
const exitRow = (key: ExitName): ExitRow => ({
  key,
  get name() {
    return EXIT_WORDS[key].name;
  },
  get meaning() {
    return EXIT_WORDS[key].meaning;
  },
});

export const EXIT_TABLE: readonly ExitRow[] = [
  exitRow('done'),
  exitRow('failed'),
  exitRow('badInput'),
  exitRow('untrusted'),
  exitRow('otherRules'),
  exitRow('leftOpen'),
  exitRow('void'),
  exitRow('fault'),
];

/** Nothing that a problem or a report says is longer. */
const MAX_LINE = 400;

/** Text that may hold something from outside, safe for one line of a terminal. */
export const safeLine = (text: string) => printable(text, MAX_LINE);

/** A problem as people read it: the place, what is wrong, what to do. */
export function problemText(problem: Problem): string {
  const place = problem.where === undefined ? '' : `${safeLine(problem.where)}: `;
  return `plugmark: ${place}${safeLine(problem.message)}\n  ${safeLine(problem.next)}\n`;
}

/** Runs a command. A problem, or what the file system refuses, becomes one sentence; a bug becomes one line. Never a stack trace. */
export async function guarded(command: () => Promise<ExitCode>): Promise<ExitCode> {
  try {
    return await command();
  } catch (error) {
    const problem = error instanceof ProblemError ? error.problem : fileProblem(error);
    if (problem !== null) {
      warn(problemText(problem).trimEnd().split('\n'));
      return EXIT.badInput;
    }
    const text = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    process.stderr.write(
      problemText({
        code: 'bug',
        message: w`a fault in the program itself: ${text}`,
        next: w`Nothing on disk is lost. Run it again with PLUGMARK_TRACE=1 and report the details.`,
      }),
    );
    if (process.env['PLUGMARK_TRACE'] === '1' && error instanceof Error)
      process.stderr.write(`${error.stack}\n`);
    return EXIT.fault;
  }
}
