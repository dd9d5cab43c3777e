import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { canonicalBytes } from '../evidence/canonical.ts';
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { heldAgainst, type LogNow } from '../evidence/held-against.ts';
import { checkSignatures } from '../evidence/jws.ts';
import type { LogEntry } from '../evidence/log.ts';
import { openRecord } from '../evidence/record.ts';
import type { StationState } from '../evidence/station.ts';

/** Where a record may lie from before, and what it has to fit. */
export interface Before {
  readonly folder: string;
  readonly station: StationState;
  readonly log: LogNow;
}

/**
 * The record that was sealed when the job was closed, with the signatures that people put on it since; null where there is
 * none in the station's folder, or where the job went on after it.
 */
export async function sealedBefore(
  { folder, station, log }: Before,
  job: string,
  entries: readonly LogEntry[],
): Promise<{ readonly bytes: Uint8Array; readonly size: number } | null> {
  const bytes = await readFile(join(folder, `${job}.record.json`)).catch(() => null);
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
