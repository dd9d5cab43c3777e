/** What the two clocks of a job say of one another: the monotonic one cannot run back, the wall clock may be set. */
import { lastTakenUs } from '../pull/trace.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
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
  readonly fault: Sentence | null;
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
 * sample may have been taken after it was written; those of a recording have its own times. A session starts the monotonic clock anew; the wall clock must not
 * have gone back meanwhile, nor behind an entry of the station's own that stands earlier in the log, or it counts as a
 * jump: so does a job that was given an earlier date.
 */
export function checkClock(
  entries: readonly LogEntry[],
  background: readonly StationEntry[] = [],
): ClockReport {
  const jumps: ClockJump[] = [];
  const replayed = new Set<string>();
  for (const [i, entry] of entries.entries()) {
    const before = entries[i - 1];
    const fresh = before === undefined || CLOCK_ANEW.has(entry.event.type);
    if (!fresh && entry.monoUs < before.monoUs)
      return { fault: sentence`the monotonic clock runs back at entry n=${entry.n}`, jumps };
    noteSource(replayed, entry);
    const last = isReplayed(replayed, entry) ? null : lastSampleUs(entry);
    if (last !== null && last > entry.monoUs)
      return { fault: sentence`entry n=${entry.n} holds a sample from after it was written`, jumps };
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

/** Keeps the tools that stand for a recording, by their last link: it may be played faster than it was recorded. */
function noteSource(replayed: Set<string>, { event }: LogEntry): void {
  if (event.type !== 'tool-linked') return;
  if (event.source === 'replayed') replayed.add(event.tool);
  else replayed.delete(event.tool);
}

const isReplayed = (replayed: ReadonlySet<string>, { event }: LogEntry): boolean =>
  'tool' in event && replayed.has(event.tool);

/** When the last reading of an entry arrived; null where it holds none, or none that can be read. */
function lastSampleUs({ event }: LogEntry): number | null {
  if ('atUs' in event) return event.atUs;
  if ('toUs' in event) return event.toUs;
  return event.type === 'readings' ? lastTakenUs(event) : null;
}
