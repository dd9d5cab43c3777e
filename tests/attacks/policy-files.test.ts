/**
 * Policies that say something else than their reader thinks, and a station that is its own witness. A policy is the reader's
 * own file; the keys in it come from others.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { verify } from '../../src/cli/evidence/verify.ts';
import { originOf, readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { type CosigningKey, cosignatureLine } from '../../src/evidence/cosignature.ts';
import { keyBytes, publicJwk } from '../../src/evidence/jwk.ts';
import { verifierKey } from '../../src/evidence/note.ts';
import { sign } from '../../src/evidence/platform/signature.ts';
import { parsePolicy } from '../../src/evidence/policy.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { readVerifierKey, witnessVerifierKey } from '../../src/evidence/verifier-key.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { folder } from '../cli/program.ts';
import { recordOf } from '../evidence/forge.ts';
import {
  AT,
  keyOfSeed,
  kidOf,
  logOf,
  seal,
  station,
  stationEvents,
  stranger,
  technician,
  trusting,
  wholeJob,
} from '../evidence/sample-job.ts';
import { witnessKeys } from '../serve/witness-keys.ts';

const [A = '', B = '', C = ''] = ['d1', 'd2', 'd3'].map(
  (seed) => witnessKeys(`${seed}.example`, seed)[0]?.vkey,
);
const faultOf = (text: string) => {
  const read = parsePolicy(Buffer.from(text), 'policy');
  return read.ok ? 'read' : `${read.error.where}: ${read.error.message}`;
};
const policyOf = (text: string) => orThrow(parsePolicy(Buffer.from(text), 'policy'));

describe('a policy that could be read in two ways is refused', () => {
  it.each([
    [
      'groups that hold each other',
      `witness a ${A}\ngroup g any h\ngroup h any g\nquorum g\n`,
      /line 2.*no line before/,
    ],
    ['a group that holds itself', 'group g any g\nquorum g\n', /line 1.*no line before/],
    ['a witness twice', `witness a ${A}\nwitness a ${B}\nquorum a\n`, /line 2.*name is taken/],
    [
      'a group under the name of a witness',
      `witness a ${A}\ngroup a any a\nquorum a\n`,
      /line 2.*name is taken/,
    ],
    [
      'one key under two names',
      `witness a ${A}\nwitness b ${A}\ngroup g 2 a b\nquorum g\n`,
      /line 2.*this key/,
    ],
    ['a member twice', `witness a ${A}\ngroup g 2 a a\nquorum g\n`, /line 2.*in a group already/],
    [
      'a member of two groups',
      `witness a ${A}\ngroup g any a\ngroup h any a\nquorum h\n`,
      /line 3.*in a group already/,
    ],
    ['none of its members', `witness a ${A}\ngroup g 0 a\nquorum g\n`, /line 2.*expected: group/],
    [
      'a number with a nought before it',
      `witness a ${A}\ngroup g 01 a\nquorum g\n`,
      /line 2.*expected: group/,
    ],
    ['more than its members', `witness a ${A}\ngroup g 2 a\nquorum g\n`, /line 2.*expected: group/],
    ['all of no members', 'group g all\nquorum g\n', /line 1.*expected: group/],
    ['a witness called none', `witness none ${A}\nquorum none\n`, /line 1.*name is taken/],
    ['none as a member', `witness a ${A}\ngroup g any none\nquorum g\n`, /line 2.*no line before/],
    ['two quorums', `witness a ${A}\nquorum a\nquorum none\n`, /line 3.*second line/],
    ['no quorum', `witness a ${A}\n`, /quorum.*missing/],
    ['a quorum before its witness', `quorum a\nwitness a ${A}\n`, /line 1.*no line before/],
    ['a quorum in look-alike letters', `witness a ${A}\nquorum \u0430\n`, /line 2.*no line before/],
    ['a carriage return', `witness a ${A}\r\nquorum none\r\n`, /control characters/],
    ['a space that is none', `witness a ${A}\nquorum\u00a0none\n`, /line 2.*expected a line/],
    ['a word in capitals', `witness a ${A}\nQUORUM a\n`, /line 2.*expected a line/],
    [
      'the key of a log as a witness',
      `witness a ${verifierKey('shop.example', publicJwk(station.privateKey))}\nquorum a\n`,
      /line 1.*verifier key for cosignatures/,
    ],
  ])('%s', (_what, text, fault) => expect(faultOf(text)).toMatch(fault));

  it('a name of another case is another name', () => {
    const policy = policyOf(`witness None ${A}\nquorum None\n`);
    expect(policy.isQuorum(new Set())).toBe(false);
    expect(policy.isQuorum(new Set(['None']))).toBe(true);
  });

  it('a group in a group counts once, however many of its members signed', () => {
    const policy = policyOf(
      `witness a ${A}\nwitness b ${B}\nwitness c ${C}\ngroup g any a b\ngroup h 2 g c\nquorum h\n`,
    );
    expect(policy.isQuorum(new Set(['a', 'b']))).toBe(false);
    expect(policy.isQuorum(new Set(['b', 'c']))).toBe(true);
  });
});

describe('a policy beside a trust list', () => {
  const next = { ...stranger, privateKey: keyOfSeed('a2'.repeat(32)) };
  const origin = originOf(kidOf(station));
  const line = (one: typeof station, of = origin) => `log ${verifierKey(of, publicJwk(one.privateKey))}\n`;
  const listed = (one: typeof station, more: object = {}) => ({
    ...publicJwk(one.privateKey),
    kid: kidOf(one),
    ...more,
  });
  /** A log whose first key was lost, so that it could name nobody. */
  const replaced = seal(
    logOf(wholeJob(), 'job:WO-1', [
      ...stationEvents,
      { type: 'key-replaced', key: publicJwk(next.privateKey) },
    ]),
    next,
    technician,
  );
  const old = seal(logOf(wholeJob()));
  const verdictOf = (record: Uint8Array, keys: TrustList['keys'], logs: string) => {
    const policy = policyOf(`${logs}quorum none\n`);
    return verifyRecord(record, { keys }, null, null, null, { policy, note: null }).verdict;
  };

  it('says by which keys a log is signed, whether they are on the list as well or not', () => {
    const both = line(station) + line(next);
    expect(verdictOf(replaced, [], both)).toBe('authentic');
    expect(verdictOf(replaced, [listed(station)], both)).toBe('authentic');
    expect(verdictOf(replaced, [listed(station), listed(next)], both)).toBe('authentic');
  });

  it.each([
    ['names the new key alone', line(next)],
    ['names the old key alone', line(station)],
    ['names the keys for other logs', line(station, 'other.example/log') + line(next, 'other.example/log')],
    [
      'names the old key for this log and the new one for another',
      line(station) + line(next, 'other.example/log'),
    ],
  ])('does not give a station the past of another where it %s', (_what, logs) => {
    expect(verdictOf(replaced, [listed(station), listed(next)], logs)).toBe('untrusted');
  });

  it.each([
    ['was revoked', { revoked: { from: AT, reason: 'compromised' as const } }],
    ['has ended', { validUntil: '2026-01-01T00:00:00.000Z' }],
    ['is that of a technician', { role: 'technician' as const }],
  ])('does not make good a key that %s on the list', (_what, more) => {
    expect(verdictOf(old, [listed(station)], line(station))).toBe('authentic');
    expect(verdictOf(old, [listed(station, more)], line(station))).toBe('untrusted');
  });

  it('does not make good a key that another one on the list took the place of', () => {
    const keys = [listed(station), listed(next, { follows: kidOf(station) })];
    expect(verdictOf(old, keys, line(station) + line(next))).toBe('untrusted');
  });
});

describe('a station that gives out its own key as that of a witness', () => {
  const record = seal(logOf(wholeJob()));
  const note = recordOf(record).log.checkpoint;
  const checkpoint = orThrow(readCheckpoint(note, 'note'));
  const vkey = witnessVerifierKey(
    'insurer.example/witness',
    'ed25519-cosignature',
    keyBytes(publicJwk(station.privateKey)),
  );
  const log = verifierKey(checkpoint.origin, publicJwk(station.privateKey));

  function cosigned(): string {
    const key = readVerifierKey(vkey);
    if (key === null || key.kind === 'log') throw new Error('no key of a witness');
    const own: CosigningKey = { key, sign: (message) => sign(message, station.privateKey) };
    return note + cosignatureLine(checkpoint, own, Math.floor(Date.parse(AT) / 1000));
  }
  function verified(policy: string) {
    const at = folder();
    const file = join(at, 'J.record.json');
    const { size } = checkpoint;
    writeFileSync(file, record);
    writeFileSync(
      `${file}.witnessed`,
      JSON.stringify({
        form: 'plugmark/consistency/1',
        from: size,
        to: size,
        path: [],
        checkpoint: cosigned(),
      }),
    );
    writeFileSync(join(at, 'policy'), policy);
    writeFileSync(join(at, 'trust.json'), JSON.stringify(trusting(station)));
    return said(() => verify(file, { trust: join(at, 'trust.json'), policy: join(at, 'policy') }));
  }

  it('is not its own witness, whatever name the key goes by', async () => {
    const { value, text } = await verified(`witness insurer ${vkey}\nquorum insurer\n`);
    expect(value).toBe(3);
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      'Your policy names insurer as a witness, and its key is one of the station itself: nobody is his own witness.',
    );
  });

  it.each([
    ['before it', `log ${log}\nwitness insurer ${vkey}\nquorum insurer\n`],
    ['behind it', `witness insurer ${vkey}\nlog ${log}\nquorum insurer\n`],
  ])('is refused where the policy has the same key as a log %s', (_what, text) =>
    expect(faultOf(text)).toMatch(/line 2.*nobody is his own witness/),
  );

  it('a checkpoint of a stranger under its origin is none of its log, though a witness cosigned it', async () => {
    const [witness] = witnessKeys('d1.example', 'd1');
    if (witness === undefined) throw new Error('no witness');
    const forged = signCheckpoint(checkpoint, stranger.privateKey);
    const read = orThrow(readCheckpoint(forged, 'forged'));
    const at = folder();
    const file = join(at, 'J.record.json');
    const { size } = checkpoint;
    writeFileSync(file, record);
    writeFileSync(
      `${file}.witnessed`,
      JSON.stringify({
        form: 'plugmark/consistency/1',
        from: size,
        to: size,
        path: [],
        checkpoint: forged + cosignatureLine(read, witness, Math.floor(Date.parse(AT) / 1000)),
      }),
    );
    writeFileSync(join(at, 'policy'), `witness a ${A}\nquorum a\n`);
    writeFileSync(join(at, 'trust.json'), JSON.stringify(trusting(station)));
    const { value, text } = await said(() =>
      verify(file, { trust: join(at, 'trust.json'), policy: join(at, 'policy') }),
    );
    expect(value).toBe(3);
    expect(text.replaceAll(/\s+/g, ' ')).toContain('is not of this log');
  });
});
