import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DeliveredGap, deliveredByLot } from '../../src/statistics/delivered.ts';
import { proportion } from '../../src/statistics/proportion.ts';
import { accepted, problemOf } from './outcome.ts';

describe("Wilson's interval", () => {
  it('holds the share, stays within 0 to 1, and mirrors', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.nat(5000), (n, some) => {
        const count = Math.min(n, some);
        const ours = proportion(count, n);
        const mirror = proportion(n - count, n);
        expect(ours.from).toBeLessThanOrEqual(ours.share ?? -1);
        expect(ours.to).toBeGreaterThanOrEqual(ours.share ?? 2);
        expect(ours.from).toBeGreaterThanOrEqual(0);
        expect(ours.to).toBeLessThanOrEqual(1);
        expect(mirror.from).toBeCloseTo(1 - ours.to, 12);
      }),
    );
  });

  it('of nothing says nothing', () => {
    expect(proportion(0, 0)).toEqual({ count: 0, n: 0, share: null, from: 0, to: 1, confidence: 0.95 });
    expect(() => proportion(3, 2)).toThrow(RangeError);
    expect(() => proportion(0.5, 2)).toThrow(RangeError);
  });
});

const LIMITS = { lower: 0.7, upper: 0.8 };
const gap = (part: string, lot: string | null, gapMm: number): DeliveredGap => ({ part, lot, gapMm });

describe('gaps as delivered', () => {
  it('are counted by part and lot, a missing lot last', () => {
    const lots = accepted(
      deliveredByLot(
        [
          gap('B2', 'x', 0.75),
          gap('A1', null, 0.72),
          gap('A1', 'L2', 0.69),
          gap('A1', 'L2', 0.7),
          gap('A1', 'L2', 0.83),
          gap('A1', 'L1', 0.8),
        ],
        LIMITS,
      ),
    );
    expect(lots.map(({ part, lot, n }) => [part, lot, n])).toEqual([
      ['A1', 'L1', 1],
      ['A1', 'L2', 3],
      ['A1', null, 1],
      ['B2', 'x', 1],
    ]);
    expect(lots[1]).toMatchObject({
      counts: { below: 1, within: 1, above: 1 },
      smallestMm: 0.69,
      largestMm: 0.83,
      outside: { count: 2, n: 3 },
    });
    expect(lots[0]?.standardDeviationMm).toBeNull();
    expect(lots[0]?.counts).toEqual({ below: 0, within: 1, above: 0 });
    expect(lots[1]?.meanMm).toBeCloseTo(0.74, 12);
  });

  it('keep parts and lots apart whatever they are called', () => {
    const lots = accepted(
      deliveredByLot(
        [gap('a', 'b|c', 0.7), gap('a|b', 'c', 0.7), gap('__proto__', 'constructor', 0.7)],
        LIMITS,
      ),
    );
    expect(lots).toHaveLength(3);
  });

  it('do not depend on the order, and leave none out', () => {
    const gaps = fc.array(
      fc.record({
        part: fc.constantFrom('A1', 'B2'),
        lot: fc.constantFrom('L1', 'L2', null),
        gapMm: fc.integer({ min: 600, max: 900 }).map((um) => um / 1000),
      }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(gaps, (given) => {
        const lots = accepted(deliveredByLot(given, LIMITS));
        expect(accepted(deliveredByLot([...given].reverse(), LIMITS))).toEqual(lots);
        expect(lots.reduce((sum, { n }) => sum + n, 0)).toBe(given.length);
      }),
    );
  });

  it('refuse limits that are none and gaps that are no numbers', () => {
    expect(problemOf(deliveredByLot([], { lower: null, upper: null })).code).toBe('no-limits');
    expect(problemOf(deliveredByLot([gap('a', 'b', Number.NaN)], LIMITS)).where).toBe('gaps[0]');
    expect(accepted(deliveredByLot([], LIMITS))).toEqual([]);
  });
});
