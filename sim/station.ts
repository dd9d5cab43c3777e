import { ReplaySubject, Subject } from 'rxjs';
import type { Tool } from '../drivers/driver.ts';
import { bluetoothProfile } from '../drivers/profile/file.ts';
import type { BluetoothProfile } from '../drivers/profile/schema.ts';
import type { Instrument } from '../src/instrument/instrument.ts';
import type { WorkOrder } from '../src/job/order.ts';
import type { Window } from '../src/metrology/judgement.ts';
import { crowfootOf, settingFor } from '../src/plug/geometry.ts';
import type { AngleDescription, LinkState, Reading, ToolDescription } from '../src/reading.ts';
import { ok, orThrow } from '../src/result.ts';
import { createController, type HciSocketClass } from './controller/index.ts';
import { CATALOGUE } from './devices/catalogue.ts';
import { dashed, peripheralOf as describedPeripheral, type Seen, Sender } from './devices/device.ts';
import { peakSender } from './peak-sender.ts';
import { measuredBy, notification, type Presented, peripheralOf } from './peripherals.ts';
import type { Action } from './physics/action.ts';
import { type Bench, createBench, type Emission } from './physics/bench.ts';
import { DEG_EXPONENT } from './physics/gyroscope.ts';
import { NM_PER_COUNT } from './physics/sensor.ts';
import { Random } from './random.ts';
import type { Scheduler } from './scheduler.ts';
import { PEOPLE, type PersonName } from './technician/people.ts';
import type { Screen } from './technician/screen.ts';
import { type Leaving, technician } from './technician/technician.ts';

/** What the makers of the simulated tools promise. Invented data sheets; the simulation keeps to them. */
export const SIMULATED_INSTRUMENTS: readonly Instrument[] = [
  {
    id: 'wrench',
    quantity: 'torque',
    type: 'setting',
    serial: 'SIM-W-0001',
    range: { from: 5, to: 60 },
    permissibleDeviation: { kind: 'relative', percent: 2 },
    resolution: 0.01,
    basis: 'invented data sheet of the simulated wrench',
  },
  {
    id: 'gauge',
    quantity: 'length',
    serial: 'SIM-G-0001',
    permissibleDeviation: { kind: 'absolute', amount: 0.01 },
    resolution: 0.01,
    basis: 'invented data sheet of the simulated gauge',
  },
];

const WRENCH: Presented = {
  quantity: 'torque',
  address: 'c2:00:00:00:00:01',
  name: 'Simulated wrench',
  serial: 'SIM-W-0001',
  batteryPercent: 83,
  updateIntervalMs: 10,
  resolutionCounts: 1,
  samplingFunction: 'instantaneous',
  uncertaintyPermille: 20,
  rangeCounts: [-6000, 6000],
};
const GAUGE: Presented = {
  quantity: 'length',
  address: 'c2:00:00:00:00:02',
  name: 'Simulated gauge',
  serial: 'SIM-G-0001',
  batteryPercent: 64,
  updateIntervalMs: 0,
  resolutionCounts: 100,
  samplingFunction: 'instantaneous',
  uncertaintyPermille: 12,
  rangeCounts: [2_000, 20_000],
};

/** What the simulated gyroscope promises of itself. */
const ANGLE: AngleDescription = {
  exponent: DEG_EXPONENT,
  resolutionCounts: 1,
  driftDegPerMin: 6,
  uncertaintyDeg: 2,
};

/** The simulated tools as they have been adopted. */
export const SIMULATED_TOOLS = [
  { id: 'wrench', ...WRENCH },
  { id: 'gauge', ...GAUGE },
].map(({ id, quantity, address, serial, name }) => ({ id, quantity, address, serial, name }));

export interface SimulatedStationSpec {
  readonly seed: number;
  readonly order: WorkOrder;
  readonly torqueWindow: Window;
  readonly gapWindow: Window | null;
  readonly person: PersonName;
  readonly scheduler: Scheduler;
  /** The wrench sends the highest torque of each pull and nothing else. */
  readonly sendsPeaks?: boolean;
  /**
   * The wrench sends how far it was turned too. On the air it is then a device with a profile of its own: the industrial
   * service of the Bluetooth SIG carries no angle.
   */
  readonly angle?: boolean;
}

/** A bench, two tools and a technician, made from a seed, and the ways to join them to the program. */
export interface SimulatedStation {
  readonly bench: Bench;
  readonly technician: Generator<Action, Leaving, Screen>;
  /** Puts the tools on the air: a Bluetooth controller for a host stack, and how their readings leave them. */
  readonly onAir: () => {
    readonly HciSocket: HciSocketClass;
    readonly deliver: Deliver;
    /** How the wrench is described; null where the industrial service says it. */
    readonly wrenchProfile: BluetoothProfile | null;
    readonly close: () => void;
  };
  /** Joins the tools without a radio. */
  readonly direct: () => { readonly tools: readonly Tool[]; readonly deliver: Deliver };
}

type Deliver = (emission: Readonly<Emission>) => void;

export function simulatedStation(spec: SimulatedStationSpec): SimulatedStation {
  const { order, torqueWindow, scheduler } = spec;
  const gapWindow = spec.gapWindow ?? UNMEASURED;
  const random = new Random(spec.seed);
  const { serviceOrder } = order.engine;
  const bench = createBench({
    seed: spec.seed,
    cylinders: serviceOrder,
    plug: {
      thread: order.plug.thread,
      seat: order.plug.seat,
      gasket: order.plug.gasket ?? 'new',
      lowerNm: torqueWindow.lowerLimit,
      upperNm: torqueWindow.upperLimit,
      gapLowerMm: gapWindow.lowerLimit,
      gapUpperMm: gapWindow.upperLimit,
    },
    wrench: { settingNm: settingOf(order, torqueWindow) },
  });
  return {
    bench,
    technician: technician(
      {
        habits: PEOPLE[spec.person],
        order: serviceOrder,
        gapLowerMm: gapWindow.acceptLower,
        gapUpperMm: gapWindow.acceptUpper,
        hurtFromNm: HURT_SHARE * torqueWindow.upperLimit,
      },
      random.fork('technician'),
    ),
    onAir: () => onAir(scheduler, wrenchThat(spec), spec.angle === true),
    direct: () => direct(scheduler, wrenchThat(spec), spec.angle === true ? ANGLE : undefined),
  };
}

/** How the wrench presents itself, and what it makes of the torque. */
interface Electronics {
  readonly presented: Presented;
  readonly sends: (emission: Readonly<Emission>) => Readonly<Emission> | null;
}

const wrenchThat = ({ sendsPeaks }: SimulatedStationSpec): Electronics =>
  sendsPeaks === true
    ? { presented: { ...WRENCH, samplingFunction: 'maximum', updateIntervalMs: 0 }, sends: peakSender() }
    : { presented: WRENCH, sends: (emission) => emission };

/** What plugs come with where nobody measures them. Invented. */
const UNMEASURED = { lowerLimit: 0.7, upperLimit: 0.8, acceptLower: 0.71, acceptUpper: 0.79 };

/** A plug that saw this share of the upper limit is not fitted again. Assumption. */
const HURT_SHARE = 1.15;

/** The middle of the acceptance zone, as the wrench reads it. */
function settingOf(order: WorkOrder, { acceptLower, acceptUpper }: Window): number {
  return settingFor((acceptLower + acceptUpper) / 2, crowfootOf(order.adapter));
}

function onAir(scheduler: Scheduler, { presented, sends }: Electronics, sendsAngle: boolean) {
  const controller = createController({ scheduler, address: 'c0:00:00:00:00:fe' });
  const described = sendsAngle ? describedWrench(presented) : null;
  const wrench = controller.addPeripheral(described?.peripheral ?? peripheralOf(presented));
  const gauge = controller.addPeripheral(peripheralOf(GAUGE));
  return {
    HciSocket: controller.HciSocket,
    wrenchProfile: described?.profile ?? null,
    deliver: (emission: Readonly<Emission>) => {
      const sent = sends(emission);
      if (sent === null) return;
      const { kind, counts } = sent;
      if (kind === 'gap') gauge.notify(measuredBy('length'), notification('length', counts));
      else if (described === null) wrench.notify(measuredBy('torque'), notification('torque', counts));
      else for (const packet of described.packets(sent)) wrench.notify(described.characteristic, packet);
    },
    close: controller.close,
  };
}

/** Readings in one packet of a wrench that sends its angle. */
const PER_PACKET = 2;

/** A wrench with a profile of its own that sends torque and angle, several readings a packet. */
function describedWrench({ address, name, serial }: Presented) {
  const profile = orThrow(bluetoothProfile(CATALOGUE['torque and angle'], 'simulated wrench'));
  const sender = new Sender(profile);
  let waiting: Seen[] = [];
  return {
    profile,
    characteristic: dashed(profile.link.characteristic),
    peripheral: describedPeripheral(profile, { address, name, serial }),
    packets: ({ counts, angleCounts }: Readonly<Emission>): readonly Uint8Array[] => {
      waiting.push({ si: counts * NM_PER_COUNT, angleDeg: angleCounts * 10 ** DEG_EXPONENT });
      if (waiting.length < PER_PACKET) return [];
      const packets = sender.packets(waiting);
      waiting = [];
      return packets;
    },
  };
}

function direct(scheduler: Scheduler, { presented, sends }: Electronics, angle?: AngleDescription) {
  const wrench = new DirectTool('wrench', presented, scheduler, angle);
  const gauge = new DirectTool('gauge', GAUGE, scheduler);
  return {
    tools: [wrench, gauge],
    deliver: (emission: Readonly<Emission>) => {
      const sent = sends(emission);
      if (sent === null) return;
      if (sent.kind === 'gap') gauge.send(sent.counts);
      else wrench.send(sent.counts, angle === undefined ? undefined : sent.angleCounts);
    },
  };
}

/** A simulated tool joined without a radio, for machines on which there is no Bluetooth stack to run it through. */
class DirectTool implements Tool {
  readonly id: string;
  readonly driver = 'simulated';
  readonly quantity: 'torque' | 'length';
  readonly source = 'simulated';
  readonly timing = { stamps: 'arrival' } as const;
  readonly link$ = new ReplaySubject<LinkState>(1);
  readonly readings$ = new Subject<Reading>();
  readonly #description: ToolDescription;
  readonly #scheduler: Scheduler;
  #count = 0;

  constructor(id: string, presented: Presented, scheduler: Scheduler, angle?: AngleDescription) {
    const { quantity, serial, batteryPercent, resolutionCounts, samplingFunction } = presented;
    this.id = id;
    this.quantity = quantity;
    this.#scheduler = scheduler;
    this.#description = {
      quantity,
      unit: quantity === 'torque' ? 'N.m' : 'm',
      exponent: quantity === 'torque' ? -2 : -7,
      maker: 'Simulated',
      serial,
      batteryPercent,
      resolutionCounts,
      samplingFunction,
      ...(angle !== undefined && { angle }),
      link: { kind: 'direct', authenticated: false },
    };
  }

  send(counts: number, angleCounts?: number): void {
    this.#count += 1;
    this.readings$.next({
      kind: 'value',
      n: this.#count,
      atUs: this.#scheduler.nowUs(),
      counts,
      ...(angleCounts !== undefined && { angleCounts }),
    });
  }

  connect() {
    this.link$.next({ state: 'linked', description: this.#description });
    return Promise.resolve(ok(this.#description));
  }

  close() {
    this.link$.next({ state: 'closed' });
    this.link$.complete();
    this.readings$.complete();
    return Promise.resolve();
  }
}
