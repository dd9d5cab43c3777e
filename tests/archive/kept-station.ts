/** The log of a station in the store of an archive, as shipping brings it there. */
import { join } from 'node:path';
import { openStationLog } from '../../db/log.ts';
import { ENTRIES_A_BUNDLE, entriesText, type ShippedEntry } from '../../src/archive/bundle.ts';
import type { KeptBundle } from '../../src/archive/kept-log.ts';
import { logId } from '../../src/archive/log-id.ts';
import type { ArchiveStore } from '../../src/archive/store.ts';
import { leafHash } from '../../src/evidence/merkle.ts';
import { stationOf } from '../../src/evidence/station.ts';

const MOST = 1_000_000;

/** Keeps what the station in that folder has; again, what it has more. Gives its log back. */
export async function keepStation(
  store: ArchiveStore,
  data: string,
  { tenant, name, size = MOST }: { tenant: string; name: string; size?: number },
): Promise<string> {
  const log = await openStationLog(join(data, 'station.db'));
  const entries = log.signedAfter(0, Math.min(size, MOST));
  const origin = stationOf(log.stationEntries())?.origin ?? '';
  log.close();
  const id = logId(origin);
  await store.enrol({ id, tenant, origin, station: name, vkey: `${origin}+00000000+AAAA` });
  await keepEntries(store, id, entries);
  return id;
}

export async function keepEntries(store: ArchiveStore, id: string, entries: readonly ShippedEntry[]) {
  const bundles: KeptBundle[] = [];
  for (let first = 0; first < entries.length; first += ENTRIES_A_BUNDLE) {
    const some = entries.slice(first, first + ENTRIES_A_BUNDLE);
    const hashes = some.map(({ body }) => leafHash(Buffer.from(body)));
    bundles.push({ number: first / ENTRIES_A_BUNDLE, hashes, text: entriesText(some) });
  }
  const size = entries.length;
  const head = { origin: 'none', size, root: Buffer.alloc(32), note: 'none' };
  await store.change(id, () => ({ answer: 0, writes: { bundles, entries: size, head, pending: null } }));
}
