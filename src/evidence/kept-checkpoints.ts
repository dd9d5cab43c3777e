/** What checkpoints that somebody kept say about a log as it is now. */
import { type Checkpoint, isSignedBy, type SignedCheckpoint } from './checkpoint.ts';
import type { PublicJwk } from './jwk.ts';
import { askedOnce, consistencyHolds, consistencyProof, type Subtrees, treeRoot } from './merkle.ts';

/** A log as it is now. */
export interface LogNow {
  readonly origin: string;
  readonly size: number;
  readonly tree: Subtrees;
  /** Keys that sign or signed for the station. */
  readonly keys: readonly PublicJwk[];
}

/**
 * `extends`: the log begins with all that the checkpoint stands for. `other-log`, `not-signed`: the checkpoint says nothing
 * about this log. `cut`: entries from `from` on are gone. `diverged`: something in `from`..`to` was changed, removed or added.
 */
export type Finding =
  | { readonly kind: 'extends'; readonly size: number }
  | { readonly kind: 'other-log' | 'not-signed'; readonly size: number }
  | { readonly kind: 'cut' | 'diverged'; readonly size: number; readonly from: number; readonly to: number };

/**
 * Holds kept checkpoints against the log, the smallest first. A checkpoint stands for a prefix as a whole: where one does
 * not fit, the first difference lies behind the last one that does.
 */
export function heldAgainst(now: LogNow, kept: readonly SignedCheckpoint[]): readonly Finding[] {
  const begins = beginningsOf(now);
  let agreed = 0;
  return [...kept]
    .sort((a, b) => a.size - b.size)
    .map((checkpoint) => {
      const { size } = checkpoint;
      if (checkpoint.origin !== now.origin) return { kind: 'other-log', size };
      if (!isSignedBy(checkpoint, now.keys)) return { kind: 'not-signed', size };
      if (size > now.size) return { kind: 'cut', size, from: now.size + 1, to: size };
      if (!begins(checkpoint)) return { kind: 'diverged', size, from: agreed + 1, to: size };
      agreed = Math.max(agreed, size);
      return { kind: 'extends', size };
    });
}

/** By the proof that an auditor would be given, so that what is said here can be shown. Each hash of the log is read once. */
function beginningsOf({ tree, size }: LogNow): (kept: Checkpoint) => boolean {
  const asked = askedOnce(tree);
  let root: Uint8Array | undefined;
  return ({ size: oldSize, root: oldRoot }) => {
    root ??= treeRoot(asked, size);
    return consistencyHolds(
      { size: oldSize, root: oldRoot },
      { size, root },
      consistencyProof(asked, oldSize, size),
    );
  };
}
