/**
 * The write-ahead log, looked at before SQLite does: SQLite takes its frames up to the first that does not fit and forgets
 * the rest without a word. Layout and checksums: sqlite.org/fileformat2.html, section 4.
 *
 * A write begins only when the one before it is on disk (synchronous=FULL). So whole frames of a later write behind a frame
 * that is not whole mean damage to what was acknowledged; a last write that is not whole is what a power cut leaves.
 */

import { existsSync, readFileSync, statSync } from 'node:fs';
import { type Problem, ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import { pause } from './pause.ts';
import { beginningOfRow, cellsOf } from './rows.ts';

const HEAD = 32;
const FRAME_HEAD = 24;
/** A program that is writing at this moment has not finished its write; one that stopped has. */
const AT_REST_MS = 2000;
const LOOK_AGAIN_MS = 30;

export interface Frame {
  /** The page that it is a newer version of. */
  readonly page: number;
  readonly bytes: Buffer;
  /** The last one of a write. */
  readonly commits: boolean;
  /** As it was written. */
  readonly whole: boolean;
}

/** Frames of the present round, those that are not whole among them. */
export interface Wal {
  readonly pageSize: number;
  readonly headWhole: boolean;
  readonly frames: readonly Frame[];
}

export type WalState =
  | { readonly kind: 'whole' }
  /** So many whole frames lie behind one that is not. */
  | { readonly kind: 'damaged'; readonly behind: number }
  /** The last write is not whole; numbers of the entries that can be read in what there is of it. */
  | { readonly kind: 'cut'; readonly entries: readonly number[] }
  /** The file that belongs to it says that there was one. */
  | { readonly kind: 'missing' };

export function walState(path: string): WalState {
  const state = seenIn(path);
  if (state.kind === 'whole') return state;
  // Another program may have begun a new round, or ended, while this one looked.
  pause(LOOK_AGAIN_MS);
  const again = seenIn(path);
  if (again.kind !== state.kind) return seenIn(path);
  const ageMs = Date.now() - (statSync(`${path}-wal`, { throwIfNoEntry: false })?.mtimeMs ?? 0);
  return again.kind === 'cut' && ageMs < AT_REST_MS ? { kind: 'whole' } : again;
}

/** So large while somebody reads for long, and then a program is there that made it. Not looked at: it would take all memory. */
const LARGE_BYTES = 256e6;

function seenIn(path: string): WalState {
  const [isThere, hasIndex] = [existsSync(path), existsSync(`${path}-shm`)];
  // SQLite makes the -wal file before the -shm file, and takes it away behind that.
  if (!existsSync(`${path}-wal`)) return isThere && hasIndex ? { kind: 'missing' } : { kind: 'whole' };
  const { size = 0 } = statSync(`${path}-wal`, { throwIfNoEntry: false }) ?? {};
  return size > LARGE_BYTES ? { kind: 'whole' } : stateOf(readWal(`${path}-wal`));
}

/** Throws `log-damaged` where SQLite would drop what was acknowledged; gives what is known of a last write that was cut off. */
export function refuseDamagedWal(path: string): readonly number[] | null {
  const state = walState(path);
  switch (state.kind) {
    case 'damaged':
      throw new ProblemError(damaged(path, state.behind));
    case 'missing':
      throw new ProblemError(missing(path));
    case 'cut':
      return state.entries;
    case 'whole':
      return null;
  }
}

/** Null where there is nothing in it. */
export function readWal(wal: string): Wal | null {
  const bytes = bytesOf(wal);
  if (bytes.length < HEAD + FRAME_HEAD) return null;
  const pageSize = bytes.readUInt32BE(8);
  if (pageSize < 512 || pageSize > 65_536 || (pageSize & (pageSize - 1)) !== 0)
    return { pageSize: 4096, headWhole: false, frames: framesOf(bytes, 4096, null) };
  const order = (bytes.readUInt32BE(0) & 1) === 1 ? 'BE' : 'LE';
  const sums = checksum(bytes.subarray(0, 24), [0, 0], order);
  const headWhole = (bytes.readUInt32BE(0) & ~1) === 0x377f0682 && sumsAre(bytes, 24, sums);
  return {
    pageSize,
    headWhole,
    frames: framesOf(bytes, pageSize, headWhole ? bytes.subarray(16, 24) : null),
  };
}

/** Those that carry the salts of this round; where its head is damaged, of the round that the first frame is of. */
function framesOf(bytes: Buffer, pageSize: number, salts: Buffer | null): readonly Frame[] {
  const round = salts ?? bytes.subarray(HEAD + 8, HEAD + 16);
  const order = (bytes.readUInt32BE(0) & 1) === 1 ? 'BE' : 'LE';
  const step = FRAME_HEAD + pageSize;
  const frames: Frame[] = [];
  let aliens = 0;
  for (let at = HEAD; at + FRAME_HEAD <= bytes.length; at += step) {
    const page = bytes.subarray(at + FRAME_HEAD, Math.min(at + step, bytes.length));
    const isOfRound = bytes.subarray(at + 8, at + 16).equals(round);
    const before = at === HEAD ? 24 : at - step + 16;
    const seed: Sums = [bytes.readUInt32BE(before), bytes.readUInt32BE(before + 4)];
    const whole =
      isOfRound &&
      page.length === pageSize &&
      bytes.readUInt32BE(at) > 0 &&
      sumsAre(bytes, at + 16, checksum(page, checksum(bytes.subarray(at, at + 8), seed, order), order));
    if (!isOfRound) {
      aliens++;
      continue;
    }
    // A frame of another round counts only where frames of this one lie behind it: its own head is damaged then.
    for (; aliens > 0; aliens--)
      frames.push({
        page: 0,
        bytes: bytes.subarray(at - aliens * step + FRAME_HEAD, at - (aliens - 1) * step),
        commits: false,
        whole: false,
      });
    frames.push({
      page: bytes.readUInt32BE(at),
      bytes: page,
      commits: bytes.readUInt32BE(at + 4) > 0,
      whole,
    });
  }
  return frames;
}

function stateOf(wal: Wal | null): WalState {
  if (wal === null) return { kind: 'whole' };
  const { frames, headWhole } = wal;
  const wholes = frames.filter(({ whole }) => whole).length;
  // Only the head tells that frames are of this round; frames of an earlier one need not fit it.
  if (!headWhole) return wholes > 0 ? { kind: 'damaged', behind: wholes } : { kind: 'whole' };
  const bad = frames.findIndex(({ whole }) => !whole);
  const sound = bad < 0 ? frames : frames.slice(0, bad);
  const tail = frames.slice(sound.findLastIndex(({ commits }) => commits) + 1);
  if (tail.length === 0) return { kind: 'whole' };
  // The write in which the bad frame is ends with the first mark at or behind it that can be read.
  const end = bad < 0 ? -1 : frames.findIndex(({ commits }, i) => i >= bad && commits);
  const later = end < 0 ? 0 : frames.slice(end + 1).filter(({ whole }) => whole).length;
  if (later > 0) return { kind: 'damaged', behind: frames.slice(bad).filter(({ whole }) => whole).length };
  return { kind: 'cut', entries: entriesIn(tail, wal.pageSize) };
}

/** Numbers of the entries on these pages: in each row of their table a hash of 32 and a salt of 16 bytes. */
function entriesIn(frames: readonly Frame[], size: number): readonly number[] {
  const seqs = new Set<number>();
  for (const { page, bytes } of frames) {
    if (bytes.length < size) continue;
    for (const at of cellsOf(bytes, page)) {
      const row = beginningOfRow(bytes, at);
      const [, , , , hash, salt] = row?.values ?? [];
      if (hash instanceof Buffer && hash.length === 32 && salt instanceof Buffer && salt.length === 16)
        seqs.add(row?.rowid ?? 0);
    }
  }
  return [...seqs];
}

type Sums = readonly [number, number];

function checksum(bytes: Buffer, [a, b]: Sums, order: 'BE' | 'LE'): Sums {
  let [one, two] = [a, b];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const little = order === 'LE';
  for (let at = 0; at + 8 <= bytes.length; at += 8) {
    one = (one + view.getUint32(at, little) + two) >>> 0;
    two = (two + view.getUint32(at + 4, little) + one) >>> 0;
  }
  return [one, two];
}

const sumsAre = (bytes: Buffer, at: number, [one, two]: Sums) =>
  bytes.readUInt32BE(at) === one && bytes.readUInt32BE(at + 4) === two;

/** It may go at any moment where the last program that has the log open ends. */
function bytesOf(wal: string): Buffer {
  try {
    return readFileSync(wal);
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause && cause.code === 'ENOENT') return Buffer.alloc(0);
    throw cause;
  }
}

const damaged = (path: string, behind: number): Problem => ({
  code: 'log-damaged',
  where: `${path}-wal`,
  message: w`the newest part of the log is damaged: ${behind} pages that were written behind the damage would be lost`,
  next: w`Keep station.db and station.db-wal as they are. Save what can be read with "plugmark recover", then put it in place with "plugmark restore".`,
});

const missing = (path: string): Problem => ({
  code: 'log-damaged',
  where: `${path}-wal`,
  message: w`the newest part of the log is missing: the program was stopped before it was taken into station.db`,
  next: w`Put the file back. If it is lost, so are the entries in it: delete station.db-shm, then "plugmark log check" compares what is left with the checkpoints.`,
});
