import { defineConfig } from 'vitest/config';

/** Rooms that know no state but their arguments: their test files can share a worker, which then loads each module once. */
const PURE = 'quantity,metrology,statistics,plug,instrument,pull,sequence,job,evidence,audit';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: { name: 'pure', include: [`tests/{${PURE}}/**/*.test.ts`], isolate: false },
      },
      {
        extends: true,
        test: {
          name: 'rest',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [`tests/{${PURE}}/**`],
        },
      },
    ],
  },
});
