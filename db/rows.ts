/**
 * Rows as they lie in the leaf pages of a database file, read without SQLite: every leaf page says by itself what it holds,
 * whatever became of the pages that lead to it.
 * Layout: "Database File Format", sqlite.org/fileformat2.html, sections 1.5, 1.6 and 2.1.
 */

/** Pages by their numbers, from 1. */
export interface Pages {
  readonly size: number;
  readonly count: number;
  read(number: number): Buffer | null;
}

const LEAF = 0x0d;
/** Nothing that the program writes is larger. */
const MAX_BODY = 64 << 20;

/** Where the cells of a leaf page of a table begin; none for any other page. */
export function cellsOf(page: Buffer, number: number): readonly number[] {
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

export type Value = null | number | string | Buffer;

export interface Row {
  readonly rowid: number;
  readonly values: readonly Value[];
}

export function rowAt(pages: Pages, page: Buffer, at: number): Row | null {
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

function valuesOf(payload: Buffer, take: 'all' | 'as-far-as-there' = 'all'): readonly Value[] {
  const head = varint(payload, 0);
  const values: Value[] = [];
  let body = head.value;
  for (let at = head.end; at < head.value; ) {
    const type = varint(payload, at);
    at = type.end;
    const isThere = type.value < 12 || body + Math.floor((type.value - 12) / 2) <= payload.length;
    if (!isThere && take === 'as-far-as-there') break;
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

/** As much of a row as lies in the leaf itself, up to the first value that does not. */
export function beginningOfRow(page: Buffer, at: number): Row | null {
  try {
    const length = varint(page, at);
    const id = varint(page, length.end);
    return { rowid: id.value, values: valuesOf(page.subarray(id.end), 'as-far-as-there') };
  } catch (cause) {
    if (cause instanceof RangeError) return null;
    throw cause;
  }
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
