/**
 * Which keys are of one station: each named by the one before it, by the reader's own list (`follows`) or by its statement.
 * A station may write any key of another into its log as one that it had before.
 */
import { type PublicJwk, thumbprint } from './jwk.ts';
import type { KeyOfStation, StationState } from './station.ts';
import { type Succession, successionBy } from './succession.ts';
import { endOf, type TrustedKey, type TrustList } from './trust.ts';

/** The keys that took the place of this one, one after the other, as the list has it. */
export function heirsOf({ keys }: TrustList, kid: string): ReadonlySet<string> {
  const heirs = new Set<string>();
  let next = keys.find(({ follows }) => follows === kid);
  // Somebody may have written a list that goes round.
  while (next !== undefined && !heirs.has(next.kid)) {
    heirs.add(next.kid);
    const { kid: last } = next;
    next = keys.find(({ follows }) => follows === last);
  }
  return heirs;
}

/**
 * A key on the reader's list that this station states to have had before, though nothing but the station's own word says so:
 * neither the list nor that key names the one that took its place. Null where there is none.
 */
export function foreignKeyBefore(
  { keys, origin }: StationState,
  kid: string,
  list: TrustList,
): TrustedKey | null {
  const at = keys.findIndex((key) => key.kid === kid);
  for (const [i, before] of keys.slice(0, Math.max(at, 0)).entries()) {
    const listed = list.keys.find((one) => one.kid === before.kid);
    if (listed === undefined || isByPolicy(list, [before.kid, kid], origin)) continue;
    const line = keys.slice(i, at + 1);
    if (!line.every((key, n) => n === 0 || isNamed(line[n - 1], key, list, origin))) return listed;
  }
  return null;
}

/** A policy that names both as keys of this log says so for the reader. */
const isByPolicy = ({ keys }: TrustList, kids: readonly string[], origin: string): boolean =>
  kids.every((kid) => keys.some((key) => key.kid === kid && key.ofLog === origin));

function isNamed(old: KeyOfStation | undefined, key: KeyOfStation, list: TrustList, origin: string): boolean {
  if (old === undefined) return false;
  const heir = list.keys.find(({ follows }) => follows === old.kid);
  // What the list says weighs more than a statement by a key that is gone.
  if (heir !== undefined) return heir.kid === key.kid;
  return endOf(list, old.kid) === null && statementBy(old.jwk, key, origin) !== null;
}

/** What the old key stated, if it was that this one takes its place in this log. */
export function statementBy(
  old: PublicJwk,
  { kid, statement }: KeyOfStation,
  origin: string,
): Succession | null {
  const stated = statement === null ? null : successionBy(statement, old);
  return stated !== null && stated.log === origin && thumbprint(stated.next) === kid ? stated : null;
}
