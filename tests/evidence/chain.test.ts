import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonicalBytes } from '../../src/evidence/canonical.ts';
import { chain, EMPTY_HEAD, entryHash } from '../../src/evidence/chain.ts';
import { checkLog, checkStream } from '../../src/evidence/check-chain.ts';
import { type LogEntry, NO_ENTRY } from '../../src/evidence/log.ts';
import { AT, drafts, logOf, opening, wholeJob } from './sample-job.ts';

const entries = logOf(wholeJob());
const at = (list: readonly LogEntry[], i: number): LogEntry => {
  const entry = list[i];
  if (entry === undefined) throw new Error(`no entry ${i}`);
  return entry;
};
const without = (i: number) => entries.filter((_entry, j) => j !== i);
const changed = (i: number, change: Partial<LogEntry>) =>
  entries.map((entry, j) => (j === i ? { ...entry, ...change } : entry));
/** Two jobs whose entries stand between one another. */
const interleaved = () => {
  const first = chain(EMPTY_HEAD, 'job:A', 0, drafts([opening('A')]), { at: AT, monoUs: 1 });
  const second = chain({ seq: 1, hash: first[0]?.hash ?? '' }, 'job:B', 0, drafts([opening('B')]), {
    at: AT,
    monoUs: 9,
  });
  const third = chain(
    { seq: 2, hash: second[0]?.hash ?? '' },
    'job:A',
    1,
    drafts([{ type: 'job-closed', complete: false, open: [] }]),
    { at: AT, monoUs: 5 },
  );
  return [...first, ...second, ...third].map(({ entry }) => entry);
};

describe('the chain', () => {
  it('hashes an entry as a leaf of RFC 9162: SHA-256 over a zero byte and the canonical bytes', () => {
    const expected = createHash('sha256')
      .update(Buffer.concat([Buffer.of(0), canonicalBytes(at(entries, 0))]))
      .digest('hex');
    expect(entryHash(at(entries, 0))).toBe(expected);
  });

  it('numbers on from the head, each entry holding the hash of the one before', () => {
    expect(at(entries, 0)).toMatchObject({
      v: 1,
      seq: 1,
      n: 1,
      prev: NO_ENTRY,
      at: AT,
      monoUs: 1000,
      by: 'A. Example',
    });
    expect(at(entries, 1)).toMatchObject({ seq: 2, n: 2, prev: entryHash(at(entries, 0)) });
  });

  it('gives back what its bytes say, so that minus zero does not live on in memory only', () => {
    const [found] = wholeJob().filter((event) => event.type === 'pull-found');
    if (found === undefined) throw new Error('no pull in the sample');
    const [link] = chain(EMPTY_HEAD, 'job:A', 0, drafts([{ ...found, zeroNm: -0 }]), { at: AT, monoUs: 0 });
    expect(link?.entry).toEqual(JSON.parse(link?.body ?? ''));
  });

  it('throws rather than write what the schema would not read again', () => {
    const nameless = [{ by: '', event: opening() }];
    expect(() => chain(EMPTY_HEAD, 'job:A', 0, nameless, { at: AT, monoUs: 0 })).toThrow();
    expect(() => chain(EMPTY_HEAD, 'job:A', 0, drafts([opening()]), { at: 'today', monoUs: 0 })).toThrow();
  });
});

describe('the check of a chain finds the first break', () => {
  it('passes what chain made: a log, and each stream of it', () => {
    expect(checkLog(entries)).toBeNull();
    expect(checkStream(entries)).toBeNull();
    const log = interleaved();
    expect(checkLog(log)).toBeNull();
    expect(checkStream(log.filter(({ stream }) => stream === 'job:A'))).toBeNull();
    expect(checkStream(log.filter(({ stream }) => stream === 'job:B'))).toBeNull();
  });

  it.each([
    ['the first entry missing', without(0), { index: 0, kind: 'n' }],
    ['an entry missing', without(3), { index: 3, kind: 'n' }],
    ['an entry twice', entries.flatMap((e, i) => (i === 2 ? [e, e] : [e])), { index: 3, kind: 'n' }],
    [
      'two entries exchanged',
      [...entries.slice(0, 2), at(entries, 3), at(entries, 2)],
      { index: 2, kind: 'n' },
    ],
    ['an entry of another stream', changed(4, { stream: 'job:B' }), { index: 4, kind: 'stream' }],
    [
      'a hole hidden by new numbers',
      without(3).map((e, i) => ({ ...e, n: i + 1, seq: i + 1 })),
      { index: 3, kind: 'prev' },
    ],
    ['a name changed', changed(2, { by: 'B. Example' }), { index: 3, kind: 'prev' }],
    ['a time changed', changed(2, { at: '2026-03-02T09:30:00.001Z' }), { index: 3, kind: 'prev' }],
    ['seq running back', changed(5, { seq: 2 }), { index: 5, kind: 'seq' }],
    ['the clock of the session running back', changed(5, { monoUs: 999 }), { index: 5, kind: 'clock' }],
    ['a wrong first link', changed(0, { prev: 'f'.repeat(64) }), { index: 0, kind: 'prev' }],
  ])('%s', (_what, list, found) => {
    expect(checkStream(list)).toMatchObject(found);
    expect(checkLog(list)).toMatchObject({ index: found.index });
  });

  it('allows the clock to start anew with a session', () => {
    const session = {
      type: 'session-started',
      session: 1,
      program: 'p',
      platform: 'test',
      simulated: false,
    } as const;
    const first = chain(EMPTY_HEAD, 'job:A', 0, drafts([opening('A')]), { at: AT, monoUs: 500 });
    const next = chain({ seq: 1, hash: first[0]?.hash ?? '' }, 'job:A', 1, drafts([session]), {
      at: AT,
      monoUs: 3,
    });
    expect(checkStream([...first, ...next].map(({ entry }) => entry))).toBeNull();
  });

  it('a whole log must have no hole even between streams', () => {
    const log = interleaved().filter(({ stream }) => stream === 'job:A');
    expect(checkLog(log)).toMatchObject({ index: 1, kind: 'seq' });
  });
});
