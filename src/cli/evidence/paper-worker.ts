/** One thread that draws papers: takes records of a package, gives what the index says of their papers or how they compare. */

import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { SHOWN_LENGTH, SHOWN_TORQUE, SI } from '../../quantity/shown.ts';
import { LANGUAGES } from '../../words/catalogue.ts';
import { showFor } from '../station/reads.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { drawPackagePaper, holdPackagePaper, type ToDraw } from './package-papers.ts';

const { folder, write, language } = z
  .object({
    folder: z.string(),
    /** Whom papers are to be written for; null where those that are there are held against the records. */
    write: z
      .object({
        language: z.enum(LANGUAGES),
        units: z.object({ torque: z.enum(SHOWN_TORQUE), length: z.enum(SHOWN_LENGTH) }),
      })
      .nullable(),
    /** Of whoever reads how they compare. */
    language: z.enum(LANGUAGES),
  })
  .parse(workerData);

await showFor(language, SI, !speaksUtf8());

// A fault here ends the thread, and whoever started it learns of it.
parentPort?.on('message', async (papers: readonly ToDraw[]) => {
  const answers: unknown[] = [];
  for (const one of papers)
    answers.push(
      await (write === null ? holdPackagePaper(folder, one) : drawPackagePaper(folder, one, write)),
    );
  parentPort?.postMessage(answers);
});
