import type { Command } from '../../src/job/command.ts';
import type { PullStyle } from './style.ts';

/** What a person can do at the bench. Every action takes its time. */
export type BenchAction =
  | { readonly do: 'wait'; readonly ms: number }
  /** Puts the gauge to the plug and presses its button once. */
  | { readonly do: 'measure-gap'; readonly cylinder: number }
  | { readonly do: 'bend-electrode'; readonly cylinder: number; readonly byMm: number }
  /** Turns the plug in with the fingers until it stops. */
  | { readonly do: 'fit'; readonly cylinder: number }
  /** Puts the wrench on the plug and pulls, in as many strokes as it takes. */
  | { readonly do: 'pull'; readonly cylinder: number; readonly style: PullStyle }
  /** Loosens the plug and turns it out. */
  | { readonly do: 'loosen'; readonly cylinder: number; readonly with: 'wrench' | 'ratchet' }
  /** Takes a new plug out of the box in place of the one that was here. */
  | { readonly do: 'replace'; readonly cylinder: number }
  /** The wrench is knocked or leaned on, away from any plug. */
  | { readonly do: 'knock'; readonly peakNm: number };

/** A {@link BenchAction}, or something told to the program. */
export type Action = BenchAction | { readonly do: 'press'; readonly command: Command };
