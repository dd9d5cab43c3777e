/** What the forms of answers (`--json`) share. Figures, codes and identifiers; times are ISO, UTC; text is that of the records. */
import { z } from 'zod';
import { jsonText } from '../terminal/json-text.ts';

/** The form of what a command with `--json` prints; named after the command, with hyphens. */
export const answer = <N extends string, T extends z.ZodRawShape>(name: N, shape: T) =>
  z.strictObject({ form: z.literal(`plugmark/${name}/1`), ...shape });

export const printJson = (value: unknown): void => void process.stdout.write(jsonText(value));

export const time = z.iso.datetime();
export const day = z.iso.date();
export const count = z.int().nonnegative();
export const quantity = z.enum(['torque', 'length']);
/** As UCUM writes it. Where an answer may be about torque or gap, its figures stand in this unit. */
export const unit = z.enum(['N.m', 'mm']);
export type AnswerUnit = z.infer<typeof unit>;
export const unitOf = (of: z.infer<typeof quantity>): AnswerUnit => (of === 'torque' ? 'N.m' : 'mm');

export const jobState = z.enum(['open', 'complete', 'incomplete', 'void']);

/** Why there is no figure. */
export const reason = z.strictObject({ code: z.string(), message: z.string() });
export const reasonOf = ({ code, message }: z.infer<typeof reason>) => ({ code, message });

export const vehicle = {
  vin: z.string().nullable(),
  plate: z.string().nullable(),
  fleet: z.string().nullable(),
};

export const decision = z.enum(['recall', 'inform', 'accept', 'redone']);
