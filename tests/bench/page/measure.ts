import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { workIn } from '../../audit/shop.ts';
import { textsOf } from '../../web/browsers/browsers.ts';
import { zipOf } from '../../web/browsers/zip-of.ts';
import { demoRecord } from '../evidence/made.ts';
import type { Measurement } from '../measurement.ts';
import { dropped, inPage, mostMegabytes } from './in-page.ts';

const BIN = fileURLToPath(new URL('../../../dist/src/cli/bin.js', import.meta.url));
const GOALS = { firstMs: 1500, warmRatio: 4, megabytes: 500 };
const FIRST_DAY = Date.parse('2026-02-05');

/** The page in Chromium beside Node, in one run: the demo's record for the first time and again, then a package of many jobs. */
export const page: Measurement = {
  name: 'page',
  what: 'the page that verifies, in Chromium beside Node [times=15 jobs=200]',
  run: async ({ number, progress }) => [
    ...(await oneRecord(number('times', 15))),
    ...(await wholePackage(number('jobs', 200), progress)),
  ],
};

async function oneRecord(times: number): Promise<readonly string[]> {
  const { folder, bytes, trust, remove } = demoRecord(1);
  try {
    const record = join(folder, 'demo.record.json');
    writeFileSync(record, bytes);
    return await inPage(join(folder, 'trusted-keys.json'), async (tab) => {
      const inTab: number[] = [];
      const inNode: number[] = [];
      for (let i = 0; i <= times; i++) {
        inTab.push(await dropped(tab, 'files', record));
        inNode.push(timed(() => verifyRecord(bytes, trust)));
      }
      const [first = Number.NaN, ...warm] = inTab;
      const [firstInNode = Number.NaN, ...warmInNode] = inNode;
      const ratio = middle(warm) / middle(warmInNode);
      return [
        `demo record of ${bytes.length} bytes    page in Chromium        Node`,
        `first verdict               ${ms(first)} (goal ${GOALS.firstMs})   ${ms(firstInNode)}`,
        `again, middle of ${times}         ${ms(middle(warm))}               ${ms(middle(warmInNode))}   ratio ${ratio.toFixed(2)} (goal ${GOALS.warmRatio})`,
      ];
    });
  } finally {
    remove();
  }
}

async function wholePackage(
  jobs: number,
  progress: (share: number, note: string) => void,
): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
  try {
    progress(0, `${jobs} jobs are done`);
    const day = (i: number) => new Date(FIRST_DAY + 86_400_000 * i).toISOString().slice(0, 10);
    await workIn(
      folder,
      Array.from({ length: jobs }, (_, i) => ({ job: `J-${i}`, on: day(i), peaks: [27, 27, 26.5, 27.5] })),
    );
    const out = join(folder, 'audit');
    progress(0.3, 'the package is made');
    await makePackage({ station: 'none.json', data: folder, out });
    const trust = join(folder, 'trusted-keys.json');
    const zip = join(folder, 'audit.zip');
    writeFileSync(zip, zipOf(filesBelow(out)));
    progress(0.8, 'the package is verified');
    const [first, again, peakMb, rows] = await inPage(trust, async (tab, browser) => [
      await dropped(tab, 'files', zip),
      await dropped(tab, 'files', zip),
      mostMegabytes(browser),
      (await textsOf(tab, 'tbody tr')).length,
    ]);
    const inNode = timed(() =>
      execFileSync(process.execPath, [BIN, 'verify', out, '--trust', trust], { stdio: 'ignore' }),
    );
    return [
      '',
      `package of ${rows} jobs on ${availableParallelism()} cores`,
      `page in Chromium, papers not compared            ${ms(first)}, again ${ms(again)}`,
      `plugmark verify, a process, papers drawn again   ${ms(inNode)}`,
      `most memory of the page's process                ${peakMb.toFixed(0).padStart(7)} MB (goal ${GOALS.megabytes})`,
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const filesBelow = (folder: string) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({ name: path.slice(folder.length + 1), content: readFileSync(path) }));

function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

const middle = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const ms = (value: number) => `${value.toFixed(0).padStart(7)} ms`;
