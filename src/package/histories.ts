/**
 * Whether records of one log can all be true. A log has one history: one root at a size, one entry at a place, one content of
 * a job. Every proof gives hashes of whole subtrees, so that two histories show even where they share no job.
 */
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { isSame } from '../evidence/platform/bytes.ts';
import { type Sentence, sentence, w } from '../words/catalogue.ts';
import type { Finding } from './finding.ts';
import type { Shown } from './shown.ts';

/** Two files that cannot both be true, and where they part. */
export interface TwoHistories {
  readonly file: string;
  readonly other: string;
  readonly why: Sentence;
}

const HASH_BYTES = 32;
/** The entries below a subtree, as people count them. */
function entriesAt(place: number): Sentence {
  let width = 1;
  while ((place + 1) % (width * 2) === 0) width *= 2;
  const first = place + 1 - width;
  const from = first / 2 + 1;
  return width === 1
    ? sentence`entry ${from} differs`
    : sentence`entries ${from} to ${from + width - 1} differ`;
}

/** Each record that cannot be true together with an earlier one of the same log. */
export function twoHistories(findings: readonly Finding[]): readonly TwoHistories[] {
  const logs = new Map<string, History>();
  return findings.flatMap((finding) => {
    const name = historyOf(finding);
    if (name === null) return [];
    const history = logs.get(name) ?? new History();
    logs.set(name, history);
    const split = history.add(finding);
    return split === null ? [] : [split];
  });
}

/** In words, for a line or a check. */
export const historiesText = ({ file, other, why }: TwoHistories): string =>
  w`TWO HISTORIES of one log: ${other} and ${file} cannot both be true, because ${why()}`;

/**
 * Which records are held against each other: those of a log by its origin, where the reader trusts who signed. Of a signer
 * whom nobody trusts only his own: a stranger could write anything under another's origin.
 */
function historyOf({ verdict, stated }: Finding): string | null {
  if (stated === null || ['rejected', 'unreadable', 'newer'].includes(verdict)) return null;
  const checkpoint = readCheckpoint(stated.checkpoint, 'checkpoint');
  if (!checkpoint.ok) return null;
  return `${checkpoint.value.origin} ${verdict === 'untrusted' ? stated.kid : ''}`;
}

/** What records of one log have shown so far. */
class History {
  readonly #shown: { readonly file: string; readonly hashes: Uint8Array }[] = [];
  /** Where a hash of a subtree is: number of the record, and of the hash in it. */
  readonly #at = new Map<number, readonly [record: number, hash: number]>();
  readonly #roots = new Map<number, { readonly file: string; readonly root: Uint8Array }>();
  readonly #jobs = new Map<string, { readonly file: string; readonly entries: Uint8Array }>();

  add({ file, stated }: Finding): TwoHistories | null {
    if (stated === null) return null;
    const { shown } = stated;
    const split =
      this.#otherJob(file, stated) ??
      this.#otherRoot(file, stated.checkpoint) ??
      this.#otherEntry(file, shown);
    const record = this.#shown.push({ file, hashes: shown.hashes }) - 1;
    for (const [i, place] of shown.places.entries())
      if (!this.#at.has(place)) this.#at.set(place, [record, i]);
    return split;
  }

  #otherJob(file: string, { job, shown }: NonNullable<Finding['stated']>): TwoHistories | null {
    const before = this.#jobs.get(job);
    if (before === undefined || before.entries.length < shown.entries.length)
      this.#jobs.set(job, { file, entries: shown.entries });
    if (before === undefined) return null;
    // A job that went on holds all that it held before.
    const common = Math.min(before.entries.length, shown.entries.length);
    return isSame(before.entries.subarray(0, common), shown.entries.subarray(0, common))
      ? null
      : { file, other: before.file, why: sentence`job ${job} has two contents` };
  }

  #otherRoot(file: string, note: string): TwoHistories | null {
    const checkpoint = readCheckpoint(note, 'checkpoint');
    if (!checkpoint.ok) return null;
    const { size, root } = checkpoint.value;
    const before = this.#roots.get(size);
    if (before === undefined) this.#roots.set(size, { file, root });
    return before === undefined || isSame(before.root, root)
      ? null
      : { file, other: before.file, why: sentence`the log of ${size} entries has two roots` };
  }

  #otherEntry(file: string, { places, hashes }: Shown): TwoHistories | null {
    for (const [i, place] of places.entries()) {
      const [record, hash] = this.#at.get(place) ?? [];
      const before = record === undefined ? undefined : this.#shown[record];
      if (before === undefined || hash === undefined) continue;
      if (!isSame(hashAt(before.hashes, hash), hashAt(hashes, i)))
        return { file, other: before.file, why: entriesAt(place) };
    }
    return null;
  }
}

const hashAt = (hashes: Uint8Array, i: number) => hashes.subarray(i * HASH_BYTES, (i + 1) * HASH_BYTES);
