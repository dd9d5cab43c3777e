import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actualAt, type Crowfoot, settingFor } from '../../src/plug/geometry.ts';
import { agrees, type Confirmed } from './published.ts';

interface Example extends Crowfoot {
  readonly source: string;
  readonly unit: string;
  readonly target: number;
  readonly setting: number;
  readonly within: number;
  readonly confirmed: Confirmed;
}

/** The rule that one calculator page gives: correction at 90° only, none in line. It is the wrong way round. */
const reversedRule = (target: number, { arm, offset, angleDeg }: Crowfoot) =>
  target / ((arm + offset * Math.sin((angleDeg * Math.PI) / 180)) / arm);

const EXAMPLES: readonly Example[] = [
  {
    source: 'web calculator',
    unit: 'N·m',
    target: 80,
    arm: 40,
    offset: 5,
    angleDeg: 0,
    setting: 71.1,
    within: 0.05,
    confirmed: 'read',
  },
  {
    source: 'instruction sheet',
    unit: 'lbf·ft',
    target: 50,
    arm: 16,
    offset: 2,
    angleDeg: 0,
    setting: 44.44,
    within: 0.005,
    confirmed: 'second-hand',
  },
  {
    source: 'TM 1-1500-204-23-9',
    unit: 'lbf·in',
    target: 300,
    arm: 10,
    offset: 4,
    angleDeg: 0,
    setting: 214,
    within: 0.5,
    confirmed: 'read',
  },
  {
    source: 'helicopter maintenance manual, 20.4',
    unit: 'lbf·in',
    target: 135,
    arm: 10,
    offset: 1.5,
    angleDeg: 0,
    setting: 117.39,
    within: 0.005,
    confirmed: 'read',
  },
  {
    source: 'helicopter maintenance manual, 20.4',
    unit: 'lbf·in',
    target: 135,
    arm: 10,
    offset: 1.5,
    angleDeg: 180,
    setting: 158.82,
    within: 0.005,
    confirmed: 'read',
  },
  {
    source: 'naval aviation trainee text',
    unit: 'lbf·in',
    target: 100,
    arm: 12,
    offset: 6,
    angleDeg: 0,
    setting: 66.7,
    within: 0.05,
    confirmed: 'read',
  },
  {
    source: 'light aircraft service manual',
    unit: 'lbf·ft',
    target: 30,
    arm: 12,
    offset: 3,
    angleDeg: 0,
    setting: 24,
    within: 1e-12,
    confirmed: 'read',
  },
  {
    source: 'owners forum',
    unit: 'lbf·ft',
    target: 100,
    arm: 12,
    offset: 9,
    angleDeg: 0,
    setting: 57.14,
    within: 0.005,
    confirmed: 'read',
  },
];

describe('setting of a wrench with a crowfoot', () => {
  for (const { source, confirmed, unit, target, setting, within, ...crowfoot } of EXAMPLES) {
    const what = `${target} ${unit}, arm ${crowfoot.arm}, offset ${crowfoot.offset}, ${crowfoot.angleDeg}°`;
    agrees({ what, value: setting, within, source, confirmed }, () => settingFor(target, crowfoot));
  }
  for (const [angleDeg, value] of [
    [0, 22.059],
    [45, 22.846],
    [90, 25],
    [180, 28.846],
  ] as const)
    agrees(
      {
        what: `25 N·m, 300 and 40 mm, ${angleDeg}°`,
        value,
        within: 5e-4,
        source: 'own',
        confirmed: 'computed',
      },
      () => settingFor(25, { arm: 300, offset: 40, angleDeg }),
    );
});

describe('the reversed rule of one web page', () => {
  it('contradicts every published example', () => {
    for (const { target, setting, within, ...crowfoot } of EXAMPLES)
      expect(Math.abs(reversedRule(target, crowfoot) - setting)).toBeGreaterThan(Math.max(10 * within, 1));
  });

  it('is not ours: square to the handle nothing changes, in line most', () => {
    const lengths = { arm: 300, offset: 40 };
    expect(settingFor(25, { ...lengths, angleDeg: 90 })).toBeCloseTo(25, 12);
    expect(reversedRule(25, { ...lengths, angleDeg: 90 })).toBeCloseTo(22.059, 3);
    expect(reversedRule(25, { ...lengths, angleDeg: 0 })).toBe(25);
    expect(settingFor(25, { ...lengths, angleDeg: 0 })).toBeLessThan(22.06);
  });
});

describe('setting and torque on the fastener', () => {
  const crowfoot = fc.record({
    arm: fc.double({ min: 100, max: 600, noNaN: true }),
    offset: fc.double({ min: 0, max: 90, noNaN: true }),
    angleDeg: fc.double({ min: 0, max: 180, noNaN: true }),
  });
  const torque = fc.double({ min: 1, max: 100, noNaN: true });

  it('undo each other', () => {
    fc.assert(
      fc.property(crowfoot, torque, (foot, target) => {
        expect(actualAt(settingFor(target, foot), foot)).toBeCloseTo(target, 9);
      }),
    );
  });

  it('an open angle always asks for a lower setting, a folded one for a higher', () => {
    fc.assert(
      fc.property(crowfoot, torque, (foot, target) => {
        const open = settingFor(target, { ...foot, offset: foot.offset + 1, angleDeg: foot.angleDeg * 0.49 });
        const folded = settingFor(target, {
          ...foot,
          offset: foot.offset + 1,
          angleDeg: 91 + foot.angleDeg * 0.49,
        });
        expect(open).toBeLessThan(target);
        expect(folded).toBeGreaterThan(target);
      }),
    );
  });

  it('lengths that make no lever are refused', () => {
    for (const foot of [
      { arm: 0, offset: 40, angleDeg: 0 },
      { arm: 300, offset: -1, angleDeg: 0 },
      { arm: 30, offset: 40, angleDeg: 180 },
      { arm: Number.NaN, offset: 40, angleDeg: 0 },
    ])
      expect(() => settingFor(25, foot)).toThrow(RangeError);
  });
});
