import { replay } from '../job/replay.ts';
import { type Check, failed, passed } from './check.ts';
import type { JobRecord } from './record.ts';

export const JUDGED_AGAIN = 'judged again';

/** Judges the job again from the samples in the record: same pulls, same cylinders, same verdicts, or where they part. */
export function judgedAgain({ entries }: JobRecord): Check {
  try {
    const again = replay(entries.map(({ event }) => event));
    if (!again.ok && again.error.code === 'rules-differ')
      return {
        name: JUDGED_AGAIN,
        outcome: 'not-applicable',
        detail: `It was not: ${again.error.message}. Verify it with the version that made it as well.`,
      };
    if (!again.ok) return failed(JUDGED_AGAIN, `${again.error.where ?? 'record'}: ${again.error.message}.`);
    const pulls = again.value.state().pullCount;
    return passed(
      JUDGED_AGAIN,
      `The samples give the same ${pulls} pulls again, each with the same verdict.`,
    );
  } catch (fault) {
    // A record that its station forged may hold what no bench would ever be given.
    return failed(
      JUDGED_AGAIN,
      `The job cannot be judged again: ${fault instanceof Error ? fault.message : 'no reason known'}.`,
    );
  }
}
