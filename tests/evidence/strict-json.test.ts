import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/evidence/canonical.ts';
import { parseCanonicalJson, parseStrictJson } from '../../src/evidence/strict-json.ts';
import { MAX_DEPTH } from '../../src/evidence/strict-reader.ts';

const read = (input: string | Uint8Array) =>
  parseStrictJson(typeof input === 'string' ? Buffer.from(input) : input, 'f');
const fault = (input: string | Uint8Array) => {
  const result = read(input);
  return result.ok ? null : { code: result.error.code, where: result.error.where };
};
const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);

describe('the strict reader refuses what has more than one meaning, and names the place', () => {
  it.each([
    ['a name twice', '{"a":1,"a":2}', 'json-duplicate-name', 'f: byte 7'],
    ['a name twice, once escaped', '{"ab":1,"\\u0061b":2}', 'json-duplicate-name', 'f: byte 8'],
    ['a name twice, deep down', '{"x":[{},{"a":1,"a":2}]}', 'json-duplicate-name', 'f: byte 16, x[1]'],
    ['__proto__', '{"__proto__":{"admin":true}}', 'json-name', 'f: byte 1'],
    ['__proto__, escaped', '{"\\u005f_proto__":{}}', 'json-name', 'f: byte 1'],
    ['an integer above 2^53 - 1', '[9007199254740993]', 'json-number', 'f: byte 1, [0]'],
    ['a huge number', '[1e30]', 'json-number', 'f: byte 1, [0]'],
    ['a number beyond all doubles', '[1e999]', 'json-number', 'f: byte 1, [0]'],
    ['a number that would become 0', '[1e-400]', 'json-number', 'f: byte 1, [0]'],
    ['minus zero', '[-0]', 'json-number', 'f: byte 1, [0]'],
    ['more digits than a double holds', '{"t":333333333.33333329}', 'json-number', 'f: byte 5, t'],
    ['an endless number', `[${'1'.repeat(100_000)}]`, 'json-number', 'f: byte 1, [0]'],
    ['half a surrogate pair', '["\\ud83d"]', 'json-string', 'f: byte 1, [0]'],
    ['too deep', nested(MAX_DEPTH + 1), 'json-depth', `f: byte ${MAX_DEPTH}, ${'[0]'.repeat(MAX_DEPTH)}`],
    ['very deep', nested(100_000), 'json-depth', `f: byte ${MAX_DEPTH}, ${'[0]'.repeat(MAX_DEPTH)}`],
    ['a byte order mark', '\ufeff{}', 'json-syntax', 'f: byte 0'],
    ['a second value', '{} {}', 'json-syntax', 'f: byte 3'],
    ['a NUL after the end', '{}\0', 'json-syntax', 'f: byte 2'],
    ['nothing', '', 'json-syntax', 'f: byte 0'],
    ['an open end', '{"a":[1,2', 'json-syntax', 'f: byte 9, a'],
    ['an open string', '["abc', 'json-syntax', 'f: byte 5, [0]'],
    ['a line end in a string', '["a\nb"]', 'json-syntax', 'f: byte 3, [0]'],
    ['an unknown escape', '["\\x41"]', 'json-syntax', 'f: byte 3, [0]'],
    ['a comma at the end', '[1,]', 'json-syntax', 'f: byte 3, [1]'],
    ['a comma at the end of an object', '{"a":1,}', 'json-syntax', 'f: byte 7'],
    ['a leading zero', '[01]', 'json-syntax', 'f: byte 2'],
    ['a plus sign', '[+1]', 'json-syntax', 'f: byte 1, [0]'],
    ['a bare point', '[1.]', 'json-syntax', 'f: byte 2'],
    ['NaN', '[NaN]', 'json-syntax', 'f: byte 1, [0]'],
    ['a comment', '{/**/}', 'json-syntax', 'f: byte 1'],
    ['single quotes', "{'a':1}", 'json-syntax', 'f: byte 1'],
    ['white space that is not of JSON', '\u00a0{}', 'json-syntax', 'f: byte 0'],
  ])('%s', (_what, text, code, where) => {
    expect(fault(text)).toEqual({ code, where });
  });

  it('counts bytes, not characters', () => {
    expect(fault('{"€":1,"€":2}')).toEqual({ code: 'json-duplicate-name', where: 'f: byte 9' });
  });

  it.each([
    ['a stray continuation byte', [0x22, 0x61, 0x80, 0x22], 2],
    ['an overlong slash', [0x22, 0xc0, 0xaf, 0x22], 1],
    ['a surrogate in UTF-8', [0x22, 0xed, 0xa0, 0x80, 0x22], 2],
    ['a cut last character', [0x22, 0x61, 0xe2, 0x82], 4],
    ['Latin-1', [0x22, 0xe4, 0x22], 2],
  ])('%s is not UTF-8', (_what, bytes, offset) => {
    expect(fault(Uint8Array.from(bytes))).toEqual({ code: 'not-utf8', where: `f: byte ${offset}` });
  });

  it('keeps control characters of a hostile name out of its problem', () => {
    const result = read('{"\\u001b[2J\\u202e":1,"\\u001b[2J\\u202e":2}');
    expect(JSON.stringify(result)).not.toMatch(/[\x00-\x1f\u202e]|u001b|u202e/);
    expect(result.ok).toBe(false);
  });
});

describe('the strict reader accepts every way of writing a number that loses nothing', () => {
  it.each([
    ['4.50', 4.5],
    ['45e-1', 4.5],
    ['0.80', 0.8],
    ['1E3', 1000],
    ['0e5', 0],
    ['-0.001', -0.001],
    ['9007199254740991', Number.MAX_SAFE_INTEGER],
    ['5e-324', 5e-324],
  ])('%s', (text, value) => {
    expect(read(text)).toEqual({ ok: true, value });
  });
});

it('accepts nesting up to the bound, empty containers and white space between all tokens', () => {
  expect(read(nested(MAX_DEPTH)).ok).toBe(true);
  expect(read(' { "a" : [ ] , "b" : { } } \r\n\t')).toEqual({ ok: true, value: { a: [], b: {} } });
});

it('agrees with JSON.parse wherever it accepts, and never throws', () => {
  const bit = fc.tuple(fc.json(), fc.nat(), fc.integer({ min: 0, max: 127 }));
  fc.assert(
    fc.property(bit, ([text, place, code]) => {
      const at = place % (text.length + 1);
      const damaged = text.slice(0, at) + String.fromCharCode(code) + text.slice(at + 1);
      const result = read(damaged);
      if (result.ok) expect(result.value).toEqual(JSON.parse(damaged));
    }),
    { numRuns: 3000 },
  );
});

it('never throws on any bytes', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
      expect(typeof read(bytes).ok).toBe('boolean');
    }),
    { numRuns: 3000 },
  );
});

describe('canonical JSON is read by two ways that agree', () => {
  const bytes = (text: string) => Buffer.from(text, 'utf8');

  it('takes any canonical text, and gives the value that was written', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'binary', maxDepth: 5 }), (value) => {
        const text = canonical(value);
        const strict = parseStrictJson(bytes(text), 'x');
        expect(parseCanonicalJson(bytes(text), 'x')).toEqual(strict);
        if (strict.ok) expect(canonical(strict.value)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });

  it('refuses any other writing of the same value, and says no more than that', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), fc.integer({ min: 1, max: 3 }), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        fc.pre(text !== canonical(value));
        const read = parseCanonicalJson(bytes(text), 'x');
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.error.code).toMatch(/^json-(not-canonical|number|name)$/);
      }),
    );
  });

  it.each([
    ['names that look like numbers, sorted as text', '{"1":0,"10":0,"2":0}', true],
    ['names that look like numbers, sorted as numbers', '{"1":0,"2":0,"10":0}', false],
    ['a backslash in front of ud800', String.raw`"\\ud800"`, true],
    ['an escaped half of a pair', String.raw`"\ud800"`, false],
    ['64 levels', `${'['.repeat(64)}${']'.repeat(64)}`, true],
    ['65 levels', `${'['.repeat(65)}${']'.repeat(65)}`, false],
    ['a whole number beyond 2^53', '1e+21', false],
    ['minus zero', '-0', false],
    ['a prototype', '{"__proto__":1}', false],
  ])('%s', (_what, text, accepted) => {
    expect(parseCanonicalJson(bytes(text), 'x').ok).toBe(accepted);
  });
});
