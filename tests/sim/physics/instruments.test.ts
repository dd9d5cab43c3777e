import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bentGapMm, newGapMm } from '../../../sim/physics/electrode.ts';
import { Gauge } from '../../../sim/physics/gauge.ts';
import { TorqueSensor } from '../../../sim/physics/sensor.ts';
import { Random } from '../../../sim/random.ts';

const LIMITS = { gapLowerMm: 0.7, gapUpperMm: 0.8 };

describe('torque sensor', () => {
  it('reports true torque times gain plus offset, within its noise, in whole counts of 0.01 N·m', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 0.95, max: 1.05, noNaN: true }),
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        (trueNm, gain, offsetNm) => {
          const sensor = new TorqueSensor(
            { capacityNm: 60, gain, offsetNm, noiseNm: 0.02 },
            new Random(trueNm),
          );
          const counts = Array.from({ length: 50 }, () => sensor.sample(trueNm));
          expect(counts.every(Number.isInteger)).toBe(true);
          const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length / 100;
          expect(Math.abs(mean - (trueNm * gain + offsetNm))).toBeLessThan(0.02);
        },
      ),
    );
  });

  it('stops at the end of its scale and never sends a minus zero', () => {
    const sensor = new TorqueSensor({ capacityNm: 25, gain: 1, offsetNm: 0, noiseNm: 0 }, new Random(1));
    expect(sensor.sample(400)).toBe(3000);
    expect(sensor.sample(-400)).toBe(-3000);
    expect(Object.is(sensor.sample(-0.001), 0)).toBe(true);
  });
});

describe('gauge', () => {
  it('shows steps of its own, sent in counts of 100 nm', () => {
    const gauge = new Gauge({ biasMm: 0, repeatabilityMm: 0.004, resolutionMm: 0.01 }, new Random(1));
    const counts = Array.from({ length: 400 }, () => gauge.measure(0.753));
    expect(counts.every((count) => count % 100 === 0)).toBe(true);
    expect(new Set(counts).size).toBeGreaterThan(1);
    expect(counts.reduce((sum, count) => sum + count, 0) / 400 / 10_000).toBeCloseTo(0.753, 2);
  });

  it('carries its bias into every reading', () => {
    const gauge = new Gauge({ biasMm: 0.02, repeatabilityMm: 0, resolutionMm: 0.001 }, new Random(1));
    expect(gauge.measure(0.75)).toBe(7700);
  });
});

describe('electrode gap', () => {
  it('lies in the range on most new plugs and clearly outside on a few', () => {
    const gaps = Array.from({ length: 4000 }, (_, i) => newGapMm(LIMITS, new Random(i)));
    const outside = gaps.filter((gap) => gap < 0.7 || gap > 0.8);
    expect(outside.length / gaps.length).toBeGreaterThan(0.04);
    expect(outside.length / gaps.length).toBeLessThan(0.08);
    expect(outside.every((gap) => gap <= 0.67 || gap >= 0.83)).toBe(true);
  });

  it('comes near the wish when bent, but by no more than 0.2 mm and a little', () => {
    for (let seed = 0; seed < 500; seed++) {
      expect(Math.abs(bentGapMm(0.85, -0.1, new Random(seed)) - 0.75)).toBeLessThan(0.04);
      expect(bentGapMm(0.6, 1, new Random(seed))).toBeLessThan(0.86);
    }
  });
});
