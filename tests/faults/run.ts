/**
 * `npm run faults [-- PART… size=short|whole seed=1 minutes=60 cases=N]`: tries to make the program break its promise, and prints
 * a table. Every case follows from the seed and its number. What was done is kept below `build/`, so that a campaign that was
 * broken off goes on where it stood; `anew=1` starts again. Ends with 1 where anything was found.
 */
import { appendFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { Random } from '../../sim/random.ts';
import { clocks } from './clocks.ts';
import { concurrency } from './concurrency.ts';
import { fullDisk } from './full-disk.ts';
import { kills } from './kills.ts';
import { mutation } from './mutation.ts';
import type { Outcome, Part } from './part.ts';
import { power } from './power.ts';
import { radio } from './radio.ts';
import { trials } from './trials.ts';

const PARTS: readonly Part[] = [kills, power, fullDisk, clocks, concurrency, mutation, radio, trials];

const words = process.argv.slice(2);
const terms = new Map(
  words.filter((word) => word.includes('=')).map((word) => [word.split('=')[0], word.split('=')[1]]),
);
const number = (name: string, otherwise: number) => Number(terms.get(name) ?? otherwise);
const wanted = words.filter((word) => !word.includes('='));
const unknown = wanted.filter((name) => PARTS.every((part) => part.name !== name));
if (unknown.length > 0) {
  console.error(`no such part: ${unknown.join(', ')}. Parts: ${PARTS.map(({ name }) => name).join(', ')}`);
  process.exit(2);
}
const seed = number('seed', 1);
const short = terms.get('size') === 'short';
const untilMs = performance.now() + 60_000 * number('minutes', 60);

const doneSchema = z.object({
  part: z.string(),
  number: z.int(),
  faults: z.array(z.string()),
  counted: z.record(z.string(), z.number()).optional(),
  peakMb: z.number().optional(),
  skipped: z.string().optional(),
});
type Done = z.infer<typeof doneSchema>;

mkdirSync('build', { recursive: true });
const file = join('build', `faults-${seed}.jsonl`);
if (terms.get('anew') === '1') rmSync(file, { force: true });
const done: Done[] = existsSync(file)
  ? readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line.endsWith('}'))
      .map((line) => doneSchema.parse(JSON.parse(line)))
  : [];

const notes: string[] = [];

async function runPart(part: Part): Promise<void> {
  const count = Math.min(number('cases', Number.POSITIVE_INFINITY), short ? part.short : part.cases);
  const before = new Set(done.flatMap((one) => (one.part === part.name ? [one.number] : [])));
  const numbers = Array.from({ length: count }, (_, i) => i).filter((i) => !before.has(i));
  if (numbers.length === 0) return;
  const folder = mkdtempSync(join(tmpdir(), `plugmark-faults-${part.name}-`));
  try {
    const { one, end, notes: ofPart = [] } = await part.prepare(folder);
    notes.push(...ofPart.map((note) => `${part.name}: ${note}`));
    let tried = 0;
    for (const i of numbers) {
      if (performance.now() > untilMs) break;
      const own = join(folder, String(i));
      mkdirSync(own);
      const outcome = await one(i, new Random(`${seed} ${part.name} ${i}`), own).catch(thrown);
      keep({ part: part.name, number: i, ...copied(outcome) });
      for (const fault of outcome.faults) console.error(`\n${part.name} ${i} (${own}): ${fault}`);
      if (outcome.faults.length === 0 || terms.get('keep') !== '1')
        rmSync(own, { recursive: true, force: true });
      progress(part.name, ++tried, numbers.length);
    }
    end?.();
  } finally {
    if (terms.get('keep') !== '1') rmSync(folder, { recursive: true, force: true });
  }
}

const thrown = (cause: unknown): Outcome => ({
  faults: [`the case itself failed: ${cause instanceof Error ? cause.stack : String(cause)}`],
});

const copied = ({ faults, ...rest }: Outcome) => ({ ...rest, faults: [...faults] });

function keep(one: Done): void {
  done.push(one);
  appendFileSync(file, `${JSON.stringify(one)}\n`);
}

function progress(name: string, tried: number, of: number): void {
  if (process.stderr.isTTY) process.stderr.write(`\r${name}: ${tried} of ${of}\u001b[K`);
  else if (tried === of || tried % Math.ceil(of / 4) === 0) console.error(`${name}: ${tried} of ${of}`);
}

for (const part of PARTS.filter(({ name }) => wanted.length === 0 || wanted.includes(name)))
  await runPart(part);

console.log(
  `\n${'part'.padEnd(12)} ${'tried'.padStart(6)} ${'faults'.padStart(6)} ${'skipped'.padStart(7)} ${'peak MB'.padStart(7)}  counted`,
);
for (const { name, what } of PARTS) {
  const rows = done.filter(({ part }) => part === name);
  if (rows.length === 0) continue;
  const counted = new Map<string, number>();
  for (const row of rows)
    for (const [key, value] of Object.entries(row.counted ?? {})) {
      const sum = key.startsWith('longest')
        ? Math.max(counted.get(key) ?? 0, value)
        : (counted.get(key) ?? 0) + value;
      counted.set(key, Math.round(sum));
    }
  const skipped = rows.filter((row) => row.skipped !== undefined);
  const faults = rows.filter((row) => row.faults.length > 0).length;
  const peak = Math.max(0, ...rows.map((row) => row.peakMb ?? 0));
  const figures = [...counted].map(([key, value]) => `${value} ${key}`).join(', ');
  console.log(
    `${name.padEnd(12)} ${String(rows.length - skipped.length).padStart(6)} ${String(faults).padStart(6)} ${String(skipped.length).padStart(7)} ${String(Math.round(peak)).padStart(7)}  ${what}${figures === '' ? '' : `: ${figures}`}`,
  );
  for (const why of new Set(skipped.map((row) => row.skipped)))
    console.log(`${' '.repeat(13)}not tried: ${why}`);
}
if (notes.length > 0) console.log(`\n${notes.join('\n')}`);
process.exitCode = done.some(({ faults }) => faults.length > 0) ? 1 : 0;
