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

it('is told with so many digits: torque to a millionth, times to a microsecond, angles to a thousandth', () => {
  const nm = 1.23456789;
  const turned = { startToPeakDeg: nm, from10PercentDeg: nm, from50PercentDeg: nm, workJ: nm };
  const plug = { turnedDeg: nm, standardDeg: nm, fromNm: nm, windUpDeg: nm, contactDeg: nm, woundUpDeg: nm };
  const nine = Array(9).fill(nm);
  const told = roundedPull({
    ...A_PULL,
    peakNm: nm,
    peakStandardNm: nm,
    highestNm: nm,
    releaseNm: nm,
    dropShare: nm,
    slightFall: { torqueNm: nm, dropShare: nm },
    fallMs: nm,
    riseMs: nm,
    rise: { reachedMs: nine, slopeAtTopNmPerS: nm, impulseNms: nm, setbackNm: nm },
    turn: { ...turned, plug: { ...plug, strokes: 2, reachedDeg: nine } },
    sinceLastMs: nm,
    zeroNm: nm,
    noiseNm: nm,
    intervalUs: nm,
  });
  const [six, three, one] = [1.234568, 1.235, 1.2];
  expect(told).toEqual({
    ...A_PULL,
    peakNm: six,
    peakStandardNm: six,
    highestNm: six,
    releaseNm: six,
    dropShare: six,
    slightFall: { torqueNm: six, dropShare: six },
    fallMs: three,
    riseMs: three,
    rise: { reachedMs: Array(9).fill(three), slopeAtTopNmPerS: three, impulseNms: six, setbackNm: six },
    turn: {
      startToPeakDeg: three,
      from10PercentDeg: three,
      from50PercentDeg: three,
      workJ: six,
      plug: {
        turnedDeg: three,
        standardDeg: three,
        fromNm: six,
        windUpDeg: three,
        contactDeg: three,
        woundUpDeg: three,
        strokes: 2,
        reachedDeg: Array(9).fill(three),
      },
    },
    sinceLastMs: three,
    zeroNm: six,
    noiseNm: six,
    intervalUs: one,
  });
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
