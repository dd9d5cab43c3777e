/** Times of entries held against their places in the log: the log itself is in order, whatever its clock was. */
import { plural, type Sentence } from '../words/catalogue.ts';

/** Where something stands in the log, and the time that its entry gives. */
export interface Moment {
  readonly seq: number;
  readonly at: string;
}

const DAY_MS = 86_400_000;

/** A run of entries, from its first to its last. */
export interface Span {
  readonly first: Moment;
  readonly last: Moment;
}

/**
 * By how many whole days a job lies out of the order of time in the log: negative where it is dated earlier than something
 * that stands before it, positive where it is dated later than something that stands behind it. The log itself is in order,
 * so that a job with another date than its own stands out among its neighbours.
 */
export function daysOutOfPlaceAmong(neighbours: readonly Moment[]): (job: Span) => number {
  const sorted = neighbours.map(({ seq, at }) => ({ seq, ms: Date.parse(at) })).sort((a, b) => a.seq - b.seq);
  /** The latest time of so many from the front, and the earliest of all from there on. */
  const latest = [Number.NEGATIVE_INFINITY];
  for (const { ms } of sorted) latest.push(Math.max(ms, latest.at(-1) ?? ms));
  const earliest = [Number.POSITIVE_INFINITY];
  for (const { ms } of sorted.toReversed()) earliest.push(Math.min(ms, earliest.at(-1) ?? ms));
  earliest.reverse();
  const countBelow = (limit: number) => {
    let [from, to] = [0, sorted.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((sorted[middle]?.seq ?? 0) < limit) from = middle + 1;
      else to = middle;
    }
    return from;
  };
  return ({ first, last }) => {
    const behind = (latest[countBelow(first.seq)] ?? 0) - Date.parse(first.at);
    const ahead = Date.parse(last.at) - (earliest[countBelow(last.seq + 1)] ?? 0);
    const days = Math.floor(Math.max(0, behind, ahead) / DAY_MS);
    return days > 0 && behind >= ahead ? -days : days;
  };
}

/** The most of the moments that follow one another in time as they do in the log: the longest run that never goes back. */
export function inOrderOfTime(moments: readonly Moment[]): readonly Moment[] {
  const sorted = [...moments].sort((a, b) => a.seq - b.seq);
  const ms = sorted.map(({ at }) => Date.parse(at));
  /** For each length, the place where the run of that length ends earliest; and for each place the one before it. */
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  for (const [i, time] of ms.entries()) {
    let [from, to] = [0, ends.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((ms[ends[middle] ?? 0] ?? 0) <= time) from = middle + 1;
      else to = middle;
    }
    before[i] = ends[from - 1];
    ends[from] = i;
  }
  const run: Moment[] = [];
  for (let i = ends.at(-1); i !== undefined; i = before[i]) {
    const moment = sorted[i];
    if (moment !== undefined) run.push(moment);
  }
  return run.reverse();
}

/** How far a job is out of its place, in words; null where it is in its place. */
export function outOfPlaceWords(days: number): Sentence | null {
  if (days === 0) return null;
  return days < 0
    ? () =>
        plural(-days, {
          one: 'it is dated # day before what stands in front of it in the log',
          other: 'it is dated # days before what stands in front of it in the log',
        })
    : () =>
        plural(days, {
          one: 'it is dated # day after what stands behind it in the log',
          other: 'it is dated # days after what stands behind it in the log',
        });
}
