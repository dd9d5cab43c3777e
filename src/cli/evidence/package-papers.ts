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

/** The record of a package that is drawn, and the file that its paper is. */
export interface ToDraw {
  readonly record: string;
  readonly paper: string;
}

/** Draws the papers of the records that a package holds already, on all cores. */
export const drawPackagePapers = (
  folder: string,
  jobs: readonly string[],
  take: (files: readonly PackageFile[]) => void,
): Promise<void> =>
  draw(
    { folder, write: true },
    jobs.map((job) => ({ record: recordPath(job), paper: paperPath(job) })),
    take,
  );

/** What the papers of a package have to be, drawn anew and written nowhere. */
export const papersAnew = (
  folder: string,
  papers: readonly ToDraw[],
  take: (files: readonly PackageFile[]) => void,
): Promise<void> => draw({ folder, write: false }, papers, take);

export interface Drawing {
  readonly folder: string;
  readonly write: boolean;
}

async function draw(
  drawing: Drawing,
  papers: readonly ToDraw[],
  take: (files: readonly PackageFile[]) => void,
): Promise<void> {
  if (papers.length > FEW)
    return onAllCores({ ...THREAD, workerData: drawing }, papers, (answer) =>
      take(packageFilesSchema.parse(answer)),
    );
  for (const one of papers) take([await drawPackagePaper(drawing, one)]);
}

/** Draws one from the record as it is in the package: a paper never says more than its record. */
export async function drawPackagePaper(
  { folder, write }: Drawing,
  { record, paper }: ToDraw,
): Promise<PackageFile> {
  const bytes = await readFile(join(folder, record));
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(`the record ${record} cannot be opened`);
  const to = write ? folderToWrite(folder) : { write: () => Promise.resolve() };
  return put(to, paper, await drawnPdf(bytes, opened.value.record));
}
