/** Whether a later job did a recalled one again: by what the log holds, never on somebody's word alone. */
import { type Mark, marksOf, WORTH } from '../job/proof.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { AttemptRow } from './attempt.ts';
import type { Since } from './impact-held.ts';
import type { ImpactAssessment, ItemState } from './impact-state.ts';
import { sameVehicle } from './impact-vehicle.ts';
import type { AskedJob } from './questions.ts';

/** Jobs on the same vehicle that were opened later, the newest first, each once. */
export function laterOnVehicle<Job extends AskedJob>(
  jobs: readonly Job[],
  item: ItemState,
  openedAt: string,
): readonly Job[] {
  const once = [...new Map(jobs.map((job) => [job.stream, job])).values()];
  return once
    .filter((job) => job.openedAt > openedAt && sameVehicle(job, item))
    .sort((a, b) => (a.openedAt < b.openedAt ? 1 : -1));
}

export interface LaterJob {
  readonly job: string;
  readonly state: AskedJob['state'];
  readonly attempts: readonly AttemptRow[];
}

const MARKED: Readonly<Record<Mark, string>> = phrases({ simulated: 'simulated', replayed: 'replayed' });

/** Why a later job has not done the item again, as the end of a sentence about it; null where it has. */
export function notRedoneBecause(
  item: ItemState,
  { job, state, attempts }: LaterJob,
  impacts: readonly ImpactAssessment[],
  since: readonly Since[],
): string | null {
  if (state !== 'complete') return w`is not complete`;
  const marks = marksOf(attempts.map(({ source }) => source));
  if (marks.length > 0)
    return w`rests on ${marks.map((mark) => MARKED[mark]).join(', ')} figures, and proves nothing`;
  const proofs = attempts.filter(({ last, result }) => last && result === 'OK');
  // What an instrument had proven is not done again by what a person attests.
  const lacking = item.attempts.find(
    ({ cylinder, quantity, source }) =>
      !proofs.some(
        (proof) =>
          proof.cylinder === cylinder &&
          proof.quantity === quantity &&
          (WORTH[proof.source] === 'proven' || source === 'typed'),
      ),
  );
  if (lacking !== undefined)
    return lacking.quantity === 'torque'
      ? w`has no proof of the torque of cylinder ${lacking.cylinder}`
      : w`has no proof of the gap of cylinder ${lacking.cylinder}`;
  const doubted = impacts.find(({ items }) => items.some((one) => one.job === job));
  if (doubted !== undefined) return w`does not hold itself, see ${doubted.assessment}`;
  const unfit = since.find(({ jobs }) => jobs.includes(job));
  return unfit === undefined ? null : w`used ${unfit.newest.assessed.tool}, which was out of tolerance`;
}
