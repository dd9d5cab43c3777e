/** OK is given only where the reading lies at least the guard band inside both limits, whichever uncertainty is meant. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { judgedBy } from '../../src/job/judging.ts';
import { measured, readingFor } from '../../src/job/measurement.ts';
import { windowFor } from '../../src/job/windows.ts';
import type { DecisionRule } from '../../src/metrology/decision.ts';

const circumstances = { on: '2026-07-01', adapter: undefined };
const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const classOnly = amount(0.5, 8).map(
  (percent): Instrument => ({
    id: 'wrench',
    quantity: 'torque',
    resolution: 0.01,
    basis: 'data sheet',
    permissibleDeviation: { kind: 'relative', percent },
  }),
);
const factorOfPoint = fc.constantFrom(2, 2.13, 2.52, 2.87);
/** Errors and uncertainties that differ from point to point, and few degrees of freedom. */
const certified = fc
  .record({
    errors: fc.tuple(amount(-0.6, 0.6), amount(-0.6, 0.6)),
    expanded: fc.tuple(amount(0.05, 0.8), amount(0.05, 0.8)),
    ks: fc.tuple(factorOfPoint, factorOfPoint),
    correct: fc.boolean(),
  })
  .map(
    ({ errors, expanded, ks, correct }): Instrument => ({
      id: 'wrench',
      quantity: 'torque',
      serial: 'W-1',
      resolution: 0.05,
      basis: 'certificate',
      correct,
      certificate: {
        number: 'C-1',
        laboratory: 'Example laboratory',
        serial: 'W-1',
        date: '2026-01-01',
        unit: 'N.m',
        points: [
          { reading: 10, error: errors[0], expanded: expanded[0], k: ks[0] },
          { reading: 60, error: errors[1], expanded: expanded[1], k: ks[1] },
        ],
      },
    }),
  );

const factorOf = (rule: DecisionRule): number =>
  rule.kind === 'guard-band' ? rule.r : rule.kind === 'iso-14253-1' ? 1.65 / 2 : 0;

describe('OK', () => {
  const situation = fc.record({
    instrument: fc.oneof(classOnly, certified),
    lower: amount(12, 30),
    width: amount(3, 15),
    share: fc.integer({ min: -20, max: 120 }).map((percent) => percent / 100),
    peakStandard: fc.oneof(fc.constant(null), amount(0, 0.5)),
    rule: fc.oneof(
      fc.constant<DecisionRule>({ kind: 'simple' }),
      fc.constant<DecisionRule>({ kind: 'iso-14253-1' }),
      amount(0, 2).map((r): DecisionRule => ({ kind: 'guard-band', r })),
    ),
  });

  it('means r·U of this reading, and of a reading at the limit with this peak, from each limit', () => {
    let proven = 0;
    fc.assert(
      fc.property(situation, ({ instrument, lower, width, share, peakStandard, rule }) => {
        const limits = { lower, upper: lower + width };
        const window = windowFor(instrument, limits, circumstances, rule);
        const reading = lower + share * width;
        const judgement = judgedBy({ instrument, circumstances, window, rule }, reading, peakStandard);
        if (judgement.result !== 'OK') return;
        proven += 1;
        const own = measured(instrument, reading, circumstances, peakStandard);
        for (const limit of [limits.lower, limits.upper]) {
          const there = readingFor(instrument, limit, circumstances);
          const { expanded } = measured(instrument, there, circumstances, peakStandard).budget;
          const band = factorOf(rule) * Math.max(own.budget.expanded, expanded);
          expect(Math.abs(own.value - limit)).toBeGreaterThanOrEqual(band - 1e-9);
        }
      }),
      { numRuns: 2000 },
    );
    expect(proven).toBeGreaterThan(100);
  });

  it('by probability means that the printed probability is reached', () => {
    const rule: DecisionRule = { kind: 'probability', atLeast: 0.95 };
    let proven = 0;
    fc.assert(
      fc.property(situation, ({ instrument, lower, width, share, peakStandard }) => {
        const window = windowFor(instrument, { lower, upper: lower + width }, circumstances, rule);
        const reading = lower + share * width;
        const judgement = judgedBy({ instrument, circumstances, window, rule }, reading, peakStandard);
        if (judgement.result !== 'OK') return;
        proven += 1;
        expect(judgement.conformanceProbability).toBeGreaterThanOrEqual(0.95 - 1e-6);
      }),
      { numRuns: 1000 },
    );
    expect(proven).toBeGreaterThan(50);
  });
});

describe('a pull whose peak is known badly', () => {
  const wrench: Instrument = {
    id: 'wrench',
    quantity: 'torque',
    resolution: 0.01,
    basis: 'data sheet',
    permissibleDeviation: { kind: 'relative', percent: 4 },
  };
  const rule: DecisionRule = { kind: 'guard-band', r: 1 };
  const window = windowFor(wrench, { lower: 15, upper: 25 }, circumstances, rule);

  it('widens the guard band at the lower limit though its U stays below that at the upper limit', () => {
    const at = (reading: number) =>
      judgedBy({ instrument: wrench, circumstances, window, rule }, reading, 0.35);
    const { expandedUncertainty } = at(15.8);
    expect(expandedUncertainty).toBeGreaterThan(0.8);
    expect(expandedUncertainty).toBeLessThan(window.expandedAtUpper);
    expect(at(15.8).result).toBe('NotDecidable');
    expect(at(16.2).result).toBe('OK');
  });
});
