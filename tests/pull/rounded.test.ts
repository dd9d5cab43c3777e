import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type DetectedPull, detectedPullSchema } from '../../src/pull/pull.ts';
import { roundedPull } from '../../src/pull/rounded.ts';
import { A_PULL } from './a-pull.ts';

const nm = fc.double({ min: -500, max: 500, noNaN: true });
const size = fc.double({ min: 0, max: 500, noNaN: true });
const ms = fc.double({ min: 0, max: 1e7, noNaN: true });
const pulls: fc.Arbitrary<DetectedPull> = fc
  .record({
    peakNm: nm,
    peakStandardNm: size,
    highestNm: nm,
    releaseNm: fc.option(nm),
    dropShare: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    riseMs: ms,
    rise: fc.record({
      reachedMs: fc.array(ms, { minLength: 9, maxLength: 9 }),
      slopeAtTopNmPerS: size,
      impulseNms: nm,
      setbackNm: size,
    }),
    turn: fc.option(fc.record({ startToPeakDeg: nm, from10PercentDeg: nm, from50PercentDeg: nm, workJ: nm })),
    sinceLastMs: fc.option(ms),
    zeroNm: nm,
    noiseNm: size,
    intervalUs: ms,
  })
  .map((some) => ({ ...A_PULL, ...some }));

it('is a pull that its own record reads back, and is told the same once more', () => {
  fc.assert(
    fc.property(pulls, (found) => {
      const told = roundedPull(found);
      expect(detectedPullSchema.parse(JSON.parse(JSON.stringify(told)))).toEqual(told);
      expect(roundedPull(told)).toEqual(told);
    }),
  );
});

it('moves the torque by less than a millionth of a N·m, which no tool shows', () => {
  fc.assert(
    fc.property(pulls, (found) => {
      expect(Math.abs(roundedPull(found).peakNm - found.peakNm)).toBeLessThanOrEqual(0.5000001e-6);
      expect(Math.abs(roundedPull(found).zeroNm - found.zeroNm)).toBeLessThanOrEqual(0.5000001e-6);
    }),
  );
});

it('finds the same where another machine differs in the last digits', () => {
  const other = {
    ...A_PULL,
    peakNm: A_PULL.peakNm * (1 + 2 ** -51),
    noiseNm: A_PULL.noiseNm * (1 - 2 ** -51),
  };
  expect(other).not.toEqual(A_PULL);
  expect(roundedPull(other)).toEqual(roundedPull(A_PULL));
});
