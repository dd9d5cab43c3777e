import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inUnits } from '../../src/quantity/shown.ts';
import {
  figure,
  lowerBound,
  lowerLimit,
  percent,
  upperBound,
  upperLimit,
  utc,
} from '../../src/report/figures.ts';

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

test('in another unit than that of the record the printed limits are never wider than those judged by', () => {
  expect([lowerLimit(25, 'N.m'), upperLimit(30, 'N.m'), upperLimit(0.8, 'mm')]).toEqual([
    '25.00',
    '30.00',
    '0.800',
  ]);
  inUnits({ torque: '[ft_i].[lbf_av]', length: '[in_i]' }, () => {
    // 25 N·m is 18.4391 lbf·ft and 30 N·m 22.1269; 0.8 mm is 0.031496 in.
    expect([lowerLimit(25, 'N.m'), upperLimit(30, 'N.m'), upperLimit(0.8, 'mm')]).toEqual([
      '18.44',
      '22.12',
      '0.0314',
    ]);
    expect(upperLimit(25.4 * 0.03, 'mm')).toBe('0.0300');
  });
});

test('a probability is never printed as a certainty', () => {
  expect([1, 0.9994, 0.5, 0].map(percent)).toEqual(['> 99.9 %', '99.9 %', '50.0 %', '< 0.1 %']);
});

test('times are printed in UTC', () => {
  expect(utc('2025-06-03T08:15:28.123Z')).toBe('2025-06-03 08:15:28 UTC');
});
