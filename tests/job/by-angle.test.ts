import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/job/event.ts';
import { replay } from '../../src/job/replay.ts';
import { turnSoFar } from '../../src/job/turn.ts';
import { budgetsOf } from '../../src/rules/budgets.ts';
import { outcomeOf } from '../../src/rules/judge.ts';
import { summaryOf } from '../../src/rules/summary.ts';
import { turningShop } from './turning-shop.ts';

const TORQUE = '1/2-2/3 turn';
const byAngle = (angle = true, torque = TORQUE) => turningShop({ specification: { torque }, angle });
/** Turns by so many degrees for a N·m. */
const linear = (degPerNm: number) => (nm: number) => degPerNm * nm;
/** 210° at 28 N·m. */
const plug = linear(7.5);

describe('an order by angle alone', () => {
  it('opens with the turn to judge, and the torque that thread and seat usually take', () => {
    const { basis, torqueWindow } = byAngle().bench.state();
    expect(basis.turn).toEqual({ lowerDeg: 180, upperDeg: 240, alone: true });
    expect(basis.notes).toContainEqual({ code: 'by-angle-alone' });
    // General tables for this thread and seat, and a quarter more to either side.
    expect(torqueWindow.lowerLimit).toBeLessThan(20);
    expect(torqueWindow.upperLimit).toBeGreaterThan(35);
  });

  it('is proven by a turn within its limits, wherever the torque stopped', () => {
    const shop = byAngle();
    shop.stroke(28, plug);
    const [placed] = shop.placed();
    expect(placed).toMatchObject({ judgement: { result: 'OK' }, turn: { result: 'OK', side: 'inside' } });
    expect(Math.abs((placed?.turn?.value ?? 0) - plug(28))).toBeLessThan(
      placed?.turn?.expandedUncertainty ?? 0,
    );
    expect(shop.cylinder(1)?.torque).toBe('done');
    expect(replay(shop.events).ok).toBe(true);
  });

  it('adds the strokes of a ratchet, whatever time lies between them', () => {
    for (const restMs of [10, 300, 1200, 3000, 9000]) {
      const shop = byAngle();
      shop.stroke(12, plug);
      shop.stroke(20, plug, { heldNm: 12, restMs });
      shop.stroke(28, plug, { heldNm: 20, restMs });
      const last = shop.placed().at(-1);
      expect(last, `${restMs} ms`).toMatchObject({ cylinder: 1, turn: { result: 'OK' } });
      expect(Math.abs((last?.turn?.value ?? 0) - plug(28))).toBeLessThan(
        last?.turn?.expandedUncertainty ?? 0,
      );
      expect(shop.cylinder(1)?.torque).toBe('done');
      expect(replay(shop.events).ok).toBe(true);
    }
  });

  it('asks for more where the turn is short, and the next plug is not begun meanwhile', () => {
    const shop = byAngle();
    shop.stroke(20, plug);
    expect(shop.placed().at(-1)).toMatchObject({
      judgement: { result: 'NotOK', side: 'low', grade: 'fail' },
    });
    expect(shop.cylinder(1)?.torque).toBe('again');
    expect(shop.bench.state().torqueTarget).toBe(1);
  });

  it('asks for the plug to be taken out where it was turned too far', () => {
    const shop = byAngle();
    shop.stroke(28, linear(10));
    expect(shop.placed()[0]).toMatchObject({ turn: { side: 'high' }, judgement: { result: 'NotOK' } });
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'over-window' }]);
  });

  it.each([
    ['a thread that binds', 50, 4.2],
    ['a thread that gives way', 12, 17.5],
  ])('is never OK at a torque that no such plug takes: %s', (_what, nm, degPerNm) => {
    const shop = byAngle();
    shop.stroke(nm, linear(degPerNm));
    shop.rest(4000);
    const last = shop.placed().at(-1);
    expect(last?.judgement?.result).not.toBe('OK');
    expect(shop.cylinder(1)?.torque).not.toBe('done');
  });

  it('is not decided where nobody saw contact: the plug stood up to a high torque, and then turned', () => {
    const shop = byAngle();
    // Turned before by 80° with the readings away, and then by 205°, which would be right by itself.
    shop.stroke(28, (nm) => 12 * Math.max(0, nm - 11));
    const [placed] = shop.placed();
    expect(placed?.judgement?.result).not.toBe('OK');
    expect(placed?.turn?.expandedUncertainty).toBeGreaterThan(40);
  });

  it('shows how far the plug has come, without the wind-up that the last pull showed', () => {
    const shop = byAngle();
    shop.stroke(20, plug);
    const state = shop.bench.state();
    // 14 N·m at 2 N·m a degree are 7 degrees of wind-up, of which those above the start of the pull were seen.
    const soFar = turnSoFar(state, { turnedDeg: 30, nowNm: 14 }) ?? 0;
    expect(Math.abs(soFar - (plug(20) + 23))).toBeLessThan(plug(1.5) + 1);
    expect(turnSoFar(state, { turnedDeg: null, nowNm: 14 })).toBeNull();
  });
});

describe('the budget of a turn in the record', () => {
  const turnBudgets = (shop: ReturnType<typeof byAngle>) =>
    budgetsOf(shop.bench.state()).filter(({ unit }) => unit === 'deg');

  it('names what the turn rests on, for the pull that it was judged with', () => {
    const shop = byAngle();
    shop.stroke(28, plug);
    const [budget, ...more] = turnBudgets(shop);
    expect(more).toEqual([]);
    expect(budget).toMatchObject({ tool: 'wrench', unit: 'deg', pull: 1 });
    expect(budget?.rows.map(({ cause }) => cause)).toEqual([
      'turn-reading',
      'turn-tool',
      'contact',
      'wind-up',
    ]);
    const [placed] = shop.placed();
    expect(budget?.at).toBeCloseTo(placed?.turn?.value ?? 0, 6);
    expect(budget?.expanded).toBeCloseTo(placed?.turn?.expandedUncertainty ?? 0, 4);
    const squares = budget?.rows.reduce((sum, row) => sum + row.contribution ** 2, 0) ?? 0;
    expect(budget?.standard).toBeCloseTo(Math.sqrt(squares), 9);
  });

  it('is there for torque and turn too, and not for torque alone', () => {
    const both = turningShop({ specification: { turn: '150-240°' } });
    both.pull(27.5, plug);
    expect(turnBudgets(both)).toHaveLength(1);
    const torque = turningShop();
    torque.pull(27.5, plug);
    expect(turnBudgets(torque)).toEqual([]);
  });
});

describe('an order by angle without a wrench that sends one', () => {
  it('is recorded as done by hand, and never as proven', () => {
    const shop = byAngle(false);
    for (const cylinder of [1, 2, 3, 4])
      shop.say({ do: 'fit-by-angle', cylinder, turn: TORQUE, why: 'no wrench sends an angle' });
    const summary = summaryOf(shop.bench.state());
    for (const { torque, settlement } of summary.cylinders) {
      expect(torque).toMatchObject({ state: 'settled', judgement: null });
      expect(settlement).toEqual({ kind: 'by-angle', turn: TORQUE });
    }
    expect(summary.figures.torque).toEqual({ linked: 0, typed: 0, replayed: 0, simulated: 0 });
  });

  it('says so before the first pull', () => {
    const shop = byAngle(false);
    shop.rest();
    expect(shop.bench.forecast()).toEqual({ tool: 'wrench', kind: 'no-angle' });
    const sends = byAngle();
    sends.rest();
    expect(sends.bench.forecast()).toBeNull();
  });

  const ANSWERS: readonly Answer[] = ['fresh', 'rehit', 'refit', 'unfinished', 'replace', 'handling'];
  const pulled = fc.record({
    nm: fc.double({ min: 5, max: 60, noNaN: true }),
    degPerNm: fc.double({ min: 0, max: 15, noNaN: true }),
    restMs: fc.integer({ min: 10, max: 6000 }),
    answer: fc.constantFrom(...ANSWERS),
  });

  it.each<[string, () => ReturnType<typeof byAngle>, (n: number) => boolean]>([
    ['the wrench sends none', () => byAngle(false), () => false],
    ['one angle in forty is missing', () => byAngle(), (n) => n % 40 === 0],
    ['the order names one figure without a tolerance', () => byAngle(true, '1/2 turn'), () => false],
  ])('no cylinder is ever proven, whatever is pulled and answered: %s', (_what, open, lost) => {
    fc.assert(
      fc.property(fc.array(pulled, { minLength: 1, maxLength: 8 }), (pulls) => {
        const shop = open();
        for (const { nm, degPerNm, restMs, answer } of pulls) {
          shop.stroke(nm, linear(degPerNm), { restMs, lost });
          const [question] = shop.bench.state().questions;
          if (question === undefined) continue;
          const allowed = question.answers.includes(answer) ? answer : question.answers[0];
          if (allowed !== undefined) shop.say({ do: 'answer', pull: question.pull, answer: allowed });
        }
        const { summary } = outcomeOf(shop.events);
        for (const { torque } of summary.cylinders) {
          expect(torque.state).not.toBe('done');
          expect(torque.judgement?.result).not.toBe('OK');
        }
      }),
      { numRuns: 60 },
    );
  });
});
