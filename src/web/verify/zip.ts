/**
 * A package as one file (PKWARE APPNOTE 6.3, without its 64-bit part). What two programs could unpack to two different things
 * is refused: names that collide or lead out of the folder, links, entries that lie in one another, sizes that are not so.
 */
import { w } from '../../words/catalogue.ts';
import { type Given, refused, type Say, tooLarge } from './given.ts';
import { unpacked } from './unpacked.ts';

const MAX_ENTRIES = 200_000;
const MAX_DIRECTORY_BYTES = 64 << 20;
/** All of it unpacked; a package of some hundred jobs has some dozen megabytes. */
const MAX_TOTAL_BYTES = 1 << 30;

const END = 0x06054b50;
const END_BYTES = 22;
const MAX_COMMENT = 0xffff;
const ENTRY = 0x02014b50;
const ENTRY_BYTES = 46;
const LOCAL = 0x04034b50;
const LOCAL_BYTES = 30;
const IN_64_BITS = 0xffffffff;
const ENCRYPTED = 0x2041;
const STORED = 0;
const DEFLATED = 8;
const UNIX = 3;
const FILE_TYPE = 0xf000;
const PLAIN = 0x8000;
const FOLDER = 0x4000;
/** A second name (Info-ZIP Unicode Path), which some programs take and others leave. */
const SECOND_NAME = 0x7075;

interface Entry {
  readonly path: string;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly method: number;
  readonly at: number;
}

/** The files in an archive, as in a folder. Problem: `archive-refused`. */
export async function filesInZip(name: string, archive: Blob): Promise<readonly Given[]> {
  const entries = await entriesOf(name, archive);
  refuseOverlap(name, entries);
  const total = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  if (total > MAX_TOTAL_BYTES)
    throw damaged(
      name,
      () => w`unpacked it would have ${Math.ceil(total / (1 << 20))} MB, more than any package`,
    );
  const folder = commonFolder(entries.map(({ path }) => path));
  return entries.map((entry) => ({
    path: entry.path.slice(folder.length),
    bytes: entry.bytes,
    isPlain: true,
    read: (maxBytes) => contentOf(name, archive, entry, maxBytes),
  }));
}

const damaged = (name: string, why: Say) =>
  refused('zip-refused', name, () => w`this archive is not read: ${why()}`);

/** Whoever packs a folder packs its name as well. */
function commonFolder(paths: readonly string[]): string {
  const [first = ''] = paths;
  const folder = first.slice(0, first.indexOf('/') + 1);
  return folder !== '' &&
    paths.every((path) => path.startsWith(folder)) &&
    paths.includes(`${folder}index.json`)
    ? folder
    : '';
}

const viewOf = async (part: Blob) => new DataView(await part.arrayBuffer());

async function entriesOf(name: string, archive: Blob): Promise<readonly Entry[]> {
  const tailAt = Math.max(0, archive.size - END_BYTES - MAX_COMMENT);
  const tail = await viewOf(archive.slice(tailAt));
  let end = tail.byteLength - END_BYTES;
  while (end >= 0 && !(tail.getUint32(end, true) === END && endFits(tail, end))) end--;
  if (end < 0) throw damaged(name, () => w`it has no table of contents`);
  const [count, size, at] = [
    tail.getUint16(end + 10, true),
    tail.getUint32(end + 12, true),
    tail.getUint32(end + 16, true),
  ];
  if (count === 0xffff || size === IN_64_BITS || at === IN_64_BITS)
    throw damaged(name, () => w`it is of the 64-bit form`);
  if (tail.getUint32(end + 4, true) !== 0 || tail.getUint16(end + 8, true) !== count)
    throw damaged(name, () => w`it is one of several parts`);
  if (count > MAX_ENTRIES || size > MAX_DIRECTORY_BYTES)
    throw damaged(name, () => w`its table of contents is larger than that of any package`);
  if (at + size !== tailAt + end)
    throw damaged(name, () => w`its table of contents is not where it should be`);
  return readDirectory(name, await viewOf(archive.slice(at, at + size)), count, at);
}

const endFits = (tail: DataView, end: number) =>
  end + END_BYTES + tail.getUint16(end + 20, true) === tail.byteLength;

function readDirectory(name: string, directory: DataView, count: number, end: number): readonly Entry[] {
  const entries: Entry[] = [];
  const taken = new Map<string, string>();
  let at = 0;
  for (let i = 0; i < count; i++) {
    if (at + ENTRY_BYTES > directory.byteLength || directory.getUint32(at, true) !== ENTRY)
      throw damaged(name, () => w`its table of contents is damaged`);
    const lengths = [28, 30, 32].map((from) => directory.getUint16(at + from, true));
    const [nameBytes = 0, extraBytes = 0] = lengths;
    const length = ENTRY_BYTES + lengths.reduce((sum, one) => sum + one, 0);
    if (at + length > directory.byteLength) throw damaged(name, () => w`its table of contents is cut off`);
    const path = pathIn(
      name,
      new Uint8Array(directory.buffer, directory.byteOffset + at + ENTRY_BYTES, nameBytes),
    );
    const extraAt = at + ENTRY_BYTES + nameBytes;
    if (fieldsIn(directory, extraAt, extraAt + extraBytes).includes(SECOND_NAME))
      throw damaged(name, () => w`${path} has another name where it lies`);
    const entry = entryAt(name, directory, at, path, end);
    if (entry !== null) {
      // Where capitals or accents are the same to the file system, one file would overwrite the other.
      const key = path.normalize('NFC').toLowerCase();
      if (taken.has(key))
        throw damaged(name, () => w`${taken.get(key) ?? ''} and ${path} have the same name`);
      taken.set(key, path);
      entries.push(entry);
    }
    at += length;
  }
  if (at !== directory.byteLength) throw damaged(name, () => w`its table of contents holds something else`);
  return entries;
}

/** The kinds of extra fields from here to there. */
function fieldsIn(view: DataView, from: number, to: number): readonly number[] {
  const kinds: number[] = [];
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true))
    kinds.push(view.getUint16(at, true));
  return kinds;
}

/** Null for a folder. */
function entryAt(name: string, directory: DataView, at: number, path: string, end: number): Entry | null {
  const entry = {
    path,
    method: directory.getUint16(at + 10, true),
    packedBytes: directory.getUint32(at + 20, true),
    bytes: directory.getUint32(at + 24, true),
    at: directory.getUint32(at + 42, true),
  };
  const { method, packedBytes, bytes } = entry;
  if ([packedBytes, bytes, entry.at].includes(IN_64_BITS))
    throw damaged(name, () => w`it is of the 64-bit form`);
  if ((directory.getUint16(at + 8, true) & ENCRYPTED) !== 0)
    throw damaged(name, () => w`${path} is under a password`);
  if (method !== STORED && method !== DEFLATED)
    throw damaged(name, () => w`${path} is packed in another way`);
  if (method === STORED && packedBytes !== bytes)
    throw damaged(name, () => w`${path} has not the size that it says`);
  if (entry.at + LOCAL_BYTES + packedBytes > end) throw damaged(name, () => w`${path} is cut off`);
  const type =
    directory.getUint8(at + 5) === UNIX ? (directory.getUint32(at + 38, true) >>> 16) & FILE_TYPE : 0;
  if (path.endsWith('/') && (type === 0 || type === FOLDER)) return null;
  if (path.endsWith('/') || (type !== 0 && type !== PLAIN))
    throw damaged(name, () => w`${path} is a link, or no plain file`);
  return entry;
}

/** A name that is the same to every program, and leads nowhere but below the folder. */
function pathIn(name: string, bytes: Uint8Array): string {
  const path = text(bytes);
  if (path === null) throw damaged(name, () => w`a name in it is not UTF-8 text`);
  const steps = path.replace(/\/$/, '').split('/');
  if (/[\p{C}\\:]/u.test(path) || steps.some((step) => step === '' || step === '.' || step === '..'))
    throw damaged(name, () => w`a name in it leads out of the folder, or is none: ${path.slice(0, 80)}`);
  return path;
}

function text(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Entries that share their bytes make petabytes of a few kilobytes. */
function refuseOverlap(name: string, entries: readonly Entry[]): void {
  const inOrder = [...entries].sort((a, b) => a.at - b.at);
  for (const [i, { path, at, packedBytes }] of inOrder.entries()) {
    const next = inOrder[i + 1];
    if (next !== undefined && at + LOCAL_BYTES + packedBytes > next.at)
      throw damaged(name, () => w`${path} and ${next.path} lie in one another`);
  }
}

async function contentOf(name: string, archive: Blob, entry: Entry, maxBytes: number): Promise<Uint8Array> {
  const { path, at, bytes, packedBytes, method } = entry;
  if (bytes > maxBytes) throw tooLarge(path, bytes, maxBytes);
  const head = await viewOf(archive.slice(at, at + LOCAL_BYTES));
  if (head.byteLength < LOCAL_BYTES || head.getUint32(0, true) !== LOCAL)
    throw damaged(name, () => w`${path} is not there`);
  // A program that reads from the beginning goes by what stands here.
  if (head.getUint16(8, true) !== method || (head.getUint16(6, true) & ENCRYPTED) !== 0)
    throw damaged(name, () => w`${path} is packed in another way`);
  const nameBytes = head.getUint16(26, true);
  const from = at + LOCAL_BYTES + nameBytes + head.getUint16(28, true);
  const own = text(
    new Uint8Array(await archive.slice(at + LOCAL_BYTES, at + LOCAL_BYTES + nameBytes).arrayBuffer()),
  );
  if (own !== path) throw damaged(name, () => w`${path} has another name where it lies`);
  const packed = archive.slice(from, from + packedBytes);
  const content =
    method === STORED
      ? new Uint8Array(await packed.arrayBuffer())
      : await unpacked(packed, 'deflate-raw', bytes);
  if (typeof content === 'string' || content.length !== bytes)
    throw damaged(name, () => w`${path} has not the size that it says`);
  return content;
}
