import { createHash } from 'node:crypto';
import { open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { StationKey } from '../../db/keyfile.ts';
import type { Signer } from '../evidence/jws.ts';
import { sealRecord, tooLong } from '../evidence/record.ts';
import { TECHNICIAN_WORDS } from '../evidence/signers.ts';
import { foldAll } from '../job/fold.ts';
import { ProblemError } from '../problem.ts';
import { reportModel, writeCsv, writePdf } from '../report/index.ts';
import { tracesOf } from '../report/traces.ts';
import type { Station } from './station.ts';
import { MAX_RECORD_BYTES } from './verify-limit.ts';
import { programVersion } from './version.ts';

export interface Papers {
  readonly record: string;
  readonly pdf: string;
  readonly csv: string;
}

/** Where papers go and who signs beside the station; `signedAt` is wall clock. */
export interface Sealing {
  readonly folder: string;
  readonly signedAt: string;
  readonly technician: StationKey | null;
}

/** Seals a job's record with a new checkpoint of the log, writes it with its PDF and CSV, and returns the paths. */
export async function writePapers(
  station: Station,
  stream: string,
  { folder, signedAt, technician }: Sealing,
): Promise<Papers> {
  const { log, key } = station;
  const entries = log.entries(stream);
  const state = foldAll(entries.map(({ event }) => event));
  if (state === null) throw new Error(`${stream} holds no job`);
  const long = tooLong(entries);
  if (long !== null) throw tooLarge(state.order.job, long);
  const program = { name: 'plugmark', version: programVersion() };
  const size = log.size();
  const content = { program, station: log.stationEntries(), entries, log: { tree: log.tree, size } };
  const signers: Signer[] = [{ privateKey: key.privateKey, role: 'station', signedAt }];
  if (technician !== null) signers.push({ privateKey: technician.privateKey, role: 'technician', signedAt });
  const { bytes: recordBytes, record } = sealRecord(content, signers);
  if (recordBytes.length > MAX_RECORD_BYTES)
    throw tooLarge(state.order.job, `${recordBytes.length} bytes; a record holds ${MAX_RECORD_BYTES}`);
  log.keepCheckpoint(size, record.log.checkpoint);
  // The work order's schema keeps the job number to letters that are safe in a file name.
  const name = state.order.job;
  const model = reportModel({
    state,
    entries,
    traces: tracesOf(entries.map(({ event }) => event)),
    recordDigest: createHash('sha256').update(recordBytes).digest('hex'),
    signers: record.signers,
    technicianSignature: TECHNICIAN_WORDS[record.technicianSignature],
    checkpoint: record.log.checkpoint,
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

/** A record that nobody's program would open is not written. */
function tooLarge(job: string, message: string): ProblemError {
  return new ProblemError({
    code: 'record-too-large',
    where: `job ${job}`,
    message: `the job has ${message}`,
    next: 'Nothing is lost: all of it stands in the station log. Keep station.db and a checkpoint of it as the evidence.',
  });
}

/** A reader never sees half a file: it appears under its name only once it is on disk. */
export async function writeWhole(path: string, content: Uint8Array | string): Promise<void> {
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
