/**
 * A torque that a person read off a wrench and typed. There are no samples: nothing is looked for in it. It is one figure on
 * the cylinder that is due, judged with the uncertainty of the wrench, and attested by whoever typed it.
 */
import type { DetectedPull, Pull } from '../pull/pull.ts';
import { roundedPull } from '../pull/rounded.ts';
import type { Placement } from '../sequence/place.ts';
import type { BenchState } from './bench-state.ts';
import type { Feed } from './feed.ts';
import { placed } from './placing.ts';
import { stoppedShort } from './situation.ts';
import type { JobState } from './state.ts';
import { takeInHand } from './take-pull.ts';

export function takeTypedTorque(
  bench: BenchState,
  tool: string,
  feed: Feed,
  { atUs, nm }: { readonly atUs: number; readonly nm: number },
): void {
  takeInHand(bench, tool);
  const pull: Pull = {
    ...roundedPull(asRead(atUs, nm)),
    pull: bench.state().pullCount + 1,
    tool,
    source: feed.source,
  };
  bench.emit({ type: 'pull-detected', ...pull });
  placed(bench, pull, placeOf(bench.state(), pull.pull));
}

/** To the cylinder that is due; while something else is asked, or where nobody knows the cylinder, it is asked. */
function placeOf(state: JobState, number: number): Placement {
  const { torqueTarget: cylinder, questions } = state;
  if (cylinder === null) return { cylinder: null, kind: 'handling', because: 'none-due' };
  const asked = questions[0];
  if (asked !== undefined)
    return { cylinder: asked.cylinder, kind: 'unsure', ask: 'held', because: 'during-question' };
  const kind = stoppedShort(state, cylinder, number) ? 'continuation' : 'tightening';
  return { cylinder, kind, because: 'given' };
}

/** All that samples would tell is as if there were none: nothing rose, nothing clicked, nothing was turned. */
function asRead(atUs: number, nm: number): DetectedPull {
  return {
    startUs: atUs,
    endUs: atUs,
    peakNm: nm,
    peakUs: atUs,
    peakStandardNm: 0,
    highestNm: nm,
    release: 'not-visible',
    releaseNm: null,
    releaseUs: null,
    dropShare: null,
    riseMs: 0,
    rise: { reachedMs: [0, 0, 0, 0, 0, 0, 0, 0, 0], slopeAtTopNmPerS: 0, impulseNms: 0, setbackNm: 0 },
    turn: null,
    sinceLastMs: null,
    zeroNm: 0,
    zeroSettled: true,
    noiseNm: 0,
    samples: 1,
    intervalUs: 0,
    longestGapUs: 0,
    saturated: false,
    stream: 'maxima',
    cut: null,
  };
}
