import { readFileSync } from 'node:fs';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { type Bench, type BenchInput, createBench } from '../../src/job/bench.ts';
import type { Answer, JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { type Opening, openJob } from '../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../src/job/order.ts';
import type { Routine } from '../../src/job/routine.ts';
import type { FigureSource, ToolDescription } from '../../src/reading.ts';
import { type Corner, clickPull, drawn, turningPull } from '../pull/shapes.ts';

export function exampleOrder(cylinders: 4 | 8): WorkOrder {
  const url = new URL(`../../sim/example/order-${cylinders}.json`, import.meta.url);
  return workOrderSchema.parse(JSON.parse(readFileSync(url, 'utf8')));
}

export const INSTRUMENTS: readonly Instrument[] = [
  {
    id: 'wrench',
    quantity: 'torque',
    permissibleDeviation: { kind: 'relative', percent: 2 },
    resolution: 0.01,
    basis: 'invented',
  },
  {
    id: 'gauge',
    quantity: 'length',
    permissibleDeviation: { kind: 'absolute', amount: 0.01 },
    resolution: 0.001,
    basis: 'invented',
  },
];

/** The day on which the jobs of the tests are done. */
export const OPENING: Opening = { on: '2026-05-04', decision: USUAL_DECISION, overrides: [] };

export const WRENCH: ToolDescription = {
  quantity: 'torque',
  unit: 'N.m',
  exponent: -2,
  samplingFunction: 'instantaneous',
  link: { kind: 'bluetooth-le', authenticated: false },
};
export const GAUGE: ToolDescription = { ...WRENCH, quantity: 'length', unit: 'm', exponent: -7 };

/** A bench with both tools joined, and hands to work it with; `events` holds everything that happened. */
export function workshop(
  order: WorkOrder = exampleOrder(4),
  routine?: Routine,
  instruments: readonly Instrument[] = INSTRUMENTS,
  toolsOf: NonNullable<Opening['toolsOf']> = [],
) {
  const asked = {
    ...(routine === undefined ? {} : { routine }),
    ...(toolsOf.length === 0 ? {} : { toolsOf }),
  };
  const opening = openJob(order, instruments, { ...OPENING, ...asked });
  if (!opening.ok) throw new Error(opening.error.message);
  const events: JobEvent[] = [...opening.value];
  const bench = createBench(fold(null, opening.value[0]));
  const shop = { ...handsOn(bench, events), bench, events };
  shop.give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  shop.join();
  return shop;
}

/** Over what kind of link figures of a source come. */
const LINK = { linked: 'bluetooth-le', typed: 'keyboard', replayed: 'file', simulated: 'direct' } as const;

/** Hands on a bench; what they do is added to `events`. */
export function handsOn(bench: Bench, events: JobEvent[]) {
  let nowMs = 0;
  const counters = new Map<string, number>();
  const give = (input: BenchInput) => {
    // A driver numbers what carries no value as well.
    if (input.kind === 'reading' && input.reading.kind !== 'value')
      counters.set(input.tool, (counters.get(input.tool) ?? 0) + 1);
    const out = bench.accept(input);
    if (out.ok) events.push(...out.value);
    return out;
  };
  const value = (tool: string, atMs: number, counts: number) => {
    const n = (counters.get(tool) ?? 0) + 1;
    counters.set(tool, n);
    give({
      kind: 'reading',
      tool,
      reading: { kind: 'value', n, atUs: Math.round(atMs * 1000), counts: Math.round(counts) },
    });
  };
  const draw = (corners: readonly Corner[]) => {
    const samples = drawn(corners);
    for (const { atUs, nm } of samples) value('wrench', nowMs + atUs / 1000, nm * 100);
    nowMs += (corners.at(-1)?.atMs ?? 0) + 10;
  };
  const rest = (ms = 3000) =>
    draw([
      { atMs: 0, nm: 0 },
      { atMs: ms, nm: 0 },
    ]);
  return {
    give,
    draw,
    /** The number that the driver of a tool gives to its next reading. */
    next: (tool: string) => (counters.get(tool) ?? 0) + 1,
    /** Nothing comes until then. */
    wait: (untilMs: number) => {
      nowMs = untilMs;
    },
    /** The tools of these instruments, by their serial numbers where they have one. */
    join: (source: FigureSource = 'linked') => {
      const { instruments } = bench.state();
      for (const [tool, reads] of [
        ['wrench', WRENCH],
        ['gauge', GAUGE],
      ] as const) {
        const serial = instruments.find(({ id }) => id === tool)?.serial;
        const description = serial === undefined ? reads : { ...reads, serial };
        const link = { kind: LINK[source], authenticated: false } as const;
        const linked = { state: 'linked', description: { ...description, link } } as const;
        give({ kind: 'link', tool, driver: 'test', source, link: linked });
      }
    },
    gap: (mm: number) => {
      nowMs += 500;
      value('gauge', nowMs, mm * 10_000);
    },
    /** Nothing happens, for long enough to go to another plug or to be told that one stopped short. */
    rest,
    /** On to a plug that turns, and pulled until the wrench clicks. */
    pull: (peakNm: number, riseMs = 700) => {
      rest();
      draw([{ atMs: 0, nm: 0 }, ...turningPull(400, riseMs, peakNm, peakNm * 0.8, peakNm * 0.8)]);
    },
    /** One that may have turned a plug or tried a tight one: hardly bent. */
    doubtful: (peakNm: number, gives = 0.22) => {
      rest();
      draw([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, peakNm, peakNm * 0.8, peakNm * 0.8, gives)]);
    },
    /** On from where a plug had stopped: fast to there, slower beyond. */
    goOn: (heldNm: number, peakNm: number) => {
      const [, ...click] = clickPull(460, 300, peakNm, peakNm * 0.8, peakNm * 0.8);
      draw([{ atMs: 0, nm: 0 }, { atMs: 400, nm: 0 }, { atMs: 460, nm: heldNm }, ...click]);
    },
    /** A second pull on a plug already tight. */
    again: (peakNm: number) =>
      draw([{ atMs: 0, nm: 0 }, ...clickPull(400, 90, peakNm, peakNm * 0.8, peakNm * 0.8)]),
    /** A pull that turns a plug and ends without a click, let off slowly. */
    stopShort: (peakNm: number) =>
      draw([
        { atMs: 0, nm: 0 },
        { atMs: 400, nm: 0 },
        { atMs: 620, nm: 0.2 * peakNm },
        { atMs: 800, nm: 0.5 * peakNm },
        { atMs: 920, nm: 0.8 * peakNm },
        { atMs: 1000, nm: peakNm },
        { atMs: 1900, nm: 0 },
        { atMs: 2300, nm: 0 },
      ]),
    loosen: (nm: number) =>
      draw([
        { atMs: 0, nm: 0 },
        { atMs: 400, nm: 0 },
        { atMs: 550, nm: -nm },
        { atMs: 900, nm: 0 },
        { atMs: 1300, nm: 0 },
      ]),
    /** The first half of a pull: the torque is still on. */
    halfPull: (nm: number) =>
      draw([
        { atMs: 0, nm: 0 },
        { atMs: 400, nm: 0 },
        { atMs: 900, nm },
      ]),
    answer: (answer: Answer) => {
      const question = bench.state().questions[0];
      if (question === undefined) throw new Error('no question is open');
      return give({ kind: 'command', command: { do: 'answer', pull: question.pull, answer } });
    },
    cylinder: (number: number) => {
      const found = bench.state().cylinders.find(({ cylinder }) => cylinder === number);
      if (found === undefined) throw new Error(`no cylinder ${number}`);
      return found;
    },
  };
}
