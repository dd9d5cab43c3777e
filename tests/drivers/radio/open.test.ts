import { EventEmitter } from 'node:events';
import { createRequire } from 'node:module';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { HciSocketClass } from '../../../drivers/radio/load.ts';
import { openRadio } from '../../../drivers/radio/open.ts';
import { onBench } from '../bench.ts';

/** An adapter that opens and then says nothing. */
class Mute extends EventEmitter {
  static stopped = 0;
  bindRaw(): unknown {
    return 0;
  }
  bindUser(): unknown {
    return 0;
  }
  start(): void {}
  stop(): void {
    Mute.stopped += 1;
  }
  isDevUp(): boolean {
    return true;
  }
  setFilter(): void {}
  write(_packet: Buffer): void {}
}

const coded = (code: string) => Object.assign(new Error(`${code}, said the system`), { code });

function failsToLoad(code: string): HciSocketClass {
  return class extends Mute {
    constructor() {
      super();
      throw coded(code);
    }
  };
}

function failsToBind(code: string): HciSocketClass {
  return class extends Mute {
    override bindRaw(): unknown {
      throw coded(code);
    }
  };
}

class NotPermitted extends Mute {
  override write(): void {
    queueMicrotask(() => this.emit('error', coded('EPERM')));
  }
}

/** As the native socket says it: the system's number, no code. */
const numbered = (errno: number) =>
  Object.assign(new Error('as the system says'), { errno, syscall: 'write' });

class NotPermittedByNumber extends Mute {
  override write(): void {
    queueMicrotask(() => this.emit('error', numbered(1)));
  }
}

class NeverOpened extends Mute {
  override bindRaw(): unknown {
    return void this.emit('error', numbered(97));
  }
}

/** The words of the system are all that it gives. */
class NoSuchDevice extends Mute {
  override bindRaw(): unknown {
    throw new Error('No such device');
  }
}

class Off extends Mute {
  override isDevUp(): boolean {
    return false;
  }
}

/** Answers Read Local Version with HCI version 5, which is before Low Energy. */
class TooOld extends Mute {
  override write(packet: Buffer): void {
    if (packet.readUInt16LE(1) !== 0x1001) return;
    const answer = Buffer.from([0x04, 0x0e, 12, 1, 0x01, 0x10, 0x00, 5, 0, 0, 5, 0, 0, 0, 0]);
    queueMicrotask(() => this.emit('data', answer));
  }
}

const listeners = () => ({
  sigint: process.listeners('SIGINT'),
  sigterm: process.listeners('SIGTERM'),
  exit: process.listeners('exit'),
});

beforeEach(
  () => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] }),
);
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

describe('without a usable adapter there is one sentence and one next step, and nothing stays behind', () => {
  test.each<[string, HciSocketClass, string]>([
    ['a kernel without Bluetooth', failsToLoad('EAFNOSUPPORT'), 'radio-no-bluetooth'],
    ['the optional package is not installed', failsToLoad('MODULE_NOT_FOUND'), 'radio-not-installed'],
    ['its native part was built for another Node', failsToLoad('ERR_DLOPEN_FAILED'), 'radio-not-installed'],
    ['no adapter to bind to', failsToBind('ENODEV'), 'radio-no-adapter'],
    ['binding is not permitted', failsToBind('EPERM'), 'radio-not-permitted'],
    ['writing is not permitted', NotPermitted, 'radio-not-permitted'],
    ['writing is not permitted, by number', NotPermittedByNumber, 'radio-not-permitted'],
    ['a socket that does not open', NeverOpened, 'radio-no-bluetooth'],
    ['no adapter to bind to, in words', NoSuchDevice, 'radio-no-adapter'],
    ['the adapter is off', Off, 'radio-off'],
    ['the adapter never says in which state it is', Mute, 'radio-no-adapter'],
    ['the adapter is older than Low Energy', TooOld, 'radio-not-low-energy'],
    ['something else', failsToBind('EIO'), 'radio-failed'],
  ])('%s', async (_name, socket, code) => {
    const print = [vi.spyOn(console, 'log'), vi.spyOn(console, 'warn'), vi.spyOn(console, 'error')];
    const before = listeners();
    const opening = openRadio({ socket });
    await vi.advanceTimersByTimeAsync(10_000);
    const outcome = await opening;
    expect(outcome).toMatchObject({
      ok: false,
      error: {
        code,
        message: expect.stringMatching(/^(the|this|no) .*[^.]$/),
        next: expect.stringMatching(/^[A-Z].*\.$/),
      },
    });
    expect(listeners()).toEqual(before);
    expect(vi.getTimerCount()).toBe(0);
    for (const spy of print) expect(spy).not.toHaveBeenCalled();
  });

  test('a cause that nobody foresaw is named', async () => {
    const outcome = await openRadio({ socket: failsToBind('EIO') });
    expect(outcome).toMatchObject({ error: { where: 'EIO, said the system' } });
  });

  test('the socket is stopped', async () => {
    const before = Mute.stopped;
    await openRadio({ socket: Off });
    expect(Mute.stopped).toBe(before + 1);
  });
});

describe('an open radio', () => {
  test('leaves SIGINT to the program, and on closing takes back all that it added', async () => {
    const before = listeners();
    await onBench(() => {
      expect(process.listeners('SIGINT')).toEqual(before.sigint);
      expect(process.listeners('exit')).toHaveLength(before.exit.length + 1);
      vi.advanceTimersByTime(3_500); // noble looks after its adapter once a second
      expect(vi.getTimerCount()).toBe(1);
      return Promise.resolve();
    });
    expect(listeners()).toEqual(before);
    expect(vi.getTimerCount()).toBe(0);
  });

  test('each gets its own socket, and the module cache keeps none of them', async () => {
    const require = createRequire(import.meta.url);
    const id = createRequire(require.resolve('@abandonware/noble/with-bindings')).resolve(
      '@abandonware/bluetooth-hci-socket',
    );
    const cached = require.cache[id];
    await onBench((first) =>
      onBench((second) => {
        expect(first.socket.constructor).not.toBe(second.socket.constructor);
        expect(require.cache[id]).toBe(cached);
        return Promise.resolve();
      }),
    );
  });

  test('can be closed twice, completes its streams and refuses to connect afterwards', () =>
    onBench(async ({ radio, scheduler }) => {
      const done: string[] = [];
      radio.powered$.subscribe({ complete: () => done.push('powered') });
      radio.scan('185a').subscribe({ complete: () => done.push('scan') });
      await scheduler.runUntil(radio.close());
      await radio.close();
      radio.scan('185a').subscribe({ complete: () => done.push('later scan') });
      expect(done.toSorted()).toEqual(['later scan', 'powered', 'scan']);
      const outcome = await radio.connect('c0:00:00:00:00:01', 1_000, new AbortController().signal);
      expect(outcome).toMatchObject({ ok: false, error: { code: 'radio-closed' } });
    }));
});

test('a radio over a virtual controller says that what it shows is simulated', () =>
  onBench(({ radio }) => {
    expect(radio.simulated).toBe(true);
    return Promise.resolve();
  }));
