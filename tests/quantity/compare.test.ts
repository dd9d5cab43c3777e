import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareTorque, limitsDeg, limitsMm, limitsNm, order } from '../../src/quantity/compare.ts';
import { millimetres } from '../../src/quantity/length.ts';
import { parseAngleRange, parseLengthRange, parseTorqueRange } from '../../src/quantity/range.ts';
import { newtonMetres, type TorqueUnit } from '../../src/quantity/torque.ts';
import type { Result } from '../../src/result.ts';

function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('a reading is compared in the unit of the source', () => {
  it('30 lbf·ft, converted to N·m and back, still lies within 25-30 lbf·ft', () => {
    const range = must(parseTorqueRange('25-30 lbf·ft'));
    expect(compareTorque(newtonMetres(30, '[ft_i].[lbf_av]'), range)).toBe('inside');
    expect(compareTorque(newtonMetres(25, '[ft_i].[lbf_av]'), range)).toBe('inside');
    expect(compareTorque(40.68, range)).toBe('high');
    expect(compareTorque(33.89, range)).toBe('low');
  });

  it('24.4 N·m is not below a chart that says 18.0 lbf·ft, though a rounded copy of it says 25 N·m', () => {
    expect(compareTorque(24.405, must(parseTorqueRange('18.0-25.3 lbf·ft')))).toBe('inside');
    expect(compareTorque(24.405, must(parseTorqueRange('25-35 N·m')))).toBe('low');
  });

  it('every limit lies within its own range, and the next figure an instrument could show does not', () => {
    const unit = fc.constantFrom<TorqueUnit>('N.m', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', 'kgf.m', 'kgf.cm');
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 1, max: 9999 }),
        unit,
        (a, width, code) => {
          const range = { printed: '', unit: code, lower: a / 100, upper: (a + width) / 100 };
          const { lowerNm, upperNm } = limitsNm(range);
          expect([compareTorque(lowerNm, range), compareTorque(upperNm, range)]).toEqual([
            'inside',
            'inside',
          ]);
          expect(compareTorque(lowerNm * (1 - 1e-9), range)).toBe('low');
          expect(compareTorque(upperNm * (1 + 1e-9), range)).toBe('high');
        },
      ),
    );
  });

  it('limits come out in N·m, mm and degrees', () => {
    const { lowerNm, upperNm } = limitsNm(must(parseTorqueRange('2.5-3.0 kgf·m')));
    expect(lowerNm).toBeCloseTo(24.516625, 12);
    expect(upperNm).toBeCloseTo(29.41995, 12);
    const { lowerMm, upperMm } = limitsMm(must(parseLengthRange('28-31 mil')));
    expect([lowerMm, upperMm]).toEqual([millimetres(28, '[mil_i]'), millimetres(31, '[mil_i]')]);
    expect(lowerMm).toBeCloseTo(0.7112, 12);
    expect(limitsDeg(must(parseAngleRange('1/2-2/3 turn')))).toEqual({ lowerDeg: 180, upperDeg: 240 });
  });
});

describe('the order of two figures', () => {
  it('sees through binary noise and through nothing else', () => {
    expect(order(0.1 + 0.2, 0.3)).toBe(0);
    expect(order(0.3, 0.3 * (1 + 1e-9))).toBe(-1);
    expect(order(0.3 * (1 + 1e-9), 0.3)).toBe(1);
    expect(order(0, 0)).toBe(0);
    expect(order(-1, 1)).toBe(-1);
  });

  it('turns round when the figures change places', () => {
    const any = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(order(a, b) + order(b, a)).toBe(0);
      }),
    );
  });
});
