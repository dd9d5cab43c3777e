import { jwsSchema } from '../evidence/jws.ts';
import { fromUtf8, toHex } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import { fileBytes, type JobRecord } from '../evidence/record.ts';
import { TECHNICIAN_WORDS } from '../evidence/signers.ts';
import { foldAll } from '../job/fold.ts';
import { type ReportModel, reportModel } from './model.ts';
import { tracesOf } from './traces.ts';

/** What a record shows people, made from nothing but the record. */
export function modelOf(recordBytes: Uint8Array, record: JobRecord): ReportModel {
  const { entries, program } = record;
  const events = entries.map(({ event }) => event);
  const state = foldAll(events);
  if (state === null) throw new Error(`the record of ${record.job} holds no job`);
  return reportModel({
    state,
    entries,
    traces: tracesOf(events),
    recordDigest: digestOf(recordBytes),
    signers: record.signers,
    technicianSignature: TECHNICIAN_WORDS[record.technicianSignature],
    checkpoint: record.log.checkpoint,
    program: `${program.name} ${program.version}`,
    station: record.station,
    replaces: record.replaces ?? null,
    beforeSigning: beforeCountersigning(recordBytes, record),
  });
}

/** The digest that the record had before somebody countersigned it; null where nobody did. */
function beforeCountersigning(recordBytes: Uint8Array, { signers }: JobRecord): string | null {
  const jws = jwsSchema.parse(JSON.parse(fromUtf8(recordBytes)));
  if (jws.signatures.length <= signers.length) return null;
  return digestOf(fileBytes({ ...jws, signatures: jws.signatures.slice(0, signers.length) }));
}

const digestOf = (bytes: Uint8Array): string => toHex(sha256(bytes));
