/** One thread that draws papers: takes records of a package, gives what the index says of their papers or how they compare. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { drawPackagePaper, holdPackagePaper, type ToDraw } from './package-papers.ts';

const { folder, write } = z.object({ folder: z.string(), write: z.boolean() }).parse(workerData);

// A fault here ends the thread, and whoever started it learns of it.
parentPort?.on('message', async (papers: readonly ToDraw[]) => {
  const answers: unknown[] = [];
  for (const one of papers)
    answers.push(await (write ? drawPackagePaper(folder, one) : holdPackagePaper(folder, one)));
  parentPort?.postMessage(answers);
});
