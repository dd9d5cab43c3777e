import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openStationLog } from '../../db/log.ts';
import { packingOf } from '../../db/packing.ts';
import { canonical } from '../../src/evidence/canonical.ts';
import { signedBytes, written } from '../../src/evidence/entry.ts';
import { fromUtf8 } from '../../src/evidence/platform/bytes.ts';
import { salts } from '../evidence/entries.ts';
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
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 400 }),
      fc.constantFrom('"salt":"', '","salt":"AAAAAAAAAAAAAAAAAAAAAA', '\\"salt\\":\\"'),
    );
    fc.assert(
      fc.property(text, text, fc.uint8Array({ minLength: 16, maxLength: 16 }), (by, stream, salt) => {
        const body = canonical({ by, salt: Buffer.from(salt).toString('base64url'), stream });
        expect(unpack(pack(body), salt)?.toString('utf8')).toBe(body);
      }),
    );
  });

  it('is nothing where its bytes are damaged, never a wrong one that looks whole by accident of length', async () => {
    (await openStationLog(path)).close();
    const { pack, unpack } = packingOf(new Sqlite(path));
    const salt = Buffer.alloc(16, 7);
    const packed = pack(canonical({ salt: salt.toString('base64url') }));
    expect(unpack(packed, salt)).not.toBeNull();
    expect(unpack(packed.subarray(0, packed.length - 2), salt)).toBeNull();
    expect(unpack(packed, null)).toBeNull();
    for (const stored of [Buffer.alloc(0), Buffer.of(9, 1, 2, 3), '{"a":1}', 17, null])
      expect(unpack(stored, salt)).toBeNull();
  });

  it('can be read by any program with SQLite and raw deflate, from nothing but the file', async () => {
    const log = await openStationLog(path);
    const [entry] = log.append('job:WO-1', drafts([opening()]), stamp);
    log.close();
    const row = z
      .object({ body: z.instanceof(Buffer), salt: z.instanceof(Buffer), text: z.string() })
      .parse(
        new Sqlite(path)
          .prepare('SELECT body, salt, text FROM entries, dictionaries WHERE seq = 1 AND id = ?')
          .get(1),
      );
    expect(row.body[0]).toBe(1);
    const json = inflateRawSync(row.body.subarray(1), { dictionary: Buffer.from(row.text) });
    const salt = row.salt.toString('base64url');
    const body = json.toString('utf8').replace('"salt":""', `"salt":"${salt}"`);
    expect(entry === undefined ? '' : fromUtf8(signedBytes(entry))).toBe(body);
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
    const plain = written({ seq: 0, n: 0 }, 'job:WO-1', drafts(wholeJob()), stamp, salts())
      .filter(({ entry }) => entry.event.type !== 'readings')
      .reduce((sum, { body }) => sum + body.length, 0);
    expect(sizes.count).toBeGreaterThan(5);
    expect(sizes.packed).toBeLessThan(plain / 4);
  });
});
