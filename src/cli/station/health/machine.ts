/** Node and the disk under the station's data. */

import { accessSync, constants, existsSync, statfsSync } from 'node:fs';
import { dirname } from 'node:path';
import { w } from '../../../words/catalogue.ts';
import { isNewEnough, NEEDED_NODE } from '../../needed-node.ts';
import { bad, type Finding, good, warning } from './finding.ts';

const MB = 1e6;
/** A long job with all its samples takes a few megabytes, its papers about as much. Our own figures. */
const LOW_BYTES = 1000 * MB;
const TOO_LOW_BYTES = 100 * MB;

export function nodeFinding(version: string): Finding {
  if (isNewEnough(version)) return good(w`node`, w`Node ${version}`);
  return bad(w`node`, w`Node ${version}; plugmark needs ${NEEDED_NODE} or newer`, w`Install a newer Node.`);
}

/** `folder` need not be there yet. */
export function diskFinding(folder: string): Finding {
  const existing = nearest(folder);
  try {
    accessSync(existing, constants.W_OK);
  } catch {
    return bad(
      w`disk`,
      w`${existing} may not be written to`,
      w`Change its rights, or name another folder under "data".`,
    );
  }
  const { bavail, bsize } = statfsSync(existing);
  return roomFinding(bavail * bsize, existing);
}

export function roomFinding(freeBytes: number, location: string): Finding {
  const text = w`${Math.floor(freeBytes / MB)} MB free at ${location}`;
  if (freeBytes >= LOW_BYTES) return good(w`disk`, text);
  const next = w`Free some space. The log grows with every job.`;
  return freeBytes < TOO_LOW_BYTES ? bad(w`disk`, text, next) : warning(w`disk`, text, next);
}

function nearest(folder: string): string {
  let at = folder;
  while (!existsSync(at) && dirname(at) !== at) at = dirname(at);
  return at;
}
