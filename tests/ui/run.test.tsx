import { Console } from 'node:console';
import { EventEmitter } from 'node:events';
import { BehaviorSubject, type Subject } from 'rxjs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { runScreen } from '../../src/ui/run.tsx';
import type { BenchView } from '../../src/ui/view.ts';
import { asStreams, FakeKeyboard, FakeScreen } from './fake-terminal.ts';
import { jobWith, viewOf } from './fixtures.ts';
import { TRACE, VIEWS } from './views.ts';

// Ink draws nothing where it believes in a build server.
vi.hoisted(() => {
  process.env['CI'] = 'false';
  process.env['CONTINUOUS_INTEGRATION'] = 'false';
});

// The runner's console lacks what Ink builds its own from.
Object.assign(console, { Console });

const LEAVE = '\u001b[?1049l';
const TITLE = 'J-1042 · Example estate';
const first: BenchView = VIEWS['gap'] ?? expect.fail('no view');
const asking: BenchView = VIEWS['notOk'] ?? expect.fail('no view');

function started(view$: Subject<BenchView> = new BehaviorSubject(first), more = {}) {
  const screen = new FakeScreen();
  const keyboard = new FakeKeyboard();
  const events = new EventEmitter();
  const commands: Command[] = [];
  const quit = vi.fn(() => screen.writes.push('QUIT'));
  const done = runScreen({
    view$,
    onCommand: (command) => commands.push(command),
    onTyped: () => {},
    types: false,
    quiet: true,
    ...more,
    onQuit: quit,
    ...asStreams(screen, keyboard),
    color: false,
    ascii: false,
    events,
  });
  return { view$, screen, keyboard, events, commands, quit, done };
}

const until = (condition: () => void) => vi.waitFor(condition, { timeout: 4000, interval: 5 });
const shows = (screen: FakeScreen, text: string) => until(() => expect(screen.text).toContain(text));

/** What stood on the screen before the program and stands there again: nothing is drawn after the end. */
const afterwards = (screen: FakeScreen) => screen.text.slice(screen.text.lastIndexOf(LEAVE) + LEAVE.length);

afterEach(() => {
  vi.useRealTimers();
});

describe('the live screen', () => {
  it('leaves its summary broken between words', async () => {
    const { screen, keyboard, quit, done } = started();
    await shows(screen, TITLE);
    keyboard.write('q');
    await until(() => expect(quit).toHaveBeenCalled());
    await done;
    const lines = afterwards(screen).split('\n');
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    expect(lines.some((line) => /^ {2}\S/.test(line))).toBe(true);
  });

  it.each([
    ['q', 'q'],
    ['Ctrl-C', '\u0003'],
  ])('is left with %s: normal screen, summary, then the word to the program', async (_, key) => {
    const { screen, keyboard, events, quit, done } = started();
    await shows(screen, TITLE);
    expect(keyboard.raw).toBe(true);
    expect(screen.writes[0]).toContain('\u001b[?1049h');
    keyboard.write(key);
    await done;
    expect(quit).toHaveBeenCalledTimes(1);
    expect(keyboard.raw).toBe(false);
    expect(afterwards(screen)).toMatch(
      /^job J-1042.*\n(.*\n)*The job is not closed; it can be taken up again/,
    );
    expect(screen.text.indexOf(LEAVE)).toBeLessThan(screen.text.indexOf('QUIT'));
    await until(() => expect(events.eventNames()).toEqual([]));
    expect(screen.listenerCount('resize')).toBe(0);
  });

  it('ends with its views and leaves the summary', async () => {
    const { view$, screen, quit, done } = started();
    view$.next(viewOf(jobWith(8, { closed: { complete: true, open: [] } })));
    view$.complete();
    await done;
    expect(afterwards(screen).trimEnd()).toMatch(/Complete: every gap and every torque is proven\.$/);
    expect(quit).not.toHaveBeenCalled();
  });

  it('gives the terminal back and fails when its views fail', async () => {
    const { view$, screen, done } = started();
    view$.error(new Error('disk full'));
    await expect(done).rejects.toThrow('disk full');
    expect(screen.text).toContain(LEAVE);
  });

  it.each(['SIGTERM', 'SIGHUP', 'SIGINT'])(
    'gives the terminal back on %s and tells the program',
    async (signal) => {
      const { screen, events, quit, done } = started();
      await shows(screen, TITLE);
      events.emit(signal);
      await done;
      expect(quit).toHaveBeenCalledTimes(1);
      expect(afterwards(screen)).toMatch(/^job J-1042/);
    },
  );

  it('draws nothing more once the process ends by itself', async () => {
    const { view$, screen, events } = started();
    await shows(screen, TITLE);
    view$.next(asking);
    events.emit('uncaughtExceptionMonitor');
    events.emit('exit');
    expect(afterwards(screen)).toBe('');
    expect(screen.text).toContain('\u001b[?25h');
  });

  it('takes key presses that come in one piece one by one, in their order', async () => {
    const { screen, keyboard, commands, quit, done } = started(new BehaviorSubject(asking));
    await shows(screen, 'NOT OK');
    keyboard.write('xb\u001b[C\u001b[Dbr??q');
    await done;
    expect(commands).toEqual([
      { do: 'answer', pull: 5, answer: 'refit' },
      { do: 'answer', pull: 5, answer: 'refit' },
    ]);
    expect(quit).toHaveBeenCalledTimes(1);
  });

  it('moves the target with the arrows', async () => {
    const { screen, keyboard, commands } = started();
    await shows(screen, TITLE);
    keyboard.write('\u001b[C\u001b[B');
    await until(() => expect(commands).toHaveLength(2));
    expect(commands).toEqual([
      { do: 'choose-cylinder', quantity: 'torque', cylinder: 2 },
      { do: 'choose-cylinder', quantity: 'length', cylinder: 2 },
    ]);
    keyboard.write('q');
  });

  it('takes no answer to a question that was not on the screen yet', async () => {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval', 'Date', 'performance'],
    });
    const { view$, screen, keyboard, commands } = started();
    await vi.advanceTimersByTimeAsync(200);
    view$.next(first);
    view$.next(asking); // waits for the next frame
    keyboard.write('b');
    await new Promise((resolve) => setImmediate(resolve));
    expect(commands).toEqual([]);
    await vi.advanceTimersByTimeAsync(200);
    expect(screen.text).toContain('NOT OK');
    keyboard.write('b');
    await new Promise((resolve) => setImmediate(resolve));
    expect(commands).toEqual([{ do: 'answer', pull: 5, answer: 'refit' }]);
    keyboard.write('q');
    await new Promise((resolve) => setImmediate(resolve));
  });

  it('shows the help and takes it away again', async () => {
    const { screen, keyboard } = started();
    await shows(screen, TITLE);
    keyboard.write('?');
    await shows(screen, 'bell on and off');
    const frames = screen.writes.length;
    keyboard.write('?');
    await until(() => expect(screen.writes.slice(frames).join('')).toContain('front'));
    keyboard.write('q');
  });

  it('repaints at the new size, never wider or taller, and leaves the scrollback alone', async () => {
    const { screen, keyboard, done } = started();
    await shows(screen, TITLE);
    for (const [columns, rows] of [
      [200, 60],
      [60, 20],
      [120, 40],
    ] as const) {
      const before = screen.writes.length;
      screen.resize(columns, rows);
      await until(() => {
        const frames = screen.writes.slice(before).filter((write) => write.includes(TITLE));
        expect(frames.length).toBeGreaterThan(0);
        const lines = (frames.at(-1) ?? '').replace(/\u001b\[[\d;?]*[A-Za-z]/g, '').split('\n');
        expect(lines.length - 1).toBe(rows - 1);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
      });
      expect(screen.writes[before]).toBe('\u001b[2J\u001b[H');
    }
    keyboard.write('q');
    await done;
    expect(screen.text).not.toContain('\u001b[3J');
  });

  it('draws at most 15 frames a second of 50 views a second, and the newest among them', async () => {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval', 'Date', 'performance'],
    });
    const { view$, screen, keyboard } = started();
    const seconds = 2;
    for (let at = 1; at <= 50 * seconds; at += 1) {
      view$.next(viewOf(jobWith(3), { nowNm: at / 10, pulling: true, peakNm: at / 10, trace: TRACE }));
      await vi.advanceTimersByTimeAsync(20);
    }
    const frames = screen.writes.filter((write) => write.includes(TITLE)).length;
    expect(frames).toBeLessThanOrEqual(15 * seconds);
    expect(frames).toBeGreaterThanOrEqual(8 * seconds);
    await vi.advanceTimersByTimeAsync(200);
    expect(screen.text).toContain(`${(50 * seconds) / 10}.0 N·m`);
    keyboard.write('q');
    await new Promise((resolve) => setImmediate(resolve));
  });

  it('rings once for an OK, three times for a question, and not at all when it is to be quiet', async () => {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval', 'Date', 'performance'],
    });
    const bells = (screen: FakeScreen) => screen.writes.filter((write) => write === '\u0007').length;
    const ok = VIEWS['ok'] ?? expect.fail('no view');
    for (const [quiet, one, four] of [
      [false, 1, 4],
      [true, 0, 0],
    ] as const) {
      const { view$, screen, keyboard } = started(new BehaviorSubject(first), { quiet });
      await vi.advanceTimersByTimeAsync(200);
      view$.next(ok);
      await vi.advanceTimersByTimeAsync(2000);
      expect(bells(screen)).toBe(one);
      view$.next(asking);
      await vi.advanceTimersByTimeAsync(100);
      expect(bells(screen)).toBeLessThanOrEqual(one + 1);
      await vi.advanceTimersByTimeAsync(2000);
      expect(bells(screen)).toBe(four);
      keyboard.write('q');
      await new Promise((resolve) => setImmediate(resolve));
    }
  });

  it('hands on what a gauge types as a figure, and presses no key by it', async () => {
    const typed: string[] = [];
    const windows = VIEWS['windows'] ?? expect.fail('no view');
    const { screen, keyboard, commands, done } = started(new BehaviorSubject(windows), {
      types: true,
      onTyped: (line: string) => typed.push(line),
    });
    await shows(screen, 'Compare these windows');
    keyboard.write('0.75\r0.81\r');
    await until(() => expect(typed).toEqual(['0.75', '0.81']));
    expect(commands).toEqual([]);
    keyboard.write('q');
    await done;
  });
});
