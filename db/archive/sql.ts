/** A database as the store of an archive needs it: rows for a statement, and statements that all take place or none of them. */
export type Value = string | number | Uint8Array | null;
export type Query = (statement: string, ...values: readonly Value[]) => Promise<readonly unknown[]>;

export interface Sql {
  /** What locks the rows that a SELECT reads until the end of the transaction; empty where a writer has the database for itself. */
  readonly forUpdate: string;
  /**
   * Runs statements as one, for a tenant, or for whoever looks after all of them (`null`). Durable when it resolves. May run
   * `work` again where the database asks for that.
   */
  transaction<T>(tenant: string | null, work: (query: Query) => Promise<T>): Promise<T>;
  /** Takes what was deleted out of the pages that it was on, as far as the database lets one. */
  sweep(): Promise<void>;
  close(): Promise<void>;
}

/** PostgreSQL stores no NUL in a text. */
const storable = (value: Value): Value =>
  typeof value === 'string' ? value.replaceAll('\0', '\uFFFD') : value;

/** SQLite takes 32 766 values in a statement. */
const VALUES_AT_ONCE = 16_000;

/** Inserts whole rows of a table, many in a statement. */
export async function manyRows(
  query: Query,
  table: string,
  rows: readonly (readonly Value[])[],
  onConflict = '',
): Promise<void> {
  const width = rows[0]?.length ?? 1;
  const step = Math.max(1, Math.floor(VALUES_AT_ONCE / width));
  const one = `(${Array(width).fill('?').join(', ')})`;
  for (let from = 0; from < rows.length; from += step) {
    const some = rows.slice(from, from + step);
    await query(
      `INSERT INTO ${table} VALUES ${some.map(() => one).join(', ')} ${onConflict}`,
      ...some.flat().map(storable),
    );
  }
}
