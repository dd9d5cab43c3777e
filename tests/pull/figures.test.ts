/**
 * What the detector says of a dozen traces, figure by figure. A changed figure changes verdicts of jobs that were judged by
 * these rules: whoever means it measures it (`npm run bench -- pulls`, `npm run bench:independent`), and takes the new figures
 * (`vitest -u`). The other tests say which figures are right; this one that none moves unseen.
 */
import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { roundedPull } from '../../src/pull/rounded.ts';
import { type DetectorSettings, detectorSettings } from '../../src/pull/settings.ts';
import { type Corner, clickPull, drawn, turningPull } from './shapes.ts';

interface Trace {
  readonly corners: readonly Corner[];
  readonly stepMs?: number;
  readonly noiseNm?: number;
  readonly zeroNm?: number;
  /** Arrival instead of the time of the reading, in microseconds. */
  readonly stampUs?: (atUs: number, i: number) => number;
  readonly lost?: (i: number) => boolean;
  readonly settings?: Partial<DetectorSettings>;
  /** Degrees of the handle. */
  readonly deg?: (nm: number, atUs: number) => number;
}

const REST: Corner = { atMs: 0, nm: 0 };
const END: Corner = { atMs: 6500, nm: 0 };
const CLICK = [REST, ...clickPull(3000, 800, 27, 21, 24), END];
const GASKET = [REST, ...turningPull(3000, 1100, 27, 20, 28.5), END];
const SHORT: readonly Corner[] = [
  REST,
  { atMs: 3000, nm: 0 },
  { atMs: 3500, nm: 9 },
  { atMs: 4100, nm: 18 },
  { atMs: 4400, nm: 17.2 },
  { atMs: 4900, nm: 0 },
  END,
];

const TRACES: Readonly<Record<string, Trace>> = {
  'a click at 100 readings a second': { corners: CLICK },
  'a gasket, with follow-through': { corners: GASKET },
  'at 500 readings a second, with more noise': { corners: GASKET, stepMs: 2, noiseNm: 0.15 },
  'at 25 readings a second': { corners: CLICK, stepMs: 40 },
  'a stroke without a click': { corners: SHORT, noiseNm: 0.05 },
  'a zero that is off': { corners: CLICK, zeroNm: 0.7 },
  'two strokes without a rest': {
    corners: [...CLICK.slice(0, -1), ...clickPull(4700, 300, 26, 20, 22), { atMs: 8000, nm: 0 }],
  },
  'readings that come in bunches of five': {
    corners: CLICK,
    stampUs: (_at, i) => 50_000 * (Math.floor(i / 5) + 1),
  },
  'readings that jitter': { corners: CLICK, stampUs: (at, i) => at + ((i * 7919) % 6) * 1000 },
  'a hole on the way up': { corners: GASKET, lost: (i) => i > 360 && i < 372 },
  'two clicks and a much higher third': {
    corners: [
      REST,
      ...clickPull(3000, 300, 14, 10, 10.5).slice(0, -2),
      { atMs: 3700, nm: 17 },
      { atMs: 3716, nm: 12 },
      { atMs: 3780, nm: 12.5 },
      ...clickPull(3800, 500, 29, 22, 24).slice(1),
      END,
    ],
    stepMs: 4,
  },
  'a hole at the moment of the click': { corners: CLICK, lost: (i) => i > 385 && i < 392 },
  'a hole behind the top, at 500 readings a second': {
    corners: CLICK,
    stepMs: 2,
    lost: (i) => i > 1930 && i < 1945,
  },
  'a slow fall to where it is held': {
    corners: [
      REST,
      { atMs: 3000, nm: 0 },
      { atMs: 3700, nm: 26 },
      { atMs: 3780, nm: 21 },
      { atMs: 4200, nm: 20.5 },
      { atMs: 4400, nm: 0 },
      END,
    ],
    stepMs: 5,
  },
  'bunches of four, one of which is lost': {
    corners: GASKET,
    stampUs: (_at, i) => 40_000 * (Math.floor(i / 4) + 1) + ((i >> 2) % 3) * 2000,
    lost: (i) => i >= 364 && i < 368,
  },
  'readings one by one with much jitter, some lost': {
    corners: GASKET,
    stepMs: 5,
    stampUs: (at, i) => at + ((i * 7919) % 5) * 900,
    lost: (i) => i % 37 === 0,
  },
  'a zero that has moved and stands there': {
    corners: [
      REST,
      { atMs: 2900, nm: 0 },
      { atMs: 2910, nm: 1.2 },
      ...clickPull(3000, 700, 27, 21, 22).slice(1, -2),
    ],
  },
  'a ratchet, with its angle': {
    corners: [
      REST,
      { atMs: 3000, nm: 0 },
      { atMs: 3400, nm: 15 },
      { atMs: 3500, nm: 0.9 },
      { atMs: 3560, nm: 0.9 },
      { atMs: 4000, nm: 27 },
      { atMs: 4020, nm: 21 },
      { atMs: 4200, nm: 21.5 },
      { atMs: 4300, nm: 0 },
      END,
    ],
    settings: { angle: { stepDeg: 0.1, driftDegPerS: 0.1 } },
    deg: (nm, atUs) =>
      nm / 2 + (atUs < 3_400_000 ? 2 * nm : 30) + (atUs < 3_560_000 ? 0 : 0.5 * Math.min(27, nm)),
  },
  'the end of the scale': { corners: CLICK, settings: { range: { lowerNm: -20, upperNm: 25 } } },
  'a tool that smooths': { corners: CLICK, settings: { lagMs: 16 } },
  'a plug that is loosened': { corners: CLICK.map(({ atMs, nm }) => ({ atMs, nm: -nm })) },
  'an angle that winds up and turns a plug': {
    corners: GASKET,
    settings: { angle: { stepDeg: 0.1, driftDegPerS: 0.1 } },
    deg: (nm, atUs) => (atUs < 4_300_000 ? 6.2 * nm : 170) + nm / 2,
  },
  'highest figures of pulls': {
    corners: [
      { atMs: 0, nm: 0 },
      { atMs: 3000, nm: 0 },
      { atMs: 3010, nm: 12 },
      { atMs: 3400, nm: 26.4 },
      { atMs: 5000, nm: 26.4 },
      { atMs: 5010, nm: 0 },
      { atMs: 5600, nm: 14 },
      { atMs: 9000, nm: 14 },
    ],
    stepMs: 100,
    noiseNm: 0,
    settings: { stream: 'maxima' },
  },
};

function found(
  name: string,
  trace: Trace,
): { readonly pulls: readonly DetectedPull[]; readonly rest: unknown } {
  const { corners, stepMs = 10, noiseNm = 0.03, zeroNm = 0, stampUs = (at) => at, settings, deg } = trace;
  const random = new Random(name);
  const detector = createPullDetector(detectorSettings(25, { stepNm: 0.01, ...settings }));
  const pulls: DetectedPull[] = [];
  let rest: unknown = null;
  for (const [i, { atUs, nm }] of drawn(corners, stepMs).entries()) {
    const read = Math.round(100 * (nm + zeroNm + (noiseNm === 0 ? 0 : random.normal(0, noiseNm)))) / 100;
    if (trace.lost?.(i) === true) continue;
    const upper = settings?.range?.upperNm ?? Number.POSITIVE_INFINITY;
    const angle = deg === undefined ? undefined : Math.round(10 * deg(nm, atUs)) / 10;
    const pull = detector.push(stampUs(atUs, i), Math.min(read, upper), angle);
    if (pull !== null) pulls.push(roundedPull(pull));
    if (atUs === 2_500_000) rest = detector.atRest();
  }
  const last = detector.cut('stopped');
  return { pulls: last === null ? pulls : [...pulls, roundedPull(last)], rest };
}

/** Digits beyond these differ between engines. */
const blunt = (_key: string, value: unknown) =>
  typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(6)) : value;

describe('the figures of a pull', () => {
  it.each(Object.entries(TRACES))('%s', async (name, trace) => {
    const { pulls, rest } = found(name, trace);
    expect(pulls.length).toBeGreaterThan(0);
    await expect(`${JSON.stringify({ pulls, rest }, blunt, 1)}\n`).toMatchFileSnapshot(
      `figures/${name.replaceAll(/[^a-z0-9]+/g, '-')}.txt`,
    );
  });

  it('are near what was drawn', () => {
    for (const name of ['a click at 100 readings a second', 'a zero that is off', 'readings that jitter'])
      expect(found(name, TRACES[name] ?? expect.fail(name)).pulls[0]?.peakNm, name).toBeCloseTo(27, 0);
    for (const name of [
      'two clicks and a much higher third',
      'a ratchet, with its angle',
      'a slow fall to where it is held',
    ]) {
      const trace = TRACES[name] ?? expect.fail(name);
      const drawnNm = Math.max(...trace.corners.map(({ nm }) => nm));
      expect(Math.abs((found(name, trace).pulls[0]?.peakNm ?? 0) - drawnNm), name).toBeLessThan(0.2);
    }
    const [gasket] = found('x', { corners: GASKET }).pulls;
    expect(Math.abs((gasket?.peakNm ?? 0) - 28.5)).toBeLessThan(0.2);
  });
});
