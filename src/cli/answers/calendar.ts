/** Answer of calendar. */
import { z } from 'zod';
import type { CalendarLine } from '../../audit/calendar.ts';
import type { Since } from '../../audit/impact-held.ts';
import { instrumentSchema } from '../../instrument/instrument.ts';
import { answer, count, day } from './answer.ts';
import { since, sinceOf } from './since.ts';

export const calendarAnswer = answer('calendar', {
  today: day.describe('The day that is taken as today.'),
  tools: z
    .array(
      z.strictObject({
        tool: z.string().describe('Name of the tool.'),
        serial: z.string().nullable().describe('Serial number of the tool; null where it has none.'),
        state: z
          .enum(['out-of-tolerance', 'due', 'soon', 'in-date', 'data-sheet', 'no-certificate'])
          .describe(
            'How its calibration is. `data-sheet`: nobody calibrated it, and it is not due yet; `no-certificate`: the same of a tool that was never used.',
          ),
        onDataSheetSince: day
          .nullable()
          .describe('The first use of a tool that nobody calibrated; null of others.'),
        byUsualMonths: z
          .boolean()
          .describe('Nobody named a due day: it is counted in the twelve months that are usual.'),
        due: day
          .nullable()
          .describe(
            'When it is due: by date or by cycles, whichever comes first. Null where nothing says so.',
          ),
        dueByDate: day
          .nullable()
          .describe(
            'The last day on which its certificate, or else its data sheet, is relied on; null where nothing says so.',
          ),
        dueByCycles: day
          .nullable()
          .describe('When its cycles run out at the pace so far; null without a limit or a pace.'),
        certificate: z.string().nullable().describe('Number of its certificate; null where it has none.'),
        calibrated: day.nullable().describe('The day of its calibration; null where it has no certificate.'),
        cycles: count.describe(
          'Gap readings, or pulls on a plug, since that day; its own counter where that is ahead.',
        ),
        cycleLimit: count.nullable().describe('After how many cycles it is due; null without a limit.'),
        lastUsed: day.nullable().describe('When it was used last; null where it never was.'),
        outOfTolerance: instrumentSchema.shape.outOfTolerance
          .unwrap()
          .nullable()
          .describe('A finding that no later certificate has put right; null where there is none.'),
        driftsBeyondOn: day
          .nullable()
          .describe(
            'From when on it may lie beyond what is permitted, by its certificates; null where it stays within.',
          ),
        next: z
          .strictObject({
            intervalDays: z.int().min(1).describe('The interval in days.'),
            step: z.enum(['longer', 'kept', 'shorter']).describe('Against the interval of now.'),
            share: z.number().describe('The deviation that was found, as a share of what is permitted.'),
          })
          .nullable()
          .describe(
            'The next interval by the staircase; null where it was not asked for or cannot be computed.',
          ),
      }),
    )
    .describe('The tools, the one that is due first in front.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark calendar --json" prints.');

export const toolCalendar = (
  today: string,
  lines: readonly CalendarLine[],
  drifting: ReadonlyMap<string, string>,
  jobs: readonly Since[],
): z.infer<typeof calendarAnswer> => ({
  form: 'plugmark/calendar/1',
  today,
  tools: lines.map(({ next, ...line }) => ({
    ...line,
    driftsBeyondOn: (line.serial === null ? undefined : drifting.get(line.serial)) ?? null,
    next: next && { intervalDays: next.days, step: next.step, share: next.share },
  })),
  since: sinceOf(jobs),
});
