/** One thread that draws papers: takes records of a package, gives what the index says of their papers. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import type { PackageFile } from '../../package/format.ts';
import { drawPackagePaper, type ToDraw } from './package-papers.ts';

const drawing = z.object({ folder: z.string(), write: z.boolean() }).parse(workerData);

// A fault here ends the thread, and whoever started it learns of it.
parentPort?.on('message', async (papers: readonly ToDraw[]) => {
  const files: PackageFile[] = [];
  for (const one of papers) files.push(await drawPackagePaper(drawing, one));
  parentPort?.postMessage(files);
});
