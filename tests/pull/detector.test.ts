import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { type DetectorSettings, detectorSettings, settingsFor } from '../../src/pull/settings.ts';
import { type Corner, clickPull, drawn, EASE_MS } from './shapes.ts';

const settings = detectorSettings(25);

function pullsIn(
  samples: readonly { atUs: number; nm: number; deg?: number }[],
  by: DetectorSettings = settings,
): DetectedPull[] {
  const detector = createPullDetector(by);
  return samples.flatMap(({ atUs, nm, deg }) => detector.push(atUs, nm, deg) ?? []);
}

const rest = { atMs: 0, nm: 0 };
const aPull = [rest, ...clickPull(1000, 600, 27, 22, 27.8)];
const CLICK_MS = 1600 + EASE_MS;

describe('finding a pull', () => {
  it('keeps the click and the peak apart when the hand follows through', () => {
    const [pull, ...more] = pullsIn(drawn(aPull));
    expect(more).toEqual([]);
    expect(pull).toMatchObject({ release: 'seen', cut: null, stream: 'samples', saturated: false });
    expect(Math.abs((pull?.releaseNm ?? 0) - 27)).toBeLessThan(0.05);
    expect(Math.abs((pull?.releaseUs ?? 0) / 1000 - CLICK_MS)).toBeLessThan(10);
    expect(Math.abs((pull?.peakNm ?? 0) - 27.8)).toBeLessThan(0.1);
    expect(pull?.dropShare).toBeCloseTo(5 / 27, 2);
  });

  it('takes the click as the peak when the hand lets go', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, 27, 20, 20)]));
    expect(pull?.release).toBe('seen');
    expect(pull?.peakNm).toBe(pull?.releaseNm);
  });

  it.each([
    ['slowly', 1000],
    ['at once', 60],
  ])('sees no click in a pull that is let off %s', (_how, letOffMs) => {
    const corners = [rest, { atMs: 1000, nm: 0 }, { atMs: 1600, nm: 18 }, { atMs: 1660, nm: 18 }];
    const over = 1660 + letOffMs;
    const [pull] = pullsIn(drawn([...corners, { atMs: over, nm: 0 }, { atMs: over + 400, nm: 0 }]));
    expect(pull).toMatchObject({ release: 'none', releaseNm: null, dropShare: null });
    expect(pull?.peakNm).toBeCloseTo(18, 1);
  });

  it('does not take the jerk of a plug that breaks loose for a click', () => {
    const corners = [rest, { atMs: 1000, nm: 0 }, { atMs: 1300, nm: 12 }, { atMs: 1320, nm: 11.2 }];
    const [pull] = pullsIn(
      drawn([...corners, { atMs: 1800, nm: 18 }, { atMs: 2300, nm: 0 }, { atMs: 2600, nm: 0 }]),
    );
    expect(pull?.release).toBe('none');
    expect(pull?.rise.setbackNm).toBeCloseTo(0.8, 1);
  });

  it('says that it cannot see a click where readings come every 50 ms', () => {
    const [pull] = pullsIn(drawn(aPull, 50));
    expect(pull).toMatchObject({ release: 'not-visible', releaseNm: null });
  });

  it('says that it cannot see a click where readings are missing about the top', () => {
    const holed = drawn(aPull).filter(({ atUs }) => atUs < 1_630_000 || atUs > 1_760_000);
    expect(pullsIn(holed)[0]?.release).toBe('not-visible');
  });

  it('knows the peak less well where readings are missing about it', () => {
    const holed = drawn(aPull).filter(({ atUs }) => atUs < 1_550_000 || atUs > 1_760_000);
    const [pull] = pullsIn(holed);
    expect(Math.abs((pull?.peakNm ?? 0) - 27.8)).toBeLessThan(2 * (pull?.peakStandardNm ?? 0));
    expect(pull?.peakStandardNm).toBeGreaterThan(5 * (pullsIn(drawn(aPull))[0]?.peakStandardNm ?? 1));
  });

  it('sees the click of readings that a radio hands over in bunches', () => {
    const bunched = drawn(aPull).map(({ atUs, nm }) => ({ atUs: Math.ceil(atUs / 45_000) * 45_000, nm }));
    const [pull, ...more] = pullsIn(bunched);
    expect(more).toEqual([]);
    expect(pull?.release).toBe('seen');
    expect(Math.abs((pull?.releaseNm ?? 0) - 27)).toBeLessThan(0.1);
  });

  it('reads the rise from 20 % to 80 % of the click', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, 27, 20, 20)], 1));
    expect(pull?.riseMs).toBeGreaterThan(345);
    expect(pull?.riseMs).toBeLessThan(375);
    expect(pull?.rise.reachedMs).toEqual([...(pull?.rise.reachedMs ?? [])].sort((a, b) => a - b));
  });

  it.each([1, 0.5, 0.1])(
    'knows a peak from which the hand comes down for seconds, at a reading every %d ms',
    (stepMs) => {
      const corners = [rest, { atMs: 1000, nm: 0 }, { atMs: 1600, nm: 27 }, { atMs: 5600, nm: 24 }];
      const [pull] = pullsIn(drawn([...corners, { atMs: 5900, nm: 0 }, { atMs: 6300, nm: 0 }], stepMs));
      expect(Math.abs((pull?.peakNm ?? 0) - 27)).toBeLessThan(0.05);
      expect(Math.abs((pull?.peakUs ?? 0) / 1000 - 1600)).toBeLessThan(20);
    },
  );

  it('gives the highest of two tops that lie close together, whichever comes first', () => {
    for (const [first, second] of [
      [27, 26.6],
      [26.6, 27],
    ] as const) {
      const dip = { atMs: 1800, nm: 25.6 };
      const corners = [
        rest,
        { atMs: 1000, nm: 0 },
        { atMs: 1600, nm: first },
        dip,
        { atMs: 2000, nm: second },
      ];
      const [pull] = pullsIn(drawn([...corners, { atMs: 2300, nm: 0 }, { atMs: 2700, nm: 0 }], 2));
      expect(Math.abs((pull?.peakNm ?? 0) - 27)).toBeLessThan(0.1);
    }
  });

  it('tells how far the tool was turned, where it tells the angle', () => {
    const deg = (atUs: number) => Math.max(0, Math.min(atUs - 1_000_000, 740_000) / 5000);
    const samples = drawn(aPull).map((s) => ({ ...s, deg: deg(s.atUs) }));
    const [pull] = pullsIn(samples);
    expect(pull?.turn?.from50PercentDeg).toBeGreaterThan(60);
    expect(pull?.turn?.from10PercentDeg).toBeGreaterThan(pull?.turn?.from50PercentDeg ?? 0);
    expect(pull?.turn?.workJ).toBeGreaterThan(20);
    expect(pullsIn(drawn(aPull))[0]?.turn).toBeNull();
  });

  it('gives loosening a negative peak', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, -27, -20, -20)]));
    expect(Math.abs((pull?.peakNm ?? 0) + 27)).toBeLessThan(0.05);
  });

  it('keeps two pulls apart that return to rest between them', () => {
    const pulls = pullsIn(drawn([...aPull, ...clickPull(3000, 80, 27, 22, 27.5)]));
    expect(pulls.map(({ peakUs }) => Math.round(peakUs / 50_000))).toEqual([36, 65]);
    expect(pulls[1]?.riseMs).toBeLessThan(60);
    expect(pulls.map(({ sinceLastMs }) => sinceLastMs !== null && Math.round(sinceLastMs / 100))).toEqual([
      false,
      10,
    ]);
  });

  it('marks a pull whose readings break off', () => {
    const holed = [...drawn(aPull).filter(({ atUs }) => atUs < 1_500_000), { atUs: 9_000_000, nm: 0 }];
    expect(pullsIn(holed).map(({ cut }) => cut)).toEqual(['link-lost']);
  });

  it('is not taken in by a blow, which is gone sooner than any hand lets go', () => {
    const struck = (ms: number): Corner[] => [
      rest,
      { atMs: 1000, nm: 0 },
      { atMs: 1000 + ms / 2, nm: 40 },
      { atMs: 1000 + ms, nm: 0 },
      { atMs: 1600, nm: 0 },
    ];
    expect(pullsIn(drawn(struck(100)))).toEqual([]);
    expect(pullsIn(drawn(struck(220)))).toHaveLength(1);
    // Readings so far apart do not tell.
    expect(
      pullsIn(
        drawn(
          [rest, { atMs: 1000, nm: 0 }, { atMs: 1050, nm: 40 }, { atMs: 1100, nm: 0 }, { atMs: 1600, nm: 0 }],
          50,
        ),
      ),
    ).toHaveLength(1);
  });

  it('gives the pull under way when it is told that no more samples come', () => {
    const detector = createPullDetector(settings);
    for (const { atUs, nm } of drawn([rest, { atMs: 1000, nm: 0 }, { atMs: 1500, nm: 20 }]))
      detector.push(atUs, nm);
    expect(detector.live().pulling).toBe(true);
    const pull = detector.cut('stopped');
    expect(pull?.cut).toBe('stopped');
    expect(pull?.peakNm).toBeCloseTo(20, 1);
    expect(detector.cut('stopped')).toBeNull();
  });
});

describe('a tool that smooths its readings', () => {
  /** A rise of 45 N·m/s to a click, through a low-pass of first order. */
  const smoothed = (hz: number) => {
    const lagMs = 1000 / (2 * Math.PI * hz);
    let nm = 0;
    const fine = drawn([rest, ...clickPull(1000, 600, 27, 20, 20)], 1).map((sample) => {
      nm += (sample.nm - nm) * (1 - Math.exp(-1 / lagMs));
      return { ...sample, nm };
    });
    return { samples: fine.filter((_, i) => i % 10 === 0), lagMs };
  };

  it.each([3, 5, 10])(
    'at %d Hz reads low; where it states its bandwidth, the uncertainty holds that',
    (hz) => {
      const { samples, lagMs } = smoothed(hz);
      const [unaware] = pullsIn(samples);
      const [aware] = pullsIn(samples, { ...settings, lagMs });
      expect((unaware?.peakNm ?? 27) - 27).toBeLessThan(-0.04);
      expect(Math.abs((aware?.peakNm ?? 0) - 27)).toBeLessThan(2 * (aware?.peakStandardNm ?? 0));
    },
  );

  it('still shows its click where its bandwidth is known', () => {
    const { samples, lagMs } = smoothed(3);
    expect(pullsIn(samples)[0]?.release).toBe('none');
    expect(pullsIn(samples, { ...settings, lagMs })[0]?.release).toBe('seen');
  });

  it('is known by its bandwidth, the inverse of its lag', () => {
    const description = { exponent: -2, samplingFunction: 'instantaneous', bandwidthHz: 10 } as const;
    const tool = {
      ...description,
      quantity: 'torque',
      unit: 'N.m',
      link: { kind: 'direct', authenticated: false },
    } as const;
    expect(settingsFor(25, tool).lagMs).toBeCloseTo(15.9, 1);
    expect(settings.lagMs).toBeUndefined();
  });
});

describe('noise', () => {
  it('does not split a pull, and does not lift its peak', () => {
    const level: Corner[] = [rest, { atMs: 1000, nm: 0 }, { atMs: 1600, nm: 20 }, { atMs: 1900, nm: 20 }];
    const samples = drawn([...level, { atMs: 2100, nm: 0 }, { atMs: 2600, nm: 0 }], 2);
    const errors: number[] = [];
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        // Numbers that fast-check draws are seldom uniform: it tries the small and the extreme ones first.
        const random = new Random(seed);
        const pulls = pullsIn(samples.map(({ atUs, nm }) => ({ atUs, nm: nm + random.uniform(-0.5, 0.5) })));
        expect(pulls).toHaveLength(1);
        const { peakNm, highestNm, release } = pulls[0] ?? { peakNm: 0, highestNm: 0, release: 'seen' };
        errors.push(peakNm - 20);
        expect(highestNm).toBeGreaterThan(20.3);
        expect(release).toBe('none');
      }),
      { numRuns: 60 },
    );
    const bias = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    // A third of the noise, whose standard deviation is 0.29.
    expect(Math.abs(bias)).toBeLessThan(0.1);
  });
});

describe('the zero', () => {
  it('is what the wrench reads at rest, and is taken off', () => {
    const [pull] = pullsIn(drawn(aPull).map(({ atUs, nm }) => ({ atUs, nm: nm + 0.3 })));
    expect(pull?.zeroNm).toBeCloseTo(0.3, 9);
    expect(pull?.zeroSettled).toBe(true);
    expect(Math.abs((pull?.peakNm ?? 0) - 27.8)).toBeLessThan(0.1);
  });

  it('is not settled when a pull begins with the first reading', () => {
    const [pull] = pullsIn(drawn(aPull).filter(({ atUs }) => atUs > 1_250_000));
    expect(pull?.zeroSettled).toBe(false);
  });

  it('follows a jump between pulls, even one beyond the start of a pull, without inventing a pull', () => {
    for (const jumpNm of [0.7, 3]) {
      const first = drawn(aPull);
      const second = drawn([rest, { atMs: 4000, nm: 0 }, ...clickPull(4500, 600, 27, 22, 22)]);
      const shifted = second.map(({ atUs, nm }) => ({ atUs: atUs + 2_400_000, nm: nm + jumpNm }));
      const pulls = pullsIn([...first, ...shifted]);
      expect(pulls).toHaveLength(2);
      expect(pulls[1]?.zeroNm).toBeCloseTo(jumpNm, 6);
      expect(Math.abs((pulls[1]?.peakNm ?? 0) - 27)).toBeLessThan(0.05);
    }
  });
});

describe('a zero that moves about a pull', () => {
  /** Rest at zero, a jump `beforeMs` in front of the pull, the pull on top of it, and rest there. */
  const jumped = (byNm: number, beforeMs: number) =>
    drawn([rest, ...clickPull(3000, 600, 27, 22, 22), { atMs: 6500, nm: 0 }]).map(({ atUs, nm }) => ({
      atUs,
      nm: nm + (atUs > (3000 - beforeMs) * 1000 ? byNm : 0),
    }));

  it.each([0.7, 1.6, 2.6, -0.7, -2.6])('by %d N·m is told, and stands in the uncertainty', (byNm) => {
    for (const beforeMs of [80, 300]) {
      const pulls = pullsIn(jumped(byNm, beforeMs)).filter(({ peakNm }) => peakNm > 20);
      expect(pulls).toHaveLength(1);
      const { peakNm, peakStandardNm, zeroSettled } = pulls[0] ?? { peakNm: 0, peakStandardNm: 0 };
      expect(zeroSettled).toBe(false);
      expect(Math.abs(peakNm - 27)).toBeLessThan(2.5 * peakStandardNm);
    }
  });

  it('is nothing but rest once it was there for a while', () => {
    const [pull, ...more] = pullsIn(jumped(0.7, 2600));
    expect(more).toEqual([]);
    expect(pull?.zeroSettled).toBe(true);
    expect(Math.abs((pull?.peakNm ?? 0) - 27)).toBeLessThan(0.05);
  });

  it.each([0.2, 0.4, 0.8])('is not what a ratchet drags by %d N·m when it is swung back', (dragNm) => {
    const stroke = (fromMs: number, topNm: number): Corner[] => [
      { atMs: fromMs, nm: 0 },
      { atMs: fromMs + 500, nm: topNm },
      { atMs: fromMs + 700, nm: 0 },
    ];
    const swing = (fromMs: number): Corner[] => [
      { atMs: fromMs + 40, nm: -dragNm },
      { atMs: fromMs + 1160, nm: -dragNm },
      { atMs: fromMs + 1200, nm: 0 },
    ];
    const strokes = [0, 1, 2].flatMap((n) => [
      ...stroke(1000 + 1900 * n, 12 + 3 * n),
      ...swing(1700 + 1900 * n),
    ]);
    const pulls = pullsIn(drawn([rest, ...strokes, ...clickPull(6700, 500, 27, 22, 22)]));
    expect(pulls).toHaveLength(4);
    expect(pulls.map(({ zeroNm }) => zeroNm)).toEqual([0, 0, 0, 0]);
    expect(pulls.at(-1)?.zeroSettled).toBe(true);
    expect(Math.abs((pulls.at(-1)?.peakNm ?? 0) - 27)).toBeLessThan(0.05);
  });

  it('does not end a pull that is held still', () => {
    const held: Corner[] = [rest, { atMs: 1000, nm: 0 }, { atMs: 1300, nm: 20 }, { atMs: 5000, nm: 20 }];
    const pulls = pullsIn(drawn([...held, { atMs: 5300, nm: 0 }, { atMs: 5700, nm: 0 }]));
    expect(pulls).toHaveLength(1);
    expect(pulls[0]?.endUs).toBeGreaterThan(5_000_000);
  });
});

describe('the end of the scale', () => {
  const reading = (lowerNm: number, upperNm: number) =>
    detectorSettings(25, { range: { lowerNm, upperNm }, stepNm: 0.01 });
  const upTo = (mostNm: number) => drawn(aPull).map(({ atUs, nm }) => ({ atUs, nm: Math.min(nm, mostNm) }));

  it('marks a peak that reached it, or went beyond what the tool vouches for', () => {
    expect(pullsIn(upTo(26), reading(-60, 26))[0]).toMatchObject({ saturated: true, peakNm: 26 });
    expect(pullsIn(upTo(60), reading(-60, 26))[0]).toMatchObject({ saturated: true });
    expect(pullsIn(upTo(60), reading(-60, 60))[0]?.saturated).toBe(false);
  });

  it('has another end for loosening, and none where the tool tells of tightening only', () => {
    const loosened = upTo(60).map(({ atUs, nm }) => ({ atUs, nm: -nm }));
    expect(pullsIn(loosened, reading(-26, 60))[0]?.saturated).toBe(true);
    expect(pullsIn(loosened, reading(-60, 26))[0]?.saturated).toBe(false);
    expect(pullsIn(loosened, reading(0, 26))[0]?.saturated).toBe(false);
  });

  it('is seen without being told where it lies, when a noisy tool reads the same again and again at the top', () => {
    const hiss = (i: number) => 0.05 * Math.sin(12.9898 * i) + 0.03 * Math.sin(78.233 * i);
    const noisy = (mostNm: number) =>
      drawn(aPull, 5).map(({ atUs, nm }, i) => ({
        atUs,
        nm: Math.round(100 * Math.min(nm + hiss(i), mostNm)) / 100,
      }));
    const step = detectorSettings(25, { stepNm: 0.01 });
    expect(pullsIn(noisy(26), step)[0]?.saturated).toBe(true);
    expect(pullsIn(noisy(60), step)[0]?.saturated).toBe(false);
  });
});

describe('what is no reading', () => {
  it.each<[string, number, number]>([
    ['a torque that is no number', 2_000_000, Number.NaN],
    ['an endless torque', 2_000_000, Number.POSITIVE_INFINITY],
    ['a time that goes back', 10, 0],
    ['a time that is no number', Number.NaN, 0],
  ])('%s throws and changes nothing', (_what, atUs, nm) => {
    const detector = createPullDetector(settings);
    detector.push(1_000_000, 0.1);
    expect(() => detector.push(atUs, nm)).toThrow(RangeError);
    expect(detector.push(1_010_000, 0)).toBeNull();
  });

  it('takes time that stands still', () => {
    const twice = drawn(aPull).flatMap((sample) => [sample, sample]);
    expect(pullsIn(twice)).toHaveLength(1);
  });
});
