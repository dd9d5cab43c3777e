/** What stands against a job or a vehicle because of a tool that was out of tolerance, as lines for the bench. */

import type { ImpactAssessment } from '../../audit/impact-state.ts';
import {
  type Against,
  againstJob,
  openAgainstVehicle,
  type VehicleIdentity,
} from '../../audit/impact-vehicle.ts';
import { cylindersOf, standOf } from '../../report/impact.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';

/** Every impact assessment that holds the job, decided or not. */
export const linesOnJob = (impacts: readonly ImpactAssessment[], job: string): readonly string[] =>
  againstJob(impacts, job).map((one) => {
    const { assessed } = one.impact;
    return safeLine(
      w`${tagOf(one)}: ${assessed.tool} (${assessed.serial}) was out of tolerance on ${assessed.foundOn}; ${whatOf(one)}.`,
    );
  });

/** What is still to be done about the vehicle. */
export const linesOnVehicle = (
  impacts: readonly ImpactAssessment[],
  vehicle: VehicleIdentity,
): readonly string[] =>
  openAgainstVehicle(impacts, vehicle).map((one) =>
    safeLine(
      w`${tagOf(one)}: of its job ${one.item.job} of ${one.item.on}, ${whatOf(one)}. When this job is complete: plugmark impact decide ${one.impact.assessment} ${one.item.job} --as redone --because TEXT --by NAME`,
    ),
  );

/** "IA-1 RECALL, not redone yet". */
export const tagOf = ({ impact, item }: Against): string => `${impact.assessment} ${standOf(item)}`;

function whatOf({ item }: Against): string {
  const parts = (['out', 'doubtful'] as const).flatMap((sort) => {
    const cylinders = cylindersOf(item, sort);
    if (cylinders === '') return [];
    return [sort === 'out' ? w`out on cylinder ${cylinders}` : w`doubtful on cylinder ${cylinders}`];
  });
  return parts.join(', ');
}
