/**
 * What a mirror does with what a station ships (c2sp.org/tlog-mirror, add-checkpoint and add-entries): it takes a checkpoint
 * only if it goes on from the last one that it took, takes entries only if they hash into it, and cosigns it once all of
 * them are kept. Pure: a decision is an answer and what has to be on disk before it is given.
 */
import { type AddCheckpoint, answerTo } from '../evidence/witness.ts';
import { ENTRIES_A_BUNDLE, entriesText, isBundleOf, leavesOf, type Shipment } from './bundle.ts';
import type { KeptBundle, KeptLog, SignedNote, Writes } from './kept-log.ts';
import { disclosesItsOwn, type ForgottenPlace, forgottenBy } from './texts.ts';

export type MirrorAnswer =
  /** The checkpoint was taken; entries from `next` on are missing. */
  | { readonly status: 202; readonly next: number }
  /** All is kept: the checkpoint with the archive's cosignatures. */
  | { readonly status: 200; readonly note: string }
  /** The station does not go on from where the archive is. */
  | { readonly status: 409; readonly size: number }
  | { readonly status: 400 | 403 | 422 | 423; readonly why: string };

/** The lines that go under a note whose entries are all kept. */
export type Cosign = (note: string) => string;

export interface Decision {
  readonly answer: MirrorAnswer;
  readonly writes: Writes | null;
}

const refused = (status: 400 | 403 | 422 | 423, why: string): Decision => ({
  answer: { status, why },
  writes: null,
});
const FROZEN = refused(423, 'the archive has two histories of this log and takes nothing more of it');

/** The newest checkpoint that was taken, cosigned or not. */
const newestOf = ({ pending, head }: KeptLog): SignedNote | null => pending ?? head;

/** A checkpoint that a key of the log signed; `note` has the signatures of the log alone. `cosign` is asked where nothing is missing. */
export function takeCheckpoint(
  log: KeptLog,
  request: AddCheckpoint,
  { note, at, cosign }: { note: string; at: string; cosign: Cosign },
): Decision {
  if (log.standing === 'frozen') return FROZEN;
  const newest = newestOf(log);
  const answer = answerTo(request, newest);
  const { checkpoint } = request;
  switch (answer.status) {
    case 200:
      break;
    case 409:
      return { answer, writes: null };
    case 422: {
      const kind = answer.fork ? ('rewritten' as const) : ('not-extending' as const);
      const fault = { kind, kept: newest?.note ?? '', offered: note, at };
      // One size with two roots is proof enough; a proof that does not hold may be a fault of whoever made it.
      const freeze = answer.fork ? { standing: 'frozen' as const } : {};
      return { answer: { status: 422, why: answer.why }, writes: { fault, ...freeze } };
    }
    default:
      return { answer: { status: 400, why: 'the old size is larger than the checkpoint' }, writes: null };
  }
  const { origin, size, root } = checkpoint;
  const taken: SignedNote = { origin, size, root, note };
  if (log.entries < size) return { answer: { status: 202, next: log.entries }, writes: { pending: taken } };
  return whole(taken, cosign);
}

/** Entries for the checkpoint that is pending. Twice the same is taken twice; what does not hash into it, never. */
export function takeEntries(log: KeptLog, { size, bundles }: Shipment, cosign: Cosign): Decision {
  if (log.standing === 'frozen') return FROZEN;
  const { pending, head } = log;
  if (pending === null || pending.size !== size) {
    if (head?.size === size) return { answer: { status: 200, note: head.note }, writes: null };
    return { answer: { status: 409, size: newestOf(log)?.size ?? 0 }, writes: null };
  }
  const kept: KeptBundle[] = [];
  const forgotten: ForgottenPlace[] = [];
  let entries = log.entries;
  for (const bundle of bundles) {
    const first = bundle.number * ENTRIES_A_BUNDLE;
    if (first > entries)
      return { answer: { status: 202, next: entries }, writes: writesOf(kept, forgotten, entries) };
    const hashes = leavesOf(bundle);
    if (!isBundleOf(bundle, hashes, pending))
      return refused(422, `the entries of bundle ${bundle.number} do not lead to the root of the checkpoint`);
    const strange = bundle.entries.findIndex((entry) => !disclosesItsOwn(entry));
    if (strange >= 0)
      return refused(422, `entry ${first + strange + 1} comes with a text that is not its own`);
    // What is there already was proven under a checkpoint that this one goes on from.
    if (first + hashes.length <= entries) continue;
    kept.push({ number: bundle.number, hashes, text: entriesText(bundle.entries) });
    forgotten.push(...bundle.entries.flatMap((entry, at) => forgottenBy(entry, first + at)));
    entries = first + hashes.length;
  }
  if (entries < size)
    return { answer: { status: 202, next: entries }, writes: writesOf(kept, forgotten, entries) };
  const { answer, writes } = whole(pending, cosign);
  return { answer, writes: { ...writes, ...writesOf(kept, forgotten, entries) } };
}

const writesOf = (
  bundles: readonly KeptBundle[],
  forgotten: readonly ForgottenPlace[],
  entries: number,
): Writes | null =>
  bundles.length === 0 ? null : { bundles, entries, ...(forgotten.length > 0 && { forgotten }) };

function whole(taken: SignedNote, cosign: Cosign): Decision {
  const note = taken.note + cosign(taken.note);
  return { answer: { status: 200, note }, writes: { pending: null, head: { ...taken, note } } };
}
