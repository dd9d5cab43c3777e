/**
 * An archive in PostgreSQL, or in what speaks its protocol. Row level security holds the tenants apart below everything that
 * is written here: a transaction sees the rows of the tenant that it was begun for, whoever forgets a WHERE.
 */
import type { Pool, PoolClient } from 'pg';
import { ProblemError } from '../../src/problem.ts';
import { OF_HISTORY } from './history-schema.ts';
import { tablesFor } from './schema.ts';
import type { Query, Sql } from './sql.ts';

/** What a database of several machines says where two transactions met; the whole transaction is to be done again. */
const AGAIN = new Set(['40001', '40P01']);
const TIMES = 8;
const TYPES = { BYTES: 'bytea', WHOLE: 'bigint', SMALL: 'integer', AMOUNT: 'double precision' } as const;
const TENANT_TABLES = [
  'logs',
  'log_keys',
  'bundles',
  'faults',
  'judged',
  'readers',
  'reads',
  ...OF_HISTORY,
] as const;
/** Whoever looks after the archive sees all tenants; no tenant can be called so. */
const EVERYBODY = '*';

export async function openPostgres(url: string): Promise<Sql> {
  const { default: pg } = await import('pg');
  const pool = new pg.Pool({ connectionString: url, max: 8, connectionTimeoutMillis: 10_000 });
  // A connection that breaks while nobody uses it is made anew for the next one who does.
  pool.on('error', () => undefined);
  try {
    await migrate(pool);
  } catch (cause) {
    await pool.end();
    throw cause instanceof ProblemError ? cause : notReached(cause);
  }
  return sqlOf(pool);
}

/** Made by whoever opens it first; a role that owns nothing and may not make tables finds them there. */
async function migrate(pool: Pool): Promise<void> {
  await refuseAllSeeing(pool);
  const { rows } = await pool.query("SELECT to_regclass('logs') IS NOT NULL AS there");
  if (rows[0]?.there === true) return;
  const policies = TENANT_TABLES.flatMap((table) => [
    `ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`,
    `ALTER TABLE ${table} FORCE ROW LEVEL SECURITY`,
    `CREATE POLICY tenant ON ${table} USING (current_setting('plugmark.tenant', true) IN (tenant, '${EVERYBODY}'))`,
  ]);
  const client = await pool.connect();
  try {
    await client.query('BEGIN');
    for (const statement of [...tablesFor(TYPES), ...policies]) await client.query(statement);
    await client.query('COMMIT');
  } catch (cause) {
    await client.query('ROLLBACK');
    throw cause;
  } finally {
    client.release();
  }
}

/** Row level security does not hold for such a role. */
async function refuseAllSeeing(pool: Pool): Promise<void> {
  const { rows } = await pool.query(
    'SELECT rolsuper OR rolbypassrls AS all_seeing FROM pg_roles WHERE rolname = current_user',
  );
  if (rows[0]?.all_seeing !== true) return;
  throw new ProblemError({
    code: 'archive-database',
    where: '--database',
    message: 'this role of the database sees the rows of all tenants, whatever the rules of the tables say',
    next: 'Make a role of its own for the archive: CREATE ROLE archive LOGIN; CREATE DATABASE archive OWNER archive.',
  });
}

function sqlOf(pool: Pool): Sql {
  return {
    forUpdate: ' FOR UPDATE',
    transaction: async (tenant, work) => {
      for (let time = 1; ; time++) {
        const client = await connected(pool);
        try {
          return await once(client, tenant ?? EVERYBODY, work);
        } catch (cause) {
          if (time >= TIMES || !AGAIN.has(codeOf(cause))) throw cause;
        } finally {
          client.release();
        }
      }
    },
    // Its pages are used again from now on; what stands in them until then, and in its own log, is for whoever runs it.
    sweep: async () => void (await pool.query(`VACUUM bundles, ${OF_HISTORY.join(', ')}`)),
    close: () => pool.end(),
  };
}

async function once<T>(client: PoolClient, tenant: string, work: (query: Query) => Promise<T>): Promise<T> {
  const query: Query = async (text, ...values) => {
    let n = 0;
    const { rows } = await client.query(
      text.replaceAll('?', () => `$${++n}`),
      values.map((value) => (value instanceof Uint8Array ? Buffer.from(value) : value)),
    );
    return rows;
  };
  await client.query('BEGIN');
  try {
    await client.query("SELECT set_config('plugmark.tenant', $1, true)", [tenant]);
    const result = await work(query);
    await client.query('COMMIT');
    return result;
  } catch (cause) {
    // Where the connection is gone the server has rolled back by itself.
    await client.query('ROLLBACK').catch(() => undefined);
    throw cause;
  }
}

async function connected(pool: Pool): Promise<PoolClient> {
  try {
    return await pool.connect();
  } catch (cause) {
    throw notReached(cause);
  }
}

const codeOf = (cause: unknown): string =>
  cause instanceof Error && 'code' in cause ? String(cause.code) : '';

function notReached(cause: unknown): unknown {
  return new ProblemError(
    {
      code: 'archive-database',
      where: '--database',
      message: `the database of the archive cannot be used (${codeOf(cause) || 'no answer'})`,
      next: 'Check that it runs, and the name, the user and the password in its address.',
    },
    { cause },
  );
}
