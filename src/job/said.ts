/** What people said or read by hand, so that it can be taken back: nothing is erased, and what the rules derive from it follows. */
import type { Command } from './command.ts';
import { heldBy, withTakenBack } from './early.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { retighten, withCylinder } from './fold-pulls.ts';
import { gapStepOf, withGapStep } from './plugs.ts';
import { questionFor } from './question.ts';
import { itemsOf } from './routine.ts';
import type { GapAttempt, JobState, Said } from './state.ts';

/** The state with what an event says added to what can be taken back; `before` is the state without the event. */
export function withSaid(before: JobState, after: JobState, event: JobEvent): JobState {
  const what = saidIn(before, event);
  return what === null ? after : { ...after, said: [...after.said, what] };
}

function saidIn(before: JobState, event: JobEvent): Said | null {
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
    case 'fitted-by-angle':
      return { what: 'by-angle', cylinder: event.cylinder };
    case 'pull-accepted':
      return { what: 'accepted', cylinder: event.cylinder, pull: event.pull };
    default:
      return null;
  }
}

const CAN_BE_TAKEN_BACK: ReadonlySet<JobEvent['type']> = new Set<JobEvent['type']>([
  'windows-confirmed',
  'steps-attested',
  'old-plugs-read',
  'old-gap-measured',
  'new-plugs-checked',
  'gap-measured',
  'fitted-by-angle',
  'pull-accepted',
]);

/** Those of the entries whose event was taken back later. */
export function takenBackIn<T extends { readonly event: JobEvent }>(entries: readonly T[]): ReadonlySet<T> {
  const said = entries.filter(({ event }) => CAN_BE_TAKEN_BACK.has(event.type));
  const back = entries.flatMap(
    ({ event }) => (event.type === 'taken-back' ? said[event.said - 1] : undefined) ?? [],
  );
  return new Set(back);
}

/** Why a thing cannot be taken back; null when it can. `number` counts what was said from 1. */
export function notTakenBack(
  state: JobState,
  { said: number, why }: Command & { do: 'take-back' },
): string | null {
  const one = state.said[number - 1];
  if (one === undefined) return 'There is nothing of that number to take back.';
  if (one.takenBack === true) return 'That was taken back already.';
  return why.trim() === '' ? 'Give the reason why it is taken back.' : null;
}

/** The state after something was taken back. */
export function takenBack(state: JobState, { said: number }: JobEventOf<'taken-back'>): JobState {
  const one = state.said[number - 1];
  if (one === undefined) throw new Error(`nothing was said as number ${number}`);
  const said = state.said.map((other) => (other === one ? { ...one, takenBack: true as const } : other));
  return withTakenBack(state, undone({ ...state, said }, one));
}

function undone(state: JobState, one: Said): JobState {
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

/** The gap as the readings that are left of its plug make it; the reading stays on the record. */
function withoutGap(state: JobState, { cylinder, tool, reading }: Said & { what: 'gap' }): JobState {
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
    return withGapStep(
      withCylinder(so, cylinder, (was) => ({ ...was, gap: step?.do === 'fit' ? 'done' : 'again' })),
      cylinder,
      step,
    );
  }, cleared);
  const last = state.lastVerdict;
  const shown = last?.quantity === 'length' && last.cylinder === cylinder ? null : last;
  return { ...replayed, lastVerdict: shown };
}
