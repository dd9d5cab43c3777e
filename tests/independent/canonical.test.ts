/** The second verifier writes figures and names as canonical JSON has them: held against this engine, which RFC 8785 goes by. */
import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/evidence/canonical.ts';
import { missingPython, PYTHON } from './python.ts';

const SCRIPT = `
import json, sys
from canonical import canonical
for line in sys.stdin:
    print(json.dumps(canonical(json.loads(line)).decode()))
`;

/** What canonical.py makes of these values. */
function written(values: readonly unknown[]): readonly string[] {
  const out = execFileSync(PYTHON, ['-B', '-c', SCRIPT], {
    cwd: new URL('.', import.meta.url).pathname,
    input: values.map((value) => `${JSON.stringify(value)}\n`).join(''),
    encoding: 'utf8',
  });
  return out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
}

describe.skipIf(missingPython() !== null)('the canonical writing of the second verifier', () => {
  it('of figures: edges and two thousand by chance', () => {
    const edges = [
      0,
      1e-6,
      1e-7,
      1.5e-7,
      0.1,
      123.456,
      1e20,
      1e21,
      1.2e21,
      5e-324,
      2 ** 53,
      1 / 3,
      -2.5e-10,
      100,
    ];
    const values = [
      ...edges,
      ...fc.sample(fc.double({ noNaN: true, noDefaultInfinity: true }), { numRuns: 2000, seed: 8785 }),
    ];
    expect(written(values)).toEqual(values.map((value) => canonical(value)));
  });

  it('of texts and the order of names', () => {
    const text = fc.string({ unit: 'binary', maxLength: 12 });
    const values = fc.sample(fc.dictionary(text, fc.oneof(text, fc.boolean(), fc.constant(null))), {
      numRuns: 500,
      seed: 8785,
    });
    const plain = values
      .map((value) => ({ ...value }))
      .filter((value) => Object.keys(value).every((name) => name !== '__proto__'));
    expect(plain.length).toBeGreaterThan(400);
    expect(written(plain)).toEqual(plain.map((value) => canonical(value)));
  });
});
