/** What the terminal's bell says for those who look at the engine: one stroke for OK, three for all that wants a look. */
import type { JobState } from '../job/state.ts';

export type Chime = 'good' | 'look';

/** Strokes lie far enough apart to be counted. */
const SPACING_MS = 220;
const STROKES: Readonly<Record<Chime, number>> = { good: 1, look: 3 };

/** What became known between two states; null where nothing did. A question or a verdict that is no OK goes first. */
export function chimeFor(before: JobState, after: JobState): Chime | null {
  const askedBefore = new Set(before.questions.map(({ pull }) => pull));
  if (after.questions.some(({ pull }) => !askedBefore.has(pull))) return 'look';
  if (
    Object.values(after.tools).some(
      ({ tool, link }) => link === 'lost' && before.tools[tool]?.link === 'linked',
    )
  )
    return 'look';
  if (after.tooEarly !== null && after.tooEarly !== before.tooEarly) return 'look';
  if (after.lastVerdict === null || after.lastVerdict === before.lastVerdict) return null;
  return after.lastVerdict.judgement.result === 'OK' ? 'good' : 'look';
}

/** When the bell is struck, in ms from now. */
export const strokesOf = (chime: Chime): readonly number[] =>
  Array.from({ length: STROKES[chime] }, (_, i) => i * SPACING_MS);
