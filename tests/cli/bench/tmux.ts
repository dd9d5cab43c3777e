import { spawnSync } from 'node:child_process';
import { appendFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import { folder } from '../program.ts';

const BIN = fileURLToPath(new URL('../../../dist/src/cli/bin.js', import.meta.url));
const POLL_MS = 100;
const PATIENCE_MS = 20_000;

const tmux = (socket: string, ...args: readonly string[]) =>
  spawnSync('tmux', ['-L', socket, '-f', '/dev/null', ...args], { encoding: 'utf8' });

/** Null where tmux is there; else the line to skip with. */
export const whyNoTmux: string | null =
  spawnSync('tmux', ['-V']).status === 0 ? null : 'SKIPPED: tmux is not installed; the screen was not driven';

/** A window of a terminal of its own. */
export interface Shown {
  /** What stands in the window now. */
  readonly screen: () => string;
  /** Waits until the window shows it; throws with what it shows instead. */
  readonly shows: (wanted: string | RegExp) => Promise<string>;
  /** Presses keys by their tmux names. */
  readonly press: (...keys: readonly string[]) => void;
  /** Types text as it is. */
  readonly type: (text: string) => void;
  readonly resize: (columns: number, rows: number) => void;
  /** Keys pressed so far, each typed character one. */
  readonly keys: () => number;
}

export interface Driven extends Shown {
  /** Tells the simulated hands what to do. */
  readonly hands: (...lines: readonly string[]) => void;
  readonly out: string;
}

/** The demo in a real terminal of its own: every key is the test's, and the hands do what they are told. */
export function driven(columns = 80, rows = 24): Driven {
  const out = folder();
  const script = join(out, 'hands.txt');
  writeFileSync(script, '');
  const demo = ['demo', '--direct', '--speed', '10', '--moves', script, '--out', out];
  return {
    ...inTerminal(demo, { columns, rows }),
    hands: (...lines) => appendFileSync(script, `${lines.join('\n')}\n`),
    out,
  };
}

/** The program as built, in a real terminal; what it leaves stays shown. */
export function inTerminal(
  args: readonly string[],
  { columns = 80, rows = 24, cwd = '.' }: { columns?: number; rows?: number; cwd?: string },
): Shown {
  const socket = `plugmark-test-${process.pid}-${Math.random().toString(36).slice(2)}`;
  const quoted = [process.execPath, BIN, ...args].map((word) => `'${word}'`).join(' ');
  const command = `cd '${cwd}'; env -u CI -u CONTINUOUS_INTEGRATION LANG=C.UTF-8 ${quoted}; exec cat`;
  const started = tmux(
    socket,
    'new-session',
    '-d',
    '-s',
    's',
    '-x',
    String(columns),
    '-y',
    String(rows),
    command,
  );
  if (started.status !== 0) throw new Error(`tmux: ${started.stderr}`);
  onTestFinished(() => void tmux(socket, 'kill-server'));
  let keys = 0;
  const screen = () => tmux(socket, 'capture-pane', '-p', '-t', 's').stdout;
  return {
    screen,
    async shows(wanted) {
      const until = performance.now() + PATIENCE_MS;
      for (;;) {
        const shown = screen();
        if (typeof wanted === 'string' ? shown.includes(wanted) : wanted.test(shown)) return shown;
        if (performance.now() > until) throw new Error(`the window does not show ${wanted}, but:\n${shown}`);
        await new Promise((resolve) => setTimeout(resolve, POLL_MS));
      }
    },
    press(...names) {
      keys += names.length;
      tmux(socket, 'send-keys', '-t', 's', ...names);
    },
    type(text) {
      keys += [...text].length;
      tmux(socket, 'send-keys', '-t', 's', '-l', text);
    },
    resize: (x, y) => void tmux(socket, 'resize-window', '-t', 's', '-x', String(x), '-y', String(y)),
    keys: () => keys,
  };
}
