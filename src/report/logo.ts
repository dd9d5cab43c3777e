/**
 * The logo in a record, as it may be put into a PDF: a record is text from outside. Only the plainest of PNG is taken: 8 bits
 * RGB, no more than a logo's size, nothing in it but the picture, and exactly as many pixels as it says.
 */
import { inflateSync } from 'node:zlib';

export interface Logo {
  readonly png: Buffer;
  readonly width: number;
  readonly height: number;
}

const LARGEST = { width: 400, height: 200 } as const;
const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Depth 8, colour type 2 (RGB), deflate, the usual filters, not interlaced. */
const PLAIN = Buffer.from([8, 2, 0, 0, 0]);

/** Null for anything else, and for none. */
export function logoIn(base64: string): Logo | null {
  const png = Buffer.from(base64, 'base64');
  const chunks = chunksOf(png);
  const [header, ...rest] = chunks ?? [];
  if (header?.type !== 'IHDR' || header.data.length !== 13 || rest.pop()?.type !== 'IEND') return null;
  if (rest.length === 0 || rest.some(({ type }) => type !== 'IDAT')) return null;
  const [width, height] = [header.data.readUInt32BE(0), header.data.readUInt32BE(4)];
  if (width === 0 || height === 0 || width > LARGEST.width || height > LARGEST.height) return null;
  if (!header.data.subarray(8).equals(PLAIN)) return null;
  const size = height * (1 + 3 * width);
  try {
    const rows = inflateSync(Buffer.concat(rest.map(({ data }) => data)), { maxOutputLength: size });
    return rows.length === size ? { png, width, height } : null;
  } catch {
    return null;
  }
}

function chunksOf(png: Buffer): readonly { readonly type: string; readonly data: Buffer }[] | null {
  if (!png.subarray(0, SIGNATURE.length).equals(SIGNATURE)) return null;
  const chunks: { readonly type: string; readonly data: Buffer }[] = [];
  for (let at = SIGNATURE.length; at < png.length; ) {
    if (at + 12 > png.length) return null;
    const length = png.readUInt32BE(at);
    if (at + 12 + length > png.length) return null;
    const data = png.subarray(at + 8, at + 8 + length);
    chunks.push({ type: png.toString('latin1', at + 4, at + 8), data });
    at += 12 + length;
  }
  return chunks;
}
