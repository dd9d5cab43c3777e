/** Verification of a job record: an ordered list of checks, each with its outcome in words, and one verdict. */
import { isDeepStrictEqual } from 'node:util';
import { openItems } from '../job/closing.ts';
import { foldAll } from '../job/fold.ts';
import type { JobState } from '../job/state.ts';
import { entryHash } from './chain.ts';
import { checkStream } from './check-chain.ts';
import { checkSignatures, type SignatureReport } from './jws.ts';
import { type JobRecord, type OpenedRecord, openRecord } from './record.ts';
import { summaryOf } from './summary.ts';
import { type TrustList, trustIn } from './trust.ts';

export interface Check {
  readonly name: string;
  readonly outcome: 'passed' | 'failed' | 'not-applicable';
  /** One sentence for people. */
  readonly detail: string;
}

/** A further check over a record of the right form, for instance judging again from the samples. */
export type ExtraCheck = (record: JobRecord) => Check;

/**
 * `authentic` (exit code 0): every check passed. `rejected` (1): not authentic or not complete. `unreadable` (2): the
 * file is no JWS object and does not begin like one. `untrusted` (3): all well, but the station's key is not on the list.
 */
export type Verdict = 'authentic' | 'rejected' | 'unreadable' | 'untrusted';

export const EXIT_CODES: Readonly<Record<Verdict, 0 | 1 | 2 | 3>> = {
  authentic: 0,
  rejected: 1,
  unreadable: 2,
  untrusted: 3,
};

export interface VerificationReport {
  readonly verdict: Verdict;
  readonly checks: readonly Check[];
  /** What the file says, for display; null when it could not be read. Believe it only with a good verdict. */
  readonly record: JobRecord | null;
  readonly signatures: readonly SignatureReport[];
}

/**
 * Checks the bytes of a record file, in this order: form, signatures, chain, completeness, the extra checks, trust.
 * When the form is wrong the others are not applicable; else all are made, so that the report names every fault.
 */
export function verifyRecord(
  bytes: Uint8Array,
  trustList: TrustList,
  extraChecks: readonly ExtraCheck[] = [],
): VerificationReport {
  const opened = openRecord(bytes);
  if (!opened.ok) {
    const { kind, problem } = opened.error;
    const form = failed('form', `${problem.where ?? 'record'}: ${problem.message}.`);
    const rest = ['signatures', 'chain', 'completeness', 'trust'].map(notReached);
    const verdict = kind === 'unreadable' ? 'unreadable' : 'rejected';
    return { verdict, checks: [form, ...rest], record: null, signatures: [] };
  }
  const { record, jws } = opened.value;
  const signatures = checkSignatures(jws);
  const authenticity = [
    passed('form', 'The file is a record in its one canonical writing.'),
    signatureCheck(opened.value, signatures),
    chainCheck(record),
    completenessCheck(record),
    ...extraChecks.map((check) => check(record)),
  ];
  const trust = trustCheck(signatures, trustList);
  const verdict = authenticity.some(isFailed) ? 'rejected' : isFailed(trust) ? 'untrusted' : 'authentic';
  return { verdict, checks: [...authenticity, trust], record, signatures };
}

const passed = (name: string, detail: string): Check => ({ name, outcome: 'passed', detail });
const failed = (name: string, detail: string): Check => ({ name, outcome: 'failed', detail });
const isFailed = ({ outcome }: Check) => outcome === 'failed';
const notReached = (name: string): Check => ({
  name,
  outcome: 'not-applicable',
  detail: 'Not looked at, because the file does not have the form of a record.',
});

function signatureCheck({ record }: OpenedRecord, signatures: readonly SignatureReport[]): Check {
  const fault = signatureFault(record, signatures);
  if (fault !== null) return failed('signatures', fault);
  return passed('signatures', `All ${signatures.length} signature(s) belong to this content.`);
}

function signatureFault(record: JobRecord, signatures: readonly SignatureReport[]): string | null {
  for (const [i, { fault }] of signatures.entries())
    if (fault !== null) return `Signature ${i + 1} of ${signatures.length} does not hold: ${fault}.`;
  const found = signatures.flatMap(({ signer }) => (signer === null ? [] : [`${signer.role} ${signer.kid}`]));
  const due = record.signers.map(({ role, kid }) => `${role} ${kid}`);
  const missing = due.find((name) => !found.includes(name));
  if (missing !== undefined) return `The signature of ${missing} is missing.`;
  const stranger = found.find((name) => !due.includes(name) && !name.startsWith('countersigner '));
  if (stranger !== undefined) return `The signature of ${stranger} was not announced in the content.`;
  if (new Set(found).size < found.length) return 'The same signature stands twice.';
  return null;
}

function chainCheck({ entries, head, job }: JobRecord): Check {
  const found = checkStream(entries);
  if (found !== null) return failed('chain', `The log is broken: ${found.message}.`);
  const last = entries.at(-1);
  if (last === undefined || last.seq !== head.seq || entryHash(last) !== head.hash)
    return failed('chain', 'The last entry is not the one that the record names as its head.');
  if (last.stream !== `job:${job}`)
    return failed('chain', `The entries belong to ${JSON.stringify(last.stream)}, not to job ${job}.`);
  return passed('chain', `${entries.length} entries follow one another without a gap.${clockNote(entries)}`);
}

/** A wall clock that was set back is no forgery, but a reader should know. */
function clockNote(entries: JobRecord['entries']): string {
  const back = entries.find((entry, i) => Date.parse(entry.at) < Date.parse(entries[i - 1]?.at ?? entry.at));
  return back === undefined ? '' : ` The wall clock was set back before entry n=${back.n}.`;
}

function completenessCheck(record: JobRecord): Check {
  const state = playedBack(record);
  if (typeof state === 'string') return failed('completeness', state);
  const fault = summaryFault(record, state) ?? openFault(state);
  if (fault !== null) return failed('completeness', fault);
  const simulated = state.simulated
    ? ' SIMULATED: the tools were, and nothing is proven about any engine.'
    : '';
  const proven = `Gap and torque are proven on all ${state.cylinders.length} cylinders; the job is closed.`;
  return passed('completeness', proven + simulated);
}

/** The job's state from its events, or why there is none. */
function playedBack({ entries, job }: JobRecord): JobState | string {
  // A second opening would start the job afresh and make what came before it disappear.
  if (entries.filter(({ event }) => event.type === 'job-opened').length !== 1)
    return 'The job was not opened exactly once.';
  try {
    const state = foldAll(entries.map(({ event }) => event));
    if (state?.order.job !== job) return `The entries are not those of job ${job}.`;
    return state;
  } catch (fault) {
    return `The entries cannot be played back: ${fault instanceof Error ? fault.message : 'no reason known'}.`;
  }
}

function summaryFault({ summary }: JobRecord, state: JobState): string | null {
  if (isDeepStrictEqual(summaryOf(state), summary)) return null;
  return 'The summary is not what the entries say.';
}

function openFault(state: JobState): string | null {
  const open = openItems(state);
  if (open.length > 0) return `Still open: ${open.join('; ')}.`;
  const unproven = summaryOf(state).cylinders.find(
    ({ gap, torque }) => gap.judgement?.result !== 'OK' || torque.judgement?.result !== 'OK',
  );
  if (unproven !== undefined)
    return `Cylinder ${unproven.cylinder} counts as done, but no OK figure stands for it.`;
  if (state.closed === null) return 'The job was not closed.';
  return state.closed.complete ? null : `The job was closed incomplete: ${state.closed.open.join('; ')}.`;
}

/** The station vouches for who else signs, so its key decides. */
function trustCheck(signatures: readonly SignatureReport[], trustList: TrustList): Check {
  const station = signatures.find(
    ({ signer, fault }) => fault === null && signer?.role === 'station',
  )?.signer;
  if (station === undefined || station === null) return failed('trust', 'No station signed.');
  const trust = trustIn(trustList, station);
  return trust.trusted
    ? passed('trust', `Signed by the station ${trust.name} on ${station.signedAt}.`)
    : failed('trust', `Station key ${station.kid}: ${trust.reason}.`);
}
