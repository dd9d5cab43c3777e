import type { ImpactItem } from '../evidence/station-event.ts';
import type { AttemptRow } from './attempt.ts';
import type { JudgedAgain, Sort } from './impact.ts';

/** What an impact assessment comes to. */
export interface Assessment {
  /** How many attempts were looked at. */
  readonly attempts: number;
  /** Of the proofs that jobs rest on: one a cylinder and quantity. */
  readonly stillIn: number;
  readonly doubtful: number;
  readonly out: number;
  /** The jobs that do not stand as they did, in the order of the log. */
  readonly items: readonly ImpactItem[];
  /** All that was looked at, as it was given. */
  readonly sorted: readonly Sorted[];
}

/** An attempt with what it means to its job. */
export interface Sorted extends JudgedAgain {
  /** A job rested on it. */
  readonly isProof: boolean;
  /** It decides what its plug comes to, and is counted once; null for all others. */
  readonly counts: Sort | null;
  /** Number of the later pull that decides in its place; null where none does. */
  readonly overtakenBy: number | null;
}

/**
 * What the jobs still rest on. Of each cylinder that counts which stands for the plug that is in the engine, and was OK;
 * a re-hit or a check behind it can take that away, if with the found error it went above the window. A void job proved
 * nothing, so nothing of it is in question. `ofJobs` are attempts of the same jobs with whatever tool: a re-hit or a check
 * counts as well where the proof before it came from another tool.
 */
export function assess(judged: readonly JudgedAgain[], ofJobs: readonly AttemptRow[] = []): Assessment {
  const count = { 'still-in': 0, doubtful: 0, out: 0 };
  const touched = new Map<string, { readonly row: AttemptRow; readonly attempts: ImpactItem['attempts'] }>();
  const deciding = proofsOf(judged, ofJobs);
  for (const proof of deciding.values()) {
    count[proof.sort] += 1;
    if (proof.sort === 'still-in') continue;
    const { row, again, covered, sort } = proof;
    const job = touched.get(row.stream) ?? { row, attempts: [] };
    job.attempts.push({
      cylinder: row.cylinder,
      quantity: row.quantity,
      number: row.number,
      source: row.source,
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
  const items = [...touched.values()].map(({ row, attempts }): ImpactItem => {
    const sort = attempts.some((one) => one.sort === 'out') ? 'out' : 'doubtful';
    const { job, on, vin, plate, fleet } = row;
    return { job, on, vin, plate, fleet, sort, attempts };
  });
  const { doubtful, out } = count;
  const sorted = judged.map((one): Sorted => {
    const isStanding = isProof(one.row) && !one.row.voided;
    const decides = deciding.get(placeOf(one.row));
    const counts = decides?.row === one.row ? one.sort : null;
    const overtakenBy = isStanding && counts === null ? (decides?.row.number ?? null) : null;
    return { ...one, isProof: isStanding, counts, overtakenBy };
  });
  return { attempts: judged.length, stillIn: count['still-in'], doubtful, out, items, sorted };
}

type Proof = JudgedAgain & { readonly sort: Sort; readonly again: NonNullable<JudgedAgain['again']> };

const isJudged = (one: JudgedAgain): one is Proof => one.sort !== null && one.again !== null;

/** The attempt that decides about each cylinder and quantity: the worst of what it stands with. */
function proofsOf(judged: readonly JudgedAgain[], ofJobs: readonly AttemptRow[]): ReadonlyMap<string, Proof> {
  const standing = new Map<string, Proof>();
  const provedAt = new Map<string, number>();
  for (const row of [...ofJobs, ...judged.map((one) => one.row)])
    if (isProof(row)) provedAt.set(placeOf(row), row.number);
  const proved = judged.filter(isJudged).filter(({ row }) => !row.voided);
  for (const proof of proved) if (isProof(proof.row)) standing.set(placeOf(proof.row), proof);
  for (const proof of proved) {
    const { row, sort } = proof;
    const place = placeOf(row);
    const at = provedAt.get(place);
    if (!isRepeat(row) || at === undefined || row.number <= at) continue;
    // Without one that stands, the tool that was out of tolerance proved nothing here: another did.
    if (GRAVITY[sort] > GRAVITY[standing.get(place)?.sort ?? 'still-in']) standing.set(place, proof);
  }
  return standing;
}

/** A pull on a plug that was tight: it counts only for having gone above the window. */
export const isRepeat = ({ kind }: AttemptRow): boolean => kind === 'rehit' || kind === 'check';

const isProof = ({ last, result }: AttemptRow) => last && result === 'OK';

const GRAVITY: Readonly<Record<Sort, number>> = { 'still-in': 0, doubtful: 1, out: 2 };

const placeOf = ({ stream, cylinder, quantity }: AttemptRow) => `${stream} ${cylinder} ${quantity}`;
