/** The answer about a torque window. */

import { z } from 'zod';
import { refusalSchema } from '../../instrument/unfit.ts';
import { decisionSchema } from '../../job/basis.ts';
import { MODEL_PULLS } from '../../job/forecast.ts';
import type { WindowView } from '../../job/window-view.ts';
import { judgementSchema, windowSchema } from '../../metrology/judgement.ts';
import { amountSourceSchema, causeSchema } from '../../metrology/term.ts';
import { noteLines } from '../../report/words/index.ts';
import { answer } from './answer.ts';

export const windowAnswer = answer('window', {
  window: windowSchema.describe('The window, in N·m.'),
  decision: decisionSchema.describe('How the shop decides.'),
  wrenchReads: z
    .strictObject({
      fromNm: z.number().describe('At the lower end of the acceptance zone, in N·m.'),
      toNm: z.number().describe('At the upper end of the acceptance zone, in N·m.'),
      atNm: z.number().describe('At the reading that is judged, in N·m.'),
    })
    .describe('What the wrench shows.'),
  judgement: judgementSchema.describe('The verdict on that reading.'),
  budget: z
    .strictObject({
      standardNm: z.number().describe('Combined standard uncertainty, in N·m.'),
      expandedNm: z.number().describe('Expanded uncertainty U, in N·m.'),
      coverageFactor: z.number().describe('The coverage factor k.'),
      degreesOfFreedom: z
        .number()
        .nullable()
        .describe('Effective degrees of freedom; null where they have no end.'),
      terms: z
        .array(
          z.strictObject({
            cause: causeSchema.describe('What it is.'),
            source: amountSourceSchema.describe('Where it comes from.'),
            type: z.enum(['A', 'B']).describe('Type of evaluation, by the GUM.'),
            standard: z.number().describe('Its standard uncertainty, in its own unit.'),
            sensitivity: z.number().describe('Change of the result for a change of one such unit.'),
            contributionNm: z.number().describe('What it adds to the uncertainty, in N·m.'),
            share: z.number().describe('Its share of the combined variance, 0 to 1.'),
          }),
        )
        .describe('What the uncertainty is made of.'),
    })
    .describe('The uncertainty budget of that reading.'),
  atRate: z
    .strictObject({
      perSecond: z.number().describe('Readings a second, as asked.'),
      calmPulls: z.number().describe('So many calm pulls to the middle of the window were worked out.'),
      ok: z.number().describe('So many of them this wrench would prove.'),
      enoughPerSecond: z
        .number()
        .nullable()
        .describe('Readings a second that are enough; null where these are, or where no rate is.'),
    })
    .nullable()
    .describe('Whether the wrench proves the window at this rate; null without `--rate`.'),
  refusals: z.array(refusalSchema).describe('Why the wrench would be refused.'),
  table: z
    .strictObject({
      lowestNm: z.number().describe('The lowest torque in them, in N·m.'),
      highestNm: z.number().describe('The highest torque in them, in N·m.'),
    })
    .nullable()
    .describe('What general tables say of this thread and seat; null where they say nothing.'),
  risk: z
    .strictObject({
      spreadNm: z.number().describe('Standard deviation of all pulls of the shop, in N·m.'),
      outOfTolerance: z.number().describe('Share of pulls outside the limits, 0 to 1.'),
      consumer: z.number().describe('Share of pulls outside the limits that get an OK, 0 to 1.'),
      producer: z.number().describe('Share of pulls within the limits that get no OK, 0 to 1.'),
      guardBandNm: z
        .number()
        .nullable()
        .describe(
          'Width of the guard band that keeps false OKs below one in a thousand pulls, in N·m; null where none does.',
        ),
    })
    .nullable()
    .describe('Risks over all pulls of the shop; null without `--spread`.'),
  notes: z.array(z.string()).describe('What a reader should know about the figures, each a sentence.'),
}).describe('What "plugmark window --json" prints.');

function atRateOf({ forecast }: WindowView): z.infer<typeof windowAnswer>['atRate'] {
  if (forecast?.kind !== 'readings') return null;
  const { perSecond, ok, lacks } = forecast;
  const enoughPerSecond = lacks?.kind === 'rate' ? lacks.perSecond : null;
  return { perSecond, calmPulls: MODEL_PULLS, ok, enoughPerSecond };
}

export function windowAnswered(view: WindowView): z.infer<typeof windowAnswer> {
  const { budget } = view.measured;
  const { degreesOfFreedom } = budget;
  return {
    form: 'plugmark/window/1',
    window: view.window,
    decision: view.decision,
    wrenchReads: { fromNm: view.wrenchReads.from, toNm: view.wrenchReads.to, atNm: view.wrenchReads.at },
    judgement: view.judgement,
    budget: {
      standardNm: budget.standard,
      expandedNm: budget.expanded,
      coverageFactor: budget.coverageFactor,
      degreesOfFreedom: Number.isFinite(degreesOfFreedom) ? degreesOfFreedom : null,
      terms: budget.rows.map(({ cause, source, type, standard, sensitivity, contribution, share }) => ({
        cause,
        source,
        type,
        standard,
        sensitivity,
        contributionNm: contribution,
        share,
      })),
    },
    atRate: atRateOf(view),
    refusals: [...view.refusals],
    table: view.table && { lowestNm: view.table.lowestNm, highestNm: view.table.highestNm },
    risk: view.risk && {
      spreadNm: view.risk.spreadNm,
      ...view.risk.atRule,
      guardBandNm: view.risk.guardBand,
    },
    notes: [...noteLines(view.order, view.notes)],
  };
}
