import { z } from 'zod';

const us = z.int().nonnegative();
const ms = z.number().nonnegative();

/**
 * How the torque came up to its first top (the click where one was seen, else the peak). A new gasket spends most of
 * this time low and then hardens; a tight plug rises in a straight line as fast as the wrench bends.
 */
export const riseSchema = z.strictObject({
  /** Milliseconds from `startUs` at which 10, 20 … 90 % of the first top were first reached; never falling. */
  reachedMs: z.array(z.number()).length(9),
  /** Mean slope from 80 % to the top, in N·m/s: what the hand did when the click came. */
  slopeAtTopNmPerS: z.number().nonnegative(),
  /** ∫ torque dt from start to first top, in N·m·s. */
  impulseNms: z.number(),
  /** How far the torque fell back on its way to the first top, at most, beyond noise; in N·m. */
  setbackNm: z.number().nonnegative(),
});
export type Rise = z.infer<typeof riseSchema>;

/** How far the tool says that it was turned; includes the wind-up of wrench and extension. Degrees, in the direction of the pull. */
export const turnSchema = z.strictObject({
  /** From the start of the pull to its peak. */
  startToPeakDeg: z.number(),
  /** From 10 % (ISO 5393 counts the joint angle from there) and from 50 % of the first top to the peak. */
  from10PercentDeg: z.number(),
  from50PercentDeg: z.number(),
  /** ∫ torque dθ from start to peak, in joules. */
  workJ: z.number(),
});
export type Turn = z.infer<typeof turnSchema>;

/** A pull as found in the samples. Torque in N·m, zero taken off; times on the station's monotonic clock. */
export const detectedPullSchema = z.strictObject({
  startUs: us,
  endUs: us,
  /** Highest torque, or the lowest where a plug was loosened; estimated from the samples about it, not the highest of them. */
  peakNm: z.number(),
  peakUs: us,
  /** Standard uncertainty of `peakNm` that comes from sampling, noise and zero alone, not from calibration. */
  peakStandardNm: z.number().nonnegative(),
  /** The highest single reading of the pull, with its sign. */
  highestNm: z.number(),
  /** `not-visible`: the samples lie too far apart, or a gap lies where the click would be, so nobody can tell. */
  release: z.enum(['seen', 'none', 'not-visible']),
  /** The click: the first local maximum with a fall behind it that neither noise nor a hand explains; null unless seen. */
  releaseNm: z.number().nullable(),
  releaseUs: us.nullable(),
  /** How far the torque fell behind the click, as a share of it; null unless seen. */
  dropShare: z.number().nullable(),
  /** From 20 % to 80 % of the first top: long while a gasket is crushed, short on a plug that is already tight. */
  riseMs: ms,
  rise: riseSchema,
  /** Null when the tool gives no angle. */
  turn: turnSchema.nullable(),
  /** From the end of the pull before to the start of this one; null for the first one of a link. */
  sinceLastMs: ms.nullable(),
  /** What the wrench read at rest before the pull. */
  zeroNm: z.number(),
  /** False when too little rest came before to know the zero, or when it was still moving. */
  zeroSettled: z.boolean(),
  /** Standard deviation of a reading at rest. */
  noiseNm: z.number().nonnegative(),
  samples: z.int().min(1),
  /** Usual step between samples as seen by the detector, and the longest one within the pull. */
  intervalUs: z.number().nonnegative(),
  longestGapUs: us,
  /** The readings stood still at the end of the scale: the true peak may be higher. */
  saturated: z.boolean(),
  /** Whether the tool sends torque as it is, or only the highest of a work cycle. */
  stream: z.enum(['samples', 'maxima']),
  /** Why the samples end before the let-off; null for a whole pull. */
  cut: z.enum(['link-lost', 'stopped']).nullable(),
});
export type DetectedPull = z.infer<typeof detectedPullSchema>;

/** A found pull with its number within the job, from 1, and the tool that felt it. */
export const pullSchema = detectedPullSchema.extend({
  pull: z.int().min(1),
  tool: z.string().min(1).max(32),
});
export type Pull = z.infer<typeof pullSchema>;
