/** Answer of retention. */
import { z } from 'zod';
import { type Kept, type Retention, retentionSchema } from '../../audit/retention.ts';
import { answer, day, jobState } from './answer.ts';

export const retentionAnswer = answer('retention', {
  today: day.describe('The day that is taken as today.'),
  rule: retentionSchema.describe("The shop's own retention time."),
  jobs: z
    .array(
      z.strictObject({
        station: z.string().exactOptional().describe('Name of the station; with `--archive` only.'),
        job: z.string().describe('Number of the job.'),
        state: jobState,
        lastOn: day.describe('The day of its last entry.'),
        until: day.describe('The last day on which it must be kept.'),
        standing: z
          .enum(['must', 'held', 'may'])
          .describe(
            'It must be kept, its time is over but something still rests on it, or it need not be kept.',
          ),
        because: z.string().nullable().describe('What still rests on it; null where nothing does.'),
      }),
    )
    .describe('What the rule says of each job.'),
}).describe('What "plugmark retention --json" prints.');

export const retained = (
  today: string,
  rule: Retention,
  kept: readonly Kept[],
): z.infer<typeof retentionAnswer> => ({ form: 'plugmark/retention/1', today, rule, jobs: [...kept] });
