/** The uncertainty budgets of a job's instruments at the limits of its windows, written out so that a reader can follow them. */
import { z } from 'zod';
import { measured, readingFor } from '../job/measurement.ts';
import type { JobState } from '../job/state.ts';

/** Null for infinitely many, which JSON cannot say. */
const degreesOfFreedom = z.number().positive().nullable();

export const budgetSchema = z.strictObject({
  tool: z.string(),
  unit: z.enum(['N.m', 'mm']),
  /** The limit of the window that the budget is for, at the plug. */
  at: z.number(),
  /** Amounts before sensitivity, `standard` before it too; `contribution` is |sensitivity| · standard, in the unit above. */
  rows: z.array(
    z.strictObject({
      name: z.string(),
      source: z.string(),
      type: z.enum(['A', 'B']),
      distribution: z.enum(['normal', 'rectangular', 'triangular', 'arcsine', 'standard']),
      amount: z.number(),
      standard: z.number(),
      sensitivity: z.number(),
      contribution: z.number(),
      degreesOfFreedom,
    }),
  ),
  standard: z.number(),
  degreesOfFreedom,
  coverageFactor: z.number(),
  expanded: z.number(),
});
type RecordedBudget = z.infer<typeof budgetSchema>;

/** A budget for each instrument at each limit. */
export function budgetsOf(state: JobState): readonly RecordedBudget[] {
  return state.instruments.flatMap((instrument) => {
    const window = instrument.quantity === 'torque' ? state.torqueWindow : state.gapWindow;
    if (window === null) return [];
    const circumstances = { on: state.basis.on, adapter: state.order.adapter };
    return [window.lowerLimit, window.upperLimit].map((at) => {
      const reading = readingFor(instrument, at, circumstances);
      const { budget } = measured(instrument, reading, circumstances, null);
      const { standard, coverageFactor, expanded } = budget;
      const rows = budget.rows.map(({ name, source, type, distribution, amount, sensitivity, ...row }) => ({
        name,
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
