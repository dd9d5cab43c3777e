import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, formatAngle } from '../../src/quantity/angle.ts';
import { formatGap, type LengthUnit, millimetres } from '../../src/quantity/length.ts';
import { formatTorque, fromNewtonMetres, newtonMetres, type TorqueUnit } from '../../src/quantity/torque.ts';

const torqueUnits: TorqueUnit[] = ['N.m', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', 'kgf.m', 'kgf.cm'];
const lengthUnits: LengthUnit[] = ['mm', '[in_i]', '[mil_i]'];
const figure = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('units', () => {
  it('come back from a conversion to within a few parts in 10^16', () => {
    fc.assert(
      fc.property(figure, fc.constantFrom(...torqueUnits), (value, unit) => {
        expect(Math.abs(fromNewtonMetres(newtonMetres(value, unit), unit) / value - 1)).toBeLessThan(5e-16);
      }),
    );
    fc.assert(
      fc.property(figure, fc.constantFrom(...lengthUnits), (value, unit) => {
        expect(Math.abs(millimetres(value, unit) / millimetres(1, unit) / value - 1)).toBeLessThan(5e-16);
      }),
    );
  });

  it('keep the order of figures', () => {
    fc.assert(
      fc.property(figure, figure, fc.constantFrom(...torqueUnits), (a, b, unit) => {
        expect(Math.sign(newtonMetres(a, unit) - newtonMetres(b, unit)) * Math.sign(a - b)).not.toBe(-1);
      }),
    );
  });

  it('print torque, gap and angle as the trade writes them', () => {
    expect(formatTorque(25)).toBe('25.00 N·m');
    expect(formatTorque(13.5581, 1)).toBe('13.6 N·m');
    expect(formatGap(0.75)).toBe('0.75 mm');
    expect(formatGap(0.7112, 3)).toBe('0.711 mm');
    expect(formatAngle(degrees(1 / 16, 'circ'))).toBe('22.5°');
    expect(formatAngle(degrees(2 / 3, 'circ'))).toBe('240°');
    expect(formatAngle(degrees(90, 'deg'))).toBe('90°');
  });
});
