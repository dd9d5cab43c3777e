import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgres } from '../../db/archive/postgres.ts';
import type { Sql } from '../../db/archive/sql.ts';
import { openSqlite } from '../../db/archive/sqlite.ts';
import { archiveStore } from '../../db/archive/store.ts';
import { entriesText } from '../../src/archive/bundle.ts';
import type { SignedNote } from '../../src/archive/kept-log.ts';
import type { ArchiveStore } from '../../src/archive/store.ts';
import { digestOf, disclosureOf } from '../../src/evidence/disclosures.ts';
import { leafHash } from '../../src/evidence/merkle.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const bin = postgresPrograms();
if (bin === null && process.env['ALL_TESTS'] === '1')
  throw new Error('PostgreSQL is missing: apt-get install postgresql');

let folder = '';
let server: TestPostgres | null = null;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  if (bin !== null) server = await startPostgres(bin);
}, 60_000);
afterAll(async () => {
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const log = (n: number, tenant = 'north') => ({
  id: `00000000-0000-8000-8000-00000000000${n}`,
  tenant,
  origin: `example.com/log${n}`,
  station: `Bay ${n}`,
  vkey: `example.com/log${n}+00000000+AAAA`,
});
const note = (size: number): SignedNote => ({
  origin: 'example.com/log1',
  size,
  root: Buffer.alloc(32, size),
  note: `note of ${size}\n`,
});
const bundle = (number: number, count: number, mark = 0) => ({
  number,
  hashes: Array.from({ length: count }, (_, i) => Buffer.alloc(32, i + mark)),
  text: `{"bundle":${number},"mark":${mark}}\n[]\n`.repeat(count),
});

const KINDS: readonly (readonly [string, () => Promise<Sql>])[] = [
  ['SQLite', () => openSqlite(join(folder, 'archive.db'))],
  ...(bin === null ? [] : [['PostgreSQL', () => openPostgres(server?.url ?? '')] as const]),
];

describe.each(KINDS)('the store of an archive in %s', (_name, open) => {
  let store: ArchiveStore;
  beforeAll(async () => {
    store = archiveStore(await open());
  });
  afterAll(() => store.close());

  it('takes a token once, and none whose time is over', async () => {
    await store.addToken(
      'a',
      { use: 'enrol', tenant: 'north', origin: 'example.com/log1' },
      '2026-05-10T00:00:00.000Z',
    );
    await store.addToken('b', { use: 'restore', log: log(1).id }, '2026-05-01T00:00:00.000Z');
    const now = '2026-05-04T00:00:00.000Z';
    expect(await store.takeToken('a', now)).toEqual({
      use: 'enrol',
      tenant: 'north',
      origin: 'example.com/log1',
    });
    expect(await store.takeToken('a', now)).toBeNull();
    expect(await store.takeToken('b', now)).toBeNull();
    expect(await store.takeToken('c', now)).toBeNull();
  });

  it('enrols a log once, and keeps the keys that signed it in their order', async () => {
    expect(await store.enrol(log(1))).toBe(true);
    expect(await store.enrol({ ...log(1), tenant: 'south' })).toBe(false);
    const second = { vkey: 'second', statement: 'a.b.c' };
    await store.change(log(1).id, () => ({ answer: 0, writes: { key: second } }));
    expect(await store.log(log(1).id)).toEqual({
      ...{ id: log(1).id, tenant: 'north', origin: log(1).origin, station: 'Bay 1' },
      ...{
        keys: [{ vkey: log(1).vkey, statement: null }, second],
        standing: 'open',
        entries: 0,
        pending: null,
        head: null,
      },
    });
    expect(await store.log(log(2).id)).toBeNull();
  });

  it('writes what a decision brings, all of it or nothing', async () => {
    const { id } = log(1);
    const writes = { pending: note(300), entries: 300, bundles: [bundle(0, 256), bundle(1, 44)] };
    expect(await store.change(id, () => ({ answer: 'taken', writes }))).toBe('taken');
    expect(await store.log(id)).toMatchObject({ entries: 300, pending: note(300), head: null });
    await expect(
      store.change(id, () => ({
        answer: 0,
        writes: { entries: 999, bundles: [{ ...bundle(2, 1), number: Number.NaN }] },
      })),
    ).rejects.toThrow();
    expect(await store.log(id)).toMatchObject({ entries: 300 });
    await store.change(id, () => ({ answer: 0, writes: { pending: null, head: note(300) } }));
    expect(await store.log(id)).toMatchObject({ pending: null, head: note(300) });
  });

  it('gives bundles back in their order, the longer one in the place of the shorter', async () => {
    const { id } = log(1);
    await store.change(id, () => ({ answer: 0, writes: { bundles: [bundle(1, 60, 7)], entries: 316 } }));
    const kept = [];
    for await (const one of store.bundles(id, 0)) kept.push(one);
    expect(kept.map(({ number, hashes, text }) => [number, hashes.length, text])).toEqual([
      [0, 256, bundle(0, 256).text],
      [1, 60, bundle(1, 60, 7).text],
    ]);
    expect(Buffer.from(kept[1]?.hashes[0] ?? '')).toEqual(Buffer.alloc(32, 7));
  });

  it('lets one decision after the other see the log, however many come at once', async () => {
    await store.enrol(log(3));
    const { id } = log(3);
    const step = () =>
      store.change(id, ({ entries }) => ({ answer: entries, writes: { entries: entries + 1 } }));
    const seen = await Promise.all(Array.from({ length: 40 }, step));
    expect(seen.toSorted((a, b) => (a ?? 0) - (b ?? 0))).toEqual(Array.from({ length: 40 }, (_, i) => i));
  });

  it('forgets a text that was kept before, and leaves no page that holds it', async () => {
    await store.enrol(log(4));
    const { id } = log(4);
    const secret = disclosureOf('c2FsdHNhbHRzYWx0c2FsdA', `ZZ-FORGET ${randomBytes(24).toString('hex')}`);
    const body = `{"event":{"plate":{"_sd":["${digestOf(secret)}"]}},"stream":"job:J-1"}`;
    const hashes = [leafHash(Buffer.from(body))];
    const kept = { number: 0, hashes, text: entriesText([{ body, disclosures: [secret] }]) };
    await store.change(id, () => ({ answer: 0, writes: { bundles: [kept], entries: 1 } }));
    await store.change(id, () => ({ answer: 0, writes: { forgotten: [{ index: 0, text: 0 }] } }));
    const left = [];
    for await (const one of store.bundles(id, 0)) left.push(one);
    expect(left).toEqual([{ ...kept, hashes, text: entriesText([{ body, disclosures: [] }]) }]);
  });

  it('keeps both notes of a fork once, and the log frozen', async () => {
    const { id } = log(3);
    const fault = { kind: 'rewritten' as const, kept: 'a\n', offered: 'b\n', at: '2026-05-04T10:00:00.000Z' };
    for (let i = 0; i < 2; i++)
      await store.change(id, () => ({ answer: 0, writes: { fault, standing: 'frozen' as const } }));
    expect(await store.faults(id)).toEqual([fault]);
    expect(await store.log(id)).toMatchObject({ standing: 'frozen' });
    expect((await store.logs()).map(({ station }) => station)).toEqual(['Bay 1', 'Bay 3', 'Bay 4']);
  });
});

describe.runIf(bin !== null)('tenants in PostgreSQL', () => {
  it('see nothing of each other, though nobody asks for their name', async () => {
    const sql = await openPostgres(server?.url ?? '');
    const store = archiveStore(sql);
    await store.enrol(log(5, 'south'));
    await store.change(log(5).id, () => ({ answer: 0, writes: { bundles: [bundle(0, 3)], entries: 3 } }));
    for (const table of ['logs', 'log_keys', 'bundles', 'faults']) {
      const tenants = await sql.transaction('south', (query) =>
        query(`SELECT DISTINCT tenant FROM ${table}`),
      );
      expect(tenants.every((row) => Reflect.get(Object(row), 'tenant') === 'south')).toBe(true);
      expect(await sql.transaction('nobody', (query) => query(`SELECT * FROM ${table}`))).toEqual([]);
    }
    await expect(
      sql.transaction('south', (query) =>
        query('INSERT INTO log_keys VALUES (?, 9, ?, ?)', log(1).id, 'north', 'stolen'),
      ),
    ).rejects.toThrow(/row-level security/);
    expect(
      await sql.transaction('south', (query) => query("UPDATE logs SET standing = 'open' RETURNING log")),
    ).toEqual([{ log: log(5).id }]);
    await store.close();
  });

  it('are not left to a role that sees all of them', async () => {
    await expect(openPostgres(server?.superUrl ?? '')).rejects.toThrow(/sees the rows of all tenants/);
  });
});

it('no page of an archive in a file, nor of the file beside it, holds what was forgotten', async () => {
  const path = join(folder, 'forgetting.db');
  const store = archiveStore(await openSqlite(path));
  await store.enrol(log(1));
  // So random that packing leaves it as it is: it can be looked for in the bytes of the file.
  const salt = randomBytes(600).toString('base64url');
  const body = `{"event":{"plate":{"_sd":["${digestOf(salt)}"]}},"stream":"job:J-1"}`;
  const text = entriesText([{ body, disclosures: [salt] }]);
  const packed = deflateRawSync(text).subarray(200, 240);
  const holds = () =>
    [path, `${path}-wal`].some((file) => existsSync(file) && readFileSync(file).includes(packed));
  const bundles = [{ number: 0, hashes: [leafHash(Buffer.from(body))], text }];
  await store.change(log(1).id, () => ({ answer: 0, writes: { bundles, entries: 1 } }));
  expect(holds()).toBe(true);
  await store.change(log(1).id, () => ({ answer: 0, writes: { forgotten: [{ index: 0, text: 0 }] } }));
  expect(holds()).toBe(false);
  await store.close();
});

it('an archive in a file is for its owner alone, and no other file is taken for one', async () => {
  const path = join(folder, 'archive.db');
  expect(statSync(path).mode & 0o777).toBe(0o600);
  const { default: Sqlite } = await import('better-sqlite3');
  const other = join(folder, 'other.db');
  new Sqlite(other).exec('CREATE TABLE t (x)').close();
  await expect(openSqlite(other)).rejects.toThrow(/not the file of an archive/);
});
