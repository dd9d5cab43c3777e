/** A file of a package on its way to disk, and where those of a job lie. */
import { createHash } from 'node:crypto';
import { dirname, join } from 'node:path';
import { makeFolder, writeWhole } from '../files/output.ts';
import { PACKAGE_FILES, type PackageFile } from './format.ts';

export const recordPath = (job: string) => `${PACKAGE_FILES.records}/${job}.record.json`;
export const paperPath = (job: string) => `${PACKAGE_FILES.papers}/${job}.pdf`;

/** Writes a file of the package in `folder`, and says what the index is to say of it. */
export async function put(folder: string, path: string, content: Uint8Array): Promise<PackageFile> {
  makeFolder(dirname(join(folder, path)));
  await writeWhole(join(folder, path), content);
  return { path, bytes: content.length, sha256: createHash('sha256').update(content).digest('hex') };
}
