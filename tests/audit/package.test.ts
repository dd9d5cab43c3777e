import { generateKeyPairSync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { indexBytes, indexSigner, type PackageIndex, readIndex, signIndex } from '../../src/audit/package.ts';
import {
  checkFiles,
  checkKept,
  checkLog,
  extendsFrom,
  type PackageLog,
  stationIn,
} from '../../src/audit/package-check.ts';
import { toBase64url } from '../../src/evidence/base64url.ts';
import { canonicalBytes } from '../../src/evidence/canonical.ts';
import {
  originOf,
  readCheckpoint,
  type SignedCheckpoint,
  signCheckpoint,
} from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { signatureOf } from '../../src/evidence/jws.ts';
import type { StationEntry } from '../../src/evidence/log.ts';
import { consistencyProof, setProof, treeOf, treeRoot } from '../../src/evidence/merkle.ts';

const newPair = () => {
  const { privateKey } = generateKeyPairSync('ed25519');
  const jwk = publicJwk(privateKey);
  return { privateKey, jwk, kid: thumbprint(jwk) };
};
const key = newPair();
const stranger = newPair();

const FILE = { path: 'jobs.csv', bytes: 3, sha256: 'a'.repeat(64) };
const INDEX: Omit<PackageIndex, 'form'> = {
  program: 'plugmark test',
  station: 'Example bay',
  at: '2026-11-25T12:00:00.000Z',
  purpose: 'Audit',
  asked: {},
  leftOut: [],
  files: [FILE],
};

describe('the index of a package', () => {
  const bytes = indexBytes(INDEX);

  it('is signed by a key that anybody can see, over exactly these bytes', () => {
    const signature = signIndex(bytes, key.privateKey);
    expect(indexSigner(bytes, signature)).toEqual(key.jwk);
    expect(indexSigner(Buffer.concat([bytes, Buffer.of(0x20)]), signature)).toBeNull();
    expect(indexSigner(indexBytes({ ...INDEX, station: 'Other bay' }), signature)).toBeNull();
  });

  it('is not taken for signed by one key under the name of another', () => {
    const { jwk } = stranger;
    const header = { alg: 'EdDSA', typ: 'plugmark-package+json', kid: key.kid, jwk };
    const head = toBase64url(canonicalBytes(header));
    const forged = `${head}..${signatureOf(head, toBase64url(bytes), stranger.privateKey)}\n`;
    expect(indexSigner(bytes, forged)).toBeNull();
  });

  it.each(['', '..', 'a.b.c', `${'x'.repeat(50)}..y`])('is not signed by %j', (text) => {
    expect(indexSigner(bytes, text)).toBeNull();
  });

  it('is read only in its one canonical writing', () => {
    expect(readIndex(bytes)).toMatchObject({ ok: true });
    expect(readIndex(Buffer.from(JSON.stringify(JSON.parse(bytes.toString()), null, 2))).ok).toBe(false);
  });

  it.each(['../key.pem', '/etc/passwd', 'records/../../x', 'a/b/c', '.hidden', 'a\\b', ''])(
    'names no file like %j, which could lead out of the folder',
    (path) => {
      const index = { form: 'plugmark/package/1', ...INDEX, files: [{ ...FILE, path }] };
      expect(readIndex(canonicalBytes(index)).ok).toBe(false);
    },
  );
});

describe('the files of a package', () => {
  const index: PackageIndex = { form: 'plugmark/package/1', ...INDEX };

  it('are all there as they were, and no other', () => {
    expect(checkFiles(index, [FILE]).outcome).toBe('passed');
    expect(checkFiles(index, []).detail).toBe('jobs.csv is missing.');
    expect(checkFiles(index, [{ ...FILE, sha256: 'b'.repeat(64) }]).detail).toBe('jobs.csv was changed.');
    expect(checkFiles(index, [{ ...FILE, bytes: 4 }]).detail).toBe('jobs.csv was changed.');
    expect(checkFiles(index, [FILE, { ...FILE, path: 'x' }]).detail).toBe('x was added.');
  });

  it('are named up to five when many are wrong', () => {
    const added = Array.from({ length: 9 }, (_, i) => ({ ...FILE, path: `x${i}` }));
    expect(checkFiles(index, [FILE, ...added]).detail).toBe(
      'x0 was added; x1 was added; x2 was added; x3 was added; x4 was added; and 4 more.',
    );
  });
});

describe('the log of a package', () => {
  const setUp: StationEntry = {
    v: 1,
    seq: 1,
    n: 1,
    stream: 'station',
    at: '2026-01-01T08:00:00.000Z',
    monoUs: 0,
    by: 'station',
    event: { type: 'station-set-up', station: 'Example bay', key: key.jwk },
  };
  const leaves = [entryHash(setUp), ...Array.from({ length: 8 }, (_, i) => Buffer.alloc(32, i + 1))];
  const tree = treeOf(leaves);
  const origin = originOf(key.kid);
  const noteAt = (size: number, signer = key, of = tree): SignedCheckpoint => {
    const read = readCheckpoint(
      signCheckpoint({ origin, size, root: treeRoot(of, size) }, signer.privateKey),
      'test',
    );
    if (!read.ok) throw new Error(read.error.message);
    return read.value;
  };
  const base64 = (hash: Uint8Array) => Buffer.from(hash).toString('base64');
  const log: PackageLog = {
    checkpoint: noteAt(9),
    proofs: {
      consistency: [{ from: 5, path: consistencyProof(tree, 5, 9).map(base64) }],
      station: setProof(tree, [0], 9).map(base64),
    },
    entries: [setUp],
    station: stationIn([setUp]),
  };

  it('is the one that the station signed, and holds the entries of the station', () => {
    expect(checkLog(log).outcome).toBe('passed');
    expect(checkLog({ ...log, checkpoint: noteAt(9, stranger) }).detail).toContain('not signed by a key');
    expect(checkLog({ ...log, checkpoint: { ...noteAt(9), origin: 'plugmark/log/x' } }).detail).toContain(
      'another log',
    );
    const other = { ...setUp, by: 'another' };
    expect(checkLog({ ...log, entries: [other] }).detail).toContain('do not stand in the log');
    expect(checkLog({ ...log, station: 'it cannot be played back' }).outcome).toBe('failed');
  });

  it('begins with what an older checkpoint stands for, if the station signed that one too', () => {
    expect(extendsFrom(noteAt(5), log)).toBe(true);
    expect(extendsFrom(noteAt(5, stranger), log)).toBe(false);
    expect(extendsFrom(noteAt(9), log)).toBe(true);
    expect(extendsFrom(noteAt(4), log)).toBe(false);
    const rewritten = treeOf([...leaves.slice(0, 3), Buffer.alloc(32, 99), ...leaves.slice(4)]);
    expect(extendsFrom(noteAt(5, key, rewritten), log)).toBe(false);
    expect(extendsFrom(noteAt(9, key, rewritten), log)).toBe(false);
  });

  it("says what it proves about the reader's own checkpoint", () => {
    const rewritten = treeOf([...leaves.slice(0, 3), Buffer.alloc(32, 99), ...leaves.slice(4)]);
    expect(checkKept(null, null, log).outcome).toBe('not-applicable');
    expect(checkKept(noteAt(5), null, log)).toMatchObject({ outcome: 'passed' });
    expect(checkKept(noteAt(5), null, log).detail).toContain('compare it with the one that you kept');
    expect(checkKept(noteAt(5), noteAt(5), log).detail).toContain('that you kept');
    expect(checkKept(noteAt(5), noteAt(5, key, rewritten), log).detail).toContain('DIVERGED');
    expect(checkKept(noteAt(5), noteAt(4), log).detail).toContain('proves nothing from your checkpoint of 4');
  });
});
