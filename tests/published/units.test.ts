import { describe, expect, it } from 'vitest';
import { limitsDeg } from '../../src/quantity/compare.ts';
import { millimetres } from '../../src/quantity/length.ts';
import { parseAngleRange, parseTorque } from '../../src/quantity/range.ts';
import { fromNewtonMetres, newtonMetres, type TorqueUnit } from '../../src/quantity/torque.ts';
import { agrees, type Published } from './published.ts';

const FT_LB = '[ft_i].[lbf_av]';
const IN_LB = '[in_i].[lbf_av]';

describe('the chain of definitions in UCUM', () => {
  // Pound 0.453 592 37 kg, standard gravity 9.806 65 m/s², foot 0.3048 m, inch 0.0254 m, in whole numbers of 10^-17.
  const poundForce = 45_359_237n * 980_665n;
  const source = 'ucum-essence.xml 2.2, 2024-06-17';
  const exact = (what: string, value: number, ours: () => number) =>
    agrees({ what, value, within: Math.abs(value) * 2 ** -52, source, confirmed: 'read' }, ours);
  exact('lbf·ft in N·m', Number(poundForce * 3048n) / 1e17, () => newtonMetres(1, FT_LB));
  exact('lbf·in in N·m', Number(poundForce * 254n) / 1e17, () => newtonMetres(1, IN_LB));
  exact('kgf·m in N·m', 9.80665, () => newtonMetres(1, 'kgf.m'));
  exact('kgf·cm in N·m', 0.0980665, () => newtonMetres(1, 'kgf.cm'));
  exact('inch in mm', 25.4, () => millimetres(1, '[in_i]'));
  exact('mil in mm', 0.0254, () => millimetres(1, '[mil_i]'));
});

describe('factors printed in NIST SP 811, appendix B', () => {
  const printed = (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source: 'NIST SP 811, B.8', confirmed: 'from memory' }, ours);
  printed('pound-force foot in N·m', 1.355818, 5e-7, () => newtonMetres(1, FT_LB));
  printed('pound-force inch in N·m', 0.1129848, 5e-8, () => newtonMetres(1, IN_LB));
  printed('kilogram-force metre in N·m', 9.80665, 5e-6, () => newtonMetres(1, 'kgf.m'));
  printed('mil in mm', 0.0254, 1e-12, () => millimetres(1, '[mil_i]'));
});

describe('torques of spark plugs in the units of the trade', () => {
  const rows: readonly (readonly [nm: number, ftLb: number, inLb: number, kgfM: number])[] = [
    [10, 7.38, 88.5, 1.02],
    [12, 8.85, 106.2, 1.224],
    [18, 13.28, 159.3, 1.835],
    [20, 14.75, 177.0, 2.039],
    [25, 18.44, 221.3, 2.549],
    [28, 20.65, 247.8, 2.855],
    [30, 22.13, 265.5, 3.059],
    [35, 25.81, 309.8, 3.569],
  ];
  const row = (nm: number, unit: TorqueUnit, value: number, within: number) =>
    agrees(
      { what: `${nm} N·m in ${unit}`, value, within, source: 'exact bases', confirmed: 'computed' },
      () => fromNewtonMetres(nm, unit),
    );
  for (const [nm, ftLb, inLb, kgfM] of rows) {
    row(nm, FT_LB, ftLb, 0.00501);
    row(nm, IN_LB, inLb, 0.0501);
    row(nm, 'kgf.m', kgfM, 0.000501);
  }
});

describe('pairs as printed side by side in workshop manuals and charts', () => {
  const source = 'workshop manuals and plug charts';
  const asPrinted = (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source, confirmed: 'read' } satisfies Published, ours);
  asPrinted('18 N·m beside 13 lbf·ft', 13, 0.5, () => fromNewtonMetres(18, FT_LB));
  asPrinted('15 N·m beside 11 lbf·ft', 11, 0.5, () => fromNewtonMetres(15, FT_LB));
  asPrinted('20-30 N·m beside 15-22 lbf·ft, lower', 15, 0.5, () => fromNewtonMetres(20, FT_LB));
  asPrinted('20-30 N·m beside 15-22 lbf·ft, upper', 22, 0.5, () => fromNewtonMetres(30, FT_LB));
  asPrinted('18 N·m beside 1.8 kgf·m', 1.8, 0.05, () => fromNewtonMetres(18, 'kgf.m'));
  asPrinted('47.5 N·m beside 35 lbf·ft', 47.5, 0.05, () => newtonMetres(35, FT_LB));
  asPrinted('3.5 kgf·m beside 25.3 lbf·ft', 25.3, 0.05, () =>
    fromNewtonMetres(newtonMetres(3.5, 'kgf.m'), FT_LB),
  );
  asPrinted('0.031 in beside 0.8 mm', 0.031, 0.0005, () => 0.8 / millimetres(1, '[in_i]'));
  asPrinted('0.039 in beside 1.0 mm', 0.039, 0.0005, () => 1 / millimetres(1, '[in_i]'));
  asPrinted('0.043 in beside 1.1 mm', 0.043, 0.0005, () => 1.1 / millimetres(1, '[in_i]'));

  it.each([
    ['18 N·m', '13 lbf·ft', 17.63],
    ['20 N·m', '14 lbf·ft', 18.98],
    ['15 N·m', '11 lbf·ft', 14.91],
  ])(
    '%s and %s are not the same torque (the second is %d N·m): each is kept as printed',
    (metric, imperial, nm) => {
      const [a, b] = [parseTorque(metric), parseTorque(imperial)];
      if (!a.ok || !b.ok) throw new Error('a printed figure was not understood');
      expect(newtonMetres(b.value.figure, b.value.unit)).toBeCloseTo(nm, 2);
      expect(newtonMetres(b.value.figure, b.value.unit)).toBeLessThan(
        newtonMetres(a.value.figure, a.value.unit),
      );
      expect([a.value.printed, b.value.printed]).toEqual([metric, imperial]);
    },
  );
});

describe('angles as printed on boxes', () => {
  it.each([
    ['1/2-2/3 turn', 180, 240],
    ['1/2-3/4 turn', 180, 270],
    ['1/4-1/2 turn', 90, 180],
    ['1/8-1/4 turn', 45, 90],
    ['1/6 turn', 60, 60],
    ['1/12 turn', 30, 30],
    ['1/16 turn', 22.5, 22.5],
  ])('%s is %d° to %d°', (text, lowerDeg, upperDeg) => {
    const range = parseAngleRange(text);
    if (!range.ok) throw new Error(range.error.message);
    const limits = limitsDeg(range.value);
    expect(limits.lowerDeg).toBeCloseTo(lowerDeg, 9);
    expect(limits.upperDeg).toBeCloseTo(upperDeg, 9);
  });
});
