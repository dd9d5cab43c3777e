/** What verification of a package looks at, file by file: each check says in one sentence how it came out. */
import { logKeys, policyFinding, WITNESSES } from '../evidence/by-policy.ts';
import { canonical } from '../evidence/canonical.ts';
import { type Check, doubtful, failed, notLookedAt, passed } from '../evidence/check.ts';
import { isSignedBy, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import { entryHash } from '../evidence/entry.ts';
import { thumbprint } from '../evidence/jwk.ts';
import type { StationEntry } from '../evidence/log.ts';
import { consistencyHolds, hashesOf, rootOfSet } from '../evidence/merkle.ts';
import { isNameOfAnother, NAME_OF_ANOTHER, stationNamed } from '../evidence/names.ts';
import {
  daysOutOfPlaceAmong,
  inOrderOfTime,
  type Moment,
  outOfPlaceWords,
  type Span,
} from '../evidence/order-of-time.ts';
import { isSame, toHex } from '../evidence/platform/bytes.ts';
import type { Policy } from '../evidence/policy.ts';
import { stationTrust } from '../evidence/signers.ts';
import { type StationState, stationOf } from '../evidence/station.ts';
import type { TrustList } from '../evidence/trust.ts';
import { timesInDoubt } from '../evidence/verify.ts';
import { andMore, firstOf, reasonOf } from '../evidence/wordings.ts';
import { joined, plural, type Sentence, sentence } from '../words/catalogue.ts';
import {
  indexSigner,
  PACKAGE_FILES,
  type PackageFile,
  type PackageIndex,
  type PackageProofs,
} from './format.ts';
import { impactsStated, lastWithoutGap, questionedIn } from './station-entries.ts';

/** The files as they lie there against the index. Everything that is not as it was is named, up to some. */
export function checkFiles(index: PackageIndex, present: readonly PackageFile[]): Check {
  const there = new Map(present.map((file) => [file.path, file]));
  const listed = new Set(index.files.map(({ path }) => path));
  const missing = index.files
    .filter(({ path }) => !there.has(path))
    .map(({ path }) => sentence`${path} is missing`);
  const changed = index.files
    .filter(({ path, sha256, bytes }) => {
      const file = there.get(path);
      return file !== undefined && (file.sha256 !== sha256 || file.bytes !== bytes);
    })
    .map(({ path }) => sentence`${path} was changed`);
  const added = present
    .filter(({ path }) => !listed.has(path))
    .map(({ path }) => sentence`${path} was added`);
  const faults = [...missing, ...changed, ...added];
  if (faults.length === 0)
    return passed('files', sentence`All ${index.files.length} files are there, and no other.`);
  return failed('files', sentence`${firstOf(faults, SHOWN)}.`);
}

const SHOWN = 5;

/** Whose index it is: the signature holds, and the station's own entries name its key. */
export function checkSignature(
  bytes: Uint8Array,
  signature: string,
  station: StationState | Sentence,
): { readonly check: Check; readonly kid: string | null } {
  const jwk = indexSigner(bytes, signature);
  if (jwk === null)
    return { check: failed('signatures', sentence`The signature does not belong to the index.`), kid: null };
  const kid = thumbprint(jwk);
  if (typeof station === 'function') return { check: failed('signatures', station), kid };
  const fault =
    station.keys.at(-1)?.kid !== kid
      ? sentence`The station's own entries do not name ${kid} as its key.`
      : station.revoked.has(kid)
        ? sentence`The station's own entries say that ${kid} was revoked.`
        : null;
  return {
    check:
      fault === null
        ? passed('signatures', sentence`The index is as the station signed it.`)
        : failed('signatures', fault),
    kid,
  };
}

/** Whether the reader's trust list believes the key, directly or through the keys that followed one another. */
export function checkSigner(
  kid: string | null,
  { at, station: name }: PackageIndex,
  station: StationState | Sentence,
  list: TrustList,
): Check {
  if (kid === null) return failed('signer', sentence`Nobody knows who made it.`);
  const trust = stationTrust({ kid, signedAt: at }, station, list, { before: null, inLog: false });
  if (!trust.trusted)
    return failed('signer', sentence`It says that it is of ${name}. Station key ${kid}: ${trust.reason}.`);
  const made = sentence`Made by the station ${stationNamed(name, trust)} on ${at}, with its key ${kid}.`;
  return isNameOfAnother(name, trust.listed, list)
    ? doubtful('signer', joined([NAME_OF_ANOTHER, made]))
    : passed('signer', made);
}

/** What the station's own entries in the package tell, or why they do not. */
export function stationIn(entries: readonly StationEntry[]): StationState | Sentence {
  try {
    return stationOf(entries) ?? sentence`The station's own entries are missing.`;
  } catch (fault) {
    return sentence`The station's own entries cannot be played back: ${reasonOf(fault)}.`;
  }
}

/** The log that all of a package stands in. */
export interface PackageLog {
  readonly checkpoint: SignedCheckpoint;
  readonly proofs: PackageProofs;
  readonly entries: readonly StationEntry[];
  readonly station: StationState | Sentence;
}

/** Whether the checkpoint is the station's, and the station's entries are in the log that it signed. */
export function checkLog({ checkpoint, proofs, entries, station }: PackageLog): Check {
  if (typeof station === 'function') return failed('log', station);
  const { origin, size, root } = checkpoint;
  if (origin !== station.origin) return failed('log', sentence`The checkpoint is of another log, ${origin}.`);
  if (!isSigned(checkpoint, station))
    return failed('log', sentence`The checkpoint is not signed by a key of the station.`);
  const leaves = entries.map((entry) => ({ index: entry.seq - 1, hash: entryHash(entry) }));
  const reached = rootOfSet(leaves, size, hashesOf(proofs.station));
  if (reached === null || !isSame(reached, root))
    return failed('log', sentence`The station's own entries are not in the log that the checkpoint signs.`);
  const last = lastWithoutGap(entries);
  const own =
    last === null
      ? sentence`${entries.length} of the station's own, chosen among them`
      : sentence`the station's own from the first to entry ${last.seq} of ${last.at} without a gap, ${entries.length} of them`;
  return passed(
    'log',
    sentence`A signed log of ${size} entries (root ${toHex(root).slice(0, 16)}); ${own}, stand in it.`,
  );
}

/** Whether the log begins with all that an older checkpoint stands for. */
export function extendsFrom(older: SignedCheckpoint, { checkpoint, proofs, station }: PackageLog): boolean {
  if (typeof station === 'function' || older.origin !== checkpoint.origin || !isSigned(older, station))
    return false;
  if (older.size === checkpoint.size) return isSame(older.root, checkpoint.root);
  if (older.size === 0) return consistencyHolds(older, checkpoint, []);
  const proof = proofs.consistency.find(({ from }) => from === older.size);
  return proof !== undefined && consistencyHolds(older, checkpoint, hashesOf(proof.path));
}

/** What there is to say of the checkpoint that an auditor kept: the one in the package, and perhaps the auditor's own copy. */
export function checkKept(
  inside: SignedCheckpoint | null,
  own: SignedCheckpoint | null,
  log: PackageLog,
): Check {
  const name = 'since';
  const older = own ?? inside;
  if (older === null) return notLookedAt(name, sentence`The package was made without an older checkpoint.`);
  const which = own === null ? sentence`The checkpoint in ${PACKAGE_FILES.kept}` : sentence`Your checkpoint`;
  const { origin, size } = log.checkpoint;
  if (older.origin !== origin)
    return failed(
      name,
      sentence`${which} is of another log, ${older.origin}; that of the package is ${origin}.`,
    );
  if (typeof log.station === 'function') return failed(name, log.station);
  if (!isSigned(older, log.station))
    return failed(name, sentence`${which} is not signed by a key that the station ever had.`);
  if (older.size > size)
    return failed(
      name,
      sentence`${which} stands for ${older.size} entries, and the log of the package has only ${size}: the end of the log was cut off, or the package was made before the checkpoint.`,
    );
  const proven =
    older.size === 0 || older.size === size || log.proofs.consistency.some(({ from }) => from === older.size);
  if (own !== null && !proven)
    return failed(
      name,
      sentence`The package proves nothing from your checkpoint of ${own.size} entries on; ask for one that was made with it.`,
    );
  if (!extendsFrom(older, log))
    return failed(
      name,
      sentence`DIVERGED: the log does not begin with what the checkpoint of ${older.size} entries stands for.`,
    );
  if (older.size === 0)
    return passed(
      name,
      sentence`${which} stands for an empty log, and every log begins with that: it proves nothing.`,
    );
  return passed(
    name,
    own === null
      ? sentence`Nothing in front of the checkpoint of ${older.size} entries (in ${PACKAGE_FILES.kept}; compare it with the one that you kept) was removed or rewritten.`
      : sentence`Nothing in front of the checkpoint of ${older.size} entries (that you kept) was removed or rewritten.`,
  );
}

/** Whether enough witnesses of the reader's policy saw the log, and all jobs in it. */
export function checkWitnesses(
  policy: Policy,
  cosigned: SignedCheckpoint | null,
  log: PackageLog,
  { jobs, readAt }: { readonly jobs: readonly (Span & { readonly job: string })[]; readonly readAt: string },
): Check {
  const { checkpoint, station } = log;
  if (typeof station === 'function') return failed(WITNESSES, station);
  const ownKeys = station.keys.map(({ jwk }) => jwk);
  const keys = logKeys(policy, checkpoint.origin, ownKeys);
  if (keys.length === 0)
    return failed(WITNESSES, sentence`Your policy does not name this log, ${checkpoint.origin}.`);
  const seen = cosigned ?? checkpoint;
  if (!extendsFrom(seen, log) || !isSignedBy(seen, keys))
    return failed(WITNESSES, sentence`The checkpoint in ${PACKAGE_FILES.cosigned} is not one of this log.`);
  const { check } = policyFinding(policy, seen, ownKeys, readAt);
  const later = jobs.filter(({ last }) => last.seq > seen.size);
  if (check.outcome !== 'passed' || later.length === 0) return check;
  return failed(
    WITNESSES,
    sentence`${() => check.detail} They have not seen ${later.length} of ${jobs.length} jobs, which came after it: ${later
      .slice(0, SHOWN)
      .map(({ job }) => job)
      .join(', ')}.`,
  );
}

/** Whether the index says of each job what the station's own entries say of it. */
export function checkImpacts({ jobs }: PackageIndex, entries: readonly StationEntry[]): Check {
  const name = 'impacts';
  const questioned = questionedIn(entries, new Set(jobs.map(({ job }) => job)));
  const astray = jobs.find(
    ({ job, impacts }) => canonical(impacts) !== canonical(impactsStated(questioned.get(job))),
  );
  if (astray !== undefined)
    return failed(
      name,
      sentence`The index does not say of job ${astray.job} what the station's own entries say.`,
    );
  if (questioned.size === 0)
    return passed(name, sentence`None of the station's entries here puts one of these jobs in question.`);
  return passed(name, sentence`PUT IN QUESTION later: ${questioned.size} of ${jobs.length} jobs; see below.`);
}

/** Whether the jobs are dated as they stand in the log: among each other, and among the station's own entries. */
export function checkTimes(
  jobs: readonly (Span & { readonly job: string })[],
  entries: readonly Moment[],
): Check {
  const name = 'times';
  const ends = jobs.flatMap(({ first, last }) => [first, last]);
  const daysOutOfPlace = daysOutOfPlaceAmong(inOrderOfTime([...entries, ...ends]));
  const astray = jobs.flatMap((job) => {
    const words = outOfPlaceWords(daysOutOfPlace(job));
    return words === null ? [] : [sentence`job ${job.job}: ${words}`];
  });
  if (astray.length === 0)
    return passed(
      name,
      sentence`The jobs are dated in the order in which they and the station's entries stand.`,
    );
  return doubtful(name, timesInDoubt(firstOf(astray, SHOWN)));
}

const DAY_MS = 86_400_000;

/** Whether the index was made when it says: not ahead of the reader's clock, and not before what it holds. */
export function checkMade({ at }: PackageIndex, jobs: readonly Span[], readAt: string): Check {
  const name = 'made';
  if (Date.parse(at) - Date.parse(readAt) > DAY_MS)
    return failed(name, sentence`The package is dated ${at}, and the clock of this computer says ${readAt}.`);
  const last = Math.max(...jobs.map((job) => Date.parse(job.last.at)));
  if (last - Date.parse(at) > DAY_MS)
    return doubtful(
      name,
      sentence`TIMES IN DOUBT: the package is dated ${at}, and a job in it ends on ${new Date(last).toISOString()}.`,
    );
  return passed(name, sentence`Made on ${at}.`);
}

/** Whether records stand in the package's log; `checkpoints` are those inside them. */
export function checkSameLog(
  checkpoints: readonly { readonly path: string; readonly checkpoint: SignedCheckpoint | null }[],
  log: PackageLog,
): Check {
  const astray = checkpoints.filter(({ checkpoint }) => checkpoint === null || !extendsFrom(checkpoint, log));
  const [first] = astray;
  if (first === undefined) return passed('same log', allInLog(checkpoints.length));
  const all = andMore(() => first.path, astray.length - 1);
  return failed('same log', sentence`Not in the log of the package: ${all}.`);
}

const allInLog =
  (count: number): Sentence =>
  () =>
    plural(count, {
      one: 'The record is in the log of the package.',
      other: 'All # records are in the log of the package.',
    });

const isSigned = (checkpoint: SignedCheckpoint, { keys }: StationState) =>
  isSignedBy(
    checkpoint,
    keys.map(({ jwk }) => jwk),
  );
