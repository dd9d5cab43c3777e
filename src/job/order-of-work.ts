/** The order of the work: the steps that come before others, and how much the shop makes of each. */
import { z } from 'zod';

/** In the order of the work. `afterwards` comes behind the last torque, all others before the first one on their plug. */
export const STEPS = [
  'windows',
  'before-removal',
  'old-plugs',
  'new-plugs',
  'gap',
  'fitting',
  'afterwards',
] as const;
export const stepSchema = z.enum(STEPS);
export type Step = z.infer<typeof stepSchema>;

/** `binding`: what came before it proves nothing by itself. `told`: it counts, and is an exception. `free`: nothing is said. */
export const strictnessSchema = z.enum(['binding', 'told', 'free']);
export type Strictness = z.infer<typeof strictnessSchema>;

const WHAT: Readonly<Record<Step, string>> = {
  windows: 'The windows are confirmed before the first pull.',
  'before-removal': 'The list before removal is confirmed before the first old plug comes out.',
  'old-plugs': 'An old plug is read before the new one goes in.',
  'new-plugs': 'A new plug is checked before it goes in.',
  gap: 'The gap of a plug is measured before it goes in. A gap that is measured later never counts.',
  fitting: 'The list before fitting is confirmed before the first pull.',
  afterwards: 'The list for afterwards is confirmed after the last pull.',
};

const every = <T extends z.ZodType>(of: (step: Step) => T) =>
  ({
    windows: of('windows'),
    'before-removal': of('before-removal'),
    'old-plugs': of('old-plugs'),
    'new-plugs': of('new-plugs'),
    gap: of('gap'),
    fitting: of('fitting'),
    afterwards: of('afterwards'),
  }) as const;

/** Each step with its strictness, as a job freezes it. */
export const orderOfWorkSchema = z.strictObject(every((step) => strictnessSchema.describe(WHAT[step])));
export type OrderOfWork = z.infer<typeof orderOfWorkSchema>;

/** What a shop says of it; a step that is not named is binding. */
export const shopOrderSchema = z.strictObject(
  every((step) => strictnessSchema.exactOptional().describe(WHAT[step])),
);

const all = (strictness: Strictness): OrderOfWork => ({
  windows: strictness,
  'before-removal': strictness,
  'old-plugs': strictness,
  'new-plugs': strictness,
  gap: strictness,
  fitting: strictness,
  afterwards: strictness,
});

/** Of a job that was opened before the order of work was written into it. */
export const ALL_FREE: OrderOfWork = all('free');

/** The order of a job, defaults filled in. A shop that wants no steps around the torque is still told of a gap that came late. */
export function orderOfWork(
  routine: { readonly order?: z.infer<typeof shopOrderSchema> } | undefined,
): OrderOfWork {
  if (routine === undefined) return { ...ALL_FREE, gap: 'told' };
  return { ...all('binding'), ...routine.order };
}
