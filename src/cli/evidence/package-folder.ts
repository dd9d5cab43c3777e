/** The folder of a package on disk: plain files only, for a link could lead anywhere and a device has no end. */

import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { lstat, readdir, stat } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { readBytes } from '../../files/input.ts';
import { makeFolder, outputFolder, writeWhole } from '../../files/output.ts';
import type { FolderFile, FolderToRead, FolderToWrite } from '../../package/folder.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { w } from '../../words/catalogue.ts';

/** Whether a folder is a package: it has an index, or what only stands beside one, so that a lost index shows. */
export async function isPackage(folder: string): Promise<boolean> {
  const { index, signature, proofs } = PACKAGE_FILES;
  const there = await Promise.all([index, signature, proofs].map((name) => isPlain(join(folder, name))));
  return there.includes(true);
}

/** No link, no folder, no device. */
const isPlain = async (file: string) => (await lstat(file).catch(() => null))?.isFile() === true;

/** The path of a file as a package has it. */
export const pathIn = (folder: string, file: string): string => relative(folder, file).split(sep).join('/');

export const folderToRead = (folder: string): FolderToRead => ({
  async read(path, maxBytes) {
    const file = join(folder, path);
    const found = await lstat(file).catch(() => null);
    if (found !== null && !found.isFile()) throw notRead('file-unreadable', file, w`it is no plain file`);
    if (found !== null && found.size > maxBytes)
      throw notRead(
        'file-too-large',
        file,
        w`it has ${found.size} bytes, and no such file has more than ${maxBytes}`,
      );
    return readBytes(file, w`package`, maxBytes);
  },
  list: () => filesBelow(folder),
  async digest(path) {
    const hash = createHash('sha256');
    for await (const chunk of createReadStream(join(folder, path))) hash.update(chunk);
    return hash.digest('hex');
  },
});

async function* filesBelow(folder: string): AsyncGenerator<FolderFile> {
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isDirectory()) continue;
    const file = join(entry.parentPath, entry.name);
    const isPlain = entry.isFile();
    yield { path: pathIn(folder, file), bytes: isPlain ? (await stat(file)).size : 0, isPlain };
  }
}

function notRead(code: ProblemCode, where: string, why: string): ProblemError {
  return new ProblemError({
    code,
    where,
    message: w`this file of the package is not read: ${why}`,
    next: w`Ask for the package again.`,
  });
}

/** Files appear whole in a folder that is there. */
export const folderToWrite = (folder: string): FolderToWrite => ({
  write(path, content) {
    makeFolder(dirname(join(folder, path)));
    writeWhole(join(folder, path), content);
    return Promise.resolve();
  },
});

/** The same of a folder that may be new, and holds nothing. Problems: `folder-not-empty`, and those of the file system. */
export async function emptyFolder(folder: string): Promise<FolderToWrite> {
  outputFolder(folder);
  if ((await readdir(folder)).length === 0) return folderToWrite(folder);
  throw new ProblemError({
    code: 'folder-not-empty',
    where: folder,
    message: w`the folder holds something already, and every file of a package is in its index`,
    next: w`Name a new folder with --out.`,
  });
}
