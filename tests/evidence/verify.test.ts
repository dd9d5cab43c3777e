import { describe, expect, it } from 'vitest';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { countersignRecord } from '../../src/evidence/record.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { OPEN_EDITION } from '../../src/job/rules.ts';
import { VERIFICATION } from '../../src/report/verification.ts';
import { judged, jwsOf, loggedAnew, recordOf, rejected, signedAnew, withContent } from './forge.ts';
import {
  AT,
  kidOf,
  logOf,
  seal,
  station,
  stationEvents,
  stranger,
  technician,
  trusting,
  wholeJob,
} from './sample-job.ts';

const trust = trusting(station);
const log = logOf(wholeJob());
const bytes = seal(log);
const record = recordOf(bytes);
const signerOf = (file: Uint8Array, list = trust) =>
  verifyRecord(file, list).checks.find(({ name }) => name === 'signer')?.detail;

describe('a record as the station made it', () => {
  it('is authentic, and the report says what was looked at, in order', () => {
    const report = verifyRecord(bytes, trust);
    expect(report.verdict).toBe('authentic');
    expect(VERIFICATION[report.verdict].exit).toBe(0);
    expect(report.checks.map(({ name, outcome }) => `${name} ${outcome}`)).toEqual([
      'signatures passed',
      'signer passed',
      'log passed',
      'contents passed',
      'completeness passed',
      'order of work passed',
      'judged again passed',
      'clock passed',
    ]);
    expect(report.signatures.map(({ signer }) => signer?.role)).toEqual(['station', 'technician']);
    expect(report.record).toEqual(record);
  });

  it('states per cylinder the figures that stand', () => {
    expect(record.summary.cylinders).toMatchObject([
      { cylinder: 1, gap: { state: 'done', attempts: 1, judgement: { value: 0.75 } } },
      { cylinder: 2, torque: { state: 'done', judgement: { result: 'OK' } } },
    ]);
  });

  it('writes out the uncertainty budgets that its windows rest on', () => {
    const opened = record.entries[0]?.event;
    if (opened?.type !== 'job-opened') throw new Error('the sample begins with its opening');
    expect(record.budgets.map(({ tool, at, expanded }) => [tool, at, expanded])).toEqual([
      ['wrench', opened.torqueWindow.lowerLimit, opened.torqueWindow.expandedAtLower],
      ['wrench', opened.torqueWindow.upperLimit, opened.torqueWindow.expandedAtUpper],
      ['gauge', opened.gapWindow?.lowerLimit, opened.gapWindow?.expandedAtLower],
      ['gauge', opened.gapWindow?.upperLimit, opened.gapWindow?.expandedAtUpper],
    ]);
    for (const { rows, standard } of record.budgets)
      expect(Math.hypot(...rows.map(({ contribution }) => contribution))).toBeCloseTo(standard, 12);
  });

  it('is the same bytes every time', () => {
    expect(seal(logOf(wholeJob())).equals(bytes)).toBe(true);
  });

  it('may be countersigned, by a key that nobody lists, without losing anything', () => {
    const countersigned = countersignRecord(bytes, { privateKey: stranger.privateKey, signedAt: AT });
    if (!countersigned.ok) throw new Error('the record cannot be countersigned');
    expect(judged(countersigned.value)).toMatchObject({ verdict: 'authentic', failed: [] });
    expect(jwsOf(countersigned.value).payload).toBe(jwsOf(bytes).payload);
    expect(signerOf(countersigned.value)).toContain('who is not trusted');
    const [ours, theirs] = [...trust.keys, ...trusting(stranger).keys];
    const both = { keys: [ours, { ...theirs, name: 'the foreman', role: 'countersigner' }] } as TrustList;
    expect(signerOf(countersigned.value, both)).toContain('countersigned by the foreman');
  });

  it('says how it stands with the technician’s own signature', () => {
    const without = (events: readonly StationEvent[]) => {
      const file = seal(logOf(wholeJob(), 'job:WO-1', events), station);
      return [judged(file).verdict, recordOf(file).technicianSignature];
    };
    const decided: StationEvent = { type: 'technicians-decided', technicians: 'do-not-sign' };
    const nobody = stationEvents.map((e) => (e.type === 'person-recorded' ? { ...e, key: null } : e));
    expect(without(stationEvents)).toEqual(['authentic', 'not-given']);
    expect(without([...stationEvents, decided])).toEqual(['authentic', 'shop-does-without']);
    expect(without(nobody)).toEqual(['authentic', 'no-key']);
  });
});

describe('whom to trust is the reader’s choice', () => {
  const [key] = trust.keys;
  const listed = (change: Partial<TrustList['keys'][number]>): TrustList => ({
    keys: key === undefined ? [] : [{ ...key, ...change }],
  });
  const from = '2026-03-01T00:00:00Z';

  it.each([
    ['an empty list', { keys: [] }, 'the key is not on the trust list'],
    ['a list with the technician only', trusting(technician), 'the key is not on the trust list'],
    ['a key listed for something else', listed({ role: 'technician' }), 'as technician, not as station'],
    ['a key not yet valid', listed({ validFrom: '2026-03-02T09:30:00.001Z' }), 'trusted from'],
    ['a key no longer valid', listed({ validUntil: '2026-03-02T09:29:59.999Z' }), 'trusted until'],
    ['a key revoked before', listed({ revoked: { from, reason: 'lost' } }), 'revoked from'],
    [
      'a key compromised later, which may have signed under any date',
      listed({ revoked: { from: '2026-04-01T00:00:00Z', reason: 'compromised' } }),
      'only its own word says that it signed before',
    ],
  ])('%s: authentic, but not trusted', (_what, list, why) => {
    expect(judged(bytes, list)).toMatchObject({ verdict: 'untrusted', failed: ['signer'] });
    expect(judged(bytes, list).why).toContain(why);
    expect(VERIFICATION.untrusted.exit).toBe(3);
  });

  it.each(['retired', 'lost', 'compromised'] as const)(
    'believes what a key that is %s signed before, where a trusted time stamp says so',
    (reason) => {
      const list = listed({ revoked: { from: '2026-04-01T00:00:00Z', reason } });
      const time = (before: string | null) => verifyRecord(bytes, list, { before, detail: () => '' }).verdict;
      expect(time('2026-03-02T10:00:00.000Z')).toBe('authentic');
      expect(time('2026-04-02T10:00:00.000Z')).toBe('untrusted');
      expect(time(null)).toBe('rejected');
    },
  );

  it('accepts a key on the very edges of its time', () => {
    const list = listed({ validFrom: AT, validUntil: AT, role: 'station' });
    expect(verifyRecord(bytes, list, { before: AT, detail: () => '' }).verdict).toBe('authentic');
  });

  it('a stranger who takes up the whole content and signs it as a station is caught by its log', () => {
    const forged = signedAnew({ ...record, signers: [{ role: 'station', kid: kidOf(stranger) }] }, stranger);
    expect(judged(forged, trusting(station, stranger)).failed).toEqual(['signatures', 'log']);
  });
});

describe('a station that changed its key', () => {
  const said = { log: `plugmark/log/${kidOf(station)}`, next: publicJwk(stranger.privateKey), at: AT };
  const rotated = (statement: string): StationEvent[] => [
    ...stationEvents,
    { type: 'key-rotated', key: said.next, statement },
  ];
  const file = (statement: string) => seal(logOf(wholeJob(), 'job:WO-1', rotated(statement)), stranger);
  const honest = stateSuccession(said, station.privateKey);

  it('is believed by whoever trusts the old key, because the old one named the new one', () => {
    expect(judged(file(honest)).verdict).toBe('authentic');
    expect(signerOf(file(honest))).toContain('whose earlier key named this one');
  });

  it.each([
    ['a statement by the new key itself', stateSuccession(said, stranger.privateKey)],
    ['a statement for another log', stateSuccession({ ...said, log: 'plugmark/log/x' }, station.privateKey)],
    [
      'a statement about another key',
      stateSuccession({ ...said, next: publicJwk(technician.privateKey) }, station.privateKey),
    ],
    ['a statement with a bit turned', `${honest.slice(0, -10)}A${honest.slice(-9)}`],
    ['no statement', 'x'],
  ])('%s earns no trust', (_what, statement) => {
    expect(judged(file(statement)).verdict).toBe('untrusted');
  });

  it('is not believed through an old key that was revoked', () => {
    const [key] = trust.keys;
    const revoked = { from: '2027-01-01T00:00:00Z', reason: 'lost' as const };
    const list = { keys: key === undefined ? [] : [{ ...key, revoked }] };
    expect(judged(file(honest), list).verdict).toBe('untrusted');
  });

  it('signs with the new key only', () => {
    const old = seal(logOf(wholeJob(), 'job:WO-1', rotated(honest)), station);
    expect(judged(old).why).toContain('does not name');
  });

  it('signs nothing with a key that its log revoked', () => {
    const revoked: StationEvent = {
      type: 'key-revoked',
      kid: kidOf(station),
      from: AT,
      reason: 'lost',
      because: 'the disk broke',
    };
    const late = seal(logOf(wholeJob(), 'job:WO-1', [...stationEvents, revoked]), station);
    expect(judged(late)).toMatchObject(rejected('signatures'));
    expect(judged(late).why).toContain('revoked');
  });
});

it('says when the wall clock was set back, and does not call it forgery', () => {
  const entries = log.entries.map((entry) =>
    entry.n > 5 ? { ...entry, at: '2026-03-02T08:00:00.000Z' } : entry,
  );
  const report = verifyRecord(seal({ ...log, entries }), trust);
  expect(report.verdict).toBe('authentic');
  expect(report.checks.find(({ name }) => name === 'clock')?.detail).toMatch(
    /set before or while the job ran: -\d+ s before entry n=6/,
  );
});

const NEWER = `plugmark/rules/${OPEN_EDITION + 1}`;

it('judged by a newer edition of the rules it is as it was sealed, and is not called judged again', () => {
  const { verdict, checks } = verifyRecord(sealedUnder(NEWER), trust);
  expect(verdict).toBe('other-rules');
  expect(VERIFICATION[verdict].exit).toBe(4);
  expect(checks.filter(({ outcome }) => outcome !== 'passed')).toEqual([
    expect.objectContaining({ name: 'completeness', outcome: 'not-applicable' }),
    expect.objectContaining({ name: 'order of work', outcome: 'not-applicable' }),
    expect.objectContaining({ name: 'judged again', outcome: 'not-applicable' }),
  ]);
});

it.each([`${NEWER} `, 'plugmark/rules/0', 'plugmark/rules/01', 'plugmark/rules/x', 'other/rules/1', ''])(
  'rules that nobody ever had are no way out of being judged again: %j',
  (rules) => {
    expect(judged(sealedUnder(rules))).toMatchObject(rejected('contents', 'judged again'));
  },
);

describe('a file of a newer version of the program', () => {
  const [first, ...rest] = record.entries;
  if (first?.event.type !== 'job-opened') throw new Error('no opening');
  const { event } = first;
  const opened = (rules: string) => ({ ...first, event: { ...event, rules, orderOfWork: 'by bank' } });
  const sealed = (content: Parameters<typeof signedAnew>[0]) => signedAnew(content, station, technician);

  it.each([
    ['an event of a form that this one does not know', { ...record, entries: [opened(NEWER), ...rest] }],
    ['a record of another form', { ...record, form: 'plugmark/record/2' }],
  ])('with %s is not called forged: nothing was looked at', (_what, content) => {
    const { verdict, checks } = verifyRecord(sealed(content), trust);
    expect(verdict).toBe('newer');
    expect(VERIFICATION[verdict].exit).toBe(4);
    expect(checks.every(({ outcome }) => outcome === 'not-applicable')).toBe(true);
  });

  it('is told from one that was changed after it was signed', () => {
    const changed = withContent(bytes, { ...record, form: 'plugmark/record/2' });
    expect(judged(changed).verdict).toBe('rejected');
  });

  it.each([event.rules, 'plugmark/rules/x'])(
    'is told from one that only has something too much: %s',
    (rules) => {
      expect(judged(sealed({ ...record, entries: [opened(rules), ...rest] })).verdict).toBe('rejected');
    },
  );
});

/** The whole job as a station would seal it that names other rules than it judged by. */
function sealedUnder(rules: string): Buffer {
  const named = log.entries.map((entry) =>
    entry.event.type === 'job-opened' ? { ...entry, event: { ...entry.event, rules } } : entry,
  );
  return loggedAnew(record, { ...log, entries: named });
}
