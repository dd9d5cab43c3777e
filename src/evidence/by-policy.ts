/** What the reader's policy makes of a record: whether enough witnesses cosigned the log that contains it, and whose log it is. */
import { type Sentence, sentence } from '../words/catalogue.ts';
import { type Check, failed, notLookedAt, passed } from './check.ts';
import { isSignedBy, readCheckpoint, type SignedCheckpoint } from './checkpoint.ts';
import { type PublicJwk, thumbprint } from './jwk.ts';
import type { LaterLog } from './later-log.ts';
import { consistencyHolds } from './merkle.ts';
import { fromBase64, toBase64 } from './platform/bytes.ts';
import type { Policy } from './policy.ts';
import type { TrustList } from './trust.ts';
import { type Witnessed, witnessedBy } from './witnessed.ts';

/** Name of the check. */
export const WITNESSES = 'witnesses';

/** What the reader brings, and the note that came with the record: a later log, with the lines of witnesses. */
export interface ByPolicy {
  readonly policy: Policy;
  readonly note: LaterLog | null;
}

/** `before`: when enough witnesses had seen it (ISO); null where none had to, or not enough did. */
export interface PolicyFinding {
  readonly check: Check;
  readonly before: string | null;
}

/** The trust list with the keys of the policy's logs that have this origin: a key that ended on the list has ended. */
export function withLogsOf(list: TrustList, policy: Policy | null, origin: string): TrustList {
  const named = (policy?.logs ?? [])
    .filter(({ name }) => name === origin)
    .map(({ jwk, name }) => ({
      ...jwk,
      kid: thumbprint(jwk),
      name: name.slice(0, 80),
      role: 'station' as const,
      ofLog: origin,
    }));
  const listed = list.keys.map((key) =>
    named.some(({ kid }) => kid === key.kid) ? { ...key, ofLog: origin } : key,
  );
  return { keys: [...listed, ...named.filter(({ kid }) => !list.keys.some((key) => key.kid === kid))] };
}

/** Keys by which a checkpoint of this log counts: those of the policy, or where it names no log, those that the reader knows. */
export const logKeys = (
  { logs }: Policy,
  origin: string,
  known: readonly PublicJwk[],
): readonly PublicJwk[] =>
  logs.length === 0 ? known : logs.filter(({ name }) => name === origin).map(({ jwk }) => jwk);

/** Of a record: `own` is the checkpoint inside it. */
export function witnessesOf(
  own: SignedCheckpoint,
  { policy, note }: ByPolicy,
  known: readonly PublicJwk[],
  readAt: string | null,
): PolicyFinding {
  const keys = logKeys(policy, own.origin, known);
  if (keys.length === 0) return none(sentence`Your policy does not name this log, ${own.origin}.`);
  const inside = isSignedBy(own, keys) ? policyFinding(policy, own, known, readAt) : null;
  if (note === null || (inside !== null && inside.check.outcome !== 'failed'))
    return inside ?? none(sentence`No key of this log that your policy names signed the checkpoint inside.`);
  const read = readCheckpoint(note.checkpoint, 'note');
  if (!read.ok) return none(sentence`The note of the witnesses that came with it is no checkpoint.`);
  const later = read.value;
  if (later.origin !== own.origin || !isSignedBy(later, keys))
    return none(sentence`The note of the witnesses that came with it is not of this log.`);
  if (later.size === own.size && toBase64(later.root) !== toBase64(own.root))
    return { check: twoHistories(own.size), before: null };
  const path = note.path.map(fromBase64).filter((hash) => hash !== null);
  if (!consistencyHolds(own, later, path))
    return none(
      sentence`The note of the witnesses that came with it does not show that they saw the log of this record.`,
    );
  return policyFinding(policy, later, known, readAt);
}

/** Of a checkpoint whose log is the right one; `known` are the keys that the station had. */
export function policyFinding(
  policy: Policy,
  checkpoint: SignedCheckpoint,
  known: readonly PublicJwk[],
  readAt: string | null,
): PolicyFinding {
  const own = policy.witnesses.find(({ key }) => 'jwk' in key && known.some(({ x }) => x === key.jwk.x));
  if (own !== undefined)
    return none(
      sentence`Your policy names ${own.name} as a witness, and its key is one of the station itself: nobody is his own witness.`,
    );
  const found = witnessedBy(policy, checkpoint, readAt);
  if (found === null)
    return none(
      sentence`A cosignature of a witness that your policy names does not hold: the note was changed.`,
    );
  if (!found.enough) return none(sentence`${countText(found)}, and your policy asks for more.`);
  if (found.since === null)
    return {
      check: notLookedAt(WITNESSES, sentence`Your policy asks for no witness.`),
      before: null,
    };
  const detail = sentence`${countText(found)}: nobody can rewrite the first ${checkpoint.size} entries of the log without them.`;
  return { check: passed(WITNESSES, detail), before: found.since };
}

function countText({ by, of, since }: Witnessed): Sentence {
  const names = by.map(({ witness }) => witness).join(', ');
  const on = since ?? by.at(-1)?.at;
  return on === undefined
    ? sentence`Cosigned by 0 of ${of}`
    : sentence`Cosigned by ${by.length} of ${of} on ${on} (${names})`;
}

const none = (detail: Sentence): PolicyFinding => ({ check: failed(WITNESSES, detail), before: null });

const twoHistories = (size: number) =>
  failed(
    'one history',
    sentence`TWO HISTORIES: the station signed two different logs of ${size} entries, and witnesses saw the other one.`,
  );
