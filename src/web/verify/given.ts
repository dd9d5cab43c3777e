/** Files as somebody gave them: dropped, chosen, or out of an archive. */
import type { Problem } from '../../problem.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';

/** A file that is read only when it is needed, and never further than `maxBytes`. */
export interface Given {
  /** With forward slashes, seen from what was given. */
  readonly path: string;
  readonly bytes: number;
  /** No link and no device. */
  readonly isPlain: boolean;
  read(maxBytes: number): Promise<Uint8Array>;
}

export const refused = (
  code: ProblemCode,
  where: string,
  message: string,
  next = 'Ask for it again from where it came.',
): ProblemError => {
  const problem: Problem = { code, where, message, next };
  return new ProblemError(problem);
};

export const tooLarge = (where: string, bytes: number, maxBytes: number): ProblemError =>
  refused(
    'file-too-large',
    where,
    `it has ${megabytes(bytes)}, and no such file has more than ${megabytes(maxBytes)}`,
  );

const megabytes = (bytes: number) => `${Math.ceil(bytes / (1 << 20))} MB`;

export function givenFile(path: string, file: Blob): Given {
  return {
    path,
    bytes: file.size,
    isPlain: true,
    read: (maxBytes) =>
      file.size > maxBytes ? Promise.reject(tooLarge(path, file.size, maxBytes)) : bytesOf(path, file),
  };
}

async function bytesOf(path: string, file: Blob): Promise<Uint8Array> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    throw refused('file-unreadable', path, 'the browser could not read this file', 'Choose it again.');
  }
}
