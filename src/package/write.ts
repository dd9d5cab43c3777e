import type { KeyObject } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { JobAnswer } from '../audit/questions.ts';
import { readMe } from '../cli/evidence/package-text.ts';
import { programVersion } from '../cli/help/version.ts';
import { newCheckpoint } from '../cli/station/log.ts';
import { currentKey, type StationFolder, stateOf } from '../cli/station/station.ts';
import { progress } from '../cli/terminal/progress.ts';
import { canonicalBytes } from '../evidence/canonical.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import type { StationEntry } from '../evidence/log.ts';
import { consistencyProof, setProof } from '../evidence/merkle.ts';
import { MAX_RECORD_BYTES, sealRecord, tooLong } from '../evidence/record.ts';
import { outputFolder, writeWhole } from '../files/output.ts';
import { ProblemError } from '../problem.ts';
import { jobsCsv } from '../report/ask-csv.ts';
import { orThrow } from '../result.ts';
import { paperPath, put, recordPath } from './files.ts';
import {
  indexBytes,
  PACKAGE_FILES,
  PACKAGE_FORM,
  type PackageFile,
  type PackageIndex,
  type PackageProofs,
  signIndex,
} from './format.ts';
import { writePackagePapers } from './papers.ts';
import { sealedBefore } from './sealed.ts';
import { questionedIn, saidOf } from './station-entries.ts';

/** A file of a package, before it is written. */
export type Written = readonly [path: string, content: Uint8Array];

/** What goes into a package beside what every package holds. */
export interface Contents {
  readonly purpose: string;
  readonly asked: Readonly<Record<string, string>>;
  readonly jobs: readonly JobAnswer[];
  /** The checkpoint that the auditor kept from before. */
  readonly since: SignedCheckpoint | null;
  /** The entries of the station's own stream that go with it. */
  readonly told: readonly StationEntry[];
  /** Each record for people as well. */
  readonly papers: boolean;
  /** Files of its own; they may name the log as the package's checkpoint has it. */
  readonly extra: (log: SignedCheckpoint) => Promise<readonly Written[]>;
}

/** Writes a package into an empty folder, its index last; returns the index. */
export async function writePackage(
  stationFolder: StationFolder,
  folder: string,
  contents: Contents,
): Promise<PackageIndex> {
  await emptyFolder(folder);
  const station = stateOf(stationFolder);
  const key = await currentKey(stationFolder.folder, station);
  const note = await newCheckpoint(stationFolder);
  const checkpoint = orThrow(readCheckpoint(note, PACKAGE_FILES.checkpoint));
  const at = new Date().toISOString();
  const sealing: Sealing = { stationFolder, folder, checkpoint, at, key: key.privateKey };
  const files: PackageFile[] = [];
  const add = async (path: string, content: Uint8Array) => {
    files.push(await put(folder, path, content));
  };
  const { leftOut, sealed, older } = await writeRecords(sealing, contents, (file) => files.push(file));
  if (contents.papers) await writePapersOf(folder, sealed, (some) => files.push(...some));
  const told = contents.told.filter(({ seq }) => seq <= checkpoint.size);
  if (contents.since !== null) {
    older.add(contents.since.size);
    await add(PACKAGE_FILES.kept, noteOf(contents.since));
  }
  await add(PACKAGE_FILES.checkpoint, Buffer.from(note));
  await add(PACKAGE_FILES.proofs, canonicalBytes(proofsOf(stationFolder, checkpoint, older, told)));
  await add(PACKAGE_FILES.station, canonicalBytes(told));
  await add(PACKAGE_FILES.trust, await readFile(stationFolder.trustFile));
  await add('jobs.csv', Buffer.from(jobsCsv(contents.jobs)));
  await add('READ-ME.txt', Buffer.from(readMe(station.name, key.kid, contents.purpose)));
  for (const [path, content] of await contents.extra(checkpoint)) await add(path, content);
  const questioned = questionedIn(told, new Set(sealed));
  const index: Omit<PackageIndex, 'form'> = {
    program: `plugmark ${programVersion()}`,
    station: station.name,
    at,
    purpose: contents.purpose,
    asked: { ...contents.asked },
    leftOut,
    jobs: sealed.map((job) => ({
      job,
      record: recordPath(job),
      paper: contents.papers ? paperPath(job) : null,
      impacts: saidOf(questioned.get(job)),
    })),
    files: files.sort((a, b) => (a.path < b.path ? -1 : 1)),
  };
  const bytes = indexBytes(index);
  await writeWhole(join(folder, PACKAGE_FILES.signature), signIndex(bytes, key.privateKey));
  await writeWhole(join(folder, PACKAGE_FILES.index), bytes);
  return { form: PACKAGE_FORM, ...index };
}

interface Sealing {
  readonly stationFolder: StationFolder;
  readonly folder: string;
  readonly checkpoint: SignedCheckpoint;
  /** ISO time. */
  readonly at: string;
  readonly key: KeyObject;
}

interface Records {
  readonly leftOut: PackageIndex['leftOut'];
  /** Numbers of the jobs whose records were written, in order. */
  readonly sealed: readonly string[];
  /** Sizes that the log had when records from before were sealed. */
  readonly older: Set<number>;
}

/** One record a job, read from the log one after the other: none but the one at hand is kept in memory. */
async function writeRecords(
  { stationFolder, folder, checkpoint, at, key }: Sealing,
  { jobs }: Contents,
  take: (file: PackageFile) => void,
): Promise<Records> {
  const { log } = stationFolder;
  const { origin, size } = checkpoint;
  const entriesOfStation = log.stationEntries().filter(({ seq }) => seq <= size);
  const station = stateOf(stationFolder);
  const now = { origin, size, tree: log.tree, keys: station.keys.map(({ jwk }) => jwk) };
  const program = { name: 'plugmark', version: programVersion() };
  const leftOut: PackageIndex['leftOut'] = [];
  const older = new Set<number>();
  const sealed: string[] = [];
  const bar = progress('records', jobs.length);
  for (const [done, { stream, job, state }] of jobs.entries()) {
    bar.at(done + 1);
    const entries = log.entries(stream).filter(({ seq }) => seq <= size);
    const because = state === 'open' ? 'it is still open' : tooLong(entries);
    if (because !== null) {
      leftOut.push({ job, because });
      continue;
    }
    const there = await sealedBefore({ folder: stationFolder.folder, station, log: now }, job, entries);
    const bytes =
      there?.bytes ??
      sealRecord({ program, station: entriesOfStation, entries, log: { tree: log.tree, size } }, [
        { privateKey: key, role: 'station', signedAt: at },
      ]).bytes;
    if (bytes.length > MAX_RECORD_BYTES) {
      leftOut.push({ job, because: `its record has ${bytes.length} bytes; one holds ${MAX_RECORD_BYTES}` });
      continue;
    }
    if (there !== null) older.add(there.size);
    take(await put(folder, recordPath(job), bytes));
    sealed.push(job);
  }
  bar.end();
  return { leftOut, sealed: sealed.sort(), older };
}

async function writePapersOf(
  folder: string,
  jobs: readonly string[],
  take: (files: readonly PackageFile[]) => void,
): Promise<void> {
  const bar = progress('papers', jobs.length);
  let done = 0;
  await writePackagePapers(folder, jobs, (files) => {
    take(files);
    done += files.length;
    bar.at(done);
  });
  bar.end();
}

function proofsOf(
  { log: { tree } }: StationFolder,
  { size }: SignedCheckpoint,
  older: ReadonlySet<number>,
  told: readonly StationEntry[],
): PackageProofs {
  const indexes = told.map(({ seq }) => seq - 1);
  return {
    consistency: [...older]
      .filter((from) => from > 0 && from < size)
      .sort((a, b) => a - b)
      .map((from) => ({ from, path: consistencyProof(tree, from, size).map(base64) })),
    station: setProof(tree, indexes, size).map(base64),
  };
}

async function emptyFolder(folder: string): Promise<void> {
  outputFolder(folder);
  if ((await readdir(folder)).length === 0) return;
  throw new ProblemError({
    code: 'folder-not-empty',
    where: folder,
    message: 'the folder holds something already, and every file of a package is in its index',
    next: 'Name a new folder with --out.',
  });
}

/** The note as it was read. */
const noteOf = ({ text, signatures }: SignedCheckpoint) =>
  Buffer.from(
    `${text}\n${signatures
      .map(
        ({ name, keyHash, signature }) =>
          `— ${name} ${Buffer.concat([keyHash, signature]).toString('base64')}\n`,
      )
      .join('')}`,
  );

const base64 = (hash: Uint8Array) => Buffer.from(hash).toString('base64');
