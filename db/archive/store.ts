/** The store of an archive over any database of {@link Sql}. */
import { createHash } from 'node:crypto';
import { z } from 'zod';
import { ENTRIES_A_BUNDLE } from '../../src/archive/bundle.ts';
import {
  bundleWithout,
  type Fault,
  type KeptBundle,
  type KeptLog,
  type LogKey,
  type SignedNote,
  type Writes,
} from '../../src/archive/kept-log.ts';
import type { ArchiveStore, NewLog, TokenUse } from '../../src/archive/store.ts';
import type { ForgottenPlace } from '../../src/archive/texts.ts';
import { forgetHistory, historyStore } from './history-store.ts';
import { faultRowSchema, keptBundle, keptLog, packedBundle, tokenRowSchema } from './kept-rows.ts';
import { readerStore } from './readers.ts';
import { MOST_FAULTS } from './schema.ts';
import type { Query, Sql } from './sql.ts';

/** So many bundles are read at once. */
const PAGE = 16;
const keyRows = z.array(z.object({ vkey: z.string(), statement: z.string().nullable() }));

export function archiveStore(sql: Sql): ArchiveStore {
  const all = <T>(work: (query: Query) => Promise<T>) => sql.transaction(null, work);
  const logIn = async (query: Query, id: string, lock = ''): Promise<KeptLog | null> => {
    const [row] = await query(`SELECT * FROM logs WHERE log = ?${lock}`, id);
    if (row === undefined) return null;
    const keys = await query('SELECT vkey, statement FROM log_keys WHERE log = ? ORDER BY n', id);
    return keptLog(row, keyRows.parse(keys));
  };
  const log = (id: string) => all((query) => logIn(query, id));
  return {
    addToken: (hash, use, until) =>
      all(async (query) => {
        await query('INSERT INTO tokens VALUES (?, ?, ?, ?, ?)', ...tokenRow(hash, use, until));
      }),
    takeToken: (hash, now) =>
      all(async (query) => {
        const [row] = await query(
          'DELETE FROM tokens WHERE hash = ? RETURNING used_for, about, origin, until',
          hash,
        );
        if (row === undefined) return null;
        const { used_for: use, about, origin, until } = tokenRowSchema.parse(row);
        if (until < now) return null;
        return use === 'enrol' ? { use, tenant: about, origin } : { use, log: about };
      }),
    enrol: ({ id, tenant, origin, station, vkey }) =>
      sql.transaction(tenant, async (query) => {
        const made = await query(
          `INSERT INTO logs (log, tenant, origin, station, standing, entries, history_epoch, history_read)
           VALUES (?, ?, ?, ?, 'open', 0, 0, 0) ON CONFLICT DO NOTHING RETURNING log`,
          ...[id, tenant, origin, station],
        );
        if (made.length === 0) return false;
        await putKey(query, { id, tenant }, 1, { vkey, statement: null });
        return true;
      }),
    log,
    logs: () =>
      all(async (query) => {
        const rows = z
          .array(z.object({ log: z.string() }))
          .parse(await query('SELECT log FROM logs ORDER BY origin'));
        const logs = [];
        for (const { log: id } of rows) logs.push(await logIn(query, id));
        return logs.filter((one) => one !== null);
      }),
    faults: (id) =>
      all(async (query) => {
        const rows = await query('SELECT kind, kept, offered, at FROM faults WHERE log = ? ORDER BY at', id);
        return z.array(faultRowSchema).parse(rows);
      }),
    change: async (id, decide) => {
      const there = await log(id);
      if (there === null) return null;
      const done = await sql.transaction(there.tenant, async (query) => {
        const now = await logIn(query, id, sql.forUpdate);
        if (now === null) return null;
        const { answer, writes } = decide(now);
        if (writes !== null) await write(query, now, writes);
        return { answer, hasForgotten: (writes?.forgotten ?? []).length > 0 };
      });
      if (done === null) return null;
      if (done.hasForgotten) await sql.sweep();
      return done.answer;
    },
    async *bundles(id, from) {
      for (let next = from; ; ) {
        const rows = await all((query) =>
          query(
            `SELECT number, hashes, body FROM bundles WHERE log = ? AND number >= ? ORDER BY number LIMIT ${PAGE}`,
            ...[id, next],
          ),
        );
        const page = rows.map(keptBundle);
        yield* page;
        const last = page.at(-1);
        if (last === undefined || page.length < PAGE) return;
        next = last.number + 1;
      }
    },
    bundlesOf: (id, numbers) =>
      all(async (query) => {
        const bundles = [];
        for (const number of numbers) {
          const [row] = await query(
            'SELECT number, hashes, body FROM bundles WHERE log = ? AND number = ?',
            id,
            number,
          );
          if (row !== undefined) bundles.push(keptBundle(row));
        }
        return bundles;
      }),
    history: historyStore(sql),
    readers: readerStore(sql),
    close: sql.close,
  };
}

const tokenRow = (hash: string, use: TokenUse, until: string) =>
  use.use === 'enrol'
    ? [hash, use.use, use.tenant, use.origin, until]
    : [hash, use.use, use.log, null, until];

async function write(query: Query, log: KeptLog, writes: Writes): Promise<void> {
  const { pending, head, entries, key, bundles = [], forgotten = [], fault, standing } = writes;
  for (const bundle of bundles) await putBundle(query, log, bundle);
  await forget(query, log, forgotten);
  if (forgotten.length > 0) await forgetHistory(query, log);
  if (key !== undefined) await putKey(query, log, log.keys.length + 1, key);
  if (fault !== undefined) await putFault(query, log, fault);
  if (head !== undefined) await putNote(query, log, 'head', head);
  if (pending !== undefined) await putNote(query, log, 'pending', pending);
  if (entries !== undefined) await query('UPDATE logs SET entries = ? WHERE log = ?', entries, log.id);
  if (standing !== undefined) await query('UPDATE logs SET standing = ? WHERE log = ?', standing, log.id);
}

const putKey = (query: Query, { id, tenant }: Pick<NewLog, 'id' | 'tenant'>, n: number, key: LogKey) =>
  query('INSERT INTO log_keys VALUES (?, ?, ?, ?, ?)', id, n, tenant, key.vkey, key.statement);

const putNote = (query: Query, { id }: KeptLog, which: 'pending' | 'head', note: SignedNote | null) =>
  query(
    `UPDATE logs SET ${which}_size = ?, ${which}_root = ?, ${which}_note = ? WHERE log = ?`,
    ...[note?.size ?? null, note?.root ?? null, note?.note ?? null, id],
  );

/** A bundle that grew takes the place of the shorter one. */
function putBundle(query: Query, { id, tenant }: KeptLog, bundle: KeptBundle): Promise<readonly unknown[]> {
  const { hashes, body } = packedBundle(bundle);
  return query(
    `INSERT INTO bundles (log, number, tenant, hashes, body) VALUES (?, ?, ?, ?, ?)
     ON CONFLICT (log, number) DO UPDATE SET hashes = excluded.hashes, body = excluded.body`,
    ...[id, bundle.number, tenant, hashes, body],
  );
}

const bundleOf = ({ index }: ForgottenPlace) => Math.floor(index / ENTRIES_A_BUNDLE);

async function forget(query: Query, log: KeptLog, places: readonly ForgottenPlace[]): Promise<void> {
  const numbers = new Set(places.map(bundleOf));
  for (const number of numbers) {
    const own = places.filter((place) => bundleOf(place) === number);
    const [row] = await query(
      'SELECT number, hashes, body FROM bundles WHERE log = ? AND number = ?',
      log.id,
      number,
    );
    if (row !== undefined) await putBundle(query, log, bundleWithout(keptBundle(row), own));
  }
}

async function putFault(query: Query, { id, tenant }: KeptLog, fault: Fault): Promise<void> {
  const [row] = await query('SELECT count(*) AS n FROM faults WHERE log = ?', id);
  if (z.object({ n: z.coerce.number() }).parse(row).n >= MOST_FAULTS) return;
  const hash = createHash('sha256').update(fault.offered).digest('hex');
  await query(
    'INSERT INTO faults VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING',
    ...[id, hash, tenant, fault.kind, fault.kept, fault.offered, fault.at],
  );
}
