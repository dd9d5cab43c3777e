import { type Check, failed } from '../../evidence/check.ts';
import { readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import {
  checkFiles,
  checkImpacts,
  checkKept,
  checkLog,
  checkSameLog,
  checkSignature,
  checkSigner,
  type PackageLog,
} from '../../package/checks.ts';
import { PACKAGE_FILES, type PackageIndex, readIndex } from '../../package/format.ts';
import { filesIn, logIn, MAX_BYTES, MAX_NOTE_BYTES, type Read, reader } from '../../package/read.ts';
import { recordsIn } from '../../package/records.ts';
import { orThrow } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedPackage } from '../answers/verify.ts';
import { keptCheckpoint } from '../station/log.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { readersTrust } from './readers-trust.ts';
import { notProven, type PackageReport, type PackageVerdict, packageLines } from './verify-package-text.ts';

export interface PackageOptions {
  readonly trust?: string;
  readonly kept?: string;
  readonly json?: true;
}

/**
 * Checks a package without asking anybody: its index and who signed it, every file against it, the log that it stands in,
 * the checkpoint that the reader kept, what was learned of its jobs later, and each record. Exit codes as of a record.
 */
export async function verifyPackage(folder: string, options: PackageOptions): Promise<ExitCode> {
  const report = await reportOn(folder, options);
  const { verdict, checks, index } = report;
  const questioned = index.jobs.filter(({ impacts }) => impacts.length > 0);
  if (options.json === true)
    printJson(verifiedPackage({ folder, verdict, checks, questioned, notProven: notProven(report) }));
  else print(packageLines(folder, report));
  return EXIT_OF[verdict];
}

async function reportOn(folder: string, options: PackageOptions): Promise<PackageReport> {
  const read = reader(folder);
  const bytes = await read(PACKAGE_FILES.index, MAX_BYTES);
  const index = orThrow(readIndex(bytes));
  const { list: trust, fault } = await readersTrust(options.trust, folder);
  const own = options.kept === undefined ? null : await keptCheckpoint(options.kept);
  const log = await logIn(read);
  const station = typeof log === 'string' ? log : log.station;
  const signature = await read(PACKAGE_FILES.signature, MAX_NOTE_BYTES).catch(() => Buffer.alloc(0));
  const { check: signed, kid } = checkSignature(bytes, Buffer.from(signature).toString('ascii'), station);
  const records = await recordsIn(folder, index, trust);
  const since = typeof log === 'string' ? null : await checkSince(index, read, own, log);
  const others = [
    signed,
    checkFiles(index, await filesIn(folder, index)),
    ...(typeof log === 'string' ? [failed('log', log)] : [checkLog(log)]),
    ...(since === null ? [] : [since]),
    ...(typeof log === 'string' ? [] : [checkSameLog(records.checkpoints, log)]),
    records.check,
    ...(typeof log === 'string' ? [] : [checkImpacts(index, log.entries)]),
  ];
  const maker = checkSigner(kid, index, station, trust);
  const believed = maker.outcome === 'passed' ? (records.untrusted ?? maker) : maker;
  const signer = fault === null ? believed : failed('signer', `${believed.detail} ${fault}`);
  const [first, ...rest] = others;
  const checks = [...(first === undefined ? [] : [first]), signer, ...rest];
  const bad = others.some(({ outcome }) => outcome === 'failed');
  const sound = records.otherRules ? 'other-rules' : 'authentic';
  const verdict = bad ? 'rejected' : signer.outcome === 'failed' ? 'untrusted' : sound;
  return {
    index,
    verdict,
    checks,
    log,
    simulated: records.simulated,
    held: own !== null && own.size > 0 && since?.outcome === 'passed',
  };
}

const EXIT_OF: Readonly<Record<PackageVerdict, ExitCode>> = {
  authentic: EXIT.done,
  rejected: EXIT.failed,
  untrusted: EXIT.untrusted,
  'other-rules': EXIT.otherRules,
};

async function checkSince(
  { files }: PackageIndex,
  read: Read,
  own: SignedCheckpoint | null,
  log: PackageLog,
): Promise<Check> {
  if (!files.some(({ path }) => path === PACKAGE_FILES.kept)) return checkKept(null, own, log);
  const note = await read(PACKAGE_FILES.kept, MAX_NOTE_BYTES).catch(() => Buffer.alloc(0));
  const kept = readCheckpoint(Buffer.from(note).toString('utf8'), PACKAGE_FILES.kept);
  return kept.ok
    ? checkKept(kept.value, own, log)
    : failed('since', `${PACKAGE_FILES.kept} is not a checkpoint.`);
}
