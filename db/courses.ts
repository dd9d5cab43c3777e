/** How a backup and the log that it is to take the place of stand to each other: one goes on from the other, or they parted. */

import { existsSync, statSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { originOf } from '../src/evidence/checkpoint.ts';
import { isStationEntry } from '../src/evidence/entry.ts';
import { thumbprint } from '../src/evidence/jwk.ts';
import { type AnyEntry, STATION_STREAM } from '../src/evidence/log.ts';
import { treeRoot } from '../src/evidence/merkle.ts';
import { isSame } from '../src/evidence/platform/bytes.ts';
import { type StationState, stationOf } from '../src/evidence/station.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import type { ProblemCode } from '../src/problem-code.ts';
import { w } from '../src/words/catalogue.ts';
import { type Carved, carve, carvedEntry } from './carve.ts';
import { entryIn, entryOf, entryTable } from './entries.ts';
import { openDatabase } from './open.ts';
import { onlyOrigin } from './recover-records.ts';
import { storedTree } from './tree.ts';

/** Entries that one of two logs holds and the other does not. */
export interface Apart {
  readonly entries: number;
  /** So many of them tell of the station itself. */
  readonly station: number;
  /** The jobs that the others are of, and what became of each in them. */
  readonly jobs: readonly {
    readonly job: string;
    readonly became: 'opened' | 'closed' | 'void' | 'went on';
  }[];
}

/**
 * `none`: there was no log. `goes-on`: the log begins with all of the backup. `behind`: the backup begins with all of the
 * log. `parted`: they are the same up to an entry, and each goes its own way from there. `another`: the log is one of its
 * own, begun anew. `unreadable`: the log is damaged; what can still be read of it behind the backup's end counts as apart.
 */
export interface Courses {
  readonly kind: 'none' | 'goes-on' | 'behind' | 'parted' | 'another' | 'unreadable';
  /** The last entry that both have. */
  readonly common: number;
  /** What the log has and the backup has not. */
  readonly apart: Apart;
  /** How many the backup has and the log has not. */
  readonly onlyInBackup: number;
  /** Entries of the log, as far as is known. */
  readonly size: number;
}

/** Whose log a file is. */
interface Owner {
  readonly origin: string;
  /** Null where only the origin is known. */
  readonly name: string | null;
  readonly keys: readonly string[];
}

const NOTHING: Apart = { entries: 0, station: 0, jobs: [] };

/**
 * Compares a backup, which was read through, with what lies at `path`. `keys` are thumbprints that are known to be this
 * station's. Problems: `restore-other-station` and those of {@link openDatabase} that say nothing of damage.
 */
export async function coursesOf(
  backup: { readonly copy: string; readonly name: string },
  path: string,
  keys: readonly string[],
): Promise<Courses> {
  const db = await openDatabase(backup.copy);
  try {
    const its: Side = { db, path: backup.name };
    const size = entryTable(db).size();
    if (size === 0) throw new ProblemError(holdsNothing(backup.name));
    const owner = ownerOf(its);
    if (!existsSync(path)) {
      refuseStranger(backup.name, path, owner, null, keys);
      return { kind: 'none', common: 0, apart: NOTHING, onlyInBackup: size, size: 0 };
    }
    const readable = await withReadable(path, (log) => compared(its, log, owner, keys));
    return readable ?? (await comparedWithDamaged(path, backup.name, size, owner, keys));
  } finally {
    db.close();
  }
}

interface Side {
  readonly db: Database;
  readonly path: string;
}

const DAMAGE: ReadonlySet<ProblemCode> = new Set(['log-damaged', 'log-not-a-log', 'log-empty']);

/** Null where the log cannot be read. */
async function withReadable<T>(path: string, look: (log: Side) => T): Promise<T | null> {
  try {
    const db = await openDatabase(path);
    try {
      return look({ db, path });
    } finally {
      db.close();
    }
  } catch (cause) {
    if (cause instanceof ProblemError && DAMAGE.has(cause.problem.code)) return null;
    throw cause;
  }
}

function compared(backup: Side, log: Side, owner: Owner | null, keys: readonly string[]): Courses {
  const there = ownerOf(log);
  refuseStranger(backup.path, log.path, owner, there, keys);
  const its = entryTable(backup.db).size();
  const size = entryTable(log.db).size();
  const common = lastCommon(backup, log, Math.min(its, size));
  const rest = { common, onlyInBackup: its - common, size };
  if (owner !== null && there !== null && owner.origin !== there.origin)
    return { kind: 'another', apart: apartIn(log, 0), ...rest };
  if (common === size) return { kind: its === size ? 'goes-on' : 'behind', apart: NOTHING, ...rest };
  return { kind: common === its ? 'goes-on' : 'parted', apart: apartIn(log, common), ...rest };
}

/** Logs that are the same up to an entry have the same root there, and other roots behind it. */
function lastCommon(a: Side, b: Side, most: number): number {
  const [one, other] = [storedTree(a.db, a.path), storedTree(b.db, b.path)];
  let [same, beyond] = [0, most + 1];
  while (beyond - same > 1) {
    const middle = Math.floor((same + beyond) / 2);
    if (isSame(treeRoot(one, middle), treeRoot(other, middle))) same = middle;
    else beyond = middle;
  }
  return same;
}

/** More than any log holds. */
const EVERY = 2 ** 31 - 1;
const countSchema = z.array(z.strictObject({ stream: z.string(), entries: z.int() }));

function apartIn({ db, path }: Side, behind: number): Apart {
  const counts = countSchema.parse(
    db
      .prepare(
        `SELECT s.name AS stream, count(*) AS entries FROM entries e JOIN streams s ON s.id = e.stream
         WHERE e.seq > ? GROUP BY s.id ORDER BY min(e.seq)`,
      )
      .all(behind),
  );
  const standing = entryTable(db)
    .statusAfter(behind, EVERY)
    .map((stored) => entryOf(stored, path));
  return apartFrom(counts, standing);
}

function apartFrom(counts: z.infer<typeof countSchema>, standing: readonly AnyEntry[]): Apart {
  const became = new Map(standing.map(({ stream, event }) => [stream, BECAME[event.type]]));
  return {
    entries: counts.reduce((sum, { entries }) => sum + entries, 0),
    station: counts.find(({ stream }) => stream === STATION_STREAM)?.entries ?? 0,
    jobs: counts
      .filter(({ stream }) => stream !== STATION_STREAM)
      .map(({ stream }) => ({
        job: stream.slice('job:'.length),
        became: became.get(stream) ?? 'went on',
      })),
  };
}

const BECAME: Readonly<Partial<Record<AnyEntry['event']['type'], Apart['jobs'][number]['became']>>> = {
  'job-opened': 'opened',
  'job-closed': 'closed',
  'job-voided': 'void',
};

async function comparedWithDamaged(
  path: string,
  backup: string,
  its: number,
  owner: Owner | null,
  keys: readonly string[],
): Promise<Courses> {
  const unreadable = { kind: 'unreadable', common: its, onlyInBackup: 0 } as const;
  if (statSync(path).size === 0) {
    refuseStranger(backup, path, owner, null, keys);
    return { ...unreadable, apart: NOTHING, size: 0 };
  }
  const carved = await carve(path);
  try {
    refuseStranger(backup, path, owner, ownerOfCarved(carved), keys);
    const entries = new Map<string, number>();
    const standing: AnyEntry[] = [];
    for (let seq = its + 1; seq <= carved.last; seq++) {
      const row = carved.entry(seq);
      const entry = row === null ? null : carvedEntry(row);
      if (entry === null) continue;
      entries.set(entry.stream, (entries.get(entry.stream) ?? 0) + 1);
      standing.push(entry);
    }
    const counts = [...entries].map(([stream, count]) => ({ stream, entries: count }));
    const telling = standing.filter(({ event }) => BECAME[event.type] !== undefined);
    return { ...unreadable, apart: apartFrom(counts, telling), size: carved.last };
  } finally {
    carved.close();
  }
}

function ownerOf({ db }: Side): Owner | null {
  const entries = entryTable(db)
    .ofStream(STATION_STREAM)
    .map(entryIn)
    .filter((entry) => entry !== null)
    .filter(isStationEntry);
  const state = stationOf(entries);
  return state === null ? null : ownerBy(state);
}

const ownerBy = ({ origin, name, keys }: StationState): Owner => ({
  origin,
  name,
  keys: keys.map(({ kid }) => kid),
});

/** By its first entry, else by its checkpoints. */
function ownerOfCarved(carved: Carved): Owner | null {
  const first = carved.entry(1);
  const entry = first === null ? null : carvedEntry(first);
  if (entry?.event.type === 'station-set-up') {
    const { key, station, domain } = entry.event;
    const kid = thumbprint(key);
    return { origin: originOf(kid, domain), name: station, keys: [kid] };
  }
  const origin = onlyOrigin(carved.notes);
  return origin === null ? null : { origin, name: null, keys: [] };
}

/** A backup is this station's where the log that is there says so, or a key that is. Where neither is there, it may be. */
function refuseStranger(
  backup: string,
  path: string,
  owner: Owner | null,
  there: Owner | null,
  keys: readonly string[],
): void {
  if (owner === null || (there === null && keys.length === 0)) return;
  if (owner.origin === there?.origin || owner.keys.some((kid) => keys.includes(kid))) return;
  const other = named(owner);
  throw new ProblemError({
    code: 'restore-other-station',
    where: backup,
    message:
      there === null
        ? w`this is the log of another station: ${other}; the station here (${path}) has the key ${keys.join(', ')}`
        : w`this is the log of another station: ${other}; the station here (${path}) is ${named(there)}`,
    next: w`Name a backup of this station, or the folder of the other one with --data or --station.`,
  });
}

const holdsNothing = (where: string): Problem => ({
  code: 'log-empty',
  where,
  message: w`this station log has no entries`,
  next: w`Use another backup.`,
});

const named = ({ name, origin }: Owner) => (name === null ? origin : `"${name}" (${origin})`);
