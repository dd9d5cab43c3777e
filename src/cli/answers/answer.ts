/** What the forms of answers (`--json`) share. Figures, codes and identifiers; times are ISO, UTC; text is that of the records. */
import { z } from 'zod';
import { outOfOrderSchema } from '../../job/out-of-order.ts';
import { summarySchema } from '../../rules/summary.ts';
import { jsonText } from '../terminal/json-text.ts';

/** The form of what a command with `--json` prints; named after the command, with hyphens. */
export const answer = <N extends string, T extends z.ZodRawShape>(name: N, shape: T) =>
  z.strictObject({ form: z.literal(`plugmark/${name}/1`), ...shape });

export const printJson = (value: unknown): void => void process.stdout.write(jsonText(value));

export const time = z.iso.datetime();
export const day = z.iso.date();
export const count = z.int().nonnegative();
export const quantity = z.enum(['torque', 'length']).describe('Torque or gap.');
/** Where an answer may be about torque or gap, its figures are in this unit. */
export const unit = z.enum(['N.m', 'mm']).describe('Unit of the figures, as UCUM writes it.');
export type AnswerUnit = z.infer<typeof unit>;
export const unitOf = (of: z.infer<typeof quantity>): AnswerUnit => (of === 'torque' ? 'N.m' : 'mm');

export const jobState = z
  .enum(['open', 'complete', 'incomplete', 'void'])
  .describe('Open, closed with all done, closed with work open, or declared void.');

/** Why there is no figure. */
export const reason = z.strictObject({
  code: z.string().describe('Code of the reason.'),
  message: z.string().describe('The reason in words.'),
});
export const reasonOf = ({ code, message }: z.infer<typeof reason>) => ({ code, message });

export const vehicle = {
  vin: z.string().nullable().describe('VIN of the vehicle; null where none was given.'),
  plate: z.string().nullable().describe('Its plate; null where none was given.'),
  fleet: z.string().nullable().describe('Its fleet number; null where none was given.'),
};

/** Of figures that prove nothing. */
export const markSchema = z.enum(['simulated', 'replayed']);
export const sources = summarySchema.shape.sources;
/** Empty where everything came in its turn. */
export const outOfOrder = z
  .array(outOfOrderSchema)
  .describe('What came before its turn; empty where nothing did.');
export const figures = summarySchema.shape.figures;

export const decision = z
  .enum(['recall', 'inform', 'accept', 'redone'])
  .describe('What was decided: call the vehicle back, its owner was told, leave it as it is, or done again.');
