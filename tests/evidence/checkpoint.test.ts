import { generateKeyPairSync, sign } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSignedBy, originOf, readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { heldAgainst, type LogNow } from '../../src/evidence/kept-checkpoints.ts';
import { leafHash, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { keyId } from '../../src/evidence/note.ts';
import { toBase64 } from '../../src/evidence/platform/bytes.ts';
import { kidOf, station, stranger } from './sample-job.ts';

const jwk = publicJwk(station.privateKey);
const origin = originOf(kidOf(station));
const root = leafHash(Buffer.from('root'));
const note = signCheckpoint({ origin, size: 5, root }, station.privateKey);

function read(text: string) {
  const checkpoint = readCheckpoint(text, 'note');
  if (!checkpoint.ok) throw new Error(checkpoint.error.message);
  return checkpoint.value;
}

describe('a checkpoint', () => {
  it('is a signed note: origin, size, root, an empty line, and a line of the key', () => {
    const [first, size, base64, empty, signature, end] = note.split('\n');
    expect([first, size, base64, empty, end]).toEqual([origin, '5', toBase64(root), '', '']);
    expect(signature?.startsWith(`— ${origin} `)).toBe(true);
    const blob = Buffer.from(signature?.split(' ')[2] ?? '', 'base64');
    expect(blob.subarray(0, 4)).toEqual(keyId(origin, jwk));
    expect(blob.subarray(4)).toEqual(
      sign(null, Buffer.from(`${origin}\n5\n${base64}\n`), station.privateKey),
    );
  });

  it('holds under its own key and no other', () => {
    expect(read(note)).toMatchObject({ origin, size: 5, root });
    expect(isSignedBy(read(note), [jwk])).toBe(true);
    expect(isSignedBy(read(note), [publicJwk(stranger.privateKey)])).toBe(false);
  });

  it('may carry the signature of a witness too', () => {
    const witness = Buffer.concat([Buffer.alloc(4, 9), Buffer.alloc(72, 1)]).toString('base64');
    const both = `${note}— witness.example ${witness}\n`;
    expect(isSignedBy(read(both), [jwk])).toBe(true);
  });

  it('with any bit changed does not read, or does not hold', () => {
    const bytes = Buffer.from(note);
    for (let bit = 0; bit < bytes.length * 8; bit++) {
      const copy = Buffer.from(bytes);
      copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const checkpoint = readCheckpoint(copy.toString('utf8'), 'note');
      if (checkpoint.ok && copy.equals(Buffer.from(copy.toString('utf8'))))
        expect(isSignedBy(checkpoint.value, [jwk])).toBe(false);
    }
  });

  it.each([
    ['nothing', ''],
    ['no signature', note.split('—')[0] ?? ''],
    ['a size with a zero in front', note.replace('\n5\n', '\n05\n')],
    ['a size beyond 2^53', note.replace('\n5\n', '\n9007199254740993\n')],
    ['a negative size', note.replace('\n5\n', '\n-5\n')],
    ['a short root', note.replace(toBase64(root), 'AAAA')],
    ['carriage returns', note.replaceAll('\n', '\r\n')],
    ['a hyphen for the dash', note.replace('—', '-')],
    ['an end that is cut', note.slice(0, -1)],
    ['a hundred thousand signatures', note + `— a AAAAAAAA\n`.repeat(100_000)],
  ])('with %s is refused with what is expected', (_what, text) => {
    expect(readCheckpoint(text, 'note')).toMatchObject({
      ok: false,
      error: { code: 'checkpoint-form', where: 'note' },
    });
  });
});

describe('a kept checkpoint held against a log', () => {
  const leaves = [...Array(30).keys()].map((i) => leafHash(Buffer.of(i)));
  const tree = treeOf(leaves);
  const now = (list = leaves): LogNow => ({ origin, size: list.length, tree: treeOf(list), keys: [jwk] });
  const kept = (size: number, key = station.privateKey, of = origin) =>
    read(signCheckpoint({ origin: of, size, root: treeRoot(tree, size) }, key));
  const forged = (i: number) => leaves.map((leaf, j) => (i === j ? leafHash(Buffer.from('forged')) : leaf));

  it('of the same log, at any size, is extended by it', () => {
    for (const size of [0, 1, 7, 8, 29, 30])
      expect(heldAgainst(now(), [kept(size)])).toEqual([{ kind: 'extends', size }]);
  });

  it('names the entries that were cut off, as by an old copy that was put back', () => {
    expect(heldAgainst(now(leaves.slice(0, 21)), [kept(25)])).toEqual([
      { kind: 'cut', size: 25, from: 22, to: 25 },
    ]);
  });

  it('names where a forked log left the old one, as near as the checkpoints tell', () => {
    const all = [10, 20, 30].map((size) => kept(size));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 29 }), (i) => {
        const found = heldAgainst(now(forged(i)), all);
        const first = found.find(({ kind }) => kind === 'diverged');
        expect(first).toMatchObject({ from: Math.floor(i / 10) * 10 + 1, to: Math.floor(i / 10) * 10 + 10 });
      }),
    );
  });

  it('is not fooled by an old copy that grew on differently', () => {
    const grown = [...leaves.slice(0, 15), ...[...Array(30).keys()].map((i) => leafHash(Buffer.of(200, i)))];
    expect(heldAgainst(now(grown), [kept(12), kept(25)])).toEqual([
      { kind: 'extends', size: 12 },
      { kind: 'diverged', size: 25, from: 13, to: 25 },
    ]);
  });

  it('says where it is of another log, or was never signed by the station', () => {
    expect(heldAgainst(now(), [kept(5, station.privateKey, 'plugmark/log/other')])).toEqual([
      { kind: 'other-log', size: 5 },
    ]);
    const { privateKey } = generateKeyPairSync('ed25519');
    expect(heldAgainst(now(), [kept(5, privateKey)])).toEqual([{ kind: 'not-signed', size: 5 }]);
  });
});
