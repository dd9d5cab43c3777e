import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Measurement } from './measurement.ts';

const BIN = fileURLToPath(new URL('../../dist/src/cli/bin.js', import.meta.url));

/** How long `plugmark --help` takes against the bare start of Node, both as whole processes. */
export const startup: Measurement = {
  name: 'startup',
  what: 'plugmark --help against node -e 0, whole processes (runs=40)',
  run: ({ number, progress }) => {
    const runs = number('runs', 40);
    const times = { node: [] as number[], help: [] as number[] };
    for (let i = 0; i < runs; i++) {
      times.node.push(timed(['-e', '0']));
      times.help.push(timed([BIN, '--help']));
      progress((i + 1) / runs, `${i + 1} of ${runs}`);
    }
    const [node, help] = [median(times.node), median(times.help)];
    return Promise.resolve([
      `node -e 0         ${node.toFixed(1)} ms (median of ${runs})`,
      `plugmark --help   ${help.toFixed(1)} ms`,
      `ratio             ${(help / node).toFixed(2)} (goal: at most 3)`,
    ]);
  },
};

function timed(args: readonly string[]): number {
  const start = process.hrtime.bigint();
  execFileSync(process.execPath, args, { stdio: 'ignore' });
  return Number(process.hrtime.bigint() - start) / 1e6;
}

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
