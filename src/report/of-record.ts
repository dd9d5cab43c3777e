import { toHex } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import type { JobRecord } from '../evidence/record.ts';
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
    recordDigest: toHex(sha256(recordBytes)),
    signers: record.signers,
    technicianSignature: TECHNICIAN_WORDS[record.technicianSignature],
    checkpoint: record.log.checkpoint,
    program: `${program.name} ${program.version}`,
  });
}
