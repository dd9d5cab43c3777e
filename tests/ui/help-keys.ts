import type { JobState } from '../../src/job/state.ts';
import { helpLines } from '../../src/ui/help.ts';
import { newInputState } from '../../src/ui/input-state.ts';
import { draftFor } from '../../src/ui/panels/index.ts';

/** The printed keys that the help of a screen names. */
export function helpKeys(job: JobState): ReadonlySet<string> {
  const input = { ...newInputState(), draft: draftFor(null, job) };
  const names = helpLines(job, input).flatMap(([key]) => (key?.text ?? '').split(/[,\s]+/));
  const digits = names.some((name) => name === 'to') ? ['1', '2', '3', '4', '5', '6'] : [];
  return new Set([
    ...names.filter((name) => [...name].length === 1),
    ...(names.includes('space') ? [' '] : []),
    ...digits,
  ]);
}
