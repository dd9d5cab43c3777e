import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageRange } from '../../src/statistics/average-range.ts';
import type { GaugeResult, GaugeStudy } from '../../src/statistics/gauge-study.ts';
import { type GaugeVariance, gaugeVariance } from '../../src/statistics/gauge-variance.ts';
import { normals } from './generator.ts';
import { accepted, problemOf } from './outcome.ts';
import { REFERENCE_STUDY } from './reference-study.ts';

/** The reference study with the trials of one cell replaced. */
const withCell = (appraiser: number, part: number, trials: readonly number[]): GaugeStudy => ({
  ...REFERENCE_STUDY,
  readings: REFERENCE_STUDY.readings.map((row, a) =>
    row.map((cell, p) => (a === appraiser && p === part ? trials : cell)),
  ),
});

const methods = [
  ['average and range', averageRange],
  ['analysis of variance', gaugeVariance],
] as const;

describe.each(methods)('a gauge study by %s', (_, method) => {
  it('names the cell that is missing, short or no number', () => {
    expect(problemOf<unknown>(method(withCell(1, 6, [])))).toEqual({
      code: 'missing-cell',
      where: 'appraiser B, part 7',
    });
    expect(problemOf<unknown>(method(withCell(2, 0, [0.04, -0.11])))).toEqual({
      code: 'unequal-trials',
      where: 'appraiser C, part 1',
    });
    expect(problemOf<unknown>(method(withCell(0, 9, [1, Number.NaN, 1])))).toEqual({
      code: 'not-a-number',
      where: 'appraiser A, part 10',
    });
    expect(problemOf<unknown>(method(withCell(0, 0, [])))).toEqual({
      code: 'missing-cell',
      where: 'appraiser A, part 1',
    });
  });

  it('names the cell when a whole appraiser or a part at the end is missing', () => {
    const rows = REFERENCE_STUDY.readings;
    expect(problemOf<unknown>(method({ ...REFERENCE_STUDY, readings: rows.slice(0, 2) })).where).toBe(
      'appraiser C, part 1',
    );
    const short = rows.map((row, a) => (a === 1 ? row.slice(0, 9) : row));
    expect(problemOf<unknown>(method({ ...REFERENCE_STUDY, readings: short })).where).toBe(
      'appraiser B, part 10',
    );
  });

  it('refuses a study of one appraiser, of one part, of one trial, of too many readings, or without spread', () => {
    const { appraisers, parts, readings } = REFERENCE_STUDY;
    const code = (study: GaugeStudy) => problemOf<unknown>(method(study)).code;
    expect(code({ appraisers: ['A'], parts, readings: readings.slice(0, 1) })).toBe('study-size');
    expect(code({ appraisers, parts: ['1'], readings: readings.map((row) => row.slice(0, 1)) })).toBe(
      'study-size',
    );
    expect(
      code({ appraisers, parts, readings: readings.map((row) => row.map((cell) => cell.slice(0, 1))) }),
    ).toBe('study-size');
    expect(code({ appraisers: appraisers.slice(0, 2), parts, readings })).toBe('study-size');
    expect(code({ appraisers, parts, readings: readings.map((row) => row.map(() => [1, 1, 1])) })).toBe(
      'no-spread',
    );
  });
});

const study = fc
  .record({
    appraisers: fc.integer({ min: 2, max: 3 }),
    parts: fc.integer({ min: 2, max: 6 }),
    trials: fc.integer({ min: 2, max: 3 }),
    seed: fc.nat(),
  })
  .map(({ appraisers, parts, trials, seed }): GaugeStudy => {
    const next = normals(seed);
    return {
      appraisers: Array.from({ length: appraisers }, (_, a) => `a${a}`),
      parts: Array.from({ length: parts }, (_, p) => `p${p}`),
      readings: Array.from({ length: appraisers }, () =>
        Array.from({ length: parts }, (_, p) => Array.from({ length: trials }, () => p + next())),
      ),
    };
  });

const mapped = (given: GaugeStudy, change: (reading: number) => number): GaugeStudy => ({
  ...given,
  readings: given.readings.map((row) => row.map((cell) => cell.map(change))),
});

const both = (given: GaugeStudy) => {
  const { withInteraction, pooled } = accepted(gaugeVariance(given));
  return [accepted(averageRange(given)), withInteraction, pooled];
};

describe('both methods', () => {
  it('do not change with a shift, and grow with a scale while the percentages stay', () => {
    fc.assert(
      fc.property(study, fc.integer({ min: -50, max: 50 }), (given, shift) => {
        const after = both(mapped(given, (x) => 2 * x + shift));
        for (const [i, before] of both(given).entries()) {
          expect(after[i]?.tv).toBeCloseTo(2 * before.tv, 8);
          expect(after[i]?.grr.percent).toBeCloseTo(before.grr.percent, 6);
          expect(after[i]?.ndc).toBe(before.ndc);
        }
      }),
    );
  });

  it('do not depend on the order of appraisers, parts or trials', () => {
    fc.assert(
      fc.property(study, (given) => {
        const turned: GaugeStudy = {
          appraisers: [...given.appraisers].reverse(),
          parts: [...given.parts].reverse(),
          readings: [...given.readings]
            .reverse()
            .map((row) => [...row].reverse().map((cell) => [...cell].reverse())),
        };
        const after = both(turned);
        for (const [i, before] of both(given).entries()) {
          expect(after[i]?.ev.sigma).toBeCloseTo(before.ev.sigma, 9);
          // A variance of nearly nothing has a root with half the figures.
          expect((after[i]?.av.sigma ?? 0) ** 2).toBeCloseTo(before.av.sigma ** 2, 9);
          expect((after[i]?.pv.sigma ?? 0) ** 2).toBeCloseTo(before.pv.sigma ** 2, 9);
        }
      }),
    );
  });

  it('share out the whole: the squares add up', () => {
    fc.assert(
      fc.property(study, (given) => {
        for (const { grr, pv, tv, ev, av, interaction } of both(given)) {
          expect(Math.hypot(ev.sigma, av.sigma, interaction?.sigma ?? 0)).toBeCloseTo(grr.sigma, 10);
          expect(Math.hypot(grr.percent, pv.percent)).toBeCloseTo(100, 8);
          expect(tv).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('divide the total sum of squares without remainder', () => {
    fc.assert(
      fc.property(study, (given) => {
        const { part, appraiser, interaction, repeatability, total } = accepted(gaugeVariance(given));
        expect(part.squares + appraiser.squares + interaction.squares + repeatability.squares).toBeCloseTo(
          total.squares,
          8,
        );
        expect(
          part.degreesOfFreedom +
            appraiser.degreesOfFreedom +
            interaction.degreesOfFreedom +
            repeatability.degreesOfFreedom,
        ).toBe(given.readings.flat(2).length - 1);
        expect(total.degreesOfFreedom).toBe(given.readings.flat(2).length - 1);
      }),
    );
  });
});

/** Appraisers who agree to the last digit, parts that are far apart, trials that scatter. */
const AGREED: GaugeStudy = {
  appraisers: ['A', 'B'],
  parts: ['1', '2', '3'],
  readings: [0, 1].map(() => [
    [1.01, 0.99],
    [2.02, 1.98],
    [3.01, 2.99],
  ]),
};

describe.each(methods)('a gauge study by %s', (_, method) => {
  const result = (given: GaugeStudy): GaugeResult => {
    const found = accepted<GaugeResult | GaugeVariance>(method(given));
    return 'pooled' in found ? found.pooled : found;
  };

  it('says how much of a tolerance the gauge takes up, where limits are known', () => {
    const { grr, percentOfTolerance } = result({ ...REFERENCE_STUDY, limits: { lower: -2, upper: 2 } });
    expect(percentOfTolerance).toBeCloseTo((100 * 6 * grr.sigma) / 4, 10);
    expect(result(REFERENCE_STUDY).percentOfTolerance).toBeNull();
    const crossed = method({ ...REFERENCE_STUDY, limits: { lower: 2, upper: -2 } });
    expect(problemOf<unknown>(crossed).code).toBe('range-reversed');
  });

  it('says which variances came out below zero', () => {
    const { av, setToZero } = result(AGREED);
    expect(av.sigma).toBe(0);
    expect(setToZero).toContain('av');
    expect(setToZero).not.toContain('pv');
  });

  it('refuses readings from which nothing finite follows, and hangs on none', () => {
    const two = (a: number, b: number): GaugeStudy => ({
      appraisers: ['A', 'B'],
      parts: ['1', '2'],
      readings: [
        [
          [a, b],
          [1, 2],
        ],
        [
          [1, 2],
          [3, 4],
        ],
      ],
    });
    for (const huge of [1e160, 1e308, -1e308])
      expect(problemOf<unknown>(method(two(huge, -huge))).code).toBe('not-a-number');
    expect(problemOf<unknown>(method(two(1e160, 2e160))).code).toBe('not-a-number');
  });
});

describe('analysis of variance', () => {
  it('names the interaction too, whose variance is below zero in the reference study', () => {
    const { withInteraction, pooled } = accepted(gaugeVariance(REFERENCE_STUDY));
    expect(withInteraction.setToZero).toEqual(['interaction']);
    expect(withInteraction.interaction?.sigma).toBe(0);
    expect(pooled.setToZero).toEqual([]);
  });

  it('keeps an interaction that is there', () => {
    // Appraiser C reads every second part high.
    const given: GaugeStudy = {
      ...REFERENCE_STUDY,
      readings: REFERENCE_STUDY.readings.map((row, a) =>
        row.map((cell, p) => cell.map((x) => (a === 2 && p % 2 === 0 ? x + 2 : x))),
      ),
    };
    const result = accepted(gaugeVariance(given));
    expect(result.interactionTest?.p).toBeLessThan(1e-6);
    expect(result.advised).toBe('withInteraction');
    const { interaction, repeatability } = result;
    expect(result.withInteraction.interaction?.sigma).toBeCloseTo(
      Math.sqrt((interaction.meanSquare - repeatability.meanSquare) / 3),
      12,
    );
    expect(result.withInteraction.interaction?.sigma).toBeGreaterThan(0.5);
    expect(result.pooled.interaction).toBeNull();
  });

  it('of a gauge that always shows the same has no ndc and no test', () => {
    const result = accepted(
      gaugeVariance({
        ...REFERENCE_STUDY,
        readings: REFERENCE_STUDY.readings.map((row) => row.map((_, p) => [p, p, p])),
      }),
    );
    expect([result.interactionTest, result.withInteraction.ndc]).toEqual([null, null]);
    expect(result.withInteraction.pv.percent).toBeCloseTo(100, 10);
  });

  it('takes studies that average and range has no factors for', () => {
    const parts = Array.from({ length: 11 }, (_, p) => String(p));
    const next = normals(3);
    const large: GaugeStudy = {
      appraisers: ['A', 'B'],
      parts,
      readings: [0, 1].map(() => parts.map((_, p) => Array.from({ length: 4 }, () => p + next()))),
    };
    expect(problemOf(averageRange(large)).code).toBe('outside-tables');
    expect(accepted(gaugeVariance(large)).withInteraction.ndc).toBeGreaterThan(1);
  });
});

describe('the factors of average and range', () => {
  /** Two appraisers who agree, `parts` parts with averages from 0 to 1, trials `spread` apart. */
  const study = (parts: number, trials: number, spread: number): GaugeStudy => {
    const row = Array.from({ length: parts }, (_, p) =>
      Array.from({ length: trials }, (_, t) => p / (parts - 1) + (t === 0 ? -spread / 2 : spread / 2)),
    );
    return { appraisers: ['A', 'B'], parts: row.map((_, p) => `${p}`), readings: [row, row] };
  };

  // d2 and d3 of the control-chart tables (read): the mean of one range in sigma is the root of d2² + d3².
  it.each([
    [2, 1.128, 0.853],
    [3, 1.693, 0.888],
    [4, 2.059, 0.88],
    [5, 2.326, 0.864],
    [6, 2.534, 0.848],
    [7, 2.704, 0.833],
    [8, 2.847, 0.82],
    [9, 2.97, 0.808],
    [10, 3.078, 0.797],
  ])('for %d parts', (parts, d2, d3) => {
    const { pv, partRange } = accepted(averageRange(study(parts, 2, 0)));
    expect(partRange).toBeCloseTo(1, 12);
    expect(pv.sigma).toBeCloseTo(1 / Math.hypot(d2, d3), 3);
  });

  it.each([
    [2, 1.128, 3.267],
    [3, 1.693, 2.574],
  ])('for %d trials', (trials, d2, d4) => {
    const { ev, rangeLimit } = accepted(averageRange(study(5, trials, 0.1)));
    expect(ev.sigma).toBeCloseTo(0.1 / d2, 4);
    expect(rangeLimit).toBeCloseTo(0.1 * d4, 9);
  });

  it('end at ten parts and at three trials', () => {
    for (const beyond of [study(11, 2, 0.1), study(5, 4, 0.1)])
      expect(problemOf(averageRange(beyond)).code).toBe('outside-tables');
  });
});
