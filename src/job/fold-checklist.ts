/** What people say of the work around the torque, folded into the job's state. */
import { removedEarly } from './early.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import type { JobState, OldPlug } from './state.ts';

const UNREAD: OldPlug = { read: null, gap: null, removal: null };

type ChecklistEvent =
  | 'windows-confirmed'
  | 'trial-click-skipped'
  | 'steps-attested'
  | 'old-plugs-read'
  | 'old-gap-measured'
  | 'removal-felt'
  | 'new-plugs-checked';

export const isChecklistEvent = (event: JobEvent): event is JobEventOf<ChecklistEvent> =>
  CHECKLIST_EVENTS.has(event.type);
const CHECKLIST_EVENTS: ReadonlySet<string> = new Set<ChecklistEvent>([
  'windows-confirmed',
  'trial-click-skipped',
  'steps-attested',
  'old-plugs-read',
  'old-gap-measured',
  'removal-felt',
  'new-plugs-checked',
]);

/** The state after one such event. */
export function foldChecklist(state: JobState, event: JobEventOf<ChecklistEvent>): JobState {
  switch (event.type) {
    case 'windows-confirmed':
      return { ...state, windowsConfirmed: true };
    case 'trial-click-skipped':
      return { ...state, trialSkipped: true };
    case 'steps-attested': {
      const entries = event.steps.map(({ item, ...attested }) => [item, attested] as const);
      return { ...state, attested: { ...state.attested, ...Object.fromEntries(entries) } };
    }
    case 'old-plugs-read': {
      const { type: _type, cylinders, ...read } = event;
      const after = cylinders.reduce((so, cylinder) => withOldPlug(so, cylinder, { read }), state);
      const early = removedEarly(state)
        ? cylinders.map((cylinder) => ({ step: 'before-removal', what: 'old-plug', cylinder }) as const)
        : [];
      return {
        ...after,
        outOfOrder: [...after.outOfOrder, ...early],
        chosen: { ...after.chosen, 'old-plug': null },
      };
    }
    case 'old-gap-measured':
      return withOldPlug(state, event.cylinder, { gap: { gapMm: event.gapMm, source: event.source } });
    case 'removal-felt':
      return withOldPlug(state, event.cylinder, { removal: event.pull });
    case 'new-plugs-checked': {
      const { type: _type, cylinders, ...checked } = event;
      const each = cylinders.map((cylinder) => [cylinder, checked] as const);
      return { ...state, newPlugs: { ...state.newPlugs, ...Object.fromEntries(each) } };
    }
  }
}

function withOldPlug(state: JobState, cylinder: number, change: Partial<OldPlug>): JobState {
  const was = state.oldPlugs[cylinder] ?? UNREAD;
  return { ...state, oldPlugs: { ...state.oldPlugs, [cylinder]: { ...was, ...change } } };
}

/** The old plug that a reading is of: none once new ones are being tightened. */
export const oldPlugAtHand = ({ oldPlugTarget, cylinders }: JobState): number | null =>
  cylinders.some(({ pulls }) => pulls.length > 0) ? null : oldPlugTarget;

/** The cylinder whose old plug is read next: the chosen one, else the first unread; null where none is to be read. */
export function oldPlugDue(state: JobState): number | null {
  if (state.routine?.oldPlugs !== true) return null;
  const unread = state.cylinders.filter(({ cylinder }) => (state.oldPlugs[cylinder]?.read ?? null) === null);
  if (unread.length === 0) return null;
  return state.chosen['old-plug'] ?? unread[0]?.cylinder ?? null;
}
