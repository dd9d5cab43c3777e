/** What the campaign is made of: parts, each a number of cases that follow from a seed and their number alone. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Random } from '../../sim/random.ts';

/** What came of a case. `faults`: where the program broke its promise; none is good. */
export interface Outcome {
  readonly faults: readonly string[];
  /** Figures to be added up over the part: readings acknowledged, entries compared. */
  readonly counted?: Readonly<Record<string, number>>;
  readonly peakMb?: number;
  /** Not tried, and why: a machine that lacks something is no success. */
  readonly skipped?: string;
}

export interface Part {
  readonly name: string;
  readonly what: string;
  /** How many cases make up the whole campaign, and how many its short part. */
  readonly cases: number;
  readonly short: number;
  /** Made once for the part; `one` gets a folder of its own and a generator that the seed and the number make. */
  readonly prepare: (folder: string) => Promise<One> | One;
}

export interface One {
  readonly one: (number: number, random: Random, folder: string) => Promise<Outcome>;
  readonly end?: () => void;
  /** What this part cannot try, and how it judges: printed below the table. */
  readonly notes?: readonly string[];
}

export const BIN = fileURLToPath(new URL('../../dist/src/cli/bin.js', import.meta.url));
export const HERE = fileURLToPath(new URL('.', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly signal: string | null;
  readonly out: string;
  readonly err: string;
  readonly ms: number;
  /** Where it was asked for: without the time in a queue for a processor. */
  readonly ownMs?: number;
}

/** Nothing takes longer. */
export const HANGS_AFTER_MS = 10_000;

export interface Running {
  readonly pid: number;
  readonly type: (line: string) => void;
  readonly out: () => string;
  readonly kill: (signal: NodeJS.Signals) => void;
  readonly ended: Promise<Ran>;
  /** Resolves when the output holds the text, or the program has ended. */
  readonly says: (text: string) => Promise<void>;
}

/** Starts a program that this one waits for; one that hangs is killed, and its signal says so. */
export function started(
  command: string,
  args: readonly string[],
  {
    env = {},
    cwd,
    patienceMs = HANGS_AFTER_MS,
    ownTime,
  }: {
    env?: NodeJS.ProcessEnv;
    cwd?: string;
    patienceMs?: number;
    /** Judges by the process's own time, with the patience as the most on the wall. */
    ownTime?: (pid: number) => { readonly ms: () => number; readonly end: () => void };
  } = {},
): Running {
  const startMs = performance.now();
  const child = spawn(command, args, {
    cwd,
    env: { ...process.env, LANG: 'C.UTF-8', NODE_ENV: 'production', ...env },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let [out, err] = ['', ''];
  const waiting = new Set<() => void>();
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
    for (const look of waiting) look();
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  child.stdin.on('error', () => {});
  const timer = setTimeout(() => child.kill('SIGKILL'), patienceMs);
  const own = ownTime?.(child.pid ?? 0);
  const isLate = () => own !== undefined && own.ms() > HANGS_AFTER_MS;
  const watch = own && setInterval(() => isLate() && child.kill('SIGKILL'), 100);
  const ended = new Promise<Ran>((resolve) => {
    child.on('close', (code, signal) => {
      clearTimeout(timer);
      clearInterval(watch);
      own?.end();
      const ms = performance.now() - startMs;
      const hangs = ms >= patienceMs || isLate();
      resolve({
        code,
        signal,
        out,
        err: hangs ? `${err}\nHANGS` : err,
        ms,
        ...(own !== undefined && { ownMs: own.ms() }),
      });
    });
  });
  return {
    pid: child.pid ?? 0,
    type: (line) => void child.stdin.write(`${line}\n`),
    out: () => out,
    kill: (signal) => void child.kill(signal),
    ended,
    says: (text) =>
      new Promise((resolve) => {
        const look = () => {
          if (!out.includes(text)) return;
          waiting.delete(look);
          resolve();
        };
        waiting.add(look);
        void ended.then(() => resolve());
        look();
      }),
  };
}

export function ran(args: readonly string[], options: Parameters<typeof started>[2] = {}): Promise<Ran> {
  const program = started(process.execPath, [BIN, ...args], options);
  program.type('');
  return program.ended;
}

const STACK = /\n\s+at .+:\d+:\d+/;
/** What no output of a program may hold: a stack trace, or what steers a terminal. */
const STEERS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;

/** What is wrong with how a program ended, whatever it was asked. */
export function manners({ code, out, err }: Ran): readonly string[] {
  const all = `${out}\n${err}`;
  return [
    ...(err.endsWith('HANGS') ? ['hangs'] : []),
    ...(code === 70 || all.includes('a fault in the program itself: ')
      ? [`fault in the program: ${lineWith(all, 'fault in')}`]
      : []),
    ...(STACK.test(all) ? ['a stack trace'] : []),
    ...(STEERS.test(all) ? ['control characters in its output'] : []),
  ];
}

const lineWith = (text: string, words: string) =>
  text
    .split('\n')
    .find((line) => line.includes(words))
    ?.slice(0, 300) ?? '';

export const whole = (random: Random, from: number, to: number) => Math.floor(random.uniform(from, to + 1));
export const pick = <T>(random: Random, list: readonly T[]): T => {
  const one = list[whole(random, 0, list.length - 1)];
  if (one === undefined) throw new Error('nothing to pick from');
  return one;
};
export const pauseMs = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
