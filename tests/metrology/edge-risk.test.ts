import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../src/metrology/budget.ts';
import { falseAcceptanceOnEdge } from '../../src/metrology/edge-risk.ts';
import { normalCdf } from '../../src/metrology/normal.ts';
import { studentCdf } from '../../src/metrology/student.ts';
import type { Term } from '../../src/metrology/term.ts';
import { driftTerm, peakTerm, repeatabilityTerm, uncorrectedTerm } from '../../src/metrology/terms.ts';

/** With a guard band of r·U, U being that of the budget. */
const onEdge = (terms: readonly Term[], r = 1) => {
  const guard = r * budgetOf(terms).expanded;
  return falseAcceptanceOnEdge(terms, { guardLower: guard, guardUpper: guard });
};
const STATED = { kind: 'station-file', basis: 'data sheet' } as const;
const rectangular = (half: number) => driftTerm(half, STATED);

describe('a reading on the edge of the acceptance zone', () => {
  it('is a false OK in 2.28 % where everything is normal', () => {
    expect(onEdge([peakTerm(0.3), peakTerm(0.4)]).lower).toBeCloseTo(0.02275, 5);
    expect(onEdge([peakTerm(1)], 0)).toEqual({ lower: 0.5, upper: 0.5 });
  });

  it('is never one where all is rectangular and the guard band is as wide', () => {
    // U = 2a/√3 is more than a.
    expect(onEdge([rectangular(1)])).toEqual({ lower: 0, upper: 0 });
  });

  it('is one on one side only, up to 4.16 %, where a known error is left in', () => {
    // Φ(x - 2√(1 + x²)) is largest at x = 1/√3, where it is Φ(-√3).
    const worst = onEdge([peakTerm(1), uncorrectedTerm(1 / Math.sqrt(3), STATED)]);
    expect(worst.lower).toBeCloseTo(normalCdf(-Math.sqrt(3)), 9);
    expect(worst.lower).toBeCloseTo(0.0416, 4);
    expect(worst.upper).toBeLessThan(0.003);
    const other = onEdge([peakTerm(1), uncorrectedTerm(-1 / Math.sqrt(3), STATED)]);
    expect([other.lower, other.upper]).toEqual([worst.upper, worst.lower]);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), (error) => {
        const { lower } = onEdge([peakTerm(1), uncorrectedTerm(error, STATED)]);
        expect(lower).toBeLessThanOrEqual(worst.lower + 1e-12);
      }),
    );
  });

  it('takes few degrees of freedom by t', () => {
    const few = repeatabilityTerm([24.9, 25.1, 25, 25.2, 24.8], 'bench');
    const guard = 3 * few.amount;
    const { upper } = falseAcceptanceOnEdge([few], { guardLower: guard, guardUpper: guard });
    expect(upper).toBeCloseTo(1 - studentCdf(3, 4), 5);
  });

  it('adds distributions as they are: two equal rectangles make a triangle, many make a bell', () => {
    const tail = (terms: readonly Term[], guard: number) =>
      falseAcceptanceOnEdge(terms, { guardLower: guard, guardUpper: guard }).lower;
    // P(X > 1) of the triangle on ±2 is 1/8.
    expect(tail([rectangular(1), rectangular(1)], 1)).toBeCloseTo(1 / 8, 5);
    // Irwin and Hall: the sum of three on ±1 is above 2 with 1/48.
    expect(tail([rectangular(1), rectangular(1), rectangular(1)], 2)).toBeCloseTo(1 / 48, 5);
    // A rectangle and a normal of the same width, at one half-width: ∫(1 - Φ(1 - y))dy/2 over ±1.
    const steps = 20_000;
    let exact = 0;
    for (let i = 0; i < steps; i += 1) exact += (1 - normalCdf(1 - (-1 + (2 * (i + 0.5)) / steps))) / steps;
    expect(tail([rectangular(1), peakTerm(1)], 1)).toBeCloseTo(exact, 5);
  });
});
