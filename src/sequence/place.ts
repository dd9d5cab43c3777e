import type { FoundPull } from '../pull/pull.ts';
import type { PullKind } from './kind.ts';

/** What is known when a pull comes in. */
export interface Bench {
  /** The cylinder that is due; null when all are done. */
  readonly target: number | null;
  /** How the last pull on the due cylinder ended: on the way without a click, short of the window, or there was none. */
  readonly targetStarted: 'run-down' | 'short' | null;
  /** A person said that this cylinder's plug is to be backed out and fitted again. */
  readonly refitting: number | null;
  /** The cylinder of the last tightening that reached the window or went beyond it; null when none did. */
  readonly lastTight: number | null;
  /** A question is open: nothing may be given to a cylinder until it is answered. */
  readonly asking: boolean;
  /** The wrench releases with a click; a pull within the window without one has not ended yet. */
  readonly clicks: boolean;
  /** The torque window. */
  readonly lowerNm: number;
  readonly upperNm: number;
}

/** Where a pull goes, and why. `unsure` names the cylinder that the question is about. */
export interface Placement {
  readonly cylinder: number | null;
  readonly kind: PullKind;
  readonly because: string;
}

/** Below this share of the lower limit nothing was tightened. Common practice, no source. */
const HANDLING_BELOW = 0.2;
/** A stroke that ends below this share of the lower limit is on the way. Common practice, no source. */
const RUN_DOWN_BELOW = 0.6;
/**
 * Rise from 20 % to 80 % of the peak: a tight plug lets the torque rise as fast as the wrench bends, a plug that still
 * turns takes longer. Between the two figures nobody can tell. From the simulated joints; no published figures.
 */
const TIGHT_RISE_BELOW_MS = 110;
const TURNING_RISE_ABOVE_MS = 180;

/** Gives a pull to a cylinder by the order of service and by the shape of the pull; asks where that does not decide. */
export function place(pull: FoundPull, bench: Bench): Placement {
  const subject = bench.target ?? bench.lastTight;
  const peakNm = Math.abs(pull.peakNm);
  if (peakNm < HANDLING_BELOW * bench.lowerNm)
    return { cylinder: null, kind: 'handling', because: 'too little torque to turn a plug' };
  if (pull.peakNm < 0) return loosening(bench);
  if (subject === null) return { cylinder: null, kind: 'handling', because: 'no cylinder is due' };
  if (bench.asking) return unsure(subject, 'it came while a question was open');
  if (pull.cut !== null) return unsure(subject, 'its end is missing');
  return tightening(pull, bench, subject);
}

function tightening(pull: FoundPull, bench: Bench, subject: number): Placement {
  if (bench.target !== null && onTheWay(pull, bench))
    return {
      cylinder: bench.target,
      kind: 'run-down',
      because: pull.peakNm < bench.lowerNm ? 'it ended low' : 'it ended without a click',
    };
  if (bench.target !== null && bench.targetStarted === 'short')
    return { cylinder: bench.target, kind: 'continuation', because: 'this cylinder had stopped short' };
  if (bench.target !== null && bench.targetStarted === 'run-down')
    return { cylinder: bench.target, kind: 'tightening', because: 'it went on from the stroke before' };
  if (bench.lastTight === null)
    return { cylinder: subject, kind: 'tightening', because: 'the first plug of this engine' };
  if (pull.riseMs < TIGHT_RISE_BELOW_MS)
    return {
      cylinder: bench.lastTight,
      kind: 'rehit',
      because: `rose in ${ms(pull)}: the plug did not turn`,
    };
  if (bench.target === null) return unsure(subject, 'every cylinder is already done');
  if (pull.riseMs > TURNING_RISE_ABOVE_MS)
    return { cylinder: bench.target, kind: 'tightening', because: `rose in ${ms(pull)}: the plug turned` };
  return unsure(subject, `it rose in ${ms(pull)}: a tight plug or one that still turned`);
}

function onTheWay({ peakNm, releaseNm }: FoundPull, { clicks, lowerNm, upperNm }: Bench): boolean {
  if (peakNm < RUN_DOWN_BELOW * lowerNm) return true;
  return clicks && releaseNm === null && peakNm >= lowerNm && peakNm <= upperNm;
}

function loosening(bench: Bench): Placement {
  if (bench.refitting !== null)
    return { cylinder: bench.refitting, kind: 'loosening', because: 'this plug was to be backed out' };
  if (bench.lastTight === null)
    return { cylinder: null, kind: 'loosening', because: 'no plug was tight yet' };
  return unsure(bench.lastTight, 'a plug was loosened after it had been proven');
}

const unsure = (cylinder: number, because: string): Placement => ({ cylinder, kind: 'unsure', because });
const ms = (pull: FoundPull) => `${Math.round(pull.riseMs)} ms`;
