/** Whether a record says of its job what its entries say, and whether every cylinder has its evidence and nothing was left open. */
import { isByAngle } from '../job/click.ts';
import type { Strictness } from '../job/order-of-work.ts';
import type { Proof } from '../job/proof.ts';
import type { Edition } from '../rules/editions.ts';
import type { Lack, Outcome } from '../rules/judged.ts';
import { canonical } from './canonical.ts';
import { type Check, doubtful, failed, passed } from './check.ts';
import { contradictionIn } from './contradiction.ts';
import { isSameData } from './platform/same.ts';
import type { JobRecord } from './record.ts';
import type { StationState } from './station.ts';

/** What may be missing of a record that is nonetheless what its station sealed. */
export const COMPLETENESS = 'completeness';
const CONTENTS = 'contents';
export const ORDER_OF_WORK = 'order of work';

interface PlayedBack {
  readonly contents: Check;
  readonly completeness: Check;
  /** Null for a job that was opened before its order was written into it. */
  readonly orderOfWork: Check | null;
  /** Null where there is no job, or only a newer program knows its rules. */
  readonly proof: Proof | null;
}

/**
 * Plays the entries back by the rules that the job names: the summary, the budgets and the instruments must be what they and
 * the log say; then what is open, and what the figures are worth.
 */
export function contentsAndCompleteness(
  record: JobRecord,
  station: StationState | string,
  edition: Edition,
): PlayedBack {
  const outcome = playedBack(record, edition);
  return {
    contents: contents(record, outcome, station),
    completeness: completeness(record, outcome),
    orderOfWork: orderOfWork(record, outcome),
    proof: outcome === null || typeof outcome === 'string' ? null : proofIn(outcome, record),
  };
}

const proofIn = (
  { summary: { sources, figures }, attestedBy }: Outcome,
  record: Pick<JobRecord, 'entries'>,
): Proof => ({ sources, figures, attestedBy, byAngle: isOrderByAngle(record) });

const isOrderByAngle = ({ entries }: Pick<JobRecord, 'entries'>): boolean =>
  entries.some(({ event }) => event.type === 'job-opened' && isByAngle(event.basis));

function contents(
  record: JobRecord,
  outcome: Outcome | string | null,
  station: StationState | string,
): Check {
  const fault =
    typeof outcome === 'string'
      ? outcome
      : ((outcome === null ? null : summaryFault(record, outcome)) ??
        (typeof station === 'string' ? station : contradictionIn(record)));
  if (fault !== null) return failed(CONTENTS, fault);
  if (outcome === null || typeof outcome === 'string')
    return passed(
      CONTENTS,
      'Instruments and specification are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.',
    );
  const closed = closedFault(outcome, record);
  if (closed !== null) return failed(CONTENTS, closed.detail, closed.open);
  return passed(
    CONTENTS,
    'Summary, uncertainty budgets, instruments and specification are what the entries and the log say.',
  );
}

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
  if (lack === undefined) return passed(COMPLETENESS, completeText(record));
  const { detail, open } = faultOf(lack, record);
  return failed(COMPLETENESS, detail, open);
}

/** Whether each step came in its turn. Out of order is no fault of the record, and a reader is told of it first of all. */
function orderOfWork({ entries }: JobRecord, outcome: Outcome | string | null): Check | null {
  const opened = entries.find(({ event }) => event.type === 'job-opened')?.event;
  if (opened?.type !== 'job-opened' || opened.basis.orderOfWork === undefined) return null;
  if (outcome === null || typeof outcome === 'string')
    return {
      name: ORDER_OF_WORK,
      outcome: 'not-applicable',
      detail: 'Not looked at: the job cannot be played back here.',
    };
  const all = outcome.summary.outOfOrder ?? [];
  const standing = all.filter(({ doneAgain }) => doneAgain !== true);
  const where = [...new Set(standing.flatMap(({ cylinder }) => cylinder ?? []))].sort((a, b) => a - b);
  const on = where.length === 0 ? '' : ` on cylinder ${where.join(', ')}`;
  if (standing.length > 0)
    return doubtful(
      ORDER_OF_WORK,
      `OUT OF ORDER: work${on} was done before a step that comes first. See the exceptions.`,
    );
  const inTurn =
    all.length === 0
      ? 'Each step came in its turn, as the shop has set it.'
      : 'Each step that counts came in its turn. What had come too early was done again.';
  return passed(ORDER_OF_WORK, `${inTurn}${freeText(Object.values(opened.basis.orderOfWork))}`);
}

/** A step whose order is free may have come at any time. */
function freeText(order: readonly Strictness[]): string {
  const free = order.filter((strictness) => strictness === 'free').length;
  return free === 0
    ? ''
    : ` It has left ${free} of ${order.length} steps free: those may have come at any time.`;
}

/** What is OK, and what was left without a torque that is, and by whom. What the figures prove is said beside the verdict. */
function completeText({ summary: { cylinders }, entries }: JobRecord): string {
  const measured = entries.some(({ event }) => event.type === 'job-opened' && event.gapWindow !== null);
  const quantity = isOrderByAngle({ entries }) ? 'turn' : 'torque';
  const what = measured
    ? `Gap and ${quantity} are OK`
    : `${quantity === 'turn' ? 'Turn' : 'Torque'} is OK (no gap was measured)`;
  const settled = cylinders.filter(({ torque }) => torque.state === 'settled');
  const kept = cylinders.filter(({ gap }) => gap.state === 'settled').map(({ cylinder }) => cylinder);
  const gaps =
    kept.length === 0 ? '' : ` The gap of cylinder ${kept.join(', ')} was kept by name and is NOT proven.`;
  if (settled.length === 0) return `${what} on all ${cylinders.length} cylinders; the job is closed.${gaps}`;
  const how = settled.map(({ cylinder, settlement }) => {
    if (settlement?.kind !== 'accepted') return `cylinder ${cylinder} fitted by angle`;
    const by = entries.findLast(
      ({ event }) => event.type === 'pull-accepted' && event.pull === settlement.pull,
    )?.event;
    const who = by?.type === 'pull-accepted' ? `${by.by} (${by.reason})` : 'nobody';
    return `cylinder ${cylinder} accepted by ${who}`;
  });
  const proven = cylinders.length - settled.length;
  return `${what} on ${proven} of ${cylinders.length} cylinders; NOT proven by ${quantity}: ${how.join('; ')}. The job is closed.${gaps}`;
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
  if (!isSameData(outcome.summary, summary)) return 'The summary is not what the entries say.';
  return canonical(outcome.budgets) === canonical(budgets)
    ? null
    : 'The uncertainty budgets are not what the instruments give.';
}

type Fault = Pick<Check, 'detail' | 'open'>;

/** Closed as complete, though it is not: no gap in a job, but a word against its own entries. */
function closedFault({ summary, lacks }: Outcome, record: JobRecord): Fault | null {
  if (summary.closed?.complete !== true) return null;
  const lack = lacks.find(({ code }) => code !== 'voided');
  if (lack === undefined) return null;
  const fault = faultOf(lack, record);
  return { ...fault, detail: `The job was closed as complete. ${fault.detail}` };
}

function faultOf(lack: Lack, { entries }: JobRecord): Fault {
  switch (lack.code) {
    case 'voided': {
      const voided = entries.findLast(({ event }) => event.type === 'job-voided')?.event;
      return {
        detail:
          voided?.type === 'job-voided'
            ? `The job was declared VOID by ${voided.by}: ${voided.reason}.`
            : 'The job was declared VOID.',
      };
    }
    case 'open':
      return { detail: 'Not all of the job is done.', open: lack.items };
    case 'unproven':
      return { detail: `Cylinder ${lack.cylinder} counts as done, but no OK figure stands for it.` };
    case 'not-closed':
      return { detail: 'The job was not closed.' };
    case 'closed-incomplete':
      return { detail: 'The job was closed incomplete.', open: lack.items };
  }
}
