import type { CylinderState, JobState, TorqueAttempt } from '../job/state.ts';
import { snugOf } from '../pull/snug.ts';
import { fixed, w } from '../words/catalogue.ts';
import { torqueText } from './figures.ts';
import { cylinderVerdict, VERDICT_WORD, type Verdict, verdictOf } from './verdict.ts';
import { KIND_WORDS } from './words/index.ts';

/** The samples of one pull: milliseconds since its start, torque in N·m with the zero taken off. */
export interface Trace {
  readonly tMs: readonly number[];
  readonly nm: readonly number[];
}

/** The pulls given to one cylinder, in their order, for one plot. */
export interface CylinderPlot {
  readonly cylinder: number;
  readonly verdict: Verdict;
  readonly pulls: readonly PullPlot[];
  /** The same for all plots of a record, so that they can be compared by eye. */
  readonly scale: TorqueScale;
  /** The plot in words, for who cannot see it. */
  readonly alt: string;
}

export interface TorqueScale {
  readonly lowNm: number;
  readonly highNm: number;
}

/** One pull to draw. */
export interface PullPlot {
  readonly pull: number;
  readonly verdict: Verdict;
  /** Null when the record holds no samples of this pull. */
  readonly trace: Trace | null;
  /** How long the pull took, samples or not. */
  readonly durationMs: number;
  readonly peak: Mark;
  /** Null when the pull never released. */
  readonly release: Mark | null;
  /** When the parts came into firm contact; null where the turn was not measured. */
  readonly snugMs: number | null;
  /** The pull in words, for who cannot see it. */
  readonly words: string;
}

export interface Mark {
  readonly tMs: number;
  readonly nm: number;
}

const HEADROOM = 1.1;
/** N·m that no plug sees; a damaged tool's figures beyond are drawn at the edge. */
const OFF_SCALE = 1e6;

/** As many pulls as one plot over the whole width can show; the rest go on in another. */
const MOST_IN_ONE = 20;

/** Every pull that was given to a cylinder, in service order. */
export function cylinderPlots(state: JobState, traces: ReadonlyMap<number, Trace>): CylinderPlot[] {
  const given = state.cylinders.flatMap(({ pulls }) => pulls);
  const felt = given.flatMap(({ pull }) => [pull.peakNm, ...finite(traces.get(pull.pull))]);
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
  return state.cylinders.flatMap((cylinder) =>
    inChunks(cylinder.pulls).map((attempts) => plotOf(cylinder, attempts, traces, scale)),
  );
}

function inChunks(attempts: readonly TorqueAttempt[]): (readonly TorqueAttempt[])[] {
  const count = Math.ceil(attempts.length / MOST_IN_ONE);
  return Array.from({ length: count }, (_, i) => attempts.slice(i * MOST_IN_ONE, (i + 1) * MOST_IN_ONE));
}

function plotOf(
  state: CylinderState,
  attempts: readonly TorqueAttempt[],
  traces: ReadonlyMap<number, Trace>,
  scale: TorqueScale,
): CylinderPlot {
  const { cylinder } = state;
  const verdict = cylinderVerdict(state);
  const words = attempts.map(inWords).join(' ');
  return {
    cylinder,
    verdict,
    pulls: attempts.map((attempt) => pullPlot(attempt, traces.get(attempt.pull.pull))),
    scale,
    alt: w`Torque over time, cylinder ${cylinder}, ${VERDICT_WORD[verdict]}. ${words}`,
  };
}

function pullPlot(attempt: TorqueAttempt, trace: Trace | undefined): PullPlot {
  const { pull, judgement } = attempt;
  const { releaseNm, releaseUs } = pull;
  const since = (us: number) => (us - pull.startUs) / 1000;
  return {
    pull: pull.pull,
    verdict: verdictOf(judgement),
    trace: trace !== undefined && trace.nm.length > 1 ? trace : null,
    durationMs: since(pull.endUs),
    peak: { tMs: since(pull.peakUs), nm: pull.peakNm },
    release: releaseNm === null || releaseUs === null ? null : { tMs: since(releaseUs), nm: releaseNm },
    snugMs: snugMs(attempt, trace),
    words: inWords(attempt),
  };
}

/** When the torque first reached what it was at the snug point, which is known by its angle. */
function snugMs({ pull }: TorqueAttempt, trace: Trace | undefined): number | null {
  const plug = pull.turn?.plug;
  if (plug === undefined || trace === undefined) return null;
  const { runDownDeg } = snugOf(plug);
  const above = plug.reachedDeg.findIndex((deg) => deg >= runDownDeg);
  const tenths = above < 0 ? plug.reachedDeg.length : above + 1;
  const top = pull.releaseNm ?? pull.peakNm;
  const at = trace.nm.findIndex((nm) => nm >= (tenths / 10) * top);
  return at < 0 ? null : (trace.tMs[at] ?? null);
}

function inWords({ pull, kind, judgement }: TorqueAttempt): string {
  const { peakNm, peakUs, startUs, releaseNm } = pull;
  const release = releaseNm === null ? w`no release` : w`first release ${torqueText(releaseNm)}`;
  const after = fixed((peakUs - startUs) / 1e6, 2);
  return w`Pull ${pull.pull}, ${KIND_WORDS[kind]}, ${VERDICT_WORD[verdictOf(judgement)]}: peak ${torqueText(peakNm)} after ${after} s, ${release}.`;
}

function finite(trace: Trace | undefined): readonly number[] {
  return trace === undefined ? [] : trace.nm.filter(Number.isFinite);
}
