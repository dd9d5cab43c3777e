/** What the station's log knows that a new order can take over: the number due, who works here, vehicles that were here. */

import type { JobRow } from '../../../db/jobs.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import { namesOf } from '../../evidence/station.ts';
import type { WorkOrder } from '../../job/order.ts';
import { normalVin } from '../../job/vin.ts';
import { linesOnVehicle } from '../audit/impact-on-vehicle.ts';
import { jobsSince, sinceLines } from '../audit/impact-since.ts';
import { recordsOf } from '../audit/records.ts';
import type { Station } from '../station/station.ts';
import { stateOf } from '../station/station.ts';

/** The order of an earlier job, and the day it was opened on. */
export interface Earlier {
  readonly order: WorkOrder;
  readonly on: string;
  /** What impact assessments want done about the vehicle: a line each. */
  readonly questioned: readonly string[];
}

export interface StationHistory {
  /** What somebody who opens a job should know of the station: a line each. */
  readonly notices: readonly string[];
  /** The number behind that of the last job. */
  readonly nextJob: string;
  /** Numbers of the jobs that are open. */
  readonly open: readonly string[];
  readonly has: (job: string) => boolean;
  /** Who works here, the one who opened the last job first. */
  readonly people: readonly string[];
  /** The last job of the vehicle with this plate, VIN or fleet number, however it is written. */
  readonly vehicle: (by: 'plate' | 'vin' | 'fleet', text: string) => Earlier | null;
}

/** Looks the log over once; the latest job stands first wherever there is an order. */
export async function stationHistory(station: Station): Promise<StationHistory> {
  const { log } = station;
  const impacts = impactsOf(log.stationEntries());
  const rows = log.lastJobs(Number.MAX_SAFE_INTEGER);
  const numbers = new Set(log.streams().map((stream) => stream.replace(/^job:/, '')));
  const earlier = (row: JobRow): Earlier | null => {
    const opening = log.entries(row.stream)[0];
    if (opening?.event.type !== 'job-opened') return null;
    const { order } = opening.event;
    return { order, on: opening.at.slice(0, 10), questioned: linesOnVehicle(impacts, order.vehicle) };
  };
  const byOpening = [...rows].sort((a, b) => b.openedAt.localeCompare(a.openedAt));
  const last = byOpening[0] === undefined ? null : earlier(byOpening[0]);
  const people = namesOf(stateOf(station));
  const worked = people.filter((name) => name === last?.order.technician);
  return {
    notices: sinceLines(await jobsSince(recordsOf(station.log), impacts)),
    nextJob: after(last?.order.job ?? null, numbers),
    open: rows.flatMap(({ job, state }) => (state === 'open' ? [job] : [])),
    has: (job) => numbers.has(job),
    people: [...worked, ...people.filter((name) => !worked.includes(name))],
    vehicle: (by, text) => {
      const wanted = normalVin(text);
      const row = byOpening.find((one) => one[by] !== null && normalVin(one[by] ?? '') === wanted);
      return row === undefined || wanted === '' ? null : earlier(row);
    },
  };
}

const FIRST = 'J-1001';

/** The last number raised by one until it is free: `J-1001` gives `J-1002`, `A099` gives `A100`. */
export function after(last: string | null, taken: ReadonlySet<string>): string {
  let next = last === null ? FIRST : raised(last);
  while (taken.has(next)) next = raised(next);
  return next;
}

function raised(number: string): string {
  const [, head = '', digits = ''] = /^(.*?)(\d*)$/.exec(number) ?? [];
  return digits === '' ? `${number}-2` : head + String(BigInt(digits) + 1n).padStart(digits.length, '0');
}
