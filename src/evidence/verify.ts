/** Verification of a job record: an ordered list of checks, each with its outcome in words, and one verdict. */
import { marksOf, type Proof } from '../job/proof.ts';
import { editionOf } from '../rules/editions.ts';
import { joined, plural, type Sentence, sentence } from '../words/catalogue.ts';
import { type ByPolicy, WITNESSES, withLogsOf, witnessesOf } from './by-policy.ts';
import { type Check, doubtful, failed, notLookedAt, passed } from './check.ts';
import { readCheckpoint } from './checkpoint.ts';
import { checkClock } from './clock.ts';
import { COMPLETENESS, contentsAndCompleteness } from './completeness.ts';
import { inTheLog } from './in-the-log.ts';
import { JUDGED_AGAIN, judgedAgain } from './judged-again.ts';
import { checkSignatures, type SignatureReport } from './jws.ts';
import type { LaterLog } from './later-log.ts';
import { daysOutOfPlaceAmong, outOfPlaceWords } from './order-of-time.ts';
import { type JobRecord, type OpenedRecord, openRecord, rulesOf } from './record.ts';
import { entriesOf, type Withheld, withheldIn } from './sharing.ts';
import { countersignatureFault, hasEnded, signatureFault, signerCheck } from './signers.ts';
import { type StationState, stationOf } from './station.ts';
import { asOf, type TrustedTime, type TrustList } from './trust.ts';
import type { Verdict } from './verdict.ts';
import { andMore, reasonOf } from './wordings.ts';

export interface VerificationReport {
  readonly verdict: Verdict;
  readonly checks: readonly Check[];
  /** What the file says, for display; null when it could not be read. Believe it only with a good verdict. */
  readonly record: JobRecord | null;
  readonly signatures: readonly SignatureReport[];
  /** What its figures are worth; null when the job could not be played back. */
  readonly proof: Proof | null;
  /** Personal texts that did not come with the file. */
  readonly withheld: readonly Withheld[];
  /** The station is on the reader's list, and its key has ended: nothing shows that it signed before. */
  readonly keyEnded: boolean;
}

const CHECKS = ['signatures', 'signer', 'log', 'contents', COMPLETENESS, JUDGED_AGAIN, 'clock'] as const;

/**
 * Checks the bytes of a record file. When they do not have the form of a record only that is said; else all checks are
 * made, so that the report names every fault. `time` is the finding about a trusted time stamp, where there is one;
 * `readAt` is the reader's own clock (ISO), so that a record from the future is seen to be one; `later` is what shows that it
 * was sealed before its key ended, where the reader has it; `byPolicy` is the reader's policy, if there is one, with the
 * note of the witnesses.
 */
export function verifyRecord(
  bytes: Uint8Array,
  trustList: TrustList,
  time: TrustedTime | null = null,
  readAt: string | null = null,
  later: LaterLog | null = null,
  byPolicy: ByPolicy | null = null,
): VerificationReport {
  const opened = openRecord(bytes);
  if (!opened.ok) {
    const { kind, problem } = opened.error;
    const [first, ...rest] = CHECKS;
    const nothing = { record: null, signatures: [], proof: null, withheld: [], keyEnded: false };
    if (kind === 'newer') return { verdict: 'newer', checks: CHECKS.map(notKnown), ...nothing };
    const form = failed(first, () => `${problem.where ?? 'record'}: ${problem.message}.`);
    const verdict = kind === 'unreadable' ? 'unreadable' : 'rejected';
    return { verdict, checks: [form, ...rest.map(notReached)], ...nothing };
  }
  const { record, jws, payload } = opened.value;
  const signatures = checkSignatures(jws, payload);
  const station = stationIn(record);
  const edition = editionOf(rulesOf(record.entries));
  const own = readCheckpoint(record.log.checkpoint, 'checkpoint');
  const origin = own.ok ? own.value.origin : '';
  const list = asOf(withLogsOf(trustList, byPolicy?.policy ?? null, origin), readAt);
  const known = typeof station === 'function' ? [] : station.keys.map(({ jwk }) => jwk);
  const witnesses = byPolicy === null || !own.ok ? null : witnessesOf(own.value, byPolicy, known, readAt);
  const before = [time?.before, witnesses?.before].filter((one) => typeof one === 'string').sort()[0] ?? null;
  const signer = signerCheck(record, signatures, { station, list, time, before, later });
  const { contents, completeness, orderOfWork, proof } = contentsAndCompleteness(record, station, edition);
  const others = [
    signatureCheck(opened.value, signatures, station),
    inTheLog(opened.value, station),
    ...(witnesses === null ? [] : [witnesses.check]),
    contents,
    completeness,
    ...(orderOfWork === null ? [] : [orderOfWork]),
    judgedAgain(record, edition),
    clockCheck(record, readAt),
    ...(time === null ? [] : [timeCheck(time)]),
  ];
  const [first, ...rest] = others;
  const checks = first === undefined ? [signer] : [first, signer, ...rest];
  const withheld = withheldIn(entriesOf(record));
  const keyEnded = isFailed(signer) && hasEnded(record, list);
  return { verdict: verdictOf(others, signer, proof), checks, record, signatures, proof, withheld, keyEnded };
}

function verdictOf(others: readonly Check[], signer: Check, proof: Proof | null): Verdict {
  const failedNames = others.filter(isFailed).map(({ name }) => name);
  if (failedNames.some((name) => name !== COMPLETENESS && name !== WITNESSES)) return 'rejected';
  if (isFailed(signer) || failedNames.includes(WITNESSES)) return 'untrusted';
  if (others.some(({ name, outcome }) => name === JUDGED_AGAIN && outcome === 'not-applicable'))
    return 'other-rules';
  if (failedNames.length > 0) return 'incomplete';
  return marksOf(proof?.sources ?? []).length > 0 ? 'unproven' : 'authentic';
}

const isFailed = ({ outcome }: Check) => outcome === 'failed';
const notReached = (name: string): Check =>
  notLookedAt(name, sentence`Not looked at, because the file does not have the form of a record.`);

const notKnown = (name: string): Check =>
  notLookedAt(
    name,
    sentence`Not looked at: a newer version of the program made the file in a form that this one cannot read.`,
  );

function signatureCheck(
  { record }: OpenedRecord,
  signatures: readonly SignatureReport[],
  station: StationState | Sentence,
): Check {
  const fault = signatureFault(record, signatures, station);
  if (fault !== null) return failed('signatures', fault);
  const added = countersignatureFault(record, signatures);
  if (added !== null)
    return doubtful(
      'signatures',
      sentence`A COUNTERSIGNATURE IS NOT GOOD. ${added} What was sealed is unchanged.`,
    );
  return passed('signatures', unchanged(signatures.length));
}

const unchanged =
  (count: number): Sentence =>
  () =>
    plural(count, {
      one: 'The file is unchanged. # signature holds.',
      other: 'The file is unchanged. # signatures hold.',
    });

/** The station as the record's own background tells it, or why it does not. */
function stationIn({ background }: JobRecord): StationState | Sentence {
  const [first] = background;
  const disordered = background.some(({ seq, n }, i) => {
    const before = background[i - 1];
    // A selection: the numbers of its stream may skip what is not here, but no more than the log does.
    const [lastSeq, lastN] = before === undefined ? [0, 0] : [before.seq, before.n];
    return seq <= lastSeq || n <= lastN || n - lastN > seq - lastSeq;
  });
  if (first?.event.type !== 'station-set-up' || first.n !== 1 || disordered)
    return sentence`The entries of the station's own stream are not in order.`;
  try {
    return stationOf(background) ?? sentence`The station was never set up.`;
  } catch (fault) {
    return sentence`The station's own stream cannot be played back: ${reasonOf(fault)}.`;
  }
}

function clockCheck({ entries, background }: JobRecord, readAt: string | null): Check {
  const { fault, jumps } = checkClock(entries, background);
  if (fault !== null) return failed('clock', sentence`The times cannot be true: ${fault}.`);
  const ahead = aheadOf(entries.at(-1)?.at ?? '', readAt);
  const astray = outOfPlaceIn(entries, background);
  if (astray !== null) return doubtful('clock', joined([timesInDoubt(astray), ...ahead]));
  if (jumps.length === 0)
    return passed('clock', joined([sentence`Wall clock and monotonic clock agree throughout.`, ...ahead]));
  const shown = jumps
    .slice(0, 5)
    .map(({ n, seconds }) => sentence`${seconds > 0 ? `+${seconds}` : seconds} s before entry n=${n}`);
  const all = andMore(joined(shown, ', '), jumps.length - shown.length);
  return passed(
    'clock',
    joined([sentence`The wall clock was set before or while the job ran: ${all}.`, ...ahead]),
  );
}

/** What a reader should know of the times before anything else. */
export const timesInDoubt = (why: Sentence): Sentence => sentence`TIMES IN DOUBT: ${why}.`;

function outOfPlaceIn(entries: JobRecord['entries'], background: JobRecord['background']): Sentence | null {
  const [first, last] = [entries[0], entries.at(-1)];
  if (first === undefined || last === undefined) return null;
  return outOfPlaceWords(daysOutOfPlaceAmong(background)({ first, last }));
}

/** Two clocks that nobody set right may well be this far apart. */
const CLOCKS_APART_MS = 60_000;

function aheadOf(last: string, readAt: string | null): readonly Sentence[] {
  const aheadMs = readAt === null ? 0 : Date.parse(last) - Date.parse(readAt);
  return aheadMs > CLOCKS_APART_MS
    ? [
        sentence`Its last entry is ${Math.round(aheadMs / 1000)} s ahead of the clock of this computer: one of the two is wrong, or the time was simulated.`,
      ]
    : [];
}

function timeCheck({ before, detail }: TrustedTime): Check {
  return before === null ? failed('trusted time', detail) : passed('trusted time', detail);
}
