import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FoundPull } from '../../src/pull/pull.ts';
import { type Bench, place } from '../../src/sequence/place.ts';

const fresh: FoundPull = {
  startUs: 0,
  endUs: 900_000,
  peakNm: 27,
  peakUs: 700_000,
  releaseNm: 27,
  releaseUs: 700_000,
  riseMs: 600,
  zeroNm: 0,
  samples: 90,
  cut: null,
};
const first: Bench = {
  target: 1,
  targetStarted: null,
  refitting: null,
  lastTight: null,
  asking: false,
  clicks: true,
  lowerNm: 25,
  upperNm: 30,
};
const later: Bench = { ...first, target: 2, lastTight: 1 };

describe('giving a pull to a cylinder', () => {
  it.each<[string, Partial<FoundPull>, Bench, { kind: string; cylinder: number | null }]>([
    [
      'the first pull of an engine is a tightening, however fast it rose',
      { riseMs: 40 },
      first,
      { kind: 'tightening', cylinder: 1 },
    ],
    ['a slow rise turned the next plug', {}, later, { kind: 'tightening', cylinder: 2 }],
    [
      'a fast rise was a second click on the last plug',
      { riseMs: 60 },
      later,
      { kind: 'rehit', cylinder: 1 },
    ],
    ['between the two nobody can tell', { riseMs: 140 }, later, { kind: 'unsure', cylinder: 2 }],
    [
      'a low stroke is on the way, whatever its let-off looks like',
      { peakNm: 9, releaseNm: 9, releaseUs: 700_000 },
      later,
      { kind: 'run-down', cylinder: 2 },
    ],
    [
      'going on after stopping short, however fast it rose',
      { riseMs: 60 },
      { ...later, targetStarted: 'short' },
      { kind: 'continuation', cylinder: 2 },
    ],
    [
      'a fast last stroke goes on from the stroke before it',
      { riseMs: 50 },
      { ...later, targetStarted: 'run-down' },
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'a stroke that reached the window of a click wrench without a click has not ended',
      { releaseNm: null, releaseUs: null },
      later,
      { kind: 'run-down', cylinder: 2 },
    ],
    [
      'an indicating wrench never clicks',
      { releaseNm: null, releaseUs: null },
      { ...later, clicks: false },
      { kind: 'tightening', cylinder: 2 },
    ],
    ['too little torque is handling', { peakNm: 4 }, later, { kind: 'handling', cylinder: null }],
    ['a slow pull when all are done', {}, { ...later, target: null }, { kind: 'unsure', cylinder: 1 }],
    [
      'a fast pull when all are done',
      { riseMs: 60 },
      { ...later, target: null },
      { kind: 'rehit', cylinder: 1 },
    ],
    ['loosening before anything was tight', { peakNm: -20 }, first, { kind: 'loosening', cylinder: null }],
    [
      'loosening a plug that was to be backed out',
      { peakNm: -20 },
      { ...later, refitting: 1 },
      { kind: 'loosening', cylinder: 1 },
    ],
    ['loosening after a plug was proven', { peakNm: -20 }, later, { kind: 'unsure', cylinder: 1 }],
  ])('%s', (_what, pull, bench, expected) => {
    expect(place({ ...fresh, ...pull }, bench)).toMatchObject(expected);
  });

  const pulls = fc.record({
    peakNm: fc.double({ min: -80, max: 80, noNaN: true }),
    riseMs: fc.double({ min: 0, max: 3000, noNaN: true }),
    released: fc.boolean(),
    cut: fc.constantFrom<FoundPull['cut']>(null, 'link-lost', 'stopped'),
  });
  const benches = fc.record({
    target: fc.constantFrom(null, 1, 2),
    targetStarted: fc.constantFrom<Bench['targetStarted']>(null, 'run-down', 'short'),
    refitting: fc.constantFrom(null, 1),
    lastTight: fc.constantFrom(null, 1),
    asking: fc.boolean(),
    clicks: fc.boolean(),
    lowerNm: fc.constant(25),
    upperNm: fc.constant(30),
  });

  it('never gives a judged kind to a pull that was cut, or while a question is open', () => {
    fc.assert(
      fc.property(pulls, benches, ({ released, ...shape }, bench) => {
        const pull = { ...fresh, ...shape, releaseNm: released ? shape.peakNm : null };
        const { kind } = place(pull, bench);
        if (pull.cut !== null || bench.asking) expect(['handling', 'loosening', 'unsure']).toContain(kind);
      }),
    );
  });

  it('never fills the next cylinder with a pull that rose like a second click', () => {
    fc.assert(
      fc.property(pulls, ({ released, ...shape }) => {
        const pull = {
          ...fresh,
          ...shape,
          riseMs: Math.min(shape.riseMs, 100),
          releaseNm: released ? shape.peakNm : null,
        };
        const { kind, cylinder } = place(pull, later);
        expect(cylinder === 2 && kind !== 'run-down' && kind !== 'unsure').toBe(false);
      }),
    );
  });
});
