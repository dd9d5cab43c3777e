import { z } from 'zod';
import type { DetectedPull } from '../pull/pull.ts';
import { rounded } from '../quantity/rounded.ts';
import { knockProbability, riseToMs, shapeFeatures, slowdown, turnedProbability } from './shape.ts';

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
  turned: share.describe('Probability that the plug turned.'),
  knock: share.describe('Probability that it was a knock and no stroke.'),
});
export type Evidence = z.infer<typeof evidenceSchema>;

/** The evidence in a pull. Probabilities are rounded: two machines must print the same. */
export function evidenceOf(pull: DetectedPull, sinceLastMs: number | null, heldNm: number): Evidence {
  const top = Math.abs(pull.releaseNm ?? pull.peakNm);
  const slower = slowdown(pull, heldNm);
  return {
    riseNmPerS: rounded((600 * top) / Math.max(1, pull.riseMs), 1),
    bend: rounded(shapeFeatures(pull).bend, 3),
    impulseNms: rounded(pull.rise.impulseNms, 3),
    workJ: pull.turn === null ? null : rounded(pull.turn.workJ, 3),
    angleDeg: pull.turn === null ? null : rounded(pull.turn.startToPeakDeg, 1),
    sinceLastMs: sinceLastMs === null ? null : Math.round(sinceLastMs),
    heldRiseMs: heldNm > 0 ? rounded(riseToMs(pull, heldNm), 1) : null,
    slowdown: slower === null ? null : rounded(slower, 2),
    turned: rounded(turnedProbability(pull), 6),
    knock: rounded(knockProbability(pull), 6),
  };
}
