/** Answers about impact assessments: impact list, impact show. */
import { z } from 'zod';
import type { Since } from '../../audit/impact-held.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import { impactItemSchema } from '../../evidence/station-event.ts';
import { figureSourceSchema } from '../../reading.ts';
import { answer, count, day, decision, time } from './answer.ts';
import { since, sinceOf } from './since.ts';

export const impactListAnswer = answer('impact-list', {
  impacts: z
    .array(
      z.strictObject({
        impact: z.string().describe('Number of the impact assessment.'),
        state: z.enum(['open', 'closed']).describe('Open or closed.'),
        at: time.describe('When it was made.'),
        tool: z.string().describe('Name of the tool.'),
        serial: z.string().describe('Serial number of the tool.'),
        from: day.describe('The first day that was looked at.'),
        to: day.describe('The last day that was looked at.'),
        jobs: count.describe('How many jobs it touches.'),
        openJobs: count.describe('How many of them are not decided, or recalled and not redone yet.'),
      }),
    )
    .describe('The impact assessments.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark impact list --json" prints.');

export const listedImpacts = (
  impacts: readonly ImpactAssessment[],
  jobs: readonly Since[],
): z.infer<typeof impactListAnswer> => ({
  form: 'plugmark/impact-list/1',
  impacts: impacts.map(({ assessment, closed, at, assessed, items }) => ({
    impact: assessment,
    state: closed === null ? 'open' : 'closed',
    at,
    tool: assessed.tool,
    serial: assessed.serial,
    from: assessed.from,
    to: assessed.to,
    jobs: items.length,
    openJobs: items.filter((item) => item.open).length,
  })),
  since: sinceOf(jobs),
});

export const impactShowAnswer = answer('impact-show', {
  impact: z.string().describe('Number of the impact assessment.'),
  at: time.describe('When it was made.'),
  by: z.string().describe('Who made it.'),
  tool: z.string().describe('Name of the tool.'),
  serial: z.string().describe('Serial number of the tool.'),
  asFound: z.string().describe('Number of the as-found certificate.'),
  lastGood: z
    .strictObject({
      number: z.string().describe('Number of its certificate.'),
      date: day.describe('Its day.'),
    })
    .nullable()
    .describe('The last good check; null where the log holds none.'),
  foundOn: day.describe('The day of the finding.'),
  from: day.describe('The first day that was looked at.'),
  to: day.describe('The last day that was looked at.'),
  sources: z
    .array(figureSourceSchema)
    .describe('Where the figures that were judged again came from, each source once.'),
  attempts: count.describe('How many attempts were judged again.'),
  proofs: z
    .strictObject({
      stillIn: count.describe('How many still hold.'),
      doubtful: count.describe('How many are too near a limit to tell.'),
      out: count.describe('How many are beyond a limit.'),
    })
    .describe('The proofs that jobs rest on.'),
  jobs: z
    .array(
      impactItemSchema.extend({
        open: z.boolean().describe('Not decided, or recalled and not redone yet.'),
        decided: z
          .array(
            z.strictObject({
              decision,
              redoneIn: z
                .string()
                .nullable()
                .describe('The later job that did it again; null with any other decision.'),
              because: z.string().describe('Why.'),
              by: z.string().describe('Who decided.'),
              at: time.describe('When.'),
            }),
          )
          .describe('All decisions, the earliest first; the last one counts.'),
      }),
    )
    .describe('The jobs that it touches.'),
  closed: z
    .strictObject({
      at: time.describe('When.'),
      by: z.string().describe('Who closed it.'),
      because: z
        .string()
        .nullable()
        .describe(
          'Why it could be closed; null where every proof holds, so that nothing was left to decide.',
        ),
    })
    .nullable()
    .describe('Its closing; null while it is open.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark impact show --json" prints.');

export const shownImpact = (
  { assessment, at, by, assessed, items, closed }: ImpactAssessment,
  jobs: readonly Since[],
): z.infer<typeof impactShowAnswer> => ({
  form: 'plugmark/impact-show/1',
  impact: assessment,
  at,
  by,
  tool: assessed.tool,
  serial: assessed.serial,
  asFound: assessed.asFound,
  lastGood: assessed.lastGood,
  foundOn: assessed.foundOn,
  from: assessed.from,
  to: assessed.to,
  sources: [...assessed.sources],
  attempts: assessed.attempts,
  proofs: { stillIn: assessed.stillIn, doubtful: assessed.doubtful, out: assessed.out },
  jobs: items.map((item) => ({ ...item, decided: [...item.decided] })),
  closed,
  since: sinceOf(jobs),
});
