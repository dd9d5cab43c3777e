import { isUtf8 } from 'node:buffer';
import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import { decode, encode } from './layout.ts';

/** Longest device string that is kept, in characters; the rest of a longer one is cut off. */
export const TEXT_LIMIT = 64;

/**
 * Control characters, halves of surrogate pairs, and the marks that reorder or hide text: none of them has a place in a serial number,
 * all of them can make a terminal or a report show something else than was sent.
 */
const UNSAFE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu;

/** Text from outside, fit for the screen: unsafe characters out, blanks trimmed, at most {@link TEXT_LIMIT} characters. */
export function cleanText(text: string): string {
  const clean = text.replace(UNSAFE, '').trim();
  return [...clean].slice(0, TEXT_LIMIT).join('').trimEnd();
}

/** A utf8s characteristic of the Device Information Service, cleaned by {@link cleanText}; `what` names it. */
export function decodeText(what: string, bytes: Uint8Array): Result<string, Problem> {
  return decode(what, bytes, (cursor) => {
    const raw = cursor.rest();
    const wrongAt = firstInvalidUtf8(raw);
    if (wrongAt !== undefined) cursor.fail(wrongAt, 'expected valid UTF-8');
    return cleanText(Buffer.from(raw).toString('utf8'));
  });
}

/** Takes only text that decodes to itself. */
export function encodeText(what: string, text: string): Result<Uint8Array, Problem> {
  return encode(what, (writer) => {
    if (cleanText(text) !== text) {
      writer.fail(`expected up to ${TEXT_LIMIT} plain characters without blanks at the ends`);
    }
    writer.raw(Buffer.from(text, 'utf8'));
  });
}

function firstInvalidUtf8(bytes: Uint8Array): number | undefined {
  let at = 0;
  while (at < bytes.length) {
    const size = sequenceSize(bytes[at] ?? 0);
    const sequence = bytes.subarray(at, at + size);
    if (sequence.length < size || !isUtf8(sequence)) return at;
    at += size;
  }
  return undefined;
}

/** Length that the lead byte promises; a byte that cannot lead counts as one and fails the check after it. */
function sequenceSize(lead: number): number {
  if (lead >= 0xf0) return 4;
  if (lead >= 0xe0) return 3;
  return lead >= 0xc0 ? 2 : 1;
}
