/** The items of impact assessments that concern a vehicle or a job. */
import { normalVin } from '../job/vin.ts';
import { isWithheld } from '../personal.ts';
import type { ImpactAssessment, ItemState } from './impact-state.ts';

/** How a vehicle is identified; null or absent for what nobody gave. */
export interface VehicleIdentity {
  readonly vin?: string | null;
  readonly plate?: string | null;
  readonly fleet?: string | null;
}

/**
 * Whether two are the same vehicle: by VIN where both have one, because plates and fleet numbers move to other vehicles;
 * else by plate, else by fleet number.
 */
export function sameVehicle(a: VehicleIdentity, b: VehicleIdentity): boolean {
  for (const by of ['vin', 'plate', 'fleet'] as const) {
    const [one, other] = [identity(a[by]), identity(b[by])];
    if (one !== '' && other !== '') return one === other;
  }
  return false;
}

/** Empty for what was not given, or is withheld: nothing is known by that. */
const identity = (text: string | null | undefined): string =>
  text === null || text === undefined || isWithheld(text) ? '' : normalVin(text);

export interface Against {
  readonly impact: ImpactAssessment;
  readonly item: ItemState;
}

export const againstJob = (impacts: readonly ImpactAssessment[], job: string): readonly Against[] =>
  against(impacts, (item) => item.job === job);

/** What is still open: not decided, or recalled and not redone. */
export const openAgainstVehicle = (
  impacts: readonly ImpactAssessment[],
  vehicle: VehicleIdentity,
): readonly Against[] => against(impacts, (item) => item.open && sameVehicle(item, vehicle));

const against = (impacts: readonly ImpactAssessment[], isMeant: (item: ItemState) => boolean) =>
  impacts.flatMap((impact) => impact.items.filter(isMeant).map((item): Against => ({ impact, item })));
