/** What is known when a pull comes in, and where it goes: what all rules of placing have in common. */
import type { Evidence } from './evidence.ts';
import type { Ask, PullKind } from './kind.ts';
import type { UsualTurns } from './measured-turn.ts';
import type { PlacementReason } from './reason.ts';
import type { RiseShape } from './turned.ts';

/** What is known when a pull comes in. */
export interface Situation {
  /** The cylinder that is due; null when all are done. */
  readonly target: number | null;
  /** It is the only one left: one who had left a plug out would now find the last one tight. */
  readonly lastOpen: boolean;
  /** How the due cylinder stands: a stroke without a click just now, short of the window, or nothing yet. */
  readonly started: 'stroke' | 'short' | null;
  /** The highest torque that the due cylinder's plug has held since it was fitted. */
  readonly startedNm: number;
  /** One of those pulls surely turned it. */
  readonly startedTurning: boolean;
  /** The due plug was backed out in this job. */
  readonly refitted: boolean;
  /** The next open cylinder behind the due one on which nothing was pulled; null for none. */
  readonly next: number | null;
  /** Plugs of this job that turned under one pull of the same tool. */
  readonly earlier: readonly RiseShape[];
  /** How far they turned, by the angle of the tool; empty where it sends none. */
  readonly usualTurns: UsualTurns;
  /** The last pull on a plug in this session, and what it left there. */
  readonly last: LastPull | null;
  /** A person said that this cylinder's plug is to be backed out and fitted again. */
  readonly refitting: number | null;
  /** The cylinder of the last pull that reached the window or went beyond it; null when none did. */
  readonly lastTight: number | null;
  /** The cylinder that an open question is about: no pull may prove anything until it is answered. */
  readonly asking: number | null;
  /** Every open question only wants the cylinder confirmed that the order of work gave a pull to. */
  readonly confirming: boolean;
  /** The cylinder that is due, no question being open about it, else the next such one; null for none. */
  readonly planned: number | null;
  /** The due cylinder does not follow the last one in the order of work, and nobody chose it: hands may be at another. */
  readonly jumped?: boolean;
  /** The cylinder of a proven plug that a person chose to try again. */
  readonly chosen: number | null;
  /** Somebody was asked to try the click before the first plug, and has not yet. */
  readonly trial: boolean;
  /** By what share the torque falls at a click of this wrench, where that is too slight to be seen otherwise; else null. */
  readonly slightDrop: number | null;
  /** The wrench releases with a click; a pull within the window without one has not ended yet. */
  readonly clicks: boolean;
  /** The torque window. */
  readonly lowerNm: number;
  readonly upperNm: number;
}

export interface LastPull {
  readonly cylinder: number;
  readonly endUs: number;
  /** What was asked about it and is not answered, where it had not reached the end; null otherwise. */
  readonly asked: Ask | null;
  /** It reached the window: what comes at once is on the same plug. */
  readonly tight: boolean;
  /** It was a stroke that left its plug short of the window. */
  readonly short: boolean;
  /** Probability that it was a knock, should it have been a low stroke. */
  readonly knock: number;
}

/** Where a pull goes, and why. `unsure` names the cylinder that the question is about. */
export interface Placement {
  readonly cylinder: number | null;
  readonly kind: PullKind;
  readonly because: PlacementReason;
  /** The other pull that it was placed with, or that went on from it. */
  readonly otherPull?: number;
  /** The cylinder that was left out, so that this pull moved on. */
  readonly leftOut?: number;
  /** What there is to ask; only with `unsure`. */
  readonly ask?: Ask;
  readonly evidence?: Evidence;
}

/** Somebody has to say. */
export const asks = (ask: Ask, cylinder: number, because: PlacementReason): Placement => ({
  cylinder,
  kind: 'unsure',
  ask,
  because,
});
