/** The result of a job on one page: what the record states in short, and verification works out again. */
import { z } from 'zod';
import { answerSchema } from '../job/event.ts';
import type { CylinderState, JobState, Settlement, StepState } from '../job/state.ts';
import { type Judgement, judgementSchema } from '../metrology/judgement.ts';

const stepStateSchema = z.enum(['todo', 'again', 'ask', 'done', 'settled']);

const quantitySummarySchema = z.strictObject({
  state: stepStateSchema.describe(
    '`done`: proven. `settled`: left as it is, by name or by angle. The others are open.',
  ),
  attempts: z.int().nonnegative().describe('How many readings or pulls were given to the cylinder.'),
  judgement: judgementSchema
    .nullable()
    .describe('The verdict that counts: the last OK once done, otherwise the last one.'),
});

const settlementSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('accepted'),
      pull: z.int().min(1).describe('Number of the pull, whose entry says who answers for it.'),
    })
    .describe('Somebody answers for a pull that went too far.'),
  z
    .strictObject({
      kind: z.literal('by-angle'),
      turn: z.string().min(1).max(40).describe('The angle as the source prints it.'),
    })
    .describe('It was turned by an angle.'),
]);

export const summarySchema = z.strictObject({
  simulated: z.boolean().describe('Tools were simulated: the record proves nothing about any engine.'),
  cylinders: z
    .array(
      z.strictObject({
        cylinder: z.int().min(1).describe('The cylinder.'),
        gap: quantitySummarySchema.describe('Its gap.'),
        torque: quantitySummarySchema.describe('Its torque.'),
        settlement: settlementSchema
          .exactOptional()
          .describe('Why its torque was left without being proven.'),
        answers: z
          .array(
            z.strictObject({
              pull: z.int().min(1).describe('Number of the pull.'),
              answer: answerSchema.describe('The answer.'),
            }),
          )
          .describe('What people answered about its pulls.'),
      }),
    )
    .describe('In order of cylinder number.'),
  openQuestions: z.int().nonnegative().describe('How many questions are open.'),
  closed: z
    .strictObject({
      complete: z.boolean().describe('Whether nothing was open.'),
      open: z.array(z.string()).describe('What was open.'),
    })
    .nullable()
    .describe('How it was closed; null for a job that is open.'),
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
    ...(torque === 'settled' && settlement !== undefined
      ? { settlement: settlementSummary(settlement) }
      : {}),
    answers: pulls.flatMap(({ pull, answer }) => (answer === null ? [] : [{ pull: pull.pull, answer }])),
  };
}

/** Without names and reasons, which are personal: they stand in the entry. */
const settlementSummary = (settlement: Settlement): z.infer<typeof settlementSchema> =>
  settlement.kind === 'accepted'
    ? { kind: 'accepted', pull: settlement.pull }
    : { kind: 'by-angle', turn: settlement.turn };

function quantitySummary(state: StepState, attempts: readonly { readonly judgement: Judgement | null }[]) {
  const judged = attempts.flatMap(({ judgement }) => (judgement === null ? [] : [judgement]));
  const stands = state === 'done' ? judged.findLast(({ result }) => result === 'OK') : judged.at(-1);
  return { state, attempts: attempts.length, judgement: stands ?? null };
}
