import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openStationLog } from '../../db/log.ts';
import { migrate, readMigrations } from '../../db/migrate.ts';
import { packingOf } from '../../db/packing.ts';
import { looksSound } from '../../db/sound.ts';
import { placeOf } from '../../db/tree.ts';
import { entryHash, written } from '../../src/evidence/entry.ts';
import { completedBy, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { AT, drafts, opening, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
const stamp = { at: AT, monoUs: 1000 };

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'packing-'));
  path = join(folder, 'station.db');
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('the body of an entry', () => {
  it('comes back as it was, whatever text it is', async () => {
    (await openStationLog(path)).close();
    const { pack, unpack } = packingOf(new Sqlite(path));
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => {
        expect(unpack(pack(text))?.toString('utf8')).toBe(text);
        expect(unpack(text)?.toString('utf8')).toBe(text);
      }),
    );
  });

  it('is nothing where its bytes are damaged, never a wrong one that looks whole by accident of length', async () => {
    (await openStationLog(path)).close();
    const { pack, unpack } = packingOf(new Sqlite(path));
    const packed = pack('{"a":1}');
    expect(unpack(packed.subarray(0, packed.length - 2))).toBeNull();
    expect(unpack(Buffer.alloc(0))).toBeNull();
    expect(unpack(Buffer.of(9, 1, 2, 3))).toBeNull();
    expect(unpack(17)).toBeNull();
    expect(unpack(null)).toBeNull();
  });

  it('can be read by any program with SQLite and raw deflate, from nothing but the file', async () => {
    const log = await openStationLog(path);
    const [entry] = log.append('job:WO-1', drafts([opening()]), stamp);
    log.close();
    const row = z
      .object({ body: z.instanceof(Buffer), text: z.string() })
      .parse(
        new Sqlite(path)
          .prepare('SELECT body, text FROM entries, dictionaries WHERE seq = 1 AND id = ?')
          .get(1),
      );
    expect(row.body[0]).toBe(1);
    const json = inflateRawSync(row.body.subarray(1), { dictionary: Buffer.from(row.text) });
    expect(JSON.parse(json.toString('utf8'))).toEqual(entry);
  });

  it('of an entry with samples left out takes a quarter of its text', async () => {
    const log = await openStationLog(path);
    log.append('job:WO-1', drafts(wholeJob()), stamp);
    log.close();
    const sizes = z
      .object({ packed: z.int(), count: z.int() })
      .parse(
        new Sqlite(path)
          .prepare('SELECT sum(length(body)) AS packed, count(*) AS count FROM entries WHERE kind > 0')
          .get(),
      );
    const plain = written({ seq: 0, n: 0 }, 'job:WO-1', drafts(wholeJob()), stamp)
      .filter(({ entry }) => entry.event.type !== 'readings')
      .reduce((sum, { body }) => sum + body.length, 0);
    expect(sizes.count).toBeGreaterThan(5);
    expect(sizes.packed).toBeLessThan(plain / 4);
  });
});

it('a log of the earlier form, with plain bodies, goes on as it is', async () => {
  const earlier = new Sqlite(path);
  migrate(earlier, readMigrations().slice(0, 3));
  const rows = [
    ...written({ seq: 0, n: 0 }, 'job:WO-1', drafts(wholeJob()), stamp),
    ...written({ seq: wholeJob().length, n: 0 }, 'job:WO-2', drafts(wholeJob('WO-2')), stamp),
  ];
  const insert = earlier.prepare('INSERT INTO entries (seq, stream, n, hash, body) VALUES (?, ?, ?, ?, ?)');
  const subtree = earlier.prepare('INSERT INTO subtrees (place, hash) VALUES (?, ?)');
  const tree = treeOf(rows.map(({ hash }) => hash));
  for (const { entry, hash, body } of rows) {
    insert.run(entry.seq, entry.stream, entry.n, hash, body);
    for (const made of completedBy(tree, entry.seq - 1, hash))
      subtree.run(placeOf(made.level, made.index), made.hash);
  }
  earlier.close();

  const large = new Sqlite(path, { readonly: true });
  expect(looksSound(large, path, 0)).toBe(true);
  large.close();

  const log = await openStationLog(path);
  expect(log.check()).toBeNull();
  expect(log.streams()).toEqual(['job:WO-1', 'job:WO-2']);
  expect(log.lastJobs().map(({ job }) => job)).toEqual(['WO-2', 'WO-1']);
  const before = rows.map(({ entry }) => entry);
  const more = log.append('job:WO-3', drafts(wholeJob('WO-3')), stamp);
  expect([...log.entries('job:WO-1'), ...log.entries('job:WO-2'), ...log.entries('job:WO-3')]).toEqual([
    ...before,
    ...more,
  ]);
  const all = [...before, ...more].map(entryHash);
  expect(treeRoot(log.tree, log.size())).toEqual(treeRoot(treeOf(all), all.length));
  expect(log.check()).toBeNull();
  log.close();
});
