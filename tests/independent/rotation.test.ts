/** Both verifiers on records of a station that changed its key, and of those who would like to have been it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import type { Signer } from '../../src/evidence/jws.ts';
import { consistencyProof, leafHash, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { toBase64 } from '../../src/evidence/platform/bytes.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import { parseTrustList, type TrustList } from '../../src/evidence/trust.ts';
import {
  AT,
  station as first,
  keyOfSeed,
  kidOf,
  logOf,
  seal,
  stationEvents,
  technician,
  wholeJob,
} from '../evidence/sample-job.ts';
import { alike, both, type Given } from './both.ts';
import { type Content, forged } from './hostile/forged.ts';
import { missingPython } from './python.ts';

const missing = missingPython();
const folder = mkdtempSync(join(tmpdir(), 'plugmark-rotation-'));
afterAll(() => rmSync(folder, { recursive: true }));

const stationKey = (seed: string) => ({
  privateKey: keyOfSeed(seed.repeat(32)),
  role: 'station' as const,
  signedAt: AT,
});
const second = stationKey('a2');
const third = stationKey('a3');
const stranger = stationKey('bb');
const ORIGIN = originOf(kidOf(first));

const named = (old: Signer, next: Signer, log = ORIGIN): StationEvent => ({
  type: 'key-rotated',
  key: publicJwk(next.privateKey),
  statement: stateSuccession({ log, next: publicJwk(next.privateKey), at: AT }, old.privateKey),
});
const replaced = (by: Signer): StationEvent => ({ type: 'key-replaced', key: publicJwk(by.privateKey) });
/** A job that was only opened: whom to believe does not depend on what else is in it. */
const OPENED = wholeJob().slice(0, 2);
const sealedBy = (one: Signer, ...more: readonly StationEvent[]) =>
  seal(logOf(OPENED, 'job:WO-1', [...stationEvents, ...more]), one, technician);

/** The log of the first key, and the log of later, which begins with it. */
const honest = logOf(OPENED);
const leaves = [...honest.station, ...honest.entries].map(entryHash);
const backdated = logOf(OPENED.slice(0, 1));
const proofBy = (one: Signer, { origin = ORIGIN, from = leaves, size = leaves.length } = {}): string => {
  const tree = treeOf([...from, leafHash(Buffer.of(1)), leafHash(Buffer.of(2))]);
  return JSON.stringify({
    form: 'plugmark/consistency/1',
    from: size,
    to: tree.size,
    path: consistencyProof(tree, size, tree.size).map(toBase64),
    checkpoint: signCheckpoint({ origin, size: tree.size, root: treeRoot(tree, tree.size) }, one.privateKey),
  });
};
const otherLeaves = leaves.map((leaf, i) => (i === 2 ? leafHash(Buffer.of(9)) : leaf));

const RECORDS = {
  'by the first key': seal(honest),
  'by the first key, with a proof by the second': { record: seal(honest), proof: proofBy(second) },
  'by the first key, with a proof by the third': { record: seal(honest), proof: proofBy(third) },
  'by the first key, with a proof by itself': { record: seal(honest), proof: proofBy(first) },
  'by the first key, with a proof by a stranger': { record: seal(honest), proof: proofBy(stranger) },
  'by the first key, with a proof of another log': {
    record: seal(honest),
    proof: proofBy(second, { origin: 'plugmark/log/other' }),
  },
  'by the first key, with a proof of other entries': {
    record: seal(honest),
    proof: proofBy(second, { from: otherLeaves }),
  },
  'by the first key, with something that is no proof': { record: seal(honest), proof: '{}' },
  'dated back by the first key': seal(backdated),
  'dated back by the first key, with the proof of the honest log': {
    record: seal(backdated),
    proof: proofBy(second),
  },
  'by the second key, which the first named': sealedBy(second, named(first, second)),
  'by the second key, which replaced a lost one': sealedBy(second, replaced(second)),
  'by the third key, which the second named': sealedBy(third, named(first, second), named(second, third)),
  'by the third key, which the first named as well': sealedBy(third, named(first, third)),
  'by the third key, with the statement of the first behind the second': sealedBy(
    third,
    named(first, second),
    named(first, third),
  ),
  'by a stranger who takes the log for his own': sealedBy(stranger, replaced(stranger)),
  'by a stranger whom the first key named': sealedBy(stranger, named(first, stranger)),
  'by a stranger behind a true step': sealedBy(stranger, named(first, second), replaced(stranger)),
  'by a stranger whom the first key named for another log': sealedBy(
    stranger,
    named(first, stranger, 'plugmark/log/other'),
  ),
} satisfies Readonly<Record<string, Given>>;
type Name = keyof typeof RECORDS;

/** The record as a station would seal it whose last key is the first one again. */
const returned = (record: Uint8Array, event: StationEvent) =>
  forged(
    record,
    (content) => {
      content.background.findLast((entry: Content) => entry.event.type === event.type).event = event;
      content.signers.find((signer: Content) => signer.role === 'station').kid = kidOf(first);
    },
    { signers: [first, technician] },
  );
/** Keys that come back are in no log of ours, whoever is trusted. */
const RETURNED = {
  'the first key, which the second named again': returned(
    RECORDS['by the third key, which the second named'],
    named(second, first),
  ),
  'the first key, which replaced itself': returned(
    RECORDS['by the second key, which replaced a lost one'],
    replaced(first),
  ),
};

const ENDED = '2026-06-01T00:00:00.000Z';
const key = (one: Signer, more: object = {}): TrustList['keys'][number] => ({
  ...publicJwk(one.privateKey),
  kid: kidOf(one),
  role: 'station',
  ...more,
});
const ended = key(first, { validUntil: ENDED });
const successor = key(second, { follows: kidOf(first) });
const HONEST_FIRST: readonly Name[] = [
  'by the first key',
  'by the first key, with a proof by the second',
  'by the first key, with a proof by the third',
  'by the first key, with a proof by itself',
  'by the first key, with a proof by a stranger',
  'by the first key, with a proof of another log',
  'by the first key, with a proof of other entries',
  'by the first key, with something that is no proof',
];
/** What nobody can tell from an honest record as long as the key has not ended. */
const BY_FIRST: readonly Name[] = [
  ...HONEST_FIRST,
  'dated back by the first key',
  'dated back by the first key, with the proof of the honest log',
];
const BY_SECOND: readonly Name[] = [
  'by the second key, which the first named',
  'by the second key, which replaced a lost one',
];

describe.skipIf(missing !== null)(
  `both verifiers on a changed key${missing === null ? '' : `, left out: ${missing}`}`,
  () => {
    it.each<[string, TrustList['keys'], readonly Name[]]>([
      [
        'the first key alone: it names who follows, and who follows names the next',
        [key(first)],
        [
          ...BY_FIRST,
          'by the second key, which the first named',
          'by the third key, which the second named',
          'by the third key, which the first named as well',
          'by a stranger whom the first key named',
        ],
      ],
      [
        'the first key, whose end is far ahead',
        [key(first, { validUntil: '2999-01-01T00:00:00.000Z' })],
        [
          ...BY_FIRST,
          'by the second key, which the first named',
          'by the third key, which the second named',
          'by the third key, which the first named as well',
          'by a stranger whom the first key named',
        ],
      ],
      ['the first key alone, which has ended', [ended], []],
      [
        'the newest list of the station',
        [ended, successor],
        [
          'by the first key, with a proof by the second',
          ...BY_SECOND,
          'by the third key, which the second named',
        ],
      ],
      [
        'the second key put under an old list by hand',
        [key(first), successor],
        [
          'by the first key, with a proof by the second',
          ...BY_SECOND,
          'by the third key, which the second named',
        ],
      ],
      [
        'the newest list and a stranger on it',
        [ended, successor, key(stranger)],
        [
          'by the first key, with a proof by the second',
          ...BY_SECOND,
          'by the third key, which the second named',
        ],
      ],
      [
        'both keys, of which neither follows the other: the first names one that has not ended',
        [key(first), key(second)],
        [
          ...BY_FIRST,
          'by the second key, which the first named',
          'by the third key, which the second named',
          'by the third key, which the first named as well',
          'by a stranger whom the first key named',
        ],
      ],
      [
        'three keys in a line',
        [
          ended,
          key(second, { follows: kidOf(first), validUntil: ENDED }),
          key(third, { follows: kidOf(second) }),
        ],
        [
          'by the first key, with a proof by the third',
          'by the third key, which the second named',
          'by the third key, with the statement of the first behind the second',
        ],
      ],
      [
        'the third key as the one that follows the first',
        [ended, key(second), key(third, { follows: kidOf(first) })],
        ['by the first key, with a proof by the third', 'by the third key, which the first named as well'],
      ],
      [
        'a second key that was lost',
        [ended, key(second, { follows: kidOf(first), revoked: { from: ENDED, reason: 'lost' } })],
        [],
      ],
      [
        'a second key that is no station',
        [ended, key(second, { follows: kidOf(first), role: 'countersigner' })],
        [],
      ],
      [
        'a second key from later on',
        [ended, key(second, { follows: kidOf(first), validFrom: ENDED })],
        ['by the first key, with a proof by the second'],
      ],
      [
        'a second key from less than a millisecond later on, which is cut off',
        [ended, key(second, { follows: kidOf(first), validFrom: '2026-03-02T09:30:00.0009Z' })],
        [
          'by the first key, with a proof by the second',
          ...BY_SECOND,
          'by the third key, which the second named',
        ],
      ],
      [
        'a stranger alone',
        [key(stranger)],
        [
          'by a stranger who takes the log for his own',
          'by a stranger whom the first key named',
          'by a stranger behind a true step',
          'by a stranger whom the first key named for another log',
        ],
      ],
      [
        'a stranger beside the first key',
        [key(first), key(stranger)],
        [
          ...BY_FIRST,
          'by the second key, which the first named',
          'by the third key, which the second named',
          'by the third key, which the first named as well',
          'by a stranger whom the first key named',
        ],
      ],
      ['keys that follow each other round', [key(first, { follows: kidOf(second) }), successor], []],
    ])('%s', (_what, keys, trusted) => {
      const results = both(folder, { ...RECORDS, ...RETURNED }, { keys });
      expect(results.filter((one) => !alike(one))).toEqual([]);
      const believed = results.flatMap(({ what, python }) =>
        'trusted' in python && python.trusted === true ? [what] : [],
      );
      expect(believed).toEqual(Object.keys(RECORDS).filter((what) => trusted.some((one) => one === what)));
      const refused = results.filter(({ python }) => python.verdict !== 'authentic').map(({ what }) => what);
      expect(refused).toEqual(Object.keys(RETURNED));
    });

    it('a list on which two keys follow the same one is read by neither', () => {
      const keys = [ended, successor, key(third, { follows: kidOf(first) })];
      const list = parseTrustList(Buffer.from(JSON.stringify({ keys })), 'list');
      expect(list).toMatchObject({ ok: false, error: { code: 'trust-list' } });
      expect(() => both(folder, { one: RECORDS['by the first key'] }, { keys })).toThrow(
        'two keys that follow the same one',
      );
    });
  },
);
