import { describe, expect, it } from 'vitest';
import { type Bench, createBench } from '../../src/job/bench.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { roundedJudgement } from '../../src/job/judging.ts';
import { measured } from '../../src/job/measurement.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { replay } from '../../src/job/replay.ts';
import { stageOf } from '../../src/job/stage.ts';
import { judge } from '../../src/metrology/window.ts';
import { turningPull } from '../pull/shapes.ts';
import { exampleOrder, handsOn, INSTRUMENTS, OPENING, WRENCH, workshop } from './workshop.ts';

const order = exampleOrder(4);
const adapter = { armMm: 300, offsetMm: 40, angleDeg: 0, within: { armMm: 2, offsetMm: 1, angleDeg: 5 } };
const judgements = (events: readonly JobEvent[]) =>
  events.flatMap((event) =>
    (event.type === 'pull-placed' || event.type === 'gap-measured') && event.judgement !== null
      ? [event.judgement]
      : [],
  );

function opened(given: WorkOrder, instruments = INSTRUMENTS): { bench: Bench; events: JobEvent[] } {
  const opening = openJob(given, instruments, OPENING);
  if (!opening.ok) throw new Error(opening.error.message);
  const state = foldAll(opening.value);
  if (state === null) throw new Error('nothing opened');
  return { bench: createBench(state), events: [...opening.value] };
}

describe('the verdict on a pull', () => {
  it('is never OK where the zero moved just before the pull, though the reading lies in the window', () => {
    const shop = workshop();
    const [, ...pull] = turningPull(400, 700, 28.2, 22, 22);
    const jumped = pull.map(({ atMs, nm }) => ({ atMs, nm: nm + 0.9 }));
    const before = [
      { atMs: 0, nm: 0 },
      { atMs: 300, nm: 0 },
      { atMs: 301, nm: 0.9 },
      { atMs: 400, nm: 0.9 },
    ];
    shop.rest();
    shop.draw([...before, ...jumped]);
    const [attempt] = shop.cylinder(1).pulls;
    expect(attempt?.pull.zeroSettled).toBe(false);
    expect(attempt?.judgement?.result).toBe('NotDecidable');
    expect(shop.cylinder(1).torque).not.toBe('done');
  });

  it('rests on the budget of that very reading, its peak included', () => {
    const shop = workshop();
    shop.pull(27);
    const { pull, judgement } = shop.cylinder(1).pulls[0] ?? expect.fail('no pull');
    const [wrench] = INSTRUMENTS;
    if (wrench === undefined) throw new Error('no wrench');
    const own = measured(wrench, pull.peakNm, { on: OPENING.on, adapter: undefined }, pull.peakStandardNm);
    expect(judgement).toEqual(
      roundedJudgement(judge(own.value, own.budget, shop.bench.state().torqueWindow)),
    );
    const without = measured(wrench, pull.peakNm, { on: OPENING.on, adapter: undefined }, null);
    expect(own.budget.expanded).toBeGreaterThan(without.budget.expanded);
  });

  it('is about what the plug saw, through an adapter', () => {
    const { bench, events } = opened({ ...order, adapter });
    const hands = handsOn(bench, events);
    hands.give({ kind: 'session', program: 'test', platform: 'test' });
    hands.join();
    hands.pull(24.2);
    const { pull, judgement } = hands.cylinder(1).pulls[0] ?? expect.fail('no pull');
    expect(pull.peakNm).toBeCloseTo(24.2, 1);
    expect(judgement?.value).toBeCloseTo((pull.peakNm * 340) / 300, 6);
    expect(judgement?.result).toBe('OK');
    expect(replay(events).ok).toBe(true);
  });

  it('takes the error of the certificate off where the shop corrects', () => {
    const [wrench, gauge] = INSTRUMENTS;
    if (wrench === undefined || gauge === undefined) throw new Error('two instruments');
    const points = [
      { reading: 10, error: 0.4, expanded: 0.1, k: 2 },
      { reading: 60, error: 0.4, expanded: 0.1, k: 2 },
    ];
    const certificate = {
      number: 'C',
      laboratory: 'L',
      serial: 'W',
      date: '2026-01-01',
      unit: 'N.m' as const,
      points,
    };
    const { bench, events } = opened(order, [{ ...wrench, serial: 'W', certificate, correct: true }, gauge]);
    const hands = handsOn(bench, events);
    hands.give({ kind: 'session', program: 'test', platform: 'test' });
    hands.join();
    hands.pull(27);
    const { pull, judgement } = hands.cylinder(1).pulls[0] ?? expect.fail('no pull');
    expect(judgement?.value).toBeCloseTo(pull.peakNm - 0.4, 9);
    expect(replay(events).ok).toBe(true);
  });
});

describe('an uncertainty that comes over the air', () => {
  const joined = (percent: number) => {
    const { bench, events } = opened(order);
    const hands = handsOn(bench, events);
    hands.give({ kind: 'session', program: 'test', platform: 'test' });
    const description = { ...WRENCH, uncertainty: { kind: 'relative', percent } as const };
    hands.give({
      kind: 'link',
      tool: 'wrench',
      driver: 'test',
      source: 'linked',
      link: { state: 'linked', description },
    });
    return { bench, events, hands };
  };

  it('makes the guard bands wider when it is larger than listed', () => {
    const { bench, events, hands } = joined(4);
    expect(events.at(-1)).toMatchObject({ type: 'uncertainty-declared', tool: 'wrench' });
    const { acceptLower } = bench.state().torqueWindow;
    expect(acceptLower).toBeCloseTo(25 + 2 * Math.sqrt(1 / 3 + 0.125 ** 2), 2);
    hands.pull(26);
    expect(hands.cylinder(1).pulls[0]?.judgement?.result).toBe('NotDecidable');
    const again = replay(events);
    expect(again.ok && again.value.state()).toEqual(bench.state());
  });

  it('never makes them narrower: a link is no proof', () => {
    const { bench, events } = joined(1);
    expect(events.some(({ type }) => type === 'uncertainty-declared')).toBe(false);
    expect(bench.state().torqueWindow.acceptLower).toBeCloseTo(25.591, 3);
  });

  it('leads to no OK at all when the guard bands meet', () => {
    const { bench, hands } = joined(20);
    expect(bench.state().torqueWindow.decidable).toBe(false);
    hands.pull(27.4);
    expect(hands.cylinder(1).torque).not.toBe('done');
  });
});

describe('tightening in two steps', () => {
  const twoStep = {
    ...order,
    specification: {
      ...order.specification,
      torque: '15-20 N·m',
      tightenFirst: '25-30 N·m',
      checkedBy: 'A. Foreman',
    },
  };

  it('is proven by the second, and only behind the first and a loosening', () => {
    const shop = workshop(twoStep);
    shop.pull(27);
    expect([shop.cylinder(1).torque, stageOf(shop.bench.state(), 1)]).toEqual(['again', 'loosen']);
    expect(shop.cylinder(1).pulls[0]?.judgement?.result).toBe('OK');
    shop.loosen(15);
    expect(stageOf(shop.bench.state(), 1)).toBe('final');
    shop.pull(17.5);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['tightening', 'loosening', 'tightening']);
    expect(shop.cylinder(1).torque).toBe('done');
    const again = replay(shop.events);
    expect(again.ok && again.value.state()).toEqual(shop.bench.state());
  });
});

describe('a record that is judged again', () => {
  it('gives the windows and the verdicts bit for bit', () => {
    const shop = workshop();
    for (const mm of [0.74, 0.86, 0.76]) shop.gap(mm);
    shop.pull(27);
    const written: JobEvent[] = JSON.parse(JSON.stringify(shop.events));
    const again = replay(written);
    if (!again.ok) throw new Error(again.error.message);
    expect(again.value.state().torqueWindow).toEqual(shop.bench.state().torqueWindow);
    expect(again.value.state()).toEqual(shop.bench.state());
    expect(judgements(written)).toEqual(judgements(shop.events));
  });

  it.each<[string, (opening: Extract<JobEvent, { type: 'job-opened' }>) => JobEvent]>([
    [
      'a narrower guard band',
      (event) => ({ ...event, torqueWindow: { ...event.torqueWindow, acceptLower: 25.1 } }),
    ],
    [
      'a better wrench',
      (event) => ({
        ...event,
        instruments: event.instruments.map((one) => ({ ...one, resolution: one.resolution / 2 })),
      }),
    ],
    [
      'another figure',
      (event) => ({
        ...event,
        order: { ...event.order, specification: { ...event.order.specification, torque: '24-30 N·m' } },
      }),
    ],
    [
      'a softer rule',
      (event) => ({
        ...event,
        basis: { ...event.basis, decision: { rule: { kind: 'simple' }, grades: false } },
      }),
    ],
    ['fewer notes', (event) => ({ ...event, basis: { ...event.basis, notes: [] } })],
  ])('shows that somebody wrote %s into its opening', (_what, forge) => {
    const [opening, ...rest] = workshop().events;
    if (opening?.type !== 'job-opened') throw new Error('not opened');
    expect(replay([opening, ...rest]).ok).toBe(true);
    expect(replay([forge(opening), ...rest])).toMatchObject({
      ok: false,
      error: { code: 'judged-otherwise' },
    });
  });

  it('shows that an override was left out', () => {
    const [wrench, gauge] = INSTRUMENTS;
    if (wrench === undefined || gauge === undefined) throw new Error('two instruments');
    const small = { ...wrench, range: { from: 5, to: 20 } };
    const overrides = [{ tool: 'wrench', by: 'A. Foreman', reason: 'only one here' }];
    const opening = openJob(order, [small, gauge], { ...OPENING, overrides });
    if (!opening.ok) throw new Error(opening.error.message);
    expect(replay(opening.value).ok).toBe(true);
    expect(replay(opening.value.slice(0, 1))).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining('could not have been opened so') },
    });
  });
});
