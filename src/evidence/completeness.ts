/** Whether a record says of its job what its entries say, and whether every cylinder has its evidence and nothing was left open. */
import { isDeepStrictEqual } from 'node:util';
import { openItems } from '../job/closing.ts';
import { foldAll } from '../job/fold.ts';
import type { JobState } from '../job/state.ts';
import { budgetsOf } from './budgets.ts';
import { canonical } from './canonical.ts';
import { type Check, failed, passed } from './check.ts';
import { contradictionIn } from './contradiction.ts';
import type { JobRecord } from './record.ts';
import type { StationState } from './station.ts';
import { summaryOf } from './summary.ts';

/** What may be missing of a record that is nonetheless what its station sealed. */
export const COMPLETENESS = 'completeness';
const CONTENTS = 'contents';

/** Plays the entries back: the summary, the budgets and the instruments must be what they and the log say; then what is open. */
export function contentsAndCompleteness(
  record: JobRecord,
  station: StationState | string,
): readonly [contents: Check, completeness: Check] {
  const state = playedBack(record);
  const fault =
    typeof state === 'string'
      ? state
      : (summaryFault(record, state) ??
        (typeof station === 'string' ? station : contradictionIn(record)) ??
        closedFault(state));
  const contents =
    fault === null
      ? passed(
          CONTENTS,
          'Summary, uncertainty budgets, instruments and specification are what the entries and the log say.',
        )
      : failed(CONTENTS, fault);
  return [contents, completeness(state)];
}

function completeness(state: JobState | string): Check {
  if (typeof state === 'string')
    return {
      name: COMPLETENESS,
      outcome: 'not-applicable',
      detail: 'Not looked at: there is no job to look at.',
    };
  const fault = openFault(state);
  if (fault !== null) return failed(COMPLETENESS, fault);
  const simulated = state.simulated
    ? ' SIMULATED: the tools were, and nothing is proven about any engine.'
    : '';
  return passed(COMPLETENESS, provenText(state) + simulated);
}

/** What stands proven, and what was left without proof and by whom. */
function provenText({ cylinders, gapWindow }: JobState): string {
  const settled = cylinders.filter(({ torque }) => torque === 'settled');
  const what = gapWindow === null ? 'Torque is proven (no gap was measured)' : 'Gap and torque are proven';
  if (settled.length === 0) return `${what} on all ${cylinders.length} cylinders; the job is closed.`;
  const how = settled.map(({ cylinder, settlement }) =>
    settlement?.kind === 'accepted'
      ? `cylinder ${cylinder} accepted by ${settlement.by} (${settlement.reason})`
      : `cylinder ${cylinder} fitted by angle`,
  );
  const proven = cylinders.length - settled.length;
  return `${what} on ${proven} of ${cylinders.length} cylinders; NOT proven by torque: ${how.join('; ')}. The job is closed.`;
}

/** The job's state from its events, or why there is none. */
function playedBack({ entries, job }: JobRecord): JobState | string {
  // A second opening would start the job afresh and make what came before it disappear.
  if (entries.filter(({ event }) => event.type === 'job-opened').length !== 1)
    return 'The job was not opened exactly once.';
  try {
    const state = foldAll(entries.map(({ event }) => event));
    if (state?.order.job !== job) return `The entries are not those of job ${job}.`;
    return state;
  } catch (fault) {
    return `The entries cannot be played back: ${fault instanceof Error ? fault.message : 'no reason known'}.`;
  }
}

function summaryFault({ summary, budgets }: JobRecord, state: JobState): string | null {
  if (!isDeepStrictEqual(summaryOf(state), summary)) return 'The summary is not what the entries say.';
  return canonical(budgetsOf(state)) === canonical(budgets)
    ? null
    : 'The uncertainty budgets are not what the instruments give.';
}

/** Closed as complete, though it is not: no gap in a job, but a word against its own entries. */
function closedFault(state: JobState): string | null {
  if (state.closed?.complete !== true) return null;
  const fault = openFault({ ...state, voided: null });
  return fault === null ? null : `The job was closed as complete. ${fault}`;
}

function openFault(state: JobState): string | null {
  if (state.voided !== null)
    return `The job was declared VOID by ${state.voided.by}: ${state.voided.reason}.`;
  const open = openItems(state);
  if (open.length > 0) return `Still open: ${open.join('; ')}.`;
  const unproven = summaryOf(state).cylinders.find(
    ({ gap, torque }) =>
      (state.gapWindow !== null && gap.judgement?.result !== 'OK') ||
      (torque.state !== 'settled' && torque.judgement?.result !== 'OK'),
  );
  if (unproven !== undefined)
    return `Cylinder ${unproven.cylinder} counts as done, but no OK figure stands for it.`;
  if (state.closed === null) return 'The job was not closed.';
  return state.closed.complete ? null : `The job was closed incomplete: ${state.closed.open.join('; ')}.`;
}
