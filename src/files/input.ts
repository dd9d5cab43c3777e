import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { ProblemError } from '../problem.ts';
import { phrases, w } from '../words/catalogue.ts';

/** Read as the stream that is open already: where it is a socket, no path opens it. */
const STANDARD_INPUT: ReadonlySet<string> = new Set(['-', '/dev/stdin', '/dev/fd/0', '/proc/self/fd/0']);

/** What a file is called in a sentence. */
export const inputName = (file: string): string => (STANDARD_INPUT.has(file) ? w`standard input` : file);

const NO_FILE = 'NO_FILE';
const NOBODY_PIPES = 'NOBODY_PIPES';
const WHY: Readonly<Record<string, readonly string[]>> = phrases({
  ENOENT: ['no such file', 'Check the path.'],
  EACCES: ['no permission to read it', 'Check the rights on it.'],
  EISDIR: ['it is a folder', 'Name a file.'],
  NO_FILE: ['it is a device', 'Name a file, or - for the standard input.'],
  NOBODY_PIPES: ['it is a terminal', 'Pipe a file into the command, or name one.'],
});

/**
 * The bytes of a file, of a pipe, or of the standard input (`-`), as long as they are no more than `maxBytes`. Problems
 * `file-unreadable`, `file-too-large`.
 */
export async function readBytes(file: string, what: string, maxBytes: number): Promise<Uint8Array> {
  const where = inputName(file);
  try {
    const bytes = STANDARD_INPUT.has(file)
      ? await readStandardInput(maxBytes)
      : await readNamed(file, maxBytes);
    if (bytes !== null) return bytes;
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    const [why = code, next = w`Check the path.`] = WHY[code] ?? [];
    throw new ProblemError({
      code: 'file-unreadable',
      where,
      message: w`the ${what} cannot be read: ${why}`,
      next,
    });
  }
  throw new ProblemError({
    code: 'file-too-large',
    where,
    message: w`the ${what} is larger than ${Math.round(maxBytes / (1 << 20))} MB`,
    next: w`This is hardly the right file.`,
  });
}

/** Null where it is too large. */
async function readNamed(file: string, maxBytes: number): Promise<Uint8Array | null> {
  const about = await stat(file);
  // A pipe has an end when its writer is done. A device may have none, and may be somebody's keyboard.
  if (about.isFIFO()) return readStream(createReadStream(file), maxBytes);
  if (!about.isFile() && !about.isDirectory()) throw Object.assign(new Error(), { code: NO_FILE });
  if (about.size > maxBytes) return null;
  const bytes = await readFile(file);
  return bytes.length <= maxBytes ? bytes : null;
}

function readStandardInput(maxBytes: number): Promise<Uint8Array | null> {
  if (process.stdin.isTTY === true) throw Object.assign(new Error(), { code: NOBODY_PIPES });
  return readStream(process.stdin, maxBytes);
}

async function readStream(
  stream: AsyncIterable<Buffer> & { destroy(): unknown },
  maxBytes: number,
): Promise<Uint8Array | null> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.length;
    if (size > maxBytes) {
      stream.destroy();
      return null;
    }
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** A file of the examples that come with the program, in the source and in the build. */
export const exampleFile = (name: string) =>
  fileURLToPath(new URL(`../../sim/example/${name}`, import.meta.url));
