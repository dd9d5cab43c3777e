import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/evidence/canonical.ts';
import { parseStrictJson } from '../../src/evidence/strict-json.ts';

describe('canonical JSON refuses what JSON cannot carry whole, and says where', () => {
  it.each([
    ['undefined', { a: { b: undefined } }, '$.a.b: undefined'],
    ['a hole in an array', new Array(2), '$[0]: undefined'],
    ['NaN', [Number.NaN], '$[0]: NaN'],
    ['an infinity', { x: -Infinity }, '$.x: -Infinity'],
    ['a big integer', { x: 1n }, '$.x: bigint'],
    ['a function', { x: () => 1 }, '$.x: function'],
    ['a date', { at: new Date(0) }, '$.at: only plain objects'],
    ['a map', [new Map()], '$[0]: only plain objects'],
    ['a symbol as a name', { [Symbol('s')]: 1 }, '$: a symbol'],
    ['half a surrogate pair in a value', { name: '\ud83d' }, '$.name: a lone surrogate'],
    ['half a surrogate pair in a name', { '\ude00': 1 }, '$: a lone surrogate'],
  ])('%s', (_what, value, message) => {
    expect(() => canonical(value)).toThrow(message);
  });

  it('ignores a toJSON that would say something else than the members', () => {
    expect(() => canonical({ a: 1, toJSON: () => 'forged' })).toThrow('$.toJSON: function');
  });
});

it('is one text for one value: the order of members does not matter', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.double({ noNaN: true, noDefaultInfinity: true })), (value) => {
      const reversed = Object.fromEntries(Object.entries(value).reverse());
      expect(canonical(reversed)).toBe(canonical(value));
    }),
  );
});

it('is read again by the strict reader as the same value, and written again as the same text', () => {
  const figure = fc
    .double({ noNaN: true, min: -(2 ** 53) + 1, max: 2 ** 53 - 1 })
    .map((x) => (x === 0 ? 0 : x));
  const json = fc.letrec((tie) => ({
    value: fc.oneof(
      { maxDepth: 4 },
      fc.constant(null),
      fc.boolean(),
      figure,
      fc.string({ unit: 'binary' }),
      fc.array(tie('value')),
      fc.dictionary(fc.string({ unit: 'binary' }), tie('value'), { noNullPrototype: true }),
    ),
  })).value;
  fc.assert(
    fc.property(json, (value) => {
      fc.pre(!canonical(value).includes('__proto__'));
      const read = parseStrictJson(Buffer.from(canonical(value)), 'test');
      expect(read).toEqual({ ok: true, value });
      expect(read.ok && canonical(read.value)).toBe(canonical(value));
    }),
    { numRuns: 1000 },
  );
});
