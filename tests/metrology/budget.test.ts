import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { budgetOf, combine, coverageFactorFor, degreesOfFreedomFor } from '../../src/metrology/budget.ts';
import { type CalibrationPoint, calibratedAt } from '../../src/metrology/calibration.ts';
import type { PermissibleDeviation } from '../../src/metrology/permissible.ts';
import { studentCdf } from '../../src/metrology/student.ts';
import { standardUncertainty, type Term } from '../../src/metrology/term.ts';
import {
  adapterTerms,
  calibrationTerm,
  driftTerm,
  peakTerm,
  permissibleTerm,
  repeatabilityTerm,
  resolutionTerm,
  uncorrectedTerm,
} from '../../src/metrology/terms.ts';
import { actualAt } from '../../src/plug/geometry.ts';

const SHEET = { kind: 'station-file', basis: 'data sheet' } as const;

const standardOf = (term: Term | undefined): number => {
  if (term === undefined) throw new Error('no such term');
  return Math.abs(term.sensitivity) * standardUncertainty(term.amount, term.distribution);
};

/** Budget of an instrument of which only the promise is known. */
const promised = (
  { permissible, resolution }: { readonly permissible: PermissibleDeviation; readonly resolution: number },
  value: number,
) => budgetOf([permissibleTerm(permissible, value, SHEET), resolutionTerm(resolution)]);

describe('a budget', () => {
  it('divides by what the distribution asks for', () => {
    expect(standardUncertainty(1, { kind: 'normal', k: 2 })).toBe(0.5);
    expect(standardUncertainty(1, { kind: 'rectangular' })).toBeCloseTo(0.57735, 5);
    expect(standardUncertainty(1, { kind: 'triangular' })).toBeCloseTo(0.408248, 6);
    expect(standardUncertainty(1, { kind: 'arcsine' })).toBeCloseTo(Math.SQRT1_2, 15);
    expect(standardUncertainty(1, { kind: 'standard' })).toBe(1);
  });

  it('adds squares, and its rows say what each line contributes', () => {
    const lines = [driftTerm(3 * Math.sqrt(3), SHEET), driftTerm(4 * Math.sqrt(3), SHEET)];
    const budget = combine(lines, { k: 2 });
    expect(budget.standard).toBeCloseTo(5, 12);
    expect(budget.expanded).toBeCloseTo(10, 12);
    expect(budget.rows.map((row) => row.share)).toEqual([expect.closeTo(0.36, 12), expect.closeTo(0.64, 12)]);
    expect(budget.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  it('takes its coverage factor from t with the effective degrees of freedom, cut down to a whole number', () => {
    const readings = repeatabilityTerm([24.9, 25.1, 25.0, 25.2, 24.8], 'one setting');
    const alone = combine([readings], { confidence: 0.95 });
    expect(alone.degreesOfFreedom).toBeCloseTo(4, 9);
    expect(alone.coverageFactor).toBeCloseTo(2.7764, 4);
    const diluted = combine([readings, driftTerm(0.5, SHEET)], { confidence: 0.95 });
    expect(diluted.degreesOfFreedom).toBeGreaterThan(4);
    expect(diluted.coverageFactor).toBe(coverageFactorFor(Math.floor(diluted.degreesOfFreedom), 0.95));
  });

  it('is never smaller than its largest line nor larger than their sum', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e-6, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (widths) => {
          const { standard, rows } = combine(
            widths.map((width) => driftTerm(width, SHEET)),
            { k: 2 },
          );
          const parts = rows.map((row) => row.contribution);
          expect(standard).toBeGreaterThanOrEqual(Math.max(...parts) * (1 - 1e-12));
          expect(standard).toBeLessThanOrEqual(parts.reduce((a, b) => a + b) * (1 + 1e-12));
          expect(rows.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('has effective degrees of freedom between the fewest of a line and their sum', () => {
    const line = fc.tuple(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.integer({ min: 1, max: 60 }));
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (lines) => {
        const terms = lines.map(([amount, degreesOfFreedom]) => ({
          ...driftTerm(amount, SHEET),
          degreesOfFreedom,
        }));
        const { degreesOfFreedom } = combine(terms, { k: 2 });
        const all = lines.map(([, df]) => df);
        expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-9));
        expect(degreesOfFreedom).toBeLessThanOrEqual(all.reduce((a, b) => a + b) * (1 + 1e-9));
      }),
    );
  });
});

describe('an instrument of which only the promise is known', () => {
  it('a wrench of ±4 % with steps of 0.01 N·m at 25 N·m: U = 1.155 N·m', () => {
    const { standard, expanded } = promised(
      { permissible: { kind: 'relative', percent: 4 }, resolution: 0.01 },
      25,
    );
    expect(standard).toBeCloseTo(Math.sqrt(1 / 3 + 0.0001 / 12), 12);
    expect(expanded).toBeCloseTo(1.154715, 6);
  });

  it('a gauge of ±0.02 mm with steps of 0.01 mm: U = 0.0238 mm, whatever the gap', () => {
    const gauge = { permissible: { kind: 'absolute', amount: 0.02 }, resolution: 0.01 } as const;
    for (const gap of [0, 0.7, 1.1])
      expect(promised(gauge, gap).expanded).toBeCloseTo(2 * Math.sqrt(0.0004 / 3 + 0.0001 / 12), 12);
  });

  it('is as uncertain turning left as turning right', () => {
    const term = permissibleTerm({ kind: 'relative', percent: 4 }, -25, SHEET);
    expect(term.amount).toBe(permissibleTerm({ kind: 'relative', percent: 4 }, 25, SHEET).amount);
  });
});

describe('the lines', () => {
  it('resolution: a step over the root of twelve', () => {
    expect(standardOf(resolutionTerm(0.1))).toBeCloseTo(0.1 / Math.sqrt(12), 15);
  });

  it('repeatability: the spread of readings of one thing', () => {
    const term = repeatabilityTerm([1, 2, 3, 4], 'one setting');
    expect(standardOf(term)).toBeCloseTo(Math.sqrt(5 / 3), 12);
    expect(term).toMatchObject({ degreesOfFreedom: 3, type: 'A' });
    expect(() => repeatabilityTerm([1], 'one setting')).toThrow(RangeError);
  });

  it('an error that nobody takes off is covered to 95 % whatever its share', () => {
    for (const error of [0, 0.2, 1, 5, 50]) {
      const { expanded } = budgetOf([peakTerm(1), uncorrectedTerm(error, SHEET)]);
      expect(studentCdf(expanded - error, 1e9) - studentCdf(-expanded - error, 1e9)).toBeGreaterThan(0.95);
    }
  });

  it('adapter: sensitivities are the derivatives of the torque on the fastener', () => {
    const lengths = { armMm: 300, offsetMm: 40, angleDeg: 30 };
    const actual = (change: Partial<typeof lengths>) => {
      const { armMm, offsetMm, angleDeg } = { ...lengths, ...change };
      return actualAt(25, { arm: armMm, offset: offsetMm, angleDeg });
    };
    const h = 1e-4;
    const [arm, offset, angle] = adapterTerms(lengths, { armMm: 2, offsetMm: 1, angleDeg: 5 }, 25);
    expect(arm?.sensitivity).toBeCloseTo(
      (actual({ armMm: 300 + h }) - actual({ armMm: 300 - h })) / (2 * h),
      8,
    );
    expect(offset?.sensitivity).toBeCloseTo(
      (actual({ offsetMm: 40 + h }) - actual({ offsetMm: 40 - h })) / (2 * h),
      8,
    );
    expect(angle?.sensitivity).toBeCloseTo(
      (actual({ angleDeg: 30 + h }) - actual({ angleDeg: 30 - h })) / (2 * h),
      8,
    );
    expect(standardOf(offset)).toBeCloseTo((25 * Math.cos(Math.PI / 6)) / 300 / Math.sqrt(3), 12);
  });
});

describe('a calibration certificate', () => {
  const points: readonly CalibrationPoint[] = [
    { reading: 60, error: 0.9, expanded: 0.6, k: 2 },
    { reading: 10, error: -0.1, expanded: 0.1, k: 2 },
    { reading: 36, error: 0.42, expanded: 0.36, k: 2 },
  ];

  it('is read on the straight line between its points, with the larger uncertainty of the two', () => {
    const { error, standard } = calibratedAt(points, 23);
    expect(error).toBeCloseTo(0.16, 12);
    expect(standard).toBeCloseTo(0.18, 12);
  });

  it('is nearer to the point that the reading is nearer to', () => {
    // A quarter of the way from -0.1 at 10 to 0.42 at 36, and from 0.42 at 36 to 0.9 at 60.
    expect(calibratedAt(points, 16.5).error).toBeCloseTo(0.03, 12);
    expect(calibratedAt(points, 42).error).toBeCloseTo(0.54, 12);
    // The uncertainty is the larger of the two wherever between them: the last point has the larger one.
    for (const reading of [37, 48, 59]) {
      const { expanded, standard } = calibratedAt(points, reading);
      expect([expanded, standard]).toEqual([0.6, 0.3]);
    }
  });

  it('holds at its points, the first and the last among them', () => {
    for (const point of points) {
      const { error, standard, extrapolated } = calibratedAt(points, point.reading);
      expect(error).toBe(point.error);
      expect(extrapolated).toBe(false);
      expect(standard).toBeCloseTo(point.expanded / 2, 12);
    }
  });

  it('carries its last point on, in proportion upwards, and says so', () => {
    const above = calibratedAt(points, 72);
    expect(above.error).toBeCloseTo(1.08, 12);
    expect(above.standard).toBeCloseTo(0.36, 12);
    const below = calibratedAt(points, 5);
    expect([below.error, below.standard]).toEqual([-0.1, 0.05]);
    const source = { kind: 'certificate', number: '17', laboratory: 'Example laboratory' } as const;
    for (const calibrated of [above, below])
      expect(calibrationTerm(calibrated, source)).toMatchObject({
        cause: 'calibration-extrapolated',
        source,
      });
    expect(() => calibratedAt([], 20)).toThrow(RangeError);
  });
});

describe('a certificate with k above 2', () => {
  const CERTIFICATE = { kind: 'certificate', number: 'C-1', laboratory: 'Example laboratory' } as const;
  const stated = (k: number, expanded: number): CalibrationPoint => ({ reading: 25, error: 0, expanded, k });
  const alone = (k: number, expanded: number) =>
    budgetOf([calibrationTerm(calibratedAt([stated(k, expanded)], 25), CERTIFICATE)]);

  it.each([
    // GUM (JCGM 100:2008), table G.2, column 95.45 %.
    [13.97, 1],
    [4.53, 2],
    [3.31, 3],
    [2.87, 4],
    [2.65, 5],
    [2.52, 6],
    [2.28, 10],
    [2.43, 7],
  ])('says with k = %d that it rests on %d degrees of freedom', (k, degreesOfFreedom) => {
    expect(degreesOfFreedomFor(k)).toBe(degreesOfFreedom);
  });

  it('says nothing of them with k = 2 or less', () => {
    for (const k of [1.65, 1.96, 2, 2.004]) expect(degreesOfFreedomFor(k)).toBe(Number.POSITIVE_INFINITY);
  });

  it('keeps the U that the laboratory stated', () => {
    expect(alone(2.87, 0.5).expanded).toBeCloseTo(0.5, 3);
    expect(alone(2.87, 0.5).expanded).toBeGreaterThanOrEqual(0.5);
    expect(alone(2, 0.5).expanded).toBeCloseTo(0.5, 12);
  });

  it('never comes out better than the laboratory, whatever is added', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(2, 2.05, 2.28, 2.87, 3.31, 4.53, 13.97),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.array(fc.double({ min: 0.001, max: 2, noNaN: true }), { maxLength: 4 }),
        (k, expanded, drifts) => {
          const term = calibrationTerm(calibratedAt([stated(k, expanded)], 25), CERTIFICATE);
          const budget = budgetOf([term, ...drifts.map((width) => driftTerm(width, CERTIFICATE))]);
          expect(budget.expanded).toBeGreaterThanOrEqual(expanded);
        },
      ),
    );
  });
});
