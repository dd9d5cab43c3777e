/** The schema itself holds the rules, so that they bind any program that opens the file, with any settings. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStationLog } from '../../db/log.ts';
import { written } from '../../src/evidence/entry.ts';
import { salts } from '../evidence/entries.ts';
import { AT, drafts, opening, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let db: Sqlite.Database;
const stamp = { at: AT, monoUs: 1000 };
const next = drafts([opening()]);
const COUNT = wholeJob().length;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'log-'));
  const path = join(folder, 'station.log');
  const log = await openStationLog(path);
  log.append('job:WO-1', drafts(wholeJob()), stamp);
  log.close();
  db = new Sqlite(path);
});
afterEach(() => {
  db.close();
  rmSync(folder, { recursive: true });
});

interface Row {
  seq: number;
  stream: number;
  n: number;
  kind: number;
  hash: Buffer;
  salt: Buffer;
  body: Buffer;
}
const rows = () => db.prepare<[], Row>('SELECT * FROM entries ORDER BY seq').all();
const rowAt = (seq: number): Row => {
  const row = rows().find((one) => one.seq === seq);
  if (row === undefined) throw new Error(`no row ${seq}`);
  return row;
};
const into =
  'INTO entries (seq, stream, n, kind, hash, salt, body) VALUES (:seq, :stream, :n, :kind, :hash, :salt, :body)';
const insert = (row: object, verb = 'INSERT') => db.prepare(`${verb} ${into}`).run(row);

/** The row that rightly comes next, or one that is off in what is given. */
function rowAfter(change: { seq?: number; n?: number; stream?: number } = {}): Row {
  const last = rowAt(rows().length);
  const end = { seq: change.seq ?? last.seq, n: change.n ?? last.n };
  const [one] = written(end, 'job:WO-1', next, stamp, salts());
  if (one === undefined) throw new Error('no entry');
  const { entry, hash, body } = one;
  const salt = Buffer.from(entry.salt, 'base64url');
  const stream = change.stream ?? last.stream;
  return {
    seq: entry.seq,
    stream,
    n: entry.n,
    kind: 2,
    hash: Buffer.from(hash),
    salt,
    body: Buffer.from(body),
  };
}

describe.each(['OFF', 'ON'])('whoever opens the file, with recursive triggers %s', (recursive) => {
  beforeEach(() => {
    db.pragma(`recursive_triggers = ${recursive}`);
  });

  it.each([
    ['an update', "UPDATE entries SET body = CAST(replace(body, 'A', 'B') AS BLOB) WHERE seq = 2"],
    ['an update that changes nothing', 'UPDATE entries SET seq = seq'],
    ['a delete', 'DELETE FROM entries WHERE seq = 9'],
    ['a delete of all', 'DELETE FROM entries'],
    ['update or ignore', 'UPDATE OR IGNORE entries SET n = 99 WHERE seq = 9'],
    ['update or replace', 'UPDATE OR REPLACE entries SET seq = 1 WHERE seq = 9'],
  ])('%s is refused', (_what, sql) => {
    const before = rows();
    expect(() => db.exec(sql)).toThrow('append-only');
    expect(rows()).toEqual(before);
  });

  it.each(['INSERT OR REPLACE', 'REPLACE', 'INSERT OR IGNORE', 'INSERT'])(
    '%s over an entry is refused',
    (verb) => {
      const before = rows();
      const last = rowAt(9);
      expect(() => insert(rowAt(4), verb)).toThrow('append-only');
      expect(() => insert({ ...last, body: Buffer.from('another') }, verb)).toThrow('append-only');
      expect(rows()).toEqual(before);
    },
  );

  it.each(['INSERT OR REPLACE', 'INSERT'])(
    '%s of a next row that collides in another column is refused',
    (verb) => {
      const before = rows();
      expect(() => insert(rowAfter({ n: 3 }), verb)).toThrow('n must follow');
      expect(rows()).toEqual(before);
    },
  );

  it('an upsert is refused', () => {
    const before = rows();
    const sql = `INSERT INTO entries SELECT * FROM entries WHERE seq = 9 ON CONFLICT (seq) DO UPDATE SET body = x'00'`;
    expect(() => db.exec(sql)).toThrow('append-only');
    expect(rows()).toEqual(before);
  });
});

describe('a new entry', () => {
  it('is taken when it follows', () => {
    insert(rowAfter());
    db.exec(`INSERT INTO streams VALUES (2, 'job:WO-2')`);
    insert(rowAfter({ stream: 2, n: 0 }));
    expect(rows()).toHaveLength(COUNT + 2);
  });

  it.each([
    ['a hole in seq', () => rowAfter({ seq: COUNT + 1 }), 'seq must follow'],
    ['a seq left to the database', () => ({ ...rowAfter(), seq: null }), 'seq must follow'],
    ['a hole in the stream', () => rowAfter({ n: COUNT + 1 }), 'n must follow'],
    ['a new stream that does not start at 1', () => rowAfter({ stream: 2, n: 1 }), 'append-only'],
    ['a kind that there is not', () => ({ ...rowAfter(), kind: 3 }), 'CHECK'],
    ['a stream without a name', () => rowAfter({ stream: 9, n: 0 }), 'a stream that is there'],
    ['a hash that is too short', () => ({ ...rowAfter(), hash: Buffer.alloc(31) }), 'CHECK'],
    ['a hash that is text', () => ({ ...rowAfter(), hash: 'F'.repeat(32) }), 'BLOB'],
    ['a salt that is too short', () => ({ ...rowAfter(), salt: Buffer.alloc(15) }), 'CHECK'],
    ['a body that is text', () => ({ ...rowAfter(), body: '{}' }), 'BLOB'],
  ])('with %s is refused', (_what, row, why) => {
    expect(() => insert(row())).toThrow(why);
    expect(rows()).toHaveLength(COUNT);
  });
});

describe.each(['subtrees', 'checkpoints', 'streams', 'dictionaries'])('the table %s', (table) => {
  it.each(['UPDATE OR REPLACE', 'DELETE', 'INSERT OR REPLACE'])('refuses %s', async (what) => {
    const log = await openStationLog(join(folder, 'station.log'));
    log.append('job:WO-2', drafts(wholeJob()), stamp);
    log.keepCheckpoint(3, 'note');
    log.close();
    const before = db.prepare(`SELECT * FROM ${table}`).all();
    const sql = {
      'UPDATE OR REPLACE': `UPDATE OR REPLACE ${table} SET rowid = rowid`,
      DELETE: `DELETE FROM ${table}`,
      'INSERT OR REPLACE': `INSERT OR REPLACE INTO ${table} SELECT * FROM ${table} LIMIT 1`,
    }[what];
    expect(() => db.exec(sql ?? '')).toThrow('append-only');
    expect(before.length).toBeGreaterThan(0);
    expect(db.prepare(`SELECT * FROM ${table}`).all()).toEqual(before);
  });
});
