import { describe, expect, it } from 'vitest';
import { type BenchInput, createBench } from '../../src/job/bench.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { replay } from '../../src/job/replay.ts';
import { clickPull } from '../pull/shapes.ts';
import { gasket, stands, turned } from '../pull/turned-samples.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from './workshop.ts';

/** A job on four cylinders with a wrench that sends its angle, of which `turn` is asked beside the torque. */
function turningShop({ turn, angle = true }: { readonly turn?: string; readonly angle?: boolean } = {}) {
  const order = exampleOrder(4);
  const specification = { ...order.specification, ...(turn !== undefined && { turn }) };
  const opening = openJob({ ...order, specification }, INSTRUMENTS, OPENING);
  if (!opening.ok) throw new Error(opening.error.message);
  const events: JobEvent[] = [...opening.value];
  const state = foldAll(events);
  if (state === null) throw new Error('nothing opened');
  const bench = createBench(state);
  const give = (input: BenchInput) => {
    const out = bench.accept(input);
    if (!out.ok) throw new Error(out.error.message);
    events.push(...out.value);
  };
  give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  const description = {
    ...WRENCH,
    ...(angle && { angle: { exponent: -2, driftDegPerMin: 1, uncertaintyDeg: 2 } }),
  };
  give({
    kind: 'link',
    tool: 'wrench',
    driver: 'test',
    source: 'linked',
    link: { state: 'linked', description },
  });
  let n = 0;
  let nowMs = 0;
  return {
    bench,
    events,
    give,
    /** Pulled to a click at `nm`. */
    pull: (nm: number, plugDeg: (nm: number) => number) => {
      const corners = [{ atMs: 0, nm: 0 }, ...clickPull(3000, 900, nm, 0.8 * nm, 0.85 * nm)];
      for (const one of turned(corners, { nmPerDeg: 2, plugDeg })) {
        n += 1;
        const angleCounts = Math.round(100 * one.deg);
        give({
          kind: 'reading',
          tool: 'wrench',
          reading: {
            kind: 'value',
            n,
            atUs: 1000 * nowMs + one.atUs,
            counts: Math.round(100 * one.nm),
            ...(angle && { angleCounts }),
          },
        });
      }
      nowMs += (corners.at(-1)?.atMs ?? 0) + 10;
    },
    placed: () => events.filter((event): event is JobEventOf<'pull-placed'> => event.type === 'pull-placed'),
    cylinder: (number: number) => bench.state().cylinders.find(({ cylinder }) => cylinder === number),
  };
}

describe('a wrench that sends its angle', () => {
  it('a cylinder left out shows when the last is due, however the pull looked', () => {
    const shop = turningShop();
    for (let plug = 1; plug < 4; plug++) shop.pull(27.5, gasket(180));
    shop.pull(27.5, stands);
    expect(shop.placed().at(-1)).toMatchObject({ kind: 'unsure', ask: 'already-tight', cylinder: 4 });
    expect(shop.cylinder(4)?.torque).toBe('ask');
  });

  it('the log keeps the angles, and judging again gives the same', () => {
    const shop = turningShop();
    shop.pull(27.5, gasket(180));
    shop.give({ kind: 'flush' });
    const readings = shop.events.filter((event) => event.type === 'readings');
    expect(readings.every(({ angles }) => angles !== undefined)).toBe(true);
    expect(replay(shop.events).ok).toBe(true);
    const without = shop.events.map((event) => {
      if (event.type !== 'readings') return event;
      const { angles: _angles, ...rest } = event;
      return rest;
    });
    expect(replay(without)).toMatchObject({ ok: false });
  });
});

describe('an order by torque and turn', () => {
  const turn = '150-200°';

  it('is OK where both are', () => {
    const shop = turningShop({ turn });
    shop.pull(27.5, (nm) => 7 * nm);
    const [placed] = shop.placed();
    expect(placed).toMatchObject({ judgement: { result: 'OK' }, turn: { result: 'OK', side: 'inside' } });
    expect(Math.abs((placed?.turn?.value ?? 0) - 7 * (27.5 - 2))).toBeLessThan(3);
    expect(shop.cylinder(1)?.torque).toBe('done');
    expect(replay(shop.events).ok).toBe(true);
  });

  it('is not decided where the plug was turned far while the torque rose little: contact is in doubt', () => {
    const shop = turningShop({ turn });
    shop.pull(27.5, gasket(260));
    expect(shop.placed()[0]).toMatchObject({ turn: { result: 'NotDecidable' } });
    expect(shop.placed()[0]?.turn?.expandedUncertainty).toBeGreaterThan(25);
    expect(shop.cylinder(1)?.torque).toBe('again');
  });

  it('is not OK where the torque is, but the plug was turned too little: it goes on', () => {
    const shop = turningShop({ turn });
    shop.pull(27.5, (nm) => 4 * nm);
    expect(shop.placed()[0]).toMatchObject({
      judgement: { result: 'NotOK', side: 'low' },
      turn: { result: 'NotOK', side: 'low' },
    });
    expect(shop.cylinder(1)?.torque).toBe('again');
  });

  it('asks where the plug was turned too far', () => {
    const shop = turningShop({ turn });
    shop.pull(27.5, (nm) => 10 * nm);
    expect(shop.placed()[0]).toMatchObject({ turn: { side: 'high' }, judgement: { result: 'NotOK' } });
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'over-window' }]);
  });

  it('proves nothing with a wrench that sends no angle', () => {
    const shop = turningShop({ turn, angle: false });
    shop.pull(27.5, gasket(260));
    const [asked] = shop.bench.state().questions;
    if (asked === undefined) throw new Error('no question');
    shop.give({ kind: 'command', command: { do: 'answer', pull: asked.pull, answer: 'fresh' } });
    expect(shop.placed().at(-1)).toMatchObject({ judgement: { result: 'NotDecidable' }, turn: null });
    expect(shop.cylinder(1)?.torque).not.toBe('done');
  });

  it('is refused without a tolerance', () => {
    expect(() => turningShop({ turn: '180°' })).toThrow(/without a tolerance/);
  });
});
