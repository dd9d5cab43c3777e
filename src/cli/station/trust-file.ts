/** The trust list in a station's folder, for those who verify its records. */

import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { StationState } from '../../evidence/station.ts';
import { parseTrustList, type TrustList } from '../../evidence/trust.ts';
import { prepared, writeNew, writeWhole } from '../../files/output.ts';
import type { Prepared } from '../../files/whole-file.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { stationKeysIn, TRUST_FILE } from './station-log.ts';

/** Reads a trust list; a file that is not there trusts nobody. */
export async function readTrust(file: string): Promise<TrustList> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (cause) {
    if (isMissing(cause)) return { keys: [] };
    throw new ProblemError(
      {
        code: 'trust-list',
        where: file,
        message: w`the trust list cannot be read`,
        next: w`Check the path and the rights on it.`,
      },
      { cause },
    );
  }
  return orThrow(parseTrustList(bytes, file));
}

/** The station's own list as it lies there; one that is empty or damaged is kept beside it, and begins anew. */
export async function ownTrust(
  file: string,
): Promise<{ readonly list: TrustList; readonly lost: string | null }> {
  try {
    return { list: await readTrust(file), lost: null };
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    const bytes = await readFile(file).catch(() => null);
    // It cannot be read at all: nobody knows what is in it.
    if (bytes === null) throw cause;
    if (bytes.length === 0) return { list: { keys: [] }, lost: w`empty` };
    const kept = freeName(`${file}.damaged`);
    writeNew(kept, bytes);
    return { list: { keys: [] }, lost: w`damaged; it is kept as ${kept}` };
  }
}

/**
 * The keys of the station as a trust list: what the log says of each, and every other key that the list had before. A
 * revocation stays, though a log that was restored may not know of it.
 */
function trustText(state: StationState, before: TrustList): string {
  const common = { use: 'sig', alg: 'Ed25519' };
  const revoked = (kid: string) => {
    const found = state.revoked.get(kid) ?? before.keys.find((key) => key.kid === kid)?.revoked;
    return found === undefined ? {} : { revoked: { from: found.from, reason: found.reason } };
  };
  // Without a `validFrom`: a clock that ran ahead when the key was made would make honest records untrusted, and whoever holds a
  // key can state any time.
  const keys = state.keys.map(({ kid, jwk }, i) => {
    const next = state.keys[i + 1];
    const until = next === undefined ? {} : { validUntil: next.since };
    const before = state.keys[i - 1];
    return {
      ...jwk,
      kid,
      ...common,
      name: state.name,
      role: 'station',
      ...until,
      ...(before === undefined ? {} : { follows: before.kid }),
      ...revoked(kid),
    };
  });
  const followed = new Set(state.keys.slice(0, -1).map(({ kid }) => kid));
  const others = before.keys
    .filter(({ kid }) => keys.every((key) => key.kid !== kid))
    // A key of a log that was restored and went on another way: the list names one that follows, as the log does.
    .map(({ follows, ...key }) =>
      follows === undefined || followed.has(follows) ? key : { ...key, follows },
    );
  return `${JSON.stringify({ keys: [...keys, ...others] }, null, 2)}\n`;
}

function freeName(start: string): string {
  let free = start;
  for (let i = 2; existsSync(free); i++) free = `${start}-${i}`;
  return free;
}

/** The list on disk, all but its name: to be had before the log goes on. Whoever reads it may, by the umask of the shop. */
export const preparedTrust = (file: string, state: StationState, before: TrustList): Prepared =>
  prepared(file, trustText(state, before));

/** Writes the list where it does not say what the log says. */
export async function renewTrustFile(file: string, state: StationState, before: TrustList): Promise<void> {
  const text = trustText(state, before);
  const there = await readFile(file, 'utf8').catch(() => null);
  if (there !== text) writeWhole(file, text);
}

/** Thumbprints of the keys in the folder, and of those that its trust list has under the same name. */
export async function ownKeys(folder: string): Promise<readonly string[]> {
  const kids = stationKeysIn(folder);
  const listed = (await readTrust(join(folder, TRUST_FILE)).catch(() => ({ keys: [] }))).keys.filter(
    ({ role }) => role === 'station',
  );
  const names = new Set(listed.flatMap(({ kid, name }) => (kids.includes(kid) ? [name] : [])));
  const same = listed.filter(({ name }) => kids.length === 0 || names.has(name));
  return [...new Set([...kids, ...same.map(({ kid }) => kid)])];
}

const isMissing = (cause: unknown) => cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
