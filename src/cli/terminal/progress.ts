/** Nobody wonders sooner. */
import { w } from '../../words/catalogue.ts';

const PATIENCE_MS = 1_000;
const EVERY_MS = 100;
const BAR = 30;
const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  readonly at: (done: number) => void;
  readonly end: () => void;
}

/** A bar on the error output for what takes longer than a second, only where somebody can see it. It goes when the work is done. */
export function progress(what: string, total: number): Progress {
  const seen = process.stderr.isTTY === true;
  const startedMs = performance.now();
  let drawnMs: number | null = null;
  return {
    at(done) {
      const nowMs = performance.now();
      const passedMs = nowMs - startedMs;
      if (!seen || done <= 0 || total <= 0 || passedMs < PATIENCE_MS) return;
      if (drawnMs !== null && nowMs - drawnMs < EVERY_MS) return;
      drawnMs = nowMs;
      const share = Math.min(done / total, 1);
      const bar = '#'.repeat(Math.round(share * BAR)).padEnd(BAR, '.');
      const line = w`[${bar}] ${done} of ${total} ${what}, ${left((passedMs * (1 / share - 1)) / 1000)} left`;
      // A line that the terminal breaks is never overwritten.
      process.stderr.write(`${CLEAR_LINE}${line.slice(0, (process.stderr.columns || 80) - 1)}`);
    },
    end() {
      if (drawnMs !== null) process.stderr.write(CLEAR_LINE);
      drawnMs = null;
    },
  };
}

const left = (seconds: number) =>
  seconds < 100 ? `${Math.ceil(seconds)} s` : `${Math.ceil(seconds / 60)} min`;

/** The same for whatever says by itself how much there is. */
export function watched(what: string): (done: number, of: number) => void {
  let bar: Progress | null = null;
  return (done, of) => {
    bar ??= progress(what, of);
    bar.at(done);
    if (done < of) return;
    bar.end();
    bar = null;
  };
}
