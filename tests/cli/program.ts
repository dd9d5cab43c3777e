import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const BIN = fileURLToPath(new URL('../../dist/src/cli/bin.js', import.meta.url));

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
  readonly output: () => string;
  /** Resolves when the output holds the text. */
  readonly says: (text: string) => Promise<void>;
  readonly type: (line: string) => void;
}

/** Starts the built program, as a user would; it is ended with its test at the latest. */
export function start(args: readonly string[], options: { readonly cwd?: string } = {}): Running {
  const running = launched(args, options);
  onTestFinished(() => void running.child.kill('SIGKILL'));
  return running;
}

function launched(args: readonly string[], options: { readonly cwd?: string }): Running {
  const child = spawn(process.execPath, [BIN, ...args], {
    cwd: options.cwd,
    env: { ...process.env, LANG: 'C.UTF-8', NODE_ENV: 'production' },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let stdout = '';
  let stderr = '';
  const waiting: (() => void)[] = [];
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    stdout += text;
    for (const look of [...waiting]) look();
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    stderr += text;
  });
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code, signal) => resolve({ code, signal, stdout, stderr }));
  });
  return {
    child,
    ended,
    output: () => stdout,
    says: (text) =>
      new Promise((resolve, reject) => {
        const look = () => {
          if (!stdout.includes(text)) return;
          waiting.splice(waiting.indexOf(look), 1);
          resolve();
        };
        waiting.push(look);
        void ended.then(() => reject(new Error(`ended without saying "${text}":\n${stdout}${stderr}`)));
        look();
      }),
    type: (line) => void child.stdin.write(`${line}\n`),
  };
}

/** Runs the built program to its end. */
export const run = (args: readonly string[], options: { readonly cwd?: string } = {}): Promise<Ended> => {
  const running = launched(args, options);
  running.child.stdin?.end();
  return running.ended;
};

/** A folder that goes with its test. */
export function folder(): string {
  const path = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

export const example = (name: string) => fileURLToPath(new URL(`../../sim/example/${name}`, import.meta.url));
export const exampleJson = (name: string) => JSON.parse(readFileSync(example(name), 'utf8'));
