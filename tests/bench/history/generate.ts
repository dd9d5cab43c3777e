/**
 * A station's history as its log would hold it after five years, samples left out: every entry has the canonical bytes,
 * the numbers and the place in the hash tree that the program gives it, and only the schema's second look is saved.
 */

import Sqlite from 'better-sqlite3';
import { entryTable } from '../../../db/entries.ts';
import { openStationLog } from '../../../db/log.ts';
import { LOWEST_STORED, placeOf } from '../../../db/tree.ts';
import { Random } from '../../../sim/random.ts';
import { signedBytes } from '../../../src/evidence/entry.ts';
import {
  type AnyEntry,
  type LogEntry,
  STATION_STREAM,
  type StationEntry,
} from '../../../src/evidence/log.ts';
import { leafHash, nodeHash } from '../../../src/evidence/merkle.ts';
import { fromUtf8 } from '../../../src/evidence/platform/bytes.ts';
import { concealedAnew, salts } from '../../evidence/entries.ts';
import { jobEvents } from './job.ts';
import { DAY_MS, START_MS, YEARS } from './station.ts';

/** Torque attempts a job, before those that are made again. */
export const PULLS_A_JOB = 8;
const JOBS_A_TRANSACTION = 200;

export interface Made {
  readonly jobs: number;
  readonly entries: number;
  /** Bytes of the entries' bodies. */
  readonly bodyBytes: number;
}

/** What an entry says, before the log numbers it. */
type Content<T extends AnyEntry> = Pick<T, 'stream' | 'n' | 'at' | 'monoUs' | 'by' | 'event'>;

/** Writes a log with so many jobs into a new file; `progress` gets the share that is done. */
export async function generate(
  path: string,
  jobs: number,
  progress: (share: number, note: string) => void,
): Promise<Made> {
  const log = await openStationLog(path);
  log.close();
  const db = new Sqlite(path);
  // A file that is made for measuring only; a real log is always written with FULL.
  db.pragma('synchronous = OFF');
  const table = entryTable(db);
  const subtree = db.prepare('INSERT INTO subtrees (place, hash) VALUES (?, ?)');
  const grow = growingTree((place, hash) => subtree.run(place, hash));
  let seq = 0;
  let bodyBytes = 0;
  const salt = salts();
  const put = (content: Content<LogEntry> | Content<StationEntry>) => {
    seq++;
    const entry: AnyEntry = concealedAnew({ ...content, v: 1, seq, salt: salt(), concealed: [] });
    const bytes = signedBytes(entry);
    const hash = leafHash(bytes);
    table.put(entry, hash, fromUtf8(bytes));
    grow(seq - 1, hash);
    bodyBytes += bytes.length;
  };
  const some = db.transaction((from: number, to: number) => {
    for (let i = from; i < to; i++) {
      const openedMs = START_MS + Math.floor((i / jobs) * YEARS * 365 * DAY_MS);
      const stream = `job:J-${String(i + 1).padStart(6, '0')}`;
      jobEvents(i, openedMs, new Random(`job ${i}`)).forEach(({ event, by, afterMs }, n) => {
        const at = new Date(openedMs + afterMs).toISOString();
        put({ stream, n: n + 1, at, monoUs: 1000 * afterMs, by, event });
      });
    }
  });
  db.transaction(() => {
    const at = new Date(START_MS - DAY_MS).toISOString();
    const event = { type: 'station-set-up' as const, station: 'Example station', key: EXAMPLE_KEY };
    put({ stream: STATION_STREAM, n: 1, at, monoUs: 0, by: 'station', event });
  })();
  for (let from = 0; from < jobs; from += JOBS_A_TRANSACTION) {
    some(from, Math.min(jobs, from + JOBS_A_TRANSACTION));
    progress(from / jobs, `${from} of ${jobs} jobs`);
  }
  // The list of jobs is made from the entries when the file is opened next.
  db.exec('DELETE FROM projection');
  db.pragma('wal_checkpoint(TRUNCATE)');
  db.close();
  return { jobs, entries: seq, bodyBytes };
}

/** The public key of RFC 8032, 7.1, test 1. */
const EXAMPLE_KEY = {
  kty: 'OKP',
  crv: 'Ed25519',
  x: '11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo',
} as const;

/** The whole subtrees that each leaf completes, as the store keeps them. */
function growingTree(
  keep: (place: number, hash: Uint8Array) => void,
): (index: number, leaf: Uint8Array) => void {
  const waiting: (Uint8Array | undefined)[] = [];
  return (index, leaf) => {
    let hash = leaf;
    let level = 0;
    for (let left = waiting[0]; left !== undefined; left = waiting[level]) {
      waiting[level] = undefined;
      hash = nodeHash(left, hash);
      level++;
      if (level >= LOWEST_STORED) keep(placeOf(level, Math.floor(index / 2 ** level)), hash);
    }
    waiting[level] = hash;
  };
}
