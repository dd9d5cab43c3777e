/** The histories of an archive's logs over any database of {@link Sql}: written here, asked in records.ts. */
import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { HistoryMark, HistoryPart, HistoryStore, JobPlace, KeptJob } from '../../src/archive/history.ts';
import { type JobJudged, jobJudgedSchema } from '../../src/archive/judged.ts';
import type { Attempt } from '../../src/audit/attempt.ts';
import { type Setup, setupKey, specificationKey } from '../../src/audit/setup.ts';
import { canonical } from '../../src/evidence/canonical.ts';
import { isWithheld } from '../../src/personal.ts';
import { ANY_CENSORED, FLAG, flagsOf, KINDS, RESULTS, SIDES, SOURCES, sourceBits } from '../attempts.ts';
import { lookUpKey } from '../jobs.ts';
import { OF_HISTORY } from './history-schema.ts';
import { manyRows, type Query, type Sql, type Value } from './sql.ts';

const count = z.coerce.number().pipe(z.int().nonnegative());
const markRow = z.object({
  tenant: z.string(),
  history_epoch: count,
  history_read: count,
  head_size: count.nullable(),
});
const placeRow = z.object({
  stream: z.string(),
  opened: count,
  last: count,
  bundles: z.string().transform((text) => z.array(z.int().nonnegative()).parse(JSON.parse(text))),
});
const judgedRow = z.object({
  stream: z.string(),
  opened: count,
  outcome: z.string().transform((text) => jobJudgedSchema.parse(JSON.parse(text))),
});

export function historyStore(sql: Sql): HistoryStore {
  const all = <T>(work: (query: Query) => Promise<T>) => sql.transaction(null, work);
  const markIn = async (query: Query, log: string, lock = '') => {
    const [row] = await query(
      `SELECT tenant, history_epoch, history_read, head_size FROM logs WHERE log = ?${lock}`,
      log,
    );
    return row === undefined ? null : markRow.parse(row);
  };
  return {
    mark: (log) =>
      all(async (query) => {
        const row = await markIn(query, log);
        if (row === null || row.head_size === null) return null;
        return { epoch: row.history_epoch, read: row.history_read, size: row.head_size };
      }),
    behind: (tenant) =>
      sql.transaction(tenant, async (query) => {
        const rows = await query(
          'SELECT log FROM logs WHERE tenant = ? AND head_size > history_read ORDER BY log',
          tenant,
        );
        return z
          .array(z.object({ log: z.string() }))
          .parse(rows)
          .map(({ log }) => log);
      }),
    places: (log, streams) =>
      all(async (query) => {
        const places: JobPlace[] = [];
        for (const stream of streams)
          places.push(
            ...z
              .array(placeRow)
              .parse(
                await query(
                  'SELECT stream, opened, last, bundles FROM jobs WHERE log = ? AND stream = ?',
                  log,
                  stream,
                ),
              ),
          );
        return places;
      }),
    write: async (log, from, part) => {
      const there = await all((query) => markIn(query, log));
      if (there === null) return false;
      return sql.transaction(there.tenant, async (query) => {
        const now = await markIn(query, log, sql.forUpdate);
        if (now === null || !isAt(now, from)) return false;
        await writePart(query, { log, tenant: there.tenant }, part);
        await query('UPDATE logs SET history_read = ? WHERE log = ?', part.read, log);
        return true;
      });
    },
    toJudge: (log, limit) =>
      all(async (query) =>
        z.array(placeRow).parse(
          await query(
            `SELECT j.stream, j.opened, j.last, j.bundles FROM jobs j
             LEFT JOIN judged d ON d.log = j.log AND d.opened = j.opened
             WHERE j.log = ? AND (j.state IS NULL OR j.state <> 'open') AND (d.last IS NULL OR d.last < j.last)
             ORDER BY j.opened LIMIT ${limit}`,
            log,
          ),
        ),
      ),
    putJudged: async (log, place, outcome) => {
      const there = await all((query) => markIn(query, log));
      if (there !== null)
        await sql.transaction(there.tenant, (query) => put(query, { log, ...there }, place, outcome));
    },
    judged: (log) =>
      all(async (query) => {
        const rows = await query(
          'SELECT stream, opened, outcome FROM judged WHERE log = ? ORDER BY opened',
          log,
        );
        return z
          .array(judgedRow)
          .parse(rows)
          .map(({ stream, opened, outcome }) => ({ stream, opened, judged: outcome }));
      }),
  };
}

const isAt = ({ history_epoch, history_read }: z.infer<typeof markRow>, { epoch, read }: HistoryMark) =>
  history_epoch === epoch && history_read === read;

/** Whose rows they are. */
interface Owner {
  readonly log: string;
  readonly tenant: string;
}

/** Everything of the log goes; it is read again from its bundles, which the text has left. */
export async function forgetHistory(query: Query, { id }: { readonly id: string }): Promise<void> {
  for (const table of OF_HISTORY) await query(`DELETE FROM ${table} WHERE log = ?`, id);
  await query('UPDATE logs SET history_epoch = history_epoch + 1, history_read = 0 WHERE log = ?', id);
}

async function put(query: Query, { log, tenant }: Owner, place: JobPlace, outcome: JobJudged): Promise<void> {
  await query(
    `INSERT INTO judged (log, opened, tenant, stream, last, outcome) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (log, opened) DO UPDATE SET last = excluded.last, outcome = excluded.outcome`,
    ...[log, place.opened, tenant, place.stream, place.last, JSON.stringify(outcome)],
  );
}

async function writePart(query: Query, owner: Owner, { jobs, station }: HistoryPart): Promise<void> {
  const { log, tenant } = owner;
  for (const { opened } of jobs) {
    await query('DELETE FROM attempts WHERE log = ? AND opened = ?', log, opened);
    await query('DELETE FROM jobs WHERE log = ? AND opened = ?', log, opened);
  }
  const shared = sharedRows(owner);
  const attempts = jobs.flatMap((job) => attemptRows(owner, job, shared));
  await manyRows(
    query,
    'jobs',
    jobs.map((job) => jobRow(owner, job, shared)),
  );
  for (const [table, rows] of shared.tables) await manyRows(query, table, rows, 'ON CONFLICT DO NOTHING');
  // Of two attempts that one entry is said to have made, one is kept.
  await manyRows(query, 'attempts', attempts, 'ON CONFLICT DO NOTHING');
  await manyRows(
    query,
    'station_entries',
    station.map(({ seq, body, disclosures }) => [log, seq, tenant, body, JSON.stringify(disclosures)]),
  );
}

function jobRow({ log, tenant }: Owner, kept: KeptJob, shared: Shared): readonly Value[] {
  const { opened, stream, last, bundles, job } = kept;
  const place = [log, opened, tenant, stream, last, JSON.stringify(bundles)];
  if (job === null) return [...place, ...Array<null>(14).fill(null)];
  const { asked, history } = job;
  const { vin, plate, fleet, outOfOrder } = asked;
  return [
    ...place,
    ...[asked.job, asked.state, asked.openedAt, asked.lastAt, vin, plate, fleet],
    ...[soughtBy(vin), soughtBy(plate), soughtBy(fleet), history.on, shared.setup(history.setup)],
    ...[sourceBits(asked.sources), outOfOrder.length === 0 ? null : canonical(outOfOrder)],
  ];
}

/** Null for what was forgotten as well: nothing is looked up by that. */
const soughtBy = (text: string | null): string | null =>
  text === null || isWithheld(text) ? null : lookUpKey(text);

function attemptRows(owner: Owner, { opened, job }: KeptJob, shared: Shared): readonly (readonly Value[])[] {
  if (job === null) return [];
  const { setup, attempts } = job.history;
  const key = shared.setup(setup);
  return attempts.map((one) => [
    ...[owner.log, one.seq, owner.tenant, opened, key, Date.parse(one.at), one.quantity === 'length' ? 1 : 0],
    ...[one.cylinder, one.number, shared.tool(one, setup), shared.person(one), shared.part(one)],
    ...[KINDS.indexOf(one.kind), SOURCES.indexOf(one.source)],
    ...[
      one.result === null ? null : RESULTS.indexOf(one.result),
      one.side === null ? null : SIDES.indexOf(one.side),
    ],
    ...[flagsOf(one), isException(one) ? 1 : 0],
    ...[one.readingSi, one.valueSi, one.expanded, one.peakStandardSi],
  ]);
}

const isException = (one: Attempt) =>
  (one.result !== null && one.result !== 'OK') || (flagsOf(one) & (ANY_CENSORED | FLAG.early)) !== 0;

interface Shared {
  readonly tables: ReadonlyMap<string, readonly (readonly Value[])[]>;
  readonly setup: (setup: Setup) => number;
  readonly tool: (attempt: Attempt, setup: Setup) => number;
  readonly person: (attempt: Attempt) => number;
  readonly part: (attempt: Attempt) => number;
}

/** Rows that many attempts share, once each; their keys are hashes of what is in them. */
function sharedRows({ log, tenant }: Owner): Shared {
  const tables = new Map<string, (readonly Value[])[]>();
  const done = new Set<string>();
  const keys = new Map<string, number>();
  const add = (table: string, content: string, rest: () => readonly Value[]): number => {
    const key = keys.get(content) ?? keyOf(content);
    keys.set(content, key);
    const once = `${table} ${key}`;
    if (!done.has(once)) tables.set(table, [...(tables.get(table) ?? []), [log, key, tenant, ...rest()]]);
    done.add(once);
    return key;
  };
  const setupKeys = new WeakMap<Setup, string>();
  return {
    tables,
    setup: (setup) => {
      const name = setupKeys.get(setup) ?? setupKey(setup);
      setupKeys.set(setup, name);
      const { engine, torqueWindow, firstTorqueWindow, gapWindow } = setup;
      return add('setups', name, () => [
        ...[name, specificationKey(setup), engine, torqueWindow.lowerLimit, torqueWindow.upperLimit],
        ...[firstTorqueWindow?.lowerLimit ?? null, firstTorqueWindow?.upperLimit ?? null],
        ...[gapWindow?.lowerLimit ?? null, gapWindow?.upperLimit ?? null, canonical(setup)],
      ]);
    },
    tool: ({ tool }, { instruments }) => {
      const instrument = instruments.find(({ id }) => id === tool);
      const [serial, certificate] = [instrument?.serial ?? null, instrument?.certificate?.number ?? null];
      return add('tools', JSON.stringify([tool, serial, certificate]), () => [
        ...[tool, serial, certificate, lookUpKey(tool), lookUpKey(serial)],
      ]);
    },
    person: ({ technician }) =>
      add('people', JSON.stringify([technician]), () => [technician, lookUpKey(technician)]),
    part: ({ part, lot }) =>
      add('parts', JSON.stringify([part, lot]), () => [part, lot, lookUpKey(part), lookUpKey(lot)]),
  };
}

/** 52 bits of SHA-256: a number that every program holds exactly. */
const keyOf = (content: string): number =>
  Number.parseInt(createHash('sha256').update(content).digest('hex').slice(0, 13), 16);
