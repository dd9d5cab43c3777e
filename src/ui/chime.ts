/** What is to be heard by those who look at the engine: one stroke for OK, three for NOT OK, two for all that is asked. */
import { jumpedTo } from '../job/situation.ts';
import type { JobState } from '../job/state.ts';

export type Chime = 'ok' | 'notOk' | 'question';

/** Strokes lie far enough apart to be counted. */
const SPACING_MS = 220;
const STROKES: Readonly<Record<Chime, number>> = { ok: 1, question: 2, notOk: 3 };

/** What became known between two states; null where nothing did. What is not OK goes before a question, and both before an OK. */
export function chimeFor(before: JobState, after: JobState): Chime | null {
  const isNew = after.lastVerdict !== null && after.lastVerdict !== before.lastVerdict;
  if (isNew && after.lastVerdict.judgement.result !== 'OK') return 'notOk';
  const lost = Object.values(after.tools).some(
    ({ tool, link }) => link === 'lost' && before.tools[tool]?.link === 'linked',
  );
  if (lost) return 'notOk';
  const askedBefore = new Set(before.questions.map(({ pull }) => pull));
  if (after.questions.some(({ pull }) => !askedBefore.has(pull))) return 'question';
  if (after.tooEarly !== null && after.tooEarly !== before.tooEarly) return 'question';
  if (after.torqueTarget !== before.torqueTarget && jumpedTo(after) !== null) return 'question';
  return isNew ? 'ok' : null;
}

/** When the bell is struck, in ms from now. */
export const strokesOf = (chime: Chime): readonly number[] =>
  Array.from({ length: STROKES[chime] }, (_, i) => i * SPACING_MS);
