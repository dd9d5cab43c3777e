import { join } from 'node:path';
import { canonicalBytes } from '../evidence/canonical.ts';
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { checkSignatures } from '../evidence/jws.ts';
import { heldAgainst, type LogNow } from '../evidence/kept-checkpoints.ts';
import type { LogEntry } from '../evidence/log.ts';
import { MAX_RECORD_BYTES, openRecord } from '../evidence/record.ts';
import type { StationState } from '../evidence/station.ts';
import { readBytes } from '../files/input.ts';

/** Where a record may lie from before, and what it has to fit. */
export interface Before {
  readonly folder: string;
  readonly station: StationState;
  readonly log: LogNow;
}

/**
 * The record that was sealed when the job was closed, the one that was countersigned before the one that was not; null
 * where there is none in the station's folder, or where the job went on after it.
 */
export async function sealedBefore(
  before: Before,
  job: string,
  entries: readonly LogEntry[],
): Promise<Sealed | null> {
  for (const end of ['countersigned.record.json', 'record.json']) {
    const sealed = await sealedIn(join(before.folder, `${job}.${end}`), before, job, entries);
    if (sealed !== null) return sealed;
  }
  return null;
}

interface Sealed {
  readonly bytes: Uint8Array;
  readonly size: number;
}

async function sealedIn(
  file: string,
  { station, log }: Before,
  job: string,
  entries: readonly LogEntry[],
): Promise<Sealed | null> {
  const bytes = await readBytes(file, 'record', MAX_RECORD_BYTES).catch(() => null);
  if (bytes === null) return null;
  const opened = openRecord(bytes);
  if (!opened.ok) return null;
  const { record, jws, payload } = opened.value;
  if (record.job !== job || !canonicalBytes(record.entries).equals(canonicalBytes(entries))) return null;
  // Whatever lies there under that name: only what this station sealed, untouched, goes into a package.
  const reports = checkSignatures(jws, payload);
  const own = new Set(station.keys.map(({ kid }) => kid));
  const stations = reports.flatMap(({ signer }) => (signer?.role === 'station' ? [signer.kid] : []));
  const ours = stations.length > 0 && stations.every((kid) => own.has(kid));
  const sound = ours && reports.every(({ fault }) => fault === null);
  const note = readCheckpoint(record.log.checkpoint, job);
  if (!sound || !note.ok) return null;
  return heldAgainst(log, [note.value])[0]?.kind === 'extends' ? { bytes, size: note.value.size } : null;
}
