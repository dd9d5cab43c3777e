import { isUtf8 } from './platform/bytes.ts';

/** Offset of the first byte that cannot belong to UTF-8 text (or the length, where the text is cut); null when all is well. */
export function firstInvalidByte(bytes: Uint8Array): number | null {
  if (isUtf8(bytes)) return null;
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (beginsUtf8(bytes.subarray(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

/** Whether the bytes are the beginning of some UTF-8 text, a cut last character allowed. */
function beginsUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}
