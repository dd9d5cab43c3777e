import { describe, expect, it } from 'vitest';
import { adviceOn, type Coached } from '../../src/pull/coaching.ts';
import type { FoundPull } from '../../src/pull/pull.ts';
import { A_PULL } from './a-pull.ts';

const at: Coached = { lowerNm: 25, clicks: true, seat: 'new gasket' };
const kinds = (pull: Partial<FoundPull>, on: Coached = at) =>
  adviceOn({ ...A_PULL, ...pull }, on).map(({ kind }) => kind);
const GOOD = { rise: { ...A_PULL.rise, slopeAtTopNmPerS: 15 } };

describe('what a signal gives reason to say', () => {
  it('is nothing for a good pull', () => {
    expect(kinds(GOOD)).toEqual([]);
  });

  it.each<[string, Partial<FoundPull>, string]>([
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
    ['the readings stood at the end of the scale', { ...GOOD, saturated: true }, 'end-of-scale-nm'],
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

  it('knows a thread that binds by the angle where the seat is hard', () => {
    const turn = { startToPeakDeg: 120, from10PercentDeg: 110, from50PercentDeg: 60, workJ: 20 };
    expect(kinds({ ...GOOD, turn }, { ...at, seat: 'conical' })).toEqual(['early-torque']);
    expect(kinds({ ...GOOD, turn: { ...turn, from10PercentDeg: 35 } }, { ...at, seat: 'conical' })).toEqual(
      [],
    );
  });

  it('says nothing of early torque on a plug that was tight already', () => {
    const rise = { ...GOOD.rise, reachedMs: [5, 10, 20, 30, 40, 50, 60, 70, 80] };
    expect(kinds({ riseMs: 60, rise }, { ...at, seat: null })).toEqual([]);
  });
});
