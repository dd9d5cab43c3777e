/** What happens to a record on the way: bits turn, ends are cut, editors tidy up. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addSignature, type Jws } from '../../src/evidence/jws.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { VERIFICATION } from '../../src/report/verification.ts';
import { fileOf, jwsOf, recordOf, withContent } from './forge.ts';
import { logOf, seal, station, technician, trusting, wholeJob } from './sample-job.ts';

const trust = trusting(station);
const bytes = seal(logOf(wholeJob()));
const exitOf = (file: Uint8Array) => VERIFICATION[verifyRecord(file, trust).verdict].exit;
const text = bytes.toString('utf8');

function flipped(bit: number): Buffer {
  const copy = Buffer.from(bytes);
  copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  return copy;
}

/** `npm run bench -- every-bit` turns all of them; this stride visits each position within a byte equally. */
const STRIDE = 487;

it('no single changed bit goes unseen, wherever it is in the file', () => {
  const accepted: number[] = [];
  for (let bit = 0; bit < bytes.length * 8; bit += STRIDE) {
    const exit = exitOf(flipped(bit));
    if (exit !== 1 && exit !== 2) accepted.push(bit);
  }
  expect(accepted).toEqual([]);
});

it('no single changed bit of the first and last bytes goes unseen', () => {
  const ends = [...Array(160).keys()].flatMap((i) => [i, bytes.length * 8 - 1 - i]);
  expect(ends.filter((bit) => ![1, 2].includes(exitOf(flipped(bit))))).toEqual([]);
});

it('no cut end goes unseen', () => {
  const lengths = [...Array(bytes.length).keys()].filter(
    (length) => length % 997 === 0 || length > bytes.length - 64,
  );
  expect(lengths.filter((length) => ![1, 2].includes(exitOf(bytes.subarray(0, length))))).toEqual([]);
});

describe('a record that is damaged but still to be recognised is rejected (1)', () => {
  it.each([
    ['the newline at the end missing', text.trimEnd()],
    ['a second newline', `${text}\n`],
    ['a carriage return', text.replace('\n', '\r\n')],
    ['a space between two tokens', text.replace(',', ', ')],
    ['written over several lines', JSON.stringify(JSON.parse(text), null, 2)],
    [
      'its members in another order',
      JSON.stringify({ signatures: jwsOf(bytes).signatures, payload: jwsOf(bytes).payload }),
    ],
    ['an escape for a letter', text.replace('"payload"', '"\\u0070ayload"')],
    ['padding after the payload', text.replace('","signatures', '=","signatures')],
    ['a member added', text.replace('{', '{"extra":1,')],
    [
      'an unprotected header',
      fileOf({ ...jwsOf(bytes), signatures: jwsOf(bytes).signatures.map((s) => ({ ...s, header: {} })) }),
    ],
    ['a name twice', text.replace('{"payload":"', '{"payload":"","payload":"')],
    ['cut in the middle', text.slice(0, text.length / 2)],
    ['not UTF-8 at the end', Buffer.concat([bytes.subarray(0, -2), Buffer.of(0xff)])],
    ['content of another form', withContent(bytes, { ...recordOf(bytes), form: 'plugmark/record/2' })],
    ['content with a member more', withContent(bytes, { ...recordOf(bytes), note: 'x' })],
    ['content without signers', withContent(bytes, { ...recordOf(bytes), signers: [] })],
    ['content that is no object', withContent(bytes, 'record')],
    [
      'content that is not canonical',
      fileOf({ ...jwsOf(bytes), payload: Buffer.from('{ }').toString('base64url') }),
    ],
    ['content that is not JSON', fileOf({ ...jwsOf(bytes), payload: 'AAAA' })],
    ['no content', fileOf({ ...jwsOf(bytes), payload: '' })],
    ['signatures that are no list', '{"payload":"","signatures":{}}\n'],
  ])('%s', (_what, file) => {
    const report = verifyRecord(Buffer.from(file), trust);
    expect(report.verdict).toBe('rejected');
    expect(report.checks[0]).toMatchObject({ name: 'signatures', outcome: 'failed' });
    expect(report.checks.slice(1).map(({ outcome }) => outcome)).toEqual(Array(6).fill('not-applicable'));
  });
});

it('content in another writing is refused, even where the station signed it', () => {
  const spaced: Jws = {
    payload: Buffer.from(JSON.stringify(recordOf(bytes), null, 1)).toString('base64url'),
    signatures: [],
  };
  const report = verifyRecord(fileOf([station, technician].reduce(addSignature, spaced)), trust);
  expect(report.checks[0]?.detail).toContain('the content is not canonical JSON');
  expect(report.verdict).toBe('rejected');
});

describe('a file that never was a record is unreadable (2)', () => {
  it.each([
    ['nothing', ''],
    ['plain text', 'torque 27 N·m'],
    ['another JSON file', '{"form":"plugmark/work-order/1"}'],
    ['a JSON list', '[]'],
    ['JSON null', 'null'],
    ['a PDF', '%PDF-1.7\n%âãÏÓ'],
    ['a compact JWS', 'eyJhbGciOiJFZERTQSJ9.e30.AAAA'],
    ['bytes that are no text', Buffer.from([0xff, 0xfe, 0x00])],
  ])('%s', (_what, file) => {
    const report = verifyRecord(Buffer.from(file), trust);
    expect(report).toMatchObject({ verdict: 'unreadable', record: null });
    expect(VERIFICATION[report.verdict].exit).toBe(2);
  });
});

it('any bytes get a report, never an exception and never a good verdict', () => {
  const start = fc.constantFrom(
    ...['', '{"payload":"', '{"payload":"e30","signatures":[', text.slice(0, 200)].map((s) => Buffer.from(s)),
  );
  fc.assert(
    fc.property(start, fc.uint8Array({ maxLength: 60 }), (beginning, rest) => {
      expect([1, 2]).toContain(exitOf(Buffer.concat([beginning, rest])));
    }),
    { numRuns: 2000 },
  );
});
