/** What is likely before a pull is seen, and what may be believed of it afterwards. */
import type { Evidence } from './evidence.ts';

/**
 * ln of the odds beforehand that a pull turns a plug. Assumptions: before anything was tightened a tight plug is one that
 * somebody else had tightened; in between one pull in 50 tries a tight one again, soon after a pull one in 15, and where
 * this plug was just backed out one in 300; when the last cylinder is due one in five, which is far too many, because
 * nothing comes after it.
 */
const BEFORE_ALL = Math.log(2000);
const IN_BETWEEN = Math.log(50);
const REFITTED = Math.log(300);
const AT_ONCE = Math.log(15);
const LAST_DUE = Math.log(4);
/** One in twenty who are asked for a trial click pulls the first plug. Assumption. */
const DOES_AS_ASKED = -Math.log(20);
/** What may be believed without asking. */
const SURE_TURNED = 0.98;
/**
 * A rise as uneven as this is surely bent, and less is enough. Of 864 jobs of the independent generator in which a plug was
 * left out the likeliest with such a rise came to 0.45.
 */
const BENT = 0.15;
const SURE_WHERE_BENT = 0.965;
/** Less uneven than this is a straight line: noise alone makes as much of it. */
const STRAIGHT = 0.04;
/** Enough to say that a stroke that proves nothing was on the next plug. */
export const LIKELY_NEXT = 0.9;
/** Below this the plug stood, as far as anybody can tell. */
export const STOOD = 0.5;

/** The part of a situation that says how likely a tight plug is. */
interface Due {
  readonly target: number | null;
  readonly refitted: boolean;
  readonly lastOpen: boolean;
  readonly lastTight: number | null;
  readonly trial: boolean;
}

/** ln of the odds that the plug of the pull that comes now turns. `soon`: another one reached the window a moment ago. */
export function beforehand(at: Due, soon: boolean): number {
  if (at.target === null) return 0;
  if (at.trial) return DOES_AS_ASKED;
  if (at.refitted) return at.lastOpen ? IN_BETWEEN : REFITTED;
  if (at.lastOpen) return LAST_DUE;
  if (at.lastTight === null) return BEFORE_ALL;
  return soon ? AT_ONCE : IN_BETWEEN;
}

/**
 * The plug turned, whatever the pull ended at: measured, or by a rise that says so. A straight line is no proof, however well
 * it goes with the ones before.
 */
export function surelyTurned(evidence: Evidence | undefined): boolean {
  const { turned = 0, uneven = 0, plugDeg } = evidence ?? {};
  if (plugDeg !== undefined) return turned >= SURE_TURNED;
  return uneven >= STRAIGHT && turned >= (uneven >= BENT ? SURE_WHERE_BENT : SURE_TURNED);
}
