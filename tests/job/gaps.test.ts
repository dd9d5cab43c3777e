import { expect, test } from 'vitest';
import { replay } from '../../src/job/replay.ts';
import { clickPull, drawn } from '../pull/shapes.ts';
import { workshop } from './workshop.ts';

// What a radio can do to a job: skip readings, bring old ones, meet strangers.

const missedFrom = (fromUs: number, atUs: number, n: number) =>
  ({
    kind: 'reading',
    tool: 'wrench',
    reading: {
      kind: 'missed',
      n,
      atUs,
      fromUs,
      readings: (atUs - fromUs) / 10_000 - 1,
      reason: 'counter-jumped',
    },
  }) as const;

/** A pull that clicks 760 ms after it began, with readings missing in between. */
function pullWithout(fromMs: number, toMs: number) {
  const shop = workshop();
  shop.rest();
  const startMs = 3010;
  let n = shop.next('wrench');
  const corners = [{ atMs: 0, nm: 0 }, ...clickPull(0, 700, 27, 21.6, 21.6), { atMs: 1600, nm: 0 }];
  for (const { atUs, nm } of drawn(corners)) {
    const ms = atUs / 1000;
    if (ms > fromMs && ms < toMs) continue;
    if (ms === toMs) shop.give(missedFrom(1000 * (startMs + fromMs), 1000 * (startMs + toMs), n++));
    const reading = {
      kind: 'value',
      n: n++,
      atUs: 1000 * (startMs + ms),
      counts: Math.round(nm * 100),
    } as const;
    shop.give({ kind: 'reading', tool: 'wrench', reading });
  }
  return shop;
}

const pullOf = ({ events }: ReturnType<typeof workshop>) =>
  events.find((event) => event.type === 'pull-detected') ?? expect.fail('no pull');

test.each([
  ['on the way up', 200, 330],
  ['behind the click', 900, 1030],
])(
  'readings missing %s hide nothing: the peak is known as well, and judging again agrees',
  (_where, fromMs, toMs) => {
    const shop = pullWithout(fromMs, toMs);
    const whole = pullOf(pullWithout(200, 210));
    const holed = pullOf(shop);
    expect(shop.events.filter(({ type }) => type === 'readings-missed')).toHaveLength(1);
    expect(holed).toMatchObject({ cut: null, release: 'seen' });
    expect(holed.peakNm).toBeCloseTo(whole.peakNm, 2);
    expect(holed.peakStandardNm).toBeCloseTo(whole.peakStandardNm, 2);
    expect(replay(shop.events)).toMatchObject({ ok: true });
  },
);

test('readings missing where it clicked may hide the peak: it is known less well, and judging again agrees', () => {
  const whole = pullWithout(200, 210);
  const holed = pullWithout(720, 820);
  expect(pullOf(holed).cut).toBeNull();
  expect(pullOf(holed).peakStandardNm).toBeGreaterThan(3 * pullOf(whole).peakStandardNm);
  expect(Math.abs(pullOf(holed).peakNm - 27)).toBeLessThan(2 * pullOf(holed).peakStandardNm);
  expect(replay(holed.events)).toMatchObject({ ok: true });
});

test('a pull whose readings stay away is cut: it is never judged, and judging again agrees', () => {
  const shop = workshop();
  shop.rest();
  shop.halfPull(27);
  const n = shop.next('wrench');
  shop.give(missedFrom(3_900_000, 4_500_000, n));
  shop.give({
    kind: 'reading',
    tool: 'wrench',
    reading: { kind: 'value', n: n + 1, atUs: 4_500_000, counts: 0 },
  });
  expect(shop.events.slice(-3)).toMatchObject([
    { type: 'readings' },
    { type: 'pull-detected', cut: 'link-lost' },
    { type: 'pull-placed', judgement: null },
  ]);
  expect(replay(shop.events)).toMatchObject({ ok: true });
});

test('readings missing at rest cut nothing', () => {
  const shop = workshop();
  shop.rest();
  const reading = {
    kind: 'missed',
    n: 10_000,
    atUs: 4_000_000,
    fromUs: 3_900_000,
    reason: 'no-answer',
  } as const;
  shop.give({ kind: 'reading', tool: 'wrench', reading });
  expect(shop.events.at(-1)).toEqual({
    type: 'readings-missed',
    tool: 'wrench',
    fromUs: 3_900_000,
    toUs: 4_000_000,
    reason: 'no-answer',
  });
  shop.pull(27);
  expect(shop.events.at(-1)).toMatchObject({ type: 'pull-placed', kind: 'tightening' });
  expect(replay(shop.events)).toMatchObject({ ok: true });
});

test('a reading from the memory of a tool is kept and given to no cylinder', () => {
  const shop = workshop();
  shop.give({
    kind: 'reading',
    tool: 'gauge',
    reading: { kind: 'stored', n: 1, atUs: 1_000_000, counts: 7_500 },
  });
  expect(shop.events.at(-1)).toEqual({
    type: 'value-stored',
    tool: 'gauge',
    reading: 1,
    atUs: 1_000_000,
    counts: 7_500,
  });
  expect(shop.bench.state().cylinders.every(({ gaps }) => gaps.length === 0)).toBe(true);
  expect(replay(shop.events)).toMatchObject({ ok: true });
});

test('a device that was refused stands on the record, with address and reason', () => {
  const shop = workshop();
  const refusal = { reason: 'other-serial', address: 'c0:00:00:00:00:09', serial: 'W-2' } as const;
  shop.give({ kind: 'refusal', tool: 'wrench', refusal });
  expect(shop.events.at(-1)).toEqual({
    type: 'device-refused',
    tool: 'wrench',
    address: 'c0:00:00:00:00:09',
    serial: 'W-2',
    reason: 'other-serial',
  });
  expect(replay(shop.events)).toMatchObject({ ok: true });
});
