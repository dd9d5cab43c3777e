import { scaled, type ToolDescription } from '../reading.ts';

/** What a detector has to know of the job and of the tool. Torque in N·m. */
export interface DetectorSettings {
  /** A pull begins above this (or above six times the noise) and belongs to the job only if it got there. */
  readonly startNm: number;
  /** The step of the readings; 0 where it is not known. */
  readonly stepNm: number;
  /** Where the readings end; null where the tool does not say. */
  readonly capacityNm: number | null;
  /** `maxima`: the tool sends the highest torque of a work cycle and not the torque as it is. */
  readonly stream: 'samples' | 'maxima';
}

/** Common practice, no source: well above the feel of a socket that finds its hexagon, well below any torque that matters. */
const START_SHARE = 0.08;

/** Settings for a window whose lower limit is `lowerNm`, and for what is known of the tool. */
export function detectorSettings(lowerNm: number, tool: Partial<DetectorSettings> = {}): DetectorSettings {
  return { startNm: START_SHARE * lowerNm, stepNm: 0, capacityNm: null, stream: 'samples', ...tool };
}

/** The same with what a tool declared of itself. One step of its readings is `10^exponent` where it names no other. */
export function settingsFor(
  lowerNm: number,
  { exponent, resolutionCounts, samplingFunction, validRange }: ToolDescription,
): DetectorSettings {
  const ends = validRange === undefined ? 0 : Math.max(validRange.upperCounts, -validRange.lowerCounts);
  return detectorSettings(lowerNm, {
    stepNm: scaled(Math.max(1, resolutionCounts ?? 1), exponent),
    capacityNm: ends > 0 ? scaled(ends, exponent) : null,
    stream: samplingFunction === 'maximum' || samplingFunction === 'minimum' ? 'maxima' : 'samples',
  });
}
