/** Sealing a record: what the station's log holds of one job, proven to stand in it, and signed. */
import { foldAll } from '../job/fold.ts';
import { editionOf } from '../rules/editions.ts';
import { canonicalBytes } from './canonical.ts';
import { signCheckpoint } from './checkpoint.ts';
import { DIGEST_NAME } from './disclosures.ts';
import { disclosuresOf, personalTexts, signedEntry } from './entry.ts';
import type { TextPlace } from './forgotten.ts';
import { publicJwk, thumbprint } from './jwk.ts';
import { addSignature, type Jws, type Signer, withDisclosures } from './jws.ts';
import type { AnyEntry, LogEntry, StationEntry } from './log.ts';
import { type Subtrees, setProof, treeRoot } from './merkle.ts';
import { toBase64, toBase64url } from './platform/bytes.ts';
import {
  type Content,
  fileBytes,
  type JobRecord,
  RECORD_FORM,
  recordSchema,
  rulesOf,
  signerSchema,
  technicianKey,
  technicianSignature,
} from './record.ts';
import { backgroundOf, stationOf } from './station.ts';

export interface RecordContent {
  readonly program: { readonly name: string; readonly version: string };
  /** All entries of the station's stream. */
  readonly station: readonly StationEntry[];
  /** All entries of one job's stream. */
  readonly entries: readonly LogEntry[];
  readonly log: { readonly tree: Subtrees; readonly size: number };
  /** SHA-256 of an earlier record of the job. */
  readonly replaces?: string;
}

/** A sealed record: its file and what is in it. */
export interface Sealed {
  readonly bytes: Uint8Array;
  readonly record: JobRecord;
}

/** The file of a record, signed by the station and perhaps the technician. Entries that are no job are a bug and throw. */
export function sealRecord(
  { program, station, entries, log, replaces }: RecordContent,
  signers: readonly Signer[],
): Sealed {
  const state = foldAll(entries.map(({ event }) => event));
  const stationState = stationOf(station);
  const stationKey = signers.find(({ role }) => role === 'station')?.privateKey;
  const openedSeq = entries[0]?.seq;
  const edition = editionOf(rulesOf(entries));
  if (state === null || stationState === null || stationKey === undefined || openedSeq === undefined)
    throw new Error('a record needs the entries of a job, a station, and its key');
  if (typeof edition === 'string') throw new Error(`a station seals no job of ${edition} rules`);
  const outcome = edition.outcomeOf(entries.map(({ event }) => event));
  const { technician } = state;
  const { job } = state.order;
  const background = backgroundOf(station, {
    technician,
    technicianAt: technicianAt(entries),
    instruments: state.instruments,
    specification: state.order.specification,
    openedSeq,
  });
  const { tree, size } = log;
  const indexes = [...background, ...entries].map(({ seq }) => seq - 1).sort((a, b) => a - b);
  const checkpoint = signCheckpoint(
    { origin: stationState.origin, size, root: treeRoot(tree, size) },
    stationKey,
  );
  const stated: Omit<Content, 'background' | 'entries'> = {
    form: RECORD_FORM,
    _sd_alg: DIGEST_NAME,
    program,
    station: stationState.name,
    job,
    ...(replaces === undefined ? {} : { replaces }),
    signers: signers
      .map(({ privateKey, role }) => ({ role, kid: thumbprint(publicJwk(privateKey)) }))
      .map((one) => signerSchema.parse(one)),
    technicianSignature: technicianSignature(stationState, technicianKey(background, technician), signers),
    log: { checkpoint, proof: setProof(tree, indexes, size).map(toBase64) },
    budgets: outcome.budgets,
    summary: outcome.summary,
  };
  const record: JobRecord = { ...stated, background, entries };
  recordSchema.parse({ ...stated, background: background.map(bare), entries: entries.map(bare) });
  const payload = canonicalBytes({
    ...stated,
    background: background.map(signedEntry),
    entries: entries.map(signedEntry),
  });
  const unsigned: Jws = { payload: toBase64url(payload), signatures: [] };
  const disclosures = [...background, ...entries].flatMap(disclosuresOf);
  return { bytes: fileBytes(withDisclosures(signers.reduce(addSignature, unsigned), disclosures)), record };
}

/** The entry that named who works on the job, and which of its texts the name is. */
function technicianAt(entries: readonly LogEntry[]): TextPlace {
  const named = entries.findLast(
    ({ event }) => event.type === 'job-opened' || event.type === 'job-handed-over',
  );
  if (named === undefined) throw new Error('the entries of a job begin with its opening');
  const at = named.event.type === 'job-opened' ? 'event.order.technician' : 'event.to';
  return { entry: named.seq, text: personalTexts(named).findIndex(({ place }) => place.join('.') === at) };
}

const bare = <T extends AnyEntry>({ concealed, ...entry }: T) => entry;
