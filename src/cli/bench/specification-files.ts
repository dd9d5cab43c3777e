/** The shop's own library of specifications: a folder with a JSON file an entry. */

import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { makeFolder, writeWhole } from '../../files/output.ts';
import { fileNameOf, type LibraryEntry, libraryEntrySchema, normalName } from '../../job/library.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from '../station/json-file.ts';

/** An entry and the file that it stands in. */
export interface Kept {
  readonly file: string;
  readonly entry: LibraryEntry;
}

/** A folder as it is found: what can be used, and what is wrong with the rest. */
export interface Library {
  readonly folder: string;
  readonly kept: readonly Kept[];
  readonly faults: readonly ProblemError[];
}

/** Reads all entries, sorted by name. A file that is wrong is a fault and no entry; a folder that is not there is empty. */
export async function readLibrary(folder: string): Promise<Library> {
  const kept: Kept[] = [];
  const faults: ProblemError[] = [];
  for (const name of await jsonFiles(folder)) {
    const file = join(folder, name);
    try {
      const entry = await readJson(
        file,
        libraryEntrySchema,
        w`specification`,
        '"plugmark manual specifications"',
      );
      const twin = kept.find((other) => normalName(other.entry.name) === normalName(entry.name));
      if (twin !== undefined) throw new ProblemError(takenBy(file, entry.name, twin.file));
      kept.push({ file, entry });
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      faults.push(error);
    }
  }
  kept.sort((a, b) => a.entry.name.localeCompare(b.entry.name, 'en'));
  return { folder, kept, faults };
}

/** Why an entry of this name cannot be added; null when it can. */
export function nameTaken({ kept, folder }: Library, name: string): ProblemError | null {
  const path = join(folder, fileNameOf(name));
  const twin = kept.find(({ entry }) => normalName(entry.name) === normalName(name));
  if (twin === undefined && !existsSync(path)) return null;
  return new ProblemError(takenBy(path, name, twin?.file ?? path));
}

/** Writes an entry that is not there yet, whole or not at all, and returns its file. */
export function writeEntry(folder: string, entry: LibraryEntry): string {
  const path = join(folder, fileNameOf(entry.name));
  makeFolder(folder);
  writeJson(path, entry);
  return path;
}

/** Writes JSON that people may read, and that no reader sees half of. */
export function writeJson(path: string, value: unknown): void {
  writeWhole(path, `${JSON.stringify(value, null, 2)}\n`);
}

async function jsonFiles(folder: string): Promise<readonly string[]> {
  try {
    return (await readdir(folder)).filter((name) => name.endsWith('.json')).sort();
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause && cause.code === 'ENOENT') return [];
    throw new ProblemError(
      {
        code: 'file-unreadable',
        where: folder,
        message: w`the folder of the specifications cannot be read`,
        next: w`Check the path and the rights on it.`,
      },
      { cause },
    );
  }
}

const takenBy = (where: string, name: string, file: string): Problem => ({
  code: 'name-taken',
  where,
  message: w`${file} already has the name "${name}"`,
  next: w`Choose another name. A new edition of a source is a new entry.`,
});
