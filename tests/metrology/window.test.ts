import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../src/metrology/budget.ts';
import { judgementSchema, type Window, windowSchema } from '../../src/metrology/judgement.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { permissibleTerm, resolutionTerm } from '../../src/metrology/terms.ts';
import { conformanceProbability, judge, windowOf } from '../../src/metrology/window.ts';

const constant = (expanded: number) => () => normalSpread(expanded);
/** ±4 % of the reading, steps of 0.01. */
const wrench = (value: number) =>
  budgetOf([
    permissibleTerm({ kind: 'relative', percent: 4 }, value, { kind: 'station-file', basis: 'data sheet' }),
    resolutionTerm(0.01),
  ]);

/** 25 N·m ±10 % with U = 1 N·m throughout. */
const window25 = (guardBandFactor = 1) =>
  windowOf({ unit: 'N.m', lowerLimit: 22.5, upperLimit: 27.5, guardBandFactor, spreadAt: constant(1) });

describe('a window', () => {
  it('is narrowed by r·U at each limit, U being that of a reading at this limit', () => {
    const window = windowOf({
      unit: 'N.m',
      lowerLimit: 20,
      upperLimit: 30,
      guardBandFactor: 1,
      spreadAt: wrench,
    });
    expect(window.expandedAtLower).toBeCloseTo(2 * Math.sqrt(0.8 ** 2 / 3 + 0.01 ** 2 / 12), 12);
    expect(window.expandedAtUpper).toBeCloseTo(2 * Math.sqrt(1.2 ** 2 / 3 + 0.01 ** 2 / 12), 12);
    expect(window.acceptLower).toBeCloseTo(20.923778, 6);
    expect(window.acceptUpper).toBeCloseTo(28.614347, 6);
    expect(window.decidable).toBe(true);
    expect(windowSchema.parse(window)).toEqual(window);
  });

  it('reaches as far beyond each limit as it falls short of it inside, each side by its own guard band', () => {
    const window = windowOf({
      unit: 'N.m',
      lowerLimit: 20,
      upperLimit: 30,
      guardBandFactor: 1,
      spreadAt: (value) => normalSpread(value / 20),
    });
    const grades = [18.99, 19, 21, 28.5, 31.5, 31.51].map(
      (value) => judge(value, normalSpread(1), window).grade,
    );
    expect(grades).toEqual(['fail', 'conditional-fail', 'pass', 'pass', 'conditional-fail', 'fail']);
  });

  it('is not decidable when the guard bands meet, and then nothing is OK', () => {
    for (const expanded of [0.05, 0.06, 0.5]) {
      const window = windowOf({
        unit: 'mm',
        lowerLimit: 0.7,
        upperLimit: 0.8,
        guardBandFactor: 1,
        spreadAt: constant(expanded),
      });
      expect(window.decidable).toBe(false);
      for (let value = 0.6; value < 0.9; value += 0.001)
        expect(judge(value, normalSpread(expanded), window).result).not.toBe('OK');
      expect(judge(0.75, normalSpread(expanded), window).grade).toBe('conditional-pass');
    }
  });

  it('refuses limits that enclose nothing and uncertainties that are none', () => {
    const input = {
      unit: 'N.m',
      lowerLimit: 20,
      upperLimit: 30,
      guardBandFactor: 1,
      spreadAt: constant(1),
    } as const;
    expect(() => windowOf({ ...input, upperLimit: 20 })).toThrow(RangeError);
    expect(() => windowOf({ ...input, lowerLimit: Number.NaN })).toThrow(RangeError);
    expect(() => windowOf({ ...input, guardBandFactor: -1 })).toThrow(RangeError);
    expect(() => windowOf({ ...input, spreadAt: constant(0) })).toThrow(RangeError);
    expect(() => judge(Number.NaN, normalSpread(1), windowOf(input))).toThrow(RangeError);
    expect(() => judge(25, normalSpread(0), windowOf(input))).toThrow(RangeError);
  });
});

describe('a reading', () => {
  it.each([
    [21.49, 'NotOK', 'fail', 'low'],
    [21.5, 'NotDecidable', 'conditional-fail', 'low'],
    [22.49, 'NotDecidable', 'conditional-fail', 'low'],
    [22.5, 'NotDecidable', 'conditional-pass', 'low'],
    [23.49, 'NotDecidable', 'conditional-pass', 'low'],
    [23.5, 'OK', 'pass', 'inside'],
    [25, 'OK', 'pass', 'inside'],
    [26.5, 'OK', 'pass', 'inside'],
    [26.51, 'NotDecidable', 'conditional-pass', 'high'],
    [27.5, 'NotDecidable', 'conditional-pass', 'high'],
    [27.51, 'NotDecidable', 'conditional-fail', 'high'],
    [28.5, 'NotDecidable', 'conditional-fail', 'high'],
    [28.51, 'NotOK', 'fail', 'high'],
  ] as const)('of %d N·m in 22.5-27.5 with U = 1 is %s, %s, %s', (value, result, grade, side) => {
    expect(judge(value, normalSpread(1), window25())).toMatchObject({
      result,
      grade,
      side,
      value,
      expandedUncertainty: 1,
    });
  });

  it('on an acceptance limit is OK, whatever binary arithmetic makes of 0.7 + 0.03', () => {
    const window = windowOf({
      unit: 'mm',
      lowerLimit: 0.7,
      upperLimit: 0.8,
      guardBandFactor: 1,
      spreadAt: constant(0.03),
    });
    expect(judge(0.73, normalSpread(0.03), window).result).toBe('OK');
    expect(judge(0.77, normalSpread(0.03), window).result).toBe('OK');
    expect(judge(0.729, normalSpread(0.03), window).result).toBe('NotDecidable');
  });

  it('is either OK or NotOK under simple acceptance', () => {
    expect(judge(27.5, normalSpread(1), window25(0)).result).toBe('OK');
    expect(judge(27.51, normalSpread(1), window25(0)).result).toBe('NotOK');
  });

  it('of a far larger uncertainty than the window was made for still fits the contract', () => {
    for (const value of [-5, 0, 22.5, 25, 400])
      for (const expanded of [1e-9, 1, 1e9]) {
        const judgement = judge(value, normalSpread(expanded), window25());
        expect(judgementSchema.parse(judgement)).toEqual(judgement);
      }
  });
});

describe('whatever the window', () => {
  const limits = fc
    .tuple(fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 50, noNaN: true }))
    .map(([lowerLimit, width]) => ({ lowerLimit, upperLimit: lowerLimit + width }));
  const expanded = fc.double({ min: 1e-3, max: 20, noNaN: true });
  const factor = fc.double({ min: 0, max: 3, noNaN: true });
  const make = (l: { lowerLimit: number; upperLimit: number }, u: number, r: number): Window =>
    windowOf({ unit: 'N.m', ...l, guardBandFactor: r, spreadAt: constant(u) });
  const valueIn = fc.double({ min: -20, max: 200, noNaN: true });

  it('a decidable acceptance zone lies within the limits', () => {
    fc.assert(
      fc.property(limits, expanded, factor, (l, u, r) => {
        const window = make(l, u, r);
        expect(window.acceptLower).toBeGreaterThanOrEqual(l.lowerLimit);
        expect(window.acceptUpper).toBeLessThanOrEqual(l.upperLimit);
        if (window.decidable) expect(window.acceptLower).toBeLessThan(window.acceptUpper);
      }),
    );
  });

  it('more uncertainty makes no reading OK that was not, and none NotOK that was not', () => {
    fc.assert(
      fc.property(
        limits,
        expanded,
        fc.double({ min: 1, max: 5, noNaN: true }),
        factor,
        valueIn,
        (l, u, more, r, value) => {
          const before = judge(value, normalSpread(u), make(l, u, r)).result;
          const after = judge(value, normalSpread(u * more), make(l, u * more, r)).result;
          if (before !== 'OK') expect(after).not.toBe('OK');
          if (before !== 'NotOK') expect(after).not.toBe('NotOK');
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('the conformance probability falls with every step away from the middle', () => {
    const step = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(limits, expanded, step, step, fc.constantFrom(-1, 1), (l, u, a, b, sign) => {
        const middle = (l.lowerLimit + l.upperLimit) / 2;
        const near = conformanceProbability(middle + sign * Math.min(a, b), u / 2, l);
        const far = conformanceProbability(middle + sign * Math.max(a, b), u / 2, l);
        expect(far).toBeLessThanOrEqual(near + 1e-15);
      }),
      { numRuns: 500 },
    );
  });

  it('OK with r = 1 means at least 95.4 % conformance, NotOK at most 2.3 %', () => {
    fc.assert(
      fc.property(limits, expanded, valueIn, (l, u, value) => {
        const judgement = judge(value, normalSpread(u), make(l, u, 1));
        if (judgement.result === 'OK') expect(judgement.conformanceProbability).toBeGreaterThan(0.9544);
        if (judgement.result === 'NotOK') expect(judgement.conformanceProbability).toBeLessThan(0.02276);
      }),
      { numRuns: 1000 },
    );
  });

  it('the side says which way to go: a low reading is never helped by going lower', () => {
    fc.assert(
      fc.property(limits, expanded, factor, valueIn, (l, u, r, value) => {
        const window = make(l, u, r);
        const { side, result } = judge(value, normalSpread(u), window);
        if (result === 'OK') expect(side).toBe('inside');
        if (side === 'low') expect(judge(value - 1, normalSpread(u), window).result).not.toBe('OK');
        if (side === 'high') expect(judge(value + 1, normalSpread(u), window).result).not.toBe('OK');
      }),
    );
  });
});

describe('the conformance probability', () => {
  const limits = { lowerLimit: 20, upperLimit: 30 };

  it('is that of t scaled by u where the degrees of freedom are few', () => {
    // GUM (JCGM 100:2008), table G.2: t = 2.87 leaves 4.55 % outside with 4 degrees of freedom, half of it on each side.
    const spread = { standard: 1, degreesOfFreedom: 4, expanded: 2.87 };
    const far = {
      unit: 'N.m',
      ...limits,
      upperLimit: 1e6,
      guardBandFactor: 1,
      spreadAt: () => spread,
    } as const;
    expect(judge(22.87, spread, windowOf(far)).conformanceProbability).toBeCloseTo(1 - 0.0455 / 2, 3);
    // One degree of freedom is Cauchy's distribution: P(|T| <= 1) is one half.
    expect(conformanceProbability(25, 5, limits, 1)).toBeCloseTo(0.5, 12);
  });

  it('loses no figures in a tail', () => {
    expect(conformanceProbability(60, 1, limits, 200)).toBeGreaterThan(0);
    expect(conformanceProbability(60, 1, limits, 200)).toBeLessThan(1e-50);
  });

  it('becomes the normal one with many degrees of freedom', () => {
    for (const value of [19, 20.5, 25, 31])
      expect(conformanceProbability(value, 1, limits, 1e7)).toBeCloseTo(
        conformanceProbability(value, 1, limits),
        6,
      );
  });
});
