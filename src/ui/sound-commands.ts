/** What the shop wants to be heard beside the bell: a command of its own for each. */
import { z } from 'zod';

const command = z
  .array(z.string().min(1).max(200))
  .min(1)
  .max(12)
  .describe('Program and arguments, one a string. No shell reads them.');

export const soundSchema = z
  .strictObject({
    ok: command.exactOptional().describe('After an OK.'),
    notOk: command.exactOptional().describe('After NOT OK and UNDECIDED, and when a tool is lost.'),
    question: command
      .exactOptional()
      .describe('When something is asked, came too early, or another cylinder is due.'),
  })
  .describe('Commands that sound or speak beside the bell.');
export type Sound = z.infer<typeof soundSchema>;
