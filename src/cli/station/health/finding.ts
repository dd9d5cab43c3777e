import type { Problem } from '../../../problem.ts';

/** One thing that was looked at. `bad`: plugmark cannot do its work like this; `warning`: it can, with something less. */
export interface Finding {
  readonly name: string;
  readonly state: 'good' | 'warning' | 'bad';
  readonly text: string;
  /** What to do; with every warning and everything bad. */
  readonly next?: string;
}

export const good = (name: string, text: string): Finding => ({ name, state: 'good', text });
export const warning = (name: string, text: string, next: string): Finding => ({
  name,
  state: 'warning',
  text,
  next,
});
export const bad = (name: string, text: string, next: string): Finding => ({
  name,
  state: 'bad',
  text,
  next,
});

export const fromProblem = (
  name: string,
  { message, next, where }: Problem,
  state: 'warning' | 'bad' = 'bad',
): Finding => ({
  name,
  state,
  text: where === undefined ? message : `${message} (${where})`,
  next,
});
