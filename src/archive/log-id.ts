import { toHex, utf8 } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';

/** By what an archive finds a log: a UUID of version 8 (RFC 9562) made of the SHA-256 of its origin. */
export function logId(origin: string): string {
  const bytes = Uint8Array.from(sha256(utf8(origin)).subarray(0, 16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x80;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  return toHex(bytes).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

export const LOG_ID = /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
