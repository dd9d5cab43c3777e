import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonicalBytes } from '../../src/evidence/canonical.ts';
import { checkStream } from '../../src/evidence/check-stream.ts';
import { entryHash, written } from '../../src/evidence/entry.ts';
import type { LogEntry } from '../../src/evidence/log.ts';
import { salts } from './entries.ts';
import { AT, drafts, logOf, opening, stationEvents, wholeJob } from './sample-job.ts';

const { entries } = logOf(wholeJob());
const STREAM = 'job:WO-1';
const at = (i: number): LogEntry => {
  const entry = entries[i];
  if (entry === undefined) throw new Error(`no entry ${i}`);
  return entry;
};
const changed = (i: number, change: Partial<LogEntry>) =>
  entries.map((entry, j) => (j === i ? { ...entry, ...change } : entry));

describe('entries', () => {
  it('are hashed as leaves of RFC 9162: SHA-256 over a zero byte and the canonical bytes', () => {
    // Without personal text.
    const { concealed, ...content } = at(2);
    const expected = createHash('sha256')
      .update(Buffer.concat([Buffer.of(0), canonicalBytes(content)]))
      .digest();
    expect(concealed).toEqual([]);
    expect(entryHash(at(2))).toEqual(expected);
  });

  it('are numbered on in the log and in their stream', () => {
    const first = stationEvents.length + 1;
    expect(at(0)).toMatchObject({ v: 1, seq: first, n: 1, stream: STREAM, by: 'technician' });
    expect(at(1)).toMatchObject({ seq: first + 1, n: 2 });
  });

  it('are what their bytes say, so that minus zero does not live on in memory only', () => {
    const found = wholeJob().find((event) => event.type === 'pull-detected');
    if (found === undefined) throw new Error('no pull in the sample');
    const [one] = written(
      { seq: 0, n: 0 },
      STREAM,
      drafts([{ ...found, zeroNm: -0 }]),
      {
        at: AT,
        monoUs: 0,
      },
      salts(),
    );
    expect(one?.entry).toEqual({ ...JSON.parse(one?.body ?? ''), concealed: [] });
  });

  it('throw rather than be written so that the schema would not read them again', () => {
    const make = (by: string, stream: string, time: string) =>
      written({ seq: 0, n: 0 }, stream, [{ by, event: opening() }], { at: time, monoUs: 0 }, salts());
    expect(() => make('', STREAM, AT)).toThrow();
    expect(() => make('A. Example', STREAM, 'today')).toThrow();
    expect(() => make('A. Example', 'station', AT)).toThrow();
    expect(() => make('A. Example', STREAM, AT)).not.toThrow();
  });
});

describe('the check of a stream finds the first break', () => {
  it('passes what was written', () => {
    expect(checkStream(entries, STREAM)).toBeNull();
  });

  it.each([
    ['the first entry missing', entries.slice(1), 0, 'n=2 stands where n=1'],
    ['an entry missing', entries.filter((_, i) => i !== 3), 3, 'n=5 stands where n=4'],
    ['an entry twice', entries.flatMap((e, i) => (i === 2 ? [e, e] : [e])), 3, 'n=3 stands where n=4'],
    ['two entries exchanged', [...entries.slice(0, 2), at(3), at(2)], 2, 'n=4 stands where n=3'],
    ['an entry of another job', changed(4, { stream: 'job:B' }), 4, 'belongs to "job:B"'],
    ['places in the log that run back', changed(5, { seq: 6 }), 5, 'stands after'],
  ])('%s', (_what, list, index, message) => {
    const found = checkStream(list, STREAM);
    expect(found?.index).toBe(index);
    expect(found?.message()).toContain(message);
  });
});
