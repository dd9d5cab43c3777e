/** What a turn is worth against the limits of an order, and what torque and turn are worth together. */
import { describe, expect, it } from 'vitest';
import { judgedTurn, strokeTurn, turnSoFar, turnWindow, turnWith, withTurn } from '../../src/job/turn.ts';
import type { Grade, Judgement } from '../../src/metrology/judgement.ts';
import type { DetectedPull, PlugTurn, Pull } from '../../src/pull/pull.ts';
import { pullOf, turn } from '../sequence/pulls.ts';
import { typedJob } from './typed-job.ts';
import { exampleOrder } from './workshop.ts';

const RESULTS = ['NotOK', 'NotDecidable', 'OK'] as const;
const GRADES: readonly Grade[] = ['fail', 'conditional-fail', 'conditional-pass', 'pass'];
const verdict = (change: Partial<Judgement>): Judgement => ({
  result: 'OK',
  side: 'inside',
  grade: 'pass',
  value: 27,
  expandedUncertainty: 0.5,
  conformanceProbability: 0.999,
  ...change,
});

describe('a verdict on torque and turn', () => {
  it('is no better than either of them, in result, grade and probability', () => {
    for (const [i, a] of RESULTS.entries())
      for (const [j, b] of RESULTS.entries())
        expect(withTurn(verdict({ result: a }), verdict({ result: b })).result).toBe(RESULTS[Math.min(i, j)]);
    for (const [i, a] of GRADES.entries())
      for (const [j, b] of GRADES.entries())
        expect(withTurn(verdict({ grade: a }), verdict({ grade: b })).grade).toBe(GRADES[Math.min(i, j)]);
    const both = withTurn(verdict({ conformanceProbability: 0.7 }), verdict({ conformanceProbability: 0.6 }));
    expect(both.conformanceProbability).toBe(0.6);
  });

  // High is what a plug may have to come out for, so it comes before low; low is gone on with.
  it.each([
    ['inside', 'inside', 'inside'],
    ['inside', 'low', 'low'],
    ['inside', 'high', 'high'],
    ['low', 'inside', 'low'],
    ['low', 'low', 'low'],
    ['low', 'high', 'high'],
    ['high', 'inside', 'high'],
    ['high', 'low', 'high'],
    ['high', 'high', 'high'],
  ] as const)('torque %s and turn %s: %s', (torque, turned, side) => {
    expect(withTurn(verdict({ side: torque }), verdict({ side: turned })).side).toBe(side);
  });

  it('keeps value and uncertainty of the torque', () => {
    const both = withTurn(verdict({}), verdict({ value: 180, expandedUncertainty: 4 }));
    expect(both).toMatchObject({ value: 27, expandedUncertainty: 0.5 });
  });

  it('is open where the turn was not measured, unless the torque alone says no', () => {
    expect(withTurn(verdict({}), null)).toEqual(
      verdict({ result: 'NotDecidable', grade: 'conditional-pass' }),
    );
    for (const result of ['NotOK', 'NotDecidable'] as const)
      expect(withTurn(verdict({ result, grade: 'fail' }), null)).toEqual(verdict({ result, grade: 'fail' }));
  });
});

const order = exampleOrder(4);
const byTurn = (limits = '150-200°') =>
  typedJob({ ...order, specification: { ...order.specification, turn: limits } });
/** A pull whose plug turned so far, with the least doubt that it can have unless more is given; contact null: not seen. */
function turnedBy(
  turnedDeg: number,
  { contactDeg = 0, ...change }: Omit<Partial<PlugTurn>, 'contactDeg'> & { contactDeg?: number | null } = {},
  pull = 1,
): Pull & { readonly turn: NonNullable<Pull['turn']> } {
  const { turn: whole } = turn(turnedDeg);
  const { plug } = whole;
  if (plug === undefined) throw new Error('no turn of a plug');
  const contact = contactDeg === null ? {} : { contactDeg };
  const turned: PlugTurn = { ...plug, standardDeg: 0, windUpDeg: 0, ...contact, ...change };
  return { ...pullOf(), turn: { ...whole, plug: turned }, pull, tool: 'wrench', source: 'linked' };
}

describe('the turn of a plug', () => {
  it('is that from half of how far contact may lie before it, and as uncertain by the other half', () => {
    const state = byTurn().state();
    const plain = turnWith(state, 1, turnedBy(170));
    const early = turnWith(state, 1, turnedBy(170, { contactDeg: 20 }));
    expect([plain?.turnedDeg, early?.turnedDeg]).toEqual([170, 180]);
    // By hand: a tool that says nothing is off by 2 % of the turn at most, rectangular; contact by 10° to either side.
    expect(plain?.budget.expanded).toBeCloseTo(2 * (3.4 / Math.sqrt(3)), 9);
    expect(early?.budget.expanded).toBeCloseTo(2 * Math.hypot(3.6 / Math.sqrt(3), 10 / Math.sqrt(3)), 9);
  });

  it('adds drift from stroke to stroke, and what the tools were wound up by in each', () => {
    const state = byTurn().state();
    const expandedBy = (change: Partial<PlugTurn>) =>
      turnWith(state, 1, turnedBy(100, change))?.budget.expanded;
    // 2° at least from the tool by its share of 100°; the wind-up unwinds but for a twentieth, rectangular.
    expect(expandedBy({ standardDeg: 1.5 })).toBeCloseTo(2 * Math.hypot(2 / Math.sqrt(3), 1.5), 9);
    expect(expandedBy({ windUpDeg: 40 })).toBeCloseTo(2 * Math.hypot(2 / Math.sqrt(3), 2 / Math.sqrt(3)), 9);
    expect(expandedBy({ windUpDeg: null, strokes: 2, woundUpDeg: 60 })).toBeCloseTo(
      2 * Math.hypot(2 / Math.sqrt(3), 3 / Math.sqrt(3)),
      9,
    );
    expect(expandedBy({ windUpDeg: -40 })).toBeCloseTo(expandedBy({ windUpDeg: 0 }) ?? 0, 12);
  });

  it('is all strokes on the plug together, in front of the pull and with it', () => {
    const it = byTurn();
    const stroke = (deg: number, contactDeg = 0) => ({ turn: turnedBy(deg, { contactDeg }).turn });
    it.give(...detected(1, stroke(60, 8)), placed(1, 'run-down'));
    it.give(...detected(2, stroke(50)), placed(2, 'run-down'));
    expect(turnWith(it.state(), 1, turnedBy(40, {}, 3))?.turnedDeg).toBe(154);
    // A pull that is looked at again does not count itself, nor what came behind it.
    expect(turnWith(it.state(), 1, turnedBy(50, {}, 2))?.turnedDeg).toBe(114);
    expect(turnWith(it.state(), 2, turnedBy(40, {}, 3))?.turnedDeg).toBe(40);
    expect(strokeTurn(it.state(), turnedBy(40, { contactDeg: 8 }, 3))?.turnedDeg).toBe(40);
    it.give(...detected(3, {}), placed(3, 'run-down'));
    expect(turnWith(it.state(), 1, turnedBy(40, {}, 4))).toBeNull();
  });

  it('is not known without an angle, or where contact was not seen', () => {
    const state = byTurn().state();
    const pull = turnedBy(170);
    expect(turnWith(state, 1, { ...pull, turn: null })).toBeNull();
    expect(strokeTurn(state, { ...pull, turn: null })).toBeNull();
    expect(turnWith(state, 1, turnedBy(170, { contactDeg: null }))).toBeNull();
    expect(strokeTurn(state, turnedBy(170, { contactDeg: null }))?.turnedDeg).toBe(170);
  });

  it('is judged where the order asks for one, with the guard band of this very turn', () => {
    const pull = turnedBy(175);
    expect(judgedTurn(typedJob().state(), 1, pull)).toBeUndefined();
    expect(judgedTurn(byTurn().state(), 1, { ...pull, turn: null })).toBeNull();
    const at = (deg: number) => judgedTurn(byTurn().state(), 1, turnedBy(deg));
    expect(at(175)).toMatchObject({ result: 'OK', side: 'inside', value: 175 });
    expect(at(150)).toMatchObject({ result: 'NotDecidable', side: 'low' });
    expect(at(140)).toMatchObject({ result: 'NotOK', side: 'low' });
    expect(at(200)).toMatchObject({ result: 'NotDecidable', side: 'high' });
    expect(at(215)).toMatchObject({ result: 'NotOK', side: 'high' });
  });

  it('has a window where the order names two limits', () => {
    const { budget } = turnWith(byTurn().state(), 1, turnedBy(175)) ?? expect.fail('no turn');
    expect(turnWindow(byTurn().state(), budget)).toMatchObject({
      unit: 'deg',
      lowerLimit: 150,
      upperLimit: 200,
    });
    const { basis } = byTurn().state();
    const one = basis.turn === undefined ? {} : { turn: { ...basis.turn, lowerDeg: 200 } };
    expect(turnWindow({ basis: { ...basis, ...one } }, budget)).toBeNull();
    expect(turnWindow(typedJob().state(), budget)).toBeNull();
  });
});

function detected(pull: number, change: Partial<DetectedPull>) {
  const startUs = 20_000_000 * pull;
  const figures = pullOf({ startUs, endUs: startUs + 1_000_000, ...change });
  return [{ type: 'pull-detected', ...figures, pull, tool: 'wrench', source: 'linked' }] as const;
}

const placed = (pull: number, kind: 'run-down' | 'tightening') =>
  ({ type: 'pull-placed', pull, cylinder: 1, kind, because: 'plug-turned', judgement: null }) as const;

describe('the turn on the screen', () => {
  it('is the strokes before and the one under way, less the wind-up that the last pull showed', () => {
    const it = byTurn();
    expect(turnSoFar(it.state(), { turnedDeg: 30, nowNm: 12 })).toBe(30);
    expect(turnSoFar(it.state(), { turnedDeg: null, nowNm: 12 })).toBeNull();
    // 24° of wind-up from 2 N·m to the click at 26: 1° for each N·m.
    const stroke = { ...turnedBy(60, { windUpDeg: 24, fromNm: 2 }), releaseNm: 26 };
    const { pull: _pull, tool: _tool, source: _source, ...figures } = stroke;
    it.give(...detected(1, figures), placed(1, 'run-down'));
    expect(turnSoFar(it.state(), { turnedDeg: 30, nowNm: 12 })).toBe(60 + 18);
    expect(turnSoFar(it.state(), { turnedDeg: 30, nowNm: -3 })).toBe(90);
    expect(turnSoFar(it.state(), { turnedDeg: 30, nowNm: null })).toBe(90);
    expect(turnSoFar(it.state(), { turnedDeg: 5, nowNm: 12 })).toBe(60);
    const other = { ...it.state(), torqueTarget: 2 };
    expect(turnSoFar(other, { turnedDeg: 30, nowNm: 12 })).toBe(18);
    expect(turnSoFar({ ...other, torqueTarget: null }, { turnedDeg: 30, nowNm: 12 })).toBeNull();
  });

  it('takes nothing off where the last pull says nothing of it', () => {
    const it = byTurn();
    const at = (change: Partial<DetectedPull>) => {
      it.give(...detected(1, change));
      return turnSoFar(it.state(), { turnedDeg: 30, nowNm: 12 });
    };
    expect(at({})).toBe(30);
    const plug = (change: Partial<PlugTurn>) => ({
      turn: turnedBy(60, { windUpDeg: 24, fromNm: 2, ...change }).turn,
    });
    expect(at({ ...plug({ windUpDeg: null }) })).toBe(30);
    expect(at({ ...plug({ windUpDeg: -24 }) })).toBe(30);
    expect(at({ ...plug({ fromNm: 27 }), releaseNm: 27 })).toBe(30);
    // Without a click by its peak, and by how far that was below zero where it was turned the other way.
    expect(at({ ...plug({}), releaseNm: null, peakNm: -26 })).toBe(18);
  });
});
