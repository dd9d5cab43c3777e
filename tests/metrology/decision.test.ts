import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acceptanceZone,
  type DecisionRule,
  largestExpandedBy,
  windowBy,
} from '../../src/metrology/decision.ts';
import { normalDensity } from '../../src/metrology/normal.ts';
import { globalRisk, guardBandFor, type Inspection } from '../../src/metrology/risk.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { conformanceProbability } from '../../src/metrology/window.ts';

const limits = { lowerLimit: 22.5, upperLimit: 27.5 };

describe('a decision rule', () => {
  it('draws the acceptance zone', () => {
    expect(acceptanceZone({ kind: 'simple' }, limits, normalSpread(1))).toEqual({ lower: 22.5, upper: 27.5 });
    expect(acceptanceZone({ kind: 'guard-band', r: 1 }, limits, normalSpread(1))).toEqual({
      lower: 23.5,
      upper: 26.5,
    });
    expect(acceptanceZone({ kind: 'iso-14253-1' }, limits, normalSpread(1))).toEqual({
      lower: 23.325,
      upper: 26.675,
    });
  });

  it('leaves nothing where the guard bands meet', () => {
    expect(acceptanceZone({ kind: 'guard-band', r: 1 }, limits, normalSpread(2 * 1.25))).toBeNull();
    expect(acceptanceZone({ kind: 'iso-14253-1' }, limits, normalSpread(2 * 1.6))).toBeNull();
    expect(acceptanceZone({ kind: 'probability', atLeast: 0.95 }, limits, normalSpread(2 * 1.3))).toBeNull();
  });

  it('by probability ends exactly where the probability is reached, also below one half', () => {
    const probability = fc.double({ min: 0.05, max: 0.999, noNaN: true });
    const standard = fc.double({ min: 0.01, max: 2, noNaN: true });
    fc.assert(
      fc.property(probability, standard, (atLeast, u) => {
        const zone = acceptanceZone({ kind: 'probability', atLeast }, limits, normalSpread(2 * u));
        if (zone === null) expect(conformanceProbability(25, u, limits)).toBeLessThanOrEqual(atLeast + 1e-9);
        else {
          expect(conformanceProbability(zone.upper, u, limits)).toBeCloseTo(atLeast, 9);
          expect(zone.lower + zone.upper).toBeCloseTo(50, 9);
        }
      }),
    );
  });

  it('by probability is stricter than 1.645·u where both limits are near', () => {
    const wide = acceptanceZone({ kind: 'probability', atLeast: 0.95 }, limits, normalSpread(2 * 0.1));
    const narrow = acceptanceZone({ kind: 'probability', atLeast: 0.95 }, limits, normalSpread(2 * 1.2));
    expect((27.5 - (wide?.upper ?? Number.NaN)) / 0.1).toBeCloseTo(1.644854, 6);
    expect((27.5 - (narrow?.upper ?? Number.NaN)) / 1.2).toBeGreaterThan(1.7);
  });

  it('knows the uncertainty below which a window can be decided', () => {
    const rule = fc.oneof(
      fc.constant<DecisionRule>({ kind: 'iso-14253-1' }),
      fc.double({ min: 0.1, max: 3, noNaN: true }).map((r): DecisionRule => ({ kind: 'guard-band', r })),
      fc
        .double({ min: 0.5, max: 0.999, noNaN: true })
        .map((atLeast): DecisionRule => ({ kind: 'probability', atLeast })),
    );
    fc.assert(
      fc.property(rule, (given) => {
        const most = largestExpandedBy(given, limits);
        const at = (expanded: number) =>
          windowBy(given, { unit: 'N.m', ...limits, spreadAt: () => normalSpread(expanded) }).decidable;
        expect([at(most * 0.999), at(most * 1.001)]).toEqual([true, false]);
      }),
    );
    expect(largestExpandedBy({ kind: 'simple' }, limits)).toBe(Number.POSITIVE_INFINITY);
  });

  it('makes the window of its zone, each side by the uncertainty there', () => {
    const rules: readonly DecisionRule[] = [
      { kind: 'simple' },
      { kind: 'iso-14253-1' },
      { kind: 'guard-band', r: 0.8 },
      { kind: 'probability', atLeast: 0.95 },
    ];
    for (const rule of rules) {
      const window = windowBy(rule, {
        unit: 'N.m',
        ...limits,
        spreadAt: (value) => normalSpread(value / 25),
      });
      expect(window.acceptLower).toBeCloseTo(
        acceptanceZone(rule, limits, normalSpread(22.5 / 25))?.lower ?? Number.NaN,
        12,
      );
      expect(window.acceptUpper).toBeCloseTo(
        acceptanceZone(rule, limits, normalSpread(27.5 / 25))?.upper ?? Number.NaN,
        12,
      );
    }
  });
});

describe('risk over a process', () => {
  const inspection = (guardBand: number, standard = 0.2): Inspection => ({
    density: (x) => normalDensity(x - 25),
    from: 15,
    to: 35,
    standard,
    limits: { lowerLimit: 23, upperLimit: 27 },
    accept: { lower: 23 + guardBand, upper: 27 - guardBand },
  });

  it('agrees with the chance found by counting: the joint distribution summed cell by cell', () => {
    const { consumer, producer, outOfTolerance } = globalRisk(inspection(0.1));
    const [step, reach] = [0.01, 7];
    let [bad, good] = [0, 0];
    for (let x = 25 - reach + step / 2; x < 25 + reach; x += step)
      for (let e = -1.5 + step / 2; e < 1.5; e += step) {
        const weight = normalDensity(x - 25) * (normalDensity(e / 0.2) / 0.2) * step * step;
        const conforms = x >= 23 && x <= 27;
        const accepted = x + e >= 23.1 && x + e <= 26.9;
        if (!conforms && accepted) bad += weight;
        if (conforms && !accepted) good += weight;
      }
    expect(Math.abs(consumer - bad)).toBeLessThan(3e-4);
    expect(Math.abs(producer - good)).toBeLessThan(6e-4);
    expect(Math.abs(outOfTolerance - 0.04550026)).toBeLessThan(1e-8);
  });

  it('moves from the consumer to the producer as the guard band grows', () => {
    const band = fc.double({ min: -0.5, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(band, band, (a, b) => {
        const less = globalRisk(inspection(Math.min(a, b)));
        const more = globalRisk(inspection(Math.max(a, b)));
        expect(more.consumer).toBeLessThanOrEqual(less.consumer + 1e-12);
        expect(more.producer).toBeGreaterThanOrEqual(less.producer - 1e-12);
      }),
      { numRuns: 30 },
    );
  });

  it('vanishes with a perfect instrument', () => {
    const { consumer, producer } = globalRisk(inspection(0, 1e-3));
    expect(consumer).toBeLessThan(1e-4);
    expect(producer).toBeLessThan(1e-4);
  });

  it('finds the guard band that a wanted risk needs, or says that none is enough', () => {
    const riskAt = (guardBand: number) => globalRisk(inspection(guardBand)).consumer;
    const guardBand = guardBandFor(riskAt, 0.001, 1);
    expect(riskAt(guardBand ?? Number.NaN)).toBeCloseTo(0.001, 9);
    expect(guardBandFor(riskAt, 0.5, 1)).toBe(0);
    expect(guardBandFor(riskAt, 0, 1)).toBeNull();
  });
});
