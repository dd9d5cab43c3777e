import { type Sentence, sentence } from '../words/catalogue.ts';
import { type Check, doubtful, failed, passed } from './check.ts';
import { checkStream } from './check-stream.ts';
import { checkpointSigners, readCheckpoint } from './checkpoint.ts';
import { hashesOf, rootOfSet } from './merkle.ts';
import { isSame, toHex } from './platform/bytes.ts';
import type { OpenedRecord } from './record.ts';
import type { StationState } from './station.ts';

const NAME = 'log';

/**
 * Whether the record's entries are all of their stream and stand in the station's log as the checkpoint inside has it: each
 * at its own place in the Merkle tree, the root signed by the key that signed the record.
 */
export function inTheLog({ record, leaves }: OpenedRecord, station: StationState | Sentence): Check {
  if (typeof station === 'function') return failed(NAME, station);
  const found = checkStream(record.entries, `job:${record.job}`);
  if (found !== null) return failed(NAME, sentence`The job's entries are not whole: ${found.message}.`);
  const checkpoint = readCheckpoint(record.log.checkpoint, 'checkpoint');
  if (!checkpoint.ok) return failed(NAME, sentence`The checkpoint inside does not have the form of one.`);
  const { origin, size, root } = checkpoint.value;
  if (origin !== station.origin) return failed(NAME, sentence`The checkpoint is of another log, ${origin}.`);
  const key = station.keys.find(({ kid }) =>
    record.signers.some((s) => s.role === 'station' && s.kid === kid),
  );
  const signers = checkpointSigners(
    checkpoint.value,
    station.keys.map(({ jwk }) => jwk),
  );
  if (key === undefined || !signers.includes(key.jwk))
    return failed(
      NAME,
      sentence`The checkpoint is not signed by the key of the station that signed the record.`,
    );
  const proof = hashesOf(record.log.proof);
  const reached = rootOfSet(leaves, size, proof);
  if (reached === null || !isSame(reached, root))
    return failed(NAME, sentence`The entries are not in the log that the checkpoint signs.`);
  if (station.lost.length > 0) {
    const most = Math.max(...station.lost.map((one) => one.size));
    return doubtful(
      NAME,
      sentence`THE LOG LOST ENTRIES. The station states that it had ${most} entries once and went on without some of them. What is in this record is in its signed log of ${size} entries.`,
    );
  }
  return passed(
    NAME,
    sentence`${record.entries.length} entries without a gap, all in the signed log of ${size} entries (root ${toHex(root).slice(0, 16)}).`,
  );
}
