/** The uncertainty budgets of a job's instruments at the limits of its windows, written out so that a reader can follow them. */
import { z } from 'zod';
import { circumstancesOf, measured, readingFor } from '../job/measurement.ts';
import type { JobState } from '../job/state.ts';
import { amountSourceSchema, causeSchema } from '../metrology/term.ts';

/** Null for infinitely many, which JSON cannot say. */
const degreesOfFreedom = z
  .number()
  .positive()
  .nullable()
  .describe('Degrees of freedom; null for infinitely many.');

export const budgetSchema = z.strictObject({
  tool: z.string().describe('The tool.'),
  unit: z.enum(['N.m', 'mm']).describe('Unit of the budget.'),
  at: z.number().describe('The limit of the window that the budget is for, at the plug.'),
  rows: z
    .array(
      z.strictObject({
        cause: causeSchema.describe('The cause.'),
        source: amountSourceSchema.describe('Where the amount comes from.'),
        type: z.enum(['A', 'B']).describe('Type of evaluation (GUM).'),
        distribution: z
          .enum(['normal', 'rectangular', 'triangular', 'arcsine', 'standard'])
          .describe('Its distribution.'),
        amount: z.number().describe('Half-width or standard deviation, before sensitivity.'),
        standard: z.number().describe('Standard uncertainty, before sensitivity.'),
        sensitivity: z.number().describe('How much the result moves with it.'),
        contribution: z.number().describe('The size of sensitivity · standard.'),
        degreesOfFreedom,
      }),
    )
    .describe('One line for each cause of uncertainty.'),
  standard: z.number().describe('Combined standard uncertainty.'),
  degreesOfFreedom,
  coverageFactor: z.number().describe('Coverage factor k.'),
  expanded: z.number().describe('Expanded uncertainty U.'),
});
type RecordedBudget = z.infer<typeof budgetSchema>;

/** A budget for each instrument at each limit. */
export function budgetsOf(state: JobState): readonly RecordedBudget[] {
  return state.instruments.flatMap((instrument) => {
    const window = instrument.quantity === 'torque' ? state.torqueWindow : state.gapWindow;
    if (window === null) return [];
    const circumstances = circumstancesOf(state.basis.on, state.order);
    return [window.lowerLimit, window.upperLimit].map((at) => {
      const reading = readingFor(instrument, at, circumstances);
      const { budget } = measured(instrument, reading, circumstances, null);
      const { standard, coverageFactor, expanded } = budget;
      const rows = budget.rows.map(({ cause, source, type, distribution, amount, sensitivity, ...row }) => ({
        cause,
        source,
        type,
        distribution: distribution.kind,
        amount,
        sensitivity,
        standard: row.standard,
        contribution: row.contribution,
        degreesOfFreedom: finite(row.degreesOfFreedom),
      }));
      const total = { standard, coverageFactor, expanded, degreesOfFreedom: finite(budget.degreesOfFreedom) };
      return { tool: instrument.id, unit: window.unit, at, rows, ...total };
    });
  });
}

const finite = (value: number) => (Number.isFinite(value) ? value : null);
