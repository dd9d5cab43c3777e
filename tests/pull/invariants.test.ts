import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import { type DetectedPull, detectedPullSchema } from '../../src/pull/pull.ts';
import { roundedPull } from '../../src/pull/rounded.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { drawCase } from '../bench/campaign/case.ts';
import { type Worked, worked } from '../bench/campaign/work.ts';

const STREAM = { rateHz: 200, noiseShare: 0.002, lossShare: 0.02, jitterShare: 0.1, bunchUs: 0 };
const engine = drawCase('invariants', STREAM, new Random('invariants'));
const stream = worked(engine);
const settings = detectorSettings(engine.bench.plug.lowerNm, { stepNm: 0.01 });

const whole = ({ atUs, nm }: Pick<Worked, 'atUs' | 'nm'>): DetectedPull[] =>
  createPullDetector(settings).pushBatch(atUs, nm, 0, atUs.length);
const expected = whole(stream);

describe('the same samples give the same pulls', () => {
  it('there are pulls to speak of', () => {
    expect(expected.length).toBeGreaterThan(7);
  });

  it('one by one, bit by bit', () => {
    const detector = createPullDetector(settings);
    const found: DetectedPull[] = [];
    stream.atUs.forEach((atUs, i) => {
      const pull = detector.push(atUs, stream.nm[i] ?? Number.NaN);
      if (pull !== null) found.push(pull);
    });
    expect(found).toEqual(expected);
  });

  it('in batches of any size, however late each of them comes', () => {
    const cuts = fc.array(fc.integer({ min: 1, max: stream.atUs.length }), { maxLength: 40 });
    fc.assert(
      fc.property(cuts, (at) => {
        const detector = createPullDetector(settings);
        const ends = [...new Set([0, ...at, stream.atUs.length])].sort((a, b) => a - b);
        const found = ends.flatMap((to, i) =>
          i === 0 ? [] : detector.pushBatch(stream.atUs, stream.nm, ends[i - 1] ?? 0, to),
        );
        expect(found).toEqual(expected);
      }),
      { numRuns: 40 },
    );
  });

  it('whenever the clock started', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 45 }), (shift) => {
        const moved = whole({ atUs: stream.atUs.map((at) => at + shift), nm: stream.nm });
        const back = moved.map((pull) => ({
          ...pull,
          startUs: pull.startUs - shift,
          endUs: pull.endUs - shift,
          peakUs: pull.peakUs - shift,
          releaseUs: pull.releaseUs === null ? null : pull.releaseUs - shift,
        }));
        expect(back).toEqual(expected);
      }),
      { numRuns: 25 },
    );
  });

  it('wherever the zero lies, up to three times the start of a pull', () => {
    const reach = 2.5 * settings.startNm;
    fc.assert(
      fc.property(fc.double({ min: -reach, max: reach, noNaN: true }), (offset) => {
        const moved = whole({ atUs: stream.atUs, nm: stream.nm.map((nm) => nm + offset) });
        expect(moved.map(({ startUs, release }) => [startUs, release])).toEqual(
          expected.map(({ startUs, release }) => [startUs, release]),
        );
        moved.forEach((pull, i) => {
          expect(Math.abs(pull.peakNm - (expected[i]?.peakNm ?? 0))).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe('a long stream', () => {
  it('of a million samples in one batch finds the same pulls as its parts', () => {
    const rounds = Math.ceil(1e6 / stream.atUs.length);
    const endUs = (stream.atUs.at(-1) ?? 0) + 5000;
    const atUs = new Float64Array(rounds * stream.atUs.length);
    const nm = new Float64Array(atUs.length);
    for (let round = 0; round < rounds; round++) {
      atUs.set(
        stream.atUs.map((at) => at + round * endUs),
        round * stream.atUs.length,
      );
      nm.set(stream.nm, round * stream.atUs.length);
    }
    const found = whole({ atUs, nm });
    expect(found).toHaveLength(rounds * expected.length);
    expect(found.every(({ cut }) => cut === null)).toBe(true);
  });
});

describe('whatever comes', () => {
  const sample = fc.record({
    stepUs: fc.oneof(
      fc.constant(0),
      fc.integer({ min: 1, max: 60_000 }),
      fc.integer({ min: 60_000, max: 600_000 }),
    ),
    nm: fc.oneof(fc.constant(0), fc.double({ min: -40, max: 60, noNaN: true })),
    missed: fc.option(fc.nat(20), { freq: 20 }),
  });

  it('the figures of a pull are numbers, and its record reads them back', () => {
    fc.assert(
      fc.property(fc.array(sample, { minLength: 5, maxLength: 300 }), (samples) => {
        const detector = createPullDetector(settings);
        let atUs = 0;
        const found = samples.flatMap(({ stepUs, nm, missed }) => {
          if (missed !== null) detector.missed(missed);
          atUs += stepUs;
          return detector.push(atUs, nm) ?? [];
        });
        for (const pull of [...found, detector.cut('stopped')])
          if (pull !== null) expect(detectedPullSchema.safeParse(roundedPull(pull)).error).toBeUndefined();
      }),
      {
        numRuns: 200,
        // A second hump behind a fall to nothing, with the stamps of a bunch.
        examples: [
          [
            [
              { stepUs: 1, nm: -40, missed: null },
              { stepUs: 3, nm: 0, missed: null },
              { stepUs: 0, nm: 0, missed: null },
              { stepUs: 60_000, nm: -38.8, missed: null },
              { stepUs: 1, nm: 0, missed: null },
            ],
          ],
        ],
      },
    );
  });
});
