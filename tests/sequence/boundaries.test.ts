/** Where one condition alone decides: on either side of each boundary of placing. */
import { describe, expect, it } from 'vitest';
import { asProven, place } from '../../src/sequence/place.ts';
import { settle } from '../../src/sequence/settle.ts';
import { FIRST, halfway, pullOf, riseBy, second, strokeTo, tenths, tightPull, turn } from './pulls.ts';

const kindOf = (...given: Parameters<typeof place>) => {
  const { kind, because, cylinder, ask } = place(...given);
  return { kind, because, cylinder, ...(ask !== undefined && { ask }) };
};
/** Struck: over at once, up as fast as down. */
const struck = (peakNm: number) =>
  strokeTo(peakNm, {
    riseMs: 12,
    rise: riseBy(tenths(12)),
    peakUs: 10_020_000,
    endUs: 10_040_000,
  });
const ALL_DONE = { ...second(), target: null, planned: null };

describe('the least torque that says anything', () => {
  it.each([
    [5, false],
    [4.99, true],
  ])('a stroke to %d N·m of 25: nothing turned: %s', (peakNm, nothing) => {
    const short = strokeTo(peakNm, { endUs: 10_200_000, peakUs: 10_100_000 });
    expect(kindOf(short, FIRST).because === 'too-little-torque').toBe(nothing);
  });

  it('backwards by less than that loosened nothing, however long it took', () => {
    expect(kindOf(strokeTo(-4), second())).toMatchObject({ kind: 'handling', because: 'too-little-torque' });
    expect(kindOf(strokeTo(-5.1), second()).kind).not.toBe('handling');
  });

  it('slowly, before a plug is home, it may be the first of several strokes', () => {
    expect(kindOf(strokeTo(4), FIRST)).toMatchObject({ kind: 'run-down', cylinder: 1 });
    expect(kindOf(strokeTo(4), { ...FIRST, asking: 1 }).kind).toBe('handling');
    expect(kindOf(strokeTo(4), ALL_DONE).kind).toBe('handling');
  });
});

describe('the time since the stroke before', () => {
  it.each([
    [2499, 'went-on-from-stroke'],
    [2500, 'did-not-turn-on'],
  ])('%d ms', (pauseMs, because) => {
    const placed = kindOf(pullOf(), { ...halfway('stroke', 15, pauseMs), usualTurns: [] });
    expect(placed.because).toBe(because);
  });

  it.each([
    [799, 'same-plug-again'],
    [800, 'plug-turned'],
  ])('%d ms after a plug was brought home, on one that surely turns', (pauseMs, because) => {
    expect(kindOf(pullOf(turn(120)), second(pauseMs)).because).toBe(because);
  });

  it.each([
    [1199, 're-hit', 'same-plug-again'],
    [1200, 'asked', 'did-not-turn'],
  ])('%d ms, when the last is due and the plug stands: %s', (pauseMs, _what, because) => {
    expect(kindOf(tightPull(), { ...second(pauseMs), lastOpen: true }).because).toBe(because);
  });

  it.each([
    [1999, 'rehit'],
    [2000, 'unsure'],
  ])('%d ms, on a plug that stands', (pauseMs, kind) => {
    expect(kindOf(tightPull(), second(pauseMs)).kind).toBe(kind);
  });
});

describe('what a stroke before is worth', () => {
  const at = (change: { startedTurning?: boolean; knock?: number }) => {
    const half = halfway('stroke', 15, 600);
    const { last } = half;
    return {
      ...half,
      startedTurning: change.startedTurning ?? true,
      last: last && { ...last, knock: change.knock ?? 0 },
    };
  };
  /** May have turned or not. */
  const doubtful = pullOf({ rise: riseBy(tenths(400)), ...turn(2.4, 0.9) });

  it.each([
    ['that surely turned the plug', at({}), 'tightening'],
    ['hardly a knock', at({ knock: 0.02 }), 'tightening'],
    ['that may have been a knock', at({ knock: 0.021 }), 'unsure'],
    ['that may have turned nothing', at({ startedTurning: false }), 'unsure'],
  ] as const)('a stroke %s', (_what, situation, kind) => {
    expect(kindOf(doubtful, situation).kind).toBe(kind);
  });

  it('does not matter where the plug surely turned under this one', () => {
    expect(kindOf(pullOf(turn(100, 0.7)), at({ startedTurning: false })).kind).toBe('tightening');
  });
});

describe('a click that is tried before the first plug', () => {
  const trial = { ...FIRST, trial: true };

  it('is one where it clicked, or came near where it would', () => {
    expect(kindOf(tightPull(), trial)).toMatchObject({ kind: 'handling', because: 'trial-click' });
    const noClick = (peakNm: number) =>
      strokeTo(peakNm, { riseMs: 60, rise: riseBy(tenths(60)), endUs: 10_400_000, peakUs: 10_200_000 });
    expect(kindOf(noClick(22.5), trial).because).toBe('trial-click');
    expect(kindOf(noClick(22.4), trial).because).not.toBe('trial-click');
  });
});

describe('while a question is open', () => {
  it('a plug that stands is said to be tight only where the question is about the one that is due', () => {
    const asking = { ...second(6000), asking: 2 };
    expect(kindOf(tightPull(), asking)).toMatchObject({ ask: 'already-tight', cylinder: 2 });
    expect(kindOf(pullOf(turn(120)), asking)).toMatchObject({ ask: 'held', cylinder: 2 });
    expect(kindOf(tightPull(), { ...asking, asking: 1 })).toMatchObject({ ask: 'held', cylinder: 1 });
    expect(kindOf(tightPull(), { ...asking, started: 'short', startedNm: 15 })).toMatchObject({
      ask: 'held',
    });
  });
});

describe('when all are done', () => {
  it('a knock is one only below where a pull would have got to', () => {
    expect(kindOf(struck(22), ALL_DONE)).toMatchObject({ kind: 'handling', because: 'knock' });
    expect(kindOf(struck(23), ALL_DONE).kind).toBe('check');
  });

  it('a figure at the end of the scale is about the plug that was tightened last', () => {
    const maximum = pullOf({ stream: 'maxima', saturated: true });
    expect(kindOf(maximum, ALL_DONE)).toMatchObject({ ask: 'end-of-scale', cylinder: 1 });
    expect(kindOf(maximum, { ...ALL_DONE, lastTight: null }).kind).not.toBe('unsure');
    expect(kindOf(pullOf({ saturated: true }), ALL_DONE)).toMatchObject({ ask: 'end-of-scale', cylinder: 1 });
  });
});

describe('a placement that somebody gave', () => {
  const saturated = pullOf({ saturated: true });
  it.each([
    ['a tightening', 'tightening', 'end-of-scale'],
    ['a re-hit', 'rehit', 'end-of-scale'],
  ] as const)('%s at the end of the scale proves nothing', (_what, kind, ask) => {
    expect(asProven(saturated, { cylinder: 3, kind, because: 'plug-turned' })).toMatchObject({
      kind: 'unsure',
      ask,
      cylinder: 3,
    });
  });

  it('what is asked already, loosened or on no plug stays as it is', () => {
    for (const kept of [
      { cylinder: 3, kind: 'unsure', ask: 'which', because: 'tight-or-turning' },
      { cylinder: 3, kind: 'loosening', because: 'to-be-backed-out' },
      { cylinder: null, kind: 'handling', because: 'knock' },
    ] as const)
      expect(asProven(saturated, kept)).toBe(kept);
  });

  it('a pull whose end is missing proves nothing', () => {
    const cut = pullOf({ cut: 'link-lost' });
    const given = { cylinder: 3, kind: 'continuation', because: 'plug-turned' } as const;
    expect(asProven(cut, given)).toMatchObject({ kind: 'unsure', ask: 'cut' });
    expect(asProven(cut, { ...given, kind: 'rehit' }).kind).toBe('rehit');
    expect(asProven(pullOf(), given)).toBe(given);
  });
});

describe('a stroke that nothing followed', () => {
  const at = { lowerNm: 25, short: false };
  const slow = { peakUs: 10_600_000, endUs: 10_700_000 };
  const settled = (peakNm: number, change = {}, where = at) =>
    settle(strokeTo(peakNm, { ...slow, ...change }), 2, undefined, where);

  it.each([
    [4.9, 'too-little-torque'],
    [11, 'knock-or-short'],
    [11.25, 'stopped-short'],
    [24.9, 'stopped-short'],
    [25, 'no-click-and-nothing-followed'],
  ])('at %d N·m', (peakNm, because) => {
    expect(settled(peakNm).because).toBe(because);
  });

  it('went on from a plug that had stopped short before', () => {
    expect(settled(20).kind).toBe('tightening');
    expect(settled(20, {}, { ...at, short: true }).kind).toBe('continuation');
  });

  it('up within 70 ms it was struck, but no pull that reached the window is', () => {
    const up = (ms: number) => ({ peakUs: 10_000_000 + 1000 * ms, endUs: 10_700_000 });
    expect(settled(20, up(69)).because).toBe('knock');
    expect(settled(20, up(70)).because).toBe('stopped-short');
    expect(settled(25, up(69)).because).toBe('no-click-and-nothing-followed');
  });

  it('down as it went up it may have been a fist, below 0.7 of the limit', () => {
    const down = (share: number) => ({ peakUs: 10_500_000, endUs: 10_500_000 + share * 500_000 });
    for (const [share, asked] of [
      [0.6, false],
      [0.61, true],
      [1.59, true],
      [1.6, false],
    ] as const)
      expect(settled(15, down(share)).kind === 'unsure').toBe(asked);
    expect(settled(17.5, down(1)).kind).toBe('tightening');
    expect(settled(17.4, down(1)).kind).toBe('unsure');
  });

  it('by the angle it turned a plug, and was no knock however low it ended', () => {
    const evidence = place(strokeTo(6, turn(60)), FIRST).evidence;
    expect(evidence?.turned).toBeGreaterThan(0.98);
    expect(settle(strokeTo(6, turn(60)), 1, evidence, at)).toMatchObject({
      kind: 'tightening',
      because: 'stopped-short',
      cylinder: 1,
    });
    const still = place(strokeTo(6, turn(0)), FIRST).evidence;
    expect(settle(strokeTo(6, turn(0)), 1, still, at).kind).toBe('unsure');
  });
});
