/** Asks the log which later job did a recalled one again. */
import { laterOnVehicle, notRedoneBecause } from '../../audit/impact-redone.ts';
import type { ImpactAssessment, ItemState } from '../../audit/impact-state.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import type { AuditSession } from './impact-shared.ts';
import { jobsSince } from './impact-since.ts';
import { recordsOf } from './records.ts';

/**
 * The job that is named, else the newest later one on the same vehicle that proves every cylinder of the item again.
 * Problem: `not-redone`, which says what the log lacks.
 */
export async function redoneIn(
  { stationFolder, impacts }: AuditSession,
  impact: ImpactAssessment,
  item: ItemState,
  named: string | null,
): Promise<string> {
  const { history } = stationFolder.log;
  const { vin, plate, fleet } = item;
  const onVehicle = [
    ...(vin === null ? [] : history.jobsOf({ vin })),
    ...(plate === null ? [] : history.jobsOf({ plate })),
    ...(fleet === null ? [] : history.jobsOf({ fleet })),
  ];
  const openedAt = history.jobsOf({ job: item.job })[0]?.openedAt ?? item.on;
  const later = laterOnVehicle(onVehicle, item, openedAt);
  const since = await jobsSince(recordsOf(stationFolder.log), impacts);
  const faults = later
    .filter(({ job }) => named === null || job === named)
    .map(({ job, state }) => {
      const attempts = state === 'complete' ? history.attemptsOf({ job }) : [];
      return { job, fault: notRedoneBecause(item, { job, state, attempts }, impacts, since) };
    });
  const redone = faults.find(({ fault }) => fault === null);
  if (redone !== undefined) return redone.job;
  const [nearest] = faults;
  const why =
    nearest !== undefined
      ? w`job ${nearest.job} ${nearest.fault ?? ''}`
      : named === null
        ? w`the log holds no later job on that vehicle`
        : w`the log holds no later job ${named} on that vehicle`;
  throw new ProblemError({
    code: 'not-redone',
    where: w`${impact.assessment}, job ${item.job}`,
    message: safeLine(w`it is not redone: ${why}`),
    next: w`Do it again in a job with the same VIN, plate or fleet number and a fit tool, and name that job with --in. Or decide inform or accept, and say why.`,
  });
}
