/** Whether a record says of its job what its entries say, and whether every cylinder has its evidence and nothing was left open. */
import { isDeepStrictEqual } from 'node:util';
import type { Edition } from '../rules/editions.ts';
import type { Lack, Outcome } from '../rules/judged.ts';
import { canonical } from './canonical.ts';
import { type Check, failed, passed } from './check.ts';
import type { JobRecord } from './record.ts';
import type { StationState } from './station.ts';

/** What may be missing of a record that is nonetheless what its station sealed. */
export const COMPLETENESS = 'completeness';
const CONTENTS = 'contents';

/**
 * Plays the entries back by the rules that the job names: the summary, the budgets and the instruments must be what they and
 * the log say; then what is open.
 */
export function contentsAndCompleteness(
  record: JobRecord,
  station: StationState | string,
  edition: Edition,
): readonly [contents: Check, completeness: Check] {
  const outcome = playedBack(record, edition);
  const fault =
    typeof outcome === 'string'
      ? outcome
      : ((outcome === null ? null : summaryFault(record, outcome)) ??
        instrumentFault(record, station) ??
        (outcome === null ? null : contradiction(outcome, record)));
  return [
    fault === null ? contentsPassed(outcome === null) : failed(CONTENTS, fault),
    completeness(record, outcome),
  ];
}

const contentsPassed = (newer: boolean): Check =>
  passed(
    CONTENTS,
    newer
      ? 'The instruments are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.'
      : 'Summary, uncertainty budgets and instruments are what the entries and the log say.',
  );

function completeness(record: JobRecord, outcome: Outcome | string | null): Check {
  if (outcome === null || typeof outcome === 'string')
    return {
      name: COMPLETENESS,
      outcome: 'not-applicable',
      detail:
        outcome === null
          ? 'Not looked at: a newer version of the program decides what is complete.'
          : 'Not looked at: there is no job to look at.',
    };
  const [lack] = outcome.lacks;
  if (lack !== undefined) return failed(COMPLETENESS, lackText(lack, record));
  const simulated = outcome.summary.simulated
    ? ' SIMULATED: the tools were, and nothing is proven about any engine.'
    : '';
  return passed(COMPLETENESS, provenText(record) + simulated);
}

/** What stands proven, and what was left without proof and by whom. */
function provenText({ summary: { cylinders }, entries }: JobRecord): string {
  const measured = entries.some(({ event }) => event.type === 'job-opened' && event.gapWindow !== null);
  const what = measured ? 'Gap and torque are proven' : 'Torque is proven (no gap was measured)';
  const settled = cylinders.filter(({ torque }) => torque.state === 'settled');
  if (settled.length === 0) return `${what} on all ${cylinders.length} cylinders; the job is closed.`;
  const how = settled.map(({ cylinder, settlement }) => {
    if (settlement?.kind !== 'accepted') return `cylinder ${cylinder} fitted by angle`;
    const by = entries.findLast(
      ({ event }) => event.type === 'pull-accepted' && event.pull === settlement.pull,
    )?.event;
    const who = by?.type === 'pull-accepted' ? `${by.by} (${by.reason})` : 'nobody';
    return `cylinder ${cylinder} accepted by ${who}`;
  });
  const proven = cylinders.length - settled.length;
  return `${what} on ${proven} of ${cylinders.length} cylinders; NOT proven by torque: ${how.join('; ')}. The job is closed.`;
}

/** What the job's events come to by its rules, or why they come to nothing; null where only a newer program knows the rules. */
function playedBack({ entries, job }: JobRecord, edition: Edition): Outcome | string | null {
  // A second opening would start the job afresh and make what came before it disappear.
  const [opened, ...again] = entries.flatMap(({ event }) => (event.type === 'job-opened' ? [event] : []));
  if (opened === undefined || again.length > 0) return 'The job was not opened exactly once.';
  if (opened.order.job !== job) return `The entries are not those of job ${job}.`;
  if (edition === 'newer') return null;
  if (edition === 'unknown') return 'The job names rules that no version of the program has.';
  try {
    return edition.outcomeOf(entries.map(({ event }) => event));
  } catch (fault) {
    return `The entries cannot be played back: ${fault instanceof Error ? fault.message : 'no reason known'}.`;
  }
}

function summaryFault({ summary, budgets }: JobRecord, outcome: Outcome): string | null {
  if (!isDeepStrictEqual(outcome.summary, summary)) return 'The summary is not what the entries say.';
  return canonical(outcome.budgets) === canonical(budgets)
    ? null
    : 'The uncertainty budgets are not what the instruments give.';
}

/** An instrument or calibration that was put in only for this job would not stand in the station's log before it. */
function instrumentFault({ entries, background }: JobRecord, station: StationState | string): string | null {
  if (typeof station === 'string') return station;
  for (const { event, seq } of entries) {
    // As the job was opened: what a tool declares of itself later may widen its uncertainty in the job's state.
    if (event.type !== 'job-opened') continue;
    const recorded = new Map(
      background.flatMap(({ event, ...at }) =>
        event.type === 'instrument-recorded' && at.seq < seq
          ? [[event.instrument.id, canonical(event.instrument)]]
          : [],
      ),
    );
    const stranger = event.instruments.find((one) => recorded.get(one.id) !== canonical(one));
    if (stranger !== undefined) return `The instrument ${stranger.id} is not as the station's log has it.`;
  }
  return null;
}

/** Closed as complete, though it is not: no gap in a job, but a word against its own entries. */
function contradiction({ summary, lacks }: Outcome, record: JobRecord): string | null {
  if (summary.closed?.complete !== true) return null;
  const lack = lacks.find(({ code }) => code !== 'voided');
  return lack === undefined ? null : `The job was closed as complete. ${lackText(lack, record)}`;
}

function lackText(lack: Lack, { entries }: JobRecord): string {
  switch (lack.code) {
    case 'voided': {
      const voided = entries.findLast(({ event }) => event.type === 'job-voided')?.event;
      return voided?.type === 'job-voided'
        ? `The job was declared VOID by ${voided.by}: ${voided.reason}.`
        : 'The job was declared VOID.';
    }
    case 'open':
      return `Still open: ${lack.items.join('; ')}.`;
    case 'unproven':
      return `Cylinder ${lack.cylinder} counts as done, but no OK figure stands for it.`;
    case 'not-closed':
      return 'The job was not closed.';
    case 'closed-incomplete':
      return `The job was closed incomplete: ${lack.items.join('; ')}.`;
  }
}
