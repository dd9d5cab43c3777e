/** One thread of `plugmark verify FOLDER`: takes file names, gives findings. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { parsePolicy } from '../../evidence/policy.ts';
import { trustListSchema } from '../../evidence/trust.ts';
import { orThrow } from '../../result.ts';
import { verifyFile } from './verify-files.ts';

const { trust, policy: bytes } = z
  .object({ trust: trustListSchema, policy: z.instanceof(Uint8Array).nullable() })
  .parse(workerData);
const policy = bytes === null ? null : orThrow(parsePolicy(bytes, 'policy'));

parentPort?.on('message', (files: readonly string[]) => {
  parentPort?.postMessage(files.map((file) => verifyFile(file, trust, policy)));
});
