/**
 * The Merkle tree of RFC 9162, section 2.1 (the same as in RFC 6962): its hashes, its proofs and how to check them. The
 * tree itself lies elsewhere; what is here asks for the hashes of whole subtrees, O(log n) of them for a root or a proof.
 */
import { z } from 'zod';
import { fromBase64, isSame, joined } from './platform/bytes.ts';
import { sha256 } from './platform/hash.ts';

/** Stored hashes. `node(level, index)` is the root of the 2^level leaves from index·2^level on, all of them there. */
export interface Subtrees {
  node(level: number, index: number): Uint8Array;
}

/** A hash as files have it: 32 bytes in the one base64 that they have. */
export const hashSchema = z
  .string()
  .regex(/^[A-Za-z0-9+/]{42}[AEIMQUYcgkosw048]=$/, 'expected 32 bytes in base64');

/** The bytes of hashes that {@link hashSchema} has let pass. */
export const hashesOf = (texts: readonly string[]): readonly Uint8Array[] =>
  texts.map((text) => {
    const hash = fromBase64(text);
    if (hash === null) throw new Error('a hash is 32 bytes in base64');
    return hash;
  });

/** SHA-256(0x00 ‖ leaf) (2.1.1). */
export function leafHash(leaf: Uint8Array): Uint8Array {
  return sha256(joined(LEAF, leaf));
}

/** SHA-256(0x01 ‖ left ‖ right) (2.1.1). */
export function nodeHash(left: Uint8Array, right: Uint8Array): Uint8Array {
  return sha256(joined(NODE, left, right));
}

const LEAF = Uint8Array.of(0x00);
const NODE = Uint8Array.of(0x01);
const EMPTY_ROOT = sha256(new Uint8Array());

/** A whole subtree that came to be, and where it belongs. */
export interface NewNode {
  readonly level: number;
  readonly index: number;
  readonly hash: Uint8Array;
}

/** The subtrees above the leaves that the leaf with this index (from 0) makes whole: on average one a leaf. */
export function completedBy(tree: Subtrees, index: number, leaf: Uint8Array): readonly NewNode[] {
  const made: NewNode[] = [];
  let hash = leaf;
  for (let level = 1, at = index; at % 2 === 1; level++) {
    hash = nodeHash(tree.node(level - 1, at - 1), hash);
    at = (at - 1) / 2;
    made.push({ level, index: at, hash });
  }
  return made;
}

/** The root over the first `size` leaves. */
export function treeRoot(tree: Subtrees, size: number): Uint8Array {
  return size === 0 ? EMPTY_ROOT : rangeHash(tree, 0, size);
}

/** The hash of the leaves [from, to) as RFC 9162 splits them; `from` must be a multiple of the split sizes, as it is in a tree. */
function rangeHash(tree: Subtrees, from: number, to: number): Uint8Array {
  const width = to - from;
  const split = splitOf(width);
  if (split * 2 === width || width === 1) return tree.node(Math.log2(width), from / width);
  return nodeHash(rangeHash(tree, from, from + split), rangeHash(tree, from + split, to));
}

/** The largest power of two below n; 0 for one leaf. */
function splitOf(n: number): number {
  let split = 1;
  while (split * 2 < n) split *= 2;
  return n === 1 ? 0 : split;
}

/** The audit path of the leaf with this index, from the leaf up (2.1.3.1). */
export function inclusionProof(tree: Subtrees, index: number, size: number): Uint8Array[] {
  if (!(index >= 0 && index < size)) throw new RangeError(`no leaf ${index} among ${size}`);
  const path = (from: number, to: number): Uint8Array[] => {
    if (to - from === 1) return [];
    const middle = from + splitOf(to - from);
    return index < middle
      ? [...path(from, middle), rangeHash(tree, middle, to)]
      : [...path(middle, to), rangeHash(tree, from, middle)];
  };
  return path(0, size);
}

/** Whether the path leads from the leaf to the root (2.1.3.2). */
export function inclusionHolds(
  leaf: Uint8Array,
  { index, size, path, root }: { index: number; size: number; path: readonly Uint8Array[]; root: Uint8Array },
): boolean {
  if (!(index >= 0 && index < size) || !areHashes(leaf, root)) return false;
  let [fn, sn] = [index, size - 1];
  let hash = leaf;
  for (const step of path) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      hash = nodeHash(step, hash);
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else {
      hash = nodeHash(hash, step);
    }
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && isSame(hash, root);
}

const areHashes = (...some: readonly Uint8Array[]) =>
  some.every(({ length }) => length === EMPTY_ROOT.length);

const half = (n: number) => Math.floor(n / 2);

/** What proves that the tree of `size` leaves begins with the tree of `oldSize` (2.1.4.1); empty where that says nothing new. */
export function consistencyProof(tree: Subtrees, oldSize: number, size: number): Uint8Array[] {
  if (!(oldSize >= 0 && oldSize <= size)) throw new RangeError(`no ${oldSize} leaves among ${size}`);
  const part = (from: number, to: number, whole: boolean): Uint8Array[] => {
    if (oldSize === to) return whole ? [] : [rangeHash(tree, from, to)];
    const middle = from + splitOf(to - from);
    return oldSize <= middle
      ? [...part(from, middle, whole), rangeHash(tree, middle, to)]
      : [...part(middle, to, false), rangeHash(tree, from, middle)];
  };
  return oldSize === 0 ? [] : part(0, size, true);
}

/** Whether the newer root stands for a tree that begins with the older one (2.1.4.2). */
export function consistencyHolds(
  older: { readonly size: number; readonly root: Uint8Array },
  newer: { readonly size: number; readonly root: Uint8Array },
  path: readonly Uint8Array[],
): boolean {
  if (older.size > newer.size) return false;
  if (older.size === 0 && !isSame(EMPTY_ROOT, older.root)) return false;
  if (older.size === newer.size) return path.length === 0 && isSame(older.root, newer.root);
  if (!areHashes(older.root, newer.root)) return false;
  if (older.size === 0) return path.length === 0;
  // A first tree that is itself a whole subtree is not repeated in the proof.
  const [first, ...rest] = Number.isInteger(Math.log2(older.size)) ? [older.root, ...path] : path;
  if (first === undefined) return false;
  let [fn, sn] = [older.size - 1, newer.size - 1];
  while (fn % 2 === 1) [fn, sn] = [half(fn), half(sn)];
  let fr = first;
  let sr = fr;
  for (const step of rest) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      fr = nodeHash(step, fr);
      sr = nodeHash(step, sr);
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else {
      sr = nodeHash(sr, step);
    }
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && isSame(fr, older.root) && isSame(sr, newer.root);
}

/**
 * One proof for many leaves: the hashes of the largest subtrees that hold none of them, from left to right. `indexes`
 * rise. A job's entries lie in a few runs, so that this is far shorter than a path for each.
 */
export function setProof(tree: Subtrees, indexes: readonly number[], size: number): Uint8Array[] {
  const out: Uint8Array[] = [];
  const visit = (from: number, to: number, first: number, last: number) => {
    if (first === last) out.push(rangeHash(tree, from, to));
    else if (to - from > 1) {
      const middle = from + splitOf(to - from);
      const cut = firstAtOrAfter(indexes, middle, first, last);
      visit(from, middle, first, cut);
      visit(middle, to, cut, last);
    }
  };
  visit(0, size, 0, indexes.length);
  return out;
}

/**
 * The root that leaves and proof of {@link setProof} lead to; null where they do not fit together. `seen` hears of every
 * subtree on the way, the root of the leaves [from, to).
 */
export function rootOfSet(
  leaves: readonly { readonly index: number; readonly hash: Uint8Array }[],
  size: number,
  proof: readonly Uint8Array[],
  seen: (from: number, to: number, hash: Uint8Array) => void = () => {},
): Uint8Array | null {
  const indexes = leaves.map(({ index }) => index);
  if (indexes.some((index, i) => index <= (indexes[i - 1] ?? -1) || index >= size)) return null;
  let used = 0;
  const hashOf = (from: number, to: number, first: number, last: number): Uint8Array | null => {
    if (first === last) return proof[used++] ?? null;
    if (to - from === 1) return leaves[first]?.hash ?? null;
    const middle = from + splitOf(to - from);
    const cut = firstAtOrAfter(indexes, middle, first, last);
    const left = visit(from, middle, first, cut);
    const right = visit(middle, to, cut, last);
    return left === null || right === null ? null : nodeHash(left, right);
  };
  const visit = (from: number, to: number, first: number, last: number): Uint8Array | null => {
    const hash = hashOf(from, to, first, last);
    if (hash !== null) seen(from, to, hash);
    return hash;
  };
  const root = leaves.length === 0 ? null : visit(0, size, 0, leaves.length);
  return root !== null && used === proof.length ? root : null;
}

function firstAtOrAfter(sorted: readonly number[], bound: number, from: number, to: number): number {
  let [low, high] = [from, to];
  while (low < high) {
    const middle = half(low + high);
    if ((sorted[middle] ?? bound) < bound) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The same tree, which is asked once for each of its hashes: where a root and several proofs of one size are made. */
export function askedOnce(tree: Subtrees): Subtrees {
  const levels: Map<number, Uint8Array>[] = [];
  return {
    node: (level, index) => {
      levels[level] ??= new Map();
      const before = levels[level]?.get(index);
      if (before !== undefined) return before;
      const hash = tree.node(level, index);
      levels[level]?.set(index, hash);
      return hash;
    },
  };
}

/** A tree in memory, from the hashes of its leaves. */
export function treeOf(leaves: readonly Uint8Array[]): Subtrees & { readonly size: number } {
  const levels: Uint8Array[][] = [[]];
  const node = (level: number, index: number): Uint8Array => {
    const hash = levels[level]?.[index];
    if (hash === undefined) throw new RangeError(`no subtree ${index} of level ${level}`);
    return hash;
  };
  leaves.forEach((leaf, i) => {
    levels[0]?.push(leaf);
    for (const { level, hash } of completedBy({ node }, i, leaf)) {
      levels[level] ??= [];
      levels[level]?.push(hash);
    }
  });
  return { node, size: leaves.length };
}
