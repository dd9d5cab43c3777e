import { describe, expect, it } from 'vitest';
import type { KeptLog } from '../../src/archive/kept-log.ts';
import { takeKey } from '../../src/archive/keys.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { verifierKey } from '../../src/evidence/note.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import { keyOfSeed } from '../evidence/sample-job.ts';

const AT = '2026-05-04T10:00:00.000Z';
const ORIGIN = 'bay.example/log';
const keys = ['a1', 'b2', 'c3', 'd4'].map((seed) => keyOfSeed(seed.repeat(32)));
const vkey = (n: number) => verifierKey(ORIGIN, publicJwk(keys[n] ?? keyOfSeed('00'.repeat(32))));
const names = (from: number, to: number, log = ORIGIN) =>
  stateSuccession(
    { log, next: publicJwk(keys[to] ?? keyOfSeed('00'.repeat(32))), at: AT },
    keys[from] ?? keyOfSeed('00'.repeat(32)),
  );
/** A log whose key 0 named key 1. */
const log: KeptLog = {
  id: 'log',
  tenant: 'north',
  origin: ORIGIN,
  station: 'Bay 1',
  keys: [
    { vkey: vkey(0), statement: null },
    { vkey: vkey(1), statement: names(0, 1) },
  ],
  standing: 'open',
  entries: 0,
  pending: null,
  head: null,
};

describe('the key of a mirrored log', () => {
  it('is followed by the one that the newest key names', () => {
    const statement = names(1, 2);
    expect(takeKey(log, statement, AT)).toEqual({
      answer: 'taken',
      writes: { key: { vkey: vkey(2), statement } },
    });
  });

  it('is taken twice where the answer was lost', () => {
    expect(takeKey(log, names(0, 1), AT)).toEqual({ answer: 'taken', writes: null });
  });

  it('of before that names another one has split the log: both statements are kept, and the log goes on', () => {
    const offered = names(0, 3);
    expect(takeKey(log, offered, AT)).toEqual({
      answer: 'named-another',
      writes: { fault: { kind: 'two-successors', kept: names(0, 1), offered, at: AT } },
    });
  });

  it.each([
    ['one that the log had before', 0],
    ['the newest itself', 1],
  ])('is not %s: a key that has gone does not come back', (_which, to) => {
    expect(takeKey(log, names(1, to), AT)).toEqual({ answer: 'named-earlier', writes: null });
  });

  it.each([
    ['a stranger', names(2, 3)],
    ['the key of another log', names(1, 2, 'other.example/log')],
    ['nobody', 'a.b.c'],
  ])('is not named by %s', (_who, statement) => {
    expect(takeKey(log, statement, AT)).toEqual({ answer: 'not-named', writes: null });
  });
});
