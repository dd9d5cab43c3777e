/** So few are done before anybody wonders. */
const FEW = 20;
const EVERY_MS = 100;

export interface Progress {
  readonly at: (done: number) => void;
  readonly end: () => void;
}

/** A bar on the error output for what takes longer than a moment, drawn only where somebody can see it. */
export function progress(what: string, total: number): Progress {
  const seen = process.stderr.isTTY === true && total > FEW;
  const started = performance.now();
  let shown: number | null = null;
  return {
    at(done) {
      const now = performance.now();
      if (!seen || done === 0 || (shown !== null && now - shown < EVERY_MS && done < total)) return;
      shown = now;
      const share = done / total;
      const left = Math.round(((now - started) / 1000) * (1 / share - 1));
      const bar = '#'.repeat(Math.round(share * 30)).padEnd(30, '.');
      process.stderr.write(`\r[${bar}] ${done} of ${total} ${what}, ${left} s left `);
    },
    end() {
      if (shown !== null) process.stderr.write('\n');
    },
  };
}
