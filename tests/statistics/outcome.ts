import { orThrow, type Result } from '../../src/result.ts';

/** The value of a result that must not be a problem. */
export const accepted = <T>(result: Result<T>): T => orThrow(result);

/** The code of a result that must be a problem, with its place. */
export function problemOf<T>(result: Result<T>): {
  readonly code: string;
  readonly where: string | undefined;
} {
  if (result.ok) throw new Error('expected a problem, got a value');
  return { code: result.error.code, where: result.error.where };
}
