import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { lstat, readdir, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import {
  PACKAGE_FILES,
  type PackageFile,
  type PackageIndex,
  readIndex,
  readProofs,
  readStationEntries,
} from '../audit/package.ts';
import {
  checkFiles,
  checkKept,
  checkLog,
  checkSameLog,
  checkSignature,
  checkSigner,
  type PackageLog,
  stationIn,
} from '../audit/package-check.ts';
import { type Check, failed, passed } from '../evidence/check.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import { openRecord } from '../evidence/record.ts';
import type { TrustList } from '../evidence/trust.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { readBytes } from './input.ts';
import { jsonText } from './json-text.ts';
import { keptCheckpoint } from './log.ts';
import type { Finding } from './verify-finding.ts';
import { spread } from './verify-folder.ts';
import { MAX_RECORD_BYTES } from './verify-limit.ts';
import { isPlain, readersTrust } from './verify-place.ts';

export interface PackageOptions {
  readonly trust: string;
  readonly kept?: string;
  readonly json?: true;
}

/** No index, proof or list of the station's entries is larger. */
const MAX_BYTES = 256 << 20;

/**
 * Checks a package without asking anybody: its index and who signed it, every file against it, the log that it stands in,
 * the checkpoint that the reader kept, and each record. Exit codes as of a record.
 */
export async function verifyPackage(folder: string, options: PackageOptions): Promise<ExitCode> {
  const read = reader(folder);
  const bytes = await read(PACKAGE_FILES.index, MAX_BYTES);
  const index = orThrow(readIndex(bytes));
  const { list: trust, fault } = await readersTrust(options.trust, folder);
  const own = options.kept === undefined ? null : await keptCheckpoint(options.kept);
  const log = await logIn(read);
  const station = typeof log === 'string' ? log : log.station;
  const signature = await read(PACKAGE_FILES.signature, 10_000).catch(() => Buffer.alloc(0));
  const { check: signed, kid } = checkSignature(bytes, Buffer.from(signature).toString('ascii'), station);
  const records = await recordsIn(folder, index, trust, read);
  const others = [
    signed,
    checkFiles(index, await filesIn(folder, index)),
    ...(typeof log === 'string'
      ? [failed('log', log)]
      : [checkLog(log), await checkSince(index, read, own, log), checkSameLog(records.checkpoints, log)]),
    records.check,
  ];
  const maker = checkSigner(kid, index, station, trust);
  const believed = maker.outcome === 'passed' ? (records.untrusted ?? maker) : maker;
  const signer = fault === null ? believed : failed('signer', `${believed.detail} ${fault}`);
  const [first, ...rest] = others;
  const checks = [...(first === undefined ? [] : [first]), signer, ...rest];
  const bad = others.some(({ outcome }) => outcome === 'failed');
  const verdict = bad ? 'rejected' : signer.outcome === 'failed' ? 'untrusted' : 'authentic';
  process.stdout.write(
    options.json === true
      ? jsonText({ folder, verdict, checks })
      : `${lines(folder, index, verdict, checks).join('\n')}\n`,
  );
  return { authentic: EXIT.done, rejected: EXIT.failed, untrusted: EXIT.untrusted }[verdict];
}

type Read = (name: string, maxBytes: number) => Promise<Uint8Array>;

/** Reads plain files of the folder only: a link could lead anywhere, and a device has no end. */
function reader(folder: string): Read {
  return async (name, maxBytes) => {
    const file = join(folder, name);
    const found = await lstat(file).catch(() => null);
    if (found === null || found.isFile()) return readBytes(file, 'package', maxBytes);
    throw new ProblemError({
      code: 'file-unreadable',
      where: file,
      message: 'the package cannot be read: this is no plain file',
      next: 'Ask for the package again.',
    });
  };
}

type PackageVerdict = 'authentic' | 'rejected' | 'untrusted';

const HEADLINE: Readonly<Record<PackageVerdict, string>> = {
  authentic: 'AUTHENTIC and whole, made by a trusted station.',
  rejected: 'NOT authentic or NOT whole. Do not rely on it.',
  untrusted: 'Authentic and whole, but the station that made it is NOT trusted.',
};
const MARK = { passed: '[ok]  ', failed: '[FAIL]', 'not-applicable': '[-]   ' } as const;

function lines(
  folder: string,
  index: PackageIndex,
  verdict: PackageVerdict,
  checks: readonly Check[],
): string[] {
  const asked = Object.entries(index.asked).map(([name, value]) => `${name} ${value}`);
  const left = index.leftOut.map(
    ({ job, because }) => `  left out: job ${safeLine(job)}, ${safeLine(because)}`,
  );
  return [
    `${safeLine(folder)}: ${HEADLINE[verdict]}`,
    `  ${safeLine(index.purpose)}; station ${safeLine(index.station)}; ${recordPaths(index).length} records; asked for ${safeLine(asked.join(', ')) || 'all jobs'}`,
    ...checks.map(({ name, outcome, detail }) => `  ${MARK[outcome]} ${name.padEnd(13)} ${safeLine(detail)}`),
    ...left,
    ...(verdict === 'untrusted'
      ? [
          `  Compare the key above with the one that the station gave you by another way. If it is the same, copy ${PACKAGE_FILES.trust} out of the package and name the copy with --trust.`,
        ]
      : []),
  ];
}

/** Everything in the folder but the index and its signature; what is no plain file has no digest and is named as well. */
async function filesIn(folder: string, index: PackageIndex): Promise<readonly PackageFile[]> {
  const sizes = new Map(index.files.map(({ path, bytes }) => [path, bytes]));
  const found: PackageFile[] = [];
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isDirectory()) continue;
    const place = join(entry.parentPath, entry.name);
    const path = relative(folder, place).split(sep).join('/');
    if (path === PACKAGE_FILES.index || path === PACKAGE_FILES.signature) continue;
    const { size } = entry.isFile() ? await stat(place) : { size: 0 };
    // A file of another size was changed, and need not be read.
    const sha256 = entry.isFile() && sizes.get(path) === size ? await digestOf(place) : '';
    found.push({ path, bytes: size, sha256 });
  }
  return found;
}

async function digestOf(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk);
  return hash.digest('hex');
}

async function logIn(read: Read): Promise<PackageLog | string> {
  try {
    const note = Buffer.from(await read(PACKAGE_FILES.checkpoint, 10_000)).toString('utf8');
    const checkpoint = orThrow(readCheckpoint(note, PACKAGE_FILES.checkpoint));
    const proofs = orThrow(readProofs(await read(PACKAGE_FILES.proofs, MAX_BYTES)));
    const entries = orThrow(readStationEntries(await read(PACKAGE_FILES.station, MAX_BYTES)));
    return { checkpoint, proofs, entries, station: stationIn(entries) };
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    return `What it says of the log cannot be read: ${cause.message}.`;
  }
}

async function checkSince(
  { files }: PackageIndex,
  read: Read,
  own: SignedCheckpoint | null,
  log: PackageLog,
): Promise<Check> {
  if (!files.some(({ path }) => path === PACKAGE_FILES.kept)) return checkKept(null, own, log);
  const note = await read(PACKAGE_FILES.kept, 10_000).catch(() => Buffer.alloc(0));
  const kept = readCheckpoint(Buffer.from(note).toString('utf8'), PACKAGE_FILES.kept);
  return kept.ok
    ? checkKept(kept.value, own, log)
    : failed('since', `${PACKAGE_FILES.kept} is not a checkpoint.`);
}

const recordPaths = ({ files }: PackageIndex) =>
  files.map(({ path }) => path).filter((path) => path.startsWith(`${PACKAGE_FILES.records}/`));

interface Records {
  readonly check: Check;
  /** Set where some were signed by a key that the reader does not trust. */
  readonly untrusted: Check | null;
  readonly checkpoints: readonly { readonly path: string; readonly checkpoint: SignedCheckpoint | null }[];
}

/**
 * Each record by itself; those that are missing are named elsewhere. That a job was not finished, or is void, is no fault of
 * the package: it is what the record says.
 */
async function recordsIn(
  folder: string,
  index: PackageIndex,
  trust: TrustList,
  read: Read,
): Promise<Records> {
  const paths: string[] = [];
  const checkpoints: { path: string; checkpoint: SignedCheckpoint | null }[] = [];
  for (const path of recordPaths(index)) {
    if (!(await isPlain(join(folder, path)))) continue;
    paths.push(path);
    const opened = openRecord(await read(path, MAX_RECORD_BYTES).catch(() => Buffer.alloc(0)));
    const note = opened.ok ? readCheckpoint(opened.value.record.log.checkpoint, path) : null;
    checkpoints.push({ path, checkpoint: note?.ok === true ? note.value : null });
  }
  const findings: Finding[] = [];
  await spread(
    paths.map((path) => join(folder, path)),
    trust,
    (some) => {
      findings.push(...some);
    },
  );
  return { check: checkRecords(folder, findings), untrusted: untrustedIn(folder, findings), checkpoints };
}

function checkRecords(folder: string, findings: readonly Finding[]): Check {
  const isSound = ({ verdict, failed: names }: Finding) =>
    verdict !== 'unreadable' && names.every((name) => name === 'completeness' || name === 'signer');
  const bad = findings.filter((finding) => !isSound(finding));
  const [first] = bad;
  if (first !== undefined)
    return failed(
      'records',
      `${bad.length} of ${findings.length} do not hold; ${relative(folder, first.file)}: ${first.fault ?? 'no reason known'}`,
    );
  const unfinished = findings.filter(({ failed: names }) => names.includes('completeness')).length;
  const said =
    unfinished === 0 ? 'each complete' : `${unfinished} of a job that was not completed or is void`;
  return passed('records', `${findings.length} records, each authentic and judged again; ${said}.`);
}

function untrustedIn(folder: string, findings: readonly Finding[]): Check | null {
  const untrusted = findings.filter(({ failed: names }) => names.includes('signer'));
  const [first] = untrusted;
  if (first === undefined) return null;
  return failed(
    'signer',
    `${untrusted.length} records are signed by a key that is not trusted; ${relative(folder, first.file)}: ${first.fault ?? 'no reason known'}`,
  );
}
