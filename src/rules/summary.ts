/** The result of a job on one page: what the record states in short, and verification works out again. */
import { z } from 'zod';
import { outOfOrderIn } from '../job/early.ts';
import { answerSchema } from '../job/event.ts';
import { openItemSchema } from '../job/open-item.ts';
import { outOfOrderSchema } from '../job/out-of-order.ts';
import { figuresOf, gapSource, isTwoSteps, torqueSource } from '../job/proof.ts';
import type { CylinderState, JobState, Settlement, StepState } from '../job/state.ts';
import { type Judgement, judgementSchema } from '../metrology/judgement.ts';
import { type FigureSource, figureSourceSchema } from '../reading.ts';

const stepStateSchema = z.enum(['todo', 'again', 'ask', 'done', 'settled']);

const quantitySummarySchema = z.strictObject({
  state: stepStateSchema.describe(
    '`done`: a figure of it is OK; `source` says whether that proves it. `settled`: left as it is, by name or by angle. The others are open.',
  ),
  attempts: z.int().nonnegative().describe('How many readings or pulls were given to the cylinder.'),
  judgement: judgementSchema
    .nullable()
    .describe('The verdict that counts: the last OK once done, otherwise the last one.'),
  source: figureSourceSchema
    .nullable()
    .describe(
      'Where the judged figure came from; of two steps of tightening the weaker source. Null without a verdict.',
    ),
});

const cylinders = z.int().nonnegative();
const countsSchema = z.strictObject({
  linked: cylinders.describe('An instrument sent the figure: it is proven.'),
  typed: cylinders.describe('It was typed: the person at work attests it, and no instrument proves it.'),
  replayed: cylinders.describe('A recording was played: it proves nothing.'),
  simulated: cylinders.describe('There was no instrument: it proves nothing.'),
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
  sources: z
    .array(figureSourceSchema)
    .describe(
      'Where figures of the job came from, each source once. With `replayed` or `simulated` in it, the record proves nothing about any engine.',
    ),
  figures: z
    .strictObject({
      torque: countsSchema.describe('Of the torque.'),
      gap: countsSchema.describe('Of the gap.'),
    })
    .describe('How many cylinders are `done` on a figure of each source.'),
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
  outOfOrder: z
    .array(outOfOrderSchema)
    .min(1)
    .exactOptional()
    .describe(
      'What came before its turn, where the order of its step is not free; absent where nothing did. The times are those of the entries.',
    ),
  openQuestions: z.int().nonnegative().describe('How many questions are open.'),
  closed: z
    .strictObject({
      complete: z.boolean().describe('Whether nothing was open.'),
      open: z.array(openItemSchema).describe('What was open.'),
    })
    .nullable()
    .describe('How it was closed; null for a job that is open.'),
});
export type Summary = z.infer<typeof summarySchema>;

export function summaryOf(state: JobState): Summary {
  const { closed, sources } = state;
  const { torque, gap } = figuresOf(state);
  const outOfOrder = [...outOfOrderIn(state)];
  return {
    sources: [...sources],
    figures: { torque: { ...torque }, gap: { ...gap } },
    cylinders: [...state.cylinders]
      .sort((a, b) => a.cylinder - b.cylinder)
      .map((c) => cylinderSummary(c, isTwoSteps(state))),
    ...(outOfOrder.length === 0 ? {} : { outOfOrder }),
    openQuestions: state.questions.length,
    closed: closed === null ? null : { complete: closed.complete, open: [...closed.open] },
  };
}

function cylinderSummary(c: CylinderState, twoSteps: boolean): Summary['cylinders'][number] {
  const { cylinder, gap, torque, gaps, pulls, settlement } = c;
  const felt = pulls.map(({ judgement, pull: { source } }) => ({ judgement, source }));
  return {
    cylinder,
    gap: quantitySummary(
      gap,
      gaps.filter(({ takenBack }) => takenBack !== true),
      gapSource(c),
    ),
    torque: quantitySummary(torque, felt, torqueSource(c, twoSteps)),
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

interface Judged {
  readonly judgement: Judgement | null;
  readonly source: FigureSource;
}

/** `standsOn`: the source of what is done. */
function quantitySummary(state: StepState, attempts: readonly Judged[], standsOn: FigureSource | null) {
  const judged = attempts.filter(({ judgement }) => judgement !== null);
  const stands =
    state === 'done' ? judged.findLast(({ judgement }) => judgement?.result === 'OK') : judged.at(-1);
  return {
    state,
    attempts: attempts.length,
    judgement: stands?.judgement ?? null,
    source: standsOn ?? stands?.source ?? null,
  };
}
