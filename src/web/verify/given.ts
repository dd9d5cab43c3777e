/** Files as somebody gave them: dropped, chosen, or out of an archive. */
import type { Problem } from '../../problem.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { w } from '../../words/catalogue.ts';

/** A file that is read only when it is needed, and never further than `maxBytes`. */
export interface Given {
  /** With forward slashes, seen from what was given. */
  readonly path: string;
  readonly bytes: number;
  /** No link and no device. */
  readonly isPlain: boolean;
  read(maxBytes: number): Promise<Uint8Array>;
}

/** A sentence in the language that the reader has when it is shown, who may choose another one meanwhile. */
export type Say = () => string;

/** What the page itself refuses. */
export class Refused extends ProblemError {
  readonly again: () => Problem;
  constructor(again: () => Problem) {
    super(again());
    this.again = again;
  }
}

export const refused = (
  code: ProblemCode,
  where: string,
  message: Say,
  next: Say = () => w`Ask for it again from where it came.`,
): ProblemError => new Refused(() => ({ code, where, message: message(), next: next() }));

export const tooLarge = (where: string, bytes: number, maxBytes: number): ProblemError =>
  refused(
    'file-too-large',
    where,
    () => w`it has ${megabytes(bytes)}, and no such file has more than ${megabytes(maxBytes)}`,
  );

const megabytes = (bytes: number) => `${Math.ceil(bytes / (1 << 20))} MB`;

export const unreadable = (path: string): ProblemError =>
  refused(
    'file-unreadable',
    path,
    () => w`the browser could not read this file`,
    () => w`Choose it again.`,
  );

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
    throw unreadable(path);
  }
}
