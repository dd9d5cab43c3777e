/** The files that somebody dropped, those in folders with them, under the folder's name. */
import type { NamedFile } from './shown.ts';

/** No package has more. */
const MOST_FILES = 200_000;

/**
 * A page that is a file on a disk gets neither the files nor the folders behind the entries of a drop from Chromium: there a
 * file is had from the item itself, and a folder by its handle, which Firefox does not know.
 */
interface Item extends DataTransferItem {
  getAsFileSystemHandle?(): Promise<FileSystemHandle | null>;
}

export async function droppedFiles(transfer: DataTransfer): Promise<readonly NamedFile[]> {
  // All of it is gone as soon as anything is awaited.
  const items = [...transfer.items].filter(({ kind }) => kind === 'file').map(taken);
  const isOfMany = items.length > 1 && items.some(({ folder }) => folder !== null);
  const prefix = isOfMany ? 'files/' : '';
  const files: NamedFile[] = [];
  for (const { file, folder, handle } of items) {
    const found = folder === null ? null : await handle;
    if (found !== null && isFolderHandle(found)) await belowHandle(found, prefix, files);
    else if (folder !== null) await belowEntry(folder, prefix, files);
    else if (file !== null) files.push({ path: `${prefix}${file.name}`, file });
  }
  return files;
}

function taken(item: Item) {
  const entry = item.webkitGetAsEntry();
  return {
    file: item.getAsFile(),
    folder: entry?.isDirectory === true ? entry : null,
    handle: item.getAsFileSystemHandle?.().catch(() => null) ?? Promise.resolve(null),
  };
}

export const chosenFiles = (files: FileList): readonly NamedFile[] =>
  [...files].map((file) => ({
    path: file.webkitRelativePath === '' ? file.name : file.webkitRelativePath,
    file,
  }));

// Chromium knows the classes of entries by no name, so that only they themselves can tell.
const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;
const isFolderHandle = (handle: FileSystemHandle): handle is FileSystemDirectoryHandle =>
  handle.kind === 'directory';
const isFileHandle = (handle: FileSystemHandle): handle is FileSystemFileHandle => handle.kind === 'file';

async function belowHandle(handle: FileSystemHandle, prefix: string, files: NamedFile[]): Promise<void> {
  if (files.length >= MOST_FILES) return;
  const path = `${prefix}${handle.name}`;
  if (isFileHandle(handle)) files.push({ path, file: await handle.getFile() });
  if (!isFolderHandle(handle)) return;
  for await (const one of handle.values()) await belowHandle(one, `${path}/`, files);
}

async function belowEntry(entry: FileSystemEntry, prefix: string, files: NamedFile[]): Promise<void> {
  if (files.length >= MOST_FILES) return;
  const path = `${prefix}${entry.name}`;
  if (isFile(entry)) {
    files.push({ path, file: await new Promise<File>((done, failed) => entry.file(done, failed)) });
    return;
  }
  if (!isFolder(entry)) return;
  const reader = entry.createReader();
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done, failed) => reader.readEntries(done, failed));
    if (some.length === 0) return;
    for (const one of some) await belowEntry(one, `${path}/`, files);
  }
}
