import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Their tests leave nothing behind, so they can share a worker, which then loads each module once: half the time. Not ui: colour is chosen when a module is loaded. */
const SHARED =
  'quantity,metrology,statistics,plug,instrument,pull,sequence,job,evidence,audit,package,pipeline,report,published,db,' +
  'attacks,cli,drivers,files,independent,serve,sim';

/** Each puts another module in the place of one that others need as it is. */
const WITH_OTHER_MODULES = [
  'tests/cli/audit/impact.test.ts',
  'tests/cli/audit/out-of-tolerance.test.ts',
  'tests/cli/bench/job-tools.test.ts',
  'tests/cli/evidence/evidence.test.ts',
  'tests/cli/station/lost-log.test.ts',
];

/** They need Chromium and Firefox of the machine, and take a third of the time of all others: `npm run test:page`. */
const BROWSERS = 'tests/web/browsers/*.test.ts';

export default defineConfig({
  // As the build of the page does it.
  define: { PLUGMARK_VERSION: '"0.0.0"' },
  test: {
    root: ROOT,
    // Some tests wait for a terminal or for a process of their own: one worker more than there are cores goes on meanwhile.
    maxWorkers: availableParallelism() + 1,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    env: {
      // No test notes a station as used last, and none finds that of another.
      XDG_STATE_HOME: '/dev/null',
      // The program is started often: what Node compiled of it stays compiled.
      NODE_COMPILE_CACHE: `${ROOT}node_modules/.cache/compiled`,
    },
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          include: [`tests/{${SHARED}}/**/*.test.{ts,tsx}`],
          exclude: WITH_OTHER_MODULES,
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'isolated',
          include: [
            'tests/{archive,golden,house,install,ui,web,words}/**/*.test.{ts,tsx}',
            ...WITH_OTHER_MODULES,
          ],
          exclude: [BROWSERS],
        },
      },
      { extends: true, test: { name: 'page', include: [BROWSERS], testTimeout: 180_000 } },
    ],
  },
});
