/** One thread of `plugmark verify FOLDER`: takes file names, gives findings. */
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { parsePolicy } from '../../evidence/policy.ts';
import { trustListSchema } from '../../evidence/trust.ts';
import { SI } from '../../quantity/shown.ts';
import { orThrow } from '../../result.ts';
import { LANGUAGES } from '../../words/catalogue.ts';
import { showFor } from '../station/reads.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { verifyFile } from './verify-files.ts';

const {
  trust,
  policy: bytes,
  language,
} = z
  .object({
    trust: trustListSchema,
    policy: z.instanceof(Uint8Array).nullable(),
    language: z.enum(LANGUAGES),
  })
  .parse(workerData);
const policy = bytes === null ? null : orThrow(parsePolicy(bytes, 'policy'));

await showFor(language, SI, !speaksUtf8());

parentPort?.on('message', (files: readonly string[]) => {
  parentPort?.postMessage(files.map((file) => verifyFile(file, trust, policy)));
});
