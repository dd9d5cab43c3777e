import fc from 'fast-check';
import { CHECKSUM_KINDS } from '../../../drivers/profile/checksum.ts';
import { parseProfile } from '../../../drivers/profile/file.ts';
import type { Layout } from '../../../drivers/profile/layout-schema.ts';
import type { FrameContent } from '../../../sim/devices/encode.ts';
import { rawProfile } from './example.ts';

/** Layouts and contents of all kinds, for what must hold of every one of them. */

/** Types, and the numbers that fit them whatever the byte order; `exact`: whole. */
const TYPES = [
  { type: 'uint8', least: 0, most: 255 },
  { type: 'uint16', least: 0, most: 65_535 },
  { type: 'uint24', least: 0, most: 0xff_ffff },
  { type: 'uint32', least: 0, most: 0xffff_ffff },
  { type: 'sint8', least: -128, most: 127 },
  { type: 'sint16', least: -32_768, most: 32_767 },
  { type: 'sint24', least: -0x80_0000, most: 0x7f_ffff },
  { type: 'sint32', least: -0x8000_0000, most: 0x7fff_ffff },
  { type: 'signmag16', least: -32_767, most: 32_767 },
  { type: 'signmag32', least: -0x7fff_ffff, most: 0x7fff_ffff },
  { type: 'bcd8', least: 0, most: 99 },
  { type: 'bcd24', least: 0, most: 999_999 },
  { type: 'float32', least: -8_000_000, most: 8_000_000 },
  { type: 'float64', least: -1e9, most: 1e9 },
  { type: 'medfloat16', least: -2_045, most: 2_045 },
  { type: 'medfloat32', least: -8_388_605, most: 8_388_605 },
] as const;

const SCALES = ['0.01', '0.02', '-0.05', '1', '0.1'] as const;
const UNITS = ['N·m', 'cN·m', 'lbf·ft', 'kgf·cm'] as const;

/** What is in a frame, and what it must be read as: numbers times scale, in the unit. */
export interface Case {
  readonly layout: Layout;
  readonly content: FrameContent;
  readonly scale: number;
  /** The smallest step, in the unit. */
  readonly step: number;
  readonly unit: (typeof UNITS)[number];
}

const filler = fc.record({ is: fc.constant('unused'), bytes: fc.integer({ min: 1, max: 3 }) });
const fixed = fc.record({ is: fc.constant('fixed'), hex: fc.constantFrom('a5', '0d0a', '00') });
const size = fc.record({
  is: fc.constant('size'),
  type: fc.constantFrom('uint8', 'uint16'),
  adds: fc.constantFrom(0, 1, -1),
});
const counter = fc.record({
  is: fc.constant('counter'),
  type: fc.constantFrom('uint8', 'uint16'),
  counts: fc.constant('frames'),
});
const checksum = fc.record({
  is: fc.constant('checksum'),
  kind: fc.constantFrom(...CHECKSUM_KINDS),
  to: fc.constantFrom('itself', 'end'),
});
const flags = fc.constantFrom(
  { is: 'bits', type: 'uint8', parts: [{ is: 'flag', bit: 2, means: 'valid' }] },
  {
    is: 'bits',
    type: 'uint16',
    parts: [
      { is: 'flag', bit: 9, means: 'no-value' },
      { is: 'unused', bit: 0, bits: 4 },
    ],
  },
);

/** Some of them, each once at most, in any order. */
const around = fc
  .shuffledSubarray([filler, fixed, size, counter, checksum, flags] as const)
  .chain((kinds) => fc.tuple(...kinds));

/** A frame of bytes: a figure, perhaps in samples, with all sorts of fields before and behind it. */
export const byteCase: fc.Arbitrary<Case> = fc
  .record({
    number: fc.constantFrom(...TYPES),
    scale: fc.constantFrom(...SCALES),
    unit: fc.constantFrom(...UNITS),
    tells: fc.boolean(),
    zero: fc.constantFrom(0, 7),
    count: fc.constantFrom<number | 'rest' | null>(null, 1, 3, 'rest'),
    angle: fc.boolean(),
    before: around,
    behind: around,
    byteOrder: fc.constantFrom('little', 'big'),
  })
  .chain(({ number, scale, unit, tells, zero, count, angle, before, behind, byteOrder }) => {
    const exact = !/float/.test(number.type);
    const shift = exact ? zero : 0;
    const value = {
      is: 'value',
      type: number.type,
      scale,
      ...(tells ? {} : { unit }),
      ...(exact ? { zero: shift } : { resolution: '0.01' }),
    };
    const group = [value, ...(angle ? [{ is: 'angle', type: 'sint16', scale: '0.5' }] : [])];
    const inner = count === null ? group : [{ is: 'samples', count, fields: group }];
    const codes = UNITS.map((one, code) => ({ code: code + 1, unit: one }));
    const told = tells ? [{ is: 'unit', type: 'uint8', codes }] : [];
    const seen = new Set<unknown>();
    const fields = [...before, ...inner, ...told, ...behind].filter(({ is }) => {
      const twice = seen.has(is) && is !== 'unused' && is !== 'fixed';
      seen.add(is);
      return !twice;
    });
    const isNullable = fields.some(({ is }) => is === 'bits');
    const samples = count === null ? 1 : count === 'rest' ? 5 : count;
    const figure =
      exact || number.type.startsWith('medfloat')
        ? fc.integer({ min: number.least - shift, max: number.most - shift })
        : fc.integer({ min: number.least, max: number.most }).map((whole) => whole / 8);
    return fc.record({
      layout: layoutOf({ of: 'bytes', byteOrder, fields }),
      content: fc
        .record({
          samples: fc.array(fc.record({ value: figure, angle: fc.integer({ min: -3_000, max: 3_000 }) }), {
            minLength: samples,
            maxLength: samples,
          }),
          isNull: fc.boolean(),
          counter: fc.nat(255),
          unit: fc.constant(UNITS.indexOf(unit)),
          filler: fc.nat(255),
        })
        .map(({ samples: all, isNull, ...rest }) => ({
          ...rest,
          samples:
            isNull && isNullable && count === null ? all.map(() => ({ value: null, angle: null })) : all,
        })),
      scale: fc.constant(Number(scale)),
      step: fc.constant(exact ? Math.abs(Number(scale)) : 0.01),
      unit: fc.constant(unit),
    });
  })
  .filter(isWhole);

const between = fc.constantFrom({ is: 'text', text: ';' }, { is: 'blanks' }, { is: 'text', text: ' ' });

/** A line of text. */
export const textCase: fc.Arbitrary<Case> = fc
  .record({
    scale: fc.constantFrom('1', '-1', '0.5'),
    unit: fc.constantFrom(...UNITS),
    tells: fc.boolean(),
    resolution: fc.constantFrom('0.01', '0.5', '1'),
    mark: fc.constantFrom('.', ','),
    gap: between,
    extras: fc.shuffledSubarray([
      { is: 'counter', digits: 4, counts: 'frames' },
      { is: 'unused', characters: 3 },
      {
        is: 'status',
        texts: [
          { text: 'OK', means: 'valid' },
          { text: 'OL', means: 'no-value' },
        ],
      },
    ] as const),
    sum: fc.option(fc.constantFrom(...CHECKSUM_KINDS), { nil: null }),
  })
  .chain(({ scale, unit, tells, resolution, mark, gap, extras, sum }) => {
    const value = { is: 'value', scale, resolution, decimalMark: mark, ...(tells ? {} : { unit }) };
    const told = tells
      ? [{ is: 'unit', texts: UNITS.map((one) => ({ text: one.replace('·', ''), unit: one })) }]
      : [];
    const fields = [
      { is: 'text', text: 'T' },
      value,
      gap,
      ...told,
      { is: 'text', text: '/' },
      ...extras,
      { is: 'text', text: '*' },
      ...(sum === null ? [] : [{ is: 'checksum', kind: sum }]),
    ];
    const decimals = resolution.split('.')[1]?.length ?? 0;
    return fc.record({
      layout: layoutOf({ of: 'text', fields }),
      content: fc.record({
        samples: fc.tuple(fc.record({ value: fc.integer({ min: -99_999, max: 99_999 }) })),
        counter: fc.nat(9_999),
        unit: fc.constant(UNITS.indexOf(unit)),
        filler: fc.nat(9),
      }),
      scale: fc.constant(Number(scale) / 10 ** decimals),
      step: fc.constant(Number(resolution)),
      unit: fc.constant(unit),
    });
  })
  .filter(isWhole);

/** The layout, where a profile may have it. */
function layoutOf(layout: Record<string, unknown>): fc.Arbitrary<Layout | null> {
  const parsed = parseProfile(JSON.stringify({ ...rawProfile(), layout }), 'drawn.json');
  return fc.constant(parsed.ok ? parsed.value.layout : null);
}

function isWhole<T extends { readonly layout: Layout | null }>(
  drawn: T,
): drawn is T & { readonly layout: Layout } {
  return drawn.layout !== null;
}
