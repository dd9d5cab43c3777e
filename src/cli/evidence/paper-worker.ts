/** One thread of `plugmark package`: takes numbers of jobs, draws their papers, gives what the index says of them. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import type { PackageFile } from '../../package/format.ts';
import { drawPackagePaper } from './package-papers.ts';

const { folder } = z.object({ folder: z.string() }).parse(workerData);

// A fault here ends the thread, and whoever started it learns of it.
parentPort?.on('message', async (jobs: readonly string[]) => {
  const files: PackageFile[] = [];
  for (const job of jobs) files.push(await drawPackagePaper(folder, job));
  parentPort?.postMessage(files);
});
