import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { place, type Situation } from '../../src/sequence/place.ts';
import { settle } from '../../src/sequence/settle.ts';
import { FIRST, halfway, pullOf, riseBy, second, strokeTo, tenths, tightPull } from './pulls.ts';

interface Expected {
  readonly kind: string;
  readonly cylinder: number | null;
  readonly ask?: string;
}

const DONE: Situation = { ...second(), target: null };
const STROKE_ON_3 = { cylinder: 3, asked: null, tight: false, short: true, knock: 0 } as const;
/** Fast to 60 % of the click, four times slower beyond. */
const onFrom60 = riseBy([10, 20, 30, 40, 50, 60, 100, 140, 180]);

describe('giving a pull to a cylinder', () => {
  it.each<[string, DetectedPull, Situation, Expected]>([
    ['the first plug that turns', pullOf(), FIRST, { kind: 'tightening', cylinder: 1 }],
    [
      'a first plug that does not turn was tight before anybody began',
      tightPull(),
      FIRST,
      { kind: 'unsure', cylinder: 1, ask: 'already-tight' },
    ],
    ['a plug that surely turned', pullOf(), second(), { kind: 'tightening', cylinder: 2 }],
    ['at once once more', tightPull(), second(500), { kind: 'rehit', cylinder: 1 }],
    [
      'a tug at the tight plug is not the first stroke on the next',
      strokeTo(14, { riseMs: 40 }),
      second(700),
      { kind: 'rehit', cylinder: 1 },
    ],
    [
      'a plug that surely turns, soon after the last: nobody turns a tight one from loose',
      pullOf({ rise: riseBy(tenths(400, 0.5)) }),
      second(1500),
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'the same, less surely',
      pullOf({ rise: riseBy(tenths(400, 0.1)) }),
      second(1500),
      { kind: 'unsure', cylinder: 2, ask: 'which' },
    ],
    ['sooner than anybody gets to another plug', pullOf(), second(700), { kind: 'rehit', cylinder: 1 }],
    [
      'tight, with time to have gone elsewhere: a check, or a cylinder was left out',
      tightPull(),
      second(),
      { kind: 'unsure', cylinder: 2, ask: 'already-tight' },
    ],
    [
      'tight and the last cylinder due: one who left a plug out finds out here',
      tightPull(),
      { ...second(1500), lastOpen: true },
      { kind: 'unsure', cylinder: 2, ask: 'already-tight' },
    ],
    [
      'between the two nobody can tell',
      pullOf({ rise: riseBy(tenths(400, 0.1)) }),
      second(),
      { kind: 'unsure', cylinder: 2, ask: 'which' },
    ],
    [
      'what is believed in between is asked about when the last is due',
      pullOf({ rise: riseBy(tenths(400, 0.2)) }),
      { ...second(), lastOpen: true },
      { kind: 'unsure', cylinder: 2, ask: 'which' },
    ],
    [
      'and believed where this plug was just backed out',
      pullOf({ rise: riseBy(tenths(400, 0.1)) }),
      { ...second(), refitted: true },
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'a first stroke that turned the next plug from loose, after one that had stopped short',
      strokeTo(16, { rise: riseBy(tenths(400, 0.6)) }),
      { ...halfway('short', 16, 6000), next: 3 },
      { kind: 'run-down', cylinder: 3 },
    ],
    [
      'a stroke at once after that goes on with it',
      strokeTo(20, { rise: riseBy(tenths(400, 0.6)) }),
      { ...halfway('short', 16, 800), last: { ...STROKE_ON_3, endUs: 9_200_000 }, next: 4 },
      { kind: 'run-down', cylinder: 3 },
    ],
    [
      'and a click after it finishes no other plug',
      pullOf({ riseMs: 120, rise: onFrom60 }),
      { ...halfway('short', 16, 6000), last: { ...STROKE_ON_3, endUs: 4_000_000 }, next: 4 },
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'until all have had their first stroke',
      pullOf({ riseMs: 120, rise: onFrom60 }),
      { ...halfway('short', 16, 6000), last: { ...STROKE_ON_3, endUs: 4_000_000 }, next: null },
      { kind: 'continuation', cylinder: 2 },
    ],
    [
      'a tug at a proven plug is no stroke elsewhere',
      pullOf({ riseMs: 120, rise: onFrom60 }),
      { ...halfway('short', 16, 6000), last: { ...STROKE_ON_3, short: false, endUs: 4_000_000 }, next: 4 },
      { kind: 'continuation', cylinder: 2 },
    ],
    [
      'loosening at once after the plug was tightened',
      pullOf({ peakNm: -20 }),
      second(3900),
      { kind: 'loosening', cylinder: 1 },
    ],
    [
      'the readings reached the end of the scale',
      pullOf({ saturated: true }),
      second(),
      { kind: 'unsure', cylinder: 2, ask: 'end-of-scale' },
    ],
    [
      'the same at once once more is on the same plug',
      tightPull({ saturated: true }),
      second(500),
      { kind: 'unsure', cylinder: 1, ask: 'end-of-scale' },
    ],
    [
      'the same though all are done',
      tightPull({ saturated: true }),
      DONE,
      { kind: 'unsure', cylinder: 1, ask: 'end-of-scale' },
    ],
    [
      'the same without a click',
      strokeTo(27, { saturated: true }),
      second(),
      { kind: 'unsure', cylinder: 2, ask: 'end-of-scale' },
    ],
    ['a low stroke is on the way', strokeTo(12), second(), { kind: 'run-down', cylinder: 2 }],
    [
      'a stroke into the window of a click wrench is on the way',
      strokeTo(26),
      second(),
      { kind: 'run-down', cylinder: 2 },
    ],
    [
      'an indicating wrench never clicks',
      strokeTo(27),
      { ...second(), clicks: false },
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'where the click cannot be seen the peak stands',
      pullOf({ release: 'not-visible', releaseNm: null, releaseUs: null }),
      second(),
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'the last few degrees rise like a re-hit, but go on from the stroke before',
      tightPull(),
      halfway('stroke', 24, 600),
      { kind: 'tightening', cylinder: 2 },
    ],
    [
      'a knock before a tight plug is no stroke before it',
      tightPull(),
      {
        ...halfway('stroke', 9, 600),
        last: { cylinder: 2, endUs: 9_400_000, asked: null, tight: false, short: true, knock: 0.4 },
      },
      { kind: 'unsure', cylinder: 2, ask: 'already-tight' },
    ],
    [
      'a tug at a tight plug is no stroke before it either',
      tightPull(),
      { ...halfway('stroke', 20, 600), startedTurning: false },
      { kind: 'unsure', cylinder: 2, ask: 'already-tight' },
    ],
    [
      'on from where it had stopped short',
      pullOf({ riseMs: 120, rise: onFrom60 }),
      halfway('short', 16, 6000),
      { kind: 'continuation', cylinder: 2 },
    ],
    [
      'after a stop short, a plug that turned from loose is another one',
      pullOf(),
      halfway('short', 16, 6000),
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'after a stop short, a plug that did not turn on is another one',
      tightPull(),
      halfway('short', 16, 6000),
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'after a stop near the end nobody can tell',
      tightPull(),
      halfway('short', 24.5, 6000),
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'a stroke that ends below what the plug had held is on another one',
      strokeTo(9),
      halfway('short', 16, 6000),
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'what goes on from a pull in question is in question with it',
      tightPull(),
      {
        ...second(),
        asking: 2,
        last: { cylinder: 2, endUs: 9_500_000, asked: 'other-plug', tight: false, short: false, knock: 0 },
      },
      { kind: 'unsure', cylinder: 2, ask: 'other-plug' },
    ],
    [
      'while a question is open',
      pullOf(),
      { ...second(), asking: 1 },
      { kind: 'unsure', cylinder: 1, ask: 'held' },
    ],
    [
      'a low stroke meanwhile',
      strokeTo(12),
      { ...second(), asking: 1 },
      { kind: 'run-down', cylinder: null },
    ],
    ['too little to turn a plug', strokeTo(3), DONE, { kind: 'handling', cylinder: null }],
    [
      'a knock',
      strokeTo(9, { endUs: 10_200_000, peakUs: 10_100_000, rise: riseBy([0, 0, 0, 5, 15, 25, 35, 50, 65]) }),
      second(),
      { kind: 'handling', cylinder: null },
    ],
    ['a tight plug when all are done', tightPull(), DONE, { kind: 'check', cylinder: null }],
    [
      'a tight plug that a person chose to try',
      tightPull(),
      { ...DONE, chosen: 3 },
      { kind: 'check', cylinder: 3 },
    ],
    ['a loose plug when all are done', pullOf(), DONE, { kind: 'unsure', cylinder: 1, ask: 'loose' }],
    [
      'loosening before anything was tight',
      pullOf({ peakNm: -20 }),
      FIRST,
      { kind: 'loosening', cylinder: null },
    ],
    [
      'loosening a plug that was to be backed out',
      pullOf({ peakNm: -20 }),
      { ...second(), refitting: 1 },
      { kind: 'loosening', cylinder: 1 },
    ],
    [
      'loosening after a plug was proven',
      pullOf({ peakNm: -20 }),
      second(),
      { kind: 'unsure', cylinder: 1, ask: 'loosened' },
    ],
  ])('%s', (_what, pull, at, expected) => {
    expect(place(pull, at)).toMatchObject(expected);
  });

  it('tells what a placement rests on', () => {
    expect(place(pullOf(), second()).evidence).toMatchObject({
      riseNmPerS: 40.5,
      sinceLastMs: 6000,
      impulseNms: 8,
      angleDeg: null,
      heldRiseMs: null,
    });
  });
});

describe('a stroke that nothing followed', () => {
  const at = { lowerNm: 25, short: false };
  const evidence = place(strokeTo(12), second()).evidence;

  it('stopped short', () => {
    expect(settle(strokeTo(12), 2, evidence, at)).toMatchObject({ cylinder: 2, kind: 'tightening' });
    expect(settle(strokeTo(12), 2, evidence, { ...at, short: true })).toMatchObject({ kind: 'continuation' });
  });

  it('is asked about when it reached the window without a click', () => {
    expect(settle(strokeTo(26), 2, evidence, at)).toMatchObject({ kind: 'unsure', ask: 'no-click' });
  });

  it('turned no plug when it was a knock or too little, and asks when it may have been one', () => {
    if (evidence === undefined) throw new Error('no evidence');
    expect(settle(strokeTo(9), 2, { ...evidence, knock: 0.3 }, at)).toMatchObject({
      kind: 'unsure',
      ask: 'which',
    });
    expect(settle(strokeTo(9), 2, { ...evidence, knock: 0.99 }, at)).toMatchObject({
      cylinder: null,
      kind: 'handling',
    });
    expect(settle(strokeTo(3), 2, evidence, at)).toMatchObject({ cylinder: null, kind: 'handling' });
  });
});

describe('a wrench that nobody pulls with', () => {
  const at = { lowerNm: 25, short: false };
  const settled = (peakNm: number, change: Partial<DetectedPull> = {}) => {
    const pull = strokeTo(peakNm, change);
    return settle(pull, 2, place(pull, second()).evidence, at);
  };

  it.each<[string, number, Partial<DetectedPull>, object]>([
    [
      'fell, and rocked on its handle for long: it was up sooner than an arm',
      20,
      { peakUs: 10_040_000 },
      { cylinder: null, kind: 'handling', because: 'knock' },
    ],
    ['was leaned on: that may have been a stroke', 9, {}, { kind: 'unsure', ask: 'which' }],
    [
      'was turned in the fist, which lets go as it took hold: the same further up',
      15,
      { peakUs: 10_500_000, endUs: 11_000_000 },
      { kind: 'unsure', ask: 'which' },
    ],
    ['a hand at the wrench lets go at once: it stopped short', 15, {}, { kind: 'tightening', cylinder: 2 }],
    [
      'and so it did near the window, however it let go',
      20,
      { peakUs: 10_500_000, endUs: 11_000_000 },
      { kind: 'tightening', cylinder: 2 },
    ],
  ])('%s', (_what, peakNm, change, expected) => {
    expect(settled(peakNm, change)).toMatchObject(expected);
  });
});

const pulls = fc
  .record({
    peakNm: fc.double({ min: -80, max: 80, noNaN: true }),
    riseMs: fc.double({ min: 1, max: 3000, noNaN: true }),
    bend: fc.double({ min: -3, max: 3, noNaN: true }),
    release: fc.constantFrom<DetectedPull['release']>('seen', 'none', 'not-visible'),
    cut: fc.constantFrom<DetectedPull['cut']>(null, 'link-lost', 'stopped'),
  })
  .map(({ bend, ...shape }) =>
    pullOf({
      ...shape,
      releaseNm: shape.release === 'seen' ? shape.peakNm : null,
      rise: riseBy(tenths(shape.riseMs, bend)),
    }),
  );
const cylinder = fc.constantFrom(null, 1, 2, 3);
const situations: fc.Arbitrary<Situation> = fc.record({
  target: cylinder,
  lastOpen: fc.boolean(),
  started: fc.constantFrom(null, 'stroke', 'short'),
  startedNm: fc.double({ min: 0, max: 30, noNaN: true }),
  startedTurning: fc.boolean(),
  refitted: fc.boolean(),
  next: cylinder,
  earlier: fc.constant([]),
  usualTurns: fc.constant([]),
  last: fc.option(
    fc.record({
      cylinder: fc.constantFrom(1, 2),
      endUs: fc.integer({ min: 0, max: 10_000_000 }),
      asked: fc.constantFrom(null, 'other-plug', 'which'),
      tight: fc.boolean(),
      short: fc.boolean(),
      knock: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
  ),
  refitting: cylinder,
  lastTight: cylinder,
  asking: cylinder,
  confirming: fc.boolean(),
  planned: cylinder,
  chosen: cylinder,
  trial: fc.boolean(),
  slightDrop: fc.constantFrom(null, 0.07),
  clicks: fc.boolean(),
  lowerNm: fc.constant(25),
  upperNm: fc.constant(30),
});
const PROVES = ['tightening', 'continuation'];

describe('whatever comes', () => {
  it('a pull that was cut, or came while a question was open, proves nothing', () => {
    fc.assert(
      fc.property(pulls, situations, (pull, at) => {
        if (pull.cut !== null || at.asking !== null) expect(PROVES).not.toContain(place(pull, at).kind);
      }),
    );
  });

  it('only the cylinder that is due can be proven', () => {
    fc.assert(
      fc.property(pulls, situations, (pull, at) => {
        const { kind, cylinder: on } = place(pull, at);
        if (PROVES.includes(kind)) expect(on).toBe(at.target);
      }),
    );
  });

  it('what is unsure asks about a cylinder, and nothing else asks', () => {
    fc.assert(
      fc.property(pulls, situations, (pull, at) => {
        const { kind, cylinder: on, ask } = place(pull, at);
        expect(ask !== undefined).toBe(kind === 'unsure');
        if (kind === 'unsure') expect(on).not.toBeNull();
      }),
    );
  });

  it('a plug that stood still never fills a cylinder that nobody had begun', () => {
    fc.assert(
      fc.property(pulls, situations, fc.double({ min: 10, max: 100, noNaN: true }), (pull, at, riseMs) => {
        const stood = { ...pull, riseMs, rise: riseBy(tenths(riseMs)) };
        expect(PROVES).not.toContain(place(stood, { ...at, started: null }).kind);
      }),
    );
  });
});
