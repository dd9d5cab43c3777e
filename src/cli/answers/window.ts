/** The answer about a torque window. */
import { z } from 'zod';
import { decisionSchema } from '../../job/basis.ts';
import type { WindowView } from '../../job/window-view.ts';
import { judgementSchema, windowSchema } from '../../metrology/judgement.ts';
import { answer, reason, reasonOf } from './answer.ts';

export const windowAnswer = answer('window', {
  window: windowSchema,
  decision: decisionSchema,
  /** What the wrench shows at the ends of the acceptance zone, and at the reading that is looked at. */
  wrenchReads: z.strictObject({ fromNm: z.number(), toNm: z.number(), atNm: z.number() }),
  judgement: judgementSchema,
  budget: z.strictObject({
    standardNm: z.number(),
    expandedNm: z.number(),
    coverageFactor: z.number(),
    /** Null: no end. */
    degreesOfFreedom: z.number().nullable(),
    terms: z.array(
      z.strictObject({
        name: z.string(),
        source: z.string(),
        type: z.enum(['A', 'B']),
        standard: z.number(),
        sensitivity: z.number(),
        contributionNm: z.number(),
        share: z.number(),
      }),
    ),
  }),
  /** Why the wrench would be refused. */
  refusals: z.array(reason),
  /** What general tables say of this thread and seat. */
  table: z.strictObject({ lowestNm: z.number(), highestNm: z.number() }).nullable(),
  risk: z
    .strictObject({
      spreadNm: z.number(),
      outOfTolerance: z.number(),
      consumer: z.number(),
      producer: z.number(),
      guardBandNm: z.number().nullable(),
    })
    .nullable(),
  notes: z.array(z.string()),
});

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
      terms: budget.rows.map(({ name, source, type, standard, sensitivity, contribution, share }) => ({
        name,
        source,
        type,
        standard,
        sensitivity,
        contributionNm: contribution,
        share,
      })),
    },
    refusals: view.refusals.map(reasonOf),
    table: view.table && { lowestNm: view.table.lowestNm, highestNm: view.table.highestNm },
    risk: view.risk && {
      spreadNm: view.risk.spreadNm,
      ...view.risk.atRule,
      guardBandNm: view.risk.guardBand,
    },
    notes: [...view.notes],
  };
}
