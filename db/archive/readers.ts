/** The readers of an archive over any database of {@link Sql}. */
import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import type { ReaderStore } from '../../src/archive/readers.ts';
import { archiveRecords } from './records.ts';
import type { Query, Sql } from './sql.ts';

const readerRow = z.object({
  tenant: z.string(),
  log: z.string().nullable(),
  name: z.string(),
  until: z.string(),
});
const readRow = z.object({ tenant: z.string(), at: z.string(), reader: z.string(), question: z.string() });

export function readerStore(sql: Sql): ReaderStore {
  const all = <T>(work: (query: Query) => Promise<T>) => sql.transaction(null, work);
  return {
    add: (hash, { tenant, log, name }, until) =>
      sql.transaction(tenant, async (query) => {
        await query(
          'INSERT INTO readers (hash, tenant, log, name, until) VALUES (?, ?, ?, ?, ?)',
          ...[hash, tenant, log, name, until],
        );
      }),
    of: (hash, now) =>
      all(async (query) => {
        const [row] = await query('SELECT tenant, log, name, until FROM readers WHERE hash = ?', hash);
        if (row === undefined) return null;
        const { until, ...reader } = readerRow.parse(row);
        return until < now ? null : reader;
      }),
    all: (now) =>
      all(async (query) => {
        const rows = await query(
          'SELECT tenant, log, name, until FROM readers WHERE until >= ? ORDER BY tenant, name, until',
          now,
        );
        return z.array(readerRow).parse(rows);
      }),
    remove: (tenant, name) =>
      sql.transaction(tenant, async (query) => {
        const gone = await query(
          'DELETE FROM readers WHERE tenant = ? AND name = ? RETURNING name',
          tenant,
          name,
        );
        return gone.length;
      }),
    noteRead: ({ tenant, at, reader, question }) =>
      sql.transaction(tenant, async (query) => {
        await query(
          'INSERT INTO reads (tenant, at, id, reader, question) VALUES (?, ?, ?, ?, ?)',
          ...[tenant, at, randomUUID(), reader, question],
        );
      }),
    reads: (limit) =>
      all(async (query) => {
        const rows = await query(
          `SELECT tenant, at, reader, question FROM reads ORDER BY at DESC, id LIMIT ${limit}`,
        );
        return z.array(readRow).parse(rows);
      }),
    records: (reader) => archiveRecords(sql, reader),
  };
}
