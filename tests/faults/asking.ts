/** Asks a command of a worker or of the program itself, and measures what it took: its own time and its peak of memory. */
import { type ChildProcess, fork } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { HANGS_AFTER_MS, HERE, ran } from './part.ts';

export interface Answer {
  readonly code: number | null;
  readonly text: string;
  readonly ownMs: number;
  /** Of the whole process up to here. */
  readonly peakMb: number;
  readonly hangs: boolean;
}

/** A machine that is full of others is no hang; one that answers nothing for so long, whatever the reason, is. */
const NO_ANSWER_MS = 180_000;
const LOOK_MS = 100;
const LOOKS_AT_PROCESSES = existsSync('/proc/self/stat');
export const JUDGED_BY = LOOKS_AT_PROCESSES
  ? 'processor time and the time asleep, not the time in a queue for a processor'
  : 'the clock on the wall, for lack of /proc';

/** The time that is a process's own: what its processors worked, and what it slept. Waiting for a processor is not. */
function ownTimeOf(pid: number): { readonly ms: () => number; readonly end: () => void } {
  const startMs = performance.now();
  const first = statOf(pid);
  if (first === null) return { ms: () => performance.now() - startMs, end: () => {} };
  let last = first;
  let lastMs = startMs;
  let asleepMs = 0;
  const look = () => {
    const nowMs = performance.now();
    const now = statOf(pid);
    if (now === null) return;
    const idleMs = nowMs - lastMs - (now.cpuMs - last.cpuMs);
    if (now.isAsleep && last.isAsleep && idleMs > 0) asleepMs += idleMs;
    last = now;
    lastMs = nowMs;
  };
  const timer = setInterval(look, LOOK_MS);
  return {
    ms: () => {
      look();
      return last.cpuMs - first.cpuMs + asleepMs;
    },
    end: () => clearInterval(timer),
  };
}

/** Linux counts processor time in hundredths of a second. */
const TICK_MS = 10;

function statOf(pid: number): { readonly cpuMs: number; readonly isAsleep: boolean } | null {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, 'latin1');
    const [state, ...rest] = text.slice(text.lastIndexOf(')') + 2).split(' ');
    // Fields 14 and 15 of proc(5); the state is the third.
    return { cpuMs: (Number(rest[10]) + Number(rest[11])) * TICK_MS, isAsleep: state === 'S' };
  } catch {
    return null;
  }
}

const usageSchema = z.object({ cpuMs: z.number(), peakMb: z.number() });
const answerSchema = usageSchema.extend({ code: z.int().nullable(), text: z.string() });

export interface Worker {
  readonly ask: (argv: readonly string[]) => Promise<Answer>;
  readonly end: () => void;
}

/** One process for command after command; after a hang it is another. */
export function newWorker(): Worker {
  let worker = forked();
  return {
    async ask(argv) {
      const answer = await asked(worker, argv);
      if (!answer.hangs && worker.connected) return answer;
      worker.kill('SIGKILL');
      worker = forked();
      return answer;
    },
    end: () => void worker.kill('SIGKILL'),
  };
}

// Commands that would reach for an adapter find a socket that nobody serves.
const NO_RADIO = { PLUGMARK_AIR: '/nonexistent/air' };

const forked = (): ChildProcess =>
  fork(join(HERE, 'mutation-worker.mjs'), {
    stdio: 'ignore',
    execArgv: [],
    env: { ...process.env, NODE_ENV: 'production', ...NO_RADIO },
  });

function asked(worker: ChildProcess, argv: readonly string[]): Promise<Answer> {
  return new Promise((resolve) => {
    const own = ownTimeOf(worker.pid ?? 0);
    const startMs = performance.now();
    const end = (answer: Omit<Answer, 'hangs' | 'ownMs'>, cpuMs = 0) => {
      const ownMs = Math.max(own.ms(), cpuMs);
      own.end();
      clearInterval(timer);
      worker.off('message', heard).off('exit', gone);
      resolve({ ...answer, ownMs, hangs: ownMs > HANGS_AFTER_MS || answer.text === NONE });
    };
    const heard = (message: unknown) => {
      const { cpuMs, ...answer } = answerSchema.parse(message);
      end(answer, cpuMs);
    };
    const gone = (code: number | null) =>
      end({ code: 70, text: `a fault in the program itself: it ended by itself with ${code}`, peakMb: 0 });
    const timer = setInterval(() => {
      if (own.ms() > HANGS_AFTER_MS || performance.now() - startMs > NO_ANSWER_MS)
        end({ code: null, text: NONE, peakMb: 0 });
    }, LOOK_MS);
    worker.on('message', heard).on('exit', gone);
    worker.send({ argv });
  });
}

const NONE = 'no answer';

/** The same through the program as it is delivered, which starts anew. */
export async function askedOfProgram(argv: readonly string[], folder: string): Promise<Answer> {
  const file = join(folder, 'usage.json');
  const ended = await ran(argv, {
    patienceMs: NO_ANSWER_MS,
    env: {
      ...NO_RADIO,
      NODE_OPTIONS: `--require ${join(HERE, 'usage.cjs')}`,
      FAULTS_USAGE: file,
    },
    ownTime: (pid) => ownTimeOf(pid),
  });
  const usage = existsSync(file)
    ? usageSchema.parse(JSON.parse(readFileSync(file, 'utf8')))
    : { cpuMs: 0, peakMb: 0 };
  const hangs = ended.err.endsWith('HANGS') || usage.cpuMs > HANGS_AFTER_MS;
  return {
    code: ended.signal === null ? ended.code : null,
    text: ended.out + ended.err + (ended.signal === null || hangs ? '' : `\nended by ${ended.signal}`),
    ownMs: Math.max(usage.cpuMs, ended.ownMs ?? 0),
    peakMb: usage.peakMb,
    hangs,
  };
}
