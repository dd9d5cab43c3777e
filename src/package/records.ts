/** The records of a package, each by itself; nothing of them is kept but what each states of itself. */
import { type Check, failed, notLookedAt, passed } from '../evidence/check.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import { COMPLETENESS } from '../evidence/completeness.ts';
import type { Span } from '../evidence/order-of-time.ts';
import { addedUp, type Withheld } from '../evidence/sharing.ts';
import type { StationState } from '../evidence/station.ts';
import { andMore } from '../evidence/wordings.ts';
import { plural, type Sentence, sentence } from '../words/catalogue.ts';
import { type Finding, isSound, type Unproven, unprovenIn } from './finding.ts';
import type { NewProgress } from './folder.ts';
import type { PackageIndex } from './format.ts';
import { historiesText, twoHistories } from './histories.ts';

/** Verifies the records at these paths of the package, in any order, and gives what came out as it comes. */
export type VerifyRecords = (
  paths: readonly string[],
  take: (findings: readonly Finding[]) => void,
) => Promise<void>;

export interface Records {
  readonly check: Check;
  /** Of those that are left to a newer version of the program the gravest; null where there is none. */
  readonly left: 'newer' | 'other-rules' | null;
  /** Empty where no job was. */
  readonly unproven: Unproven;
  /** Set where some were signed by a key that the reader does not trust and that is none of this station's. */
  readonly untrusted: (station: StationState | Sentence) => Check | null;
  readonly oneHistory: Check;
  readonly withheld: readonly Withheld[];
  /** Where its jobs stand in the log, and when. */
  readonly jobs: readonly (Span & { readonly job: string })[];
  readonly checkpoints: readonly { readonly path: string; readonly checkpoint: SignedCheckpoint | null }[];
}

/** `plain`: the plain files that are there. Records that are missing are named elsewhere. */
export async function recordsIn(
  index: PackageIndex,
  plain: ReadonlySet<string>,
  { verifyRecords, progress }: { readonly verifyRecords: VerifyRecords; readonly progress: NewProgress },
): Promise<Records> {
  const paths = index.jobs.map(({ record }) => record).filter((path) => plain.has(path));
  const findings: Finding[] = [];
  const bar = progress('records', paths.length);
  await verifyRecords(paths, (some) => {
    findings.push(...some);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort((a, b) => (a.file < b.file ? -1 : 1));
  const read = findings.filter(({ verdict }) => verdict !== 'newer');
  const checkpoints = read.map(({ file, stated }) => {
    const note = stated === null ? null : readCheckpoint(stated.checkpoint, file);
    return { path: file, checkpoint: note?.ok === true ? note.value : null };
  });
  return {
    check: checkRecords(index, findings),
    unproven: unprovenIn(findings),
    left:
      (['newer', 'other-rules'] as const).find((left) => findings.some(({ verdict }) => verdict === left)) ??
      null,
    untrusted: (station) => untrustedIn(findings, station),
    oneHistory: checkHistory(findings),
    withheld: addedUp(findings.flatMap(({ withheld }) => withheld)),
    checkpoints,
    jobs: findings.flatMap(({ stated }) => (stated === null ? [] : [stated])),
  };
}

const SHOWN = 5;

function checkRecords(index: PackageIndex, findings: readonly Finding[]): Check {
  const newer = findings.filter(({ verdict }) => verdict === 'newer');
  const bad = findings.filter((finding) => finding.verdict !== 'newer' && !isSound(finding));
  if (findings.length < index.jobs.length)
    return failed(
      'records',
      sentence`${findings.length} of ${index.jobs.length} that the index names are there.`,
    );
  const [first] = bad;
  if (first !== undefined) {
    const others = bad.slice(1, 1 + SHOWN).map(({ file }) => file);
    const also = andMore(() => others.join(', '), bad.length - 1 - SHOWN);
    return failed(
      'records',
      others.length === 0
        ? sentence`${bad.length} of ${findings.length} do not hold; ${first.file}: ${faultOf(first)}`
        : sentence`${bad.length} of ${findings.length} do not hold; ${first.file}: ${faultOf(first)}; also ${also}`,
    );
  }
  const jobs = new Map(index.jobs.map(({ job, record }) => [record, job]));
  const astray = findings.find(
    ({ file, stated, verdict }) => verdict !== 'newer' && stated?.job !== jobs.get(file),
  );
  if (astray !== undefined)
    return failed(
      'records',
      sentence`${astray.file} is of job ${astray.stated?.job ?? '?'}, not of the one that the index says.`,
    );
  const unfinished = findings.filter(({ failed: names }) => names.includes(COMPLETENESS));
  const which = unfinished.slice(0, SHOWN).map(({ stated }) => stated?.job);
  const some = andMore(() => which.join(', '), unfinished.length - SHOWN);
  const finished =
    unfinished.length === 0
      ? sentence`each complete`
      : sentence`${unfinished.length} of a job that was not completed or is void (${some})`;
  const others = findings.filter(({ verdict }) => verdict === 'other-rules').length;
  const again =
    others === 0
      ? sentence`each authentic and judged again`
      : sentence`each authentic; ${others} NOT judged again, because they were judged by rules that this version does not know`;
  if (newer.length > 0)
    return notLookedAt(
      'records',
      sentence`${newer.length} of ${findings.length} were not verified: a newer version of the program made them; ${newer[0]?.file ?? ''}.`,
    );
  return passed('records', sentence`${records(findings.length)}, ${again}; ${finished}.`);
}

const records =
  (count: number): Sentence =>
  () =>
    plural(count, { one: '# record', other: '# records' });

/** Read when it is said: what it found may be read in another language by then. */
const faultOf =
  (finding: Finding): Sentence =>
  () =>
    finding.fault ?? NO_REASON();

const NO_REASON = sentence`no reason known`;

function checkHistory(findings: readonly Finding[]): Check {
  const [split] = twoHistories(findings);
  return split === undefined
    ? passed('one history', sentence`No two records contradict each other.`)
    : failed('one history', sentence`${() => historiesText(split)}.`);
}

/** A key of the station that has ended since is vouched for by the log that the newest one signed, where the record is in it. */
function untrustedIn(findings: readonly Finding[], station: StationState | Sentence): Check | null {
  const own = new Set(typeof station === 'function' ? [] : station.keys.map(({ kid }) => kid));
  const untrusted = findings.filter(
    ({ failed: names, stated }) => names.includes('signer') && !own.has(stated?.kid ?? ''),
  );
  const [first] = untrusted;
  if (first === undefined) return null;
  return failed(
    'signer',
    sentence`${untrusted.length} records are signed by a key that is not trusted; ${first.file}: ${faultOf(first)}`,
  );
}
