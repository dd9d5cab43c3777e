import { generateKeyPairSync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
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
import { consistencyProof, setProof, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import {
  checkFiles,
  checkKept,
  checkLog,
  extendsFrom,
  type PackageLog,
  stationIn,
} from '../../src/package/checks.ts';
import {
  indexBytes,
  indexSigner,
  PACKAGE_FORM,
  type PackageIndex,
  readIndex,
  signIndex,
} from '../../src/package/format.ts';
import { lastWithoutGap } from '../../src/package/station-entries.ts';
import { stationEntry } from '../evidence/entries.ts';

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
  purpose: 'audit',
  asked: {},
  leftOut: [],
  jobs: [],
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
    const header = { alg: 'Ed25519', typ: 'plugmark-package+json', kid: key.kid, jwk };
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
      const index = { form: PACKAGE_FORM, ...INDEX, files: [{ ...FILE, path }] };
      expect(readIndex(canonicalBytes(index)).ok).toBe(false);
    },
  );

  const RECORD = { ...FILE, path: 'records/J-1.record.json' };
  const JOB = { job: 'J-1', record: RECORD.path, paper: null, impacts: [] };
  it.each<[string, Partial<PackageIndex>, string]>([
    ['the same file twice', { files: [FILE, FILE] }, 'jobs.csv stands twice in the list of files'],
    ['itself', { files: [{ ...FILE, path: 'index.json' }] }, 'index.json stands in the list of files'],
    ['a record of no job', { files: [RECORD] }, 'no job names the file records/J-1.record.json'],
    ['a job without its file', { jobs: [JOB] }, 'job J-1 names records/J-1.record.json, which is not in'],
    [
      'one record for two jobs',
      { files: [RECORD], jobs: [JOB, { ...JOB, job: 'J-2' }] },
      'two jobs name the file records/J-1.record.json',
    ],
    [
      'a record as its own paper',
      { files: [RECORD], jobs: [{ ...JOB, paper: RECORD.path }] },
      'two jobs name the file',
    ],
  ])('is refused where it names %s', (_, changed, message) => {
    const read = readIndex(indexBytes({ ...INDEX, ...changed }));
    expect(read).toMatchObject({ ok: false, error: { code: 'package-form' } });
    expect(read.ok ? '' : read.error.message).toContain(message);
  });

  it.each(['a\nb', 'records/a\u0000b', 'records/ü.json'])('names no file like %j', (path) => {
    const read = readIndex(canonicalBytes({ form: PACKAGE_FORM, ...INDEX, files: [{ ...FILE, path }] }));
    expect(read).toMatchObject({ ok: false, error: { where: 'index.json: files[0].path' } });
  });
});

describe('the files of a package', () => {
  const index: PackageIndex = { form: PACKAGE_FORM, ...INDEX };

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
  const setUp = stationEntry(
    { type: 'station-set-up', station: 'Example bay', key: key.jwk },
    { at: '2026-01-01T08:00:00.000Z' },
  );
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
    expect(checkLog({ ...log, entries: [other] }).detail).toContain('are not in the log');
    expect(checkLog({ ...log, station: () => 'it cannot be played back' }).outcome).toBe('failed');
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

  it.each([
    ['another log', { ...noteAt(5), origin: 'plugmark/log/x' }, 'is of another log, plugmark/log/x'],
    ['a stranger', noteAt(5, stranger), 'not signed by a key that the station ever had'],
  ])('says that the checkpoint is of %s', (_, own, detail) => {
    expect(checkKept(null, own, log)).toMatchObject({ outcome: 'failed' });
    expect(checkKept(null, own, log).detail).toContain(detail);
    expect(checkKept(own, null, log).detail).toContain('The checkpoint in auditor.checkpoint');
  });

  it('says that a log with fewer entries than the checkpoint was cut', () => {
    const longer = treeOf([...leaves, Buffer.alloc(32, 77)]);
    const { outcome, detail } = checkKept(null, noteAt(10, key, longer), log);
    expect(outcome).toBe('failed');
    expect(detail).toContain('stands for 10 entries, and the log of the package has only 9');
    expect(detail).toContain('cut off');
  });

  it('says that a checkpoint of an empty log proves nothing', () => {
    const empty = noteAt(0, key, treeOf([]));
    expect(checkKept(null, empty, log)).toMatchObject({ outcome: 'passed' });
    expect(checkKept(null, empty, log).detail).toContain('it proves nothing');
    expect(checkKept(null, { ...empty, root: Buffer.alloc(32) }, log).outcome).toBe('failed');
  });

  it('says how far the entries of the station are told without a gap', () => {
    const second = { ...setUp, seq: 4, n: 2 };
    expect(lastWithoutGap([setUp, second])?.seq).toBe(4);
    expect(lastWithoutGap([setUp, { ...second, n: 3 }])).toBeNull();
    expect(lastWithoutGap([])).toBeNull();
    expect(checkLog(log).detail).toContain(
      'from the first to entry 1 of 2026-01-01T08:00:00.000Z without a gap',
    );
  });
});
