/** The lines of a budget for the turn of a plug; every amount in degrees. */
import type { Term } from './term.ts';

/** What is known of one turn, strokes of a ratchet added up. */
export interface TurnDoubts {
  /** Standard uncertainty from step, drift over the strokes and noise. */
  readonly standardDeg: number;
  /** How far the tool may be off, as it says; null where it says nothing. */
  readonly toolDeg: number | null;
  readonly turnedDeg: number;
  /** How far contact may lie from where it was taken to be, to either side. */
  readonly contactDeg: number;
  /** How far the tools were wound up, all strokes added. */
  readonly windUpDeg: number;
}

/** Of a tool that says nothing: so much of the turn, and no less than so much. Assumption, of the size of small gyroscopes. */
const TOOL_SHARE = 0.02;
const TOOL_LEAST_DEG = 1;
/** Sockets, extension and the head of the wrench do not unwind quite as they wound up. Assumption. */
const UNWINDS_OTHERWISE = 0.05;

export function turnTerms({ standardDeg, toolDeg, turnedDeg, contactDeg, windUpDeg }: TurnDoubts): Term[] {
  const within = (cause: Term['cause'], source: Term['source'], amount: number): Term => ({
    cause,
    source,
    type: 'B',
    amount,
    distribution: { kind: 'rectangular' },
    sensitivity: 1,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  });
  const assumedDeg = Math.max(TOOL_LEAST_DEG, TOOL_SHARE * Math.abs(turnedDeg));
  return [
    {
      ...within('turn-reading', { kind: 'samples' }, standardDeg),
      distribution: { kind: 'standard' },
    },
    within('turn-tool', { kind: toolDeg === null ? 'assumption' : 'device' }, toolDeg ?? assumedDeg),
    within('contact', { kind: 'samples' }, Math.max(0, contactDeg)),
    within('wind-up', { kind: 'assumption' }, UNWINDS_OTHERWISE * Math.max(0, windUpDeg)),
  ];
}
