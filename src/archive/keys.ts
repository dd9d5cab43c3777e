/** The keys of a mirrored log: each names exactly one that follows it, by a statement that it signs. */
import type { PublicJwk } from '../evidence/jwk.ts';
import { verifierKey } from '../evidence/note.ts';
import { type Succession, successionBy } from '../evidence/succession.ts';
import { readVerifierKey } from '../evidence/verifier-key.ts';
import type { KeptLog, Writes } from './kept-log.ts';

export type KeyAnswer = 'taken' | 'not-named' | 'named-another' | 'named-earlier';

/** The key of a log by its verifier key; null where it is none of a log. */
export function logKeyOf(vkey: string): PublicJwk | null {
  const key = readVerifierKey(vkey);
  return key?.kind === 'log' ? key.jwk : null;
}

/**
 * The newest key names the next one. An older key that names another than it did has split the log in two: somebody works with
 * a copy of it. Both statements are kept, and the log goes on with the key that was named first: whoever stole an old key
 * cannot stop it. A key that the log had before does not come back.
 */
export function takeKey(
  log: KeptLog,
  statement: string,
  at: string,
): { readonly answer: KeyAnswer; readonly writes: Writes | null } {
  for (const [i, { vkey }] of log.keys.entries()) {
    const stated = statedBy(vkey, log.origin, statement);
    if (stated === null) continue;
    const named = verifierKey(log.origin, stated.next);
    const successor = log.keys[i + 1];
    if (successor === undefined && log.keys.some((key) => key.vkey === named))
      return { answer: 'named-earlier', writes: null };
    if (successor === undefined) return { answer: 'taken', writes: { key: { vkey: named, statement } } };
    if (successor.vkey === named) return { answer: 'taken', writes: null };
    const fault = {
      kind: 'two-successors' as const,
      kept: successor.statement ?? '',
      offered: statement,
      at,
    };
    return { answer: 'named-another', writes: { fault } };
  }
  return { answer: 'not-named', writes: null };
}

function statedBy(vkey: string, origin: string, statement: string): Succession | null {
  const key = logKeyOf(vkey);
  const stated = key === null ? null : successionBy(statement, key);
  return stated?.log === origin ? stated : null;
}
