/** What has been learned of a job since it was done, from the station's own entries: for a claim that comes years later. */
import { canonical } from '../evidence/canonical.ts';
import type { LogEntry, StationEntry } from '../evidence/log.ts';
import type { JobState } from '../job/state.ts';
import { withoutNames } from '../plug/specification.ts';
import { onFinding } from './impact-held.ts';
import type { ImpactAssessment, ItemState } from './impact-state.ts';

export type Learned =
  /** An impact assessment touches the job: some of its proofs do not hold any more. */
  | {
      readonly kind: 'touched';
      readonly at: string;
      readonly impact: ImpactAssessment;
      readonly item: ItemState;
    }
  /** An impact assessment went over all that the job measured, and left every proof of it standing; so many rest on the tool. */
  | {
      readonly kind: 'stood';
      readonly at: string;
      readonly impact: ImpactAssessment;
      readonly proofs: number;
    }
  /** A tool of the job was calibrated again. */
  | {
      readonly kind: 'checked';
      readonly at: string;
      readonly tool: string;
      readonly serial: string;
      readonly number: string;
      readonly date: string;
    }
  /** The same vehicle came again, so that its plugs may not be those of the job any more. */
  | { readonly kind: 'worked-again'; readonly at: string; readonly job: string; readonly complete: boolean }
  | { readonly kind: 'voided'; readonly at: string; readonly by: string; readonly reason: string };

export interface JobOfVehicle {
  readonly state: JobState;
  /** The job's own entries, in order. */
  readonly entries: readonly LogEntry[];
}

/** In the order of time; `later` are the jobs on the same vehicle that were opened after it. */
export function learnedSince(
  { state, entries }: JobOfVehicle,
  station: readonly StationEntry[],
  impacts: readonly ImpactAssessment[],
  later: readonly JobOfVehicle[],
): readonly Learned[] {
  const learned = [
    ...later.map(({ state: { order, closed }, entries: [opening] }): Learned => {
      const complete = closed?.complete === true;
      return { kind: 'worked-again', at: opening?.at ?? '', job: order.job, complete };
    }),
    ...impacts.flatMap((impact, at) => {
      // One that goes on from another looks at nothing again that stood unchanged in the first.
      const before = onFinding(impacts.slice(0, at), impact.assessed.digest);
      const isListed = before.some((one) => byImpact(state, entries, one).length > 0);
      return byImpact(state, entries, impact).filter(({ kind }) => kind === 'touched' || !isListed);
    }),
    ...checksSince(state, station),
    ...entries.flatMap(({ event, at }): Learned[] =>
      event.type === 'job-voided' ? [{ kind: 'voided', at, by: event.by, reason: event.reason }] : [],
    ),
  ];
  return learned.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

function byImpact(
  { order, basis, instruments, cylinders }: JobState,
  entries: readonly LogEntry[],
  impact: ImpactAssessment,
): readonly Learned[] {
  const { assessed, items, at } = impact;
  const item = items.find(({ job }) => job === order.job);
  if (item !== undefined) return [{ kind: 'touched', at, impact, item }];
  const used = instruments.find(({ serial }) => serial === assessed.serial);
  if (used === undefined || basis.on < assessed.from) return [];
  // One that was measured under a newer certificate was never in question.
  const { certificate } = used;
  if (certificate !== undefined && certificate.date >= assessed.foundOn) return [];
  const isUsed = cylinders.some(
    ({ pulls, gaps }) =>
      pulls.some(({ pull }) => pull.tool === used.id) || gaps.some(({ tool }) => tool === used.id),
  );
  // One that was made while the job went on has not seen all of it.
  const isWhole = entries.every(({ event, at: then }) => !MEASURED.has(event.type) || then <= at);
  const step = used.quantity === 'torque' ? 'torque' : 'gap';
  const proofs = cylinders.filter((cylinder) => cylinder[step] === 'done').length;
  return isUsed && isWhole ? [{ kind: 'stood', at, impact, proofs }] : [];
}

const MEASURED: ReadonlySet<string> = new Set(['pull-detected', 'pull-placed', 'gap-measured']);

function checksSince({ instruments, basis }: JobState, station: readonly StationEntry[]): readonly Learned[] {
  const seen = new Set<string>();
  return station.flatMap(({ event, at }): Learned[] => {
    if (event.type !== 'instrument-recorded') return [];
    const { certificate, serial, id } = event.instrument;
    const isOfJob = instruments.some((used) => used.serial !== undefined && used.serial === serial);
    if (!isOfJob || certificate === undefined || serial === undefined || certificate.date <= basis.on)
      return [];
    const { date, number, laboratory } = certificate;
    const key = canonical([serial, number, date, laboratory]);
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ kind: 'checked', at, tool: id, serial, number, date }];
  });
}

/** When the figures of a job were first entered into the station's log; null where it never held them. */
export function recordedOn(state: JobState, station: readonly StationEntry[]): string | null {
  const written = canonical(withoutNames(state.order.specification));
  const entry = station.find(
    ({ event }) =>
      event.type === 'specification-recorded' && canonical(withoutNames(event.specification)) === written,
  );
  return entry?.at ?? null;
}
