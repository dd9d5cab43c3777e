/** What a package tells of the station itself: the entries of its own stream, and what its impact assessments say of each job. */

import { type ImpactAssessment, type ItemState, impactsOf } from '../audit/impact-state.ts';
import { canonical } from '../evidence/canonical.ts';
import type { StationEntry } from '../evidence/log.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import type { JobState } from '../job/state.ts';
import { withoutNames } from '../plug/specification.ts';
import type { PackageJob } from './format.ts';

const KEYS: ReadonlySet<StationEvent['type']> = new Set<StationEvent['type']>([
  'station-set-up',
  'station-renamed',
  'key-rotated',
  'key-replaced',
  'key-revoked',
  'entries-lost',
]);

/**
 * The entries that bear on these jobs: the station's keys, the figures and the calibrations of what was used in them, and
 * impact assessments on it. What a station did with the vehicles of others is not for the other side of a claim.
 */
export function bearingOn(
  entries: readonly StationEntry[],
  jobs: readonly Pick<JobState, 'instruments' | 'order'>[],
): readonly StationEntry[] {
  const serials = new Set(
    jobs.flatMap(({ instruments }) =>
      instruments.flatMap(({ serial }) => (serial === undefined ? [] : [serial])),
    ),
  );
  const figures = new Set(jobs.map(({ order }) => canonical(withoutNames(order.specification))));
  const assessments = new Set(
    entries.flatMap(({ event }) =>
      event.type === 'assessment-made' && serials.has(event.serial) ? [event.assessment] : [],
    ),
  );
  return entries.filter(({ event }) => {
    switch (event.type) {
      case 'instrument-recorded':
        return event.instrument.serial !== undefined && serials.has(event.instrument.serial);
      case 'specification-recorded':
        return figures.has(canonical(withoutNames(event.specification)));
      case 'as-found-recorded':
        return serials.has(event.asFound.serial);
      case 'assessment-made':
      case 'item-decided':
      case 'assessment-closed':
        return assessments.has(event.assessment);
      default:
        return KEYS.has(event.type);
    }
  });
}

/** The last of the entries that stand without a gap from the first one on; null where some are missing. */
export function lastWithoutGap(entries: readonly StationEntry[]): StationEntry | null {
  return entries.every(({ n }, i) => n === i + 1) ? (entries.at(-1) ?? null) : null;
}

/** A job that an impact assessment puts in question. */
export interface Questioned {
  readonly impact: ImpactAssessment;
  readonly item: ItemState;
}

/** By number of the job, in the order in which the impact assessments were made. */
export function questionedIn(
  entries: readonly StationEntry[],
  jobs: ReadonlySet<string>,
): ReadonlyMap<string, readonly Questioned[]> {
  const all = new Map<string, Questioned[]>();
  for (const impact of impactsOf(entries))
    for (const item of impact.items)
      if (jobs.has(item.job)) all.set(item.job, [...(all.get(item.job) ?? []), { impact, item }]);
  return all;
}

/** The same as an index states it. */
export const impactsStated = (questioned: readonly Questioned[] = []): PackageJob['impacts'] =>
  questioned.map(({ impact, item }) => ({
    assessment: impact.assessment,
    sort: item.sort,
    decided: item.decided.at(-1)?.decision ?? null,
  }));
