import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { StationKey } from '../../../db/keyfile.ts';
import { type PublicJwk, publicJwk, thumbprint } from '../../evidence/jwk.ts';
import type { Signer } from '../../evidence/jws.ts';
import { toHex } from '../../evidence/platform/bytes.ts';
import { sha256 } from '../../evidence/platform/hash.ts';
import {
  type JobRecord,
  MAX_RECORD_BYTES,
  openRecord,
  technicianSignature,
  tooLong,
} from '../../evidence/record.ts';
import { type Sealed, sealRecord } from '../../evidence/seal.ts';
import { personNamed } from '../../evidence/station.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { writeWhole } from '../../files/output.ts';
import { foldAll } from '../../job/fold.ts';
import { technicianOf } from '../../job/hand-over.ts';
import { isSoundReport } from '../../package/finding.ts';
import { isWithheld } from '../../personal.ts';
import { ProblemError } from '../../problem.ts';
import type { CsvStyle } from '../../report/csv-style.ts';
import type { FontSources } from '../../report/fonts/fonts.ts';
import { writeCsv, writePdf } from '../../report/index.ts';
import { modelOf } from '../../report/of-record.ts';
import { ANYBODY, type Audience, madeFor } from '../../report/reader.ts';
import { noRecordText } from '../../report/words/index.ts';
import { w } from '../../words/catalogue.ts';
import { programVersion } from '../help/version.ts';
import { keepSigned, refuseTurned } from '../station/one-history.ts';
import { readerOf } from '../station/paper-reader.ts';
import { type Station, stateOf } from '../station/station.ts';
import { readTrust } from '../station/trust-file.ts';

export interface Papers {
  readonly record: string;
  readonly pdf: string;
  readonly csv: string;
}

/** Where papers go and who signs beside the station; `signedAt` is wall clock. */
export interface Sealing {
  readonly folder: string;
  readonly signedAt: string;
  readonly technician: StationKey | null;
  readonly audience: Audience;
  readonly style: CsvStyle;
}

/** Seals a job's record with a new checkpoint of the log, writes it with its PDF and CSV, and returns the paths. */
export async function writePapers(
  station: Station,
  stream: string,
  { folder, signedAt, technician, audience, style }: Sealing,
): Promise<Papers> {
  const { log, key } = station;
  const entries = log.entries(stream);
  const state = foldAll(entries.map(({ event }) => event));
  if (state === null) throw new Error(`${stream} holds no job`);
  const long = tooLong(entries);
  if (long !== null) throw tooLarge(state.order.job, noRecordText(long));
  const program = { name: 'plugmark', version: programVersion() };
  const size = log.size();
  const { job } = state.order;
  const replaces = await recordThere(join(station.folder, `${job}.record.json`));
  const content = {
    program,
    station: log.stationEntries(),
    entries,
    log: { tree: log.tree, size },
    ...(replaces === null ? {} : { replaces }),
  };
  const signers: Signer[] = [{ privateKey: key.privateKey, role: 'station', signedAt }];
  if (technician !== null) signers.push({ privateKey: technician.privateKey, role: 'technician', signedAt });
  const now = stateOf(station);
  refuseTurned(station, now);
  if (now.keys.at(-1)?.kid !== key.kid) throw keyChanged(job);
  const { bytes: recordBytes, record } = sealRecord(content, signers);
  if (
    isWithheld(state.technician) &&
    !record.background.some(({ event }) => event.type === 'person-recorded')
  )
    throw nameMissing(job);
  if (recordBytes.length > MAX_RECORD_BYTES)
    throw tooLarge(
      job,
      noRecordText({ because: 'too-many-bytes', count: recordBytes.length, most: MAX_RECORD_BYTES }),
    );
  const file = join(folder, `${record.job}.record.json`);
  await refuseOther(file, record);
  await keepSigned(station, size, record.log.checkpoint);
  writeWhole(file, recordBytes);
  return { record: file, ...(await writeDrawn(folder, recordBytes, record, { audience, style })) };
}

/** Another program gave the station a new key while this one worked with the old one, which signs nothing more. */
const keyChanged = (job: string) =>
  new ProblemError({
    code: 'key-retired',
    where: job,
    message: 'nothing was signed: the key of the station was changed while this program ran',
    next: `Nothing is lost. Seal the job with the new key: plugmark jobs papers ${job}`,
  });

/**
 * The record of a job as it was sealed, where it still holds all that the log does, signed by the keys of today. Its papers are
 * drawn from it, in whatever language: whoever has the record or another copy finds the same fingerprint on them.
 */
export async function sealedBefore(station: Station, stream: string): Promise<Sealed | null> {
  const entries = station.log.entries(stream);
  const job = foldAll(entries.map(({ event }) => event))?.order.job;
  const bytes = await readFile(join(station.folder, `${job}.record.json`)).catch(() => null);
  const opened = bytes === null ? null : openRecord(bytes);
  if (bytes === null || opened?.ok !== true) return null;
  const { record } = opened.value;
  const report = verifyRecord(bytes, await readTrust(station.trustFile));
  const holds = isSoundReport(report) && !['untrusted', 'other-rules'].includes(report.verdict);
  const isOfToday = isSignedAsToday(station, record);
  return holds && isOfToday && isDeepStrictEqual(record.entries, entries) ? { bytes, record } : null;
}

/** By the station's key of today, and by the technician as the shop has it now. */
function isSignedAsToday(station: Station, { signers, entries, technicianSignature: stated }: JobRecord) {
  const state = stateOf(station);
  const name = technicianOf(entries.map(({ event }) => event));
  const key = name === null ? null : (personNamed(state, name)?.key ?? null);
  const isBy = (jwk: PublicJwk) => signers.some(({ kid }) => kid === thumbprint(jwk));
  const now = technicianSignature(state, key, signers);
  return (
    isBy(publicJwk(station.key.privateKey)) &&
    now === stated &&
    now !== 'not-given' &&
    (now !== 'given' || key === null || isBy(key))
  );
}

/** Papers of a record that is sealed already; a copy of it lies beside them. */
export async function papersOf(
  { bytes, record }: Sealed,
  { folder, audience, style }: Pick<Sealing, 'folder' | 'audience' | 'style'>,
): Promise<Papers> {
  const file = join(folder, `${record.job}.record.json`);
  const there = await readFile(file).catch(() => null);
  if (there === null || Buffer.compare(there, bytes) !== 0) {
    await refuseOther(file, record);
    writeWhole(file, bytes);
  }
  return { record: file, ...(await writeDrawn(folder, bytes, record, { audience, style })) };
}

/** SHA-256 of the record in a file; null where there is none. */
async function recordThere(file: string): Promise<string | null> {
  const there = await readFile(file).catch(() => null);
  return there === null || !openRecord(there).ok ? null : digestOf(there);
}

const digestOf = (bytes: Uint8Array): string => toHex(sha256(bytes));

/**
 * A record that lies there may be the only one of entries that the log lost, or be of another station: only a record that
 * this one goes on from is overwritten.
 */
async function refuseOther(file: string, { entries }: JobRecord): Promise<void> {
  const there = await readFile(file).catch(() => null);
  const old = there === null ? null : openRecord(there);
  if (old === null || !old.ok) return;
  const goesOn = old.value.record.entries.every(
    ({ seq, at }, i) => entries[i]?.seq === seq && entries[i]?.at === at,
  );
  if (goesOn) return;
  throw new ProblemError({
    code: 'record-not-in-log',
    where: file,
    message: w`this record of the job is not from this log, and is never overwritten`,
    next: w`Keep it: move it to another folder. Then run "plugmark jobs papers".`,
  });
}

/** Nobody can say whether the technician has a key: a record would have to say something untrue. */
const nameMissing = (job: string) =>
  new ProblemError({
    code: 'log-damaged',
    where: `job:${job}`,
    message: w`the name of the technician is missing in the log, and no entry says that it was forgotten`,
    next: w`Run "plugmark log check". The record that was sealed before stays good.`,
  });

/**
 * Writes the papers of a record, made from nothing but the record: the same record gives the same papers, at its station
 * and with whoever holds it.
 */
export async function writeDrawn(
  folder: string,
  recordBytes: Uint8Array,
  record: JobRecord,
  { audience, style }: Pick<Sealing, 'audience' | 'style'>,
): Promise<Omit<Papers, 'record'>> {
  // The work order's schema keeps the job number to letters that are safe in a file name.
  const pdf = join(folder, `${record.job}.pdf`);
  const csv = join(folder, `${record.job}.csv`);
  writeWhole(pdf, await drawnPdf(recordBytes, record, audience, 'machine'));
  // Codes and words of a table stay as its schema has them, whoever reads the pages.
  const model = madeFor(ANYBODY, () => modelOf(recordBytes, record));
  writeWhole(csv, writeCsv(model, style, audience.units));
  return { pdf, csv };
}

/** The pages of a record, the record itself inside them: with its own fonts the same bytes on every machine. */
export async function drawnPdf(
  recordBytes: Uint8Array,
  record: JobRecord,
  audience: Audience,
  fonts: FontSources,
): Promise<Uint8Array> {
  const reader = await readerOf(audience);
  return writePdf(
    madeFor(reader, () => modelOf(recordBytes, record)),
    {
      recordBytes,
      recordName: `${record.job}.record.json`,
      drawnBy: `plugmark ${programVersion()}`,
      fonts,
      reader,
    },
  );
}

/** A record that nobody's program would open is not written. */
function tooLarge(job: string, message: string): ProblemError {
  return new ProblemError({
    code: 'record-too-large',
    where: w`job ${job}`,
    message: w`the job has ${message}`,
    next: w`Nothing is lost: the station log contains all of it. Keep station.db and a checkpoint of it as evidence.`,
  });
}
