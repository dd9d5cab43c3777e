import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  indexBytes,
  PACKAGE_FILES,
  type PackageFile,
  type PackageIndex,
  type PackageProofs,
  signIndex,
  toldIn,
} from '../audit/package.ts';
import type { JobAnswer } from '../audit/questions.ts';
import { canonicalBytes } from '../evidence/canonical.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import { checkSignatures } from '../evidence/jws.ts';
import type { LogEntry } from '../evidence/log.ts';
import { consistencyProof, setProof } from '../evidence/merkle.ts';
import { openRecord, sealRecord } from '../evidence/record.ts';
import { ProblemError } from '../problem.ts';
import { jobsCsv } from '../report/ask-csv.ts';
import { orThrow } from '../result.ts';
import { type Asked, answersTo, filterOf } from './ask.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { findings, keptCheckpoint, newCheckpoint, words } from './log.ts';
import { writeWhole } from './papers.ts';
import { type Archive, currentKey, stateOf } from './station.ts';
import { programVersion } from './version.ts';
import { type Whose, withArchive } from './whose.ts';

interface PackageOptions extends Whose, Asked {
  readonly out: string;
  readonly since?: string;
  readonly exceptions?: true;
}

/** Makes an audit package of the jobs to which the question applies. */
export function makePackage(options: PackageOptions): Promise<ExitCode> {
  return withArchive(options, async (archive) => {
    const since = await keptFrom(archive, options.since);
    if (since === 'diverged') return EXIT.failed;
    const jobs = answersTo(archive, filterOf(options)).filter(
      ({ exceptions }) => options.exceptions !== true || exceptions.length > 0,
    );
    if (jobs.length === 0)
      throw new ProblemError({
        code: 'no-jobs',
        where: 'package',
        message: 'no job matches what was asked for',
        next: 'Look with "plugmark ask".',
      });
    const asked = { ...askedFor(options), ...(options.exceptions === true && { exceptions: 'only' }) };
    const contents: Contents = { purpose: 'Audit', asked, jobs, since, extra: () => Promise.resolve([]) };
    const made = await writePackage(archive, options.out, contents);
    process.stdout.write(`${madeLines(options.out, made).join('\n')}\n`);
    return EXIT.done;
  });
}

/** The checkpoint that somebody kept; says so where the log does not begin with it, for then nothing more can be proven. */
export async function keptFrom(
  archive: Archive,
  file: string | undefined,
): Promise<SignedCheckpoint | null | 'diverged'> {
  if (file === undefined) return null;
  const kept = await keptCheckpoint(file);
  const [finding] = findings(archive, [kept]);
  if (finding === undefined || finding.kind === 'extends') return kept;
  process.stdout.write(`${words(finding)}\nNo package was made.\n`);
  return 'diverged';
}

/** A file of a package, before it is written. */
export type Written = readonly [path: string, content: Uint8Array];

/** What goes into a package beside what every package holds. */
export interface Contents {
  readonly purpose: string;
  readonly asked: Readonly<Record<string, string>>;
  readonly jobs: readonly JobAnswer[];
  /** The checkpoint that the auditor kept from before. */
  readonly since: SignedCheckpoint | null;
  /** Files of its own; they may name the log as the package's checkpoint has it. */
  readonly extra: (log: SignedCheckpoint) => Promise<readonly Written[]>;
}

/** Writes a package into an empty folder, its index last; returns the index. */
export async function writePackage(
  archive: Archive,
  folder: string,
  contents: Contents,
): Promise<PackageIndex> {
  await emptyFolder(folder);
  const state = stateOf(archive);
  const key = await currentKey(archive.folder, state);
  const note = await newCheckpoint(archive);
  const checkpoint = orThrow(readCheckpoint(note, PACKAGE_FILES.checkpoint));
  const { size } = checkpoint;
  const at = new Date().toISOString();
  const program = { name: 'plugmark', version: programVersion() };
  const station = archive.log.stationEntries();
  const files: PackageFile[] = [];
  const put = async (path: string, content: Uint8Array) => {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeWhole(join(folder, path), content);
    files.push({ path, bytes: content.length, sha256: createHash('sha256').update(content).digest('hex') });
  };
  const leftOut: PackageIndex['leftOut'] = [];
  const older = new Map(contents.since === null ? [] : [[contents.since.size, true]]);
  for (const { stream, job, state: stands } of contents.jobs) {
    if (stands === 'open') {
      leftOut.push({ job, because: 'it is still open' });
      continue;
    }
    const entries = archive.log.entries(stream);
    const there = await sealedBefore(archive, job, entries);
    const sealed =
      there?.bytes ??
      sealRecord({ program, station, entries, log: { tree: archive.log.tree, size } }, [
        { privateKey: key.privateKey, role: 'station', signedAt: at },
      ]).bytes;
    if (there !== null) older.set(there.size, true);
    await put(`${PACKAGE_FILES.records}/${job}.record.json`, sealed);
  }
  const told = toldIn(station);
  const proofs: PackageProofs = {
    consistency: [...older.keys()]
      .filter((from) => from < size)
      .sort((a, b) => a - b)
      .map((from) => ({ from, path: consistencyProof(archive.log.tree, from, size).map(base64) })),
    station: setProof(
      archive.log.tree,
      told.map(({ seq }) => seq - 1),
      size,
    ).map(base64),
  };
  await put(PACKAGE_FILES.checkpoint, Buffer.from(note));
  if (contents.since !== null) await put(PACKAGE_FILES.kept, noteOf(contents.since));
  await put(PACKAGE_FILES.proofs, canonicalBytes(proofs));
  await put(PACKAGE_FILES.station, canonicalBytes(told));
  await put(PACKAGE_FILES.trust, await readFile(archive.trustFile));
  await put('jobs.csv', Buffer.from(jobsCsv(contents.jobs)));
  await put('READ-ME.txt', Buffer.from(readMe(state.name, key.kid)));
  for (const [path, content] of await contents.extra(checkpoint)) await put(path, content);
  const index: Omit<PackageIndex, 'form'> = {
    program: `${program.name} ${program.version}`,
    station: state.name,
    at,
    purpose: contents.purpose,
    asked: { ...contents.asked },
    leftOut,
    files: files.sort((a, b) => (a.path < b.path ? -1 : 1)),
  };
  const bytes = indexBytes(index);
  await writeWhole(join(folder, PACKAGE_FILES.signature), signIndex(bytes, key.privateKey));
  await writeWhole(join(folder, PACKAGE_FILES.index), bytes);
  return { form: 'plugmark/package/1', ...index };
}

/** How a package that was made is told of. */
export function madeLines(folder: string, { files, leftOut }: PackageIndex): readonly string[] {
  const records = files.filter(({ path }) => path.startsWith(`${PACKAGE_FILES.records}/`)).length;
  return [
    `${safeLine(folder)}: ${records} ${records === 1 ? 'record' : 'records'}, ${files.length} files, and an index that the station signed.`,
    ...leftOut.map(({ job, because }) => `  left out: job ${safeLine(job)}, ${safeLine(because)}`),
    `  Check it with: plugmark verify ${safeLine(folder)} --trust YOUR-LIST`,
    `  YOUR-LIST is the station's ${PACKAGE_FILES.trust}, had by another way; the one in the package is no trust.`,
  ];
}

/** What was asked for, as the index says it. */
export function askedFor({
  vin,
  plate,
  fleet,
  part,
  lot,
  technician,
  tool,
  from,
  to,
}: Asked): Record<string, string> {
  const all = { vin, plate, fleet, part, lot, technician, tool, from, to };
  const named = Object.entries(all).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value.slice(0, 200)] as const],
  );
  return Object.fromEntries(named);
}

/**
 * The record that was sealed when the job was closed, with the signatures that people put on it since; null where there is
 * none in the station's folder, or where the job went on after it.
 */
async function sealedBefore(
  archive: Archive,
  job: string,
  entries: readonly LogEntry[],
): Promise<{ readonly bytes: Uint8Array; readonly size: number } | null> {
  const bytes = await readFile(join(archive.folder, `${job}.record.json`)).catch(() => null);
  if (bytes === null) return null;
  const opened = openRecord(bytes);
  if (!opened.ok) return null;
  const { record, jws, payload } = opened.value;
  if (record.job !== job || !canonicalBytes(record.entries).equals(canonicalBytes(entries))) return null;
  // Whatever lies there under that name: only what this station sealed, untouched, goes into a package.
  const reports = checkSignatures(jws, payload);
  const own = new Set(stateOf(archive).keys.map(({ kid }) => kid));
  const stations = reports.flatMap(({ signer }) => (signer?.role === 'station' ? [signer.kid] : []));
  const ours = stations.length > 0 && stations.every((kid) => own.has(kid));
  const sound = ours && reports.every(({ fault }) => fault === null);
  const note = readCheckpoint(record.log.checkpoint, job);
  if (!sound || !note.ok) return null;
  return findings(archive, [note.value])[0]?.kind === 'extends' ? { bytes, size: note.value.size } : null;
}

async function emptyFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
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

const readMe = (station: string, kid: string) =>
  `Records of spark plug work by ${safeLine(station)}, for an auditor.

Check the whole folder, offline:

    plugmark verify THIS-FOLDER --trust YOUR-LIST --kept YOUR.checkpoint

YOUR-LIST is the trusted-keys.json that the station gave you by another way, outside this folder; the one in here is a
copy, and no trust.
Its key now: ${kid}
YOUR.checkpoint is the one that you kept from an earlier audit; leave --kept out if there was none.
Keep log.checkpoint for the next time.

index.json             every file with its size and SHA-256; index.jws is the station's signature over it
log.checkpoint         the signed size and root of the station's log
auditor.checkpoint     the checkpoint that the package was made with, if any
proofs.json            that the log begins as older checkpoints have it, and holds the station's entries (RFC 9162)
station-entries.json   the station's own entries: keys, and look-backs on its tools
records/               one signed record a job
jobs.csv               the jobs as a list, with what wants an explanation

A package proves what is in it, and that nothing in front of a kept checkpoint was removed or rewritten. That no job
was left out when it was chosen, only the station's whole log can show.
`;

const base64 = (hash: Uint8Array) => Buffer.from(hash).toString('base64');
