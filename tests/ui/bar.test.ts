import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Window } from '../../src/metrology/judgement.ts';
import { glyphsFor } from '../../src/ui/glyphs.ts';
import { condensed, traceRows } from '../../src/ui/trace.ts';
import { columnOf, runsOf, scaleFor, zonesOf } from '../../src/ui/zones.ts';
import { TORQUE_WINDOW } from './fixtures.ts';

const zonesIn = (window: Window, columns: number) =>
  runsOf(zonesOf(window, scaleFor(window, columns))).map(({ zone }) => zone);

describe('the window along the bar', () => {
  it('shows limits, guard bands and the acceptance zone in this order', () => {
    const all = ['outside', 'limit', 'guard', 'accept', 'guard', 'limit', 'outside'];
    for (const columns of [58, 78, 118, 198]) expect(zonesIn(TORQUE_WINDOW, columns)).toEqual(all);
  });

  it('shows no acceptance zone when the guard bands meet', () => {
    const zones = zonesIn({ ...TORQUE_WINDOW, acceptLower: 28, acceptUpper: 27, decidable: false }, 78);
    expect(zones).toEqual(['outside', 'limit', 'guard', 'limit', 'outside']);
  });

  it('shows no guard bands when the rule has none', () => {
    const zones = zonesIn({ ...TORQUE_WINDOW, guardBandFactor: 0, acceptLower: 25, acceptUpper: 30 }, 78);
    expect(zones).toEqual(['outside', 'limit', 'accept', 'limit', 'outside']);
  });

  it('never marks a torque outside the acceptance zone as accepted by more than a column', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 0.01, max: 0.45, noNaN: true }),
        fc.integer({ min: 58, max: 200 }),
        (lower, width, share, columns) => {
          const upper = lower + width;
          const guard = width * share;
          const window = {
            ...TORQUE_WINDOW,
            lowerLimit: lower,
            upperLimit: upper,
            acceptLower: lower + guard,
            acceptUpper: upper - guard,
          };
          const scale = scaleFor(window, columns);
          const zones = zonesOf(window, scale);
          expect(zones).toHaveLength(columns);
          expect(zones[columnOf(lower, scale)]).toBe('limit');
          expect(zones[columnOf(upper, scale)]).toBe('limit');
          for (const [column, zone] of zones.entries()) {
            if (zone !== 'accept') continue;
            expect(column).toBeGreaterThanOrEqual(columnOf(window.acceptLower, scale));
            expect(column).toBeLessThanOrEqual(columnOf(window.acceptUpper, scale));
          }
        },
      ),
    );
  });
});

describe('the trace', () => {
  it('keeps the highest peak, however much it is condensed', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 50, noNaN: true }), { minLength: 1, maxLength: 500 }),
        fc.integer({ min: 1, max: 200 }),
        (samples, columns) => {
          const short = condensed(samples, columns);
          expect(short.length).toBeLessThanOrEqual(columns);
          expect(Math.max(...short)).toBe(Math.max(...samples));
        },
      ),
    );
  });

  it('fills from below, newest at the right', () => {
    expect(traceRows([0, 5, 10], 4, 2, 10, glyphsFor(false))).toEqual(['   █', '  ██']);
    expect(traceRows([10], 3, 1, 10, glyphsFor(true))).toEqual(['  #']);
    expect(traceRows([], 3, 2, 10, glyphsFor(false))).toEqual(['   ', '   ']);
  });
});
