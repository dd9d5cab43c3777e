import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decoderOf, valueScaling } from '../../../drivers/profile/decoder.ts';
import { scaled } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { gaugeProfile, inBytes } from './example.ts';
import { read } from './reading.ts';

describe('scale and unit', () => {
  test.each<[string, string, string, number, number]>([
    ['N·m', '0.01', '2500', 2_500, -2],
    ['N·m', '0.02', '1250', 2_500, -2],
    ['mN·m', '50', '500', 2_500, -2],
    ['cN·m', '1', '2500', 2_500, -2],
  ])('%s times %s: %s is exact', (unit, scale, raw, counts, exponent) => {
    const layout = inBytes([{ is: 'value', type: 'uint16', unit, scale }]);
    expect(valueScaling(layout).exponent).toBe(exponent);
    const frame = Buffer.alloc(2);
    frame.writeUInt16BE(Number(raw));
    expect(decoderOf(layout)(frame)).toMatchObject({ value: { counts: [counts] } });
  });

  test.each<[string, string, number]>([
    ['lbf·ft', '0.1', 0.135_581_794_833_14],
    ['lbf·in', '0.5', 0.056_492_414_513_808],
    ['kgf·m', '0.01', 0.098_066_5],
    ['kgf·cm', '1', 0.098_066_5],
  ])('%s times %s becomes N·m to a thousandth of a step', (unit, scale, stepNm) => {
    const layout = inBytes([{ is: 'value', type: 'sint16', unit, scale }]);
    const { exponent } = valueScaling(layout);
    fc.assert(
      fc.property(fc.integer({ min: -0x8000, max: 0x7fff }), (raw) => {
        const frame = Buffer.alloc(2);
        frame.writeInt16BE(raw);
        const [counts] = good(decoderOf(layout)(frame)).counts;
        expect(Math.abs(scaled(counts ?? Number.NaN, exponent) - raw * stepNm)).toBeLessThanOrEqual(
          stepNm / 1_000,
        );
      }),
    );
  });

  test('a gauge in inches', () => {
    const { layout } = gaugeProfile();
    const { counts } = good(read(layout, '01 1c0000fd'));
    expect(scaled(counts[0] ?? Number.NaN, valueScaling(layout).exponent)).toBeCloseTo(0.028 * 0.0254, 12);
  });

  test('a unit told by a byte has steps of its own; the coarsest is what the tool resolves', () => {
    const codes = [
      { code: 0, unit: 'N·m', scale: '0.1' },
      { code: 1, unit: 'lbf·ft', scale: '0.1' },
      { code: 2, unit: 'N·m', scale: '0.01' },
    ];
    const layout = inBytes([
      { is: 'value', type: 'uint16' },
      { is: 'unit', type: 'uint8', codes },
    ]);
    const { exponent, resolutionCounts } = valueScaling(layout);
    const nm = (hex: string) => scaled(good(read(layout, hex)).counts[0] ?? Number.NaN, exponent);
    expect(nm('00fa 00')).toBe(25);
    expect(nm('00fa 02')).toBe(2.5);
    expect(Math.abs(nm('00fa 01') - 33.895_448_7)).toBeLessThan(0.000_2);
    expect(scaled(resolutionCounts, exponent)).toBeCloseTo(0.135_58, 4);
    expect(read(layout, '00fa 03')).toMatchObject({ ok: false });
  });
});
