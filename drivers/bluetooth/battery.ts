import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import { decode, encode } from './layout.ts';

const WHAT = 'Battery Level 0x2A19';

/** One byte, 0 to 100 percent. */
export function decodeBattery(bytes: Uint8Array): Result<number, Problem> {
  return decode(WHAT, bytes, (cursor) => {
    const percent = cursor.uint(1, 'the level');
    if (percent > 100) cursor.fail(0, `expected 0 to 100 percent, found ${percent}`);
    return percent;
  });
}

export function encodeBattery(percent: number): Result<Uint8Array, Problem> {
  return encode(WHAT, (writer) => {
    if (percent > 100) writer.fail(`expected 0 to 100 percent, got ${percent}`);
    writer.uint(percent, 1, 'the level');
  });
}
