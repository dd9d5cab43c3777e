import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { openRecord } from '../../evidence/record.ts';
import { onAllCores } from '../../files/threads.ts';
import { put } from '../../package/folder.ts';
import { type PackageFile, packageFilesSchema, paperPath, recordPath } from '../../package/format.ts';
import { drawnPdf } from '../bench/papers.ts';
import { folderToWrite } from './package-folder.ts';

/** So few are drawn sooner than threads have started. */
const FEW = 8;
/** A paper takes a fifth of a second. */
const BATCH = 4;

const THREAD = {
  built: new URL('./paper-worker.js', import.meta.url),
  source: new URL('./paper-worker.ts', import.meta.url),
  batch: BATCH,
};

/** Draws the papers of the records that a package holds already, on all cores. */
export async function drawPackagePapers(
  folder: string,
  jobs: readonly string[],
  take: (files: readonly PackageFile[]) => void,
): Promise<void> {
  if (jobs.length > FEW)
    return onAllCores({ ...THREAD, workerData: { folder } }, jobs, (answer) =>
      take(packageFilesSchema.parse(answer)),
    );
  for (const job of jobs) take([await drawPackagePaper(folder, job)]);
}

/** Draws one from the record as it is in the package: a paper never says more than its record. */
export async function drawPackagePaper(folder: string, job: string): Promise<PackageFile> {
  const bytes = await readFile(join(folder, recordPath(job)));
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(`the record of ${job} was sealed and cannot be opened`);
  return put(folderToWrite(folder), paperPath(job), await drawnPdf(bytes, opened.value.record));
}
