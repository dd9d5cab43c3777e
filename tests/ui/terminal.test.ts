import { EventEmitter } from 'node:events';
import { describe, expect, it } from 'vitest';
import { takeTerminal } from '../../src/ui/terminal.ts';

function held() {
  const log: string[] = [];
  const events = new EventEmitter();
  const giveBack = takeTerminal({
    stdout: { write: (text: string) => log.push(text) },
    stopDrawing: () => log.push('stopped'),
    onSignal: () => log.push('signal'),
    events,
  });
  const listening = () => events.eventNames().length;
  return { log, events, giveBack, listening };
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

const ENTER = '\u001b[?1049h\u001b[2J\u001b[H';
const LEAVE = '\u001b[?25h\u001b[?1049l';

describe('the terminal', () => {
  it('is given back once, with the cursor, after drawing has stopped', async () => {
    const { log, giveBack, listening } = held();
    giveBack();
    giveBack();
    expect(log).toEqual([ENTER, 'stopped', LEAVE]);
    await turn();
    expect(listening()).toBe(0);
  });

  it.each(['exit', 'uncaughtExceptionMonitor'])(
    'is given back on %s, which takes its course',
    async (ending) => {
      const { log, events, listening } = held();
      events.emit(ending);
      expect(log).toEqual([ENTER, 'stopped', LEAVE]);
      await turn();
      expect(listening()).toBe(0);
    },
  );

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'])(
    'is given back on %s before the program hears of it',
    async (signal) => {
      const { log, events, listening } = held();
      events.emit(signal);
      events.emit(signal);
      expect(log).toEqual([ENTER, 'stopped', LEAVE, 'signal']);
      await turn();
      expect(listening()).toBe(0);
    },
  );

  it('is given back even when drawing cannot be stopped', () => {
    const log: string[] = [];
    const giveBack = takeTerminal({
      stdout: { write: (text: string) => log.push(text) },
      stopDrawing: () => {
        throw new Error('broken frame');
      },
      onSignal: () => expect.fail('no signal came'),
      events: new EventEmitter(),
    });
    expect(giveBack).toThrow('broken frame');
    expect(log).toEqual([ENTER, LEAVE]);
  });
});
