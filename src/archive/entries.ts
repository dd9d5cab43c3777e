/** Kept entries, read. Whoever has the key of a log may sign anything: nothing is believed to be an entry before it was read as one. */
import { z } from 'zod';
import { isJobEntry, isStationEntry, readEntry } from '../evidence/entry.ts';
import { type AnyEntry, type LogEntry, STATION_STREAM } from '../evidence/log.ts';
import { utf8 } from '../evidence/platform/bytes.ts';
import { parseStrictJson } from '../evidence/strict-json.ts';
import type { ShippedEntry } from './bundle.ts';
import { jsonIn } from './json.ts';

/** An entry with the number that its place in the log gives it. */
export interface NumberedEntry extends ShippedEntry {
  readonly seq: number;
}

const placeSchema = z.object({
  seq: z.int().min(1),
  stream: z.string().max(60),
  event: z.object({ type: z.string() }),
});

/** What a kept entry is about; null for what is no entry of a station's log, which whoever has its key may sign as well. */
export function aboutEntry({
  seq,
  body,
}: NumberedEntry): { readonly stream: string; readonly isSamples: boolean } | null {
  const read = placeSchema.safeParse(jsonIn(body));
  return read.success && read.data.seq === seq
    ? { stream: read.data.stream, isSamples: read.data.event.type === 'readings' }
    : null;
}

/** The entry itself; null where this version cannot read it. */
export function entryFrom({ seq, body, disclosures }: NumberedEntry): AnyEntry | null {
  const json = parseStrictJson(utf8(body), `entry ${seq}`);
  const read = json.ok ? readEntry(json.value, disclosures, `entry ${seq}`) : null;
  return read?.ok === true && read.value.seq === seq ? read.value : null;
}

/** The entries of one job, from its opening on; null where one of them cannot be read, or is not in its place. */
export function jobEntriesFrom(entries: readonly NumberedEntry[]): readonly LogEntry[] | null {
  const read: LogEntry[] = [];
  for (const entry of entries.map(entryFrom)) {
    if (entry === null || !isJobEntry(entry) || entry.n <= (read.at(-1)?.n ?? 0)) return null;
    read.push(entry);
  }
  return read[0]?.n === 1 ? read : null;
}

/** Whether an entry of the station's own stream can be read; what cannot is no part of the history. */
export function isOfStation(entry: NumberedEntry): boolean {
  const read = entryFrom(entry);
  return read !== null && isStationEntry(read) && read.stream === STATION_STREAM;
}
