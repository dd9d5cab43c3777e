import type { Answer } from '../../src/job/event.ts';
import type { Question } from '../../src/job/state.ts';
import type { Deed, Memory } from './memory.ts';

/**
 * A true answer to the question among those that it offers, or null. What he did comes first; about a pull that was too
 * strong or broke off he decides to do the plug again, which is true because he then does it. A plug that was hurt is
 * replaced. Asked whether he loosened a plug that he did not touch, he says that it was not turned.
 */
export function trueAnswer(question: Question, memory: Memory, hurt: boolean): Answer | null {
  const deed = memory.deedOf(question.pull);
  const clicked = memory.hasClicked(deed?.cylinder ?? question.cylinder);
  return wishes(question, deed, hurt, clicked).find((wish) => question.answers.includes(wish)) ?? null;
}

function wishes(
  { kind, cylinder, pull }: Question,
  deed: Deed | undefined,
  hurt: boolean,
  clicked: boolean,
): readonly Answer[] {
  if (kind === 'loosened' && deed !== undefined && deed.cylinder !== cylinder) return ['handling'];
  const again: readonly Answer[] = hurt ? ['replace', 'refit'] : ['refit', 'replace'];
  if (deed === undefined) return again;
  const did = pull === deed.lastPull ? deed.lastWas : deed.was;
  if (kind === 'no-click') return [clicked ? 'fresh' : 'unfinished'];
  if (did === 'fresh') return kind !== 'over-window' && kind !== 'cut' ? ['fresh', ...again] : again;
  return [did, ...again];
}
