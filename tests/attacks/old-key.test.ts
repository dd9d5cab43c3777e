/**
 * Whoever holds a key that is gone: copied from the disk before it was destroyed, or found in an old backup. Names and times
 * in what he signs are his own; only the station's log, or somebody else's clock, can show that a signature is from before.
 */

import { describe, expect, it } from 'vitest';
import { originOf, readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { addSignature } from '../../src/evidence/jws.ts';
import { type LaterLog, parseLaterLog } from '../../src/evidence/later-log.ts';
import { consistencyProof, leafHash, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { toBase64 } from '../../src/evidence/platform/bytes.ts';
import type { PrivateKey } from '../../src/evidence/platform/signature.ts';
import { countersignRecord } from '../../src/evidence/record.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import type { TrustedTime, TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { orThrow } from '../../src/result.ts';
import { fileOf, jwsOf, recordOf } from '../evidence/forge.ts';
import {
  AT,
  keyOfSeed,
  kidOf,
  logOf,
  station as old,
  seal,
  stationEvents,
  stranger as successor,
  technician,
  wholeJob,
} from '../evidence/sample-job.ts';

const thief = { privateKey: keyOfSeed('66'.repeat(32)), role: 'station' as const, signedAt: AT };
const ENDED = '2026-06-01T00:00:00.000Z';
const line = (signer: typeof old, more: object = {}): TrustList['keys'][number] => ({
  ...publicJwk(signer.privateKey),
  kid: kidOf(signer),
  name: 'bay 1',
  role: 'station',
  ...more,
});

/** The list that the station gives away after the change: the old key has an end, and its successor is named. */
const NEWEST: TrustList = {
  keys: [line(old, { validUntil: ENDED }), line(successor, { validFrom: ENDED, follows: kidOf(old) })],
};
/** A reader who put the new line under an old list by hand. */
const BY_HAND: TrustList = { keys: [line(old), line(successor, { follows: kidOf(old) })] };

const namedBy = (by: PrivateKey, next: typeof old): StationEvent => ({
  type: 'key-rotated',
  key: publicJwk(next.privateKey),
  statement: stateSuccession({ log: originOf(kidOf(old)), next: publicJwk(next.privateKey), at: AT }, by),
});

const signerOf = (
  file: Uint8Array,
  list: TrustList,
  time: TrustedTime | null = null,
  later: LaterLog | null = null,
) => {
  const { verdict, checks } = verifyRecord(file, list, time, null, later);
  return { verdict, why: checks.find(({ name }) => name === 'signer')?.detail };
};

describe('a succession that the old key signs once it is gone', () => {
  const forged = seal(
    logOf(wholeJob(), 'job:WO-1', [...stationEvents, namedBy(old.privateKey, thief)]),
    thief,
  );

  it.each([
    ['is not believed by the newest list', NEWEST],
    ['is not believed where the true successor is on the list', BY_HAND],
  ])('%s', (_what, list) => {
    expect(signerOf(forged, list)).toEqual({
      verdict: 'untrusted',
      why: expect.stringContaining('names no key any more'),
    });
  });

  it('is not believed beside a time stamp either: an end is an end', () => {
    expect(signerOf(forged, NEWEST, { before: AT, detail: () => '' }).verdict).toBe('untrusted');
  });
});

describe('a record that the old key signs once it is gone, under an earlier date', () => {
  const log = logOf(wholeJob());
  const record = seal(log);
  const leaves = [...log.station, ...log.entries].map(entryHash);
  const { origin, size } = orThrow(readCheckpoint(recordOf(record).log.checkpoint, 'record'));
  /** What `log prove consistency` writes of a log that goes on from these leaves, signed by this key. */
  const proven = (by: typeof old, from: readonly Uint8Array[] = leaves, of = origin): LaterLog => {
    const tree = treeOf([...from, ...[1, 2, 3].map((i) => leafHash(Buffer.of(i)))]);
    return {
      form: 'plugmark/consistency/1',
      from: size,
      to: tree.size,
      path: consistencyProof(tree, size, tree.size).map(toBase64),
      checkpoint: signCheckpoint(
        { origin: of, size: tree.size, root: treeRoot(tree, tree.size) },
        by.privateKey,
      ),
    };
  };

  it.each([
    ['by the newest list', NEWEST],
    ['where the true successor is on the list', BY_HAND],
    [
      'by a list on which it was revoked as lost',
      { keys: [line(old, { revoked: { from: ENDED, reason: 'lost' } })] },
    ],
    [
      'by a list on which it was retired',
      { keys: [line(old, { revoked: { from: ENDED, reason: 'retired' } })] },
    ],
  ] as const)('is not believed %s', (_what, list) => {
    expect(signerOf(record, list as TrustList)).toEqual({
      verdict: 'untrusted',
      why: expect.stringContaining('only its own word says that it signed before'),
    });
  });

  it('an honest one is believed where a later log, signed by the key of now, contains it', () => {
    const { verdict, why } = signerOf(record, NEWEST, null, proven(successor));
    expect(verdict).toBe('authentic');
    expect(why).toContain('a later log of the station contains this');
  });

  it('and where a time stamp is from before the end', () => {
    expect(signerOf(record, NEWEST, { before: ENDED, detail: () => '' }).verdict).toBe('authentic');
    expect(signerOf(record, NEWEST, { before: '2026-06-01T00:00:00.001Z', detail: () => '' }).verdict).toBe(
      'untrusted',
    );
  });

  it.each([
    ['that the old key signed itself', proven(old)],
    ['that a stranger signed', proven(thief)],
    [
      'of a log that has other entries',
      proven(
        successor,
        leaves.map((leaf, i) => (i === 3 ? leafHash(Buffer.of(9)) : leaf)),
      ),
    ],
    ['of another log', proven(successor, leaves, 'plugmark/log/other')],
    ['with a path that leads elsewhere', { ...proven(successor), path: [] }],
    ['with a checkpoint that is none', { ...proven(successor), checkpoint: 'paid in full' }],
  ])('a proof %s earns it nothing', (_what, later) => {
    expect(signerOf(record, NEWEST, null, later).verdict).toBe('untrusted');
  });

  it('a proof is read as it was written, or not at all', () => {
    const read = (content: object) => parseLaterLog(Buffer.from(JSON.stringify(content)), 'a.proof');
    expect(read(proven(successor))).toEqual({ ok: true, value: proven(successor) });
    expect(read({ ...proven(successor), from: -1 })).toMatchObject({
      ok: false,
      error: { code: 'proof-form' },
    });
  });
});

it('a key whose end is still ahead has not ended', () => {
  const record = seal(logOf(wholeJob()));
  const list = { keys: [line(old, { validUntil: ENDED })] };
  expect(verifyRecord(record, list, null, '2026-05-31T23:59:59.999Z').verdict).toBe('authentic');
  expect(verifyRecord(record, list, null, ENDED).verdict).toBe('untrusted');
});

describe('countersignatures of strangers', () => {
  const record = seal(logOf(wholeJob()));
  const TRUST: TrustList = { keys: [line(old)] };
  const jws = jwsOf(record);
  const [first, second] = jws.signatures;
  const [strangers] = addSignature(
    { ...jws, signatures: [] },
    { ...thief, role: 'countersigner' },
  ).signatures;
  if (first === undefined || second === undefined || strangers === undefined)
    throw new Error('three signatures');
  const verdictOf = (signatures: readonly object[]) => {
    const { verdict, checks } = verifyRecord(fileOf({ ...jws, signatures }), TRUST);
    return { verdict, signatures: checks.find(({ name }) => name === 'signatures')?.outcome };
  };

  it('does not take the place of an announced signature', () => {
    expect(verdictOf([first, strangers]).verdict).toBe('rejected');
    expect(verdictOf([{ ...strangers, header: first.header }, second]).verdict).toBe('rejected');
    expect(verdictOf([first, strangers, second]).verdict).toBe('rejected');
  });

  it.each([
    ['that holds', [strangers], 'passed'],
    ['over something else', [{ ...strangers, signature: second.signature }], 'doubtful'],
    ['with a header that nobody can read', [{ ...strangers, protected: 'e30' }], 'doubtful'],
    ['that is there twice', [strangers, strangers], 'doubtful'],
    [
      'that says it is of a station, and is not',
      [{ ...first, header: undefined, signature: second.signature }].map(
        ({ header: _header, ...one }) => one,
      ),
      'doubtful',
    ],
  ])('one %s does not change the verdict', (_what, added, signatures) => {
    expect(verdictOf([first, second, ...added])).toEqual({ verdict: 'authentic', signatures });
  });

  it('by a key that was compromised is not made good by a time stamp over what was sealed', () => {
    const countersigned = countersignRecord(record, { privateKey: technician.privateKey, signedAt: AT });
    if (!countersigned.ok) throw new Error('not countersigned');
    const list = {
      keys: [
        ...TRUST.keys,
        line(technician, {
          role: 'countersigner',
          name: 'foreman',
          revoked: { from: ENDED, reason: 'compromised' },
        }),
      ],
    };
    const said = (ofWholeFile: boolean) =>
      signerOf(countersigned.value, list, { before: AT, detail: () => '', ofWholeFile }).why;
    expect(said(false)).toContain('who is not trusted');
    expect(said(true)).toContain('countersigned by foreman');
  });
});
