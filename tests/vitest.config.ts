import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Their tests leave nothing behind, so they can share a worker, which then loads each module once: half the time. Not ui: colour is chosen when a module is loaded. */
const SHARED =
  'quantity,metrology,statistics,plug,instrument,pull,sequence,job,evidence,audit,pipeline,report,published,db';

/** They need Chromium and Firefox of the machine, and take a third of the time of all others: `npm run test:page`. */
const BROWSERS = 'tests/web/browsers/*.test.ts';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    // Some tests wait for a terminal or for a process of their own: one worker more than there are cores goes on meanwhile.
    maxWorkers: availableParallelism() + 1,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // No test notes a station as used last, and none finds that of another.
    env: { XDG_STATE_HOME: '/dev/null' },
    projects: [
      {
        extends: true,
        test: { name: 'shared', include: [`tests/{${SHARED}}/**/*.test.{ts,tsx}`], isolate: false },
      },
      {
        extends: true,
        test: {
          name: 'isolated',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [`tests/{${SHARED}}/**`, BROWSERS],
        },
      },
      { extends: true, test: { name: 'page', include: [BROWSERS], testTimeout: 180_000 } },
    ],
  },
});
