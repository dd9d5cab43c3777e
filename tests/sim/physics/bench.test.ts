import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchAction } from '../../../sim/physics/action.ts';
import { createBench, type Emission } from '../../../sim/physics/bench.ts';
import { benchOf, CONICAL, fitAndPull, GASKET, lastPull, PERFECT, perform, SWEEP, USED } from './rig.ts';

const DAY: readonly BenchAction[] = [
  { do: 'wait', ms: 300 },
  { do: 'measure-gap', cylinder: 1 },
  { do: 'bend-electrode', cylinder: 1, byMm: 0.03 },
  { do: 'measure-gap', cylinder: 1 },
  { do: 'fit', cylinder: 1 },
  { do: 'knock', peakNm: 6 },
  { do: 'pull', cylinder: 1, style: { ...SWEEP, strokeDeg: 90 } },
  { do: 'pull', cylinder: 1, style: SWEEP },
  { do: 'loosen', cylinder: 1, with: 'wrench' },
  { do: 'replace', cylinder: 1 },
  { do: 'measure-gap', cylinder: 1 },
];

function dayOf(seed: number, wrench = {}, actions = DAY) {
  const bench = createBench({ seed, cylinders: [1, 2], plug: CONICAL, wrench });
  const sent: Emission[] = [];
  for (const action of actions) {
    bench.begin(action);
    for (let e = bench.next(); e !== null; e = bench.next()) sent.push({ ...e });
  }
  return { bench, sent };
}

describe('bench', () => {
  it('gives the same bytes and the same truth for the same seed', () => {
    const [a, b, c] = [dayOf(4), dayOf(4), dayOf(5)];
    expect(JSON.stringify(a.sent)).toBe(JSON.stringify(b.sent));
    expect(JSON.stringify(a.bench.truth)).toBe(JSON.stringify(b.bench.truth));
    expect(JSON.stringify(a.sent)).not.toBe(JSON.stringify(c.sent));
  });

  it('keeps the truth whatever the wrench samples and how ill it reports', () => {
    const truth = JSON.stringify(dayOf(9).bench.truth);
    for (const wrench of [
      { sampleIntervalUs: 500 },
      { sampleIntervalUs: 50_000 },
      { gain: 1.03, noiseNm: 1 },
    ])
      expect(JSON.stringify(dayOf(9, wrench).bench.truth)).toBe(truth);
  });

  it('sends torque at the declared pace, times rising, and one gap reading a button press', () => {
    fc.assert(
      fc.property(fc.nat(1000), fc.constantFrom(1000, 10_000, 20_000), (seed, sampleIntervalUs) => {
        const { bench, sent } = dayOf(seed, { sampleIntervalUs, jitterUs: 200 });
        const torque = sent.filter(({ kind }) => kind === 'torque');
        expect(Math.abs(torque.length - bench.nowUs / sampleIntervalUs)).toBeLessThan(2);
        expect(torque.every(({ atUs }, i) => i === 0 || atUs > (torque[i - 1]?.atUs ?? 0))).toBe(true);
        expect(sent.filter(({ kind }) => kind === 'gap').length).toBe(3);
        expect(bench.truth.gaps.length).toBe(3);
        expect(sent.every(({ counts, atUs }) => Number.isInteger(counts) && Number.isInteger(atUs))).toBe(
          true,
        );
      }),
      { numRuns: 15 },
    );
  });

  it('records as the peak the highest torque that there was', () => {
    for (const plug of [GASKET, USED, CONICAL])
      for (let seed = 0; seed < 10; seed++) {
        const { samples, pull } = fitAndPull(benchOf(plug, seed, PERFECT), {
          ...SWEEP,
          leanToShare: seed < 5 ? 1.2 : null,
        });
        const highest = samples.reduce((a, b) => (b.counts > a.counts ? b : a));
        expect(Math.abs(highest.counts / 100 - pull.peakNm)).toBeLessThanOrEqual(0.005);
        const atPeak = samples.find(({ atUs }) => atUs === pull.peakUs);
        expect(atPeak?.counts).toBe(highest.counts);
        expect(pull.startUs).toBeLessThan(pull.peakUs);
        expect(pull.peakUs).toBeLessThan(pull.endUs);
      }
  });

  it('reports the truth times gain plus offset, within the noise', () => {
    const wrench = { ...PERFECT, gain: 1.02, offsetNm: 0.4, noiseNm: 0.03 };
    const truth = fitAndPull(benchOf(CONICAL, 3, PERFECT), SWEEP).samples;
    const reported = fitAndPull(benchOf(CONICAL, 3, wrench), SWEEP).samples;
    expect(reported.length).toBe(truth.length);
    const errors = reported.map(
      ({ counts }, i) => counts / 100 - (1.02 * ((truth[i]?.counts ?? 0) / 100) + 0.4),
    );
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    const sigma = Math.sqrt(errors.reduce((sum, error) => sum + (error - mean) ** 2, 0) / errors.length);
    expect(Math.abs(mean)).toBeLessThan(0.005);
    expect(sigma).toBeGreaterThan(0.027);
    expect(sigma).toBeLessThan(0.033);
  });

  it('rests at the offset with noise around it while nothing is done', () => {
    const samples = perform(benchOf(GASKET, 1, { offsetNm: -0.1, noiseNm: 0.03 }), {
      do: 'wait',
      ms: 20_000,
    });
    const mean = samples.reduce((sum, { counts }) => sum + counts, 0) / samples.length / 100;
    expect(samples.length).toBeGreaterThan(1990);
    expect(mean).toBeCloseTo(-0.1, 2);
    expect(new Set(samples.map(({ counts }) => counts)).size).toBeGreaterThan(5);
  });

  it('puts a knock on no cylinder', () => {
    const bench = benchOf(GASKET, 1, PERFECT);
    const samples = perform(bench, { do: 'knock', peakNm: 7 });
    expect(lastPull(bench)).toMatchObject({ cylinder: null, kind: 'handling', releaseNm: null });
    expect(
      Math.abs(Math.max(...samples.map(({ counts }) => counts / 100)) - lastPull(bench).peakNm),
    ).toBeLessThan(0.01);
  });

  it('sees a cross-threaded plug reach the torque without a seat, and the same plug well after a second start', () => {
    const plug = { ...GASKET, crossThreaded: [2] };
    const bench = benchOf(plug, 8, PERFECT);
    fitAndPull(bench, SWEEP, 2);
    expect(lastPull(bench).releaseNm).not.toBeNull();
    expect(lastPull(bench).clampN).toBe(0);
    perform(bench, { do: 'loosen', cylinder: 2, with: 'ratchet' });
    fitAndPull(bench, SWEEP, 2);
    expect(lastPull(bench).clampN).toBeGreaterThan(7000);
    fitAndPull(bench, SWEEP, 1);
    expect(lastPull(bench).clampN).toBeGreaterThan(7000);
  });

  it('refuses a setting outside the window, a plug that is not in the head, and two things at once', () => {
    expect(() => benchOf(GASKET, 1, { settingNm: 31 })).toThrow(RangeError);
    expect(() => benchOf(GASKET, 1, { settingNm: 24.9 })).toThrow(RangeError);
    expect(benchOf(GASKET, 1).wrench.settingNm).toBe(27.5);
    expect(() => perform(benchOf(GASKET, 1), { do: 'pull', cylinder: 1, style: SWEEP })).toThrow(
      'not in the head',
    );
    const bench = benchOf(GASKET, 1);
    bench.begin({ do: 'wait', ms: 100 });
    expect(() => bench.begin({ do: 'wait', ms: 100 })).toThrow('not finished');
  });
});
