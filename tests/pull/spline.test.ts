import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RecentSamples } from '../../src/pull/recent.ts';
import { riseTo } from '../../src/pull/rise.ts';
import { Side } from '../../src/pull/sides.ts';
import { BENDS, FASTEST_PER_S, Spline } from '../../src/pull/spline.ts';

/**
 * The same by other means: all readings at once, as normal variables with the covariance of a level whose pace starts
 * anywhere and wanders (Wahba 1978: min(a, b)² · (3 max(a, b) − min(a, b)) / 6), solved by elimination. The level is that
 * of the first reading, known as well as it.
 */
function atOnce(
  s: readonly number[],
  nm: readonly number[],
  noise: number,
  scaleNm: number,
  bend: number,
  toS: number,
) {
  const pace = (FASTEST_PER_S * scaleNm) ** 2;
  const wander = (bend * scaleNm) ** 2;
  const covariance = (a: number, b: number) =>
    noise + pace * a * b + (wander * Math.min(a, b) ** 2 * (3 * Math.max(a, b) - Math.min(a, b))) / 6;
  const rows = s.slice(1);
  const off = nm.slice(1).map((x) => x - (nm[0] ?? 0));
  const a = rows.map((x, i) => rows.map((y, j) => covariance(x, y) + (i === j ? noise : 0)));
  const to = rows.map((x) => covariance(x, toS));
  let logDet = 0;
  const sides = off.map((x, i) => [x, to[i] ?? 0]);
  for (let i = 0; i < a.length; i++) {
    const pivot = a[i]?.[i] ?? Number.NaN;
    logDet += Math.log(pivot);
    for (let j = i + 1; j < a.length; j++) {
      const share = (a[j]?.[i] ?? 0) / pivot;
      for (let k = i; k < a.length; k++) (a[j] ?? [])[k] = (a[j]?.[k] ?? 0) - share * (a[i]?.[k] ?? 0);
      for (const k of [0, 1]) (sides[j] ?? [])[k] = (sides[j]?.[k] ?? 0) - share * (sides[i]?.[k] ?? 0);
    }
  }
  const dot = (p: 0 | 1, q: 0 | 1) =>
    sides.reduce((sum, row, i) => sum + ((row[p] ?? 0) * (row[q] ?? 0)) / (a[i]?.[i] ?? 1), 0);
  return {
    nm: (nm[0] ?? 0) + dot(0, 1),
    variance: covariance(toS, toS) - dot(1, 1),
    evidence: -0.5 * (logDet + dot(0, 0)),
  };
}

const readings = fc
  .array(
    fc.record({ stepMs: fc.integer({ min: 1, max: 40 }), nm: fc.double({ min: 15, max: 27, noNaN: true }) }),
    {
      minLength: 3,
      maxLength: 12,
    },
  )
  .map((rows) => {
    let s = 0;
    return {
      s: rows.map(({ stepMs }, i) => {
        s += i === 0 ? 0 : stepMs / 1000;
        return s;
      }),
      nm: rows.map(({ nm }) => nm),
    };
  });
const SIGMA = 0.06;
const close = (got: number, expected: number) =>
  expect(Math.abs(got - expected)).toBeLessThan(1e-6 * (1 + Math.abs(expected)));

function through({ s, nm }: { readonly s: readonly number[]; readonly nm: readonly number[] }, bend: number) {
  const spline = new Spline(nm[0] ?? 0, SIGMA ** 2, 20, bend);
  for (let i = 1; i < s.length; i++) spline.take((s[i] ?? 0) - (s[i - 1] ?? 0), nm[i] ?? 0, SIGMA ** 2);
  return spline;
}

describe('a smoothing spline, reading by reading', () => {
  it('gives level, variance and likelihood of all readings at once', () => {
    fc.assert(
      fc.property(
        readings,
        fc.constantFrom(...BENDS),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (run, bend, on) => {
          const spline = through(run, bend);
          const all = atOnce(run.s, run.nm, SIGMA ** 2, 20, bend, (run.s.at(-1) ?? 0) + on);
          // The first step tells the pace alone and says nothing of how likely the rest is.
          const first = atOnce(run.s.slice(0, 2), run.nm.slice(0, 2), SIGMA ** 2, 20, bend, 0);
          close(spline.evidence, all.evidence - first.evidence);
          spline.predict(on);
          close(spline.nm, all.nm);
          close(spline.p00, all.variance);
        },
      ),
    );
  });

  it('carried on in two steps is the same as in one', () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0, max: 1, noNaN: true }), (run, share) => {
        const [one, two] = [through(run, 12), through(run, 12)];
        one.predict(0.03);
        two.predict(0.03 * share);
        two.predict(0.03 * (1 - share));
        for (const of of ['nm', 'nmPerS', 'p00', 'p01', 'p11'] as const) close(two[of], one[of]);
      }),
    );
  });

  it('is kept at each reading near the top, and carried on from there in the same way', () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0, max: 0.02, noNaN: true }), (run, on) => {
        const last = run.s.length - 1;
        const stretch = {
          us: Float64Array.from(run.s, (s) => s * 1e6),
          nm: Float64Array.from(run.nm),
          noise: new Float64Array(run.s.length).fill(SIGMA ** 2),
        };
        const side = new Side(stretch, new Spline(run.nm[0] ?? 0, SIGMA ** 2, 20, 12), 0, last, {
          from: 1,
          to: last,
        });
        for (let i = 1; i <= last; i++) {
          const spline = through({ s: run.s.slice(0, i + 1), nm: run.nm.slice(0, i + 1) }, 12);
          close(side.evidenceAt(i), spline.evidence);
          close(side.nmPerS(i), spline.nmPerS);
          spline.predict(on);
          close(side.nm(i, on), spline.nm);
          close(side.p00(i, on), spline.p00);
          close(side.p01(i, on), spline.p01);
          close(side.p11(i, on), spline.p11);
        }
        close(side.evidence, through(run, 12).evidence);
      }),
    );
  });
});

describe('a rise carried on', () => {
  it('is the mean of splines that bend more or less, each by its likelihood', () => {
    fc.assert(
      fc.property(readings, (run) => {
        const samples = new RecentSamples();
        const whole = { s: run.s.map((s) => s / 4), nm: run.nm };
        whole.s.forEach((s, i) => {
          samples.add(s * 1e6, whole.nm[i] ?? 0, s * 1e6, i);
        });
        const lastS = whole.s.at(-1) ?? 0;
        const end = riseTo(samples, whole.s.length - 1, 1e6 * (lastS + 0.01), SIGMA);
        const scale = Math.abs(whole.nm.at(-1) ?? 0);
        const each = BENDS.map((bend) => {
          const all = atOnce(whole.s, whole.nm, SIGMA ** 2, scale, bend, lastS + 0.01);
          const first = atOnce(whole.s.slice(0, 2), whole.nm.slice(0, 2), SIGMA ** 2, scale, bend, 0);
          return { ...all, evidence: all.evidence - first.evidence };
        });
        const most = Math.max(...each.map(({ evidence }) => evidence));
        const weights = each.map(({ evidence }) => Math.exp(evidence - most));
        const sum = weights.reduce((a, b) => a + b, 0);
        const mean = each.reduce((a, { nm }, i) => a + ((weights[i] ?? 0) / sum) * nm, 0);
        const variance = each.reduce(
          (a, one, i) => a + ((weights[i] ?? 0) / sum) * (one.variance + (one.nm - mean) ** 2),
          0,
        );
        close(end?.nm ?? Number.NaN, mean);
        expect(Math.abs((end?.standardNm ?? 0) - Math.sqrt(variance))).toBeLessThan(1e-5);
      }),
    );
  });

  it('takes in what came within 120 ms, and nothing older', () => {
    const run = (olderUs: number) => {
      const samples = new RecentSamples();
      [0, olderUs, 200_000, 240_000, 280_000].forEach((us, i) => {
        samples.add(us, i === 1 ? 3 : 20 + i, us, i);
      });
      return riseTo(samples, 4, 290_000, SIGMA)?.nm ?? Number.NaN;
    };
    expect(run(159_999)).toBe(run(100_000));
    expect(run(160_000)).not.toBe(run(159_999));
  });
});
