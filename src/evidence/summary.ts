/** The result of a job on one page: what the record states in short, and verification works out again. */
import { z } from 'zod';
import { answerSchema } from '../job/event.ts';
import type { CylinderState, JobState, StepState } from '../job/state.ts';
import { type Judgement, judgementSchema } from '../metrology/judgement.ts';

const stepStateSchema = z.enum(['todo', 'again', 'ask', 'done', 'settled']);

const quantitySummarySchema = z.strictObject({
  state: stepStateSchema,
  /** How many readings or pulls were given to the cylinder. */
  attempts: z.int().nonnegative(),
  /** The figures that stand: of the last OK once done, else of the last attempt that was judged. */
  judgement: judgementSchema.nullable(),
});

const settlementSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('accepted'),
    pull: z.int().min(1),
    by: z.string().min(1).max(80),
    reason: z.string().min(1).max(200),
  }),
  z.strictObject({ kind: z.literal('by-angle'), turn: z.string().min(1).max(40), why: z.string().max(200) }),
]);

export const summarySchema = z.strictObject({
  /** Tools were simulated: the record proves nothing about any engine. */
  simulated: z.boolean(),
  /** In order of cylinder number. */
  cylinders: z.array(
    z.strictObject({
      cylinder: z.int().min(1),
      gap: quantitySummarySchema,
      torque: quantitySummarySchema,
      /** Why its torque was left as it is without being proven. */
      settlement: settlementSchema.exactOptional(),
      /** What people said about its pulls. */
      answers: z.array(z.strictObject({ pull: z.int().min(1), answer: answerSchema })),
    }),
  ),
  openQuestions: z.int().nonnegative(),
  closed: z.strictObject({ complete: z.boolean(), open: z.array(z.string()) }).nullable(),
});
export type Summary = z.infer<typeof summarySchema>;

export function summaryOf(state: JobState): Summary {
  const { closed, simulated } = state;
  return {
    simulated,
    cylinders: [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder).map(cylinderSummary),
    openQuestions: state.questions.length,
    closed: closed === null ? null : { complete: closed.complete, open: [...closed.open] },
  };
}

function cylinderSummary({
  cylinder,
  gap,
  torque,
  gaps,
  pulls,
  settlement,
}: CylinderState): Summary['cylinders'][number] {
  return {
    cylinder,
    gap: quantitySummary(gap, gaps),
    torque: quantitySummary(torque, pulls),
    ...(torque === 'settled' && settlement !== undefined ? { settlement } : {}),
    answers: pulls.flatMap(({ pull, answer }) => (answer === null ? [] : [{ pull: pull.pull, answer }])),
  };
}

function quantitySummary(state: StepState, attempts: readonly { readonly judgement: Judgement | null }[]) {
  const judged = attempts.flatMap(({ judgement }) => (judgement === null ? [] : [judgement]));
  const stands = state === 'done' ? judged.findLast(({ result }) => result === 'OK') : judged.at(-1);
  return { state, attempts: attempts.length, judgement: stands ?? null };
}
