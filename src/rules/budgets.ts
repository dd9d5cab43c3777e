/**
 * The uncertainty budgets of a job, written out so that a reader can follow them: of its instruments at the limits of its
 * windows, and of each turn that was judged.
 */
import { z } from 'zod';
import { circumstancesOf, measured, readingFor } from '../job/measurement.ts';
import type { JobState } from '../job/state.ts';
import { turnWith } from '../job/turn.ts';
import type { Budget } from '../metrology/budget.ts';
import { amountSourceSchema, causeSchema } from '../metrology/term.ts';
import { rounded } from '../quantity/rounded.ts';

/** Null for infinitely many, which JSON cannot say. */
const degreesOfFreedom = z
  .number()
  .positive()
  .nullable()
  .describe('Degrees of freedom; null for infinitely many.');

export const budgetSchema = z.strictObject({
  tool: z.string().describe('The tool.'),
  unit: z.enum(['N.m', 'mm', 'deg']).describe('Unit of the budget; degrees for a turn.'),
  at: z
    .number()
    .describe('What the budget is for: a limit of the window, at the plug, or the turn that was judged.'),
  pull: z
    .int()
    .min(1)
    .exactOptional()
    .describe('Of a turn: the number of the pull with which it was judged; absent for an instrument.'),
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

/** A budget for each instrument at each limit, then one for each cylinder whose turn was judged. */
export function budgetsOf(state: JobState): readonly RecordedBudget[] {
  return [...instrumentBudgets(state), ...turnBudgets(state)];
}

function instrumentBudgets(state: JobState): readonly RecordedBudget[] {
  return state.instruments.flatMap((instrument) => {
    const window = instrument.quantity === 'torque' ? state.torqueWindow : state.gapWindow;
    if (window === null) return [];
    const circumstances = circumstancesOf(state.basis.on, state.order);
    return [window.lowerLimit, window.upperLimit].map((at) => {
      const reading = readingFor(instrument, at, circumstances);
      const { budget } = measured(instrument, reading, circumstances, null);
      return { tool: instrument.id, unit: window.unit, at, ...written(budget) };
    });
  });
}

/** Every turn has its own: it rests on how this plug was turned. The last one that was judged on each cylinder. */
function turnBudgets(state: JobState): readonly RecordedBudget[] {
  return [...state.cylinders]
    .sort((a, b) => a.cylinder - b.cylinder)
    .flatMap(({ cylinder, pulls }) => {
      const judged = pulls.findLast(({ turn }) => turn !== undefined && turn !== null);
      const turn = judged === undefined ? null : turnWith(state, cylinder, judged.pull);
      if (judged === undefined || turn === null) return [];
      const { pull, tool } = judged.pull;
      return [{ tool, unit: 'deg' as const, at: rounded(turn.turnedDeg, 6), pull, ...written(turn.budget) }];
    });
}

function written({ rows, standard, coverageFactor, expanded, degreesOfFreedom }: Budget) {
  return {
    rows: rows.map(({ cause, source, type, distribution, amount, sensitivity, ...row }) => ({
      cause,
      source,
      type,
      distribution: distribution.kind,
      amount,
      sensitivity,
      standard: row.standard,
      contribution: row.contribution,
      degreesOfFreedom: finite(row.degreesOfFreedom),
    })),
    standard,
    coverageFactor,
    expanded,
    degreesOfFreedom: finite(degreesOfFreedom),
  };
}

const finite = (value: number) => (Number.isFinite(value) ? value : null);
