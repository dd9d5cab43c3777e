import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Their tests leave nothing behind, so they can share a worker, which then loads each module once: half the time. Not ui: colour is chosen when a module is loaded. */
const SHARED = new Set(
  'quantity,metrology,statistics,plug,instrument,pull,sequence,job,evidence,audit,package,pipeline,report,published,db,attacks,cli,drivers,files,independent,serve,sim'.split(
    ',',
  ),
);

/** They ask what is loaded, or leave it behind; whatever puts another module in the place of one (`vi.mock`) is found by itself. */
const BY_THEMSELVES = [
  'tests/cli/evidence/evidence.test.ts',
  'tests/cli/station/lost-log.test.ts',
  'tests/drivers/open-tools.test.ts',
];
const FILES = readdirSync(new URL('.', import.meta.url), { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.test\.tsx?$/.test(name))
  .map((name) => `tests/${name}`);
const sharing = FILES.filter(
  (file) =>
    SHARED.has(file.split('/')[1] ?? '') &&
    !BY_THEMSELVES.includes(file) &&
    !/\bvi\.(do)?mock\(/i.test(readFileSync(join(ROOT, file), 'utf8')),
);

/** They wait for terminals, clocks and programs of their own: at best one of them at a time, beside others that work. */
const WAITING =
  /tests\/(cli\/bench\/(tmux|demo|kill|several-people|witnessed-job)|cli\/station\/start-screen|independent\/agree)\.test\.ts$/;

class WaitingApart extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const waits = ({ moduleId }: TestSpecification) => WAITING.test(moduleId);
    const waiting = sorted.filter(waits);
    const order = sorted.filter((file) => !waits(file));
    const apart = Math.ceil(order.length / (waiting.length + 1));
    for (const [i, file] of waiting.entries()) order.splice(i * (apart + 1), 0, file);
    return order;
  }
}

/** They need Chromium and Firefox of the machine, and take a third of the time of all others: `npm run test:page`. */
const BROWSERS = 'tests/web/browsers/*.test.ts';

export default defineConfig({
  // As the build of the page does it.
  define: { PLUGMARK_VERSION: '"0.0.0"' },
  test: {
    root: ROOT,
    // Some tests wait for a terminal or for a process of their own: one worker more than there are cores goes on meanwhile.
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: WaitingApart },
    // Nothing is judged by them: a busy machine takes several times as long as an idle one.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    env: {
      // No test notes a station as used last, and none finds that of another.
      XDG_STATE_HOME: '/dev/null',
      // The program is started often: what Node compiled of it stays compiled.
      NODE_COMPILE_CACHE: `${ROOT}node_modules/.cache/compiled`,
    },
    projects: [
      { extends: true, test: { name: 'shared', include: sharing, isolate: false } },
      {
        extends: true,
        test: {
          name: 'isolated',
          include: FILES.filter((file) => !sharing.includes(file)),
          exclude: [BROWSERS],
        },
      },
      { extends: true, test: { name: 'page', include: [BROWSERS], testTimeout: 180_000 } },
    ],
  },
});
