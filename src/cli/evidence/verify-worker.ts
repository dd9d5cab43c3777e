/** One thread of `plugmark verify FOLDER`: takes file names, gives findings. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { trustListSchema } from '../../evidence/trust.ts';
import { verifyFile } from './verify-files.ts';

const { trust } = z.object({ trust: trustListSchema }).parse(workerData);

parentPort?.on('message', (files: readonly string[]) => {
  parentPort?.postMessage(files.map((file) => verifyFile(file, trust)));
});
