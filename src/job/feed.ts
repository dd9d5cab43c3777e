import { createPullDetector } from '../pull/detector.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { type DetectorSettings, settingsFor } from '../pull/settings.ts';
import type { FigureSource, Reading, ToolDescription, ToolId } from '../reading.ts';
import { isByAngle } from './click.ts';
import type { JobEvent } from './event.ts';
import { type Forecast, forecast } from './forecast.ts';
import type { JobState } from './state.ts';
import { withToolInUse } from './tool-in-use.ts';
import { asWrenchReads } from './windows.ts';

/** What the bench keeps of a tool while it is linked: samples that are not written yet, and the search for pulls. */
export interface Feed {
  readonly exponent: number;
  /** Null where the tool sends no angle. */
  readonly angleExponent: number | null;
  readonly quantity: 'torque' | 'length';
  readonly source: FigureSource;
  readonly driver: string;
  readonly detector: PullDetector;
  readonly settings: DetectorSettings;
  /** Of its values: when the first and the last came, and how many; and how many the tool's own count says are missing. */
  arrived: { firstUs: number; lastUs: number; values: number; missed: number };
  /** What was worked out of how it reads; undefined until it could be. */
  forecast: Forecast | undefined;
  first: number;
  atUs: number[];
  counts: number[];
  /** Of all of them, or of none. */
  angles: number[];
}

export function newFeed(
  { exponent, angle, quantity }: ToolDescription,
  { source, driver }: Pick<Feed, 'source' | 'driver'>,
  settings: DetectorSettings,
): Feed {
  const detector = createPullDetector(settings);
  const angleExponent = angle?.exponent ?? null;
  const arrived = { firstUs: 0, lastUs: 0, values: 0, missed: 0 };
  const none = { first: 0, atUs: [], counts: [], angles: [], forecast: undefined };
  return { exponent, angleExponent, quantity, source, driver, settings, detector, arrived, ...none };
}

/** How pulls are looked for in the readings of a tool: below the lowest window of the job, as the tool describes itself. */
export function detectionFor(id: ToolId, tool: ToolDescription, job: JobState): DetectorSettings {
  const state = withToolInUse(job, id);
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
    case 'contradicted':
      return { type: 'profile-contradicted', tool, atUs: reading.atUs, because: reading.because };
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

/** Fewer are a matter of how rates are estimated. */
const LOST_FROM = 0.05;

/** What this tool can prove, as soon as it has shown how it reads; worked out once a link. */
export function forecastOf(tool: ToolId, feed: Feed, state: JobState): Forecast | null {
  if (feed.quantity !== 'torque') return null;
  const { turn } = state.basis;
  if (turn !== undefined && feed.angleExponent === null) return { tool, kind: 'no-angle' };
  if (feed.settings.stream === 'maxima') return { tool, kind: 'one-figure' };
  // What its torque proves is not what an order by angle asks.
  if (isByAngle(state.basis)) return null;
  const shown = feed.forecast === undefined ? feed.detector.atRest() : null;
  if (shown !== null) {
    const lostShare = lostOf(feed, shown.intervalUs);
    const reads = { ...shown, stepNm: feed.settings.stepNm, lostShare };
    feed.forecast = forecast(withToolInUse(state, tool), tool, feed.settings, reads);
  }
  return feed.forecast ?? null;
}

/** Where the tool counts its readings, what it says; else what its own usual step leaves open. */
function lostOf({ arrived: { firstUs, lastUs, values, missed } }: Feed, intervalUs: number): number {
  const due = missed > 0 ? values + missed : (lastUs - firstUs) / intervalUs + 1;
  const share = 1 - values / due;
  return share > LOST_FROM ? share : 0;
}
