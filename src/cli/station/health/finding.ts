import type { Problem } from '../../../problem.ts';

/** One thing that was looked at. `bad`: plugmark cannot do its work like this; `warning`: it can, with something less. */
export interface Finding {
  readonly name: string;
  readonly state: 'good' | 'warning' | 'bad';
  readonly found: string;
  /** What to do; with every warning and everything bad. */
  readonly next?: string;
}

export const good = (name: string, found: string): Finding => ({ name, state: 'good', found });
export const warning = (name: string, found: string, next: string): Finding => ({
  name,
  state: 'warning',
  found,
  next,
});
export const bad = (name: string, found: string, next: string): Finding => ({
  name,
  state: 'bad',
  found,
  next,
});

export const fromProblem = (
  name: string,
  { message, next, where }: Problem,
  state: 'warning' | 'bad' = 'bad',
): Finding => ({
  name,
  state,
  found: where === undefined ? message : `${message} (${where})`,
  next,
});
