/**
 * `npm run mutants -- ROOM [size=60 seed=1 file=NAME all=1]`: small faults put into a room one by one, and whether its tests
 * see them. Sampled by hash, so that the same seed gives the same ones. Ends with 2 where the tool itself failed its check.
 */
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { type Mutant, mutantsOf } from './mutators.ts';
import { tryNamed } from './named.ts';
import { type Trials, trials } from './trials.ts';
import { typeFaults } from './types.ts';

const ROOT = join(import.meta.dirname, '../..');
/** Whose tests are counted: the room's own, and those nearest to it. More could only raise the score, and would take longer. */
const TESTS_OF: Readonly<Record<string, readonly string[]>> = {
  metrology: ['metrology', 'published'],
  instrument: ['instrument', 'job'],
  statistics: ['statistics', 'published'],
  sequence: ['sequence', 'job'],
  pull: ['pull', 'sequence'],
  job: ['job'],
  evidence: ['evidence', 'published'],
};

const filesBelow = (folder: string, form: RegExp): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((name) => form.test(name))
    .sort();

/** Where a mutant comes in the lot. By what it does and not by its line, so that other changes of the file leave it there. */
function lotOf({ file, was, by }: Mutant, nth: number, seed: string): string {
  return createHash('sha256').update([seed, file, was, by, nth].join('\n')).digest('hex');
}

function sampled(mutants: readonly Mutant[], size: number, seed: string): readonly Mutant[] {
  const seen = new Map<string, number>();
  return mutants
    .map((mutant) => {
      const key = [mutant.file, mutant.was, mutant.by].join('\n');
      const nth = seen.get(key) ?? 0;
      seen.set(key, nth + 1);
      return { mutant, lot: lotOf(mutant, nth, seed) };
    })
    .sort((a, b) => (a.lot < b.lot ? -1 : 1))
    .slice(0, size)
    .map(({ mutant }) => mutant);
}

type Fate = 'killed' | 'no-end' | 'types' | 'survived' | 'not-reached';
interface Outcome {
  readonly mutant: Mutant;
  readonly fate: Fate;
  readonly killer: string | null;
}

async function main(): Promise<number> {
  const [room = '', ...given] = process.argv.slice(2);
  const terms = new Map(given.map((pair) => [pair.split('=')[0] ?? '', pair.split('=')[1] ?? '']));
  if (room === 'named') return await named();
  const rooms = TESTS_OF[room];
  if (rooms === undefined) {
    console.log(
      `npm run mutants -- ROOM [size=60 seed=1 file=NAME]\n\nrooms: ${Object.keys(TESTS_OF).join(', ')}; or "named" for the list of known faults`,
    );
    return room === '' ? 0 : 2;
  }
  const only = terms.get('file');
  const files = filesBelow(`src/${room}`, /\.tsx?$/).filter(
    (file) => only === undefined || file.endsWith(only),
  );
  const all = files.flatMap((file) => mutantsOf(file, readFileSync(join(ROOT, file), 'utf8')));
  const sample = sampled(all, Number(terms.get('size') ?? 60), terms.get('seed') ?? '1');
  const tests = rooms.flatMap((one) => filesBelow(`tests/${one}`, /\.test\.tsx?$/));
  console.log(
    `${room}: ${sample.length} of ${all.length} mutants in ${files.length} files; ${tests.length} test files`,
  );
  const folder = mkdtempSync(join(tmpdir(), 'mutants-'));
  const running = trials(ROOT, folder);
  try {
    return await tried(running, { room, files, tests, sample, folder });
  } finally {
    running.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function named(): Promise<number> {
  const running = trials(ROOT, tmpdir());
  try {
    return (await tryNamed(running, ROOT)) ? 0 : 1;
  } finally {
    running.end();
  }
}

interface Work {
  readonly room: string;
  readonly files: readonly string[];
  readonly tests: readonly string[];
  readonly sample: readonly Mutant[];
  readonly folder: string;
}

async function tried(running: Trials, { room, files, tests, sample, folder }: Work): Promise<number> {
  const first = await running.reach(files, tests);
  const broken = first.ran.filter(({ passed }) => !passed).map(({ test }) => test);
  if (broken.length > 0) console.log(`left out, because they fail without any mutant: ${broken.join(', ')}`);
  const reached = reachedIn(folder);
  const msOf = new Map(first.ran.map(({ test, ms }) => [test, ms]));
  /** The room's own tests first, then the quickest. */
  const testsOf = ({ file, inside }: Pick<Mutant, 'file' | 'inside'>): readonly string[] =>
    tests
      .filter((test) => !broken.includes(test) && reached.get(test)?.has(`${file}#${inside ?? 'loaded'}`))
      .map((test) => ({ test, own: test.startsWith(`tests/${room}/`), ms: msOf.get(test) ?? 0 }))
      .sort((a, b) => Number(b.own) - Number(a.own) || a.ms - b.ms)
      .map(({ test }) => test);
  const fault = await checkOfTool(running, sample, testsOf);
  if (fault !== null) {
    console.log(`NO SCORE. ${fault}`);
    return 2;
  }
  const outcomes: Outcome[] = [];
  for (const mutant of sample) {
    const outcome = await outcomeOf(running, mutant, testsOf(mutant), msOf);
    outcomes.push(outcome);
    const alive = outcomes.filter(({ fate }) => fate === 'survived' || fate === 'not-reached').length;
    const stale = outcomes.length % CONTROL_EVERY === 0 ? await control(running, outcome) : null;
    if (stale !== null) {
      console.log(`NO SCORE. ${stale}`);
      return 2;
    }
    console.log(`${String(outcomes.length).padStart(4)}/${sample.length} ${alive} alive  ${lineOf(outcome)}`);
  }
  const typed = typeFaults(
    ROOT,
    outcomes.filter(({ fate }) => fate !== 'killed' && fate !== 'no-end').map(({ mutant }) => mutant),
  );
  print(
    room,
    outcomes.map((one) => (typed.has(one.mutant) ? { ...one, fate: 'types' as const } : one)),
  );
  return 0;
}

/** So often the tests that saw a mutant must pass again without it. */
const CONTROL_EVERY = 8;

/** What saw a mutant must pass when the mutant is gone: else what was seen was something else. */
async function control(running: Trials, { mutant: { file }, killer }: Outcome): Promise<string | null> {
  const test = killer?.split(': ')[0];
  if (test === undefined || !test.startsWith('tests/')) return null;
  const answer = await running.try({ file, start: 0, end: 0, by: '' }, [test], 120_000);
  if (answer !== 'no-end' && answer.killer === null) return null;
  return `${test} fails without any mutant too: ${answer === 'no-end' ? 'no end' : answer.killer}`;
}

/** A module that throws when it is loaded must be seen, and one that is left as it is must not. */
async function checkOfTool(
  running: Trials,
  sample: readonly Mutant[],
  testsOf: (mutant: Pick<Mutant, 'file' | 'inside'>) => readonly string[],
): Promise<string | null> {
  for (const file of new Set(sample.map((mutant) => mutant.file))) {
    const tests = testsOf({ file, inside: null }).slice(0, 2);
    if (tests.length === 0) continue;
    const whole = await running.try({ file, start: 0, end: 0, by: '' }, tests, 120_000);
    if (whole === 'no-end' || whole.killer !== null)
      return `${file} as it is was taken for a fault: ${whole === 'no-end' ? 'no end' : whole.killer}`;
    const bad = await running.try(
      { file, start: 0, end: 0, by: "throw new Error('must be seen');\n" },
      tests,
      120_000,
    );
    if (bad === 'no-end' || bad.killer === null)
      return `${file} throws when it is loaded, and no test saw it.`;
    const again = await running.try({ file, start: 0, end: 0, by: '' }, tests, 120_000);
    if (again === 'no-end' || again.killer !== null) return `${file} stayed broken behind a mutant.`;
    console.log(`check of the tool: ${file} as it is passes, and broken on purpose is seen by ${bad.killer}`);
    return null;
  }
  return 'No test reaches any of these files.';
}

async function outcomeOf(
  running: Trials,
  mutant: Mutant,
  tests: readonly string[],
  msOf: ReadonlyMap<string, number>,
): Promise<Outcome> {
  if (tests.length === 0) return { mutant, fate: 'not-reached', killer: null };
  const usualMs = tests.reduce((sum, test) => sum + (msOf.get(test) ?? 0), 0);
  let mostMs = 30_000 + 3 * usualMs;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const answer = await running.try(mutant, tests, mostMs);
    if (answer !== 'no-end' && !answer.timedOut)
      return { mutant, fate: answer.killer === null ? 'survived' : 'killed', killer: answer.killer };
    const wholeMs = await unharmedMs(running, mutant.file, tests, mostMs);
    if (wholeMs !== null && ROOM * wholeMs <= mostMs)
      return { mutant, fate: 'no-end', killer: `it does not end in ${mostMs} ms; unharmed: ${wholeMs} ms` };
    mostMs *= 2;
  }
  throw new Error(`the machine is too busy: ${tests.join(', ')} take too long without any mutant`);
}

/** A mutant that does not end counts where the same tests, at once behind it and without it, take this many times less. */
const ROOM = 2;
const MOST_TRIES = 4;

/** How long the tests take now with nothing changed; null where they do not end or not pass in time. */
async function unharmedMs(
  running: Trials,
  file: string,
  tests: readonly string[],
  mostMs: number,
): Promise<number | null> {
  const from = performance.now();
  const answer = await running.try({ file, start: 0, end: 0, by: '' }, tests, mostMs);
  return answer === 'no-end' || answer.killer !== null ? null : Math.round(performance.now() - from);
}

function reachedIn(folder: string): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map(
    readdirSync(folder).map((name) => {
      const { test, reached } = JSON.parse(readFileSync(join(folder, name), 'utf8'));
      return [relative(ROOT, test), new Set<string>(reached)] as const;
    }),
  );
}

const oneLine = (text: string, most: number): string => {
  const flat = text.replace(/\s+/g, ' ').trim();
  return flat.length > most ? `${flat.slice(0, most - 1)}…` : flat;
};

const lineOf = ({ mutant: { file, line, was, by }, fate, killer }: Outcome): string =>
  `${fate.padEnd(11)} ${file}:${line}  ${oneLine(was, 60)}  ->  ${oneLine(by, 40)}${killer === null ? '' : `   | ${oneLine(killer, 110)}`}`;

function print(room: string, outcomes: readonly Outcome[]): void {
  const count = (...fates: readonly Fate[]) => outcomes.filter(({ fate }) => fates.includes(fate)).length;
  const files = [...new Set(outcomes.map(({ mutant }) => mutant.file))].sort();
  console.log('\n| file | tried | seen | alive |\n| --- | --- | --- | --- |');
  for (const file of files) {
    const here = outcomes.filter(({ mutant }) => mutant.file === file);
    const alive = here.filter(({ fate }) => fate === 'survived' || fate === 'not-reached').length;
    console.log(`| ${file} | ${here.length} | ${here.length - alive} | ${alive} |`);
  }
  console.log('\nAlive:');
  for (const one of outcomes)
    if (one.fate === 'survived' || one.fate === 'not-reached') console.log(lineOf(one));
  const seen = count('killed', 'no-end', 'types');
  console.log(
    `\n${room}: ${((100 * seen) / outcomes.length).toFixed(0)} % of ${outcomes.length} seen: ${count('killed')} by a test, ` +
      `${count('no-end')} by not ending, ${count('types')} by the types; ${count('survived')} alive, ${count('not-reached')} reached by no test`,
  );
}

process.exitCode = await main();
