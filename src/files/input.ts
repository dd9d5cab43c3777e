import { readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { ProblemError } from '../problem.ts';

const NO_PLAIN_FILE = 'no plain file';
const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EACCES: 'no permission to read it',
  EISDIR: 'it is a folder',
  [NO_PLAIN_FILE]: 'it is no plain file',
};

/** The bytes of a plain file that is no larger than `maxBytes`; problems `file-unreadable`, `file-too-large`. */
export async function readBytes(file: string, what: string, maxBytes: number): Promise<Uint8Array> {
  try {
    const stats = await stat(file);
    // A pipe or a device has no end.
    if (!stats.isFile() && !stats.isDirectory()) throw Object.assign(new Error(), { code: NO_PLAIN_FILE });
    if (stats.size <= maxBytes) {
      const bytes = await readFile(file);
      if (bytes.length <= maxBytes) return bytes;
    }
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    const why = WHY[code] ?? code;
    throw new ProblemError({
      code: 'file-unreadable',
      where: file,
      message: `the ${what} cannot be read: ${why}`,
      next: 'Check the path.',
    });
  }
  throw new ProblemError({
    code: 'file-too-large',
    where: file,
    message: `the ${what} is larger than ${Math.round(maxBytes / (1 << 20))} MB`,
    next: 'This is hardly the right file.',
  });
}

/** A file of the examples that come with the program, in the source and in the build. */
export const exampleFile = (name: string) =>
  fileURLToPath(new URL(`../../sim/example/${name}`, import.meta.url));
