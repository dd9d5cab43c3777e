import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figure, lowerBound, percent, upperBound, utc } from '../../src/report/figures.ts';

test('torque to hundredths, gap to thousandths, no minus before nothing, powers of ten for nonsense', () => {
  expect(figure(27.104, 'N.m')).toBe('27.10');
  expect(figure(0.7424, 'mm')).toBe('0.742');
  expect(figure(-0.001, 'N.m')).toBe('0.00');
  expect(figure(-14.3, 'N.m')).toBe('-14.30');
  expect(figure(3e8, 'N.m')).toBe('3.000e+8');
});

test('the printed acceptance zone is never wider than the one judged by', () => {
  expect([lowerBound(25.583, 'N.m'), upperBound(29.309, 'N.m')]).toEqual(['25.59', '29.30']);
  expect([lowerBound(25.58, 'N.m'), upperBound(29.3, 'N.m')]).toEqual(['25.58', '29.30']);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 400, noNaN: true }), (bound) => {
      expect(Number(lowerBound(bound, 'N.m'))).toBeGreaterThanOrEqual(bound - 1e-9);
      expect(Number(upperBound(bound, 'N.m'))).toBeLessThanOrEqual(bound + 1e-9);
    }),
  );
});

test('a probability is never printed as a certainty', () => {
  expect([1, 0.9994, 0.5, 0].map(percent)).toEqual(['> 99.9 %', '99.9 %', '50.0 %', '< 0.1 %']);
});

test('times are printed in UTC', () => {
  expect(utc('2025-06-03T08:15:28.123Z')).toBe('2025-06-03 08:15:28 UTC');
});
