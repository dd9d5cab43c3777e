import type { WireOutcome } from '../plug/gap.ts';
import type { Answer, JobEventOf, ScrapReason } from './event.ts';

/** What a person can tell the job. Each becomes an event with who said it. */
export type Command =
  | {
      readonly do: 'choose-cylinder';
      readonly quantity: 'torque' | 'length' | 'old-plug';
      readonly cylinder: number;
    }
  | { readonly do: 'answer'; readonly pull: number; readonly answer: Answer }
  /** This pull was on that plug. */
  | { readonly do: 'give-pull'; readonly pull: number; readonly cylinder: number; readonly why: string }
  /** The plug of this cylinder was never tightened, as the pull in question showed. */
  | {
      readonly do: 'left-out';
      readonly pull: number;
      readonly cylinder: number;
      /** The tight plug that the pull in question was on. */
      readonly on: number;
      readonly why: string;
    }
  /** Back a plug off, proven or not, and start it again. */
  | {
      readonly do: 'start-again';
      readonly cylinder: number;
      readonly newPlug: boolean;
      readonly why: string;
    }
  /** The gap was looked at, because the specification permits no more. */
  | { readonly do: 'gap-inspected'; readonly cylinder: number; readonly sound: boolean }
  /** The two wires were tried. */
  | { readonly do: 'gap-wire'; readonly cylinder: number; readonly outcome: WireOutcome }
  /** The plug for this cylinder goes to the scrap. */
  | { readonly do: 'scrap-plug'; readonly cylinder: number; readonly reason: ScrapReason }
  /** The windows are right. */
  | { readonly do: 'confirm-windows' }
  /** No trial click before the first plug. */
  | { readonly do: 'skip-trial' }
  /** A list of the routine is done, each item as said. */
  | {
      readonly do: 'attest';
      readonly phase: JobEventOf<'steps-attested'>['phase'];
      readonly steps: JobEventOf<'steps-attested'>['steps'];
      /** All items were answered at once. */
      readonly together?: true;
    }
  | ({ readonly do: 'read-old-plugs' } & Omit<JobEventOf<'old-plugs-read'>, 'type'>)
  | ({ readonly do: 'check-new-plugs' } & Omit<JobEventOf<'new-plugs-checked'>, 'type'>)
  /** Something stated, or a gap read, counts no more. */
  | ({ readonly do: 'take-back' } & Omit<JobEventOf<'taken-back'>, 'type'>)
  /** The gap that came too early just now is kept, not proven; the one named answers for it. */
  | { readonly do: 'keep-gap'; readonly cylinder: number; readonly by: string; readonly reason: string }
  /** No wrench could reach it. */
  | {
      readonly do: 'fit-by-angle';
      readonly cylinder: number;
      readonly turn: string;
      readonly why: string;
    }
  /** A pull over the window stays; the one named answers for it. */
  | { readonly do: 'accept'; readonly pull: number; readonly by: string; readonly reason: string }
  /** Who works on the engine from here on; whoever answers for the job stays the same. */
  | { readonly do: 'at-work'; readonly person: string }
  /** Somebody else works on it from here on, and answers for it. */
  | { readonly do: 'hand-over'; readonly to: string }
  /** The job is to prove nothing, whatever was read. */
  | { readonly do: 'void'; readonly by: string; readonly reason: string }
  | { readonly do: 'close' };
