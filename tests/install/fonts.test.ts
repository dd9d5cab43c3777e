/** The fonts in the program are those of their packages, cut down. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
// @ts-expect-error: a script without types
import { FOLDER, fonts } from './fonts.mjs';

test('the fonts that papers embed are what their packages give', async () => {
  const files = z.record(z.string(), z.instanceof(Uint8Array)).parse(await fonts());
  const folder = z.instanceof(URL).parse(FOLDER);
  expect(Object.keys(files).sort()).toEqual([
    'LICENSE',
    'arimo-bold.ttf',
    'arimo-regular.ttf',
    'cousine-regular.ttf',
  ]);
  for (const [name, bytes] of Object.entries(files))
    expect(Buffer.compare(readFileSync(new URL(name, folder)), bytes), name).toBe(0);
});
