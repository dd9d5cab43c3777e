/**
 * A process that tries mutants, so that one which never ends can be ended with it. The tests read the mutated text where
 * they would read the file; no file is ever written, so that neither the tree nor what it shares with others can be spoilt.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createVitest, type TestModule, type TestRunResult, type Vitest } from 'vitest/node';
import { edited, type Mutant, marked } from './mutators.ts';

/** What the process is asked for. */
export type Request =
  | { readonly ask: 'reach'; readonly files: readonly string[]; readonly tests: readonly string[] }
  | {
      readonly ask: 'try';
      readonly mutant: Pick<Mutant, 'file' | 'start' | 'end' | 'by'>;
      readonly tests: readonly string[];
    };

export interface Ran {
  readonly test: string;
  readonly passed: boolean;
  readonly ms: number;
}
/** `killer` is the first test that failed, null for none; `timedOut`: by its time limit and by nothing it expects. */
export interface Answer {
  readonly ran: readonly Ran[];
  readonly killer: string | null;
  readonly timedOut: boolean;
}

const ROOT = join(import.meta.dirname, '../..');

/** In the order in which they are asked for: the nearest and quickest first. */
class AsGiven {
  sort<T>(files: T): T {
    return files;
  }
  shard<T>(files: T): T {
    return files;
  }
}

/** The texts that are read in place of files. */
const instead = new Map<string, string>();

function start(more: { readonly bail: number; readonly setupFiles: string[] }): Promise<Vitest> {
  return createVitest(
    'test',
    {
      config: false,
      root: ROOT,
      watch: false,
      include: ['tests/**/*.test.{ts,tsx}'],
      // A worker that lived on would keep the modules of the mutant before; a thread is started sooner than a process.
      isolate: true,
      pool: 'threads',
      maxWorkers: 1,
      fsModuleCache: false,
      fileParallelism: false,
      sequence: { sequencer: AsGiven },
      reporters: [{}],
      testTimeout: 60_000,
      hookTimeout: 60_000,
      ...more,
    },
    {
      plugins: [
        {
          name: 'instead',
          enforce: 'pre',
          load: (id: string) => instead.get(id.split('?')[0] ?? id) ?? null,
        },
      ],
    },
  );
}

async function run(vitest: Vitest, tests: readonly string[]): Promise<Answer> {
  const paths = new Set(tests.map((test) => join(ROOT, test)));
  const all = await vitest.globTestSpecifications([...tests]);
  const order = [...paths];
  const wanted = all
    .filter(({ moduleId }) => paths.has(moduleId))
    .sort((a, b) => order.indexOf(a.moduleId) - order.indexOf(b.moduleId));
  // What failed in the runs before would count, and end this one before it began.
  for (const kept of [vitest.state.filesMap, vitest.state.idMap, vitest.state.errorsSet]) kept.clear();
  return answerOf(await vitest.runTestSpecifications(wanted));
}

function answerOf({ testModules, unhandledErrors }: TestRunResult): Answer {
  const ran = testModules
    .filter((one) => one.state() !== 'skipped' && one.state() !== 'queued')
    .map((one) => ({ test: one.relativeModuleId, passed: one.ok(), ms: msOf(one) }));
  const failed = testModules.find((one) => one.state() === 'failed');
  const killer = failed === undefined ? null : `${failed.relativeModuleId}: ${failureOf(failed)}`;
  return {
    ran,
    killer: killer ?? (unhandledErrors.length > 0 ? 'an error outside of all tests' : null),
    timedOut: failed !== undefined && timedOut(failed),
  };
}

/** A busy machine does that to a sound test too. */
function timedOut(module: TestModule): boolean {
  const [test] = module.children.allTests('failed');
  const errors = test?.result().errors ?? module.errors();
  return errors.some(({ message }) => /^(Test|Hook) timed out in /.test(message));
}

const msOf = (one: TestModule): number => {
  const { collectDuration, duration } = one.diagnostic();
  return collectDuration + duration;
};

function failureOf(module: TestModule): string {
  for (const test of module.children.allTests('failed')) return test.fullName;
  return module.errors()[0]?.message.split('\n')[0] ?? 'it could not be loaded';
}

let quick: Promise<Vitest> | null = null;
/** The file of the mutant before: whatever was read of it since is forgotten before the next one. */
let before: string | null = null;

async function answer(request: Request): Promise<Answer> {
  instead.clear();
  if (request.ask === 'reach') {
    for (const file of request.files) {
      const path = join(ROOT, file);
      instead.set(path, marked(file, readFileSync(path, 'utf8')));
    }
    const setupFiles = [join(import.meta.dirname, 'reached.ts')];
    const vitest = await start({ bail: 0, setupFiles });
    const answered = await run(vitest, request.tests);
    await vitest.close();
    return answered;
  }
  const { mutant, tests } = request;
  const path = join(ROOT, mutant.file);
  instead.set(path, edited(readFileSync(path, 'utf8'), mutant));
  quick ??= start({ bail: 1, setupFiles: [] });
  const vitest = await quick;
  for (const stale of [path, before]) if (stale !== null) vitest.invalidateFile(stale);
  before = path;
  return await run(vitest, tests);
}

process.on('message', (request: Request) => {
  answer(request).then(
    (answered) => process.send?.(answered),
    (error: unknown) => {
      console.error(error);
      process.exit(70);
    },
  );
});
