/** Whether a record says of its job what its entries say, and whether every cylinder has its evidence and nothing was left open. */
import { isByAngle } from '../job/click.ts';
import type { Strictness } from '../job/order-of-work.ts';
import type { Proof } from '../job/proof.ts';
import type { Edition } from '../rules/editions.ts';
import type { Lack, Outcome } from '../rules/judged.ts';
import { joined, type Sentence, sentence } from '../words/catalogue.ts';
import { canonical } from './canonical.ts';
import { type Check, doubtful, failed, notLookedAt, passed } from './check.ts';
import { contradictionIn } from './contradiction.ts';
import { isSameData } from './platform/same.ts';
import type { JobRecord } from './record.ts';
import type { StationState } from './station.ts';
import { reasonOf } from './wordings.ts';

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
  station: StationState | Sentence,
  edition: Edition,
): PlayedBack {
  const outcome = playedBack(record, edition);
  return {
    contents: contents(record, outcome, station),
    completeness: completeness(record, outcome),
    orderOfWork: orderOfWork(record, outcome),
    proof: outcome === null || typeof outcome === 'function' ? null : proofIn(outcome, record),
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
  outcome: Outcome | Sentence | null,
  station: StationState | Sentence,
): Check {
  const fault =
    typeof outcome === 'function'
      ? outcome
      : ((outcome === null ? null : summaryFault(record, outcome)) ??
        (typeof station === 'function' ? station : contradictionIn(record)));
  if (fault !== null) return failed(CONTENTS, fault);
  if (outcome === null || typeof outcome === 'function')
    return passed(
      CONTENTS,
      sentence`Instruments and specification are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.`,
    );
  const closed = closedFault(outcome, record);
  if (closed !== null) return failed(CONTENTS, closed.detail, closed.open);
  return passed(
    CONTENTS,
    sentence`Summary, uncertainty budgets, instruments and specification are what the entries and the log say.`,
  );
}

function completeness(record: JobRecord, outcome: Outcome | Sentence | null): Check {
  if (outcome === null || typeof outcome === 'function')
    return notLookedAt(
      COMPLETENESS,
      outcome === null
        ? sentence`Not looked at: a newer version of the program decides what is complete.`
        : sentence`Not looked at: there is no job to look at.`,
    );
  const [lack] = outcome.lacks;
  if (lack === undefined) return passed(COMPLETENESS, completeText(record));
  const { detail, open } = faultOf(lack, record);
  return failed(COMPLETENESS, detail, open);
}

/** Whether each step came in its turn. Out of order is no fault of the record, and a reader is told of it first of all. */
function orderOfWork({ entries }: JobRecord, outcome: Outcome | Sentence | null): Check | null {
  const opened = entries.find(({ event }) => event.type === 'job-opened')?.event;
  if (opened?.type !== 'job-opened' || opened.basis.orderOfWork === undefined) return null;
  if (outcome === null || typeof outcome === 'function')
    return notLookedAt(ORDER_OF_WORK, sentence`Not looked at: the job cannot be played back here.`);
  const all = outcome.summary.outOfOrder ?? [];
  const standing = all.filter(({ doneAgain }) => doneAgain !== true);
  const where = [...new Set(standing.flatMap(({ cylinder }) => cylinder ?? []))].sort((a, b) => a - b);
  if (standing.length > 0)
    return doubtful(
      ORDER_OF_WORK,
      where.length === 0
        ? sentence`OUT OF ORDER: work was done before a step that comes first. See the exceptions.`
        : sentence`OUT OF ORDER: work on cylinder ${where.join(', ')} was done before a step that comes first. See the exceptions.`,
    );
  const inTurn =
    all.length === 0
      ? sentence`Each step came in its turn, as the shop has set it.`
      : sentence`Each step that counts came in its turn. What had come too early was done again.`;
  return passed(ORDER_OF_WORK, joined([inTurn, ...freeSteps(Object.values(opened.basis.orderOfWork))]));
}

/** A step whose order is free may have come at any time. */
function freeSteps(order: readonly Strictness[]): readonly Sentence[] {
  const free = order.filter((strictness) => strictness === 'free').length;
  return free === 0
    ? []
    : [sentence`It has left ${free} of ${order.length} steps free: those may have come at any time.`];
}

/** What is OK, and what was left without a torque that is, and by whom. What the figures prove is said beside the verdict. */
function completeText({ summary: { cylinders }, entries }: JobRecord): Sentence {
  const measured = entries.some(({ event }) => event.type === 'job-opened' && event.gapWindow !== null);
  const byAngle = isOrderByAngle({ entries });
  const what = WHAT_IS_OK[byAngle ? 'turn' : 'torque'][measured ? 'withGap' : 'alone'];
  const settled = cylinders.filter(({ torque }) => torque.state === 'settled');
  const kept = cylinders.filter(({ gap }) => gap.state === 'settled').map(({ cylinder }) => cylinder);
  const gaps =
    kept.length === 0
      ? []
      : [sentence`The gap of cylinder ${kept.join(', ')} was kept by name and is NOT proven.`];
  if (settled.length === 0)
    return joined([sentence`${what} on all ${cylinders.length} cylinders; the job is closed.`, ...gaps]);
  const how = settled.map(({ cylinder, settlement }) => {
    if (settlement?.kind !== 'accepted') return sentence`cylinder ${cylinder} fitted by angle`;
    const by = entries.findLast(
      ({ event }) => event.type === 'pull-accepted' && event.pull === settlement.pull,
    )?.event;
    return by?.type === 'pull-accepted'
      ? sentence`cylinder ${cylinder} accepted by ${by.by} (${by.reason})`
      : sentence`cylinder ${cylinder} accepted by nobody`;
  });
  const proven = cylinders.length - settled.length;
  const all = joined(how, '; ');
  return joined([
    byAngle
      ? sentence`${what} on ${proven} of ${cylinders.length} cylinders; NOT proven by turn: ${all}. The job is closed.`
      : sentence`${what} on ${proven} of ${cylinders.length} cylinders; NOT proven by torque: ${all}. The job is closed.`,
    ...gaps,
  ]);
}

/** By what holds a plug in the job, and whether gaps were measured. */
const WHAT_IS_OK = {
  torque: {
    withGap: sentence`Gap and torque are OK`,
    alone: sentence`Torque is OK (no gap was measured)`,
  },
  turn: {
    withGap: sentence`Gap and turn are OK`,
    alone: sentence`Turn is OK (no gap was measured)`,
  },
};

/** What the job's events come to by its rules, or why they come to nothing; null where only a newer program knows the rules. */
function playedBack({ entries, job }: JobRecord, edition: Edition): Outcome | Sentence | null {
  // A second opening would start the job afresh and make what came before it disappear.
  const [opened, ...again] = entries.flatMap(({ event }) => (event.type === 'job-opened' ? [event] : []));
  if (opened === undefined || again.length > 0) return sentence`The job was not opened exactly once.`;
  if (opened.order.job !== job) return sentence`The entries are not those of job ${job}.`;
  if (edition === 'newer') return null;
  if (edition === 'unknown') return sentence`The job names rules that no version of the program has.`;
  try {
    return edition.outcomeOf(entries.map(({ event }) => event));
  } catch (fault) {
    return sentence`The entries cannot be played back: ${reasonOf(fault)}.`;
  }
}

function summaryFault({ summary, budgets }: JobRecord, outcome: Outcome): Sentence | null {
  if (!isSameData(outcome.summary, summary)) return sentence`The summary is not what the entries say.`;
  return canonical(outcome.budgets) === canonical(budgets)
    ? null
    : sentence`The uncertainty budgets are not what the instruments give.`;
}

interface Fault extends Pick<Check, 'open'> {
  readonly detail: Sentence;
}

/** Closed as complete, though it is not: no gap in a job, but a word against its own entries. */
function closedFault({ summary, lacks }: Outcome, record: JobRecord): Fault | null {
  if (summary.closed?.complete !== true) return null;
  const lack = lacks.find(({ code }) => code !== 'voided');
  if (lack === undefined) return null;
  const fault = faultOf(lack, record);
  return { ...fault, detail: sentence`The job was closed as complete. ${fault.detail}` };
}

function faultOf(lack: Lack, { entries }: JobRecord): Fault {
  switch (lack.code) {
    case 'voided': {
      const voided = entries.findLast(({ event }) => event.type === 'job-voided')?.event;
      return {
        detail:
          voided?.type === 'job-voided'
            ? sentence`The job was declared VOID by ${voided.by}: ${voided.reason}.`
            : sentence`The job was declared VOID.`,
      };
    }
    case 'open':
      return { detail: sentence`Not all of the job is done.`, open: lack.items };
    case 'unproven':
      return { detail: sentence`Cylinder ${lack.cylinder} counts as done, but no OK figure stands for it.` };
    case 'not-closed':
      return { detail: sentence`The job was not closed.` };
    case 'closed-incomplete':
      return { detail: sentence`The job was closed incomplete.`, open: lack.items };
  }
}
