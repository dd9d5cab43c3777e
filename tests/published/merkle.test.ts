/**
 * Sources: transparency-dev/merkle, rfc6962/rfc6962_test.go and cmd/proofgen (leaves, roots and proofs of the RFC 6962
 * reference tree); RFC 9162, 2.1, for what a proof must be. Confirmed: read there by others of this project, computed
 * again here.
 */

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  consistencyHolds,
  consistencyProof,
  inclusionHolds,
  inclusionProof,
  leafHash,
  nodeHash,
  rootOfSet,
  setProof,
  treeOf,
  treeRoot,
} from '../../src/evidence/merkle.ts';
import { isSame, toHex } from '../../src/evidence/platform/bytes.ts';

const LEAVES = [
  '',
  '00',
  '10',
  '2021',
  '3031',
  '40414243',
  '5051525354555657',
  '606162636465666768696a6b6c6d6e6f',
].map((hex) => leafHash(Buffer.from(hex, 'hex')));
const ROOTS = [
  'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
  'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
  '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
  '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
  'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
  '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
];
const hex = (hashes: readonly Uint8Array[]) => hashes.map((hash) => Buffer.from(hash).toString('hex'));
const tree = treeOf(LEAVES);

describe('the reference tree of RFC 6962', () => {
  it.each(ROOTS.map((root, size) => [size, root] as const))('root of %i leaves', (size, root) => {
    expect(toHex(treeRoot(tree, size))).toBe(root);
  });

  it('leaf and node hash', () => {
    expect(toHex(leafHash(Buffer.from('L123456')))).toBe(
      '395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56',
    );
    expect(toHex(nodeHash(Buffer.from('N123'), Buffer.from('N456')))).toBe(
      'aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb',
    );
  });

  it('inclusion proofs', () => {
    expect(hex(inclusionProof(tree, 0, 8))).toEqual([
      '96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7',
      '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e',
      '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4',
    ]);
    expect(hex(inclusionProof(tree, 5, 8))).toEqual([
      'bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b',
      'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0',
      'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
    ]);
    expect(hex(inclusionProof(tree, 2, 3))).toEqual([
      'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
    ]);
  });

  it('consistency proof from 6 to 8', () => {
    expect(hex(consistencyProof(tree, 6, 8))).toEqual([
      '0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a',
      'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0',
      'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
    ]);
  });
});

/** The definition in RFC 9162, 2.1.1, written down as it stands: the oracle for trees of any size. */
function mth(leaves: readonly Uint8Array[]): Uint8Array {
  const [only] = leaves;
  if (only === undefined) return createHash('sha256').digest();
  if (leaves.length === 1) return only;
  const k = 2 ** Math.ceil(Math.log2(leaves.length) - 1);
  return nodeHash(mth(leaves.slice(0, k)), mth(leaves.slice(k)));
}

const SIZES = [...Array(41).keys()];
const many = SIZES.map((i) => leafHash(Buffer.of(i)));
const forest = treeOf(many);
const roots = SIZES.map((size) => treeRoot(forest, size));
const bad = (hashes: readonly Uint8Array[]) => {
  const flipped = hashes.map((_hash, i) =>
    hashes.map((same, j) => (i === j ? Buffer.from(same.map((x, k) => (k === 7 ? x ^ 1 : x))) : same)),
  );
  return [...flipped, hashes.slice(1), hashes.slice(0, -1), [...hashes, leafHash(Buffer.of(99))]].filter(
    (list) => list.length !== hashes.length || list.some((hash, i) => !isSame(hash, hashes[i] ?? hash)),
  );
};

describe('every tree up to 40 leaves', () => {
  it('has the root of the definition', () => {
    for (const size of SIZES) expect(roots[size]).toEqual(mth(many.slice(0, size)));
  });

  it('proves each of its leaves, at its own place and with its own path only', () => {
    for (const size of SIZES)
      for (let index = 0; index < size; index++) {
        const path = inclusionProof(forest, index, size);
        const [leaf, root] = [many[index] ?? Buffer.of(), roots[size] ?? Buffer.of()];
        expect(inclusionHolds(leaf, { index, size, path, root })).toBe(true);
        expect(inclusionHolds(leaf, { index: index + 1, size, path, root })).toBe(false);
        expect(inclusionHolds(many[40] ?? leaf, { index, size, path, root })).toBe(false);
        for (const other of bad(path))
          expect(inclusionHolds(leaf, { index, size, path: other, root })).toBe(false);
      }
  });

  it('proves that it begins with each smaller one, and with nothing else', () => {
    for (const size of SIZES)
      for (let old = 0; old <= size; old++) {
        const path = consistencyProof(forest, old, size);
        const older = { size: old, root: roots[old] ?? Buffer.of() };
        const newer = { size, root: roots[size] ?? Buffer.of() };
        expect(consistencyHolds(older, newer, path)).toBe(true);
        expect(consistencyHolds({ ...older, root: leafHash(Buffer.of(77)) }, newer, path)).toBe(false);
        if (old > 0 && old < size) {
          expect(consistencyHolds(older, { ...newer, root: leafHash(Buffer.of(77)) }, path)).toBe(false);
          expect(consistencyHolds({ ...older, size: old - 1 }, newer, path)).toBe(false);
          for (const other of bad(path)) expect(consistencyHolds(older, newer, other)).toBe(false);
        }
      }
  });
});

describe('one proof for many leaves', () => {
  const sets = fc.tuple(
    fc.integer({ min: 1, max: 40 }),
    fc.uniqueArray(fc.integer({ min: 0, max: 39 }), { minLength: 1, maxLength: 40 }),
  );
  const leavesAt = (indexes: readonly number[]) =>
    indexes.map((index) => ({ index, hash: many[index] ?? Buffer.of() }));

  it('leads any set of leaves to the root, and no other set', () => {
    fc.assert(
      fc.property(sets, ([size, drawn]) => {
        const indexes = drawn.filter((index) => index < size).sort((a, b) => a - b);
        fc.pre(indexes.length > 0);
        const proof = setProof(forest, indexes, size);
        const leaves = leavesAt(indexes);
        expect(rootOfSet(leaves, size, proof)).toEqual(roots[size]);
        for (const other of bad(proof)) expect(rootOfSet(leaves, size, other)).not.toEqual(roots[size]);
        expect(rootOfSet(leaves.slice(1), size, proof)).not.toEqual(roots[size]);
        const moved = leaves.map((leaf) => ({ ...leaf, index: leaf.index + 1 }));
        if (indexes.length < size) expect(rootOfSet(moved, size, proof)).not.toEqual(roots[size]);
      }),
      { numRuns: 300 },
    );
  });

  it('of one leaf holds the hashes of its audit path', () => {
    for (let index = 0; index < 21; index++)
      expect(hex(setProof(forest, [index], 21)).sort()).toEqual(
        hex(inclusionProof(forest, index, 21)).sort(),
      );
  });

  it('takes leaves in rising order only, each once, within the tree', () => {
    const [a, b] = leavesAt([3, 4]);
    if (a === undefined || b === undefined) throw new Error('two leaves are there');
    const proof = setProof(forest, [3, 4], 9);
    expect(rootOfSet([b, a], 9, proof)).toBeNull();
    expect(rootOfSet([a, a, b], 9, proof)).toBeNull();
    expect(rootOfSet([a, { ...b, index: 9 }], 9, proof)).toBeNull();
    expect(rootOfSet([], 9, [])).toBeNull();
  });
});
