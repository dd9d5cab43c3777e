/**
 * Takes entries out of the pages of a damaged database file without SQLite: every leaf page says by itself what it holds,
 * whatever became of the pages that lead to it. An entry counts only if it is still what its hash was made of.
 * Layout: "Database File Format", sqlite.org/fileformat2.html, sections 1.5, 1.6, 2.1 and 4.1.
 */
import { closeSync, existsSync, fstatSync, openSync, readFileSync, readSync } from 'node:fs';
import { z } from 'zod';
import { digestOf, disclosureOf } from '../src/evidence/disclosures.ts';
import { readEntry } from '../src/evidence/entry.ts';
import type { AnyEntry } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import type { Progress } from './attempts.ts';
import { TEXTS_AN_ENTRY } from './entries.ts';
import { openDatabase } from './open.ts';
import { type Packing, packingOf } from './packing.ts';

export interface CarvedEntry {
  readonly seq: number;
  readonly stream: string;
  readonly n: number;
  readonly hash: Buffer;
  readonly body: string;
  /** What is left of its personal texts. */
  readonly disclosures: readonly string[];
}

export interface Carved {
  /** The highest number of an entry that was found. */
  readonly last: number;
  readonly has: (seq: number) => boolean;
  entry(seq: number): CarvedEntry | null;
  /** The notes of checkpoints, whether they are whole or not. */
  readonly notes: readonly string[];
  close(): void;
}

const LEAF = 0x0d;
/** Nothing that the program writes is larger. */
const MAX_BODY = 64 << 20;

/** The entry itself; null where it is not written as one is. */
export function carvedEntry({ seq, body, disclosures }: CarvedEntry): AnyEntry | null {
  const read = readEntry(JSON.parse(body), disclosures, `entry ${seq}`);
  return read.ok ? read.value : null;
}

/** Looks through the whole file. */
export async function carve(path: string, watch: Progress = () => {}): Promise<Carved> {
  const packing = await newestPacking();
  const pages = pagesOf(path);
  const where = new Map<number, readonly [page: number, at: number]>();
  const notes: string[] = [];
  const disclosures = new Map<number, string[]>();
  let last = 0;
  for (let number = 1; number <= pages.count; number++) {
    watch(number, pages.count);
    const page = pages.read(number);
    if (page === null) continue;
    for (const at of cellsOf(page, number)) {
      const cells = rowAt(pages, page, at);
      const entry = cells === null ? null : entryFrom(cells, packing);
      if (entry !== null) {
        where.set(entry.seq, [number, at]);
        last = Math.max(last, entry.seq);
      } else if (cells?.values.length === 3 && typeof cells.values[2] === 'string')
        notes.push(cells.values[2]);
      else if (cells !== null) addDisclosure(disclosures, cells);
    }
  }
  return {
    last,
    has: (seq) => where.has(seq),
    entry: (seq) => {
      const [number, at] = where.get(seq) ?? [0, 0];
      const page = number === 0 ? null : pages.read(number);
      const cells = page === null ? null : rowAt(pages, page, at);
      const entry = cells === null ? null : entryFrom(cells, packing);
      const own = disclosures.get(seq)?.filter((text) => entry?.body.includes(`"${digestOf(text)}"`));
      return entry === null ? null : { ...entry, disclosures: own ?? [] };
    },
    notes,
    close: pages.close,
  };
}

/** As of a log that is made now: what bodies are packed with is the same in all, and may be damaged in this one. */
async function newestPacking(): Promise<Packing> {
  const db = await openDatabase(':memory:');
  try {
    return packingOf(db);
  } finally {
    db.close();
  }
}

interface Pages {
  readonly size: number;
  readonly count: number;
  read(number: number): Buffer | null;
  close(): void;
}

/** The pages of the file, with those that the write-ahead log holds in their place. */
function pagesOf(path: string): Pages {
  const file = openSync(path, 'r');
  const bytes = fstatSync(file).size;
  const newer = pagesInWal(`${path}-wal`);
  const size = newer?.pageSize ?? pageSizeOf(file);
  const highest = [...(newer?.pages.keys() ?? [])].reduce((most, number) => Math.max(most, number), 0);
  return {
    size,
    count: Math.max(Math.ceil(bytes / size), highest),
    read: (number) => {
      const there = newer?.pages.get(number);
      if (there !== undefined) return there;
      const page = Buffer.alloc(size);
      const read = readSync(file, page, 0, size, (number - 1) * size);
      return read === 0 ? null : page;
    },
    close: () => closeSync(file),
  };
}

/** The header's, where it is a possible one; else what SQLite takes by itself. */
function pageSizeOf(file: number): number {
  const head = Buffer.alloc(18);
  readSync(file, head, 0, head.length, 0);
  const size = head.readUInt16BE(16) === 1 ? 65_536 : head.readUInt16BE(16);
  return size >= 512 && (size & (size - 1)) === 0 ? size : 4096;
}

function pagesInWal(path: string) {
  if (!existsSync(path)) return null;
  const wal = readFileSync(path);
  if (wal.length < 32) return null;
  const pageSize = wal.readUInt32BE(8);
  if (pageSize < 512 || pageSize > 65_536) return null;
  const pages = new Map<number, Buffer>();
  const open = new Map<number, Buffer>();
  for (let at = 32; at + 24 + pageSize <= wal.length; at += 24 + pageSize) {
    // Frames of an earlier round carry other salts.
    if (wal.compare(wal, 16, 24, at + 8, at + 16) !== 0) break;
    open.set(wal.readUInt32BE(at), wal.subarray(at + 24, at + 24 + pageSize));
    // Only the last frame of a transaction says how large the file is: those behind the last such one were never committed.
    if (wal.readUInt32BE(at + 4) === 0) continue;
    for (const [number, page] of open) pages.set(number, page);
    open.clear();
  }
  return { pageSize, pages };
}

/** Where the cells of a leaf page of a table begin; none for any other page. */
function cellsOf(page: Buffer, number: number): readonly number[] {
  const head = number === 1 ? 100 : 0;
  if (page[head] !== LEAF) return [];
  const count = page.readUInt16BE(head + 3);
  const offsets: number[] = [];
  for (let i = 0; i < count && head + 10 + 2 * i <= page.length; i++) {
    const at = page.readUInt16BE(head + 8 + 2 * i);
    if (at >= head + 8 && at < page.length) offsets.push(at);
  }
  return offsets;
}

type Value = null | number | string | Buffer;

interface Row {
  readonly rowid: number;
  readonly values: readonly Value[];
}

function rowAt(pages: Pages, page: Buffer, at: number): Row | null {
  try {
    const length = varint(page, at);
    const id = varint(page, length.end);
    if (length.value > MAX_BODY) return null;
    const payload = payloadOf(pages, page, id.end, length.value);
    return payload === null ? null : { rowid: id.value, values: valuesOf(payload) };
  } catch (cause) {
    // Damaged bytes may point anywhere; that such a cell leads nowhere is all there is to say.
    if (cause instanceof RangeError) return null;
    throw cause;
  }
}

/** What of a payload lies in the leaf itself, and the chain of pages with the rest. */
function payloadOf({ size, read, count }: Pages, page: Buffer, from: number, length: number): Buffer | null {
  const most = size - 35;
  if (length <= most) return page.subarray(from, from + length);
  const least = Math.floor(((size - 12) * 32) / 255) - 23;
  const fitting = least + ((length - least) % (size - 4));
  const local = fitting <= most ? fitting : least;
  const parts = [page.subarray(from, from + local)];
  let next = page.readUInt32BE(from + local);
  for (let left = length - local; left > 0; left -= size - 4) {
    const more = next > 0 && next <= count ? read(next) : null;
    if (more === null) return null;
    parts.push(more.subarray(4, 4 + Math.min(left, size - 4)));
    next = more.readUInt32BE(0);
  }
  return Buffer.concat(parts);
}

function valuesOf(payload: Buffer): readonly Value[] {
  const head = varint(payload, 0);
  const values: Value[] = [];
  let body = head.value;
  for (let at = head.end; at < head.value; ) {
    const type = varint(payload, at);
    at = type.end;
    const [value, end] = cellOf(payload, body, type.value);
    values.push(value);
    body = end;
  }
  return values;
}

const INTEGER_BYTES = [0, 1, 2, 3, 4, 6] as const;

function cellOf(payload: Buffer, at: number, type: number): readonly [Value, number] {
  if (type === 0) return [null, at];
  if (type === 8 || type === 9) return [type - 8, at];
  const bytes = INTEGER_BYTES[type];
  if (bytes !== undefined) return [payload.readIntBE(at, bytes), at + bytes];
  if (type < 12) throw new RangeError('no such type in the log');
  const length = Math.floor((type - 12) / 2);
  if (at + length > payload.length) throw new RangeError('cut off');
  const part = payload.subarray(at, at + length);
  return [type % 2 === 0 ? Buffer.from(part) : part.toString('utf8'), at + length];
}

/** A variable-length integer; the program's own stay far below the 2^53 at which a double loses its last digits. */
function varint(bytes: Buffer, at: number): { readonly value: number; readonly end: number } {
  let value = 0;
  for (let i = 0; i < 8; i++) {
    const byte = bytes.readUInt8(at + i);
    value = value * 128 + (byte & 0x7f);
    if (byte < 0x80) return { value, end: at + i + 1 };
  }
  throw new RangeError('no number of the log is so large');
}

const ENTRY_COLUMNS = 7;
const DISCLOSURE_COLUMNS = 4;

function addDisclosure(all: Map<number, string[]>, { values, rowid }: Row): void {
  const [, , salt, text] = values;
  if (values.length !== DISCLOSURE_COLUMNS || !(salt instanceof Buffer) || typeof text !== 'string') return;
  const seq = Math.floor(rowid / TEXTS_AN_ENTRY);
  all.set(seq, [...(all.get(seq) ?? []), disclosureOf(salt.toString('base64url'), text)]);
}

/** Number, stream and place are the body's own: the hash covers nothing else of the row. */
function entryFrom({ values }: Row, { unpack }: Packing): CarvedEntry | null {
  if (values.length !== ENTRY_COLUMNS) return null;
  const [hash, salt, stored] = values.slice(-3);
  const bytes = unpack(stored, salt);
  if (!(hash instanceof Buffer) || bytes === null || !leafHash(bytes).equals(hash)) return null;
  const body = bytes.toString('utf8');
  const place = placeSchema.safeParse(jsonIn(body));
  return place.success ? { ...place.data, hash, body, disclosures: [] } : null;
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const placeSchema = z.object({ seq: z.int().min(1), stream: z.string(), n: z.int().min(1) });
