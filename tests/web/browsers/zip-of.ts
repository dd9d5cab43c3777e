/** Archives for tests, honest ones and others (PKWARE APPNOTE 6.3). */
import { crc32, deflateRawSync } from 'node:zlib';

export interface InZip {
  readonly name: string | Uint8Array;
  readonly content: Uint8Array;
  /** As the archive says it; what is so unless given. */
  readonly bytes?: number;
  /** Mode of Unix, with the type of the file. */
  readonly mode?: number;
  readonly flags?: number;
  readonly stored?: true;
  /** Name where the content lies, if it is another one. */
  readonly local?: string;
  /** How it is packed, where it lies, if that is said to be another way. */
  readonly localMethod?: number;
  /** A second name, as an extra field. */
  readonly second?: string;
  /** Lies where the one before lies. */
  readonly sharesPlace?: true;
}

export function zipOf(files: readonly InZip[]): Buffer {
  const parts: Buffer[] = [];
  const table: Buffer[] = [];
  let at = 0;
  let before = 0;
  for (const {
    name,
    content,
    mode = 0o100644,
    flags = 0x800,
    stored,
    local,
    localMethod,
    second,
    sharesPlace,
    ...given
  } of files) {
    const packed = stored === true ? Buffer.from(content) : deflateRawSync(content);
    const [listed, lies] = [Buffer.from(name), Buffer.from(local ?? name)];
    const sizes = { crc: crc32(content), packed: packed.length, bytes: given.bytes ?? content.length };
    const place = sharesPlace === true ? before : at;
    const method = stored === true ? 0 : 8;
    const head = Buffer.alloc(46);
    head.writeUInt32LE(0x02014b50, 0);
    head.writeUInt16LE((3 << 8) | 20, 4);
    head.writeUInt16LE(20, 6);
    head.writeUInt16LE(flags, 8);
    head.writeUInt16LE(method, 10);
    head.writeUInt32LE(sizes.crc, 16);
    head.writeUInt32LE(sizes.packed, 20);
    head.writeUInt32LE(sizes.bytes, 24);
    head.writeUInt16LE(listed.length, 28);
    head.writeUInt32LE((mode << 16) >>> 0, 38);
    head.writeUInt32LE(place, 42);
    const extra = second === undefined ? Buffer.alloc(0) : secondName(listed, second);
    head.writeUInt16LE(extra.length, 30);
    table.push(head, listed, extra);
    before = at;
    if (sharesPlace === true) continue;
    const own = Buffer.alloc(30);
    own.writeUInt32LE(0x04034b50, 0);
    own.writeUInt16LE(20, 4);
    own.writeUInt16LE(flags, 6);
    own.writeUInt16LE(localMethod ?? method, 8);
    own.writeUInt32LE(sizes.crc, 14);
    own.writeUInt32LE(sizes.packed, 18);
    own.writeUInt32LE(sizes.bytes, 22);
    own.writeUInt16LE(lies.length, 26);
    parts.push(own, lies, packed);
    at += own.length + lies.length + packed.length;
  }
  const directory = Buffer.concat(table);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...parts, directory, end]);
}

/** Info-ZIP Unicode Path (APPNOTE 4.6.9): version, CRC-32 of the first name, the second one. */
function secondName(listed: Buffer, second: string): Buffer {
  const field = Buffer.alloc(9);
  field.writeUInt16LE(0x7075, 0);
  field.writeUInt16LE(5 + Buffer.byteLength(second), 2);
  field.writeUInt8(1, 4);
  field.writeUInt32LE(crc32(listed), 5);
  return Buffer.concat([field, Buffer.from(second)]);
}
