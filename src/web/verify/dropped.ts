/** The files that somebody dropped, those in folders with them, under the folder's name. */
import type { NamedFile } from './shown.ts';

/** No package has more. */
const MOST_FILES = 200_000;

export async function droppedFiles(transfer: DataTransfer): Promise<readonly NamedFile[]> {
  // The entries are gone as soon as anything is awaited.
  const entries = [...transfer.items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  const files: NamedFile[] = [];
  if (entries.length === 0) return [...transfer.files].map((file) => ({ path: file.name, file }));
  const isFolder = entries.some((entry) => entry.isDirectory);
  for (const entry of entries) await below(entry, isFolder && entries.length > 1 ? 'files/' : '', files);
  return files;
}

export const chosenFiles = (files: FileList): readonly NamedFile[] =>
  [...files].map((file) => ({
    path: file.webkitRelativePath === '' ? file.name : file.webkitRelativePath,
    file,
  }));

async function below(entry: FileSystemEntry, prefix: string, files: NamedFile[]): Promise<void> {
  if (files.length >= MOST_FILES) return;
  const path = `${prefix}${entry.name}`;
  if (entry instanceof FileSystemFileEntry) {
    files.push({ path, file: await new Promise<File>((done, failed) => entry.file(done, failed)) });
    return;
  }
  if (!(entry instanceof FileSystemDirectoryEntry)) return;
  const reader = entry.createReader();
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done, failed) => reader.readEntries(done, failed));
    if (some.length === 0) return;
    for (const one of some) await below(one, `${path}/`, files);
  }
}
