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
