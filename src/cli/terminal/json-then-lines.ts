import type { Readable } from 'node:stream';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

const MAX_BYTES = 1 << 20;

/**
 * The bytes of the value of JSON that an input begins with, up to the end of the line on which it is whole. What follows stays in
 * the input, to be read as lines. Where it is never whole, all there is.
 */
export function jsonThenLines(input: Readable): Promise<Uint8Array> {
  if ('isTTY' in input && input.isTTY === true)
    throw new ProblemError({
      code: 'file-unreadable',
      where: w`standard input`,
      message: w`the work order cannot be read: it is a terminal`,
      next: w`Pipe a file into the command, or name one.`,
    });
  return new Promise((resolve, reject) => {
    let all = Buffer.alloc(0);
    const leave = () => input.off('data', onData).off('end', onEnd).off('error', reject).pause();
    const onData = (chunk: Buffer) => {
      const seen = all.length;
      all = Buffer.concat([all, chunk]);
      for (let end = all.indexOf('\n', seen); end >= 0; end = all.indexOf('\n', end + 1)) {
        if (!isWhole(all.subarray(0, end))) continue;
        leave();
        if (end + 1 < all.length) input.unshift(all.subarray(end + 1));
        return resolve(all.subarray(0, end));
      }
      if (all.length <= MAX_BYTES) return;
      leave();
      reject(
        new ProblemError({
          code: 'file-too-large',
          where: w`standard input`,
          message: w`the work order is larger than 1 MB`,
          next: w`This is hardly the right file.`,
        }),
      );
    };
    const onEnd = () => {
      leave();
      resolve(all);
    };
    input.on('data', onData).on('end', onEnd).on('error', reject);
  });
}

/** An object ends with a brace: nothing else is worth a look. */
function isWhole(bytes: Buffer): boolean {
  const text = bytes.toString('utf8').trimEnd();
  if (!text.endsWith('}')) return false;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
