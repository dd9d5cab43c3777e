import { describe, expect, it } from 'vitest';
import { adviceOn, type Coached } from '../../src/pull/coaching.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { A_PULL } from './a-pull.ts';

const at: Coached = { lowerNm: 25, clicks: true, seat: 'new gasket', fallsMs: [], advised: null };
const kinds = (pull: Partial<DetectedPull>, on: Coached = at) =>
  adviceOn({ ...A_PULL, ...pull }, on).map(({ kind }) => kind);
const GOOD = { rise: { ...A_PULL.rise, slopeAtTopNmPerS: 15 } };

describe('what a signal gives reason to say', () => {
  it('is nothing for a good pull', () => {
    expect(kinds(GOOD)).toEqual([]);
  });

  it.each<[string, Partial<DetectedPull>, string]>([
    ['the last fifth went by in less than a tenth of a second', {}, 'too-fast-ms'],
    ['the peak lies far above the click', { ...GOOD, peakNm: 28.5 }, 'follow-through-percent'],
    ['the torque fell back on its way up', { rise: { ...GOOD.rise, setbackNm: 4 } }, 'fell-back-percent'],
    [
      'the torque rose evenly where a new gasket should have been crushed',
      { rise: { ...GOOD.rise, reachedMs: [50, 100, 200, 300, 400, 500, 600, 700, 800] } },
      'early-torque',
    ],
    ['the zero was not settled', { ...GOOD, zeroSettled: false }, 'zero-not-settled-nm'],
    ['the zero lies far off', { ...GOOD, zeroNm: 1.4 }, 'zero-not-settled-nm'],
    ['the readings reached the end of the scale', { ...GOOD, saturated: true }, 'end-of-scale-nm'],
    [
      'a click cannot be seen at this rate',
      { ...GOOD, release: 'not-visible', releaseNm: null },
      'click-not-visible-ms',
    ],
  ])('%s', (_what, pull, kind) => {
    expect(kinds(pull)).toEqual([kind]);
  });

  it('allows for the uncertainty of the peak before it speaks of follow-through', () => {
    expect(kinds({ ...GOOD, peakNm: 28.5, peakStandardNm: 0.5 })).toEqual([]);
  });

  const turned = (from10PercentDeg: number, share = 0.2, on: Partial<Coached> = {}) => {
    const from50PercentDeg = share * from10PercentDeg;
    const turn = { startToPeakDeg: from10PercentDeg + 10, from10PercentDeg, from50PercentDeg, workJ: 20 };
    return kinds({ ...GOOD, turn }, { ...at, ...on });
  };
  const usual = { 'new gasket': 210, 'used gasket': 32, conical: 28 } as const;

  it.each(['new gasket', 'used gasket', 'conical'] as const)('is nothing for the turn of a %s', (seat) => {
    expect(turned(usual[seat], seat === 'new gasket' ? 0.2 : 0.5, { seat })).toEqual([]);
  });

  it.each<[string, number, number, Coached['seat'], string]>([
    ['a used gasket, or none, where a new one is due', 32, 0.5, 'new gasket', 'turned-too-little-deg'],
    ['two gaskets', 400, 0.2, 'new gasket', 'turned-too-far-deg'],
    ['a thread that binds', 106, 0.56, 'new gasket', 'early-torque-deg'],
    ['a thread that binds, on a conical seat', 109, 0.56, 'conical', 'early-torque-deg'],
    ['a gasket on a conical seat', 200, 0.2, 'conical', 'turned-too-far-deg'],
    ['a new gasket where a used one is due', 200, 0.2, 'used gasket', 'turned-too-far-deg'],
    ['no gasket where a used one is due', 12, 0.5, 'used gasket', 'turned-too-little-deg'],
  ])('tells by the angle: %s', (_what, deg, share, seat, kind) => {
    expect(turned(deg, share, { seat })).toEqual([kind]);
  });

  it('goes by the turn that the specification advises, where it advises one', () => {
    const advised = { lowerDeg: 60, upperDeg: 60 };
    expect(turned(65, 0.3, { advised })).toEqual([]);
    expect(turned(210, 0.2, { advised })).toEqual(['turned-too-far-deg']);
  });

  it('says nothing of the turn of a plug whose seat is not known, or that stopped short', () => {
    expect(turned(5, 0.5, { seat: null })).toEqual([]);
    expect(turned(5, 0.5, { lowerNm: 28 })).toEqual([]);
  });

  it.each([
    ['falls between those of a head and those of a hand', [70, 20, 80, 90], ['tool-smooths-ms']],
    ['falls of a head', [20, 10, 30, 70], []],
    ['falls of a hand', [200, 300, 250], []],
    ['too few falls', [70, 80], []],
  ] as const)('knows a tool that smooths by how long falls take: %s', (_what, fallsMs, said) => {
    expect(kinds(GOOD, { ...at, fallsMs })).toEqual(said);
    expect(kinds(GOOD, { ...at, fallsMs, clicks: false })).toEqual([]);
  });

  it('says nothing of early torque on a plug that was tight already', () => {
    const rise = { ...GOOD.rise, reachedMs: [5, 10, 20, 30, 40, 50, 60, 70, 80] };
    expect(kinds({ riseMs: 60, rise }, { ...at, seat: null })).toEqual([]);
  });
});
