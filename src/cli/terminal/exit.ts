import { fileProblem } from '../../files/file-problem.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { printable } from '../../ui/printable.ts';

/** What the program's exit tells a script. */
export const EXIT = { done: 0, failed: 1, badInput: 2, untrusted: 3, otherRules: 4 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Nothing that a problem or a report says is longer. */
const MAX_LINE = 400;

/** Text that may hold something from outside, safe for one line of a terminal. */
export const safeLine = (text: string) => printable(text, MAX_LINE);

/** A problem as people read it: the place, what is wrong, what to do. */
export function problemText(problem: Problem): string {
  const place = problem.where === undefined ? '' : `${safeLine(problem.where)}: `;
  return `plugmark: ${place}${safeLine(problem.message)}\n  ${safeLine(problem.next)}\n`;
}

/** Runs a command; a problem becomes one sentence and an exit code, and so does what the file system refuses; a bug one line that says so. Never a stack trace. */
export async function guarded(command: () => Promise<ExitCode>): Promise<ExitCode> {
  try {
    return await command();
  } catch (error) {
    const problem = error instanceof ProblemError ? error.problem : fileProblem(error);
    if (problem !== null) {
      process.stderr.write(problemText(problem));
      return EXIT.badInput;
    }
    const text = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    process.stderr.write(
      problemText({
        code: 'bug',
        message: `a fault in the program itself: ${text}`,
        next: 'What was on disk is kept. Set PLUGMARK_TRACE=1 for the details that belong in a fault report.',
      }),
    );
    if (process.env['PLUGMARK_TRACE'] === '1' && error instanceof Error)
      process.stderr.write(`${error.stack}\n`);
    return EXIT.failed;
  }
}
