/**
 * Said before the first pull: whether this tool, as it reads now, can prove the window of the order. Pulls of a calm hand to
 * the middle of the window are read as the tool reads, then detected and judged by the functions that every pull goes
 * through. So what is said here and what a pull gets come from the same guard band.
 */
import { createPullDetector } from '../pull/detector.ts';
import type { DetectedPull } from '../pull/pull.ts';
import type { DetectorSettings } from '../pull/settings.ts';
import type { ToolId } from '../reading.ts';
import { endsAtClick } from './click.ts';
import { judgedReading } from './judging.ts';
import { modelPull, type Reads } from './model-pull.ts';
import type { JobState } from './state.ts';
import { asWrenchReads } from './windows.ts';

/** What would let the tool prove the window: more readings a second, none lost, less noise; `nothing` of these alone. */
export type Lacks =
  | { readonly kind: 'rate'; readonly perSecond: number }
  | { readonly kind: 'loss' | 'noise' | 'nothing' };

export type Forecast =
  /** It sends one figure a pull. */
  | { readonly tool: ToolId; readonly kind: 'one-figure' }
  /** It sends no angle, and the order asks for one. */
  | { readonly tool: ToolId; readonly kind: 'no-angle' }
  | {
      readonly tool: ToolId;
      readonly kind: 'readings';
      readonly perSecond: number;
      readonly noiseNm: number;
      readonly lostShare: number;
      /** The window that is spoken of: of two steps the one that is harder to prove. */
      readonly lowerNm: number;
      readonly upperNm: number;
      /** So many of {@link MODEL_PULLS} were OK. */
      readonly ok: number;
      /** Null where it proves the window. */
      readonly lacks: Lacks | null;
    };

export const MODEL_PULLS = 20;
/** One in ten may be left over. */
const PROVES = 18;
/** A setting wrench is set to the middle, and is off by so much at most. Assumption. */
const SETTING_SHARE = 0.02;
/** A rate that is bought, not one that is computed. */
const RATES = [15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500, 1000];

/** What it rests on of a job. */
export type ForecastOf = Pick<JobState, 'torqueWindow' | 'instruments' | 'order'> & {
  readonly basis: Pick<JobState['basis'], 'on' | 'decision' | 'firstTorqueWindow' | 'turn'>;
};

export function forecast(
  state: ForecastOf,
  tool: ToolId,
  settings: DetectorSettings,
  reads: Reads,
): Forecast {
  const { firstTorqueWindow } = state.basis;
  const windows = [state.torqueWindow, ...(firstTorqueWindow === null ? [] : [firstTorqueWindow])];
  const clicks = endsAtClick(state, tool);
  const okIn = (window: (typeof windows)[number], as: Reads): number => {
    const { lowerNm, upperNm } = asWrenchReads(state, window, tool);
    const middleNm = (lowerNm + upperNm) / 2;
    return Array.from({ length: MODEL_PULLS }, (_, i) => i / MODEL_PULLS).filter((part) => {
      const peakNm = middleNm * (1 + SETTING_SHARE * Math.sin(2 * Math.PI * 3 * part));
      const pull = highest(settings, modelPull(as, peakNm, clicks, part));
      if (pull === null || (clicks && pull.release === 'none')) return false;
      return judgedReading(state, tool, pull.peakNm, window, pull.peakStandardNm).result === 'OK';
    }).length;
  };
  const harder = windows
    .map((window) => ({ window, ok: okIn(window, reads) }))
    .reduce((a, b) => (b.ok < a.ok ? b : a));
  const { lowerLimit: lowerNm, upperLimit: upperNm } = harder.window;
  const perSecond = 1e6 / reads.intervalUs;
  const { noiseNm, lostShare } = reads;
  const proves = (as: Partial<Reads>) => okIn(harder.window, { ...reads, ...as }) >= PROVES;
  const lacks = harder.ok >= PROVES ? null : lacking(reads, proves);
  return { tool, kind: 'readings', perSecond, noiseNm, lostShare, lowerNm, upperNm, ok: harder.ok, lacks };
}

function lacking({ intervalUs, lostShare }: Reads, proves: (as: Partial<Reads>) => boolean): Lacks {
  if (lostShare > 0 && proves({ lostShare: 0 })) return { kind: 'loss' };
  const rates = RATES.filter((rate) => rate > 1.05e6 / intervalUs);
  const perSecond = rates.find((rate) => proves({ intervalUs: 1e6 / rate, lostShare: 0 }));
  if (perSecond !== undefined) return { kind: 'rate', perSecond };
  return { kind: proves({ noiseNm: 0, lostShare: 0 }) ? 'noise' : 'nothing' };
}

function highest(
  settings: DetectorSettings,
  { atUs, nm }: ReturnType<typeof modelPull>,
): DetectedPull | null {
  const detector = createPullDetector(settings);
  const pulls = detector.pushBatch(atUs, nm, 0, nm.length);
  return pulls.reduce<DetectedPull | null>(
    (best, pull) => (best === null || pull.peakNm > best.peakNm ? pull : best),
    null,
  );
}
