/** Figures in the units that a shop reads. Factors: NIST Special Publication 811 (2008), appendix B.8. */
import { describe, expect, it } from 'vitest';
import {
  briefFigure,
  gapText,
  inUnits,
  roughTorque,
  SI,
  shownFigure,
  shownLimit,
  shownUnits,
  torqueText,
} from '../../src/quantity/shown.ts';

const US = { torque: '[ft_i].[lbf_av]', length: '[in_i]' } as const;

describe('a figure that people read', () => {
  it('is in N·m and mm where the shop does not say otherwise', () => {
    expect(shownUnits()).toEqual(SI);
    expect([torqueText(25), gapText(0.75)]).toEqual(['25.00 N·m', '0.750 mm']);
  });

  it.each([
    [1.355818, '1.00 lbf·ft'],
    [27.41, '20.22 lbf·ft'],
    [0, '0.00 lbf·ft'],
  ])('shows %d N·m as %s', (nm, text) => {
    expect(inUnits(US, () => torqueText(nm))).toBe(text);
  });

  it.each([
    [25.4, '1.0000 in'],
    [0.75, '0.0295 in'],
  ])('shows %d mm as %s', (mm, text) => {
    expect(inUnits(US, () => gapText(mm))).toBe(text);
  });

  it('leaves needless zeros out where a sentence reads better so', () => {
    expect([briefFigure(0.75, 'mm'), briefFigure(25, 'N.m'), roughTorque(30.04)]).toEqual([
      '0.75',
      '25',
      '30',
    ]);
    expect(inUnits(US, () => [briefFigure(0.75, 'mm'), roughTorque(30.04)])).toEqual(['0.0295', '22.2']);
  });

  it('rounds limits into the window in another unit than that of the record, and leaves a whole step as it is', () => {
    const limits = (low: number, high: number) => [
      shownLimit(low, 'N.m', 'lower'),
      shownLimit(high, 'N.m', 'upper'),
    ];
    expect(limits(25, 30)).toEqual(['25.00', '30.00']);
    // 25 N·m are 18.439 lbf·ft, 30 N·m are 22.127 lbf·ft.
    expect(inUnits(US, () => limits(25, 30))).toEqual(['18.44', '22.12']);
    expect(inUnits(US, () => limits(18 * 1.3558179483314, 22 * 1.3558179483314))).toEqual(['18.00', '22.00']);
  });

  it('has no zero with a minus sign', () => {
    expect(shownFigure(-0.001, 'N.m')).toBe('0.00');
  });

  it('is in the units of before again behind it', () => {
    inUnits(US, () => torqueText(1));
    expect(torqueText(1)).toBe('1.00 N·m');
    expect(() => inUnits(US, () => Promise.resolve(''))).toThrow('without waiting');
  });
});
