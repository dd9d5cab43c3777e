/** A gap that came before its turn can be kept where a step was passed over, and nowhere else. */
import { type Step, stepSchema } from './order-of-work.ts';
import type { JobState } from './state.ts';

/** The step that the gap measured last came before; null where no gap is held that could be kept. */
export function heldGapStep({ tooEarly, gapWindow }: JobState): Step | null {
  if (tooEarly?.what !== 'gap' || gapWindow === null) return null;
  return stepSchema.safeParse(tooEarly.because).data ?? null;
}
