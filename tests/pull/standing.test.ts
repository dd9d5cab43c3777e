import { describe, expect, it } from 'vitest';
import { Standing } from '../../src/pull/standing.ts';

const START = { startNm: 2, frameSigma: 0.01 };

/** Frames every 10 ms: what the torque stands at, up to when. */
function stood(parts: readonly (readonly [untilMs: number, nm: number])[], start = START): Standing {
  const standing = new Standing(start, parts[0]?.[1] ?? 0);
  let ms = 0;
  for (const [untilMs, nm] of parts) for (; ms <= untilMs; ms += 10) standing.add(1000 * ms, nm);
  return standing;
}

describe('where the torque of a pull stands', () => {
  it('is rest once it was below half of the start for 120 ms', () => {
    const standing = stood([
      [500, 20],
      [600, 0.99],
    ]);
    expect(standing.restedUs(629_000)).toBeNull();
    expect(standing.restedUs(630_000)).toBe(510_000);
    expect(standing.endsUs).toBe(630_000);
    expect(
      stood([
        [500, 20],
        [600, 1],
      ]).restedUs(900_000),
    ).toBeNull();
    expect(
      stood([
        [500, 20],
        [600, 0.5],
        [610, 3],
      ]).restedUs(900_000),
    ).toBeNull();
  });

  it('ends, if nothing more comes, where it has been low since', () => {
    const standing = stood([
      [500, 20],
      [600, 0.9],
    ]);
    expect(standing.lowSinceUs(600_000, 0.9)).toBe(510_000);
    expect(standing.lowSinceUs(605_000, 1)).toBeNull();
    expect(stood([[500, 20]]).lowSinceUs(505_000, 0.3)).toBe(505_000);
  });

  it('low and still is a zero that has moved: after two seconds, after one behind a pull', () => {
    const never = stood([[1900, 3]]);
    expect(never.stoodAt(1_999_000)).toBeNull();
    expect(never.stoodAt(2_000_000)).toEqual({ nm: 3, count: 191, sinceUs: 0, pulled: false });
    expect(never.endsUs).toBe(2_000_000);
    const behind = stood([
      [500, 20],
      [1400, 3],
    ]);
    expect(behind.stoodAt(1_509_000)).toBeNull();
    expect(behind.stoodAt(1_510_000)).toMatchObject({ nm: 3, sinceUs: 510_000, pulled: true });
    expect(behind.endsUs).toBe(1_510_000);
  });

  it('is a hand as long as it is high, or moves', () => {
    expect(stood([[4000, 6]]).stoodAt(5_000_000)).toBeNull();
    expect(stood([[4000, 5.99]]).stoodAt(5_000_000)).not.toBeNull();
    expect(stood([[4000, 6.6]]).endsUs).toBe(Number.POSITIVE_INFINITY);
    // By more than a quarter of the start.
    expect(
      stood([
        [1000, 3],
        [1900, 3.5],
      ]).stoodAt(2_000_000),
    ).toMatchObject({ sinceUs: 0 });
    expect(
      stood([
        [1000, 3],
        [1900, 3.51],
      ]).stoodAt(2_000_000),
    ).toBeNull();
    expect(
      stood([
        [1000, 3],
        [1900, 2.49],
      ]).stoodAt(2_000_000),
    ).toBeNull();
    expect(
      stood(
        [
          [1000, 3],
          [1900, 3.51],
        ],
        { startNm: 2, frameSigma: 0.13 },
      ).stoodAt(2_000_000),
    ).not.toBeNull();
  });

  it('never moved only after a while', () => {
    const standing = stood([[100, 3]]);
    expect([standing.neverMoved(199_000), standing.neverMoved(200_000)]).toEqual([false, true]);
    expect(
      stood([
        [100, 3],
        [150, 5],
      ]).neverMoved(500_000),
    ).toBe(false);
  });
});
