/** Invented jobs whose readings came through the real drivers, one of each kind, all in virtual time. */
import { NEVER, Subject } from 'rxjs';
import { bluetoothTool } from '../../drivers/bluetooth/tool.ts';
import type { Tool } from '../../drivers/driver.ts';
import { imds } from '../../drivers/imds/language.ts';
import { described } from '../../drivers/profile/language.ts';
import { openRadio } from '../../drivers/radio/open.ts';
import { FORM } from '../../drivers/replay/schema.ts';
import { replayTool } from '../../drivers/replay/tool.ts';
import { typedTool } from '../../drivers/typed/tool.ts';
import type { PeripheralDefinition } from '../../sim/controller/index.ts';
import type { Emission } from '../../sim/physics/bench.ts';
import { type VirtualScheduler, virtualScheduler } from '../../sim/scheduler.ts';
import { SIMULATED_INSTRUMENTS, SIMULATED_TOOLS, simulatedStation } from '../../sim/station.ts';
import type { PersonName } from '../../sim/technician/people.ts';
import { work } from '../../sim/work.ts';
import type { StationLog } from '../../src/evidence/log.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { type Bench, createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { type RunJob, runJob } from '../../src/pipeline/run-job.ts';
import { orThrow } from '../../src/result.ts';
import { onBench } from '../drivers/bench.ts';
import { wrenchProfile } from '../drivers/profile/example.ts';
import { jobEntry } from '../evidence/entries.ts';
import { GAUGE as GAUGE_READS, WRENCH as WRENCH_READS } from '../job/workshop.ts';
import { drawn, turningPull } from '../pull/shapes.ts';
import { GAUGE, orderOf, WRENCH } from './jobs.ts';

interface Worked {
  readonly order: WorkOrder;
  readonly on: string;
  readonly instruments: readonly Instrument[];
  readonly scheduler: VirtualScheduler;
}

/** What joins tools to a job: the tools themselves, and hands that work until all is done. */
interface Joined {
  readonly tools: readonly Tool[];
  readonly hands: (bench: Bench, press: (command: Command) => void) => Promise<unknown>;
}

async function worked(
  { order, on, instruments, scheduler }: Worked,
  join: (opened: JobEventOf<'job-opened'>) => Joined | Promise<Joined>,
): Promise<readonly JobEvent[]> {
  const [opened] = orThrow(openJob(order, instruments, { on, decision: USUAL_DECISION, overrides: [] }));
  const events: JobEvent[] = [opened];
  const bench = createBench(fold(null, opened));
  const log: StationLog = {
    append: (_stream, drafts) => {
      events.push(...drafts.map(({ event }) => event));
      return drafts.map(({ event }) => jobEntry(event));
    },
    entries: () => [],
    streams: () => [],
    close: () => {},
  };
  const { tools, hands } = await join(opened);
  const commands$ = new Subject<Command>();
  const run: RunJob = {
    bench,
    log,
    stream: `job:${order.job}`,
    program: 'plugmark 0.1.0',
    platform: 'golden',
    tools,
    commands$,
    stop$: NEVER,
    stamp: () => ({ at: `${on}T08:00:00.000Z`, monoUs: scheduler.nowUs() }),
  };
  const failed = new Promise<never>((_, reject) => {
    runJob(run).step$.subscribe({ error: reject });
  });
  const work = async () => {
    for (const tool of tools) orThrow(await tool.connect());
    await hands(bench, (command) => commands$.next(command));
    if (bench.state().closed === null) commands$.next({ do: 'close' });
    for (const tool of tools) await tool.close();
  };
  await scheduler.runUntil(Promise.race([work(), failed]));
  return events;
}

/** An invented engine, and a technician who works on it until he is done. */
function technicianAt(
  { order, scheduler }: Pick<Worked, 'order' | 'scheduler'>,
  { torqueWindow, gapWindow }: JobEventOf<'job-opened'>,
  { person, seed }: { readonly person: PersonName; readonly seed: number },
) {
  const station = simulatedStation({ seed, order, torqueWindow, gapWindow, person, scheduler });
  const handsOf =
    (deliver: (emission: Readonly<Emission>) => void): Joined['hands'] =>
    (bench, press) =>
      work({
        bench: station.bench,
        technician: station.technician,
        scheduler,
        deliver,
        look: bench.state,
        press,
        signal: new AbortController().signal,
      });
  return { station, handsOf };
}

const engineOf = (cylinders: number[]): Pick<WorkOrder, 'engine'> => ({
  engine: { banks: [cylinders], serviceOrder: cylinders, headMaterial: 'aluminium' },
});

/** The simulated tools, joined without a radio; a technician to whom a bit of everything happens. */
export function simulated(job: string, on: string): Promise<readonly JobEvent[]> {
  const scheduler = virtualScheduler();
  const given = { order: orderOf(job), on, instruments: SIMULATED_INSTRUMENTS, scheduler };
  return worked(given, (opened) => {
    const { station, handsOf } = technicianAt(given, opened, { person: 'mixed', seed: 3 });
    const { tools, deliver } = station.direct();
    return { tools, hands: handsOf(deliver) };
  });
}

/** Tools with the Industrial Measurement Device Service, over the host stack and a simulated controller. */
export async function overTheAir(job: string, on: string): Promise<readonly JobEvent[]> {
  const scheduler = virtualScheduler();
  const given = {
    order: orderOf(job, engineOf([1, 2])),
    on,
    instruments: SIMULATED_INSTRUMENTS,
    scheduler,
  };
  let leave = () => Promise.resolve();
  const events = await worked(given, async (opened) => {
    const { station, handsOf } = technicianAt(given, opened, { person: 'careful', seed: 1 });
    const { HciSocket, deliver, close } = station.onAir();
    const radio = orThrow(await scheduler.runUntil(openRadio({ socket: HciSocket, after: scheduler.after })));
    leave = async () => {
      await scheduler.runUntil(radio.close());
      close();
    };
    const tools = SIMULATED_TOOLS.map(({ id, quantity, ...adopted }) =>
      bluetoothTool({
        id,
        language: imds(quantity),
        adopted,
        radio,
        clock: scheduler,
        after: scheduler.after,
        random: () => 0.5,
      }),
    );
    return { tools, hands: handsOf(deliver) };
  });
  await leave();
  return events;
}

const ADDRESS = 'c0:00:00:00:00:21';
const READINGS = '3f8a0002-5c1d-4e2b-9a70-1b2c3d4e5f60';

/** The wrench of the example profile. */
const PROFILED: PeripheralDefinition = {
  address: ADDRESS,
  addressType: 'random',
  name: 'invented',
  appearance: 0,
  advertisedServices: ['3f8a0001-5c1d-4e2b-9a70-1b2c3d4e5f60'],
  advertisingIntervalMs: 100,
  rssi: -60,
  mtu: 64,
  services: [
    {
      uuid: '3f8a0001-5c1d-4e2b-9a70-1b2c3d4e5f60',
      characteristics: [
        { uuid: READINGS, properties: ['notify'] },
        { uuid: '3f8a0003-5c1d-4e2b-9a70-1b2c3d4e5f60', properties: ['write'], write: () => {} },
      ],
    },
    {
      uuid: 0x180a,
      characteristics: [{ uuid: 0x2a25, properties: ['read'], value: Buffer.from('EXAMPLE-W-1') }],
    },
  ],
};

/** Four samples of 0.02 N·m in a packet, as the example profile has it. */
function packets(send: (packet: Uint8Array) => void): (nm: number) => void {
  let counter = 0;
  let waiting: number[] = [];
  return (nm) => {
    waiting.push(Math.round(nm / 0.02));
    if (waiting.length < 4) return;
    const packet = Buffer.alloc(12);
    packet.set([0xa5, 0x01]);
    packet.writeUInt16BE(counter % 0x10000, 2);
    for (const [i, sample] of waiting.entries()) packet.writeInt16BE(sample, 4 + 2 * i);
    send(packet);
    counter += 4;
    waiting = [];
  };
}

/** A wrench that a profile describes, and a gauge that types. */
export async function profileAndTyped(job: string, on: string): Promise<readonly JobEvent[]> {
  let events: readonly JobEvent[] = [];
  await onBench(async ({ scheduler, controller, radio }) => {
    const given = {
      order: orderOf(job, engineOf([1, 2])),
      on,
      instruments: [WRENCH, GAUGE],
      scheduler,
    };
    const sender = controller.addPeripheral(PROFILED);
    const wrench = bluetoothTool({
      id: 'wrench',
      language: described(wrenchProfile()),
      adopted: { address: ADDRESS, serial: 'EXAMPLE-W-1' },
      radio,
      clock: scheduler,
      after: scheduler.after,
      random: () => 0.5,
    });
    const lines$ = new Subject<string>();
    const gauge = typedTool({ id: 'gauge', quantity: 'length', unit: 'mm', clock: scheduler, lines$ });
    events = await worked(given, (opened) => {
      const { handsOf } = technicianAt(given, opened, { person: 'careful', seed: 2 });
      const sample = packets((packet) => sender.notify(READINGS, packet));
      return {
        tools: [wrench, gauge],
        hands: handsOf(({ kind, counts }) =>
          kind === 'torque' ? sample(counts / 100) : lines$.next((counts / 10_000).toFixed(2)),
        ),
      };
    });
  });
  return events;
}

/** Recordings, played back. */
export function replayed(job: string, on: string): Promise<readonly JobEvent[]> {
  const scheduler = virtualScheduler();
  const given = {
    order: orderOf(job, engineOf([1, 2])),
    on,
    instruments: [WRENCH, GAUGE],
    scheduler,
  };
  const pulls = [27.4, 27.1].flatMap((nm, i) =>
    drawn([{ atMs: 0, nm: 0 }, ...turningPull(6000, 700, nm, 0.8 * nm, 0.8 * nm)]).map((sample) => ({
      atUs: sample.atUs + (20 + 10 * i) * 1_000_000,
      counts: Math.round(100 * sample.nm),
    })),
  );
  const gaps = [
    { atUs: 1_000_000, counts: 7500 },
    { atUs: 2_000_000, counts: 7400 },
  ];
  const player = (id: string, description: typeof WRENCH_READS, values: readonly (typeof gaps)[number][]) =>
    replayTool({
      id,
      recording: {
        header: { form: FORM, tool: id, timing: { stamps: 'arrival' }, description },
        readings: values.map((value, i) => ({ kind: 'value', n: i + 1, ...value })),
      },
      pace: { speed: 1 },
      clock: scheduler,
      after: scheduler.after,
    });
  // The recording of the wrench begins when that of the gauge is over.
  return worked(given, () => ({
    tools: [
      player('gauge', GAUGE_READS, gaps),
      player('wrench', WRENCH_READS, [{ atUs: 0, counts: 0 }, ...pulls]),
    ],
    hands: () =>
      new Promise((resolve) => {
        scheduler.after(60_000_000, () => resolve(null));
      }),
  }));
}
