import { z } from 'zod';
import { figureSourceSchema } from '../reading.ts';

const us = z.int().nonnegative();
const ms = z.number().nonnegative();

/**
 * How the torque came up to its first top (the click where one was seen, else the peak). A new gasket spends most of
 * this time low and then hardens; a tight plug rises in a straight line as fast as the wrench bends.
 */
export const riseSchema = z.strictObject({
  reachedMs: z
    .array(z.number())
    .length(9)
    .describe('Milliseconds from `startUs` at which 10, 20 … 90 % of the first top were reached.'),
  slopeAtTopNmPerS: z
    .number()
    .nonnegative()
    .describe('Mean slope from 80 % to the top: the pace of the hand when the click came.'),
  impulseNms: z.number().describe('∫ torque dt from start to first top.'),
  setbackNm: z
    .number()
    .nonnegative()
    .describe('How far the torque fell back at most on its way to the first top, beyond noise.'),
});
export type Rise = z.infer<typeof riseSchema>;

/**
 * How far the plug was turned. On the way up and on the way down the tools are wound up alike at the same torque, so what
 * lies between the two is the turn of the plug, whatever the extension. Degrees, in the direction of the pull.
 */
export const plugTurnSchema = z.strictObject({
  turnedDeg: z.number().describe('How far it was turned, wind-up of the tools taken off.'),
  standardDeg: z
    .number()
    .nonnegative()
    .describe('Standard uncertainty of that from step, drift over the pull and noise of the torque alone.'),
  fromNm: z.number().nonnegative().describe('The torque from which on it is counted.'),
  windUpDeg: z
    .number()
    .nullable()
    .describe(
      'How far the tools were wound up from there to the first top; null where it took several strokes.',
    ),
  contactDeg: z
    .number()
    .exactOptional()
    .describe(
      'How far before its first turn contact may lie, at most, by how the turn grew with the torque; absent where that cannot be said.',
    ),
  strokes: z.int().min(2).exactOptional().describe('How many strokes; absent for one.'),
  woundUpDeg: z
    .number()
    .nonnegative()
    .exactOptional()
    .describe('How far the tools were wound up in all of them, added; absent for one.'),
  reachedDeg: z
    .array(z.number())
    .length(9)
    .describe('How far the tool was turned from there to where 10, 20 … 90 % of the first top were reached.'),
});
export type PlugTurn = z.infer<typeof plugTurnSchema>;

/** How far the tool says that it was turned; includes the wind-up of wrench and extension. Degrees, in the direction of the pull. */
export const turnSchema = z.strictObject({
  startToPeakDeg: z.number().describe('From the start of the pull to its peak.'),
  from10PercentDeg: z
    .number()
    .describe('From 10 % of the first top to the peak (ISO 5393 counts the joint angle from there).'),
  from50PercentDeg: z.number().describe('From 50 % of the first top to the peak.'),
  workJ: z.number().describe('∫ torque dθ from start to peak.'),
  plug: plugTurnSchema
    .exactOptional()
    .describe('How far the plug was turned; absent where the pull was not seen to be let off.'),
});
export type Turn = z.infer<typeof turnSchema>;

/**
 * Why the angle of a pull says nothing although the tool sends one. `missing`: not with every reading. `jumped`: farther from
 * one reading to the next than anybody turns a tool, as where it starts again at a full turn. `stuck`: it stood still, and no
 * tool is so stiff. `backwards`: against the pull. `drifting`: it ran by itself while the tool was at rest.
 */
export const angleFaultSchema = z.enum(['missing', 'jumped', 'stuck', 'backwards', 'drifting']);
export type AngleFault = z.infer<typeof angleFaultSchema>;

/** A pull as found in the samples. Torque in N·m, zero taken off; times on the station's monotonic clock. */
export const detectedPullSchema = z.strictObject({
  startUs: us.describe('When it began.'),
  endUs: us.describe('When it ended.'),
  peakNm: z
    .number()
    .describe(
      'The highest torque, or the lowest where a plug was loosened; estimated from the samples about it.',
    ),
  peakUs: us.describe('When that was.'),
  peakStandardNm: z
    .number()
    .nonnegative()
    .describe('Standard uncertainty of `peakNm` from sampling, noise and zero alone.'),
  highestNm: z.number().describe('The highest single reading, with its sign.'),
  release: z
    .enum(['seen', 'none', 'not-visible'])
    .describe('Whether the click was seen. `not-visible`: samples lie too far apart to tell.'),
  releaseNm: z.number().nullable().describe('The torque of the click; null unless seen.'),
  releaseUs: us.nullable().describe('When it clicked.'),
  dropShare: z.number().nullable().describe('How far the torque fell behind the click, as a share of it.'),
  slightFall: z
    .strictObject({
      torqueNm: z.number().describe('From which torque.'),
      dropShare: z.number().describe('By what share of it.'),
    })
    .exactOptional()
    .describe(
      'A fall near the peak that was as quick as a click but too slight to be taken for one; only where no click was seen.',
    ),
  fallMs: ms
    .exactOptional()
    .describe('How long most of the fall took behind the first top, where one was seen that came to a hold.'),
  riseMs: ms.describe(
    'From 20 % to 80 % of the first top: long while a gasket is crushed, short on a tight plug.',
  ),
  rise: riseSchema.describe('How the torque rose.'),
  turn: turnSchema.nullable().describe('How far the tool was turned; null where it gives no angle.'),
  angleFault: angleFaultSchema
    .exactOptional()
    .describe('Why the angle that the tool sends says nothing of this pull; `turn` is then null.'),
  sinceLastMs: ms.nullable().describe('From the end of the pull before; null for the first one of a link.'),
  zeroNm: z.number().describe('What the wrench read at rest before the pull.'),
  zeroSettled: z.boolean().describe('False where too little rest came before to know the zero.'),
  noiseNm: z.number().nonnegative().describe('Standard deviation of a reading at rest.'),
  samples: z.int().min(1).describe('How many samples it has.'),
  intervalUs: z.number().nonnegative().describe('Usual step between samples.'),
  longestGapUs: us.describe('The longest step within the pull.'),
  saturated: z
    .boolean()
    .describe('The readings stood still at the end of the scale: the true peak may be higher.'),
  stream: z
    .enum(['samples', 'maxima'])
    .describe('Whether the tool sends the torque as it is, or the highest of a work cycle.'),
  cut: z
    .enum(['link-lost', 'stopped', 'tool-stopped'])
    .nullable()
    .describe('Why the samples end too early; null for a whole pull.'),
});
export type DetectedPull = z.infer<typeof detectedPullSchema>;

/** A found pull with its number within the job, from 1, and the tool that felt it. */
export const pullSchema = detectedPullSchema.extend({
  pull: z.int().min(1).describe('Number of the pull within the job.'),
  tool: z.string().min(1).max(32).describe('The tool that felt it.'),
  source: figureSourceSchema.describe('Where its samples came from.'),
});
export type Pull = z.infer<typeof pullSchema>;
