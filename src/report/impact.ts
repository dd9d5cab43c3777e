/** The words of an impact assessment: how its proofs came out, and what was decided about its jobs. */

import type { Sort } from '../audit/impact.ts';
import type { Decided, ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import type { ImpactItem } from '../evidence/station-event.ts';
import { phrases, plural, w } from '../words/catalogue.ts';

export const SORT_WORD: Readonly<Record<Sort, string>> = phrases({
  'still-in': 'STILL IN',
  doubtful: 'DOUBTFUL',
  out: 'OUT',
});

const DECISION_WORD: Readonly<Record<Decided['decision'], string>> = phrases({
  recall: 'recall',
  inform: 'inform',
  accept: 'accept',
  redone: 'redone',
});

/** A decision in the word of the command that made it. */
export const decisionWords = ({ decision, redoneIn }: Pick<Decided, 'decision' | 'redoneIn'>): string =>
  redoneIn === null ? DECISION_WORD[decision] : w`${DECISION_WORD[decision]} in ${redoneIn}`;

/** Where a job of an impact assessment stands. */
export function standOf({ decided, open }: ItemState): string {
  const last = decided.at(-1);
  if (last === undefined) return w`NOT DECIDED`;
  return open ? w`RECALL, not redone yet` : decisionWords(last);
}

type NotHolding = ImpactItem['attempts'][number];

/** How a proof came out; "with both" where the value of that day was beyond the limits too. */
export function sortWords({ sort, covered, was, lowerLimit, upperLimit }: NotHolding): string {
  const beyond = was !== null && (was < lowerLimit || was > upperLimit);
  const both = sort === 'out' && beyond ? w`, with both` : '';
  return `${SORT_WORD[sort]}${both}${covered ? '' : w`, beyond the points tested`}`;
}

/** What counts as a proof, and where the other attempts went. */
export function proofWords({ attempts, stillIn, doubtful, out }: ImpactAssessment['assessed']): string {
  const proofs = stillIn + doubtful + out;
  const others = attempts - proofs;
  const rest =
    others === 0
      ? ''
      : ` ${w`The other ${others} prove nothing: not OK that day, done again since, or of a void job.`}`;
  const counts = `${attemptsText(attempts)}, ${proofsText(proofs)}. `;
  return `${counts}${w`A proof is the last attempt on a plug that was OK, or a later re-hit or check that went above the window.`}${rest}`;
}

export const attemptsText = (count: number) => plural(count, { one: '# attempt', other: '# attempts' });
export const proofsText = (count: number) => plural(count, { one: '# proof', other: '# proofs' });
export const jobsText = (count: number) => plural(count, { one: '# job', other: '# jobs' });

/** The headline of an impact assessment: a word, and a sentence with its counts. */
export function outcomeOf({ assessed, items, closed }: ImpactAssessment): {
  readonly word: string;
  readonly text: string;
} {
  const { stillIn, doubtful, out } = assessed;
  const open = items.filter((item) => item.open).length;
  const word = out > 0 ? w`PROOFS DO NOT HOLD` : doubtful > 0 ? w`PROOFS IN DOUBT` : w`ALL PROOFS HOLD`;
  const counts = w`Of ${proofsText(stillIn + doubtful + out)} ${stillIn} still in, ${doubtful} doubtful, ${out} out; ${jobsText(items.length)} touched, ${open} open.`;
  const end = closed === null ? w`Not closed.` : w`Closed on ${closed.at.slice(0, 10)} by ${closed.by}.`;
  return { word, text: `${counts} ${end}` };
}

/** What is out first. */
export const byGravity = (a: ItemState, b: ItemState) => Number(b.sort === 'out') - Number(a.sort === 'out');

export const cylindersOf = ({ attempts }: Pick<ItemState, 'attempts'>, sort: Exclude<Sort, 'still-in'>) =>
  [...new Set(attempts.filter((one) => one.sort === sort).map(({ cylinder }) => cylinder))]
    .sort((a, b) => a - b)
    .join(', ');
