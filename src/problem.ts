import type { z } from 'zod';
import type { ProblemCode } from './problem-code.ts';
import { w } from './words/catalogue.ts';

/**
 * Something wrong that a person can act on. `where` is the place (file, JSON path, byte offset, field),
 * `message` one sentence on what is wrong and what was expected, `next` what to do about it.
 */
export interface Problem {
  readonly code: ProblemCode;
  readonly message: string;
  readonly next: string;
  readonly where?: string;
}

/** A {@link Problem} on its way up through code that cannot handle it; the command line prints it as one sentence. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly problem: Problem;

  constructor(problem: Problem, options?: { readonly cause?: unknown }) {
    super(problem.message, options);
    this.problem = problem;
  }
}

/** JSON path as people write it: `cylinders[2].torque`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (text, part) =>
      typeof part === 'number' ? `${text}[${part}]` : text === '' ? String(part) : `${text}.${String(part)}`,
    '',
  );
}

/** The first zod issue as a {@link Problem} that names the file and the JSON path. */
export function problemFromZod(error: z.ZodError, file: string, code: ProblemCode, next: string): Problem {
  const issue = error.issues[0];
  const more = error.issues.length - 1;
  const path = issue === undefined ? '' : pathText(issue.path);
  return {
    code,
    where: path === '' ? file : `${file}: ${path}`,
    message: `${issue?.message ?? w`not readable`}${more > 0 ? w` (and ${more} more)` : ''}`,
    next,
  };
}
