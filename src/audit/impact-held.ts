/**
 * What the look-backs on one finding hold between them. A look-back saw nothing that was entered behind it, so that a tool
 * that was used on needs another; that one takes up only what none before it holds.
 */
import type { AttemptRow } from './attempt.ts';
import type { LookBack } from './impact-state.ts';

type Entered = Pick<AttemptRow, 'day' | 'seq'>;

/** Look-backs on the same file of what was found, the oldest first. */
export const onFinding = (lookBacks: readonly LookBack[], digest: string): readonly LookBack[] =>
  lookBacks.filter(({ made }) => made.digest === digest);

/** Whether one of them looked at an attempt, as it stands in the log now. */
export const isHeld = (onOne: readonly LookBack[], { day, seq }: Entered): boolean =>
  onOne.some((one) => one.made.from <= day && seq < one.seq);

/** The attempts of all jobs of which something is held by none of them: a job is judged as a whole. */
export function notHeld<Row extends AttemptRow>(
  rows: readonly Row[],
  onOne: readonly LookBack[],
): readonly Row[] {
  const streams = new Set(rows.filter((row) => !isHeld(onOne, row)).map(({ stream }) => stream));
  return rows.filter(({ stream }) => streams.has(stream));
}

/** A finding with the jobs since its newest look-back that none on it holds; void ones prove nothing and are left out. */
export interface Since {
  readonly newest: LookBack;
  readonly jobs: readonly string[];
}

/** Each finding once, with the newest look-back on it, and from when on what they have seen begins. */
export function findings(
  lookBacks: readonly LookBack[],
): readonly { readonly newest: LookBack; readonly from: string; readonly onOne: readonly LookBack[] }[] {
  return [...new Set(lookBacks.map(({ made }) => made.digest))].flatMap((digest) => {
    const onOne = onFinding(lookBacks, digest);
    const newest = onOne.at(-1);
    const [from] = onOne.map(({ made }) => made.from).sort();
    return newest === undefined || from === undefined ? [] : [{ newest, from, onOne }];
  });
}
