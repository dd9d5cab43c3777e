/**
 * What an edition of the rules says of a job. This is the whole interface between a closed edition and every later
 * program: plain JSON, which may gain optional members and codes, and otherwise stays as it is for ever.
 */
import { z } from 'zod';
import type { JobEvent } from '../job/event.ts';
import { openItemSchema } from '../job/open-item.ts';
import { PARTINGS } from '../job/parting.ts';
import { budgetSchema } from './budgets.ts';
import { summarySchema } from './summary.ts';

/** Whether the samples and commands of a job give its pulls, placements and verdicts again. */
export const againSchema = z.discriminatedUnion('agrees', [
  z.strictObject({ agrees: z.literal(true), pulls: z.int().nonnegative() }),
  z.strictObject({
    agrees: z.literal(false),
    /** Number of the event where the two part, from 1. */
    position: z.int().min(1),
    code: z.enum(PARTINGS),
    /** Type of the event that is there, or that is missing. */
    event: z.string(),
  }),
]);
export type Again = z.infer<typeof againSchema>;

const openSchema = z.array(openItemSchema);

/** One thing that keeps a job from being complete. */
const lackSchema = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('voided') }),
  z.strictObject({ code: z.literal('open'), items: openSchema }),
  /** The cylinder counts as done, but no OK figure stands for it. */
  z.strictObject({ code: z.literal('unproven'), cylinder: z.int().min(1) }),
  z.strictObject({ code: z.literal('not-closed') }),
  z.strictObject({ code: z.literal('closed-incomplete'), items: openSchema }),
]);
export type Lack = z.infer<typeof lackSchema>;

/** What the events come to. */
export const outcomeSchema = z.strictObject({
  summary: summarySchema,
  budgets: z.array(budgetSchema),
  /** The gravest first; none where the job is complete. */
  lacks: z.array(lackSchema),
  /** Who was at work when the figures were typed that cylinders stand on. */
  attestedBy: z.array(z.string()),
});
export type Outcome = z.infer<typeof outcomeSchema>;

/** The events are those of one job, from its opening on, as plain JSON; withheld texts are there as their mark. */
export interface Judge {
  readonly judgeAgain: (events: readonly JobEvent[]) => Again;
  /** Throws for events that no bench ever wrote. */
  readonly outcomeOf: (events: readonly JobEvent[]) => Outcome;
}
