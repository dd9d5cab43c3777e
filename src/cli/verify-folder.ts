import { readdir } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { z } from 'zod';
import type { TrustList } from '../evidence/trust.ts';
import { EXIT_CODES, type Verdict } from '../evidence/verify.ts';
import { ProblemError } from '../problem.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { jsonText } from './json-text.ts';
import { type Finding, findingOf } from './verify-finding.ts';

const SUFFIX = '.record.json';
/** Enough work for a thread to be worth a message, little enough for the bar to move. */
const BATCH = 16;

/**
 * Checks every record in a folder and below it, on all cores; one line for each that is not authentic, a bar on the way,
 * and the counts. The exit code is the gravest of any file.
 */
export async function verifyFolder(
  folder: string,
  options: { readonly trust: TrustList; readonly json?: true },
): Promise<ExitCode> {
  const names = await readdir(folder, { recursive: true });
  const files = names
    .filter((name) => name.endsWith(SUFFIX))
    .sort()
    .map((name) => join(folder, name));
  if (files.length === 0) throw new ProblemError(noRecords(folder));
  const findings: Finding[] = [];
  const bar = progress(files.length);
  await spread(files, options.trust, (some) => {
    findings.push(...some);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort((a, b) => (a.file < b.file ? -1 : 1));
  process.stdout.write(options.json === true ? jsonText(findings) : linesOf(findings));
  return gravest(findings);
}

function linesOf(findings: readonly Finding[]): string {
  const bad = findings.filter(({ verdict }) => verdict !== 'authentic');
  const count = (wanted: Verdict) => findings.filter(({ verdict }) => verdict === wanted).length;
  const lines = bad.map(
    ({ file, verdict, fault }) => `${verdict.toUpperCase()} ${safeLine(file)}: ${safeLine(fault ?? '')}`,
  );
  const counts = (['authentic', 'rejected', 'unreadable', 'untrusted'] as const).map(
    (verdict) => `${count(verdict)} ${verdict}`,
  );
  return `${[...lines, `${findings.length} records: ${counts.join(', ')}`].join('\n')}\n`;
}

const GRAVITY: readonly Verdict[] = ['rejected', 'unreadable', 'untrusted', 'authentic'];

function gravest(findings: readonly Finding[]): ExitCode {
  const worst = GRAVITY.find((verdict) => findings.some((one) => one.verdict === verdict));
  return worst === undefined ? EXIT.failed : EXIT_CODES[worst];
}

/** So few are checked sooner than a thread has started. */
const FEW = 8;

/** Hands the files out to as many threads as there are cores. */
export async function spread(
  files: readonly string[],
  trust: TrustList,
  take: (findings: readonly Finding[]) => void,
): Promise<void> {
  if (files.length <= FEW) return take(files.map((file) => findingOf(file, trust)));
  let next = 0;
  const threads = Math.min(availableParallelism(), Math.ceil(files.length / BATCH));
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = newWorker(trust);
      const more = () => {
        const batch = files.slice(next, next + BATCH);
        next += batch.length;
        if (batch.length > 0) worker.postMessage(batch);
        else void worker.terminate().then(() => resolve());
      };
      worker.on('message', (message: unknown) => {
        take(findingsSchema.parse(message));
        more();
      });
      worker.on('error', reject);
      more();
    });
  await Promise.all(Array.from({ length: threads }, work));
}

const findingsSchema = z.array(
  z.strictObject({
    file: z.string(),
    verdict: z.enum(['authentic', 'rejected', 'unreadable', 'untrusted']),
    fault: z.string().nullable(),
    failed: z.array(z.string()),
  }),
);

/** The build renames sources; run from the source, a thread has to load the loader of this one itself. */
function newWorker(trust: TrustList): Worker {
  const options = { workerData: { trust } };
  if (!import.meta.url.endsWith('.ts'))
    return new Worker(new URL('./verify-worker.js', import.meta.url), options);
  const source = new URL('./verify-worker.ts', import.meta.url).href;
  const code = `import('tsx/esm/api').then(({ register }) => { register(); return import('${source}'); })`;
  return new Worker(code, { ...options, eval: true });
}

/** A bar on the error output, drawn only where somebody can see it. */
function progress(total: number) {
  const seen = process.stderr.isTTY === true;
  const started = performance.now();
  let shown = 0;
  return {
    at(done: number) {
      const now = performance.now();
      if (!seen || (now - shown < 100 && done < total)) return;
      shown = now;
      const share = done / total;
      const left = Math.round(((now - started) / 1000) * (1 / share - 1));
      const bar = '#'.repeat(Math.round(share * 30)).padEnd(30, '.');
      process.stderr.write(`\r[${bar}] ${done} of ${total}, ${left} s left `);
    },
    end() {
      if (seen) process.stderr.write('\n');
    },
  };
}

function noRecords(folder: string) {
  return {
    code: 'no-records',
    where: folder,
    message: `no file in this folder ends in ${SUFFIX}`,
    next: 'Name a folder that holds records.',
  };
}
