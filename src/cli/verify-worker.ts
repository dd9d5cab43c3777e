/** One thread of `plugmark verify FOLDER`: takes file names, gives findings. */
import { readFileSync, statSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { z } from 'zod';
import { trustListSchema } from '../evidence/trust.ts';
import { verifyRecord } from '../evidence/verify.ts';
import type { Finding } from './verify-folder.ts';
import { MAX_RECORD_BYTES } from './verify-limit.ts';

const { trust } = z.object({ trust: trustListSchema }).parse(workerData);

parentPort?.on('message', (files: readonly string[]) => {
  parentPort?.postMessage(files.map(finding));
});

function finding(file: string): Finding {
  try {
    if (statSync(file).size > MAX_RECORD_BYTES)
      return { file, verdict: 'unreadable', fault: 'larger than any record' };
    const { verdict, checks } = verifyRecord(readFileSync(file), trust);
    const fault = checks.find(({ outcome }) => outcome === 'failed');
    return { file, verdict, fault: fault === undefined ? null : `${fault.name}: ${fault.detail}` };
  } catch (cause) {
    return { file, verdict: 'unreadable', fault: cause instanceof Error ? cause.message : 'cannot be read' };
  }
}
