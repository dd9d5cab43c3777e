/** How the body of an entry lies in the file: deflated with the help of a text that is like most entries. */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { ProblemError } from '../src/problem.ts';
import { damagedNext } from './problems.ts';

/** Nothing that the program writes is larger: a damaged body may not take all memory. */
const MAX_BODY_BYTES = 64 << 20;

export interface Packing {
  /** One byte that names the dictionary, then raw deflate (RFC 1951) of the body without its salt. */
  pack(body: string): Buffer;
  /** The bytes of a body with its salt back in its place; null where what is there is none. */
  unpack(stored: unknown, salt: unknown): Buffer | null;
}

/** Most bodies are smaller once they are packed; unless told, zlib takes 16 kB for each. */
const CHUNK = 1024;

/** Nothing behind the salt of an entry is text from outside, so that its last place in the body is the entry's own. */
const SALT = '"salt":"';
const SALT_CHARACTERS = 22;

function withoutSalt(body: string): string {
  const at = body.lastIndexOf(SALT) + SALT.length;
  return body.slice(0, at) + body.slice(at + SALT_CHARACTERS);
}

function withSalt(body: Buffer, salt: Uint8Array): Buffer | null {
  const at = body.lastIndexOf(SALT);
  if (at < 0) return null;
  const end = at + SALT.length;
  return Buffer.concat([
    body.subarray(0, end),
    Buffer.from(Buffer.from(salt).toString('base64url')),
    body.subarray(end),
  ]);
}

const dictionarySchema = z.strictObject({ id: z.int().min(1).max(255), text: z.string() });

/** The newest dictionary that the migrations add: any other in the file is not the program's. */
const NEWEST = 1;

/** By the dictionaries that lie in the database. Throws `log-damaged` where the newest is not among them. */
export function packingOf(db: Database): Packing {
  const rows = z
    .array(dictionarySchema)
    .safeParse(db.prepare('SELECT id, text FROM dictionaries ORDER BY id').all());
  const all = rows.data?.map(({ id, text }) => ({ id, bytes: Buffer.from(text, 'utf8') })) ?? [];
  const newest = all.find(({ id }) => id === NEWEST);
  if (newest === undefined)
    throw new ProblemError({
      code: 'log-damaged',
      where: db.name,
      message: 'the packing dictionary is missing',
      next: damagedNext(),
    });
  const dictionaries = new Map(all.map(({ id, bytes }) => [id, bytes]));
  return {
    pack: (body) =>
      Buffer.concat([
        Buffer.of(newest.id),
        deflateRawSync(withoutSalt(body), { level: 9, dictionary: newest.bytes, chunkSize: CHUNK }),
      ]),
    unpack: (stored, salt) => {
      if (!(stored instanceof Uint8Array) || !(salt instanceof Uint8Array)) return null;
      const dictionary = dictionaries.get(stored[0] ?? 0);
      const body = dictionary === undefined ? null : inflated(stored.subarray(1), dictionary);
      return body === null ? null : withSalt(body, salt);
    },
  };
}

function inflated(deflated: Uint8Array, dictionary: Buffer): Buffer | null {
  try {
    return inflateRawSync(deflated, { dictionary, maxOutputLength: MAX_BODY_BYTES });
  } catch (cause) {
    // Damaged bytes: Z_DATA_ERROR, Z_BUF_ERROR, ERR_BUFFER_TOO_LARGE.
    if (cause instanceof Error && 'code' in cause) return null;
    throw cause;
  }
}
