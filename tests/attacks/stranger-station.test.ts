/**
 * Another station that the same reader trusts: it signs what it likes under a key that is on the list, takes the past or the
 * name of the first one for its own, and may have found an old key of it.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import type { Signer } from '../../src/evidence/jws.ts';
import { consistencyProof, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { isNameOfAnother } from '../../src/evidence/names.ts';
import { toBase64 } from '../../src/evidence/platform/bytes.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import { parseTrustList, type TrustList } from '../../src/evidence/trust.ts';
import { checkSigner, stationIn } from '../../src/package/checks.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';
import {
  AT,
  station as first,
  keyOfSeed,
  kidOf,
  logOf,
  STATION,
  seal,
  stationEvents,
  technician,
  wholeJob,
} from '../evidence/sample-job.ts';

const signer = (seed: string) => ({
  privateKey: keyOfSeed(seed.repeat(32)),
  role: 'station' as const,
  signedAt: AT,
});
const stranger = signer('bb');
const successor = signer('a2');
const ENDED = '2026-06-01T00:00:00.000Z';
const line = (one: Signer, name: string, more: object = {}) => ({
  ...publicJwk(one.privateKey),
  kid: kidOf(one),
  name,
  role: 'station' as const,
  ...more,
});
const BOTH: TrustList = { keys: [line(first, STATION), line(stranger, 'Other Motors')] };
/** The first station changed its key. */
const CHANGED: TrustList = {
  keys: [
    line(first, STATION, { validUntil: ENDED }),
    line(successor, STATION, { follows: kidOf(first) }),
    line(stranger, 'Other Motors'),
  ],
};

const replacedBy = (one: Signer): StationEvent => ({ type: 'key-replaced', key: publicJwk(one.privateKey) });
const namedBy = (old: Signer, next: Signer): StationEvent => ({
  type: 'key-rotated',
  key: publicJwk(next.privateKey),
  statement: stateSuccession(
    { log: originOf(kidOf(first)), next: publicJwk(next.privateKey), at: AT },
    old.privateKey,
  ),
});
const sealedBy = (one: Signer, ...more: readonly StationEvent[]) =>
  seal(logOf(wholeJob(), 'job:WO-1', [...stationEvents, ...more]), one, technician);
/** A log of its own, in which it calls itself so. */
const called = (name: string) =>
  seal(
    logOf(
      wholeJob(),
      'job:WO-1',
      stationEvents.map((event) =>
        event.type === 'station-set-up'
          ? { ...event, station: name, key: publicJwk(stranger.privateKey) }
          : event,
      ),
    ),
    stranger,
    technician,
  );

async function verified(list: TrustList, files: Readonly<Record<string, Uint8Array | string>>, target = '') {
  const at = folder();
  const records = join(at, 'given');
  mkdirSync(records);
  for (const [name, content] of Object.entries(files)) writeFileSync(join(records, name), content);
  writeFileSync(join(at, 'trust.json'), JSON.stringify(list));
  const { value, text } = await said(() => verify(join(records, target), { trust: join(at, 'trust.json') }));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
}
const RECORD = 'J.record.json';
const shop = auditStation();

describe('a station that says the key of another signed for it before', () => {
  it('is not believed: that key does not name it, and neither does the list', async () => {
    const { value, text } = await verified(
      BOTH,
      { [RECORD]: sealedBy(stranger, replacedBy(stranger)) },
      RECORD,
    );
    expect(value).toBe(3);
    expect(text).toContain(`its log says that ${kidOf(first)} signed for it before`);
    expect(text).toContain(`which your list has as a key of ${STATION}`);
  });

  it('does not make two histories of what the other signed', async () => {
    const files = {
      'a.record.json': sealedBy(first),
      'b.record.json': sealedBy(stranger, replacedBy(stranger)),
    };
    const { value, text } = await verified(BOTH, files);
    expect(value).toBe(3);
    expect(text).not.toContain('TWO HISTORIES');
    expect(text).toContain('1 authentic, 1 not trusted');
  });

  it('is not believed with a statement by an old key that it found, where the list has the true successor', async () => {
    const { value } = await verified(
      CHANGED,
      { [RECORD]: sealedBy(stranger, namedBy(first, stranger)) },
      RECORD,
    );
    expect(value).toBe(3);
  });

  it('is not believed over two steps, the first of them true', async () => {
    const forged = sealedBy(stranger, namedBy(first, successor), replacedBy(stranger));
    expect((await verified(CHANGED, { [RECORD]: forged }, RECORD)).value).toBe(3);
  });

  it('is not believed as the maker of a package either', () => {
    const entries = logOf([], 'job:WO-1', [...stationEvents, replacedBy(stranger)]).station;
    const index = {
      form: 'plugmark/package/1' as const,
      program: 'plugmark 0.1.0',
      station: STATION,
      at: AT,
      purpose: 'audit' as const,
      asked: {},
      leftOut: [],
      jobs: [],
      files: [],
    };
    const check = checkSigner(kidOf(stranger), index, stationIn(entries), BOTH);
    expect(check.outcome).toBe('failed');
    expect(check.detail).toContain('signed for it before');
  });

  it('is believed where it is true: by the list, and by the statement of the key before', async () => {
    const byList = sealedBy(successor, replacedBy(successor));
    expect((await verified(CHANGED, { [RECORD]: byList }, RECORD)).value).toBe(0);
    const byHand: TrustList = { keys: [line(first, STATION), line(successor, STATION)] };
    const byStatement = sealedBy(successor, namedBy(first, successor));
    expect((await verified(byHand, { [RECORD]: byStatement }, RECORD)).value).toBe(0);
  });
});

describe('an old key of one station in the hands of another', () => {
  const log = logOf(wholeJob());
  const leaves = [...log.station, ...log.entries].sort((a, b) => a.seq - b.seq).map(entryHash);
  const later = treeOf([...leaves, ...leaves.slice(0, 2)]);
  const proofBy = (one: Signer) =>
    JSON.stringify({
      form: 'plugmark/consistency/1',
      from: leaves.length,
      to: later.size,
      path: consistencyProof(later, leaves.length, later.size).map(toBase64),
      checkpoint: signCheckpoint(
        { origin: originOf(kidOf(first)), size: later.size, root: treeRoot(later, later.size) },
        one.privateKey,
      ),
    });
  const withProof = (one: Signer) =>
    verified(CHANGED, { [RECORD]: seal(log), [`${RECORD}.proof`]: proofBy(one) }, RECORD);

  it('does not date a record back by a later log that the other station signed under the same origin', async () => {
    const { value, text } = await withProof(stranger);
    expect(value).toBe(3);
    expect(text).toContain('only its own word says that it signed before');
  });

  it('the later log of its own successor does', async () =>
    expect((await withProof(successor)).value).toBe(0));
});

describe('a station that calls itself what another is called', () => {
  it.each([
    ['the same', STATION],
    ['a zero-width space in it', 'bay\u200b 1'],
    ['a soft hyphen in it', 'b\u00aday 1'],
    ['a Cyrillic letter in it', 'b\u0430y 1'],
    ['a wide letter in it', '\uff42ay 1'],
    ['a filler of Hangul behind it', 'bay 1\u3164'],
    ['a character of tags behind it', 'bay 1\u{e0041}'],
    ['other letters and more space', 'BAY  1'],
  ])('is told from it in the first line: %s', async (_what, name) => {
    const { text } = await verified(BOTH, { [RECORD]: called(name) }, RECORD);
    expect(text.split(' job WO-1,')[0]).toContain(
      'THE NAME OF ANOTHER STATION: your list has the name that this station calls itself for another key. Signed by the station Other Motors',
    );
  });

  it('is named as the list names it, with what it calls itself beside', async () => {
    const { value, text } = await verified(BOTH, { [RECORD]: called('Third Motors') }, RECORD);
    expect(value).toBe(0);
    expect(text).toContain('Signed by the station Other Motors (which calls itself "Third Motors")');
  });

  it('turns no line of the terminal round', async () => {
    const { text } = await verified(BOTH, { [RECORD]: called('\u202e1 yab\u2066') }, RECORD);
    expect(text).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
  });

  it('is told from it in a package as well', async () => {
    const out = join(shop.data, 'audit');
    await said(() => makePackage({ ...shop.scope(), out }));
    const own = orThrow(parseTrustList(readFileSync(join(shop.data, 'trusted-keys.json')), 'own'));
    const [key] = own.keys;
    const file = join(shop.data, 'readers.json');
    const list = {
      keys: [...own.keys.map((one) => ({ ...one, name: 'Other Motors' })), line(first, key?.name ?? '')],
    };
    writeFileSync(file, JSON.stringify(list));
    const { text } = await said(() => verify(out, { trust: file }));
    expect(text.replaceAll(/\s+/g, ' ')).toContain('THE NAME OF ANOTHER STATION');
  });

  it('a key that the one on the list named has the same name, and nobody doubts it', async () => {
    const only: TrustList = { keys: [line(first, STATION)] };
    const { value, text } = await verified(
      only,
      { [RECORD]: sealedBy(successor, namedBy(first, successor)) },
      RECORD,
    );
    expect(value).toBe(0);
    expect(text).toContain('Signed by the station bay 1, whose earlier key named this one');
    expect(text).not.toContain('ANOTHER STATION');
  });

  it('nobody is told from himself, and a key of a technician has no station’s name', () => {
    expect(isNameOfAnother('bay 1', 'Bay 1', BOTH)).toBe(false);
    const people: TrustList = { keys: [{ ...line(first, 'bay 1'), role: 'technician' }] };
    expect(isNameOfAnother('bay 1', 'Other Motors', people)).toBe(false);
  });
});

describe('a list on which keys follow each other round', () => {
  it.each([
    ['one itself', [line(first, STATION, { follows: kidOf(first) })]],
    [
      'two each other',
      [
        line(first, STATION, { follows: kidOf(successor) }),
        line(successor, STATION, { follows: kidOf(first) }),
      ],
    ],
  ])('believes none of them, and ends: %s', async (_what, keys) => {
    expect((await verified({ keys }, { [RECORD]: sealedBy(first) }, RECORD)).value).toBe(3);
  });
});
