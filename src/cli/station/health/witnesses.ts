/** Whether the witnesses of the station file have seen all that the station signed. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readCheckpoint, type SignedCheckpoint } from '../../../evidence/checkpoint.ts';
import { readVerifierKey } from '../../../evidence/verifier-key.ts';
import type { LoadedStation } from '../station-file.ts';
import { COSIGNED_CHECKPOINT, LAST_CHECKPOINT } from '../station-log.ts';
import { type Finding, good, warning } from './finding.ts';

const NEXT = 'See why, and send what is missing: plugmark log witness';

export function witnessFindings({ folder, witnesses = [] }: LoadedStation): readonly Finding[] {
  const signed = checkpointIn(join(folder, LAST_CHECKPOINT));
  if (witnesses.length === 0 || signed === null) return [];
  const cosigned = checkpointIn(join(folder, COSIGNED_CHECKPOINT));
  if (cosigned === null)
    return [warning('witnesses', `none of ${witnesses.length} has cosigned this log yet`, NEXT)];
  const names = new Set(cosigned.signatures.map(({ name }) => name));
  const who = witnesses.filter(({ keys }) =>
    keys.some((text) => names.has(readVerifierKey(text)?.name ?? '')),
  );
  const text = `${who.length} of ${witnesses.length} cosigned the first ${cosigned.size} of ${signed.size} entries that are signed`;
  return who.length === witnesses.length && cosigned.size === signed.size
    ? [good('witnesses', text)]
    : [warning('witnesses', text, NEXT)];
}

function checkpointIn(path: string): SignedCheckpoint | null {
  if (!existsSync(path)) return null;
  const read = readCheckpoint(readFileSync(path), path);
  return read.ok ? read.value : null;
}
