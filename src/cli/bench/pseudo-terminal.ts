import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import type { Port } from '../../../sim/serve/player.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

/** In an address of socat other characters begin options, or another address, which may be a command: a scenario comes from anybody. */
const PLAIN_PATH = /^[\p{L}\p{N} ./_~@+=-]+$/u;

/** A pseudo-terminal of socat: Node makes none by itself. */
export function pseudoTerminal(path: string): Port & { readonly close: () => void } {
  let socat: ChildProcess | null = null;
  let listener: (bytes: Uint8Array) => void = () => {};
  const unplug = async () => {
    const running = socat;
    socat = null;
    if (running === null) return;
    const gone = new Promise((done) => running.once('exit', done));
    running.kill();
    await gone;
    rmSync(path, { force: true });
  };
  return {
    send: (bytes) => void socat?.stdin?.write(bytes),
    heard(hear) {
      listener = hear;
    },
    unplug,
    async plug() {
      if (!PLAIN_PATH.test(path)) throw new ProblemError(notPlain(path));
      if (existsSync(path)) throw new ProblemError(taken(path));
      const started = spawn('socat', [`PTY,link=${path},raw,echo=0`, 'STDIO'], {
        stdio: ['pipe', 'pipe', 'ignore'],
      });
      const failed = new Promise<never>((_, reject) => {
        started.once('error', () => reject(new ProblemError(noSocat())));
        started.once('exit', () => reject(new ProblemError(noPort(path))));
      });
      failed.catch(() => {});
      started.stdin.on('error', () => {});
      started.stdout.on('data', (bytes: Buffer) => listener(bytes));
      while (!existsSync(path)) await Promise.race([failed, new Promise((later) => setTimeout(later, 20))]);
      socat = started;
    },
    close: () => {
      socat?.kill();
      socat = null;
      rmSync(path, { force: true });
    },
  };
}

const taken = (where: string): Problem => ({
  code: 'file-exists',
  where,
  message: w`something lies here already, and is not overwritten by a pseudo-terminal`,
  next: w`Name another port in the scenario, or remove it.`,
});

const notPlain = (where: string): Problem => ({
  code: 'port-failed',
  where,
  message: w`this is no plain name for a pseudo-terminal`,
  next: w`Name a port with letters, digits, dots, dashes and slashes alone, such as /tmp/wrench.`,
});

const noPort = (where: string): Problem => ({
  code: 'port-failed',
  where,
  message: w`no pseudo-terminal can be made here`,
  next: w`Name a port in a folder that you may write to, such as /tmp.`,
});

const noSocat = (): Problem => ({
  code: 'port-failed',
  where: 'socat',
  message: w`socat is not installed; it makes the pseudo-terminals`,
  next: w`Install it: apt-get install socat.`,
});
