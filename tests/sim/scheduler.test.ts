import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  pacedScheduler,
  realScheduler,
  taskGroup,
  untilNext,
  virtualScheduler,
} from '../../sim/scheduler.ts';

describe('virtual time', () => {
  it('runs tasks in order of due time, ties in order of insertion, and moves only with tasks', async () => {
    const scheduler = virtualScheduler();
    const seen: string[] = [];
    const note = (name: string) => () => void seen.push(`${name}@${scheduler.nowUs()}`);
    scheduler.after(20, note('c'));
    scheduler.after(10, note('a'));
    scheduler.after(10, note('b'));
    expect(scheduler.nowUs()).toBe(0);
    await scheduler.run();
    expect(seen).toEqual(['a@10', 'b@10', 'c@20']);
  });

  it('lets promises that wait on a task move on before the next task', async () => {
    const scheduler = virtualScheduler();
    const seen: string[] = [];
    const woken = new Promise<void>((resolve) => scheduler.after(5, resolve)).then(async () => {
      await Promise.resolve();
      process.nextTick(() => seen.push('awaited'));
    });
    scheduler.after(5, () => seen.push('next task'));
    await scheduler.run();
    await woken;
    expect(seen).toEqual(['awaited', 'next task']);
  });

  it('runs no further than asked, and leaves the clock there', async () => {
    const scheduler = virtualScheduler();
    let ticks = 0;
    const tick = () => {
      ticks += 1;
      scheduler.after(100, tick);
    };
    scheduler.after(100, tick);
    await scheduler.runFor(1_050);
    expect([ticks, scheduler.nowUs()]).toEqual([10, 1_050]);
    await scheduler.runFor(50);
    expect([ticks, scheduler.nowUs()]).toEqual([11, 1_100]);
  });

  it('runs until a promise settles, passes its outcome on, and says so if it never can', async () => {
    const scheduler = virtualScheduler();
    const forever = () => void scheduler.after(1_000, forever);
    forever();
    const value = new Promise<string>((resolve) => scheduler.after(2_500, () => resolve('there')));
    expect(await scheduler.runUntil(value)).toBe('there');
    expect(scheduler.nowUs()).toBe(2_500);
    await expect(scheduler.runUntil(Promise.reject(new Error('no')))).rejects.toThrow('no');
    await expect(virtualScheduler().runUntil(new Promise(() => {}), 5)).rejects.toThrow('has not settled');
  });

  it('passes on what a task throws', async () => {
    const scheduler = virtualScheduler();
    scheduler.after(1, () => {
      throw new Error('broken task');
    });
    await expect(scheduler.run()).rejects.toThrow('broken task');
  });

  it('refuses a delay that is no number', () => {
    expect(() => virtualScheduler().after(Number.NaN, () => {})).toThrow(RangeError);
  });

  it('runs every task exactly once at its time, except the cancelled', async () => {
    const tasks = fc.array(fc.record({ us: fc.nat(1_000), cancelled: fc.boolean() }), { maxLength: 30 });
    await fc.assert(
      fc.asyncProperty(tasks, async (planned) => {
        const scheduler = virtualScheduler();
        const ran: { index: number; us: number }[] = [];
        planned.forEach(({ us, cancelled }, index) => {
          const cancel = scheduler.after(us, () => void ran.push({ index, us: scheduler.nowUs() }));
          if (cancelled) cancel();
        });
        await scheduler.run();
        const expected = planned
          .map(({ us, cancelled }, index) => ({ index, us, cancelled }))
          .filter(({ cancelled }) => !cancelled)
          .sort((a, b) => a.us - b.us || a.index - b.index)
          .map(({ index, us }) => ({ index, us }));
        expect(ran).toEqual(expected);
      }),
      { numRuns: 50 },
    );
  });
});

describe('real time', () => {
  it('runs tasks in order and never early', async () => {
    const scheduler = realScheduler();
    const startUs = scheduler.nowUs();
    const seen: [string, boolean][] = [];
    await new Promise<void>((resolve) => {
      scheduler.after(3_000, () => {
        seen.push(['late', scheduler.nowUs() - startUs >= 3_000]);
        resolve();
      });
      scheduler.after(0, () => seen.push(['first', true]));
      scheduler.after(0, () => seen.push(['second', true]));
      scheduler.after(500, () => seen.push(['cancelled', false]))();
    });
    expect(seen).toEqual([
      ['first', true],
      ['second', true],
      ['late', true],
    ]);
  });
});

describe('a group of tasks', () => {
  it('cancels its own tasks and no others', async () => {
    const scheduler = virtualScheduler();
    const group = taskGroup(scheduler);
    const seen: string[] = [];
    group.after(1, () => seen.push('ran before'));
    group.after(3, () => seen.push('cancelled'));
    scheduler.after(4, () => seen.push('other'));
    await scheduler.runFor(2);
    group.cancelAll();
    await scheduler.run();
    expect(seen).toEqual(['ran before', 'other']);
  });
});

describe('a time grid', () => {
  it('has its next point strictly ahead', () => {
    expect([untilNext(0, 0, 10), untilNext(1, 0, 10), untilNext(29, 5, 10), untilNext(25, 5, 10)]).toEqual([
      10, 9, 6, 10,
    ]);
  });
});

describe('paced time', () => {
  it('is as much faster as asked, moves from task to task, and drops nothing when the machine stalls', async () => {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'clearTimeout', 'setImmediate', 'clearImmediate', 'performance'],
    });
    try {
      const scheduler = pacedScheduler(10);
      const seen: number[] = [];
      const tick = () => {
        seen.push(scheduler.nowUs());
        if (seen.length < 5) scheduler.after(100_000, tick);
      };
      scheduler.after(100_000, tick);
      await vi.advanceTimersByTimeAsync(20);
      expect(seen).toEqual([100_000, 200_000]);
      // Nothing ran for a second of real time: no second is missing afterwards.
      vi.setSystemTime(Date.now() + 1_000);
      await vi.advanceTimersByTimeAsync(31);
      expect(seen).toEqual([100_000, 200_000, 300_000, 400_000, 500_000]);
    } finally {
      vi.useRealTimers();
    }
  });
});
