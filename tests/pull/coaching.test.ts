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

  // Each limit from both sides; what is said, with its figure and the limit that it is held against.
  const said = (pull: Partial<DetectedPull>, on: Partial<Coached> = {}) =>
    adviceOn({ ...A_PULL, ...GOOD, ...pull }, { ...at, seat: null, ...on });
  const rise = (change: Partial<DetectedPull['rise']>) => ({ rise: { ...GOOD.rise, ...change } });
  it.each<[string, Partial<DetectedPull>, Partial<DetectedPull>, ReturnType<typeof said>[number]]>([
    [
      'the last fifth of 27 N·m, 5.4 N·m, at 54 and above 54 N·m/s',
      rise({ slopeAtTopNmPerS: 54 }),
      rise({ slopeAtTopNmPerS: 60 }),
      { kind: 'too-fast-ms', figure: 90, limit: 100 },
    ],
    [
      'the peak 3.9 and 5 % above a click of 20 N·m, known to 1 %',
      { releaseNm: 20, peakNm: 20.78, peakStandardNm: 0.1 },
      { releaseNm: 20, peakNm: 21, peakStandardNm: 0.1 },
      { kind: 'follow-through-percent', figure: 5, limit: 3 },
    ],
    [
      'a setback of 10 and of 12 %',
      { peakNm: 25, releaseNm: 25, ...rise({ setbackNm: 2.5 }) },
      { peakNm: 25, releaseNm: 25, ...rise({ setbackNm: 3 }) },
      { kind: 'fell-back-percent', figure: 12, limit: 10 },
    ],
    [
      'a zero off by 4 % of 25 N·m and by more',
      { zeroNm: 1 },
      { zeroNm: -1.01 },
      { kind: 'zero-not-settled-nm', figure: -1.01, limit: 1 },
    ],
    [
      'the end of the scale',
      { saturated: false, highestNm: 40 },
      { saturated: true, highestNm: 40 },
      { kind: 'end-of-scale-nm', figure: 40, limit: 40 },
    ],
    [
      'a click that cannot be seen',
      { release: 'none', releaseNm: null },
      { release: 'not-visible', releaseNm: null, longestGapUs: 40_000 },
      { kind: 'click-not-visible-ms', figure: 40, limit: 25 },
    ],
  ])('%s', (_what, within, beyond, advice) => {
    expect(said(within)).toEqual([]);
    expect(said(beyond)).toEqual([{ ...advice, figure: expect.closeTo(advice.figure, 9) }]);
  });

  it('of the rise on a new gasket: 1.15 times as long low as high, and not for what rises at once', () => {
    // 20 to 40 % in so many ms, 60 to 80 % in 100.
    const low = (ms: number, riseMs = 600) =>
      said({ riseMs, ...rise({ reachedMs: [0, 0, 0, ms, ms, 500, 550, 600, 650] }) }, { seat: 'new gasket' });
    expect(low(115)).toEqual([{ kind: 'early-torque', figure: expect.closeTo(1.15, 9), limit: 1.15 }]);
    expect(low(116)).toEqual([]);
    expect(low(115, 149)).toEqual([]);
    expect(low(115, 150)).toHaveLength(1);
    const short = { ...rise({ reachedMs: [0, 0, 0, 90, 90, 500, 550, 600, 650] }), releaseNm: null };
    const toward = (peakNm: number) => said({ ...short, peakNm, release: 'none' }, { seat: 'new gasket' });
    expect([toward(12.4).length, toward(12.5).length]).toEqual([0, 1]);
  });

  it('of a turn that is advised: a quarter less, a quarter more and 10 degrees of wind-up', () => {
    const by = (deg: number) => {
      const turn = { startToPeakDeg: deg, from10PercentDeg: deg, from50PercentDeg: 0.2 * deg, workJ: 20 };
      return said({ turn }, { seat: 'new gasket', advised: { lowerDeg: 80, upperDeg: 100 } });
    };
    expect([by(60), by(135)]).toEqual([[], []]);
    expect(by(59)).toEqual([{ kind: 'turned-too-little-deg', figure: 59, limit: 60 }]);
    expect(by(136)).toEqual([{ kind: 'turned-too-far-deg', figure: 136, limit: 135 }]);
  });

  it('of a tool that smooths: falls between 40 and 160 ms, three at least, the middle one', () => {
    const of = (...fallsMs: number[]) => said({}, { fallsMs });
    expect([of(40, 40, 40), of(160, 160, 160), of(41, 41)]).toEqual([[], [], []]);
    expect(of(500, 41, 10)).toEqual([{ kind: 'tool-smooths-ms', figure: 41, limit: 40 }]);
    expect(of(159, 159, 159)).toHaveLength(1);
  });

  it('of a tool that tells its highest torque alone: the end of its scale, and nothing else', () => {
    const off = {
      stream: 'maxima',
      zeroSettled: false,
      zeroNm: 5,
      ...rise({ slopeAtTopNmPerS: 999 }),
    } as const;
    expect(said(off, { seat: 'new gasket' })).toEqual([]);
    expect(said({ ...off, saturated: true }).map(({ kind }) => kind)).toEqual(['end-of-scale-nm']);
  });

  it('gravest first', () => {
    const all = {
      ...rise({ slopeAtTopNmPerS: 200, setbackNm: 5 }),
      turn: { startToPeakDeg: 400, from10PercentDeg: 400, from50PercentDeg: 80, workJ: 20 },
      saturated: true,
      peakNm: 30,
      zeroSettled: false,
    };
    expect(said(all, { seat: 'new gasket', fallsMs: [70, 70, 70] }).map(({ kind }) => kind)).toEqual([
      'turned-too-far-deg',
      'end-of-scale-nm',
      'follow-through-percent',
      'too-fast-ms',
      'fell-back-percent',
      'zero-not-settled-nm',
      'tool-smooths-ms',
    ]);
  });

  it('says nothing of early torque on a plug that was tight already', () => {
    const rise = { ...GOOD.rise, reachedMs: [5, 10, 20, 30, 40, 50, 60, 70, 80] };
    expect(kinds({ riseMs: 60, rise }, { ...at, seat: null })).toEqual([]);
  });
});
