/** Set-up of the first run: what each test file reaches of the marked code is written beside the others. */
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect } from 'vitest';

declare global {
  var reachedCode: Set<string> | undefined;
}

globalThis.reachedCode = new Set();

afterAll(() => {
  const folder = process.env['REACHED_FOLDER'];
  const test = expect.getState().testPath;
  if (folder === undefined || test === undefined)
    throw new Error('there is nowhere to write what was reached');
  const name = createHash('sha256').update(test).digest('hex');
  writeFileSync(join(folder, name), JSON.stringify({ test, reached: [...(globalThis.reachedCode ?? [])] }));
});
