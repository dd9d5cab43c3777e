import { expect, test } from 'vitest';
import { replay } from '../../src/job/replay.ts';
import type { Problem } from '../../src/problem.ts';
import { workshop } from './workshop.ts';

// What a radio can do to a job: skip readings, bring old ones, meet strangers.

test('readings that are missing in the middle of a pull cut it: it is never judged, and judging again agrees', () => {
  const shop = workshop();
  shop.rest();
  shop.halfPull(27);
  shop.give({
    kind: 'reading',
    tool: 'wrench',
    reading: {
      kind: 'missed',
      n: 10_000,
      atUs: 4_000_000,
      fromUs: 3_990_000,
      readings: 8,
      reason: 'its own counter jumped',
    },
  });
  expect(shop.events.slice(-3)).toMatchObject([
    { type: 'readings-missed', tool: 'wrench', readings: 8 },
    { type: 'pull-detected', cut: 'link-lost' },
    { type: 'pull-placed', judgement: null },
  ]);
  expect(replay(shop.events)).toMatchObject({ ok: true });
});

test('readings missing at rest cut nothing', () => {
  const shop = workshop();
  shop.rest();
  const reading = { kind: 'missed', n: 10_000, atUs: 4_000_000, fromUs: 3_900_000, reason: 'lost' } as const;
  shop.give({ kind: 'reading', tool: 'wrench', reading });
  expect(shop.events.at(-1)).toEqual({
    type: 'readings-missed',
    tool: 'wrench',
    fromUs: 3_900_000,
    toUs: 4_000_000,
    reason: 'lost',
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
  const problem: Problem = {
    code: 'tool-same-name',
    message: 'It is another one.',
    next: '…',
    where: 'c0:00:00:00:00:09',
  };
  shop.give({ kind: 'refusal', tool: 'wrench', problem });
  expect(shop.events.at(-1)).toEqual({
    type: 'device-refused',
    tool: 'wrench',
    address: 'c0:00:00:00:00:09',
    reason: 'It is another one.',
  });
  expect(replay(shop.events)).toMatchObject({ ok: true });
});
