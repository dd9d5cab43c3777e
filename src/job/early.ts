/**
 * What came before its turn. It follows from the order in which things happened, and from nothing that a person or a station
 * states: a step was done behind so many pulls, and a plug that was pulled on by then went in before it.
 */
import { ALL_FREE, type OrderOfWork, type Step } from './order-of-work.ts';
import type { OutOfOrder } from './out-of-order.ts';
import { itemsOf, type ListPhase, type Routine } from './routine.ts';
import { strokesOnPlug } from './started.ts';
import { type CylinderState, isOver, type JobState, type TorqueAttempt } from './state.ts';

/** Steps of the whole engine that come before the first pull, and those of each plug. */
const OF_ENGINE = ['windows', 'before-removal', 'fitting'] as const satisfies readonly Step[];
const OF_PLUG = ['old-plugs', 'new-plugs', 'gap'] as const satisfies readonly Step[];

type WithBasis = Pick<JobState, 'basis'>;
const orderIn = ({ basis }: WithBasis): OrderOfWork => basis.orderOfWork ?? ALL_FREE;
export const strictnessOf = (state: WithBasis, step: Step): OrderOfWork[Step] => orderIn(state)[step];

/** The routine of the job asks for this step. */
function isAsked(step: Step, routine: Routine | null): boolean {
  if (step === 'gap') return true;
  if (routine === null) return false;
  switch (step) {
    case 'windows':
      return routine.confirmWindows;
    case 'old-plugs':
      return routine.oldPlugs;
    case 'new-plugs':
      return routine.newPlugs;
    default:
      return itemsOf(routine, step).length > 0;
  }
}

const listDone = ({ routine, attested }: JobState, list: ListPhase): boolean =>
  routine === null || itemsOf(routine, list).every(({ id }) => Object.hasOwn(attested, id));

function isDoneOnEngine(state: JobState, step: (typeof OF_ENGINE)[number]): boolean {
  return step === 'windows' ? state.windowsConfirmed : listDone(state, step);
}

function isDoneOnPlug(state: JobState, step: (typeof OF_PLUG)[number], c: CylinderState): boolean {
  switch (step) {
    case 'old-plugs':
      return (state.oldPlugs[c.cylinder]?.read ?? null) !== null;
    case 'new-plugs':
      return state.newPlugs[c.cylinder]?.differs.length === 0;
    case 'gap':
      return isOver(c.gap);
  }
}

const keyOf = (step: Step, cylinder: number): string => `${step} ${cylinder}`;

/** The state with, for each step that is done, the number of the last pull when that was so for the first time. */
export function withStepsDone(state: JobState): JobState {
  const since = (key: string) => [key, state.doneAfter[key] ?? state.pullCount] as const;
  const ofEngine = OF_ENGINE.filter((step) => isDoneOnEngine(state, step)).map(since);
  const ofPlugs = state.cylinders.flatMap((c) =>
    OF_PLUG.filter((step) => isDoneOnPlug(state, step, c)).map((step) => since(keyOf(step, c.cylinder))),
  );
  return { ...state, doneAfter: Object.fromEntries([...ofEngine, ...ofPlugs]) };
}

/** The plug is in its hole: its gap can no longer be measured. */
export const isFitted = (c: CylinderState): boolean =>
  c.settlement?.kind === 'by-angle' ||
  strokesOnPlug(c).some(({ kind }) => kind !== 'unsure' && kind !== 'handling');

const isLate = ({ doneAfter }: JobState, key: string, pull: number): boolean =>
  (doneAfter[key] ?? pull) >= pull;

/** The steps in front of all plugs that had not been done when this was pulled. */
export const undoneAt = (state: JobState, pull: number): readonly Step[] =>
  OF_ENGINE.filter((step) => isLate(state, step, pull));

/**
 * The steps that a pull on this cylinder came before, but for those that are free. A plug goes in with the first pull on it:
 * what was done between that and a later one came too late for both. `undone`: those of the whole engine, as it was pulled.
 */
export function earlyFor(
  state: JobState,
  cylinder: number,
  attempt: { readonly pull: { readonly pull: number }; readonly kind: TorqueAttempt['kind'] },
  undone: readonly Step[],
): readonly Step[] {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c === undefined || attempt.kind === 'loosening') return [];
  const number = attempt.pull.pull;
  const first = strokesOnPlug(c).find(({ pull }) => pull.pull < number);
  if (first !== undefined) return first.early ?? [];
  const ofPlug = OF_PLUG.filter((step) => isLate(state, keyOf(step, cylinder), number));
  const afterwards = strictnessOf(state, 'afterwards') === 'told' && listDone(state, 'afterwards');
  return [...undone, ...ofPlug, ...(afterwards ? ['afterwards' as const] : [])].filter(
    (step) => isAsked(step, state.routine) && strictnessOf(state, step) !== 'free',
  );
}

/**
 * The gap of this cylinder was not done when its plug went in with this pull. That holds whatever the shop makes of the
 * order: it is not the gap of the plug as it went in.
 */
export function gapCameLate(state: JobState, cylinder: number, pull: number): boolean {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const isFirst = c !== undefined && strokesOnPlug(c).every((one) => one.pull.pull >= pull);
  return isFirst && isLate(state, keyOf('gap', cylinder), pull);
}

/** The binding ones among the steps that a pull came before: it proves nothing by itself. */
export const heldBy = (state: WithBasis, { early = [] }: Pick<TorqueAttempt, 'early'>): readonly Step[] =>
  early.filter((step) => step !== 'afterwards' && strictnessOf(state, step) === 'binding');

/** The first step in front of all plugs that is not done and must come first; null for none. */
export function firstMissing(state: JobState, steps: readonly Step[]): Step | null {
  const isMissing = (step: Step) => {
    if (!isAsked(step, state.routine) || strictnessOf(state, step) !== 'binding') return false;
    const ofEngine = OF_ENGINE.find((one) => one === step);
    if (ofEngine !== undefined) return !isDoneOnEngine(state, ofEngine);
    const ofPlug = OF_PLUG.find((one) => one === step);
    return ofPlug !== undefined && !state.cylinders.every((c) => isDoneOnPlug(state, ofPlug, c));
  };
  return steps.find(isMissing) ?? null;
}

/** An old plug came out, or was read: what should have been attested before. */
export const removedEarly = (state: JobState): boolean =>
  isAsked('before-removal', state.routine) &&
  strictnessOf(state, 'before-removal') !== 'free' &&
  !listDone(state, 'before-removal');

/**
 * After another pull, a re-hit or a check too, the boots were off again: the list for afterwards is confirmed anew, where its
 * order is binding. Where the shop is only told of it, the pull is an exception.
 */
export function withBootsOff(
  state: JobState,
  pulled?: { readonly cylinder?: number; readonly pull: number; readonly early: readonly Step[] },
): JobState {
  const { routine } = state;
  const strictness = strictnessOf(state, 'afterwards');
  if (routine === null || strictness === 'free') return state;
  if (strictness === 'told') {
    const isSaid = pulled === undefined || pulled.early.includes('afterwards');
    if (isSaid || !isAsked('afterwards', routine) || !listDone(state, 'afterwards')) return state;
    const { early: _early, ...which } = pulled;
    return {
      ...state,
      outOfOrder: [...state.outOfOrder, { step: 'afterwards', what: 'pull', ...which }],
    };
  }
  const items = new Set(itemsOf(routine, 'afterwards').map(({ id }) => id));
  if (!Object.keys(state.attested).some((id) => items.has(id))) return state;
  return {
    ...state,
    attested: Object.fromEntries(Object.entries(state.attested).filter(([id]) => !items.has(id))),
  };
}

const isTightening = ({ kind, judgement }: TorqueAttempt): boolean =>
  judgement !== null && (kind === 'tightening' || kind === 'continuation');

/** All that came out of order, as the record states it: the plugs in service order, then what was about old plugs. */
export function outOfOrderIn(state: JobState): readonly OutOfOrder[] {
  const pulls = state.cylinders.flatMap((c) => {
    const standing = new Set(strokesOnPlug(c));
    return c.pulls.filter(isTightening).flatMap((attempt) =>
      (attempt.early ?? []).map(
        (step): OutOfOrder => ({
          step,
          what: 'pull',
          cylinder: c.cylinder,
          pull: attempt.pull.pull,
          ...(standing.has(attempt) ? {} : { doneAgain: true }),
        }),
      ),
    );
  });
  return [...pulls, ...state.outOfOrder.map((one) => asItStands(state, one))];
}

/** Where its pull is now, and whether its plug is still as it was then. */
function asItStands({ cylinders }: JobState, one: OutOfOrder): OutOfOrder {
  const isOfPull = one.what === 'pull';
  const c = cylinders.find(({ cylinder, pulls }) =>
    isOfPull ? pulls.some(({ pull }) => pull.pull === one.pull) : cylinder === one.cylinder,
  );
  const here = c === undefined || !isOfPull ? one : { ...one, cylinder: c.cylinder };
  const isOnPlug = c !== undefined && strokesOnPlug(c).some(({ pull }) => pull.pull === one.pull);
  const stands = {
    // One that was given to no plug stands as it is.
    pull: c === undefined || isOnPlug,
    'by-angle': c?.settlement?.kind === 'by-angle',
    gap: c?.gap === 'settled',
    loosening: true,
    'old-plug': true,
  }[one.what];
  return stands ? here : { ...here, doneAgain: true };
}

/**
 * What was taken back had not been done: the plugs that went in behind it, and the old ones that came out, came before it.
 * They are not held, because a slip may be put right; but no such job is proven throughout.
 */
export function withTakenBack(before: JobState, after: JobState): JobState {
  const still = withStepsDone(after).doneAfter;
  const isGone = (key: string) => Object.hasOwn(before.doneAfter, key) && !Object.hasOwn(still, key);
  const counts = (step: Step) => isAsked(step, after.routine) && strictnessOf(after, step) !== 'free';
  const ofEngine = OF_ENGINE.filter((step) => isGone(step) && counts(step));
  const late = after.cylinders.flatMap((c): OutOfOrder[] => {
    const { cylinder } = c;
    // A gap is left out: behind its pull it can no longer be measured, and stays open.
    const ofPlug = (['old-plugs', 'new-plugs'] as const).filter(
      (step) => isGone(keyOf(step, cylinder)) && counts(step),
    );
    const pulls = strokesOnPlug(c).filter(isTightening);
    const angled = c.settlement?.kind === 'by-angle';
    const read = (after.oldPlugs[cylinder]?.read ?? null) !== null;
    return [
      ...[...ofEngine, ...ofPlug].flatMap((step): OutOfOrder[] => [
        ...pulls
          .filter(({ early = [] }) => !early.includes(step))
          .map(({ pull }) => ({ step, what: 'pull' as const, cylinder, pull: pull.pull })),
        ...(angled ? [{ step, what: 'by-angle' as const, cylinder }] : []),
      ]),
      ...(read && ofEngine.includes('before-removal')
        ? [{ step: 'before-removal' as const, what: 'old-plug' as const, cylinder }]
        : []),
    ];
  });
  const isNew = (one: OutOfOrder) =>
    !after.outOfOrder.some(
      ({ step, what, cylinder, pull }) =>
        step === one.step && what === one.what && cylinder === one.cylinder && pull === one.pull,
    );
  return { ...after, outOfOrder: [...after.outOfOrder, ...late.filter(isNew)] };
}

/** What came out of order and stands. */
export const standsOutOfOrder = (state: JobState): readonly OutOfOrder[] =>
  outOfOrderIn(state).filter(({ doneAgain }) => doneAgain !== true);

/** The steps that this pull came before, those among them that were taken back since. */
export function earlyStepsOf(state: JobState, { pull, early = [] }: TorqueAttempt): readonly Step[] {
  const later = state.outOfOrder.filter((one) => one.what === 'pull' && one.pull === pull.pull);
  return [...new Set([...early, ...later.map(({ step }) => step)])];
}
