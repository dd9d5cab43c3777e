import { z } from 'zod';
import { rounded } from '../quantity/rounded.ts';
import { scaled, type ToolDescription } from '../reading.ts';

/** What a detector has to know of the job and of the tool. Torque in N·m. */
export const detectorSettingsSchema = z
  .strictObject({
    startNm: z
      .number()
      .describe('A pull begins above this (or above six times the noise) and counts only if it got there.'),
    stepNm: z.number().describe('The step of the readings; 0 where it is not known.'),
    range: z
      .strictObject({
        lowerNm: z.number().describe('The lower end.'),
        upperNm: z.number().describe('The upper end.'),
      })
      .readonly()
      .nullable()
      .describe('Between which torques the readings mean anything; null where the tool does not state it.'),
    lagMs: z
      .number()
      .exactOptional()
      .describe(
        'By how much its own filter makes the tool lag behind the torque; absent where it states none.',
      ),
    stream: z
      .enum(['samples', 'maxima'])
      .describe('`maxima`: the tool sends the highest torque of a work cycle and not the torque as it is.'),
    angle: z
      .strictObject({
        stepDeg: z.number().nonnegative().describe('Its step.'),
        driftDegPerS: z.number().nonnegative().describe('How fast it may run by itself.'),
      })
      .readonly()
      .exactOptional()
      .describe('Of the angle that the tool sends, in degrees; absent where it sends none.'),
    silentMs: z
      .number()
      .describe(
        'After so long without a reading a tool of maxima has begun anew, though its figure is the same.',
      ),
  })
  .readonly();
export type DetectorSettings = z.infer<typeof detectorSettingsSchema>;

/** Common practice, no source: well above the feel of a socket that finds its hexagon, well below any torque that matters. */
const START_SHARE = 0.08;
/** A tool that says the same again and again leaves no longer pause, or not three times its own. Assumption. */
const SILENT_MS = 2000;
const SILENT_INTERVALS = 3;

/** A small gyroscope that was set to zero at rest runs by so much. Assumption, from memory of data sheets; taken where a tool states nothing. */
const DRIFT_DEG_PER_MIN = 10;

/** Settings for a window whose lower limit is `lowerNm`, and for what is known of the tool. */
export function detectorSettings(lowerNm: number, tool: Partial<DetectorSettings> = {}): DetectorSettings {
  const startNm = rounded(START_SHARE * lowerNm, 6);
  return { startNm, stepNm: 0, range: null, stream: 'samples', silentMs: SILENT_MS, ...tool };
}

/** The same with what a tool declared of itself. One step of its readings is `10^exponent` where it names no other. */
export function settingsFor(
  lowerNm: number,
  {
    exponent,
    resolutionCounts,
    samplingFunction,
    validRange,
    updateIntervalMs,
    bandwidthHz,
    angle,
  }: ToolDescription,
): DetectorSettings {
  return detectorSettings(lowerNm, {
    stepNm: scaled(Math.max(1, resolutionCounts ?? 1), exponent),
    range:
      validRange === undefined || validRange.upperCounts <= 0
        ? null
        : {
            lowerNm: scaled(validRange.lowerCounts, exponent),
            upperNm: scaled(validRange.upperCounts, exponent),
          },
    ...(bandwidthHz === undefined ? {} : { lagMs: rounded(1000 / (2 * Math.PI * bandwidthHz), 6) }),
    ...(angle === undefined
      ? {}
      : {
          angle: {
            stepDeg: rounded(scaled(Math.max(1, angle.resolutionCounts ?? 1), angle.exponent), 6),
            driftDegPerS: rounded((angle.driftDegPerMin ?? DRIFT_DEG_PER_MIN) / 60, 6),
          },
        }),
    silentMs: Math.max(SILENT_MS, SILENT_INTERVALS * (updateIntervalMs ?? 0)),
    stream: samplingFunction === 'maximum' || samplingFunction === 'minimum' ? 'maxima' : 'samples',
  });
}

/** Whether a reading stands at an end of the scale, or beyond: then nobody knows how high the torque was. */
export function endsScale({ range, stepNm }: DetectorSettings, readNm: number): boolean {
  if (range === null) return false;
  return readNm > 0
    ? readNm >= range.upperNm - stepNm
    : range.lowerNm < 0 && readNm <= range.lowerNm + stepNm;
}
