/** What stands against a job or a vehicle because of a tool that was found out, as lines for the bench. */

import type { LookBack } from '../../audit/impact-state.ts';
import { type Against, againstJob, type KnownBy, openAgainstVehicle } from '../../audit/impact-vehicle.ts';
import { cylindersOf, standOf } from '../../report/impact.ts';
import { safeLine } from '../terminal/exit.ts';

/** Every look-back that holds the job, decided or not. */
export const linesOnJob = (lookBacks: readonly LookBack[], job: string): readonly string[] =>
  againstJob(lookBacks, job).map((one) => {
    const { made } = one.lookBack;
    return safeLine(
      `${tagOf(one)}: ${made.tool} (${made.serial}) was found out on ${made.foundOn}; ${whatOf(one)}.`,
    );
  });

/** What is still to be done about the vehicle. */
export const linesOnVehicle = (lookBacks: readonly LookBack[], vehicle: KnownBy): readonly string[] =>
  openAgainstVehicle(lookBacks, vehicle).map((one) =>
    safeLine(
      `${tagOf(one)}: of its job ${one.item.job} of ${one.item.on}, ${whatOf(one)}. When this job is complete: plugmark lookback decide ${one.lookBack.assessment} ${one.item.job} --as redone --because TEXT --by NAME`,
    ),
  );

/** "LB-1 RECALL, not redone yet". */
export const tagOf = ({ lookBack, item }: Against): string => `${lookBack.assessment} ${standOf(item)}`;

function whatOf({ item }: Against): string {
  const parts = (['out', 'doubtful'] as const).flatMap((sort) => {
    const cylinders = cylindersOf(item, sort);
    return cylinders === '' ? [] : [`${sort} on cylinder ${cylinders}`];
  });
  return parts.join(', ');
}
