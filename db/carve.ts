/**
 * Takes entries out of the pages of a damaged database file and of its write-ahead log without SQLite. An entry counts only
 * if it is still what its hash was made of.
 */

import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { z } from 'zod';
import { digestOf, disclosureOf } from '../src/evidence/disclosures.ts';
import { readEntry } from '../src/evidence/entry.ts';
import type { AnyEntry } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { isSame } from '../src/evidence/platform/bytes.ts';
import type { Progress } from './attempts.ts';
import { TEXTS_AN_ENTRY } from './entries.ts';
import { openDatabase } from './open.ts';
import { type Packing, packingOf } from './packing.ts';
import { cellsOf, type Pages, type Row, rowAt } from './rows.ts';
import { type Frame, readWal, type Wal } from './wal.ts';

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

/** The entry itself; null where it is not written as one is. */
export function carvedEntry({ seq, body, disclosures }: CarvedEntry): AnyEntry | null {
  const read = readEntry(JSON.parse(body), disclosures, `entry ${seq}`);
  return read.ok ? read.value : null;
}

/** Looks through the whole file. */
export async function carve(path: string, watch: Progress = () => {}): Promise<Carved> {
  const packing = await newestPacking();
  const pages = pagesOf(path);
  const where = new Map<number, readonly [page: number | Buffer, at: number]>();
  const notes: string[] = [];
  const disclosures = new Map<number, string[]>();
  let last = 0;
  const look = (number: number, page: Buffer, place: number | Buffer) => {
    for (const at of cellsOf(page, number)) {
      const cells = rowAt(pages, page, at);
      const entry = cells === null ? null : entryFrom(cells, packing);
      if (entry !== null) {
        if (!where.has(entry.seq)) where.set(entry.seq, [place, at]);
        last = Math.max(last, entry.seq);
      } else if (cells?.values.length === 3 && typeof cells.values[2] === 'string')
        notes.push(cells.values[2]);
      else if (cells !== null) addDisclosure(disclosures, cells);
    }
  };
  for (let number = 1; number <= pages.count; number++) {
    watch(number, pages.count);
    const page = pages.read(number);
    if (page !== null) look(number, page, number);
  }
  for (const [number, page] of pages.older) if (page.length === pages.size) look(number, page, page);
  return {
    last,
    has: (seq) => where.has(seq),
    entry: (seq) => {
      const [place, at] = where.get(seq) ?? [0, 0];
      const page = place === 0 ? null : typeof place === 'number' ? pages.read(place) : place;
      const cells = page === null ? null : rowAt(pages, page, at);
      const entry = cells === null ? null : entryFrom(cells, packing);
      const own = disclosures.get(seq)?.filter((text) => entry?.body.includes(`"${digestOf(text)}"`));
      return entry === null ? null : { ...entry, disclosures: own ?? [] };
    },
    notes: [...new Set(notes)],
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

interface FilePages extends Pages {
  /** Other versions of pages that the write-ahead log holds: of damaged ones, what an older version still has. */
  readonly older: readonly (readonly [number: number, bytes: Buffer])[];
  close(): void;
}

/** The pages of the file, with the newest whole ones that the write-ahead log holds in their place. */
function pagesOf(path: string): FilePages {
  const file = openSync(path, 'r');
  const bytes = fstatSync(file).size;
  const wal = readWal(`${path}-wal`);
  const size = wal?.headWhole === true ? wal.pageSize : pageSizeOf(file);
  const frames = committed(wal, size);
  const newest = new Map(frames.filter(({ whole }) => whole).map((frame) => [frame.page, frame.bytes]));
  const highest = [...newest.keys()].reduce((most, number) => Math.max(most, number), 0);
  return {
    size,
    count: Math.max(Math.ceil(bytes / size), highest),
    older: frames.flatMap(({ page, bytes }) => (newest.get(page) === bytes ? [] : [[page, bytes] as const])),
    read: (number) => {
      const there = newest.get(number);
      if (there !== undefined) return there;
      const page = Buffer.alloc(size);
      const read = readSync(file, page, 0, size, (number - 1) * size);
      return read === 0 ? null : page;
    },
    close: () => closeSync(file),
  };
}

/** Only the last frame of a write says that it is whole: those behind the last such one were never committed. */
function committed(wal: Wal | null, size: number): readonly Frame[] {
  const frames = wal?.pageSize === size ? wal.frames : [];
  return frames.slice(0, frames.findLastIndex(({ commits, whole }) => commits && whole) + 1);
}

/** The header's, where it is a possible one; else what SQLite takes by itself. */
function pageSizeOf(file: number): number {
  const head = Buffer.alloc(18);
  readSync(file, head, 0, head.length, 0);
  const size = head.readUInt16BE(16) === 1 ? 65_536 : head.readUInt16BE(16);
  return size >= 512 && (size & (size - 1)) === 0 ? size : 4096;
}

const ENTRY_COLUMNS = 7;
const DISCLOSURE_COLUMNS = 4;

function addDisclosure(all: Map<number, string[]>, { values, rowid }: Row): void {
  const [, , salt, text] = values;
  if (values.length !== DISCLOSURE_COLUMNS || !(salt instanceof Buffer) || typeof text !== 'string') return;
  const seq = Math.floor(rowid / TEXTS_AN_ENTRY);
  const disclosure = disclosureOf(salt.toString('base64url'), text);
  all.set(seq, [...new Set([...(all.get(seq) ?? []), disclosure])]);
}

/** Number, stream and place are the body's own: the hash covers nothing else of the row. */
function entryFrom({ values }: Row, { unpack }: Packing): CarvedEntry | null {
  if (values.length !== ENTRY_COLUMNS) return null;
  const [hash, salt, stored] = values.slice(-3);
  const bytes = unpack(stored, salt);
  if (!(hash instanceof Buffer) || bytes === null || !isSame(leafHash(bytes), hash)) return null;
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
