/** What a shop's own system hears of a job: one line of JSON each, as it happens. "plugmark manual events" is about it. */
import { z } from 'zod';
import { jobEventSchema } from '../../job/event.ts';
import { openItemSchema } from '../../job/open-item.ts';
import type { JobState } from '../../job/state.ts';
import type { Step } from '../../pipeline/run-job.ts';
import { joiningResultSchema } from '../../report/joining-form.ts';
import { judgedIn } from '../../report/joining-results.ts';

const at = z.iso.datetime({ precision: 3 }).describe('Wall clock, UTC.');

export const eventLineSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('started'),
      form: z.literal('plugmark/events/1'),
      at,
      program: z.string().describe('Name and version of the program.'),
      station: z.string().describe('Name of the station.'),
      job: z.string().describe('Number of the job.'),
      resumed: z.boolean().describe('The job was open before.'),
    })
    .describe('The first line of a run.'),
  z
    .strictObject({
      kind: z.literal('entry'),
      seq: z.int().min(1).describe('Number in the log of the station.'),
      n: z
        .int()
        .min(1)
        .describe(
          'Number within the job. Samples are entries too, and get no line: numbers are passed over.',
        ),
      at,
      by: z
        .string()
        .describe('The program (`station`), the technician (`technician`), or somebody else by name.'),
      event: jobEventSchema.describe('What happened, as the log contains it.'),
    })
    .describe('An entry of the log. It was on the disk before the line was written.'),
  z
    .strictObject({ kind: z.literal('result'), result: joiningResultSchema.describe('The result.') })
    .describe(
      'A pull or a gap reading was judged, or is seen otherwise since: the last result of an id counts.',
    ),
  z
    .strictObject({ kind: z.literal('missed'), lines: z.int().min(1).describe('How many lines.') })
    .describe('Nobody read the lines as fast as they came: so many were left out. The log contains them.'),
  z
    .strictObject({
      kind: z.literal('ended'),
      at,
      outcome: z
        .enum(['complete', 'incomplete', 'left-open', 'void'])
        .describe(
          '`complete`: closed, and nothing is open. `incomplete`: closed with something open. `left-open`: it can be resumed.',
        ),
      exit: z.int().describe('The exit code that follows.'),
      open: z.array(openItemSchema).describe('What is still open.'),
      result: joiningResultSchema.describe('The job as a whole.'),
      record: z.string().exactOptional().describe('The file of the record; of a closed job.'),
    })
    .describe('The last line of a run.'),
]);
export type EventLine = z.infer<typeof eventLineSchema>;

/** The lines of each step of a run, in order. */
export function eventLines(): (step: Pick<Step, 'happened'>) => readonly EventLine[] {
  const written = new Map<string, string>();
  const results = (state: JobState, at: string): readonly EventLine[] =>
    judgedIn(state).flatMap(({ result }) => {
      const made = result(at);
      const { CreationTime: _at, ...rest } = made.ResultMetaData;
      const text = JSON.stringify([rest, made.ResultContent]);
      if (written.get(rest.ResultId) === text) return [];
      written.set(rest.ResultId, text);
      return [{ kind: 'result' as const, result: made }];
    });
  return ({ happened }) =>
    happened.flatMap(({ entry, after }) => {
      const { seq, n, at, by, event } = entry;
      if (event.type === 'readings') return [];
      return [{ kind: 'entry' as const, seq, n, at, by, event }, ...results(after, at)];
    });
}
