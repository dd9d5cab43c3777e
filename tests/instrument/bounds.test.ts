/** What a certificate and a tool of the station file may hold: each bound on itself, and just beyond. */
import { describe, expect, it } from 'vitest';
import { certificateFileSchema, certificateFromJson } from '../../src/instrument/certificate.ts';
import { instrumentSchema } from '../../src/instrument/instrument.ts';
import { pathText } from '../../src/problem.ts';

const POINT = { reading: 10, error: 0.05, expanded: 0.1, k: 2 };
const points = (change: object) => [
  { ...POINT, ...change },
  { ...POINT, reading: 60 },
];
const many = (count: number) => Array.from({ length: count }, (_, i) => ({ ...POINT, reading: i }));
const CERTIFICATE = {
  form: 'plugmark/certificate/1',
  number: 'C-7',
  laboratory: 'Example laboratory',
  serial: 'W-1',
  date: '2026-01-31',
  unit: 'N.m',
  points: points({}),
};
const TOOL = { id: 'wrench', quantity: 'torque', resolution: 0.01, basis: 'data sheet' };
const long = (characters: number) => 'x'.repeat(characters);

type Schema = typeof certificateFileSchema | typeof instrumentSchema;
const faults = (schema: Schema, whole: object) => {
  const { success, error } = schema.safeParse(whole);
  return success ? [] : error.issues.map(({ path }) => pathText(path));
};

describe('a certificate', () => {
  it.each<[field: string, within: object, beyond: object]>([
    ['number', { number: long(160) }, { number: long(161) }],
    ['laboratory', { laboratory: long(1) }, { laboratory: '' }],
    ['serial', { serial: long(160) }, { serial: long(161) }],
    ['points[0].reading', { points: points({ reading: 0 }) }, { points: points({ reading: -0.001 }) }],
    ['points[0].reading', { points: points({ reading: 1e6 }) }, { points: points({ reading: 1e6 + 1 }) }],
    ['points[0].error', { points: points({ error: -1e6 }) }, { points: points({ error: -1e6 - 1 }) }],
    ['points[0].error', { points: points({ error: 1e6 }) }, { points: points({ error: 1e6 + 1 }) }],
    ['points[0].expanded', { points: points({ expanded: 1e-9 }) }, { points: points({ expanded: 0 }) }],
    ['points[0].expanded', { points: points({ expanded: 1e6 }) }, { points: points({ expanded: 1e6 + 1 }) }],
    ['points[0].k', { points: points({ k: 1 }) }, { points: points({ k: 0.999 }) }],
    ['points[0].k', { points: points({ k: 10 }) }, { points: points({ k: 10.001 }) }],
    ['points', { points: many(2) }, { points: many(1) }],
    ['points', { points: many(200) }, { points: many(201) }],
  ])('%s', (field, within, beyond) => {
    expect(faults(certificateFileSchema, { ...CERTIFICATE, ...within })).toEqual([]);
    expect(faults(certificateFileSchema, { ...CERTIFICATE, ...beyond })).toEqual([field]);
  });

  it('names every reading that is there already, and no first one', () => {
    const same = [POINT, { ...POINT, reading: 20 }, POINT, POINT];
    expect(faults(certificateFileSchema, { ...CERTIFICATE, points: same })).toEqual([
      'points[2].reading',
      'points[3].reading',
    ]);
  });

  // NIST SP 811, appendix B.8: 1 lbf·ft = 1.355818 N·m, 1 lbf·in = 0.1129848 N·m, 1 in = 25.4 mm.
  it.each([
    ['N.m', 'N.m', 1, 12],
    ['lbf.ft', 'N.m', 1.355818, 6],
    ['lbf.in', 'N.m', 0.1129848, 7],
    ['mm', 'mm', 1, 12],
    ['in', 'mm', 25.4, 12],
  ])('printed in %s is held in %s, all figures but the coverage factor', (printed, unit, scale, digits) => {
    const out = certificateFromJson({ ...CERTIFICATE, unit: printed, points: points({ k: 2.13 }) }, 'c.json');
    expect(out).toMatchObject({ ok: true, value: { unit } });
    const [first] = out.ok ? out.value.points : [];
    expect(first?.k).toBe(2.13);
    expect((first?.reading ?? 0) / 10).toBeCloseTo(scale, digits);
    expect((first?.error ?? 0) / 0.05).toBeCloseTo(scale, digits);
    expect((first?.expanded ?? 0) / 0.1).toBeCloseTo(scale, digits);
  });

  it('is held without the noise that a change of unit brings', () => {
    const inch = { ...POINT, reading: 0.028, error: 0.0003, expanded: 0.0007 };
    const out = certificateFromJson({ ...CERTIFICATE, unit: 'in', points: [inch, POINT] }, 'c.json');
    expect(out.ok && out.value.points[0]).toEqual({
      reading: 0.7112,
      error: 0.00762,
      expanded: 0.01778,
      k: 2,
    });
  });
});

describe('a tool of the station file', () => {
  const one = (readings: readonly number[]) => ({ repeatability: { readings, basis: 'bench' } });
  const spread = (count: number) => one(Array.from({ length: count }, (_, i) => 25 + i / 100));
  const off = { on: '2026-05-01', reading: 30, error: -1.1 };
  const impact = (text: string) => ({ outOfTolerance: { ...off, impact: text } });
  const further = (count: number) => ({
    furtherTerms: Array(count).fill({
      cause: 'temperature',
      within: { kind: 'relative', percent: 0.5 },
      basis: 'cold yard',
    }),
  });

  it.each<[field: string, within: object, beyond: object]>([
    ['id', { id: `w${long(31)}` }, { id: `w${long(32)}` }],
    ['id', { id: 'w-2' }, { id: '2-w' }],
    ['maker', { maker: long(60) }, { maker: long(61) }],
    ['model', { model: 'm' }, { model: '' }],
    ['serial', { serial: long(60) }, { serial: long(61) }],
    ['basis', { basis: long(160) }, { basis: long(161) }],
    ['range.from', { range: { from: 0, to: 60 } }, { range: { from: -1, to: 60 } }],
    ['range.from', { range: { from: 59.9, to: 60 } }, { range: { from: 60, to: 60 } }],
    ['resolution', { resolution: 1e-9 }, { resolution: 0 }],
    ['interval.months', { interval: { months: 120 } }, { interval: { months: 121 } }],
    ['interval.months', { interval: { months: 1 } }, { interval: { months: 0 } }],
    ['interval.cycles', { interval: { months: 1, cycles: 1 } }, { interval: { months: 1, cycles: 0 } }],
    ['cyclesUsed', { cyclesUsed: 0 }, { cyclesUsed: -1 }],
    ['repeatability.readings', one([25, 25.1]), one([25, 25])],
    ['repeatability.readings', spread(100), spread(101)],
    ['furtherTerms', further(12), further(13)],
    ['furtherTerms', further(1), further(0)],
    ['outOfTolerance.impact', impact('IA-999999'), impact('IA-1000000')],
    ['outOfTolerance.impact', impact('IA-1'), impact('IA-0')],
  ])('%s', (field, within, beyond) => {
    expect(faults(instrumentSchema, { ...TOOL, ...within })).toEqual([]);
    expect(faults(instrumentSchema, { ...TOOL, ...beyond })).toEqual([field]);
  });
});
