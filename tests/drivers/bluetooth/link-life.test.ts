import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backoffMs } from '../../../drivers/backoff.ts';
import { ReadingCounter } from '../../../drivers/bluetooth/counter.ts';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import type { LinkState } from '../../../drivers/driver.ts';
import { imds } from '../../../drivers/imds/language.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import type { DeviceRefusal, Reading } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { FakeRadio } from './fake-radio.ts';

const MS = 1_000;
const TIMINGS = { firstMs: 500, mostMs: 4_000 };
const ADDRESS = 'c0:00:00:00:00:01';

function start() {
  const scheduler = virtualScheduler();
  const radio = new FakeRadio();
  const tool = bluetoothTool({
    id: 'wrench',
    language: imds('torque'),
    adopted: { address: ADDRESS, serial: 'W-1', name: 'wrench' },
    radio,
    clock: scheduler,
    timings: TIMINGS,
    after: scheduler.after,
    random: () => 0,
  });
  const links: LinkState[] = [];
  const readings: Reading[] = [];
  const refusals: DeviceRefusal[] = [];
  const completed: string[] = [];
  tool.link$.subscribe({ next: (link) => links.push(link), complete: () => completed.push('link') });
  tool.refusals$?.subscribe((refusal) => refusals.push(refusal));
  tool.readings$.subscribe({
    next: (reading) => readings.push(reading),
    complete: () => completed.push('readings'),
  });
  return {
    scheduler,
    radio,
    tool,
    links,
    readings,
    refusals,
    completed,
    states: () => links.map((link) => link.state),
  };
}

type Life = ReturnType<typeof start>;

async function linked(life: Life): Promise<void> {
  const connected = life.tool.connect();
  await life.scheduler.runFor(0);
  life.radio.see(ADDRESS, 'wrench');
  good(await connected);
}

describe('the life of a link', () => {
  test('goes from asleep to linked, one state after the other; the promise gives the description', async () => {
    const life = start();
    await linked(life);
    expect(life.links).toEqual([
      { state: 'asleep' },
      { state: 'seen', name: 'wrench' },
      { state: 'connecting', name: 'wrench' },
      { state: 'discovering', name: 'wrench' },
      {
        state: 'linked',
        description: expect.objectContaining({ quantity: 'torque', samplingFunction: 'unspecified' }),
      },
    ]);
    await life.tool.close();
  });

  test('connecting twice is one attempt with one outcome', async () => {
    const life = start();
    const first = life.tool.connect();
    expect(life.tool.connect()).toBe(first);
    await life.scheduler.runFor(0);
    life.radio.see(ADDRESS);
    good(await first);
    expect(life.radio.attempts).toBe(1);
    await life.tool.close();
  });

  test('a late subscriber is told the latest state', async () => {
    const life = start();
    await linked(life);
    const late: string[] = [];
    life.tool.link$.subscribe((link) => late.push(link.state));
    expect(late).toEqual(['linked']);
    await life.tool.close();
  });

  test('a device of the same name is refused, said once, and never connected to', async () => {
    const life = start();
    void life.tool.connect();
    await life.scheduler.runFor(0);
    for (let i = 0; i < 5; i++) life.radio.see('c0:00:00:00:00:99', 'wrench');
    life.radio.see('c0:00:00:00:00:98', 'gauge');
    await life.scheduler.runFor(10_000 * MS);
    expect(life.radio.attempts).toBe(0);
    expect(life.refusals).toEqual([{ reason: 'same-name', address: 'c0:00:00:00:00:99' }]);
    await life.tool.close();
  });

  test('somebody who bears the name under ever new addresses does not fill the record', async () => {
    const life = start();
    void life.tool.connect();
    await life.scheduler.runFor(0);
    for (let i = 10; i < 99; i++) life.radio.see(`c0:00:00:00:01:${i}`, 'wrench');
    expect(life.refusals).toHaveLength(8);
    await life.tool.close();
  });

  test('a link on which nobody answers any more is given up and made anew', async () => {
    const life = start();
    await linked(life);
    life.radio.links[0]?.send(1);
    await life.scheduler.runFor(20_000 * MS);
    expect(life.states().at(-1)).toBe('linked'); // silent, but it answers when asked
    const [first] = life.radio.links;
    if (first === undefined) throw new Error('no link');
    first.answers = false;
    await life.scheduler.runFor(9_000 * MS);
    expect(life.links).toContainEqual({ state: 'lost', reason: 'no-answer' });
    life.radio.see(ADDRESS);
    await life.scheduler.runFor(0);
    life.radio.links[1]?.send(2);
    expect(life.readings).toMatchObject([
      { kind: 'value', counts: 1 },
      { kind: 'missed', reason: 'no-answer' },
      { kind: 'value', counts: 2 },
    ]);
    await life.tool.close();
  });

  test('after failures it waits longer each time, up to the longest wait, and starts small again after a link', async () => {
    const life = start();
    life.radio.failures = 6;
    const connected = life.tool.connect();
    const waits: number[] = [];
    for (let i = 0; i < 6; i++) {
      await life.scheduler.runFor(0);
      life.radio.see(ADDRESS);
      await life.scheduler.runFor(0);
      const lostUs = life.scheduler.nowUs();
      while (life.states().at(-1) === 'not-joined') await life.scheduler.runFor(10 * MS);
      waits.push((life.scheduler.nowUs() - lostUs) / MS);
    }
    expect(waits).toEqual([500, 1_000, 2_000, 4_000, 4_000, 4_000]);
    life.radio.see(ADDRESS);
    good(await connected);
    life.radio.links[0]?.drop({ reason: 'out-of-reach' });
    await life.scheduler.runFor(0);
    await life.scheduler.runFor(0);
    expect(life.states().slice(-2)).toEqual(['lost', 'asleep']);
    await life.tool.close();
  });

  test('what it missed is one reading in front of the first one after the gap, even over several lost links', async () => {
    const life = start();
    await linked(life);
    await life.scheduler.runFor(1_000 * MS);
    life.radio.links[0]?.send(11);
    await life.scheduler.runFor(2_000 * MS);
    life.radio.links[0]?.drop({ reason: 'out-of-reach' });
    await life.scheduler.runFor(1_000 * MS);
    life.radio.see(ADDRESS);
    await life.scheduler.runFor(0);
    life.radio.links[1]?.drop({ reason: 'ended-by-tool' });
    await life.scheduler.runFor(1_000 * MS);
    life.radio.see(ADDRESS);
    await life.scheduler.runFor(0);
    life.radio.links[2]?.send(22);
    life.radio.links[2]?.send(33);
    const lastUs = life.scheduler.nowUs();
    expect(life.readings).toEqual([
      { kind: 'value', n: 1, atUs: 1_000 * MS, counts: 11 },
      { kind: 'missed', n: 2, atUs: lastUs, fromUs: 1_000 * MS, reason: 'out-of-reach' },
      { kind: 'value', n: 3, atUs: lastUs, counts: 22 },
      { kind: 'value', n: 4, atUs: lastUs, counts: 33 },
    ]);
    await life.tool.close();
  });

  test('a failed attempt to join is no gap: nothing was being measured', async () => {
    const life = start();
    life.radio.failures = 1;
    const connected = life.tool.connect();
    await life.scheduler.runFor(0);
    life.radio.see(ADDRESS);
    await life.scheduler.runFor(1_000 * MS);
    life.radio.see(ADDRESS);
    good(await connected);
    life.radio.links[0]?.send(1);
    expect(life.readings).toMatchObject([{ kind: 'value', n: 1 }]);
    await life.tool.close();
  });
});

describe('closing', () => {
  const stages: readonly [string, (life: Life) => Promise<void>][] = [
    ['before it was connected', async () => {}],
    [
      'while seeking',
      async ({ tool, scheduler }) => {
        void tool.connect();
        await scheduler.runFor(0);
      },
    ],
    ['while linked', linked],
    [
      'while waiting to seek again',
      async (life) => {
        await linked(life);
        life.radio.links[0]?.drop({ reason: 'out-of-reach' });
        await life.scheduler.runFor(0);
        expect(life.states().at(-1)).toBe('lost');
      },
    ],
  ];
  test.each(stages)('%s ends the link, completes both streams and leaves no timer', async (_name, reach) => {
    const life = start();
    await reach(life);
    await life.tool.close();
    expect(life.states().at(-1)).toBe('closed');
    expect(life.completed.toSorted()).toEqual(['link', 'readings']);
    expect(life.radio.sightings.observed).toBe(false);
    const before = life.links.length;
    await life.scheduler.run(); // returns only when nothing is left to do
    life.radio.see(ADDRESS);
    await life.tool.close();
    expect(life.links.length).toBe(before);
  });

  test('before the first link settles the promise with a problem', async () => {
    const { tool } = start();
    const connected = tool.connect();
    await tool.close();
    expect(await connected).toMatchObject({ ok: false, error: { code: 'tool-closed' } });
  });
});

describe('the counter of readings', () => {
  test('numbers without a hole and marks each gap exactly once, whatever happens', () => {
    const step = fc.oneof(
      fc.record({ do: fc.constant('take' as const), us: fc.nat(1_000) }),
      fc.record({ do: fc.constant('lose' as const), us: fc.nat(1_000) }),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const counter = new ReadingCounter();
        const readings: Reading[] = [];
        let atUs = 0;
        let gaps = 0;
        let open = false;
        for (const { do: what, us } of steps) {
          atUs += us;
          if (what === 'lose') {
            counter.lost(atUs, { reason: 'out-of-reach' });
            open = true;
          } else {
            readings.push(...counter.take({ kind: 'value', atUs, counts: 0 }));
            gaps += open ? 1 : 0;
            open = false;
          }
        }
        expect(readings.map((reading) => reading.n)).toEqual(readings.map((_, i) => i + 1));
        const missed = readings.filter((reading) => reading.kind === 'missed');
        expect(missed).toHaveLength(gaps);
        for (const gap of missed) expect(gap.fromUs).toBeLessThanOrEqual(gap.atUs);
      }),
    );
  });
});

test('a wait is never longer than the longest, never shorter than half of what it would be without chance', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5_000 }),
      fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
      (failures, chance) => {
        const ms = backoffMs({ firstMs: 500, mostMs: 10_000 }, failures, () => chance);
        const full = Math.min(10_000, 500 * 2 ** (failures - 1));
        expect(ms).toBeLessThanOrEqual(full);
        expect(ms).toBeGreaterThanOrEqual(full / 2);
      },
    ),
  );
});
