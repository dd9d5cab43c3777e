/** The words of an impact assessment: how its proofs came out, and what was decided about its jobs. */
import type { Sort } from '../audit/impact.ts';
import type { Decided, ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import type { ImpactItem } from '../evidence/station-event.ts';

export const SORT_WORD: Readonly<Record<Sort, string>> = {
  'still-in': 'STILL IN',
  doubtful: 'DOUBTFUL',
  out: 'OUT',
};

/** A decision in the word of the command that made it. */
export const decisionWords = ({ decision, redoneIn }: Decided): string =>
  redoneIn === null ? decision : `${decision} in ${redoneIn}`;

/** Where a job of an impact assessment stands. */
export function standOf({ decided, open }: ItemState): string {
  const last = decided.at(-1);
  if (last === undefined) return 'NOT DECIDED';
  return open ? 'RECALL, not redone yet' : decisionWords(last);
}

type NotHolding = ImpactItem['attempts'][number];

/** How a proof came out; "with both" where the value of that day was beyond the limits too. */
export function sortWords({ sort, covered, was, lowerLimit, upperLimit }: NotHolding): string {
  const beyond = was !== null && (was < lowerLimit || was > upperLimit);
  const both = sort === 'out' && beyond ? ', with both' : '';
  return `${SORT_WORD[sort]}${both}${covered ? '' : ', beyond the points tested'}`;
}

/** What counts as a proof, and where the other attempts went. */
export function proofWords({ attempts, stillIn, doubtful, out }: ImpactAssessment['assessed']): string {
  const proofs = stillIn + doubtful + out;
  const others = attempts - proofs;
  const rest =
    others === 0
      ? ''
      : ` The other ${others} prove nothing: not OK that day, done again since, or of a void job.`;
  return `${counted(attempts, 'attempt')}, ${counted(proofs, 'proof')}. A proof is the last attempt on a plug that was OK, or a later re-hit or check that went above the window.${rest}`;
}

export const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

/** The headline of an impact assessment: a word, and a sentence with its counts. */
export function outcomeOf({ assessed, items, closed }: ImpactAssessment): {
  readonly word: string;
  readonly text: string;
} {
  const { stillIn, doubtful, out } = assessed;
  const open = items.filter((item) => item.open).length;
  const word = out > 0 ? 'PROOFS DO NOT HOLD' : doubtful > 0 ? 'PROOFS IN DOUBT' : 'ALL PROOFS HOLD';
  const counts = `Of ${counted(stillIn + doubtful + out, 'proof')} ${stillIn} still in, ${doubtful} doubtful, ${out} out; ${counted(items.length, 'job')} touched, ${open} open.`;
  const end = closed === null ? ' Not closed.' : ` Closed on ${closed.at.slice(0, 10)} by ${closed.by}.`;
  return { word, text: counts + end };
}

/** What is out first. */
export const byGravity = (a: ItemState, b: ItemState) => Number(b.sort === 'out') - Number(a.sort === 'out');

export const cylindersOf = ({ attempts }: ItemState, sort: Exclude<Sort, 'still-in'>) =>
  [...new Set(attempts.filter((one) => one.sort === sort).map(({ cylinder }) => cylinder))]
    .sort((a, b) => a - b)
    .join(', ');
