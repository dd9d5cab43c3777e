// Runs in the guest: processes whose lines can be waited for, plugmark and the peers among them.
import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';

const started = performance.now();
export const say = (text) =>
  process.stdout.write(`${((performance.now() - started) / 1000).toFixed(2).padStart(7)} s  ${text}\n`);

/** What must not outlive its section: there is one adapter. */
const running = new Set();
export function endPlugmark() {
  for (const child of running) child.kill('SIGKILL');
  running.clear();
}

/** A process whose lines can be waited for, those that came before included. */
export function program(name, command, args, options = {}) {
  const child = spawn(command, args, { stdio: ['pipe', 'pipe', 'inherit'], ...options });
  if (name === 'plugmark') running.add(child);
  const lines = [];
  const waiting = new Set();
  createInterface({ input: child.stdout }).on('line', (line) => {
    say(`        ${name}: ${line}`);
    lines.push(line);
    for (const look of [...waiting]) look();
  });
  const exit = new Promise((resolve) => child.once('close', resolve));
  let read = 0;
  /** The first true answer of `wanted` to one of the next lines; what stood in front of it counts as read. */
  const line = (what, wanted, seconds = 30) =>
    new Promise((resolve, reject) => {
      const settle = (done) => {
        clearTimeout(timer);
        waiting.delete(look);
        done();
      };
      const timer = setTimeout(
        () => settle(() => reject(new Error(`${name}: no ${what} within ${seconds} s`))),
        seconds * 1000,
      );
      const look = () => {
        while (waiting.has(look) && read < lines.length) {
          try {
            const found = wanted(lines[read++]);
            if (found) settle(() => resolve(found));
          } catch (error) {
            settle(() => reject(error));
          }
        }
      };
      waiting.add(look);
      look();
    });
  /** The lines that fit `pattern`: the first within `seconds`, and those that follow until none has come for 3 s. */
  const untilQuiet = async (what, pattern, seconds) => {
    const fits = (text) => pattern.test(text) && text;
    const fitting = [await line(what, fits, seconds)];
    for (;;) {
      const next = await line(what, fits, 3).catch(() => undefined);
      if (next === undefined) return fitting;
      fitting.push(next);
    }
  };
  return {
    line,
    untilQuiet,
    exit,
    lines,
    write: (text) => child.stdin.write(`${text}\n`),
    end: () => child.stdin.end(),
    child,
  };
}

const CLI = 'dist/src/cli/bin.js';

/** A plugmark that goes on; on hci1, as all of them. */
export const start = (args, env = {}) =>
  program('plugmark', process.execPath, [CLI, ...args], {
    env: { ...process.env, NOBLE_HCI_DEVICE_ID: '1', ...env },
  });

/** Runs plugmark to its end and gives what it said; `prefix` is a command that runs it. */
export async function plugmark(args, { prefix = [], env = {} } = {}) {
  const [command, ...rest] = [...prefix, process.execPath, CLI, ...args];
  const ran = program('plugmark', command, rest, {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, NOBLE_HCI_DEVICE_ID: '1', ...env },
  });
  let problem = '';
  ran.child.stderr.on('data', (text) => {
    problem += text;
  });
  const code = await Promise.race([ran.exit, sleep(120_000).then(() => 'never ended')]);
  ran.child.kill('SIGKILL');
  return { code, said: ran.lines.join('\n'), problem: problem.trim() };
}

/** A tool on bluetoothd (peer.py). */
export async function peer(adapter, quantity, name, serial, more = []) {
  const script = 'tests/bluetooth/guest/peer.py';
  const tool = program(name, '/usr/bin/python3', ['-u', script, adapter, quantity, name, serial, ...more]);
  const said = (what, seconds) =>
    tool.line(
      what,
      (line) => {
        const found = JSON.parse(line);
        if (found.error !== undefined) throw new Error(`${name}: ${line}`);
        return found.say === what && found;
      },
      seconds,
    );
  const done = async (order) => {
    tool.write(JSON.stringify(order));
    await said('done');
  };
  const { address } = await said('ready');
  return {
    address,
    advertise: () => done({ do: 'advertise' }),
    hide: () => done({ do: 'hide' }),
    drop: () => done({ do: 'drop' }),
    power: (on) => done({ do: 'power', on }),
    send: async (counts) => {
      tool.write(JSON.stringify({ do: 'send', counts, everyMs: 10 }));
      await said('sent', 60);
    },
    pairings: () => tool.lines.filter((line) => JSON.parse(line).say === 'paired').length,
    end: () => tool.end(),
  };
}
