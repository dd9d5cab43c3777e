/** What a figure is worth as proof. It follows from where the figure came from; every reader of a job goes by this. */
import type { FigureSource } from '../reading.ts';
import { isByAngle } from './click.ts';
import { standsOutOfOrder } from './early.ts';
import { countingPulls } from './started.ts';
import type { CylinderState, JobState, TorqueAttempt } from './state.ts';

/**
 * `proven`: an instrument sent it. `attested`: a person answers for it, or for the device that typed it. `nothing`: it was
 * judged and shown, and says nothing about any engine.
 */
export type Worth = 'proven' | 'attested' | 'nothing';

export const WORTH: Readonly<Record<FigureSource, Worth>> = {
  linked: 'proven',
  typed: 'attested',
  replayed: 'nothing',
  simulated: 'nothing',
};

/** What figures that are worth nothing are marked with, wherever they are shown. */
export type Mark = Extract<FigureSource, 'replayed' | 'simulated'>;

export const markOf = (source: FigureSource): Mark | null =>
  source === 'replayed' || source === 'simulated' ? source : null;

/** The marks of a whole job, or of anything else that rests on figures of these sources; empty where nothing is marked. */
export function marksOf(sources: Iterable<FigureSource>): readonly Mark[] {
  const there = new Set(sources);
  return (['simulated', 'replayed'] as const).filter((mark) => there.has(mark));
}

/** How many cylinders stand on figures of each source. */
export type Counts = Readonly<Record<FigureSource, number>>;

/** The figures that the cylinders of a job stand on. */
export interface Figures {
  readonly torque: Counts;
  readonly gap: Counts;
}

/** What the cylinders of a job stand on, and what that is worth. */
export interface Proof {
  /** Every source of the job, also of figures on which nothing stands. */
  readonly sources: readonly FigureSource[];
  readonly figures: Figures;
  /** Who was at work when the typed ones of them were typed. */
  readonly attestedBy: readonly string[];
  /** The order names an angle in place of a torque: the cylinders stand on turns. */
  readonly byAngle: boolean;
}

export function proofOf(state: JobState): Proof {
  const typed = state.cylinders.flatMap((c) => [
    ...(gapSource(c) === 'typed' ? c.gaps : []),
    ...(torqueSource(c, isTwoSteps(state)) === 'typed'
      ? countingPulls(c).map(({ pull: { source }, ...rest }) => ({ source, ...rest }))
      : []),
  ]);
  const by = typed.flatMap(({ source, judgement, technician }) =>
    source === 'typed' && judgement?.result === 'OK' ? [technician] : [],
  );
  return {
    sources: state.sources,
    figures: figuresOf(state),
    attestedBy: [...new Set(by)],
    byAngle: isByAngle(state.basis),
  };
}

/** An instrument sent every gap and every torque that the cylinders stand on, each in its turn. */
export function isProvenThroughout(state: JobState): boolean {
  const { torque, gap } = figuresOf(state);
  const count = state.cylinders.length;
  const gaps = state.gapWindow === null ? gap.linked : count;
  const unmarked = marksOf(state.sources).length === 0;
  return torque.linked === count && gap.linked === gaps && unmarked && standsOutOfOrder(state).length === 0;
}

/** Tightened in two steps: what a cylinder stands on are two pulls. */
export const isTwoSteps = ({ basis }: Pick<JobState, 'basis'>): boolean => basis.firstTorqueWindow !== null;

export function figuresOf(state: Pick<JobState, 'cylinders' | 'basis'>): Figures {
  return {
    torque: counted(state.cylinders.map((c) => torqueSource(c, isTwoSteps(state)))),
    gap: counted(state.cylinders.map(gapSource)),
  };
}

function counted(sources: readonly (FigureSource | null)[]): Counts {
  const of = (wanted: FigureSource) => sources.filter((source) => source === wanted).length;
  return { linked: of('linked'), typed: of('typed'), replayed: of('replayed'), simulated: of('simulated') };
}

/** Where the gap that a cylinder stands on came from; null where it stands on none. */
export function gapSource({ gap, gaps }: CylinderState): FigureSource | null {
  return gap === 'done'
    ? (gaps.findLast(({ judgement, takenBack }) => judgement.result === 'OK' && takenBack !== true)?.source ??
        null)
    : null;
}

/** Where the torque that a cylinder stands on came from; of two steps the weaker one. Null where it stands on none. */
export function torqueSource(c: CylinderState, twoSteps: boolean): FigureSource | null {
  if (c.torque !== 'done') return null;
  const proofs = countingPulls(c).filter(isOk);
  const last = proofs.at(-1)?.pull.source ?? null;
  return twoSteps ? weakest(proofs.map(({ pull }) => pull.source)) : last;
}

const isOk = ({ judgement }: TorqueAttempt) => judgement?.result === 'OK';

const FROM_WEAKEST = ['simulated', 'replayed', 'typed', 'linked'] as const satisfies readonly FigureSource[];
const weakest = (sources: readonly FigureSource[]): FigureSource | null =>
  FROM_WEAKEST.find((source) => sources.includes(source)) ?? null;
