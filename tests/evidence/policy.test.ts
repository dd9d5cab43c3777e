import { describe, expect, it } from 'vitest';
import { type Policy, parsePolicy } from '../../src/evidence/policy.ts';
import { orThrow } from '../../src/result.ts';
import { LOG_VKEY } from '../serve/logs.ts';
import { witnessKeys } from '../serve/witness-keys.ts';

const vkey = (n: number) => witnessKeys(`witness.example/${n}`, (0x10 + n).toString(16))[0]?.vkey ?? '';
const VKEYS = [0, 1, 2, 3, 4, 5].map(vkey);
const read = (text: string | Uint8Array): Policy => orThrow(parsePolicy(Buffer.from(text), 'a.policy'));
const isQuorum = (policy: Policy, ...names: readonly string[]) => policy.isQuorum(new Set(names));

/** The form of the example in tlog-policy. */
const EXAMPLE = `log ${LOG_VKEY}

witness X1 ${VKEYS[0]}
witness X2 ${VKEYS[1]}
witness X3 ${VKEYS[2]} https://witness.example/submit
group X-witnesses 2 X1 X2 X3

\twitness Y1   ${VKEYS[3]}  
witness Y2 ${VKEYS[4]}
witness Y3 ${VKEYS[5]}
  # whoever runs these is somebody else
group Y-witnesses any Y1 Y2 Y3

group X-and-Y all X-witnesses Y-witnesses
quorum X-and-Y
`;

describe('the example of tlog-policy', () => {
  const policy = read(EXAMPLE);

  it('names one log and six witnesses', () => {
    expect(policy.logs.map(({ name }) => name)).toEqual(['shop.example/log']);
    expect(policy.witnesses.map(({ name }) => name)).toEqual(['X1', 'X2', 'X3', 'Y1', 'Y2', 'Y3']);
  });

  it.each([
    [['X1', 'X2', 'Y1'], true],
    [['X1', 'X3', 'Y3'], true],
    [['X1', 'X2', 'X3', 'Y1', 'Y2', 'Y3'], true],
    [['X1', 'Y1'], false],
    [['X1', 'X2', 'X3'], false],
    [['Y1', 'Y2', 'Y3'], false],
    [[], false],
  ])('%j are enough: %s', (names, enough) => {
    expect(isQuorum(policy, ...names)).toBe(enough);
  });
});

describe('a quorum', () => {
  it('is one witness', () => {
    const policy = read(`witness w ${VKEYS[0]}\nquorum w\n`);
    expect([isQuorum(policy), isQuorum(policy, 'w')]).toEqual([false, true]);
  });

  it('is none, and a file without its last line feed is read', () => {
    expect(isQuorum(read('quorum none'))).toBe(true);
  });

  it('may come before witnesses that it does not need', () => {
    expect(read(`witness a ${VKEYS[0]}\nquorum a\nwitness b ${VKEYS[1]}\n`).witnesses).toHaveLength(2);
  });

  it('holds at thirty-two groups, one in the other', () => {
    const groups = Array.from({ length: 32 }, (_, i) => `group g${i + 1} all g${i}`);
    const policy = read([`witness w ${VKEYS[0]}`, 'group g0 any w', ...groups, 'quorum g32'].join('\n'));
    expect([isQuorum(policy), isQuorum(policy, 'w')]).toEqual([false, true]);
  });
});

describe('names', () => {
  it('are of any script, and two that look alike are two', () => {
    const policy = read(`witness K ${VKEYS[0]}\nwitness \u212a ${VKEYS[1]}\nquorum \u212a\n`);
    expect([isQuorum(policy, 'K'), isQuorum(policy, '\u212a')]).toEqual([false, true]);
  });

  it('a comment may be in another encoding', () => {
    const comment = Buffer.from([0x23, 0xe9, 0x0a]);
    expect(read(Buffer.concat([comment, Buffer.from('quorum none\n')])).logs).toEqual([]);
  });
});

describe('a log', () => {
  it('by a key for another kind of signature is read, and is never one of ours', () => {
    const mlDsa = witnessKeys('other.example/log', '77')[1]?.vkey ?? '';
    expect(read(`log ${mlDsa}\nlog ${LOG_VKEY}\nquorum none\n`).logs.map(({ name }) => name)).toEqual([
      'shop.example/log',
    ]);
  });
});

describe('what is refused, with its line', () => {
  const W = `witness w ${VKEYS[0]}\n`;
  const other = witnessKeys('another.name', '10')[0]?.vkey ?? '';
  it.each([
    ['nothing', '', 'a.policy'],
    ['no quorum', W, 'a.policy'],
    ['two quorums', `${W}quorum w\nquorum w\n`, 'a.policy: line 3'],
    ['a quorum that nothing defines', `${W}quorum v\n`, 'a.policy: line 2'],
    ['a quorum that is defined later', `quorum w\n${W}`, 'a.policy: line 1'],
    ['a member that is defined later', `group g any w\n${W}quorum g\n`, 'a.policy: line 1'],
    ['none as a member', 'group g any none\nquorum g\n', 'a.policy: line 1'],
    ['none as a name', `witness none ${VKEYS[0]}\nquorum none\n`, 'a.policy: line 1'],
    ['a member in two groups', `${W}group g any w\ngroup h any w\nquorum h\n`, 'a.policy: line 3'],
    ['a member twice in one', `${W}group g 2 w w\nquorum g\n`, 'a.policy: line 2'],
    ['a group in itself', `${W}group g any w g\nquorum g\n`, 'a.policy: line 2'],
    ['more than there are', `${W}group g 2 w\nquorum g\n`, 'a.policy: line 2'],
    ['none of them', `${W}group g 0 w\nquorum g\n`, 'a.policy: line 2'],
    ['a number with a zero in front', `${W}group g 01 w\nquorum g\n`, 'a.policy: line 2'],
    ['an empty group', `${W}group g any\nquorum g\n`, 'a.policy: line 2'],
    ['a name for two', `${W}witness w ${VKEYS[1]}\nquorum w\n`, 'a.policy: line 2'],
    ['a key for two', `${W}witness v ${VKEYS[0]}\nquorum w\n`, 'a.policy: line 2'],
    ['a key for two under two names of its own', `${W}witness v ${other}\nquorum w\n`, 'a.policy: line 2'],
    ['a log twice', `log ${LOG_VKEY}\nlog ${LOG_VKEY}\nquorum none\n`, 'a.policy: line 2'],
    ['a log by the key of a witness', `log ${VKEYS[0]}\nquorum none\n`, 'a.policy: line 1'],
    ['a witness by the key of a log', `witness w ${LOG_VKEY}\nquorum none\n`, 'a.policy: line 1'],
    [
      'a key whose ID is another',
      `witness w ${VKEYS[0]?.replace(/\+.{8}\+/, '+00000000+')}\nquorum w\n`,
      'a.policy: line 1',
    ],
    ['a word that is none', `${W}quorom w\n`, 'a.policy: line 2'],
    [
      'a word behind the address',
      `witness w ${VKEYS[0]} https://a.example b\nquorum w\n`,
      'a.policy: line 1',
    ],
    ['a carriage return', `${W}quorum w\r\n`, 'a.policy'],
    ['a byte order mark', '\ufeffquorum none\n', 'a.policy: line 1'],
  ])('%s', (_what, text, where) => {
    const policy = parsePolicy(Buffer.from(text), 'a.policy');
    expect(policy).toMatchObject({ ok: false, error: { code: 'policy-form', where } });
  });
});
