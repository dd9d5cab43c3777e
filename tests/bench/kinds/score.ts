/** Holds what the program made of a job's pulls against what really happened. */
import type { TruePull } from '../../../sim/physics/truth.ts';
import type { Pull } from '../../../src/pull/pull.ts';
import type { PullKind } from '../../../src/sequence/kind.ts';
import type { DoneJob } from './jobs.ts';

type TrueKind = Exclude<PullKind, 'unsure'>;

/** A found pull, what it truly was, and what it was taken for before anybody was asked. */
export interface Scored {
  readonly pull: Pull;
  readonly truly: TrueKind;
  readonly trulyAlso: TrueKind;
  readonly onCylinder: number | null;
  readonly taken: PullKind;
  readonly given: number | null;
}

export interface Score {
  readonly pulls: readonly Scored[];
  /** Events that asked something, by what there was to ask. */
  readonly asked: readonly string[];
  /** Pulls that stand as the proof of a cylinder on which they were not, without a question ever about either. */
  readonly wrongOk: readonly Pull[];
  /** The same, though somebody was asked. */
  readonly wrongOkAsked: readonly Pull[];
  /** Cylinders called done whose plug did not click since it was fitted. */
  readonly looseDone: readonly number[];
}

const SAME_US = 2_000_000;
const SETTLED_US = 2_500_000;
/** A pause that lies so near a limit is one or the other. */
const NEAR_US = 450_000;

export function score(job: DoneJob): Score {
  const truths = trueKinds(job.truth.filter(({ measured }) => measured));
  const found = job.events.flatMap((event) => (event.type === 'pull-detected' ? [event] : []));
  const byHand = new Set(
    job.events.flatMap((event) =>
      event.type === 'question-answered' || event.type === 'pull-given' ? [event.pull] : [],
    ),
  );
  const asked = job.events.flatMap((event) =>
    event.type === 'pull-placed' && event.kind === 'unsure'
      ? [{ pull: event.pull, ask: event.ask ?? '' }]
      : [],
  );
  const onTruth = new Map<number, number | null>();
  const pulls = found.flatMap((pull): Scored[] => {
    const truth = strongest(truths, pull);
    if (truth === null) return [];
    onTruth.set(pull.pull, truth.pull.cylinder);
    const last = job.events
      .slice(0, job.events.findIndex((event) => handled(event, pull.pull)) + 1 || undefined)
      .findLast((event) => event.type === 'pull-placed' && event.pull === pull.pull);
    if (last?.type !== 'pull-placed') return [];
    return [
      {
        pull,
        truly: truth.kind,
        trulyAlso: truth.also,
        onCylinder: truth.pull.cylinder,
        taken: last.kind,
        given: last.cylinder,
      },
    ];
  });
  const wrong = job.state.cylinders.flatMap(({ cylinder, torque, pulls: attempts }) => {
    if (torque !== 'done') return [];
    const proof = attempts.findLast(
      ({ kind, judgement }) =>
        judgement?.result === 'OK' && (kind === 'tightening' || kind === 'continuation'),
    );
    return proof !== undefined && onTruth.get(proof.pull.pull) !== cylinder ? [proof.pull] : [];
  });
  const touched = new Set([...byHand, ...asked.map(({ pull }) => pull)]);
  return {
    pulls,
    asked: [
      ...asked.map(({ ask }) => ask),
      ...job.events.flatMap((event) =>
        event.type === 'pull-placed' && event.judgement?.side === 'high' ? ['over-window'] : [],
      ),
    ],
    wrongOk: wrong.filter(({ pull }) => !touched.has(pull)),
    wrongOkAsked: wrong.filter(({ pull }) => touched.has(pull)),
    looseDone: job.state.cylinders.flatMap(({ cylinder, torque }) =>
      torque === 'done' && !clickedSinceFitted(job.truth, cylinder) ? [cylinder] : [],
    ),
  };
}

/** The first thing that a person said about this pull. */
function handled(event: DoneJob['events'][number], pull: number): boolean {
  if (event.type === 'cylinder-left-out') return true;
  return (event.type === 'question-answered' || event.type === 'pull-given') && event.pull === pull;
}

function clickedSinceFitted(truth: readonly TruePull[], cylinder: number): boolean {
  const own = truth.filter((pull) => pull.cylinder === cylinder);
  return own
    .slice(own.findLastIndex(({ kind }) => kind === 'loosening') + 1)
    .some(({ releaseNm }) => releaseNm !== null);
}

interface TrulyPulled {
  readonly pull: TruePull;
  readonly kind: TrueKind;
  /** The other kind that is right as well where a pause lies near a limit. */
  readonly also: TrueKind;
}

/** A figure of a tool that sends one a pull comes so soon behind it. */
const FIGURE_BEHIND_US = 300_000;

function strongest(truths: readonly TrulyPulled[], { startUs, endUs, stream }: Pull): TrulyPulled | null {
  const lateUs = stream === 'maxima' ? FIGURE_BEHIND_US : 0;
  const under = truths.filter(({ pull }) => pull.startUs <= endUs && startUs <= pull.endUs + lateUs);
  return under.reduce<TrulyPulled | null>(
    (best, one) => (best === null || Math.abs(one.pull.peakNm) > Math.abs(best.pull.peakNm) ? one : best),
    null,
  );
}

/** What a tradesman would call each stroke, knowing what no wrench can know. */
function trueKinds(measured: readonly TruePull[]): TrulyPulled[] {
  return measured.map((pull, i) => {
    if (pull.kind === 'handling' || pull.kind === 'loosening') return only(pull, pull.kind);
    const own = measured.slice(0, i).filter(({ cylinder }) => cylinder === pull.cylinder);
    const since = pull.kind === 'tightening' ? [] : own.slice(own.findLastIndex(fittedBefore));
    const before = since.at(-1);
    const pauseUs = before === undefined ? 0 : pull.startUs - before.endUs;
    if (since.some(({ releaseNm }) => releaseNm !== null)) {
      const elsewhere = measured.slice(0, i).findLast(({ cylinder }) => cylinder !== null) !== before;
      if (elsewhere) return only(pull, 'check');
      return either(pull, pauseUs - SAME_US, 'rehit', 'check');
    }
    const next = measured.slice(i + 1).find(({ cylinder }) => cylinder !== null);
    const goesOn = next !== undefined && next.cylinder === pull.cylinder && next.kind !== 'loosening';
    const rested = since.some(
      (stroke, n) => (since[n + 1] ?? pull).startUs - stroke.endUs > SETTLED_US - NEAR_US,
    );
    const reached = rested ? 'continuation' : 'tightening';
    const surely = since.some(
      (stroke, n) => (since[n + 1] ?? pull).startUs - stroke.endUs > SETTLED_US + NEAR_US,
    );
    const also = surely || before === undefined ? reached : 'tightening';
    if (pull.releaseNm !== null || !goesOn) return { pull, kind: reached, also };
    const restUs = next.startUs - pull.endUs - SETTLED_US;
    if (restUs > NEAR_US) return { pull, kind: reached, also };
    return restUs > -NEAR_US ? { pull, kind: 'run-down', also: reached } : only(pull, 'run-down');
  });
}

const fittedBefore = ({ kind }: TruePull): boolean => kind === 'tightening' || kind === 'loosening';
const only = (pull: TruePull, kind: TrueKind): TrulyPulled => ({ pull, kind, also: kind });

function either(pull: TruePull, beyondUs: number, short: TrueKind, long: TrueKind): TrulyPulled {
  if (Math.abs(beyondUs) > NEAR_US) return only(pull, beyondUs < 0 ? short : long);
  return { pull, kind: short, also: long };
}
