/** Entries made by hand, as the log gives them back: salted, their personal texts concealed. */
import { isJobEntry, isStationEntry, personalTexts, written } from '../../src/evidence/entry.ts';
import { type AnyEntry, type LogEntry, STATION_STREAM, type StationEntry } from '../../src/evidence/log.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import type { JobEvent } from '../../src/job/event.ts';

/** Gives 128 bits at each call: all different, and the same ones in every run. */
export function salts(): () => string {
  let count = 0;
  return () => {
    const bytes = Buffer.alloc(16, 0xa5);
    bytes.writeUInt32BE(++count);
    return bytes.toString('base64url');
  };
}

const anySalt = salts();

export interface Given {
  readonly seq?: number;
  readonly n?: number;
  readonly at?: string;
  readonly monoUs?: number;
  readonly by?: string;
  readonly salt?: () => string;
}

export function jobEntry(event: JobEvent, given: Given = {}, job = 'WO-1'): LogEntry {
  const entry = made(`job:${job}`, event, given);
  if (!isJobEntry(entry)) throw new Error('an entry of the station came from the stream of a job');
  return entry;
}

export function stationEntry(event: StationEvent, given: Given = {}): StationEntry {
  const entry = made(STATION_STREAM, event, given);
  if (!isStationEntry(entry)) throw new Error('an entry of a job came from the stream of the station');
  return entry;
}

function made(
  stream: string,
  event: JobEvent | StationEvent,
  { seq = 1, n = seq, at = '2026-03-02T09:30:00.000Z', monoUs = 0, by = 'station', salt = anySalt }: Given,
): AnyEntry {
  const [one] = written({ seq: seq - 1, n: n - 1 }, stream, [{ by, event }], { at, monoUs }, salt);
  if (one === undefined) throw new Error('nothing was written');
  return one.entry;
}

/** An entry whose content a test has changed, its personal texts concealed as a station would that wrote it so. */
export function concealedAnew<T extends AnyEntry>(entry: T): T {
  const before = new Map(entry.concealed.map((one) => [one.place.join('.'), one]));
  const concealed = personalTexts(entry).map(
    ({ place }) => before.get(place.join('.')) ?? { place, salt: anySalt() },
  );
  return { ...entry, concealed };
}
