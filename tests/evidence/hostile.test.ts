/** Files made to mislead a reader or to keep it busy: signed by the station's own key, so that only the form can save us. */
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/evidence/canonical.ts';
import { addSignature, type Jws } from '../../src/evidence/jws.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { tooLong } from '../../src/evidence/record.ts';
import { fileOf, judged, jwsOf, recordOf, signedTextOf } from './forge.ts';
import { logOf, seal, station, technician, wholeJob } from './sample-job.ts';

const bytes = seal(logOf(wholeJob()));
const other = seal(logOf(wholeJob('WO-2'), 'job:WO-2'));
const text = signedTextOf(recordOf(bytes));

/** Whatever text, signed as a record is. */
const signed = (payload: string) =>
  fileOf(
    [station, technician].reduce(addSignature, { payload: toBase64url(payload), signatures: [] } as Jws),
  );

it.each([
  ['its last line feed taken off', bytes.subarray(0, -1)],
  ['another end', Uint8Array.from([...bytes.subarray(0, -1), 0x20])],
])('a record with %s is not authentic, and its end is named', (_, changed) => {
  const { verdict, why } = judged(changed);
  expect(verdict).toBe('rejected');
  expect(why).toMatch(/does not end as a record does|not canonical/);
});

describe('signed content that says two things at once', () => {
  it.each([
    ['a name twice', text.replace('"job":', '"job":"WO-9","job":'), 'stands twice'],
    [
      'a name twice, deep inside',
      text.replace('"torque":"25', '"torque":"1-2 N·m","torque":"25'),
      'stands twice',
    ],
    ['a prototype', text.replace('{', '{"__proto__":{"form":"x"},'), '__proto__'],
    ['a constructor', text.replace('{', '{"constructor":{"prototype":{}},'), 'not canonical'],
    ['a number beyond 2^53', text.replace('"monoUs":1000', '"monoUs":9007199254740993'), 'too large'],
    [
      'a number that rounds',
      text.replace('"resolution":0.01', '"resolution":0.01000000000000000001'),
      'would be read as',
    ],
    ['a number that is none', text.replace('"resolution":0.01', '"resolution":1e999'), 'too large'],
    ['minus zero', text.replace('"openQuestions":0', '"openQuestions":-0'), 'would be read as'],
    ['another writing of a number', text.replace('"resolution":0.01', '"resolution":1e-2'), 'not canonical'],
    ['another writing of a letter', text.replace('"by":"tech', '"by":"\\u0074ech'), 'not canonical'],
    ['half a surrogate pair', text.replace('"by":"tech', '"by":"\\ud800ech'), 'surrogate'],
    ['a byte order mark', `\uFEFF${text}`, 'byte order mark'],
    ['a comment', text.replace('{', '{/* */'), 'expected a name'],
    ['two texts', `${text}{}`, 'follows the end'],
    [
      'deep nesting',
      text.replace('"job":"WO-1"', `"job":${'['.repeat(200)}${']'.repeat(200)}`),
      'deeper than 64',
    ],
  ])('%s: caught and named', (_what, payload, why) => {
    expect(payload).not.toBe(text);
    const { verdict, failed, why: said } = judged(signed(payload));
    expect({ verdict, failed }).toEqual({ verdict: 'rejected', failed: ['signatures'] });
    expect(said).toContain(why);
  });

  it('is taken as the same record where nothing was done to it', () => {
    expect(judged(signed(text)).verdict).toBe('authentic');
  });
});

describe('parts of two honest records', () => {
  const [ours, theirs] = [jwsOf(bytes), jwsOf(other)];
  it.each([
    ['the content of one, the signatures of the other', { ...ours, signatures: theirs.signatures }],
    ['one signature of each', { ...ours, signatures: [ours.signatures[0], theirs.signatures[1]] }],
    ['the signatures of both', { ...ours, signatures: [...ours.signatures, ...theirs.signatures] }],
    ['signatures in another order', { ...ours, signatures: ours.signatures.toReversed() }],
  ])('%s: rejected', (_what, jws) => {
    expect(judged(fileOf(jws))).toMatchObject({ verdict: 'rejected' });
    expect(judged(fileOf(jws)).failed).toContain('signatures');
  });
});

describe('files that would keep a reader busy', () => {
  const MB = 1 << 20;
  it.each([
    ['nesting without end', Buffer.from('['.repeat(2 * MB))],
    ['nesting in the content', Buffer.from(signedLate('{"a":'.repeat(MB)))],
    ['one number of millions of digits', Buffer.from(signedLate('1'.repeat(4 * MB)))],
    [
      'fifty thousand names',
      Buffer.from(signedLate(`{${[...Array(50_000).keys()].map((i) => `"a${i}":1`)}}`)),
    ],
    ['a string of escapes', Buffer.from(signedLate(`"${'\\u0041'.repeat(MB)}"`))],
    ['ten thousand signatures', manySignatures(10_000)],
    ['thirty thousand entries', manyEntries(30_000, 'readings')],
    ['five thousand attempts', manyEntries(5000, 'gap-measured')],
    ['eight million bytes of nothing', Buffer.alloc(8 * MB)],
    ['eight million bytes of half characters', Buffer.alloc(8 * MB, 0xc3)],
  ])('%s: rejected, and done with', (_what, file) => {
    expect(['rejected', 'unreadable']).toContain(judged(file).verdict);
  });

  function signedLate(payload: string): string {
    return `${canonical({ payload: toBase64url(payload), signatures: [] })}\n`;
  }

  function manyEntries(count: number, type: string): Buffer {
    const content = recordOf(bytes);
    const one = content.entries.find(({ event }) => event.type === type);
    return signed(canonical({ ...content, entries: [...content.entries, ...Array(count).fill(one)] }));
  }

  function manySignatures(count: number): Buffer {
    const jws = jwsOf(bytes);
    const [one] = jws.signatures;
    return fileOf({ ...jws, signatures: Array(count).fill(one) });
  }
});

describe('what a station may put into a record', () => {
  const { entries } = recordOf(bytes);
  const times = (count: number, type: string) =>
    Array.from({ length: count }, () => entries.filter(({ event }) => event.type === type)).flat();

  it('is bounded by what a reader will take, and the bound is named before anything is sealed', () => {
    expect(tooLong(entries)).toBeNull();
    expect(tooLong(times(2000, 'pull-detected'))).toBeNull();
    expect(tooLong(times(2001, 'pull-detected'))).toEqual({
      because: 'too-many-attempts',
      count: 4002,
      most: 4000,
    });
    const readings = times(1, 'readings').length;
    expect(tooLong(times(20_000 / readings + 1, 'readings'))).toMatchObject({
      because: 'too-many-entries',
      most: 20_000,
    });
  });
});
