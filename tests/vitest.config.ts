import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

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
/** Whole programs at a terminal, in shells, stopped in the middle, or made from a copy of the sources: they mostly wait. `npm run test:programs`. */
const WHOLE_PROGRAMS = [
  ...['demo', 'kill', 'several-people', 'tmux', 'witnessed-job'].map((name) => `cli/bench/${name}`),
  ...['start-screen', 'teach-live'].map((name) => `cli/station/${name}`),
  ...['cli/help/completion', 'golden/editions', 'ui/signal'],
].map((name) => `tests/${name}.test.ts`);

const FILES = readdirSync(new URL('.', import.meta.url), { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.test\.tsx?$/.test(name))
  .map((name) => `tests/${name}`);
const sharing = FILES.filter(
  (file) =>
    SHARED.has(file.split('/')[1] ?? '') &&
    !WHOLE_PROGRAMS.includes(file) &&
    !BY_THEMSELVES.includes(file) &&
    !/\bvi\.(do)?mock\(/i.test(readFileSync(join(ROOT, file), 'utf8')),
);

/** They need Chromium and Firefox of the machine, and take a third of the time of all others: `npm run test:page`. */
const BROWSERS = 'tests/web/browsers/*.test.ts';

export default defineConfig({
  // As the build of the page does it.
  define: { PLUGMARK_VERSION: '"0.0.0"' },
  test: {
    root: ROOT,
    // Some tests wait for a terminal or for a process of their own: one worker more than there are cores goes on meanwhile.
    maxWorkers: availableParallelism() + 1,
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
          exclude: [BROWSERS, ...WHOLE_PROGRAMS],
        },
      },
      { extends: true, test: { name: 'programs', include: WHOLE_PROGRAMS } },
      { extends: true, test: { name: 'page', include: [BROWSERS] } },
    ],
  },
});
