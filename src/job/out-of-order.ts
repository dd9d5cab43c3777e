/** What came before its turn, as it is written: work out of order, and gaps that belong to no plug. */
import { z } from 'zod';
import { phrases } from '../words/catalogue.ts';
import { type Step, stepSchema } from './order-of-work.ts';

export const outOfOrderSchema = z.strictObject({
  step: stepSchema.describe(
    'The step that had not been done; of `afterwards`: the list that was confirmed already.',
  ),
  what: z
    .enum(['pull', 'loosening', 'old-plug', 'by-angle', 'gap'])
    .describe(
      'What came too early: a pull, an old plug loosened or read, a plug turned by an angle, a gap that is kept.',
    ),
  cylinder: z.int().min(1).exactOptional().describe('The cylinder; absent where nobody knows it.'),
  pull: z.int().min(1).exactOptional().describe('Number of the pull, where it was one.'),
  doneAgain: z.literal(true).exactOptional().describe('The plug came out since: it stands no more.'),
});
export type OutOfOrder = z.infer<typeof outOfOrderSchema>;

export const outOfTurnSchema = z
  .enum([
    ...stepSchema.exclude(['gap', 'fitting', 'afterwards']).options,
    'old-gap-known',
    'plug-fitted',
    'pulled-early',
    'none-due',
    'not-possible',
  ])
  .describe(
    'Why it belongs to no plug: the step that comes first; or the gap of the old plug at hand is known already, the plug whose gap is open is in the engine, or was pulled and nobody has said that it is out, no gap is due, or no plug has such a gap.',
  );
export type OutOfTurn = z.infer<typeof outOfTurnSchema>;

/** What came before its turn, or after it. */
export const EARLY_WORDS: Readonly<Record<Step, string>> = phrases({
  windows: 'before the windows were confirmed',
  'before-removal': 'before the list before removal was confirmed',
  'old-plugs': 'before its old plug was read',
  'new-plugs': 'before its new plug was checked',
  gap: 'before the gap of its plug was proven',
  fitting: 'before the list before fitting was confirmed',
  afterwards: 'after the list for afterwards was confirmed',
});
