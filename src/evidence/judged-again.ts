import { replay } from '../job/replay.ts';
import type { JobRecord } from './record.ts';
import type { Check } from './verify.ts';

/** Judges the job again from the samples in the record: same pulls, same cylinders, same verdicts, or where they part. */
export function judgedAgain({ entries }: JobRecord): Check {
  const name = 'judged again';
  const again = replay(entries.map(({ event }) => event));
  if (!again.ok) {
    const { where, message } = again.error;
    return { name, outcome: 'failed', detail: `${where ?? 'record'}: ${message}.` };
  }
  const pulls = again.value.state().pullCount;
  return {
    name,
    outcome: 'passed',
    detail: `${pulls} pulls found again in the samples, each with the same verdict.`,
  };
}
