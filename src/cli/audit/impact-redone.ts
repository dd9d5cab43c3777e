/** Which later job did a recalled one again: as the log tells it, never on somebody's word alone. */
import type { JobRow } from '../../../db/jobs.ts';
import type { ImpactAssessment, ItemState } from '../../audit/impact-state.ts';
import { sameVehicle } from '../../audit/impact-vehicle.ts';
import { ProblemError } from '../../problem.ts';
import { safeLine } from '../terminal/exit.ts';
import type { AuditSession } from './impact-shared.ts';
import { jobsSince } from './impact-since.ts';

/**
 * The job that is named, else the newest later one on the same vehicle that proves every cylinder of the item anew.
 * Problem: `not-redone`, which says what the log lacks.
 */
export function redoneIn(
  session: AuditSession,
  impact: ImpactAssessment,
  item: ItemState,
  named: string | null,
): string {
  const later = laterJobs(session, item);
  const meant = named === null ? later : later.filter(({ job }) => job === named);
  const faults = meant.map((row) => ({ row, fault: faultOf(session, item, row) }));
  const found = faults.find(({ fault }) => fault === null);
  if (found !== undefined) return found.row.job;
  const [nearest] = faults;
  const why =
    nearest !== undefined
      ? `job ${nearest.row.job} ${nearest.fault}`
      : `the log holds no later job ${named === null ? '' : `${named} `}on that vehicle`;
  throw new ProblemError({
    code: 'not-redone',
    where: `${impact.assessment}, job ${item.job}`,
    message: safeLine(`it cannot be called redone: ${why}`),
    next: 'Do it again in a job with the same VIN, plate or fleet number and a tool that is fit, and name that with --in; or decide inform or accept, and say why.',
  });
}

/** On the same vehicle and opened later, the newest in front. */
function laterJobs({ stationFolder }: AuditSession, item: ItemState): readonly JobRow[] {
  const { history } = stationFolder.log;
  const openedAt = history.jobsOf({ job: item.job })[0]?.openedAt ?? item.on;
  const { vin, plate, fleet } = item;
  const asked = [
    ...(vin === null ? [] : history.jobsOf({ vin })),
    ...(plate === null ? [] : history.jobsOf({ plate })),
    ...(fleet === null ? [] : history.jobsOf({ fleet })),
  ];
  const once = [...new Map(asked.map((row) => [row.stream, row])).values()];
  return once
    .filter((row) => row.openedAt > openedAt && sameVehicle(row, item))
    .sort((a, b) => (a.openedAt < b.openedAt ? 1 : -1));
}

/** Why a later job has not done the item again; null where it has. */
function faultOf(
  { stationFolder, impacts }: AuditSession,
  item: ItemState,
  { job, state }: JobRow,
): string | null {
  if (state !== 'complete') return 'is not complete';
  const rows = stationFolder.log.history.attemptsOf({ job });
  if (rows.some(({ simulated }) => simulated)) return 'was done with simulated tools, and proves nothing';
  const proofs = rows.filter(({ last, result }) => last && result === 'OK');
  const lacking = item.attempts.find(
    ({ cylinder, quantity }) =>
      !proofs.some((proof) => proof.cylinder === cylinder && proof.quantity === quantity),
  );
  if (lacking !== undefined)
    return `has no proof of the ${lacking.quantity === 'torque' ? 'torque' : 'gap'} of cylinder ${lacking.cylinder}`;
  const doubted = impacts.find(({ items }) => items.some((one) => one.job === job));
  if (doubted !== undefined) return `does not hold itself, see ${doubted.assessment}`;
  const since = jobsSince(stationFolder, impacts).find(({ jobs }) => jobs.includes(job));
  return since === undefined ? null : `was done with ${since.newest.made.tool} as it was found`;
}
