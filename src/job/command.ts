import type { Answer } from './event.ts';

/** What a person can tell the job. Each becomes an event with who said it. */
export type Command =
  | { readonly do: 'choose-cylinder'; readonly quantity: 'torque' | 'length'; readonly cylinder: number }
  | { readonly do: 'answer'; readonly pull: number; readonly answer: Answer }
  | { readonly do: 'close' };
