/** What people stated or read by hand, so that it can be taken back: nothing is erased, and what the rules derive from it follows. */

import { w } from '../words/catalogue.ts';
import type { Command } from './command.ts';
import { heldBy, withTakenBack } from './early.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { retighten, withCylinder } from './fold-pulls.ts';
import { firstGapState, gapStepOf, withGapStep } from './plugs.ts';
import { questionFor } from './question.ts';
import { itemsOf } from './routine.ts';
import type { BeforeAnswer, GapAttempt, JobState, Statement } from './state.ts';

/** Counted together, as records have numbered them from the beginning. */
const COUNTED_TOGETHER: ReadonlySet<JobEvent['type']> = new Set<JobEvent['type']>([
  'windows-confirmed',
  'steps-attested',
  'old-plugs-read',
  'old-gap-measured',
  'new-plugs-checked',
  'gap-measured',
  'fitted-by-angle',
  'pull-accepted',
]);

/** A statement as `taken-back` names it. */
type Reference = Pick<JobEventOf<'taken-back'>, 'said' | 'of'>;

/** The entry type by which a statement is counted; undefined for those that are counted together. */
function countedAs({ what }: Statement): Reference['of'] {
  switch (what) {
    case 'gap-inspected':
      return 'gap-inspected';
    case 'scrapped':
      return 'plug-scrapped';
    case 'answer':
      return 'question-answered';
    default:
      return undefined;
  }
}

/** How `taken-back` names the statement of that number, counted from 1 among all. */
export function referenceTo({ statements }: Pick<JobState, 'statements'>, number: number): Reference {
  const one = statements[number - 1];
  if (one === undefined) throw new Error(`there is no statement ${number}`);
  const of = countedAs(one);
  const said = statements.slice(0, number).filter((other) => countedAs(other) === of).length;
  return { said, ...(of === undefined ? {} : { of }) };
}

/** The statement that `taken-back` names. */
export const statementOf = (
  { statements }: Pick<JobState, 'statements'>,
  { said, of }: Reference,
): Statement | undefined => statements.filter((one) => countedAs(one) === of)[said - 1];

/** The state with what an event states added to what can be taken back; `before` is the state without the event. */
export function withStatement(before: JobState, after: JobState, event: JobEvent): JobState {
  const one = statementIn(before, event);
  return one === null ? after : { ...after, statements: [...after.statements, one] };
}

function statementIn(before: JobState, event: JobEvent): Statement | null {
  switch (event.type) {
    case 'windows-confirmed':
      return { what: 'windows' };
    case 'steps-attested': {
      const { phase } = event;
      const { routine, attested } = before;
      const items = routine === null ? [] : itemsOf(routine, phase).map(({ id }) => id);
      const was = Object.entries(attested).filter(([id]) => items.includes(id));
      return { what: 'list', phase, was: Object.fromEntries(was) };
    }
    case 'old-plugs-read': {
      const { cylinders } = event;
      return { what: 'old-plugs', cylinders, was: cylinders.map((c) => before.oldPlugs[c]?.read ?? null) };
    }
    case 'old-gap-measured':
      return { what: 'old-gap', cylinder: event.cylinder, gapMm: event.gapMm };
    case 'new-plugs-checked': {
      const { cylinders } = event;
      return { what: 'new-plugs', cylinders, was: cylinders.map((c) => before.newPlugs[c] ?? null) };
    }
    case 'gap-measured': {
      const { cylinder, tool, reading, judgement } = event;
      return { what: 'gap', cylinder, tool, reading, gapMm: judgement.value };
    }
    case 'gap-inspected':
      return { what: 'gap-inspected', cylinder: event.cylinder, sound: event.sound };
    case 'plug-scrapped': {
      const { cylinder, reason } = event;
      const c = before.cylinders.find((one) => one.cylinder === cylinder);
      if (c === undefined) return null;
      const was = {
        cylinder: c,
        plug: before.plugs[cylinder] ?? null,
        newPlug: before.newPlugs[cylinder] ?? null,
      };
      return { what: 'scrapped', cylinder, reason, was };
    }
    case 'question-answered': {
      const { pull, answer } = event;
      const cylinder = before.questions.find((open) => open.pull === pull)?.cylinder ?? 0;
      return { what: 'answer', pull, cylinder, answer };
    }
    case 'fitted-by-angle':
      return { what: 'by-angle', cylinder: event.cylinder };
    case 'pull-accepted':
      return { what: 'accepted', cylinder: event.cylinder, pull: event.pull };
    default:
      return null;
  }
}

/** Those of the entries whose event was taken back later. */
export function takenBackIn<T extends { readonly event: JobEvent }>(entries: readonly T[]): ReadonlySet<T> {
  const counted = (of: Reference['of']) =>
    entries.filter(({ event }) => (of === undefined ? COUNTED_TOGETHER.has(event.type) : event.type === of));
  const back = entries.flatMap(
    ({ event }) => (event.type === 'taken-back' ? counted(event.of)[event.said - 1] : undefined) ?? [],
  );
  return new Set(back);
}

/** What an answer changes, as it was before: kept until the next pull, reading or statement. */
export const beforeAnswer = (state: JobState): BeforeAnswer => {
  const { cylinders, plugs, newPlugs, strays, questions, refitting, chosen, lastTight, attested } = state;
  const { lastVerdict, outOfOrder, doneAfter, beforeAnswer: earlier } = state;
  const pulls = { cylinders, plugs, newPlugs, strays, questions, refitting, chosen, lastTight };
  return { ...pulls, attested, lastVerdict, outOfOrder, doneAfter, beforeAnswer: earlier };
};

/** Why a statement cannot be taken back; null when it can. */
export function notTakenBack(state: JobState, command: Command & { do: 'take-back' }): string | null {
  const one = statementOf(state, command);
  if (one === undefined) return w`There is nothing of that number to take back.`;
  if (one.takenBack === true) return w`That was taken back already.`;
  if (command.why.trim() === '') return w`Give the reason why it is taken back.`;
  if (one.what === 'answer') {
    const last = state.statements.findLast((other) => other.what === 'answer' && other.takenBack !== true);
    return one === last && state.beforeAnswer !== null
      ? null
      : w`Work went on since. Correct pull ${one.pull} with c: it was on another cylinder, or its plug starts again.`;
  }
  return one.what === 'scrapped' && !isUntouchedSince(state, one)
    ? w`The new plug for cylinder ${one.cylinder} was checked, measured or pulled since. Take that back first; after a pull it stays.`
    : null;
}

/** The state after the cylinder was started again: a plug that was thrown away before is not taken back any more. */
export const withScrappedForGood = (state: JobState, cylinder: number): JobState => ({
  ...state,
  statements: state.statements.map((one) =>
    one.what === 'scrapped' && one.cylinder === cylinder ? { ...one, forGood: true as const } : one,
  ),
});

/** Nothing happened to the plug that took its place. */
function isUntouchedSince(state: JobState, one: Statement & { what: 'scrapped' }): boolean {
  const { cylinder, was } = one;
  const c = state.cylinders.find((other) => other.cylinder === cylinder);
  const later = state.statements.slice(state.statements.indexOf(one) + 1);
  const stands = later.some(
    (other) =>
      (other.what === 'scrapped' || other.what === 'gap-inspected') &&
      other.cylinder === cylinder &&
      other.takenBack !== true,
  );
  return (
    c !== undefined &&
    !stands &&
    one.forGood !== true &&
    c.pulls.length === was.cylinder.pulls.length &&
    c.settlement === undefined &&
    state.newPlugs[cylinder] === undefined &&
    c.gaps.slice(was.cylinder.gaps.length).every(({ takenBack }) => takenBack === true)
  );
}

/** The state after something was taken back. */
export function takenBack(state: JobState, event: JobEventOf<'taken-back'>): JobState {
  const one = statementOf(state, event);
  if (one === undefined) throw new Error(`nothing was stated as number ${event.said}`);
  const statements = state.statements.map((other) =>
    other === one ? { ...one, takenBack: true as const } : other,
  );
  const after = undone({ ...state, statements }, one);
  // An answer can be taken back as long as nothing else is; the answer before it then becomes the last.
  return withTakenBack(state, one.what === 'answer' ? after : { ...after, beforeAnswer: null });
}

function undone(state: JobState, one: Statement): JobState {
  switch (one.what) {
    case 'windows':
      return { ...state, windowsConfirmed: false };
    case 'list': {
      const items = state.routine === null ? [] : itemsOf(state.routine, one.phase).map(({ id }) => id);
      const others = Object.entries(state.attested).filter(([id]) => !items.includes(id));
      return { ...state, attested: { ...Object.fromEntries(others), ...one.was } };
    }
    case 'old-plugs':
      return withOld(state, one.cylinders, (_, i) => ({ read: one.was[i] ?? null }));
    case 'old-gap':
      return withOld(state, [one.cylinder], () => ({ gap: null }));
    case 'new-plugs': {
      const kept = Object.entries(state.newPlugs).filter(([c]) => !one.cylinders.includes(Number(c)));
      const was = one.cylinders.flatMap((c, i) => (one.was[i] == null ? [] : [[c, one.was[i]] as const]));
      return { ...state, newPlugs: Object.fromEntries([...kept, ...was]) };
    }
    case 'gap':
      return withoutGap(state, one);
    case 'gap-inspected':
      return withoutLook(state, one.cylinder);
    case 'scrapped':
      return withPlugAgain(state, one);
    case 'answer':
      return state.beforeAnswer === null ? state : { ...state, ...state.beforeAnswer };
    case 'by-angle':
      return retighten(unsettled(state, one.cylinder));
    case 'accepted': {
      const after = unsettled(state, one.cylinder);
      const attempt = after.cylinders
        .find(({ cylinder }) => cylinder === one.cylinder)
        ?.pulls.find(({ pull }) => pull.pull === one.pull);
      const question =
        attempt === undefined ? null : questionFor(attempt, one.cylinder, heldBy(state, attempt).length > 0);
      return retighten({
        ...after,
        questions: [...after.questions, ...(question === null ? [] : [question])],
      });
    }
  }
}

const unsettled = (state: JobState, cylinder: number): JobState =>
  withCylinder(state, cylinder, ({ settlement: _gone, ...was }) => was);

function withOld(
  state: JobState,
  cylinders: readonly number[],
  change: (cylinder: number, i: number) => Partial<JobState['oldPlugs'][number]>,
): JobState {
  const changed = cylinders.flatMap((cylinder, i) => {
    const was = state.oldPlugs[cylinder];
    return was === undefined ? [] : [[cylinder, { ...was, ...change(cylinder, i) }] as const];
  });
  return { ...state, oldPlugs: { ...state.oldPlugs, ...Object.fromEntries(changed) } };
}

/** The gap as the looks make it that are left of this plug. */
function withoutLook(state: JobState, cylinder: number): JobState {
  const ofPlug = state.statements.slice(
    1 +
      state.statements.findLastIndex(
        (one) => one.what === 'scrapped' && one.cylinder === cylinder && one.takenBack !== true,
      ),
  );
  const left = ofPlug.findLast(
    (one) => one.what === 'gap-inspected' && one.cylinder === cylinder && one.takenBack !== true,
  );
  const seen = left?.what === 'gap-inspected' ? left.sound : null;
  const step =
    seen === null
      ? null
      : seen
        ? ({ do: 'fit' } as const)
        : ({ do: 'replace', because: 'not-sound' } as const);
  const gap = seen === null ? firstGapState(state.order) : seen ? 'done' : 'again';
  return withGapStep(
    withCylinder(state, cylinder, (was) => ({ ...was, gap })),
    cylinder,
    step,
  );
}

/** The plug that was thrown away is the one in hand, or in the engine, after all. */
function withPlugAgain(state: JobState, { cylinder, was }: Statement & { what: 'scrapped' }): JobState {
  const { [cylinder]: _plug, ...plugs } = state.plugs;
  const { [cylinder]: _new, ...newPlugs } = state.newPlugs;
  const { gap, settlement, restartedAfter } = was.cylinder;
  const back = withCylinder(state, cylinder, ({ settlement: _s, restartedAfter: _r, ...now }) => ({
    ...now,
    gap,
    ...(settlement === undefined ? {} : { settlement }),
    ...(restartedAfter === undefined ? {} : { restartedAfter }),
  }));
  return retighten({
    ...back,
    plugs: was.plug === null ? plugs : { ...plugs, [cylinder]: was.plug },
    newPlugs: was.newPlug === null ? newPlugs : { ...newPlugs, [cylinder]: was.newPlug },
    refitting: state.refitting === cylinder ? null : state.refitting,
    chosen: { ...state.chosen, torque: state.chosen.torque === cylinder ? null : state.chosen.torque },
  });
}

/** The gap as the readings that are left of its plug make it; the reading stays on the record. */
function withoutGap(state: JobState, { cylinder, tool, reading }: Statement & { what: 'gap' }): JobState {
  const isIt = (gap: GapAttempt) => gap.tool === tool && gap.reading === reading && gap.takenBack !== true;
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c === undefined) return state;
  const at = c.gaps.findLastIndex(isIt);
  const gaps = c.gaps.map((gap, i) => (i === at ? { ...gap, takenBack: true as const } : gap));
  const cleared = withGapStep(
    withCylinder(state, cylinder, (was) => ({ ...was, gaps, gap: 'again' })),
    cylinder,
    null,
  );
  const before = state.plugs[cylinder]?.gapsBefore ?? 0;
  const left = gaps.map((_, i) => i).filter((i) => i >= before && gaps[i]?.takenBack !== true);
  const replayed = left.reduce((so, i) => {
    const step = gapStepOf(so, { ...c, gaps: gaps.slice(0, i + 1) });
    const gap = step?.do !== 'fit' ? 'again' : gaps[i]?.kept === undefined ? 'done' : 'settled';
    return withGapStep(
      withCylinder(so, cylinder, (was) => ({ ...was, gap })),
      cylinder,
      step,
    );
  }, cleared);
  const last = state.lastVerdict;
  const shown = last?.quantity === 'length' && last.cylinder === cylinder ? null : last;
  return { ...replayed, lastVerdict: shown };
}
