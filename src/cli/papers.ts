import { createHash } from 'node:crypto';
import { open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { sealRecord } from '../evidence/record.ts';
import { foldAll } from '../job/fold.ts';
import { reportModel, writeCsv, writePdf } from '../report/index.ts';
import { tracesOf } from '../report/traces.ts';
import type { Station } from './station.ts';
import { programVersion } from './version.ts';

export interface Papers {
  readonly record: string;
  readonly pdf: string;
  readonly csv: string;
}

/** Seals a job's record and writes it with its PDF and CSV into `folder`; returns the paths. `signedAt` is wall clock. */
export async function writePapers(
  station: Station,
  stream: string,
  folder: string,
  signedAt: string,
): Promise<Papers> {
  const entries = station.log.entries(stream);
  const state = foldAll(entries.map(({ event }) => event));
  if (state === null) throw new Error(`${stream} holds no job`);
  const program = { name: 'plugmark', version: programVersion() };
  const recordBytes = sealRecord({ program, station: station.name, entries }, [
    { privateKey: station.key.privateKey, role: 'station', signedAt },
  ]);
  // The work order's schema keeps the job number to letters that are safe in a file name.
  const name = state.order.job;
  const model = reportModel({
    state,
    entries,
    traces: tracesOf(entries.map(({ event }) => event)),
    recordDigest: createHash('sha256').update(recordBytes).digest('hex'),
    signerThumbprint: station.key.kid,
    program: `${program.name} ${program.version}`,
    simulated: state.simulated,
  });
  const papers = {
    record: join(folder, `${name}.record.json`),
    pdf: join(folder, `${name}.pdf`),
    csv: join(folder, `${name}.csv`),
  };
  await writeWhole(papers.record, recordBytes);
  await writeWhole(papers.pdf, await writePdf(model, { recordBytes, recordName: `${name}.record.json` }));
  await writeWhole(papers.csv, writeCsv(model));
  return papers;
}

/** A reader never sees half a file: it appears under its name only once it is on disk. */
async function writeWhole(path: string, content: Uint8Array | string): Promise<void> {
  const part = `${path}.part`;
  const file = await open(part, 'w');
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(part, path);
}
