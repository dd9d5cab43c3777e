/** Record files verified on all cores. */
import { readFileSync, statSync } from 'node:fs';
import type { Policy } from '../../evidence/policy.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { onAllCores } from '../../files/threads.ts';
import { type Finding, findingOf, findingsSchema, unreadable } from '../../package/finding.ts';
import { sentence, spokenLanguage } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import { laterLogBeside } from './later-log-file.ts';
import { byPolicyBeside, type ReadersPolicy } from './readers-policy.ts';

/** So few are verified sooner than a thread has started. */
const FEW = 8;

const THREAD = {
  built: new URL('./verify-worker.js', import.meta.url),
  source: new URL('./verify-worker.ts', import.meta.url),
  batch: 16,
};

export async function verifyFiles(
  files: readonly string[],
  { trust, policy }: { readonly trust: TrustList; readonly policy: ReadersPolicy | null },
  take: (findings: readonly Finding[]) => void,
): Promise<void> {
  if (files.length <= FEW) return take(files.map((file) => verifyFile(file, trust, policy?.policy ?? null)));
  await onAllCores(
    { ...THREAD, workerData: { trust, policy: policy?.bytes ?? null, language: spokenLanguage() } },
    files,
    (answer) => take(findingsSchema.parse(answer)),
  );
}

/** One that cannot be read is a finding as well. */
export function verifyFile(file: string, trust: TrustList, policy: Policy | null): Finding {
  try {
    const found = statSync(file);
    // A pipe or a device has no end.
    if (!found.isFile()) return unreadable(file, sentence`no plain file`);
    if (found.size > MAX_RECORD_BYTES) return unreadable(file, sentence`larger than any record`);
    const byPolicy = byPolicyBeside(policy, file);
    return findingOf(file, readFileSync(file), trust, now(), laterLogBeside(file), byPolicy);
  } catch (cause) {
    return unreadable(file, cause instanceof Error ? () => cause.message : sentence`cannot be read`);
  }
}
