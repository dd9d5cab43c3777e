/** What the two clocks of a job say of one another: the monotonic one cannot run back, the wall clock may be set. */
import { decodeSamples } from '../pull/trace.ts';
import type { LogEntry, StationEntry } from './log.ts';

/** A jump of the wall clock against the monotonic one. */
export interface ClockJump {
  /** The entry in front of which it happened. */
  readonly n: number;
  /** Seconds that the wall clock went ahead (or back, where negative). */
  readonly seconds: number;
}

export interface ClockReport {
  /** Why the times cannot be what a station wrote; null when they can. */
  readonly fault: string | null;
  readonly jumps: readonly ClockJump[];
}

/** Clocks drift, and network time corrects them in small steps; what is larger, a reader should see. */
const JUMP_MS = 2000;

/** The last two may come from a command of its own, between or after sessions. */
const CLOCK_ANEW: ReadonlySet<LogEntry['event']['type']> = new Set([
  'session-started',
  'job-handed-over',
  'job-voided',
]);

/**
 * Holds the times of a job's entries against one another. Within a session the monotonic clock must not run back, and no
 * sample may have been taken after it was written. A session starts the monotonic clock anew; the wall clock must not
 * have gone back meanwhile, nor behind an entry of the station's own that stands earlier in the log, or it counts as a
 * jump: so does a job that was given an earlier date.
 */
export function checkClock(
  entries: readonly LogEntry[],
  background: readonly StationEntry[] = [],
): ClockReport {
  const jumps: ClockJump[] = [];
  for (const [i, entry] of entries.entries()) {
    const before = entries[i - 1];
    const fresh = before === undefined || CLOCK_ANEW.has(entry.event.type);
    if (!fresh && entry.monoUs < before.monoUs)
      return { fault: `the monotonic clock runs back at entry n=${entry.n}`, jumps };
    const last = lastSampleUs(entry);
    if (last !== null && last > entry.monoUs)
      return { fault: `entry n=${entry.n} holds a sample from after it was written`, jumps };
    const station = background.findLast(({ seq }) => seq < entry.seq && seq > (before?.seq ?? 0));
    const ahead = before === undefined ? 0 : aheadMs(before, entry, fresh);
    const behind = station === undefined ? 0 : aheadMs(station, entry, true);
    const jump = behind < -JUMP_MS ? behind : ahead;
    if (Math.abs(jump) > JUMP_MS) jumps.push({ n: entry.n, seconds: Math.round(jump / 1000) });
  }
  return { fault: null, jumps };
}

/** How far the wall clock went beyond the monotonic one; between sessions only going back can be told. */
function aheadMs(before: LogEntry | StationEntry, entry: LogEntry, fresh: boolean): number {
  const wall = Date.parse(entry.at) - Date.parse(before.at);
  return fresh ? Math.min(0, wall) : wall - (entry.monoUs - before.monoUs) / 1000;
}

/** When the last reading of an entry arrived; null where it holds none, or none that can be read. */
function lastSampleUs({ event }: LogEntry): number | null {
  if ('atUs' in event) return event.atUs;
  if ('toUs' in event) return event.toUs;
  if (event.type !== 'readings') return null;
  const samples = decodeSamples(event);
  return samples.ok ? (samples.value.atUs.at(-1) ?? null) : null;
}

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

/** The same in words; null where it is in its place. */
export function outOfPlaceWords(days: number): string | null {
  if (days === 0) return null;
  const count = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  return days < 0
    ? `it is dated ${count} before what stands in front of it in the log`
    : `it is dated ${count} after what stands behind it in the log`;
}
