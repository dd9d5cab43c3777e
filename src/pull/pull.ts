import { z } from 'zod';

const us = z.int().nonnegative();

/** A pull as found in the samples. Torque in N·m, zero taken off; times on the station's monotonic clock. */
export const foundPullSchema = z.strictObject({
  startUs: us,
  endUs: us,
  /** Highest torque, or the lowest where a plug was loosened. */
  peakNm: z.number(),
  peakUs: us,
  /** The click: the first local maximum that noise cannot explain; null when the pull never released. */
  releaseNm: z.number().nullable(),
  releaseUs: us.nullable(),
  /** From 20 % to 80 % of the peak: long while a gasket is crushed, short on a plug that is already tight. */
  riseMs: z.number().nonnegative(),
  /** What the wrench read at rest before the pull. */
  zeroNm: z.number(),
  samples: z.int().min(1),
  /** Why the samples end before the let-off; null for a whole pull. */
  cut: z.enum(['link-lost', 'stopped']).nullable(),
});
export type FoundPull = z.infer<typeof foundPullSchema>;

/** A found pull with its number within the job, from 1, and the tool that felt it. */
export const pullSchema = foundPullSchema.extend({ pull: z.int().min(1), tool: z.string().min(1).max(32) });
export type Pull = z.infer<typeof pullSchema>;
