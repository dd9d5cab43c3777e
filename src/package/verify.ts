/** Verification of a package without asking anybody: every check, its outcome in words, and one verdict. */
import { WITNESSES, withLogsOf } from '../evidence/by-policy.ts';
import { type Check, failed } from '../evidence/check.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import type { Policy } from '../evidence/policy.ts';
import { addedUp, type Withheld, withheldIn } from '../evidence/sharing.ts';
import { asOf, type TrustList } from '../evidence/trust.ts';
import type { PackageVerdict } from '../evidence/verdict.ts';
import { orThrow } from '../result.ts';
import { joined, type Sentence, sentence } from '../words/catalogue.ts';
import {
  checkFiles,
  checkImpacts,
  checkKept,
  checkLog,
  checkMade,
  checkSameLog,
  checkSignature,
  checkSigner,
  checkTimes,
  checkWitnesses,
  type PackageLog,
} from './checks.ts';
import type { Unproven } from './finding.ts';
import type { FolderToRead, NewProgress } from './folder.ts';
import { PACKAGE_FILES, type PackageIndex, readIndex } from './format.ts';
import { filesIn, logIn, MAX_BYTES, noteIn } from './read.ts';
import { type Records, recordsIn, type VerifyRecords } from './records.ts';

/** Who verifies: what the reader brings, and how much work is done at once. */
export interface Reader {
  readonly trust: TrustList;
  /** Which logs and witnesses the reader asks for; null for a trust list alone. */
  readonly policy: Policy | null;
  /** Why the reader's trust list trusts nobody, as a sentence; null where it is a list of the reader's own. */
  readonly trustFault: Sentence | null;
  /** The checkpoint that the reader kept from before. */
  readonly kept: SignedCheckpoint | null;
  readonly verifyRecords: VerifyRecords;
  /** Whether the files for people say what the records say; null where nobody can tell. */
  readonly checkReadings: (index: PackageIndex, log: PackageLog) => Promise<Check>;
  /** The reader's own clock (ISO). */
  readonly readAt: string;
  readonly progress: NewProgress;
}

export interface PackageReport {
  readonly index: PackageIndex;
  readonly verdict: PackageVerdict;
  readonly checks: readonly Check[];
  /** A sentence where it cannot be read. */
  readonly log: PackageLog | Sentence;
  /** Personal texts that did not come with its records and the station's entries. */
  readonly withheld: readonly Withheld[];
  /** How many of its jobs no instrument proves. */
  readonly unproven: Unproven;
  /** The package was held against an older checkpoint. */
  readonly held: boolean;
}

/**
 * Its index and who signed it, every file against it, the log that it is taken from, the checkpoint that the reader kept,
 * what was learned of its jobs later, and each record. Throws the problems of an index that cannot be read.
 */
export async function verifyPackage(folder: FolderToRead, reader: Reader): Promise<PackageReport> {
  const bytes = await folder.read(PACKAGE_FILES.index, MAX_BYTES);
  const index = orThrow(readIndex(bytes));
  const log = await logIn(folder);
  const station = typeof log === 'function' ? log : log.station;
  const signature = await noteIn(folder, PACKAGE_FILES.signature);
  const { check: signed, kid } = checkSignature(bytes, signature, station);
  const there = await filesIn(folder, index, reader.progress);
  const records = await recordsIn(index, there.plain, reader);
  const since = typeof log === 'function' ? null : await checkSince(folder, index, reader.kept, log);
  const others = [
    signed,
    checkFiles(index, there.files),
    ...(typeof log === 'function' ? [failed('log', log)] : [checkLog(log)]),
    ...(since === null ? [] : [since]),
    ...(await byWitnesses(folder, index, reader, log, records.jobs)),
    ...(typeof log === 'function' ? [] : [checkSameLog(records.checkpoints, log)]),
    records.check,
    records.oneHistory,
    checkMade(index, records.jobs, reader.readAt),
    checkTimes(records.jobs, typeof log === 'function' ? [] : log.entries),
    ...(typeof log === 'function' ? [] : [checkImpacts(index, log.entries)]),
  ];
  // Nobody reads a file that is not as it was signed.
  const isWhole = others.every(({ outcome }) => outcome !== 'failed') && records.left !== 'newer';
  if (isWhole && typeof log !== 'function') others.push(await reader.checkReadings(index, log));
  const maker = checkSigner(kid, index, station, trustOf(reader, log));
  const signer = withFault(
    maker.outcome === 'passed' ? (records.untrusted(station) ?? maker) : maker,
    reader.trustFault,
  );
  const [first, ...rest] = others;
  return {
    index,
    verdict: verdictOf(others, signer, records.left),
    checks: [...(first === undefined ? [] : [first]), signer, ...rest],
    log,
    withheld: addedUp([...records.withheld, ...(typeof log === 'function' ? [] : withheldIn(log.entries))]),
    unproven: records.unproven,
    held: reader.kept !== null && reader.kept.size > 0 && since?.outcome === 'passed',
  };
}

function verdictOf(others: readonly Check[], signer: Check, left: Records['left']): PackageVerdict {
  if (others.some(({ outcome, name }) => outcome === 'failed' && name !== WITNESSES)) return 'rejected';
  if (left === 'newer') return left;
  const unseen = others.some(({ outcome, name }) => outcome === 'failed' && name === WITNESSES);
  return signer.outcome === 'failed' || unseen ? 'untrusted' : (left ?? 'authentic');
}

/** The reader's list, with the keys that the policy gives this log. */
const trustOf = ({ trust, policy, readAt }: Reader, log: PackageLog | Sentence): TrustList =>
  asOf(typeof log === 'function' ? trust : withLogsOf(trust, policy, log.checkpoint.origin), readAt);

async function byWitnesses(
  folder: FolderToRead,
  { files }: PackageIndex,
  { policy, readAt }: Reader,
  log: PackageLog | Sentence,
  jobs: Records['jobs'],
): Promise<readonly Check[]> {
  if (policy === null || typeof log === 'function') return [];
  if (!files.some(({ path }) => path === PACKAGE_FILES.cosigned))
    return [checkWitnesses(policy, null, log, { jobs, readAt })];
  const cosigned = readCheckpoint(await noteIn(folder, PACKAGE_FILES.cosigned), PACKAGE_FILES.cosigned);
  return cosigned.ok
    ? [checkWitnesses(policy, cosigned.value, log, { jobs, readAt })]
    : [failed(WITNESSES, sentence`${PACKAGE_FILES.cosigned} is not a checkpoint.`)];
}

const withFault = (signer: Check, fault: Sentence | null): Check =>
  fault === null ? signer : failed('signer', joined([() => signer.detail, fault]));

async function checkSince(
  folder: FolderToRead,
  { files }: PackageIndex,
  own: SignedCheckpoint | null,
  log: PackageLog,
): Promise<Check> {
  if (!files.some(({ path }) => path === PACKAGE_FILES.kept)) return checkKept(null, own, log);
  const kept = readCheckpoint(await noteIn(folder, PACKAGE_FILES.kept), PACKAGE_FILES.kept);
  return kept.ok
    ? checkKept(kept.value, own, log)
    : failed('since', sentence`${PACKAGE_FILES.kept} is not a checkpoint.`);
}
