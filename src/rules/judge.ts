/**
 * The open edition of the rules: what is bundled when it is closed (tests/golden/close-edition.ts). All that decides a
 * verdict on a job's events is below here; signatures, tree and disclosures are not, and get better for old records too.
 */
import { openItems } from '../job/closing.ts';
import type { JobEvent } from '../job/event.ts';
import { foldAll } from '../job/fold.ts';
import { proofOf } from '../job/proof.ts';
import { replay } from '../job/replay.ts';
import type { JobState } from '../job/state.ts';
import { budgetsOf } from './budgets.ts';
import type { Again, Lack, Outcome } from './judged.ts';
import { type Summary, summaryOf } from './summary.ts';

/** An event that a later edition added stands in no job of this one. */
const KNOWN: Readonly<Record<JobEvent['type'], true>> = {
  'job-opened': true,
  'instrument-overridden': true,
  'session-started': true,
  'tool-linked': true,
  'tool-in-use': true,
  'technician-at-work': true,
  'uncertainty-declared': true,
  'tool-lost': true,
  readings: true,
  'readings-missed': true,
  'tool-silent': true,
  'value-stored': true,
  'device-refused': true,
  'profile-contradicted': true,
  'value-not-known': true,
  'raw-value': true,
  'gap-measured': true,
  'gap-out-of-turn': true,
  'gap-kept': true,
  'gap-inspected': true,
  'wire-tried': true,
  'plug-scrapped': true,
  'pull-detected': true,
  'pull-placed': true,
  'pull-given': true,
  'cylinder-left-out': true,
  'cylinder-restarted': true,
  'windows-confirmed': true,
  'trial-click-skipped': true,
  'steps-attested': true,
  'old-plugs-read': true,
  'old-gap-measured': true,
  'removal-felt': true,
  'new-plugs-checked': true,
  'fitted-by-angle': true,
  'taken-back': true,
  'pull-accepted': true,
  'job-handed-over': true,
  'job-voided': true,
  'cylinder-chosen': true,
  'question-answered': true,
  'job-closed': true,
};

/** Judges the job again from its samples and commands. */
export function judgeAgain(events: readonly JobEvent[]): Again {
  const strange = events.findIndex(({ type }) => !Object.hasOwn(KNOWN, type));
  if (strange >= 0) {
    const event = events[strange]?.type ?? '';
    return { agrees: false, position: strange + 1, code: 'event-not-known', event };
  }
  const again = replay(events);
  if (again.ok) return { agrees: true, pulls: again.value.state().pullCount };
  const { error } = again;
  if (!('parting' in error)) throw new Error(error.message);
  return { agrees: false, ...error.parting };
}

/** What a record states of the job, worked out from the events as they stand. */
export function outcomeOf(events: readonly JobEvent[]): Outcome {
  const state = foldAll(events);
  if (state === null) throw new Error('a job without events');
  const summary = summaryOf(state);
  return {
    summary,
    budgets: [...budgetsOf(state)],
    lacks: lacksIn(state, summary),
    attestedBy: [...proofOf(state).attestedBy],
  };
}

function lacksIn(state: JobState, { cylinders, closed }: Summary): Lack[] {
  const items = openItems(state);
  const unproven = cylinders.find(
    ({ gap, torque }) =>
      (state.gapWindow !== null && gap.judgement?.result !== 'OK') ||
      (torque.state !== 'settled' && torque.judgement?.result !== 'OK'),
  );
  const lacks: (Lack | null)[] = [
    state.voided === null ? null : { code: 'voided' },
    items.length === 0 ? null : { code: 'open', items },
    unproven === undefined ? null : { code: 'unproven', cylinder: unproven.cylinder },
    closed === null ? { code: 'not-closed' } : null,
    closed?.complete === false ? { code: 'closed-incomplete', items: closed.open } : null,
  ];
  return lacks.filter((lack) => lack !== null);
}
