/** The folder of a package as this room needs it: files by their paths in it, with forward slashes. What lies behind is not known here. */
import { toHex } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import type { PackageFile } from './format.ts';

export interface FolderToRead {
  /** The bytes of a plain file. Problems: `file-unreadable`, `file-too-large`. */
  read(path: string, maxBytes: number): Promise<Uint8Array>;
  /** Everything in it and below it but folders. */
  list(): OneByOne<FolderFile>;
  /** SHA-256 of a plain file, in hex. */
  digest(path: string): Promise<string>;
}

/** At hand, or read only when asked for. */
export type OneByOne<T> = Iterable<T> | AsyncIterable<T>;

export interface FolderFile {
  readonly path: string;
  readonly bytes: number;
  /** No link, no device, no pipe. */
  readonly isPlain: boolean;
}

export interface FolderToWrite {
  write(path: string, content: Uint8Array): Promise<void>;
}

/** How far a long work is; `end` once, whatever came of it. */
export interface Progress {
  at(done: number): void;
  end(): void;
}
export type NewProgress = (what: string, total: number) => Progress;

/** Writes a file, and says what the index is to say of it. */
export async function put(folder: FolderToWrite, path: string, content: Uint8Array): Promise<PackageFile> {
  await folder.write(path, content);
  return { path, bytes: content.length, sha256: toHex(sha256(content)) };
}
