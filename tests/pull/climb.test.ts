/** The way up of a pull in bounded memory, and the highest reading on it. */
import { describe, expect, it } from 'vitest';
import { Climb, type Step } from '../../src/pull/climb.ts';
import { Highest } from '../../src/pull/highest.ts';
import { detectorSettings } from '../../src/pull/settings.ts';

/** A point at `nm`: all else is in proportion to it, so that what lies between two points is known. */
const at = (nm: number): Step => ({
  nm,
  atUs: 1000 * nm,
  angleDeg: 2 * nm,
  impulseNms: 3 * nm,
  workJ: 4 * nm,
  setbackNm: nm,
});

function climbed(apartNm: number, ...torques: readonly number[]): Climb {
  const climb = new Climb(apartNm);
  for (const nm of torques) climb.add(at(nm));
  return climb;
}

describe('the way up', () => {
  const climb = climbed(1, 2, 4, 8);

  it('is a straight line between its points, but for the setback, which is that of the point above', () => {
    expect(climb.reached(5, at(10))).toEqual({ ...at(5), setbackNm: 8 });
    expect(climb.reached(9, at(10))).toEqual({ ...at(9), setbackNm: 10 });
  });

  it('is a point itself where one lies there, and the first or the end outside of them', () => {
    expect(climb.reached(4, at(10))).toEqual(at(4));
    expect(climb.reached(1, at(10))).toEqual(at(2));
    expect(climb.reached(10, at(10))).toEqual(at(10));
    expect(climb.reached(12, at(10))).toEqual(at(10));
    expect(climbed(1).reached(5, at(10))).toEqual(at(10));
  });

  it('is the end where that lies no higher than the last point', () => {
    expect(climb.reached(9, at(8))).toEqual(at(8));
    expect(climb.reached(9, at(7))).toEqual(at(7));
  });

  it('keeps points that lie as far apart as it was told, at least', () => {
    const sparse = climbed(2, 2, 3.99, 4, 5);
    // 3.99 lies too near to 2, so what is above 3 is the point at 4.
    expect(sparse.reached(3.995, at(9))).toEqual({ ...at(3.995), setbackNm: 4 });
    expect(sparse.reached(4.5, at(9)).setbackNm).toBe(9);
  });

  it('lets go of every other point when there are 192, and takes steps twice as wide from there on', () => {
    const steps = Array.from({ length: 191 }, (_, i) => i + 1);
    expect(climbed(1, ...steps).reached(1.5, at(999)).setbackNm).toBe(2);
    const full = climbed(1, ...steps, 192);
    expect(full.reached(1.5, at(999)).setbackNm).toBe(3);
    expect(full.reached(190.5, at(999)).setbackNm).toBe(191);
    full.add(at(192.9));
    expect(full.reached(192, at(999)).setbackNm).toBe(999);
    full.add(at(193));
    expect(full.reached(192, at(999)).setbackNm).toBe(193);
  });
});

describe('the highest reading', () => {
  const settings = detectorSettings(25, { stepNm: 0.01, range: { lowerNm: -60, upperNm: 60 } });
  /** Equal readings at the top, sample numbers as given; noise of so many steps. */
  const ends = (numbers: readonly number[], noiseSteps: number) => {
    const highest = new Highest();
    highest.add(20, 0);
    for (const n of numbers) highest.add(27, n);
    return highest.endsScale(settings, 27, 0.01 * noiseSteps);
  };
  const row = (count: number, from = 5) => Array.from({ length: count }, (_, i) => from + i);

  // Two readings with a noise of s steps are equal with a probability of 1/(s·√(2π)) at most: 0.399 for one step, 0.0399 for
  // ten. That is below 1e-5 thirteen and four times over.
  it.each([
    [1, 14],
    [10, 5],
    [0.5, 52],
  ])('stands at the end of the scale where noise of %d steps would not leave %d equal', (noise, count) => {
    expect(ends(row(count), noise)).toBe(true);
    expect(ends(row(count - 1), noise)).toBe(false);
  });

  it('does not where noise is below half a step, or unbounded', () => {
    expect(ends(row(500), 0.49)).toBe(false);
    expect(ends(row(500), Number.NaN)).toBe(false);
    expect(ends(row(500), Number.POSITIVE_INFINITY)).toBe(false);
  });

  it('counts those in a row alone, the longest row, and begins anew with a higher one', () => {
    expect(ends([...row(3), ...row(3, 20)], 10)).toBe(false);
    expect(ends([...row(5), ...row(2, 20)], 10)).toBe(true);
    const highest = new Highest();
    for (const n of row(6)) highest.add(27, n);
    highest.add(27.01, 11);
    expect(highest.nm).toBe(27.01);
    expect(highest.endsScale(settings, 27, 0.1)).toBe(false);
  });

  it('stands there where the tool says that its scale ends', () => {
    const highest = new Highest();
    highest.add(60, 0);
    expect(highest.endsScale(settings, 60, 0)).toBe(true);
    expect(highest.endsScale(settings, 59.98, 0)).toBe(false);
  });
});
