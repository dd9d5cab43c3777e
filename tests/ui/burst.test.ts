import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { virtualScheduler } from '../../sim/scheduler.ts';
import { burstKeys } from '../../src/ui/burst.ts';

// A gauge that types like a keyboard, beside a person at the same keys.

function keyboard() {
  const scheduler = virtualScheduler();
  const happened: string[] = [];
  const take = burstKeys({
    press: ({ key }) => void happened.push(key),
    figure: (text) => void happened.push(`figure ${text}`),
    nowMs: () => scheduler.nowUs() / 1_000,
    after: (ms, run) => scheduler.after(ms * 1_000, run),
  });
  const keysOf = (text: string) =>
    [...text].map((key) => (key === '\r' ? 'enter' : key === '\t' ? 'tab' : key));
  return {
    happened,
    take,
    /** So far apart. */
    type: async (text: string, everyMs: number) => {
      for (const key of keysOf(text)) {
        take({ key });
        await scheduler.runFor(everyMs * 1_000);
      }
    },
    pause: () => scheduler.runFor(1_000_000),
  };
}

describe('a gauge that types', () => {
  it.each(['0.752\r', '0,75\r', '+0.028 in\r', '0.75mm\r', '27.4N·m\r', '.75\t'])(
    '%j is its figure, and answers no question',
    async (text) => {
      for (const everyMs of [0, 8, 30]) {
        const { happened, type, pause } = keyboard();
        await type(text, everyMs);
        await pause();
        expect(happened).toEqual([`figure ${text.slice(0, -1)}`]);
      }
    },
  );

  it('without an Enter has typed its figure once it pauses', async () => {
    const { happened, type, pause } = keyboard();
    await type('0.752', 8);
    expect(happened).toEqual([]);
    await pause();
    expect(happened).toEqual(['figure 0.752']);
  });

  it('owns the line until its Enter, also where it stalls in the middle', async () => {
    const figures = fc.constantFrom('0.752', '+0.75', '0.028 in', '27.4N·m', '.752');
    await fc.assert(
      fc.asyncProperty(
        figures,
        fc.nat(),
        fc.integer({ min: 41, max: 990 }),
        fc.integer({ min: 0, max: 39 }),
        async (text, place, stallMs, everyMs) => {
          const { happened, type, pause } = keyboard();
          // Behind its third key a burst is one however long it stalls; behind the second for a shorter time.
          const at = 2 + (place % (text.length - 1));
          await type(text.slice(0, at - 1), everyMs);
          await type(text.slice(at - 1, at), at === 2 ? Math.min(stallMs, 240) : stallMs);
          await type(`${text.slice(at)}\r`, everyMs);
          await pause();
          await pause();
          expect(happened).toEqual([`figure ${text}`]);
        },
      ),
    );
  });

  it('that stalls behind its first key loses it to the question, but answers nothing', async () => {
    const { happened, type, pause } = keyboard();
    await type('0', 300);
    await type('.752\r', 8);
    await pause();
    expect(happened).toEqual(['0', 'figure .752']);
  });

  it('ends its figure with two keys, and neither answers anything', async () => {
    for (const end of ['\r\r', '\t\r']) {
      const { happened, type, pause } = keyboard();
      await type(`0.752${end}`, 8);
      await pause();
      expect(happened).toEqual(['figure 0.752']);
      await type('\r', 8);
      expect(happened).toEqual(['figure 0.752', 'enter']);
    }
  });

  it('between two keys of a person takes neither of them', async () => {
    const { happened, type } = keyboard();
    await type('1', 200);
    await type('0.752\r', 8);
    await type('s', 200);
    expect(happened).toEqual(['1', 'figure 0.752', 's']);
  });
});

describe('a person who types', () => {
  it('types a figure key by key, as before', async () => {
    const { happened, type } = keyboard();
    await type('0.75\r', 60);
    expect(happened).toEqual(['0', '.', '7', '5', 'enter']);
  });

  it('types a figure of which two keys were pressed at once', async () => {
    const { happened, type } = keyboard();
    await type('1', 20);
    await type('2.5\r', 120);
    expect(happened).toEqual(['1', '2', '.', '5', 'enter']);
  });

  it('stops the program while a figure is coming in', () => {
    const { happened, take } = keyboard();
    for (const key of '0.75') take({ key });
    take({ key: 'c', ctrl: true });
    expect(happened).toEqual(['c']);
  });

  it('answers a question with one key, and with two that were pressed at once', async () => {
    const { happened, type, pause } = keyboard();
    await type('2', 0);
    await pause();
    await type('1\r', 5);
    await pause();
    expect(happened).toEqual(['2', '1', 'enter']);
  });

  it('loses no key and keeps their order, whatever is typed and however fast', async () => {
    const key = fc.constantFrom('0', '1', '.', '-', 'm', 's', 'q', '\r', '\t', ' ', 'c');
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(key, fc.constantFrom(0, 10, 50, 200, 600)), { maxLength: 20 }),
        async (presses) => {
          const { happened, type, pause } = keyboard();
          for (const [one, everyMs] of presses) await type(one, everyMs);
          await pause();
          const all = happened
            .map((one) => (one.startsWith('figure ') ? one.slice('figure '.length) : one))
            .map((one) => (one === 'enter' ? '\r' : one === 'tab' ? '\t' : one))
            .join('');
          const typed = presses.map(([one]) => one).join('');
          // An Enter behind a figure of a gauge ends it, and is no key.
          const isKept = (whole: string, some: string) => {
            let at = 0;
            for (const character of whole)
              if (some[at] === character) at += 1;
              else if (character !== '\r' && character !== '\t') return false;
            return at === some.length;
          };
          expect(isKept(typed, all)).toBe(true);
        },
      ),
    );
  });
});
