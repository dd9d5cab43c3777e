/** The invented station of the history: engines, instruments with yearly certificates, people, vehicles, lots. */

import { Random } from '../../../sim/random.ts';
import type { Instrument } from '../../../src/instrument/instrument.ts';
import { type WorkOrder, workOrderSchema } from '../../../src/job/order.ts';
import { checkDigit } from '../../../src/job/vin.ts';

export const YEARS = 5;
export const WRENCHES = 40;
const GAUGES = 6;
const PEOPLE = 24;
const VEHICLES = 60_000;
const LOTS = 400;
/** The first day of the history. */
export const START_MS = Date.parse('2021-11-25T06:00:00.000Z');
export const DAY_MS = 86_400_000;

interface EngineKind {
  readonly description: string;
  readonly torque: readonly [number, number];
  readonly part: string;
}

/** Invented figures, of which none is for any engine. */
const ENGINES: readonly EngineKind[] = Array.from({ length: 20 }, (_, i) => ({
  description: `invented V8, type ${String.fromCharCode(65 + i)}`,
  torque: [22 + (i % 5), 28 + (i % 5)],
  part: `EXAMPLE-${14 + (i % 7)}G`,
}));

const serials = (letter: string, count: number) =>
  Array.from({ length: count }, (_, i) => `EXAMPLE-${letter}-${String(i + 1).padStart(2, '0')}`);
export const WRENCH_SERIALS = serials('W', WRENCHES);
const GAUGE_SERIALS = serials('G', GAUGES);

export const technicianAt = (i: number) => `Technician ${(i % PEOPLE) + 1}`;
export const lotAt = (i: number) => `L${String((i % LOTS) + 1).padStart(4, '0')}`;
export const engineAt = (i: number) => ENGINES[i % ENGINES.length] ?? ENGINES[0] ?? never();
/** A whole number from one to another, both ends included. */
export const between = (chance: Random, from: number, to: number) => Math.floor(chance.uniform(from, to + 1));
const dayOf = (ms: number) => new Date(ms).toISOString().slice(0, 10);

function never(): never {
  throw new Error('an empty list');
}

/** With a valid check digit. */
export function vinAt(i: number): string {
  const digits = String(i % VEHICLES).padStart(6, '0');
  const body = `ZZ9EXAMP0PM${digits}`;
  return `${body.slice(0, 8)}${checkDigit(body) ?? '0'}${body.slice(9)}`;
}

/** A wrench and the gauge beside it on a day, each with the certificate of its last yearly calibration. */
export function instrumentsOn(wrench: number, ms: number): readonly Instrument[] {
  const calibrated = (serial: string) => {
    const offset = new Random(serial).uniform(0, 365);
    const year = Math.floor((ms - START_MS) / DAY_MS / 365 + (365 - offset) / 365) - 1;
    const date = dayOf(START_MS + (year * 365 + offset) * DAY_MS);
    return { number: `${serial}/${year + 2}`, laboratory: 'Example Calibration Laboratory', serial, date };
  };
  const w = WRENCH_SERIALS[wrench % WRENCHES] ?? never();
  const g = GAUGE_SERIALS[wrench % GAUGES] ?? never();
  const chance = new Random(`${w} ${calibrated(w).number}`);
  return [
    {
      id: 'wrench',
      quantity: 'torque',
      type: 'setting',
      serial: w,
      range: { from: 5, to: 60 },
      resolution: 0.01,
      basis: 'calibration certificate',
      interval: { months: 13, cycles: 20_000 },
      certificate: {
        ...calibrated(w),
        unit: 'N.m',
        points: [10, 20, 30, 40, 60].map((reading) => ({
          reading,
          error: Math.round(1000 * chance.uniform(-0.005, 0.005) * reading) / 1000,
          expanded: 0.2,
          k: 2,
        })),
      },
    },
    {
      id: 'gauge',
      quantity: 'length',
      serial: g,
      resolution: 0.01,
      basis: 'calibration certificate',
      interval: { months: 13 },
      certificate: {
        ...calibrated(g),
        unit: 'mm',
        points: [0.5, 1, 1.5].map((reading) => ({ reading, error: 0.002, expanded: 0.006, k: 2 })),
      },
    },
  ];
}

/** The order of job number `i`; every fourth asks for the gap. */
export function orderOf(i: number, chance: Random): WorkOrder {
  const engine = engineAt(between(chance, 0, ENGINES.length - 1));
  const vehicle = between(chance, 0, VEHICLES - 1);
  return workOrderSchema.parse({
    form: 'plugmark/work-order/1',
    job: `J-${String(i + 1).padStart(6, '0')}`,
    technician: technicianAt(between(chance, 0, PEOPLE - 1)),
    vehicle: {
      vin: vinAt(vehicle),
      plate: `EX ${1000 + vehicle}`,
      odometerKm: between(chance, 5000, 250_000),
      ...(vehicle % 3 === 0 ? { fleet: `F-${vehicle % 500}` } : {}),
    },
    engine: {
      banks: [
        [1, 3, 5, 7],
        [2, 4, 6, 8],
      ],
      serviceOrder: [1, 3, 5, 7, 2, 4, 6, 8],
      headMaterial: 'aluminium',
      description: engine.description,
    },
    plug: { part: engine.part, thread: 'M14x1.25', seat: 'gasket', gasket: 'new' },
    specification: {
      torque: `${engine.torque[0]}-${engine.torque[1]} N·m`,
      threads: 'dry',
      source: { kind: 'invented-example', title: 'Invented figures. Not for any engine.' },
      ...(i % 4 === 0 ? { gap: '0.7-0.8 mm' } : { gapRules: { check: 'not-permitted' } }),
    },
  });
}
