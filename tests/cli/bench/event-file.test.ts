import { execFileSync } from 'node:child_process';
import { closeSync, constants, openSync, readFileSync, readSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { eventFile, type Outlet, openEventFile } from '../../../src/cli/bench/event-file.ts';
import { folder } from '../program.ts';

afterEach(() => void vi.restoreAllMocks());

/** Takes text only when told to. */
function slowOutlet() {
  const waiting: { readonly text: string; readonly done: (() => void) | undefined }[] = [];
  const taken: string[] = [];
  let fail: (error: Error) => void = () => {};
  const outlet: Outlet = {
    write: (text, done) => void waiting.push({ text, done }),
    waiting: () => waiting.reduce((sum, { text }) => sum + text.length, 0),
    end: () => {},
    onError: (hear) => {
      fail = hear;
    },
  };
  const take = () => {
    for (const { text, done } of waiting.splice(0)) {
      taken.push(text);
      done?.();
    }
  };
  return {
    outlet,
    take,
    lines: () => taken.join('').split('\n').filter(Boolean),
    fail: (error: Error) => fail(error),
  };
}

describe('lines of events', () => {
  it('are left out and counted where nobody takes them, and go on when somebody does', () => {
    const { outlet, take, lines } = slowOutlet();
    const file = eventFile(outlet, 20);
    for (let i = 1; i <= 9; i++) file.write({ i });
    take();
    file.write({ i: 10 });
    take();
    expect(lines()).toEqual(['{"i":1}', '{"i":2}', '{"i":3}', '{"kind":"missed","lines":6}', '{"i":10}']);
  });

  it('say once that they cannot be written, and trouble nobody after that', async () => {
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const { outlet, fail } = slowOutlet();
    const file = eventFile(outlet);
    fail(new Error('gone'));
    fail(new Error('gone'));
    file.write({ i: 1 });
    await file.close();
    expect(said).toHaveBeenCalledTimes(1);
    expect(outlet.waiting()).toBe(0);
  });

  it('never steer the terminal that they may go to', () => {
    const { outlet, take, lines } = slowOutlet();
    eventFile(outlet).write({ name: '\u009b31m\u202ered' });
    take();
    expect(lines()).toEqual(['{"name":"\\u009b31m\\u202ered"}']);
  });

  it('go to the end of a file, which nobody else reads', async () => {
    const path = join(folder(), 'job.jsonl');
    for (const i of [1, 2]) {
      const file = openEventFile(path);
      file.write({ i });
      await file.close();
    }
    expect(readFileSync(path, 'utf8')).toBe('{"i":1}\n{"i":2}\n');
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it('go into a pipe that somebody has open, and a pipe that nobody reads is refused', async () => {
    const path = join(folder(), 'pipe');
    execFileSync('mkfifo', [path]);
    expect(() => openEventFile(path)).toThrow('nobody reads this pipe');
    const reader = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const file = openEventFile(path);
    file.write({ i: 1 });
    await file.close();
    const bytes = Buffer.alloc(100);
    expect(bytes.toString('utf8', 0, readSync(reader, bytes))).toBe('{"i":1}\n');
    closeSync(reader);
  });

  it('do not go to what is no file', () => {
    const file = join(folder(), 'file');
    writeFileSync(file, '');
    expect(() => openEventFile('/dev/null')).toThrow('this is no file and no pipe');
  });
});
