/** The program of the page as text. */
import { expect, test } from 'vitest';
import { fromBase91, toBase91 } from '../../src/web/verify/base91.ts';

test.each([...Array(30).keys(), 255, 1000, 1001, 1002, 1003])('%i bytes come back as they were', (length) => {
  for (const seed of [0, 7, 255]) {
    const bytes = Uint8Array.from({ length }, (_, i) => (seed === 255 ? 255 : (i * 89 + seed) % 256));
    const text = toBase91(bytes);
    expect(text).not.toMatch(/[<&\s\\]/);
    expect([...fromBase91(text)]).toEqual([...bytes]);
  }
});
