import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseTrustList, type TrustList } from '../../../src/evidence/trust.ts';
import { orThrow } from '../../../src/result.ts';

/** A record as the program itself makes it: the demo's V8 with 100 Hz traces, in a folder of its own. */
export interface Made {
  readonly folder: string;
  readonly bytes: Buffer;
  readonly trust: TrustList;
  readonly remove: () => void;
}

export function demoRecord(seed: number): Made {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
  const args = [
    '--import',
    'tsx',
    'src/cli/bin.ts',
    'demo',
    '--fast',
    '--direct',
    '--seed',
    String(seed),
    '--out',
    folder,
  ];
  try {
    execFileSync(process.execPath, args, { stdio: ['ignore', 'ignore', 'inherit'] });
  } catch {
    // A job that was left incomplete is a record too.
  }
  const name = readdirSync(folder).find((one) => one.endsWith('.record.json'));
  if (name === undefined) throw new Error('the demo left no record');
  const trusted = join(folder, 'trusted-keys.json');
  return {
    folder,
    bytes: readFileSync(join(folder, name)),
    trust: orThrow(parseTrustList(readFileSync(trusted), trusted)),
    remove: () => rmSync(folder, { recursive: true }),
  };
}

/** Processor time of one call in milliseconds, after some calls that do not count. */
export function cpuMs(work: () => unknown, calls: number): number {
  for (let i = 0; i < calls / 5; i++) work();
  return timed(work, calls);
}

function timed(work: () => unknown, calls: number): number {
  const before = process.cpuUsage();
  for (let i = 0; i < calls; i++) work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000 / calls;
}

export interface Compared {
  /** Processor time of one call in milliseconds, the middle of all rounds. */
  readonly oneMs: number;
  readonly otherMs: number;
  /** The other over the one: lower quartile, middle and upper quartile of all rounds. */
  readonly ratio: readonly [number, number, number];
}

/** Two works in turn, round for round, so that whatever else the machine does falls on both alike. */
export function compared(one: () => unknown, other: () => unknown, calls: number): Compared {
  const ROUNDS = 25;
  const each = Math.ceil(calls / ROUNDS);
  cpuMs(one, each);
  cpuMs(other, each);
  const rounds = Array.from({ length: ROUNDS }, () => [timed(one, each), timed(other, each)] as const);
  const ratios = rounds.map(([a, b]) => b / a);
  return {
    oneMs: quantile(
      rounds.map(([a]) => a),
      0.5,
    ),
    otherMs: quantile(
      rounds.map(([, b]) => b),
      0.5,
    ),
    ratio: [quantile(ratios, 0.25), quantile(ratios, 0.5), quantile(ratios, 0.75)],
  };
}

function quantile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
}
