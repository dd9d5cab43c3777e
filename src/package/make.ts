/** Making a package: its files one after the other, the index last, so that half a package is none. */
import type { AskedJob } from '../audit/questions.ts';
import { canonicalBytes } from '../evidence/canonical.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import type { LogEntry, StationEntry } from '../evidence/log.ts';
import { consistencyProof, type Subtrees, setProof } from '../evidence/merkle.ts';
import { noteText } from '../evidence/note.ts';
import { toBase64, utf8 } from '../evidence/platform/bytes.ts';
import type { PrivateKey } from '../evidence/platform/signature.ts';
import { MAX_RECORD_BYTES, openRecord, tooLong } from '../evidence/record.ts';
import { sealRecord } from '../evidence/seal.ts';
import { type Kinds, sharedRecord, withoutKinds } from '../evidence/sharing.ts';
import type { StationState } from '../evidence/station.ts';
import { orThrow } from '../result.ts';
import { type FolderToWrite, type NewProgress, type OneByOne, put } from './folder.ts';
import {
  indexBytes,
  PACKAGE_FILES,
  PACKAGE_FORM,
  type PackageFile,
  type PackageIndex,
  type PackageProofs,
  paperPath,
  recordPath,
  signIndex,
  stationFile,
} from './format.ts';
import { sealedBefore } from './sealed.ts';
import { impactsStated, questionedIn } from './station-entries.ts';

/** The station that makes a package: its log, and what signs. */
export interface PackageStation {
  readonly station: StationState;
  readonly key: PrivateKey;
  readonly log: {
    readonly tree: Subtrees;
    entries(stream: string): readonly LogEntry[];
    stationEntries(): readonly StationEntry[];
  };
  /** Note of a checkpoint of the log as it is. */
  readonly checkpoint: string;
  /** The newest checkpoint of this log that witnesses cosigned; null where there is none. */
  readonly cosigned: SignedCheckpoint | null;
  /** Its trust list, as bytes. */
  readonly trustList: Uint8Array;
  /** Files that may be the record of a job from before, the one to take first. */
  readonly recordsBefore: (job: string) => OneByOne<Uint8Array>;
}

/** A file of a package, before it is written. */
export type NewFile = readonly [path: string, content: Uint8Array];

/** What goes into a package beside what every package holds. */
export interface Contents {
  readonly purpose: PackageIndex['purpose'];
  /** Number of the claim; only for a dispute. */
  readonly claim?: string;
  readonly asked: PackageIndex['asked'];
  readonly jobs: readonly Pick<AskedJob, 'stream' | 'job' | 'state'>[];
  /** The checkpoint that the auditor kept from before. */
  readonly since: SignedCheckpoint | null;
  /** The entries of the station's own stream that go with it. */
  readonly stationEntries: readonly StationEntry[];
  /** Personal texts that are not given away with it. */
  readonly without: Kinds;
  /** Draws the papers of the jobs whose records were written; null where it is made without. */
  readonly drawPapers: DrawPapers | null;
  /** Files for people; they may name the log as the package's checkpoint has it. */
  readonly extra: (log: SignedCheckpoint) => Promise<readonly NewFile[]>;
}

export type DrawPapers = (
  jobs: readonly string[],
  take: (files: readonly PackageFile[]) => void,
) => Promise<void>;

/** How it is made: when (ISO), by which version, and who watches. */
export interface Making {
  readonly at: string;
  readonly version: string;
  readonly progress: NewProgress;
}

/** Writes a package into an empty folder, its index last; returns the index. */
export async function makePackage(
  from: PackageStation,
  folder: FolderToWrite,
  contents: Contents,
  making: Making,
): Promise<PackageIndex> {
  const checkpoint = orThrow(readCheckpoint(from.checkpoint, PACKAGE_FILES.checkpoint));
  const { purpose, claim, asked, since, drawPapers } = contents;
  const files: PackageFile[] = [];
  const add = async (path: string, content: Uint8Array) => {
    files.push(await put(folder, path, content));
  };
  const { leftOut, sealed, older } = await addRecords({ from, checkpoint, making }, contents, add);
  if (drawPapers !== null) await addPapers(drawPapers, sealed, making, (some) => files.push(...some));
  const stationEntries = withoutKinds(
    contents.stationEntries.filter(({ seq }) => seq <= checkpoint.size),
    contents.without,
  );
  if (since !== null) {
    older.add(since.size);
    await add(PACKAGE_FILES.kept, utf8(noteText(since)));
  }
  if (from.cosigned !== null) {
    older.add(from.cosigned.size);
    await add(PACKAGE_FILES.cosigned, utf8(noteText(from.cosigned)));
  }
  const proofs = proofsOf(from.log.tree, checkpoint.size, older, stationEntries);
  await add(PACKAGE_FILES.checkpoint, utf8(from.checkpoint));
  await add(PACKAGE_FILES.proofs, canonicalBytes(proofs));
  await add(PACKAGE_FILES.station, stationFile(stationEntries));
  await add(PACKAGE_FILES.trust, from.trustList);
  for (const [path, content] of await contents.extra(checkpoint)) await add(path, content);
  const questioned = questionedIn(stationEntries, new Set(sealed));
  const index: Omit<PackageIndex, 'form'> = {
    program: `plugmark ${making.version}`,
    station: from.station.name,
    at: making.at,
    purpose,
    ...(claim === undefined ? {} : { claim }),
    asked: { ...asked },
    leftOut,
    jobs: sealed.map((job) => ({
      job,
      record: recordPath(job),
      paper: drawPapers === null ? null : paperPath(job),
      impacts: impactsStated(questioned.get(job)),
    })),
    files: files.sort((a, b) => (a.path < b.path ? -1 : 1)),
  };
  const bytes = indexBytes(index);
  await folder.write(PACKAGE_FILES.signature, utf8(signIndex(bytes, from.key)));
  await folder.write(PACKAGE_FILES.index, bytes);
  return { form: PACKAGE_FORM, ...index };
}

interface Sealing {
  readonly from: PackageStation;
  readonly checkpoint: SignedCheckpoint;
  readonly making: Making;
}

interface Records {
  readonly leftOut: PackageIndex['leftOut'];
  /** Numbers of the jobs whose records were written, in order. */
  readonly sealed: readonly string[];
  /** Sizes that the log had when records from before were sealed. */
  readonly older: Set<number>;
}

/** One record a job, read from the log one after the other: none but the one at hand is kept in memory. */
async function addRecords(
  { from, checkpoint, making }: Sealing,
  { jobs, without }: Contents,
  add: (path: string, content: Uint8Array) => Promise<void>,
): Promise<Records> {
  const { station, key, log } = from;
  const { origin, size } = checkpoint;
  const background = log.stationEntries().filter(({ seq }) => seq <= size);
  const now = { origin, size, tree: log.tree, keys: station.keys.map(({ jwk }) => jwk) };
  const program = { name: 'plugmark', version: making.version };
  const leftOut: PackageIndex['leftOut'] = [];
  const older = new Set<number>();
  const sealed: string[] = [];
  const bar = making.progress('records', jobs.length);
  for (const [done, { stream, job, state }] of jobs.entries()) {
    bar.at(done + 1);
    const entries = log.entries(stream).filter(({ seq }) => seq <= size);
    const none = state === 'open' ? ({ because: 'still-open' } as const) : tooLong(entries);
    if (none !== null) {
      leftOut.push({ job, ...none });
      continue;
    }
    const before = await sealedBefore(from.recordsBefore(job), { station, log: now, job, entries });
    const whole =
      before?.bytes ??
      sealRecord({ program, station: background, entries, log: { tree: log.tree, size } }, [
        { privateKey: key, role: 'station', signedAt: making.at },
      ]).bytes;
    const bytes = without.size === 0 ? whole : shared(whole, without);
    if (bytes.length > MAX_RECORD_BYTES) {
      leftOut.push({ job, because: 'too-many-bytes', count: bytes.length, most: MAX_RECORD_BYTES });
      continue;
    }
    if (before !== null) older.add(before.size);
    await add(recordPath(job), bytes);
    sealed.push(job);
  }
  bar.end();
  return { leftOut, sealed: sealed.sort(), older };
}

function shared(bytes: Uint8Array, without: Kinds): Uint8Array {
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error('a record that was sealed cannot be opened');
  return sharedRecord(opened.value, without);
}

async function addPapers(
  draw: DrawPapers,
  jobs: readonly string[],
  { progress }: Making,
  take: (files: readonly PackageFile[]) => void,
): Promise<void> {
  const bar = progress('papers', jobs.length);
  let done = 0;
  await draw(jobs, (files) => {
    take(files);
    done += files.length;
    bar.at(done);
  });
  bar.end();
}

function proofsOf(
  tree: Subtrees,
  size: number,
  older: ReadonlySet<number>,
  stationEntries: readonly StationEntry[],
): PackageProofs {
  const indexes = stationEntries.map(({ seq }) => seq - 1);
  return {
    consistency: [...older]
      .filter((from) => from > 0 && from < size)
      .sort((a, b) => a - b)
      .map((from) => ({ from, path: consistencyProof(tree, from, size).map(toBase64) })),
    station: setProof(tree, indexes, size).map(toBase64),
  };
}
