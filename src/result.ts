import { type Problem, ProblemError } from './problem.ts';

/** An outcome that the caller must look at: either a value or the problem that prevented it. */
export type Result<T, E = Problem> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const err = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

/** The value, or the problem thrown as a {@link ProblemError}: for the shell, where nobody can do better. */
export function orThrow<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new ProblemError(result.error);
}
