import { readCheckpoint } from '../evidence/checkpoint.ts';
import { entryHash } from '../evidence/entry.ts';
import { checkSignatures } from '../evidence/jws.ts';
import { heldAgainst, type LogNow } from '../evidence/kept-checkpoints.ts';
import type { LogEntry } from '../evidence/log.ts';
import { isSame } from '../evidence/platform/bytes.ts';
import { openRecord } from '../evidence/record.ts';
import type { StationState } from '../evidence/station.ts';
import type { OneByOne } from './folder.ts';

/** What a record that was sealed before has to fit. */
interface Fit {
  readonly station: StationState;
  readonly log: LogNow;
  readonly job: string;
  readonly entries: readonly LogEntry[];
}

/** A record from before, and the size that the log had when it was sealed. */
interface Sealed {
  readonly bytes: Uint8Array;
  readonly size: number;
}

/** The first that this station sealed of this job as it is now, and that nobody touched; null where none is. */
export async function sealedBefore(records: OneByOne<Uint8Array>, fit: Fit): Promise<Sealed | null> {
  for await (const bytes of records) {
    const size = sealedSize(bytes, fit);
    if (size !== null) return { bytes, size };
  }
  return null;
}

function sealedSize(bytes: Uint8Array, { station, log, job, entries }: Fit): number | null {
  const opened = openRecord(bytes);
  if (!opened.ok) return null;
  const { record, jws, payload } = opened.value;
  if (record.job !== job || !sameEntries(record.entries, entries)) return null;
  const reports = checkSignatures(jws, payload);
  const own = new Set(station.keys.map(({ kid }) => kid));
  const stations = reports.flatMap(({ signer }) => (signer?.role === 'station' ? [signer.kid] : []));
  const ours = stations.length > 0 && stations.every((kid) => own.has(kid));
  const sound = ours && reports.every(({ fault }) => fault === null);
  const note = readCheckpoint(record.log.checkpoint, job);
  if (!sound || !note.ok) return null;
  return heldAgainst(log, [note.value])[0]?.kind === 'extends' ? note.value.size : null;
}

/** Signed alike; what of their texts is still disclosed may differ. */
const sameEntries = (some: readonly LogEntry[], others: readonly LogEntry[]): boolean =>
  some.length === others.length &&
  some.every((entry, i) => others[i] !== undefined && isSame(entryHash(entry), entryHash(others[i])));
