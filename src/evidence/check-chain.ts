/** Finds the first place where a log, or one stream of it, is not what `chain` made. */
import { entryHash } from './chain.ts';
import { type LogEntry, NO_ENTRY } from './log.ts';

/** The first entry that does not follow from those before it; `index` counts from 0 in the list that was checked. */
export interface ChainBreak {
  readonly index: number;
  readonly kind: 'stream' | 'seq' | 'n' | 'prev' | 'clock';
  readonly message: string;
}

/** Checks a whole station log from its first entry: no hole in `seq`, every `prev` right, every stream whole. */
export function checkLog(entries: Iterable<LogEntry>): ChainBreak | null {
  const lastOfStream = new Map<string, LogEntry>();
  let before: LogEntry | undefined;
  for (const entry of entries) {
    const index = before?.seq ?? 0;
    const found =
      entry.seq === index + 1
        ? (prevBreak(before, entry) ?? streamBreak(lastOfStream.get(entry.stream), entry))
        : ({ kind: 'seq', message: `entry ${entry.seq} stands where ${index + 1} is due` } as const);
    if (found !== null) return { index, ...found };
    lastOfStream.set(entry.stream, entry);
    before = entry;
  }
  return null;
}

/**
 * Checks the entries of one stream: all of it from n = 1, in the order of the log, the monotonic clock never running
 * back within a session, and `prev` right wherever two entries were neighbours in the log (between others stood
 * entries of other streams, which a single record does not hold).
 */
export function checkStream(entries: readonly LogEntry[]): ChainBreak | null {
  for (const [index, entry] of entries.entries()) {
    const before = entries[index - 1];
    const found = streamBreak(before, entry) ?? seqBreak(before, entry) ?? prevBreak(before, entry);
    if (found !== null) return { index, ...found };
  }
  return null;
}

type Found = Omit<ChainBreak, 'index'>;

function streamBreak(before: LogEntry | undefined, entry: LogEntry): Found | null {
  if (before !== undefined && entry.stream !== before.stream)
    return {
      kind: 'stream',
      message: `entry ${entry.seq} belongs to another stream than the ones before it`,
    };
  const n = (before?.n ?? 0) + 1;
  if (entry.n !== n)
    return { kind: 'n', message: `entry n=${entry.n} of its stream stands where n=${n} is due` };
  // A new session has a clock with a new origin; the wall clock may be set right at any time and proves nothing.
  if (before !== undefined && entry.event.type !== 'session-started' && entry.monoUs < before.monoUs)
    return { kind: 'clock', message: `the session's clock runs back at entry n=${entry.n}` };
  return null;
}

function seqBreak(before: LogEntry | undefined, entry: LogEntry): Found | null {
  if (before === undefined || entry.seq > before.seq) return null;
  return { kind: 'seq', message: `entry ${entry.seq} stands after entry ${before.seq}` };
}

function prevBreak(before: LogEntry | undefined, entry: LogEntry): Found | null {
  const first = entry.seq === 1;
  if (!first && before?.seq !== entry.seq - 1) return null;
  const due = first || before === undefined ? NO_ENTRY : entryHash(before);
  if (entry.prev === due) return null;
  return { kind: 'prev', message: `entry ${entry.seq} does not hold the hash of the entry before it` };
}
