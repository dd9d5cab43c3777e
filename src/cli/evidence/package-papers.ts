/** The papers of a package, drawn from its records on all cores: to be written, or to be held against those that are there. */

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { openRecord } from '../../evidence/record.ts';
import { onAllCores } from '../../files/threads.ts';
import { put } from '../../package/folder.ts';
import { type PackageFile, packageFilesSchema, paperPath, recordPath } from '../../package/format.ts';
import type { FontSources } from '../../report/fonts/fonts.ts';
import { type HeldPaper, heldPaper } from '../../report/held/paper.ts';
import type { Audience } from '../../report/reader.ts';
import { spokenLanguage } from '../../words/catalogue.ts';
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

/** Draws the papers of the records that a package holds already. */
export async function drawPackagePapers(
  folder: string,
  jobs: readonly string[],
  audience: Audience,
  take: (files: readonly PackageFile[]) => void,
): Promise<void> {
  const papers = jobs.map((job) => ({ record: recordPath(job), paper: paperPath(job) }));
  if (papers.length > FEW)
    return onAllCores(
      { ...THREAD, workerData: { folder, write: audience, language: spokenLanguage() } },
      papers,
      (answer) => take(packageFilesSchema.parse(answer)),
    );
  for (const one of papers) take([await drawPackagePaper(folder, one, audience)]);
}

const heldPapersSchema = z.array(
  z.strictObject({
    path: z.string(),
    held: z.strictObject({ outcome: z.enum(['same', 'other-version', 'differs']), detail: z.string() }),
  }),
);
type HeldFile = { readonly path: string; readonly held: HeldPaper };

/** Draws them anew and holds those that are there against them. */
export async function holdPackagePapers(
  folder: string,
  papers: readonly ToDraw[],
  progress: (done: number) => void,
): Promise<readonly HeldFile[]> {
  const held: HeldFile[] = [];
  const take = (some: readonly HeldFile[]) => {
    held.push(...some);
    progress(held.length);
  };
  if (papers.length > FEW)
    await onAllCores(
      { ...THREAD, workerData: { folder, write: null, language: spokenLanguage() } },
      papers,
      (answer) => take(heldPapersSchema.parse(answer)),
    );
  else for (const one of papers) take([await holdPackagePaper(folder, one)]);
  return held;
}

/** Draws one from the record as it is in the package: a paper never says more than its record. */
export const drawPackagePaper = async (
  folder: string,
  one: ToDraw,
  audience: Audience,
): Promise<PackageFile> => put(folderToWrite(folder), one.paper, await drawn(folder, one, audience, 'own'));

export const holdPackagePaper = async (folder: string, one: ToDraw): Promise<HeldFile> => ({
  path: one.paper,
  held: await heldPaper(await readFile(join(folder, one.paper)), (fonts, audience) =>
    drawn(folder, one, audience, fonts),
  ),
});

async function drawn(
  folder: string,
  { record }: ToDraw,
  audience: Audience,
  fonts: FontSources,
): Promise<Uint8Array> {
  const bytes = await readFile(join(folder, record));
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(`the record ${record} cannot be opened`);
  return drawnPdf(bytes, opened.value.record, audience, fonts);
}
