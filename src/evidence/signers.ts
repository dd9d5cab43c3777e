/** Who signed a record, and whether the reader's trust list believes it. */
import { technicianOf } from '../job/hand-over.ts';
import { joined, phrases, type Sentence, sentence } from '../words/catalogue.ts';
import { type Check, doubtful, failed, passed } from './check.ts';
import { readCheckpoint } from './checkpoint.ts';
import { thumbprint } from './jwk.ts';
import type { SignatureReport } from './jws.ts';
import { isInLaterLog, type LaterLog } from './later-log.ts';
import { foreignKeyBefore, statementBy } from './line-of-keys.ts';
import { isNameOfAnother, NAME_OF_ANOTHER, stationNamed } from './names.ts';
import { type JobRecord, technicianKey, technicianSignature } from './record.ts';
import type { StationState } from './station.ts';
import { endOf, roleText, type Trust, type TrustedTime, type TrustList, trustIn } from './trust.ts';

type Signer = NonNullable<SignatureReport['signer']>;

/** Why the signatures are not those that the content announces and the station's log explains; null when they are. */
export function signatureFault(
  record: JobRecord,
  signatures: readonly SignatureReport[],
  station: StationState | Sentence,
): Sentence | null {
  const due = record.signers;
  const announced = signatures.slice(0, due.length);
  for (const [i, { fault }] of announced.entries())
    if (fault !== null) return notHolding(i + 1, signatures.length, fault);
  const missing = due.find((one, i) => !isSame(one, announced[i]?.signer));
  if (missing !== undefined)
    return sentence`The signature of ${roleText(missing.role)} ${missing.kid} is missing.`;
  if (due.some((one, i) => due.slice(0, i).some((before) => isSame(one, before))))
    return sentence`The same signature stands twice.`;
  const stranger = signatures
    .slice(due.length)
    .find(({ signer, fault }) => fault === null && signer?.role !== 'countersigner')?.signer;
  if (stranger !== null && stranger !== undefined)
    return due.some((one) => isSame(one, stranger))
      ? sentence`The signature of ${roleText(stranger.role)} ${stranger.kid} is there twice.`
      : sentence`The signature of ${roleText(stranger.role)} ${stranger.kid} was not announced in the content.`;
  return typeof station === 'function' ? station : signerFault(record, station);
}

const notHolding = (number: number, of: number, fault: Sentence): Sentence =>
  sentence`Signature ${number} of ${of} does not hold: ${fault}.`;

const isSame = (one: Pick<Signer, 'role' | 'kid'>, other: Pick<Signer, 'role' | 'kid'> | null | undefined) =>
  one.role === other?.role && one.kid === other.kid;

/** What is wrong with countersignatures, which anybody may add: they take nothing from what was sealed. */
export function countersignatureFault(
  { signers: due }: JobRecord,
  signatures: readonly SignatureReport[],
): Sentence | null {
  const added = signatures.slice(due.length);
  for (const [i, { signer, fault }] of added.entries()) {
    const number = due.length + i + 1;
    if (fault !== null) return notHolding(number, signatures.length, fault);
    if (signer !== null && added.slice(0, i).some((one) => isSame(signer, one.signer)))
      return sentence`Signature ${number} of ${signatures.length} is there twice.`;
  }
  return null;
}

/** What the station's own log says against those who signed. */
function signerFault(record: JobRecord, station: StationState): Sentence | null {
  const technician = technicianOf(record.entries.map(({ event }) => event));
  if (technician === null) return sentence`The entries do not begin with the opening of a job.`;
  const current = station.keys.at(-1)?.kid;
  const jwk = technicianKey(record.background, technician);
  for (const { role, kid } of record.signers) {
    if (role === 'technician' && (jwk === null || thumbprint(jwk) !== kid))
      return sentence`The station's log does not name ${kid} as the key of ${technician}.`;
    if (role === 'station' && kid !== current)
      return sentence`The station's log does not name ${kid} as its key.`;
    if (station.revoked.has(kid)) return sentence`The station's log says that ${kid} was revoked.`;
  }
  if (station.name !== record.station) return sentence`The station's log does not call it ${record.station}.`;
  return technicianSignature(station, jwk, record.signers) === record.technicianSignature
    ? null
    : sentence`What is said about the signature of the technician is not what the log says.`;
}

/** What the reader is told about the technician's signature. */
export const TECHNICIAN_WORDS: Readonly<Record<JobRecord['technicianSignature'], string>> = phrases({
  given: 'the technician signed with a key of his own',
  'no-key': 'the technician has no key of his own',
  'not-given': 'the technician has a key and did NOT sign',
  'shop-does-without': "this shop does without technicians' signatures",
});

/** Whether the trust list believes the station, directly or through the keys that followed one another. */
export function signerCheck(
  record: JobRecord,
  signatures: readonly SignatureReport[],
  context: {
    readonly station: StationState | Sentence;
    readonly list: TrustList;
    readonly time: TrustedTime | null;
    /** Before when it was certainly signed, by somebody else's clock. */
    readonly before: string | null;
    readonly later: LaterLog | null;
  },
): Check {
  const { station, list, time, before, later } = context;
  const holding = signatures.flatMap(({ signer, fault }) =>
    fault === null && signer !== null ? [signer] : [],
  );
  const signer = holding.find(({ role }) => role === 'station');
  if (signer === undefined) return failed('signer', sentence`No station signed.`);
  const checkpoint = readCheckpoint(record.log.checkpoint, 'checkpoint');
  const inLog = later !== null && checkpoint.ok && isInLaterLog(checkpoint.value, later, list, signer.kid);
  const trust = stationTrust(signer, station, list, { before, inLog });
  if (!trust.trusted) return failed('signer', sentence`Station key ${signer.kid}: ${trust.reason}.`);
  const ended = inLog && endOf(list, signer.kid) !== null;
  const others = holding
    .filter(({ role }) => role === 'countersigner')
    .map((one) => countersigner(one, list, time?.ofWholeFile === true ? time.before : null));
  const said = signedText([
    sentence`signed by the station ${stationNamed(record.station, trust)} on ${signer.signedAt}`,
    ...(ended ? [sentence`the key has ended since, and a later log of the station contains this`] : []),
    technicianText(record.technicianSignature),
    ...others,
  ]);
  return isNameOfAnother(record.station, trust.listed, list)
    ? doubtful('signer', joined([NAME_OF_ANOTHER, said]))
    : passed('signer', said);
}

const technicianText =
  (signature: JobRecord['technicianSignature']): Sentence =>
  () =>
    TECHNICIAN_WORDS[signature];

/** One sentence of many parts. */
function signedText(parts: readonly Sentence[]): Sentence {
  const all = joined(parts, '; ');
  return () => {
    const text = all();
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
  };
}

/** Whether the list has the station's key as one that signs no more. */
export function hasEnded({ signers }: JobRecord, list: TrustList): boolean {
  const kid = signers.find(({ role }) => role === 'station')?.kid;
  return list.keys.some((key) => key.kid === kid && endOf(list, key.kid) !== null);
}

function countersigner(signer: Signer, list: TrustList, before: string | null): Sentence {
  const trust = trustIn(list, { ...signer, before, inLog: false });
  return trust.trusted
    ? sentence`countersigned by ${trust.name} on ${signer.signedAt}`
    : sentence`countersigned by ${signer.kid}, who is not trusted (${trust.reason}), on ${signer.signedAt}`;
}

/**
 * A key that is not on the list is believed if the one before it in the station's log named it and is believed itself. A key
 * that is gone names nobody: whoever finds it could let it name another.
 */
export function stationTrust(
  signer: { readonly kid: string; readonly signedAt: string },
  station: StationState | Sentence,
  list: TrustList,
  shown: { readonly before: string | null; readonly inLog: boolean },
): Trust {
  const trust = trustIn(list, { ...signer, role: 'station', ...shown });
  if (trust.trusted && typeof station !== 'function') return ofOneStation(trust, signer.kid, station, list);
  if (trust.trusted || list.keys.some(({ kid }) => kid === signer.kid) || typeof station === 'function')
    return trust;
  const at = station.keys.findIndex(({ kid }) => kid === signer.kid);
  const [old, key] = [station.keys[at - 1], station.keys[at]];
  const stated = old === undefined || key === undefined ? null : statementBy(old.jwk, key, station.origin);
  if (old === undefined || stated === null) return trust;
  if (endOf(list, old.kid) !== null)
    return {
      trusted: false,
      reason: sentence`the key is not on the trust list, and ${old.kid} names no key any more`,
    };
  const nothing = { before: null, inLog: false };
  const earlier = stationTrust({ kid: old.kid, signedAt: stated.at }, station, list, nothing);
  return earlier.trusted
    ? { ...earlier, name: sentence`${earlier.name}, whose earlier key named this one` }
    : trust;
}

/** The key is believed as long as the station does not take another's past for its own. */
function ofOneStation(trust: Trust, kid: string, station: StationState, list: TrustList): Trust {
  const foreign = foreignKeyBefore(station, kid, list);
  return foreign === null
    ? trust
    : {
        trusted: false,
        reason: sentence`its log says that ${foreign.kid} signed for it before, which your list has as a key of ${foreign.name ?? sentence`somebody`}; neither that key nor your list ("follows") says that this one took its place`,
      };
}
