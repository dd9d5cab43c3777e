/** Reading a package: what lies in its folder, and the log that it is taken from. */
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { fromUtf8 } from '../evidence/platform/bytes.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { type PackageLog, stationIn } from './checks.ts';
import type { FolderToRead, NewProgress } from './folder.ts';
import { PACKAGE_FILES, type PackageFile, type PackageIndex, readProofs, readStationFile } from './format.ts';

/** No index, proof or list of the station's entries is larger. */
export const MAX_BYTES = 256 << 20;
/** No checkpoint or signature is larger. */
export const MAX_NOTE_BYTES = 130_000;

export interface FilesThere {
  /** What is no plain file has no digest, and is named as well. */
  readonly files: readonly PackageFile[];
  readonly plain: ReadonlySet<string>;
}

/** Everything in the folder but the index and its signature. */
export async function filesIn(
  folder: FolderToRead,
  index: PackageIndex,
  progress: NewProgress,
): Promise<FilesThere> {
  const sizes = new Map(index.files.map(({ path, bytes }) => [path, bytes]));
  const files: PackageFile[] = [];
  const plain = new Set<string>();
  const bar = progress('files', index.files.length);
  for await (const { path, bytes, isPlain } of folder.list()) {
    if (path === PACKAGE_FILES.index || path === PACKAGE_FILES.signature) continue;
    if (isPlain) plain.add(path);
    // A file of another size was changed, and need not be read.
    const sha256 = isPlain && sizes.get(path) === bytes ? await folder.digest(path) : '';
    files.push({ path, bytes, sha256 });
    bar.at(Math.min(files.length, index.files.length));
  }
  bar.end();
  return { files, plain };
}

/** A checkpoint or a signature as text; empty where it cannot be read. */
export async function noteIn(folder: FolderToRead, path: string): Promise<string> {
  const bytes = await folder.read(path, MAX_NOTE_BYTES).catch(() => new Uint8Array());
  return fromUtf8(bytes);
}

/** The log that the package says it is taken from; a sentence where that cannot be read. */
export async function logIn(folder: FolderToRead): Promise<PackageLog | Sentence> {
  try {
    const note = fromUtf8(await folder.read(PACKAGE_FILES.checkpoint, MAX_NOTE_BYTES));
    const checkpoint = orThrow(readCheckpoint(note, PACKAGE_FILES.checkpoint));
    const proofs = orThrow(readProofs(await folder.read(PACKAGE_FILES.proofs, MAX_BYTES)));
    const entries = orThrow(readStationFile(await folder.read(PACKAGE_FILES.station, MAX_BYTES)));
    return { checkpoint, proofs, entries, station: stationIn(entries) };
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    const { problem } = cause;
    return sentence`What it says of the log cannot be read: ${() => problem.message}.`;
  }
}
