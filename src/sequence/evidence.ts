import { z } from 'zod';
import type { DetectedPull } from '../pull/pull.ts';
import { rounded } from '../quantity/rounded.ts';
import { measuredLogOdds, plugTurnOf, turnedBelow, type UsualTurns } from './measured-turn.ts';
import { bendOf, knockProbability, logistic, riseToMs, slowdown } from './shape.ts';
import { type Before, riseShape, turnedLogOdds, unevenness, usualRiseMs } from './turned.ts';

const share = z.number().min(0).max(1);

/** What a placement rests on; figures that the tool does not give are null. Goes into the record beside the verdict. */
export const evidenceSchema = z.strictObject({
  riseNmPerS: z.number().nonnegative().describe('Mean slope from 20 to 80 % of the first top.'),
  bend: z
    .number()
    .describe('ln(time from 20 to 50 % / time from 50 to 80 %): below 0 it grew softer towards the top.'),
  impulseNms: z.number().nonnegative().describe('∫ torque dt up to the first top.'),
  workJ: z.number().nullable().describe('∫ torque dθ up to the peak, wind-up of the wrench included.'),
  angleDeg: z.number().nullable().describe('Turned from start to peak.'),
  sinceLastMs: z
    .number()
    .nullable()
    .describe('From the end of the last pull on a plug; null for the first of a session.'),
  heldRiseMs: z
    .number()
    .nonnegative()
    .nullable()
    .describe('From 20 to 80 % of what the due plug had held before; null where it had not been pulled.'),
  slowdown: z
    .number()
    .nullable()
    .describe('How much slower it rose beyond that; null where that cannot be said.'),
  uneven: z
    .number()
    .nonnegative()
    .exactOptional()
    .describe(
      'How far its paces lie from those of a straight line, as ln; 0 for a spring under a steady hand.',
    ),
  comparedWith: z
    .int()
    .nonnegative()
    .exactOptional()
    .describe('How many pulls of this job that turned a plug it was held against.'),
  usualRiseMs: z
    .number()
    .nonnegative()
    .exactOptional()
    .describe('Their usual time from 20 to 80 %; missing where there were none.'),
  plugDeg: z
    .number()
    .exactOptional()
    .describe(
      'How far the plug turned, measured, wind-up of the tools taken off; absent where the tool sends no angle, or none that says anything. Where it is there, it alone decides whether the plug turned.',
    ),
  belowHeldDeg: z
    .number()
    .exactOptional()
    .describe('How much of that came below 0.85 of what the due plug had held before.'),
  turned: share.describe('Probability that the plug turned.'),
  turnedByPull: share
    .exactOptional()
    .describe(
      'The same by the pull alone: as if a plug that turns and a tight one were as likely beforehand.',
    ),
  knock: share.describe('Probability that it was a knock and no stroke.'),
});
export type Evidence = z.infer<typeof evidenceSchema>;

/** What was known of a plug when it was pulled. */
export interface Known extends Before {
  /** The highest torque that it had held. */
  readonly heldNm: number;
  /** ln of the odds that a pull at this point turns a plug. */
  readonly logOdds: number;
  /** How far those plugs turned, by the angle of the tool; empty where it sends none. */
  readonly usualTurns: UsualTurns;
}

/** What a plug holds it holds to the full; what lies near is left out. */
const BELOW_HELD = 0.85;

/** What was measured needs no more help from what is likely beforehand. */
const MEASURED_AT_MOST = Math.log(50);

/** The evidence in a pull. Probabilities are rounded: two machines must print the same. */
export function evidenceOf(pull: DetectedPull, sinceLastMs: number | null, known: Known): Evidence {
  const { heldNm, earlier, logOdds, usualTurns } = known;
  const top = Math.abs(pull.releaseNm ?? pull.peakNm);
  const slower = slowdown(pull, heldNm);
  const shape = riseShape(pull);
  const plug = plugTurnOf(pull);
  const belowHeld = plug === null || heldNm === 0 ? null : turnedBelow(plug, top, BELOW_HELD * heldNm);
  const odds = plug === null ? turnedLogOdds(shape, known) : measuredLogOdds(plug, usualTurns);
  return {
    riseNmPerS: rounded((600 * top) / Math.max(1, pull.riseMs), 1),
    bend: rounded(bendOf(pull), 3),
    impulseNms: rounded(pull.rise.impulseNms, 3),
    workJ: pull.turn === null ? null : rounded(pull.turn.workJ, 3),
    angleDeg: pull.turn === null ? null : rounded(pull.turn.startToPeakDeg, 1),
    sinceLastMs: sinceLastMs === null ? null : Math.round(sinceLastMs),
    heldRiseMs: heldNm > 0 ? rounded(riseToMs(pull, heldNm), 1) : null,
    slowdown: slower === null ? null : rounded(slower, 2),
    uneven: rounded(unevenness(shape), 3),
    comparedWith: earlier.length,
    ...(earlier.length === 0 ? {} : { usualRiseMs: rounded(usualRiseMs(earlier), 1) }),
    ...(plug === null ? {} : { plugDeg: rounded(plug.turnedDeg, 2) }),
    ...(belowHeld === null ? {} : { belowHeldDeg: rounded(belowHeld, 2) }),
    turnedByPull: rounded(logistic(odds), 6),
    turned: rounded(logistic((plug === null ? logOdds : Math.min(logOdds, MEASURED_AT_MOST)) + odds), 6),
    knock: rounded(knockProbability(pull), 6),
  };
}
