import type { JobState, TorqueAttempt } from '../job/state.ts';
import { figure } from './figures.ts';
import { KIND_WORD, VERDICT_WORD, type Verdict, verdictOf } from './verdict.ts';

/** The samples of one pull: milliseconds since its start, torque in N·m with the zero taken off. */
export interface Trace {
  readonly tMs: readonly number[];
  readonly nm: readonly number[];
}

/** One pull to draw. All plots of a record share the torque scale, so that they can be compared by eye. */
export interface PullPlot {
  readonly cylinder: number;
  readonly pull: number;
  readonly kind: string;
  readonly verdict: Verdict;
  /** Null when the record holds no samples of this pull. */
  readonly trace: Trace | null;
  /** How long the pull took, samples or not. */
  readonly durationMs: number;
  readonly peak: Mark;
  /** Null when the pull never released. */
  readonly release: Mark | null;
  readonly scale: { readonly lowNm: number; readonly highNm: number };
  /** The plot in words, for who cannot see it. */
  readonly alt: string;
}

export interface Mark {
  readonly tMs: number;
  readonly nm: number;
}

const HEADROOM = 1.1;
/** N·m that no plug sees; a damaged tool's figures beyond are drawn at the edge. */
const OFF_SCALE = 1e6;

/** Every pull that was given to a cylinder, in service order. */
export function pullPlots(state: JobState, traces: ReadonlyMap<number, Trace>): PullPlot[] {
  const placed = state.cylinders.flatMap(({ cylinder, pulls }) =>
    pulls.map((attempt) => ({ cylinder, attempt })),
  );
  const felt = placed.flatMap(({ attempt }) => [
    attempt.pull.peakNm,
    ...finite(traces.get(attempt.pull.pull)),
  ]);
  const scale = {
    lowNm:
      HEADROOM *
      Math.max(
        -OFF_SCALE,
        felt.reduce((low, nm) => Math.min(low, nm), 0),
      ),
    highNm:
      HEADROOM *
      Math.min(
        OFF_SCALE,
        felt.reduce((high, nm) => Math.max(high, nm), state.torqueWindow.upperLimit),
      ),
  };
  return placed.map(({ cylinder, attempt }) =>
    plotOf(cylinder, attempt, traces.get(attempt.pull.pull), scale),
  );
}

function plotOf(
  cylinder: number,
  attempt: TorqueAttempt,
  trace: Trace | undefined,
  scale: PullPlot['scale'],
): PullPlot {
  const { pull } = attempt;
  const since = (us: number) => (us - pull.startUs) / 1000;
  const peak = { tMs: since(pull.peakUs), nm: pull.peakNm };
  const release =
    pull.releaseNm === null || pull.releaseUs === null
      ? null
      : { tMs: since(pull.releaseUs), nm: pull.releaseNm };
  const verdict = verdictOf(attempt.judgement);
  const kind = KIND_WORD[attempt.kind];
  return {
    cylinder,
    pull: pull.pull,
    kind,
    verdict,
    trace: trace !== undefined && trace.nm.length > 1 ? trace : null,
    durationMs: since(pull.endUs),
    peak,
    release,
    scale,
    alt:
      `Torque over time, cylinder ${cylinder}, pull ${pull.pull}, ${kind}, ${VERDICT_WORD[verdict]}: ` +
      `peak ${figure(peak.nm, 'N.m')} N·m after ${(peak.tMs / 1000).toFixed(2)} s, ` +
      (release === null ? 'no release.' : `first release ${figure(release.nm, 'N.m')} N·m.`),
  };
}

function finite(trace: Trace | undefined): readonly number[] {
  return trace === undefined ? [] : trace.nm.filter(Number.isFinite);
}
