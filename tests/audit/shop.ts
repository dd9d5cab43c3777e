import { openInLog, openStation } from '../../src/cli/station/station.ts';
import type { Certificate } from '../../src/instrument/certificate.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import { writerOf } from '../../src/job/command-event.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { exampleOrder, handsOn } from '../job/workshop.ts';

/** A certificate of the shop's wrench: points from 10 to 50 N·m with one error throughout, U = 0.2 N·m. */
export function certificate(
  number: string,
  date: string,
  { error = 0, expanded = 0.2, serial = 'EXAMPLE-W-1' } = {},
): Certificate {
  const points = [10, 20, 30, 40, 50].map((reading) => ({ reading, error, expanded, k: 2 }));
  return { number, laboratory: 'Example Laboratory', serial, date, unit: 'N.m', points };
}

export const CHECKED = certificate('CAL-1', '2026-01-12');

export const wrenchWith = (checked: Certificate | null): Instrument => ({
  id: 'wrench',
  quantity: 'torque',
  type: 'setting',
  serial: 'EXAMPLE-W-1',
  resolution: 0.01,
  basis: 'calibration certificate',
  ...(checked === null
    ? { permissibleDeviation: { kind: 'relative', percent: 1 } as const }
    : { certificate: checked, correct: true }),
});

const GAUGE: Instrument = {
  id: 'gauge',
  quantity: 'length',
  serial: 'EXAMPLE-G-1',
  permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  resolution: 0.001,
  basis: 'invented',
};

/** A four-cylinder job of the shop: a day, a vehicle, and the highest torque of each cylinder's pull. */
export interface ShopJob {
  readonly job: string;
  readonly on: string;
  readonly peaks: readonly number[];
  readonly wrench?: Instrument;
  readonly vehicle?: WorkOrder['vehicle'];
  readonly technician?: string;
  readonly closed?: boolean;
  readonly simulated?: boolean;
  /** What is done behind the last pull. */
  readonly behind?: (shop: ReturnType<typeof handsOn>) => void;
}

/** All that happens in a job, from its opening to its closing. */
export function eventsOf(given: ShopJob): readonly JobEvent[] {
  const example = exampleOrder(4);
  const { job, on, vehicle = example.vehicle, technician = 'Technician One' } = given;
  const order = { ...example, job, vehicle, technician };
  const instruments = [given.wrench ?? wrenchWith(CHECKED), GAUGE];
  const opening = openJob(order, instruments, { on, decision: USUAL_DECISION, overrides: [] });
  if (!opening.ok) throw new Error(opening.error.message);
  const events: JobEvent[] = [...opening.value];
  const shop = handsOn(createBench(fold(null, opening.value[0])), events);
  shop.give({
    kind: 'session',
    program: 'plugmark test',
    platform: 'test',
    simulated: given.simulated === true,
  });
  shop.join();
  for (const _ of given.peaks) shop.gap(0.75);
  for (const peak of given.peaks) shop.pull(peak);
  given.behind?.(shop);
  shop.give({ kind: 'flush' });
  if (given.closed !== false) shop.give({ kind: 'command', command: { do: 'close' } });
  return events;
}

/** Puts jobs into a station's log, each at the hour 09:30 of its day. */
export async function workIn(folder: string, jobs: readonly ShopJob[]): Promise<void> {
  for (const one of jobs) {
    let minute = 0;
    const stamp = () => ({ at: `${one.on}T09:${30 + minute++}:00.000Z`, monoUs: 3_600_000_000 + minute });
    const station = await openStation('Example bay', folder, stamp);
    const [opening, ...rest] = eventsOf(one).map((event) => ({ by: writerOf(event), event }));
    if (opening === undefined) throw new Error('no events');
    await openInLog(station, [opening], stamp());
    station.log.append(`job:${one.job}`, rest, stamp());
    station.log.close();
  }
}
