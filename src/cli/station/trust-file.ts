/** The trust list in a station's folder, for those who verify its records. */
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { StationState } from '../../evidence/station.ts';
import { parseTrustList, type TrustList } from '../../evidence/trust.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
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
        message: 'the trust list cannot be read',
        next: 'Check the path and the rights on it.',
      },
      { cause },
    );
  }
  return orThrow(parseTrustList(bytes, file));
}

/**
 * The keys of the station as a trust list: what the log says of each, and every other key that the list had before. A
 * revocation stays, though a log that was restored may not know of it.
 */
export async function writeTrust(file: string, state: StationState, before: TrustList): Promise<void> {
  const common = { use: 'sig', alg: 'Ed25519' };
  const revoked = (kid: string) => {
    const found = state.revoked.get(kid) ?? before.keys.find((key) => key.kid === kid)?.revoked;
    return found === undefined ? {} : { revoked: { from: found.from, reason: found.reason } };
  };
  const keys = state.keys.map(({ kid, jwk, since }, i) => {
    const next = state.keys[i + 1];
    const until = next === undefined ? {} : { validUntil: next.since };
    const before = state.keys[i - 1];
    return {
      ...jwk,
      kid,
      ...common,
      name: state.name,
      role: 'station',
      validFrom: since,
      ...until,
      ...(before === undefined ? {} : { follows: before.kid }),
      ...revoked(kid),
    };
  });
  const others = before.keys.filter(({ kid }) => keys.every((key) => key.kid !== kid));
  await writeFile(`${file}.part`, `${JSON.stringify({ keys: [...keys, ...others] }, null, 2)}\n`);
  await rename(`${file}.part`, file);
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
