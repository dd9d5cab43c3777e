import { createPullDetector } from '../pull/detector.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { type DetectorSettings, settingsFor } from '../pull/settings.ts';
import type { FigureSource, Reading, ToolDescription, ToolId } from '../reading.ts';
import type { JobEvent } from './event.ts';
import type { JobState } from './state.ts';
import { asWrenchReads } from './windows.ts';

/** What the bench keeps of a tool while it is linked: samples that are not written yet, and the search for pulls. */
export interface Feed {
  readonly exponent: number;
  /** Null where the tool sends no angle. */
  readonly angleExponent: number | null;
  readonly quantity: 'torque' | 'length';
  readonly source: FigureSource;
  readonly detector: PullDetector;
  first: number;
  atUs: number[];
  counts: number[];
  /** Of all of them, or of none. */
  angles: number[];
}

export function newFeed(
  { exponent, angle, quantity }: ToolDescription,
  source: FigureSource,
  settings: DetectorSettings,
): Feed {
  const detector = createPullDetector(settings);
  const angleExponent = angle?.exponent ?? null;
  return { exponent, angleExponent, quantity, source, detector, first: 0, atUs: [], counts: [], angles: [] };
}

/** How pulls are looked for in the readings of a tool: below the lowest window of the job, as the tool describes itself. */
export function detectionFor(tool: ToolDescription, state: JobState): DetectorSettings {
  const windows = [
    state.torqueWindow,
    ...(state.basis.firstTorqueWindow === null ? [] : [state.basis.firstTorqueWindow]),
  ];
  const lowerNm = Math.min(...windows.map((window) => asWrenchReads(state, window).lowerNm));
  return settingsFor(lowerNm, tool);
}

/** The event of a reading that carries no value of the tool as it is now. */
export function notAValue(tool: ToolId, reading: Exclude<Reading, { kind: 'value' }>): JobEvent {
  switch (reading.kind) {
    case 'not-known':
      return { type: 'value-not-known', tool, reading: reading.n, atUs: reading.atUs };
    case 'raw':
      return { type: 'raw-value', tool, atUs: reading.atUs, source: reading.source, hex: reading.hex };
    case 'missed':
      return {
        type: 'readings-missed',
        tool,
        fromUs: reading.fromUs,
        toUs: reading.atUs,
        ...(reading.readings !== undefined && { readings: reading.readings }),
        reason: reading.reason,
      };
    case 'stored': {
      const { kind: _kind, n, ...stored } = reading;
      return { type: 'value-stored', tool, reading: n, ...stored };
    }
  }
}
