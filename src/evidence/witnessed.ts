/** What a policy makes of the cosignatures on a checkpoint. */
import type { SignedCheckpoint } from './checkpoint.ts';
import { cosignaturesOn } from './cosignature.ts';
import type { Policy } from './policy.ts';

/** Which witnesses of a policy cosigned, and whether they are enough. */
export interface Witnessed {
  /** By their names in the policy, with the time of each (ISO), the earliest first. */
  readonly by: readonly { readonly witness: string; readonly at: string }[];
  /** How many witnesses the policy names. */
  readonly of: number;
  readonly enough: boolean;
  /** By when enough of them had cosigned; null where they have not, or where the policy asks for none. */
  readonly since: string | null;
}

/** A cosignature that is dated further ahead of the reader's clock than this counts for nothing. */
const AHEAD_MS = 86_400_000;

/** Null where the note has a cosignature of one of the policy's witnesses that does not hold: nobody signed such a note. */
export function witnessedBy(
  policy: Policy,
  checkpoint: SignedCheckpoint,
  readAt: string | null,
): Witnessed | null {
  const keys = policy.witnesses.map(({ key }) => key);
  const cosignatures = cosignaturesOn(checkpoint, keys);
  if (cosignatures === null) return null;
  const by = policy.witnesses
    .flatMap(({ name, key }) => {
      const times = cosignatures.filter((one) => one.key === key && !isAhead(one.at, readAt));
      const [first] = times.map(({ at }) => at).sort();
      return first === undefined ? [] : [{ witness: name, at: first }];
    })
    .sort((a, b) => (a.at < b.at ? -1 : 1));
  const isEnough = (count: number) =>
    policy.isQuorum(new Set(by.slice(0, count).map(({ witness }) => witness)));
  const counts = [...by.keys()].map((i) => i + 1);
  const count = counts.find(isEnough);
  return {
    by,
    of: keys.length,
    enough: isEnough(by.length),
    since: isEnough(0) || count === undefined ? null : (by[count - 1]?.at ?? null),
  };
}

const isAhead = (at: string, readAt: string | null) =>
  readAt !== null && Date.parse(at) - Date.parse(readAt) > AHEAD_MS;
