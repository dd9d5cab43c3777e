import { describe, expect, it } from 'vitest';
import { chain, EMPTY_HEAD } from '../../src/evidence/chain.ts';
import type { LogEntry } from '../../src/evidence/log.ts';
import { countersignRecord } from '../../src/evidence/record.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { EXIT_CODES, type ExtraCheck, verifyRecord } from '../../src/evidence/verify.ts';
import { judged, jwsOf, recordOf, rejected, signedAnew } from './forge.ts';
import {
  AT,
  drafts,
  kidOf,
  logOf,
  seal,
  station,
  stranger,
  technician,
  trusting,
  wholeJob,
} from './sample-job.ts';

const trust = trusting(station);
const bytes = seal(logOf(wholeJob()));
const record = recordOf(bytes);

describe('a record as the station made it', () => {
  it('is authentic, and the report says what was looked at, in order', () => {
    const report = verifyRecord(bytes, trust);
    expect(report.verdict).toBe('authentic');
    expect(EXIT_CODES[report.verdict]).toBe(0);
    expect(report.checks.map(({ name, outcome }) => `${name} ${outcome}`)).toEqual([
      'form passed',
      'signatures passed',
      'chain passed',
      'completeness passed',
      'trust passed',
    ]);
    expect(report.signatures.map(({ signer }) => signer?.role)).toEqual(['station', 'technician']);
    expect(report.record).toEqual(record);
  });

  it('states per cylinder the figures that stand', () => {
    expect(record.summary.cylinders).toMatchObject([
      { cylinder: 1, gap: { state: 'done', attempts: 1, judgement: { value: 0.75 } } },
      { cylinder: 2, torque: { state: 'done', attempts: 1, judgement: { value: 27.43, result: 'OK' } } },
    ]);
  });

  it('is the same bytes every time', () => {
    expect(seal(logOf(wholeJob())).equals(bytes)).toBe(true);
  });

  it('may be countersigned, by a key that nobody lists, without losing anything', () => {
    const countersigned = countersignRecord(bytes, { privateKey: stranger.privateKey, signedAt: AT });
    expect(countersigned.ok && judged(countersigned.value)).toMatchObject({
      verdict: 'authentic',
      failed: [],
    });
    expect(countersigned.ok && jwsOf(countersigned.value).payload).toBe(jwsOf(bytes).payload);
  });

  it('is held to further checks that the caller brings', () => {
    const seen: LogEntry[] = [];
    const extra: ExtraCheck = ({ entries }) => {
      seen.push(...entries);
      return { name: 'judged again', outcome: 'failed', detail: 'The samples say otherwise.' };
    };
    const report = verifyRecord(bytes, trust, [extra]);
    expect(report.verdict).toBe('rejected');
    expect(report.checks.at(-2)).toEqual({
      name: 'judged again',
      outcome: 'failed',
      detail: 'The samples say otherwise.',
    });
    expect(seen).toEqual(record.entries);
  });
});

describe('whom to trust is the reader’s choice', () => {
  const [key] = trust.keys;
  const listed = (change: Partial<TrustList['keys'][number]>): TrustList => ({
    keys: key === undefined ? [] : [{ ...key, ...change }],
  });

  it.each([
    ['an empty list', { keys: [] }, 'the key is not on the trust list'],
    ['a list with the technician only', trusting(technician), 'the key is not on the trust list'],
    ['a key listed for something else', listed({ role: 'technician' }), 'as technician, not as station'],
    ['a key not yet valid', listed({ validFrom: '2026-03-02T09:30:00.001Z' }), 'trusted from'],
    ['a key no longer valid', listed({ validUntil: '2026-03-02T09:29:59.999Z' }), 'trusted until'],
  ])('%s: authentic, but not trusted', (_what, list, why) => {
    expect(judged(bytes, list)).toMatchObject({ verdict: 'untrusted', failed: ['trust'] });
    expect(judged(bytes, list).why).toContain(why);
    expect(EXIT_CODES.untrusted).toBe(3);
  });

  it('accepts a key on the very edges of its time', () => {
    expect(judged(bytes, listed({ validFrom: AT, validUntil: AT, role: 'station' })).verdict).toBe(
      'authentic',
    );
  });

  it('a stranger who takes up the whole content and signs it as a station is authentic and not trusted', () => {
    const forged = signedAnew({ ...record, signers: [{ role: 'station', kid: kidOf(stranger) }] }, stranger);
    expect(judged(forged)).toMatchObject({ verdict: 'untrusted', failed: ['trust'] });
  });
});

it('says when the wall clock was set back, and does not call it forgery', () => {
  const [opened, ...rest] = wholeJob();
  if (opened === undefined) throw new Error('no opening in the sample');
  const first = chain(EMPTY_HEAD, 'job:WO-1', 0, drafts([opened]), { at: AT, monoUs: 1 });
  const earlier = { at: '2026-03-02T08:00:00.000Z', monoUs: 2 };
  const later = chain({ seq: 1, hash: first[0]?.hash ?? '' }, 'job:WO-1', 1, drafts(rest), earlier);
  const report = verifyRecord(seal([...first, ...later].map(({ entry }) => entry)), trust);
  expect(report.verdict).toBe('authentic');
  expect(report.checks.find(({ name }) => name === 'chain')?.detail).toContain('set back before entry n=2');
});

it('says that a job was simulated, and cannot be made to say otherwise', () => {
  const simulated = wholeJob().map((event) =>
    event.type === 'session-started' ? { ...event, simulated: true } : event,
  );
  const file = seal(logOf(simulated));
  const { verdict, checks } = verifyRecord(file, trust);
  expect(verdict).toBe('authentic');
  expect(checks.find(({ name }) => name === 'completeness')?.detail).toContain('SIMULATED');
  const content = recordOf(file);
  const denied = { ...content, summary: { ...content.summary, simulated: false } };
  expect(judged(signedAnew(denied, station, technician))).toMatchObject(rejected('completeness'));
});
