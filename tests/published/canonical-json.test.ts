/**
 * Sources: RFC 8785, 3.2.2 and 3.2.3 and Appendix B; cyberphone/json-canonicalization, testdata/{input,output} and the
 * number samples of testdata/README.md. Independent oracle: the package `canonicalize`, by other people.
 */

import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical, canonicalBytes } from '../../src/evidence/canonical.ts';
import { toHex } from '../../src/evidence/platform/bytes.ts';

const double = (hex: string) => Buffer.from(hex, 'hex').readDoubleBE();

describe('canonical JSON agrees with what was published', () => {
  it('writes the literals, numbers and string of RFC 8785 (testdata "values")', () => {
    const input = JSON.parse(
      String.raw`{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
        "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
    );
    expect(canonical(input)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('sorts names by UTF-16 code units (RFC 8785, 3.2.3)', () => {
    const input = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\u{1f600}': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    // Reading it back would put the integer-like name "1" first, so the order is taken from the text.
    const text = canonical(input);
    const order = Object.values(input).sort((a, b) => text.indexOf(a) - text.indexOf(b));
    expect(order).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4340000000000001', '9007199254740994'],
    ['4340000000000002', '9007199254740996'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
  ])('writes the double %s as %s (RFC 8785, Appendix B; numbers of the README)', (hex, text) => {
    expect(canonical(double(hex))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('refuses the double %s', (hex) => {
    expect(() => canonical(double(hex))).toThrow(TypeError);
  });

  it('equals the independent implementation on any JSON value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'binary', maxDepth: 5 }), (value) => {
        expect(canonical(value)).toBe(canonicalize(value));
      }),
      { numRuns: 2000 },
    );
  });

  it('equals the independent implementation on any double', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(canonical(value)).toBe(canonicalize(value));
      }),
      { numRuns: 5000 },
    );
  });

  it('is UTF-8 without normalisation', () => {
    expect(toHex(canonicalBytes('A\u030a'))).toBe('2241cc8a22');
  });
});
