import { describe, expect, it } from 'vitest';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { place, type Situation } from '../../src/sequence/place.ts';
import { settle } from '../../src/sequence/settle.ts';
import { FIRST, pullOf, second } from './pulls.ts';

/** All that a tool knows of a pull which sends one figure, arriving when the clock of {@link pullOf} says that it began. */
const maximum = (peakNm: number): DetectedPull => {
  const atUs = pullOf().startUs;
  return pullOf({
    ...{ startUs: atUs, peakUs: atUs, endUs: atUs, peakNm, highestNm: peakNm, stream: 'maxima' },
    ...{ release: 'not-visible', releaseNm: null, releaseUs: null, dropShare: null },
    ...{ riseMs: 0, samples: 1, intervalUs: 0, longestGapUs: 0, zeroSettled: false },
  });
};

const TWO_DUE: Situation = { ...second(), planned: 2 };
const CONFIRMING: Situation = {
  ...{ ...FIRST, asking: 1, confirming: true, planned: 2 },
  last: { cylinder: 1, endUs: 4_000_000, asked: 'by-plan', tight: false, short: false, knock: 0 },
};
const DONE: Situation = { ...second(), target: null, planned: null };

describe('a pull of which the tool sends the highest torque alone', () => {
  it.each<[string, number, Situation, object]>([
    ['goes to the due cylinder, which is to be confirmed', 27, FIRST, { cylinder: 1, ask: 'by-plan' }],
    ['so does one above the window', 33, TWO_DUE, { cylinder: 2, ask: 'by-plan' }],
    [
      'goes to the next one while the one before is not confirmed',
      27,
      CONFIRMING,
      { cylinder: 2, ask: 'by-plan' },
    ],
    [
      'sooner than anybody gets to another plug it is a re-hit',
      ...([27, { ...TWO_DUE, ...second(700), planned: 2 }, { cylinder: 1, kind: 'rehit' }] as const),
    ],
    [
      'of a pull that is not confirmed too',
      27,
      {
        ...CONFIRMING,
        last: { cylinder: 1, endUs: 9_400_000, asked: 'by-plan', tight: false, short: false, knock: 0 },
      },
      { cylinder: 1, kind: 'rehit' },
    ],
    ['is a stroke on the way when it ended low', 17, TWO_DUE, { cylinder: 2, kind: 'run-down' }],
    ['turned nothing when it was hardly more than a touch', 4, TWO_DUE, { cylinder: null, kind: 'handling' }],
    ['waits for the answer to another question', 27, { ...TWO_DUE, asking: 1 }, { cylinder: 1, ask: 'held' }],
    ['when all are done it proves nothing', 27, DONE, { cylinder: null, kind: 'check' }],
    ['and is asked about when it went above the window', 33, DONE, { cylinder: 1, ask: 'held' }],
    [
      'when nobody has confirmed any yet, the first is asked about',
      27,
      { ...CONFIRMING, planned: null },
      { cylinder: 1 },
    ],
    [
      'loosens what is to be backed out',
      -20,
      { ...TWO_DUE, refitting: 2 },
      { cylinder: 2, kind: 'loosening' },
    ],
  ])('%s', (_what, peakNm, at, expected) => {
    const placement = place(maximum(peakNm), at);
    expect(placement).toMatchObject(expected);
    // Nothing is claimed about a shape that was never seen.
    expect(placement.evidence).toBeUndefined();
  });

  it('is asked about when nothing followed a low one', () => {
    expect(settle(maximum(17), 2, undefined, { lowerNm: 25, short: false })).toMatchObject({
      kind: 'unsure',
      cylinder: 2,
      ask: 'by-plan',
    });
  });

  it('at the end of the scale means that the plug comes out', () => {
    expect(place({ ...maximum(27), saturated: true }, TWO_DUE)).toMatchObject({
      cylinder: 2,
      ask: 'end-of-scale',
    });
  });
});
