import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { handAction, NotUnderstood, scripted } from '../../sim/technician/scripted.ts';

const action = (line: string) => handAction(line, new Random(1), [1, 2, 3, 4, 5, 6, 7, 8]);

describe('hands that are told what to do', () => {
  it.each([
    ['measure 1', { do: 'measure-gap', cylinder: 1 }],
    ['bend 3 -0.05', { do: 'bend-electrode', cylinder: 3, byMm: -0.05 }],
    ['fit 8', { do: 'fit', cylinder: 8 }],
    ['loosen 2', { do: 'loosen', cylinder: 2, with: 'ratchet' }],
    ['loosen 2 wrench', { do: 'loosen', cylinder: 2, with: 'wrench' }],
    ['replace 2', { do: 'replace', cylinder: 2 }],
    ['knock 5', { do: 'knock', peakNm: 5 }],
    ['  wait   250 ', { do: 'wait', ms: 250 }],
  ])('%s', (line, expected) => expect(action(line)).toEqual(expected));

  it('pulls carefully unless told otherwise', () => {
    expect(action('pull 4')).toEqual(action('pull 4 careful'));
    expect(action('pull 4 short')).not.toEqual(action('pull 4 careful'));
  });

  it.each([
    'pull',
    'pull x',
    'pull 4 wildly',
    'dance 4',
    'fit 9',
    'fit 0',
    'measure 1.5',
    'bend 3',
    'bend 3 much',
  ])('does not guess at "%s"', (line) => expect(() => action(line)).toThrow(NotUnderstood));

  it('rests while nothing is told, and never leaves', () => {
    const lines = ['fit 1', '', null, 'fit 2'];
    const hands = scripted(() => lines.shift() ?? null, new Random(1), [1, 2]);
    expect([1, 2, 3, 4].map(() => hands.next().value)).toEqual([
      { do: 'fit', cylinder: 1 },
      expect.objectContaining({ do: 'wait' }),
      expect.objectContaining({ do: 'wait' }),
      { do: 'fit', cylinder: 2 },
    ]);
  });
});
