import type { PullStyle } from '../physics/style.ts';
import type { Random } from '../random.ts';

/** How often a person does what; probabilities for each pull, `skips` for the whole job. */
export interface Habits {
  /** Quick pull that does not feel for the click and follows through. */
  readonly hurries: number;
  readonly clicksTwice: number;
  readonly stopsShort: number;
  /** Leans on the wrench after the click. */
  readonly overpulls: number;
  /** Knocks or leans on the wrench before the pull, away from the plug. */
  readonly knocks: number;
  /** Loosens with the torque wrench, which one does not; otherwise with a plain ratchet. */
  readonly loosensWithWrench: number;
  /** Passes over one cylinder and goes on as if it were done. */
  readonly skips: number;
  /** Tries a plug again that is tight already, before the next one. */
  readonly checks: number;
  /** Having stopped short, goes to the next plug without a look at the screen. */
  readonly overlooks: number;
}

export const CAREFUL: Habits = {
  hurries: 0,
  clicksTwice: 0,
  stopsShort: 0,
  overpulls: 0,
  knocks: 0,
  loosensWithWrench: 0,
  skips: 0,
  checks: 0,
  overlooks: 0,
};

/** A person with the time against him. The shares are assumptions. */
export const HURRIED: Habits = {
  hurries: 0.8,
  clicksTwice: 0.1,
  stopsShort: 0.05,
  overpulls: 0.04,
  knocks: 0.08,
  loosensWithWrench: 0.5,
  skips: 0.05,
  checks: 0.05,
  overlooks: 0.3,
};

/** What a person is about to do with one plug. */
export type Manner = 'careful' | 'hurried' | 'short' | 'lean';

export function drawManner(habits: Habits, random: Random): Manner {
  if (random.chance(habits.overpulls)) return 'lean';
  if (random.chance(habits.stopsShort)) return 'short';
  return random.chance(habits.hurries) ? 'hurried' : 'careful';
}

/** The figures of one pull. All are assumptions as to what arms do, within the speeds that practice asks for. */
export function drawStyle(manner: Manner, random: Random): PullStyle {
  const quick = manner === 'hurried';
  const oneSweep = random.chance(0.35);
  return {
    speedDegPerS: quick ? random.uniform(90, 160) : random.uniform(50, 90),
    easeFromShare: manner === 'careful' ? random.uniform(0.75, 0.85) : null,
    reactionMs: quick ? random.uniform(120, 200) : random.uniform(60, 110),
    effortAfterShare: quick ? random.uniform(1, 1.1) : random.uniform(0.85, 0.95),
    followThroughDeg: quick ? random.uniform(0, 5) : 0,
    stopAtShare: manner === 'short' ? random.uniform(0.45, 0.82) : null,
    leanToShare: manner === 'lean' ? random.uniform(1.15, 1.4) : null,
    holdMs: random.uniform(30, 150),
    letOffDegPerS: quick ? random.uniform(120, 220) : random.uniform(60, 120),
    strokeDeg: oneSweep ? 280 : random.uniform(60, 130),
  };
}
