import type { LookBackItem } from '../evidence/station-event.ts';
import type { AttemptRow } from './attempt.ts';
import type { JudgedAgain, Sort } from './lookback.ts';

/** What a look-back comes to. */
export interface Assessment {
  /** How many attempts were looked at. */
  readonly attempts: number;
  /** Of the proofs that jobs rest on: one a cylinder and quantity. */
  readonly stillIn: number;
  readonly doubtful: number;
  readonly out: number;
  /** The jobs that do not stand as they did, in the order of the log. */
  readonly items: readonly LookBackItem[];
}

/**
 * What the jobs still rest on. Of each cylinder that counts which stands for the plug that is in the engine, and was OK;
 * a re-hit or a check behind it can take that away, if with the found error it went above the window. A void job proved
 * nothing, so nothing of it is in question.
 */
export function assess(judged: readonly JudgedAgain[]): Assessment {
  const count = { 'still-in': 0, doubtful: 0, out: 0 };
  const touched = new Map<
    string,
    { readonly row: AttemptRow; readonly attempts: LookBackItem['attempts'] }
  >();
  for (const proof of proofsOf(judged)) {
    count[proof.sort] += 1;
    if (proof.sort === 'still-in') continue;
    const { row, again, covered, sort } = proof;
    const job = touched.get(row.stream) ?? { row, attempts: [] };
    job.attempts.push({
      cylinder: row.cylinder,
      quantity: row.quantity,
      number: row.number,
      sort,
      was: row.valueSi,
      value: again.value,
      expanded: again.expandedUncertainty,
      lowerLimit: row.lowerLimit,
      upperLimit: row.upperLimit,
      covered,
    });
    touched.set(row.stream, job);
  }
  const items = [...touched.values()].map(({ row, attempts }): LookBackItem => {
    const sort = attempts.some((one) => one.sort === 'out') ? 'out' : 'doubtful';
    const { job, on, vin, plate, fleet } = row;
    return { job, on, vin, plate, fleet, sort, attempts };
  });
  const { doubtful, out } = count;
  return { attempts: judged.length, stillIn: count['still-in'], doubtful, out, items };
}

type Proof = JudgedAgain & { readonly sort: Sort; readonly again: NonNullable<JudgedAgain['again']> };

const isJudged = (one: JudgedAgain): one is Proof => one.sort !== null && one.again !== null;

/** The attempt that decides about each cylinder and quantity: the worst of what it stands with. */
function proofsOf(judged: readonly JudgedAgain[]): readonly Proof[] {
  const standing = new Map<string, Proof>();
  const proved = judged.filter(isJudged).filter(({ row }) => !row.voided);
  for (const proof of proved)
    if (proof.row.last && proof.row.result === 'OK') standing.set(placeOf(proof.row), proof);
  for (const proof of proved) {
    const { row } = proof;
    const stands = standing.get(placeOf(row));
    const repeats = row.kind === 'rehit' || row.kind === 'check';
    if (stands === undefined || !repeats || row.number <= stands.row.number) continue;
    if (GRAVITY[proof.sort] > GRAVITY[stands.sort]) standing.set(placeOf(row), proof);
  }
  return [...standing.values()];
}

const GRAVITY: Readonly<Record<Sort, number>> = { 'still-in': 0, doubtful: 1, out: 2 };

const placeOf = ({ stream, cylinder, quantity }: AttemptRow) => `${stream} ${cylinder} ${quantity}`;
