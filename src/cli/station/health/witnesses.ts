/** Whether all that the station signed was cosigned. */

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readCheckpoint, type SignedCheckpoint } from '../../../evidence/checkpoint.ts';
import { readVerifierKey } from '../../../evidence/verifier-key.ts';
import { w } from '../../../words/catalogue.ts';
import { archiveLink, linkPath } from '../../archive/archive-link.ts';
import type { LoadedStation } from '../station-file.ts';
import { COSIGNED_CHECKPOINT, LAST_CHECKPOINT } from '../station-log.ts';
import { type Finding, good, warning } from './finding.ts';

/** The witnesses that the file names, and the archive that the station has joined: whoever cosigns its log. */
export async function witnessFindings({
  folder,
  witnesses = [],
}: LoadedStation): Promise<readonly Finding[]> {
  const archive = existsSync(linkPath(folder)) ? [(await archiveLink(folder)).vkeys] : [];
  return [
    ...cosignedFindings(
      folder,
      witnesses.map(({ keys }) => keys),
      { name: w`witnesses`, next: w`See why, and send what is missing: plugmark log witness` },
    ),
    ...cosignedFindings(folder, archive, {
      name: w`archive`,
      next: w`See why, and ship what is missing: plugmark archive ship`,
    }),
  ];
}

function cosignedFindings(
  folder: string,
  all: readonly (readonly string[])[],
  { name, next }: { readonly name: string; readonly next: string },
): readonly Finding[] {
  const signed = checkpointIn(join(folder, LAST_CHECKPOINT));
  if (all.length === 0 || signed === null) return [];
  const cosigned = checkpointIn(join(folder, COSIGNED_CHECKPOINT));
  const names = new Set(cosigned?.signatures.map((signature) => signature.name));
  const who = all.filter((keys) => keys.some((text) => names.has(readVerifierKey(text)?.name ?? '')));
  if (cosigned === null || who.length === 0)
    return [warning(name, w`none of ${all.length} has cosigned this log yet`, next)];
  const text = w`${who.length} of ${all.length} cosigned the first ${cosigned.size} of ${signed.size} entries that are signed`;
  return who.length === all.length && cosigned.size === signed.size
    ? [good(name, text)]
    : [warning(name, text, next)];
}

function checkpointIn(path: string): SignedCheckpoint | null {
  if (!existsSync(path)) return null;
  const read = readCheckpoint(readFileSync(path), path);
  return read.ok ? read.value : null;
}
