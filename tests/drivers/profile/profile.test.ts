import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decoderOf, valueScaling } from '../../../drivers/profile/decoder.ts';
import { parseProfile } from '../../../drivers/profile/file.ts';
import type { Layout } from '../../../drivers/profile/layout-schema.ts';
import { scaled } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { gaugeProfile, inBytes, inText, rawProfile, wrenchProfile } from './example.ts';

const bytes = (hex: string) => Buffer.from(hex.replaceAll(' ', ''), 'hex');
const read = (layout: Layout, hex: string) => decoderOf(layout)(bytes(hex));
const readText = (layout: Layout, text: string) => decoderOf(layout)(Buffer.from(text, 'latin1'));

const NM = { is: 'value', scale: '0.01', unit: 'N·m' };

describe('a frame is read as it is described', () => {
  const { layout } = wrenchProfile();

  test('fixed byte, flags, counter and four samples in big-endian order', () => {
    expect(read(layout, 'a5 01 01 02 0064 0064 ff9c 8000')).toMatchObject({
      ok: true,
      value: { counts: [200, 200, -200, null], noValue: undefined, counter: 0x0102 },
    });
  });

  test('flags that say that there is no value make all samples unknown, with the reason', () => {
    expect(read(layout, 'a5 82 0000 0064 0064 0064 0064')).toMatchObject({
      value: { counts: [null, null, null, null], noValue: 'the wrench has not settled, overload' },
    });
  });

  test.each<[string, string, RegExp]>([
    [
      'another fixed byte',
      'a6 01 0000 0064 0064 0064 0064',
      /^byte 0: expected the fixed bytes a5, found a6/,
    ],
    ['a bit that nobody described', 'a5 21 0000 0064 0064 0064 0064', /^byte 1: bits 0x20 are set/],
    ['a frame cut short', 'a5 01 0000 0064 0064 0064 00', /expected a frame of 12 bytes, found 11/],
    ['a frame too long', 'a5 01 0000 0064 0064 0064 0064 00', /expected a frame of 12 bytes, found 13/],
    ['nothing', '', /^byte 0: expected a frame of 12 bytes, found 0/],
  ])('%s is no reading', (_name, hex, message) => {
    expect(read(layout, hex)).toMatchObject({
      ok: false,
      error: { code: 'profile-frame', message: expect.stringMatching(message) },
    });
  });

  test.each<[string, string, number | null]>([
    ['uint8', 'ff', 255],
    ['sint8', 'ff', -1],
    ['uint16', '0102', 0x0201],
    ['uint24', '010203', 0x03_0201],
    ['sint24', 'ffffff', -1],
    ['uint32', 'ffffffff', 0xffff_ffff],
    ['sint32', '00000080', -0x8000_0000],
    ['signmag8', '85', -5],
    ['signmag16', '0580', -5],
    ['signmag16', '0080', 0],
    ['signmag32', 'ffffff7f', 0x7fff_ffff],
    ['bcd8', '99', 99],
    ['bcd16', '3412', 1_234],
    ['bcd32', '78563412', 12_345_678],
    ['float32', '0000c841', 25_000],
    ['float32', '0000807f', null],
    ['float32', '000080ff', null],
    ['float64', '0000000000003940', 25_000],
    ['float64', '000000000000f87f', null],
    ['medfloat16', '6cf1', 36_400],
    ['medfloat16', 'ff07', null],
    ['medfloat32', 'a86100fd', 25_000],
    ['medfloat32', 'ffff7f00', null],
  ])('%s %s', (type, hex, counts) => {
    const step = /float/.test(type) ? { resolution: '1' } : {};
    const layout = inBytes([{ is: 'value', type, scale: '1', unit: 'N·m', ...step }], 'little');
    expect(read(layout, hex)).toMatchObject({ value: { counts: [counts] } });
  });

  test('a decimal digit beyond 9 is no number', () => {
    const layout = inBytes([{ ...NM, type: 'bcd16' }]);
    expect(read(layout, '12 34')).toMatchObject({ value: { counts: [1_234] } });
    expect(read(layout, '12 3a')).toMatchObject({
      ok: false,
      error: { message: expect.stringMatching(/beyond 9/) },
    });
  });

  test('a value of 16 bits with its status behind it', () => {
    const valid = { is: 'bits', type: 'uint8', parts: [{ is: 'flag', bit: 0, means: 'valid' }] };
    const layout = inBytes([{ ...NM, type: 'sint16' }, valid]);
    expect(read(layout, '09c4 01')).toMatchObject({ value: { counts: [2_500], noValue: undefined } });
    expect(read(layout, '09c4 00')).toMatchObject({ value: { counts: [null], noValue: 'bit 0 is clear' } });
    expect(read(layout, '09c4 03')).toMatchObject({ ok: false });
  });

  test('two numbers of 12 bits in three bytes: torque and angle', () => {
    const parts = [
      { is: 'value', bit: 12, bits: 12, type: 'sint', scale: '0.1', unit: 'N·m' },
      { is: 'angle', bit: 0, bits: 12, scale: '0.5' },
    ];
    const layout = inBytes([{ is: 'bits', type: 'uint24', parts }]);
    expect(read(layout, 'ffe 05a'.replace(' ', ''))).toMatchObject({
      value: { counts: [-2], angleCounts: [450] },
    });
    expect(read(layout, '0fa000')).toMatchObject({ value: { counts: [250], angleCounts: [0] } });
  });

  test('an offset of zero, a scale below 0, and a sign in another byte', () => {
    const offset = inBytes([{ ...NM, type: 'uint16', zero: 32_768 }]);
    expect(read(offset, '8000')).toMatchObject({ value: { counts: [0] } });
    expect(read(offset, '7fff')).toMatchObject({ value: { counts: [-1] } });
    const negative = inBytes([{ ...NM, type: 'sint16', scale: '-0.01' }]);
    expect(read(negative, 'f63c')).toMatchObject({ value: { counts: [2_500] } });
    const sign = { is: 'bits', type: 'uint8', parts: [{ is: 'flag', bit: 7, means: 'negative' }] };
    const apart = inBytes([sign, { ...NM, type: 'uint16' }]);
    expect(read(apart, '80 09c4')).toMatchObject({ value: { counts: [-2_500] } });
    expect(read(apart, '00 09c4')).toMatchObject({ value: { counts: [2_500] } });
  });

  test('as many samples as the frame has room for, with fields before and behind them', () => {
    const layout = inBytes([
      { is: 'count', type: 'uint8' },
      {
        is: 'samples',
        count: 'rest',
        fields: [
          { ...NM, type: 'uint16' },
          { is: 'unused', bytes: 1 },
        ],
      },
      { is: 'fixed', hex: '0d' },
    ]);
    expect(read(layout, '03 0001aa 0002bb 0003cc 0d')).toMatchObject({ value: { counts: [1, 2, 3] } });
    expect(read(layout, '02 0001aa 0002bb 0003cc 0d')).toMatchObject({
      ok: false,
      error: { where: 'byte 0' },
    });
    expect(read(layout, '03 0001aa 0002bb 0003cc 0e')).toMatchObject({ ok: false });
    expect(read(layout, '03 0001aa 0002bb 0003 0d')).toMatchObject({ ok: false });
    expect(read(layout, '03 0001aa 0002bb 0003cc 00 0d')).toMatchObject({ ok: false });
    expect(read(layout, '00 0d')).toMatchObject({ ok: false });
  });

  test.each<[string, Record<string, unknown>, string]>([
    ['behind the value', { kind: 'xor-8' }, '09c4 cd'],
    ['of a CRC with its low byte first', { kind: 'crc-16/modbus', byteOrder: 'little' }, '09c4 0673'],
  ])('a checksum %s holds, or the frame is raw', (_name, checksum, hex) => {
    const layout = inBytes([
      { ...NM, type: 'sint16' },
      { is: 'checksum', ...checksum },
    ]);
    const right = bytes(hex);
    expect(decoderOf(layout)(right)).toMatchObject({ ok: true, value: { counts: [2_500] } });
    for (let bit = 0; bit < 8 * right.length; bit++) {
      const spoilt = Buffer.from(right);
      spoilt[bit >> 3] = (spoilt[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(decoderOf(layout)(spoilt)).toMatchObject({ ok: false });
    }
  });

  test('a checksum in front covers what is behind it', () => {
    const layout = inBytes([
      { is: 'checksum', kind: 'sum-8', to: 'end' },
      { ...NM, type: 'sint16' },
    ]);
    expect(read(layout, 'cd 09c4')).toMatchObject({ value: { counts: [2_500] } });
    expect(read(layout, 'ce 09c4')).toMatchObject({ ok: false });
  });
});

describe('a line of text is read as it is described', () => {
  const unit = {
    is: 'unit',
    texts: [
      { text: 'N', unit: 'cN·m' },
      { text: 'Nm', unit: 'N·m' },
      { text: 'lbft', unit: 'lbf·ft' },
    ],
  };
  const layout = inText([
    { is: 'text', text: 'T' },
    { is: 'value', resolution: '0.01', noValue: ['OL'] },
    { is: 'blanks' },
    unit,
  ]);

  test.each<[string, number | null, string]>([
    ['T+025.34Nm', 25.34, 'N·m'],
    ['T-025.34Nm', -25.34, 'N·m'],
    ['T  25.34  Nm', 25.34, 'N·m'],
    ['T+ 25.34Nm', 25.34, 'N·m'],
    ['T-0.00Nm', 0, 'N·m'],
    ['T025.34lbft', 34.356_427, 'lbf·ft'],
    ['TOLNm', null, 'N·m'],
  ])('%s', (text, nm, told) => {
    const frame = good(readText(layout, text));
    const { exponent } = valueScaling(layout);
    const [counts] = frame.counts;
    expect(frame.unit).toBe(told);
    if (nm === null) expect(counts).toBeNull();
    else expect(Math.abs(scaled(counts ?? Number.NaN, exponent) - nm)).toBeLessThan(0.000_02);
  });

  test.each([
    'T+025.3Nm',
    'T+025.345Nm',
    'T+02534Nm',
    'T+02.5.34Nm',
    'T+-25.34Nm',
    'T+Nm',
    'T25.34',
    'T25.34kg',
    'T25.34Nm ',
    'x25.34Nm',
    '',
    'T1234567890123456.00Nm',
    'T25,34Nm',
    'T25.34Nm\0',
  ])('%j is no reading', (text) => {
    expect(readText(layout, text)).toMatchObject({ ok: false, error: { code: 'profile-frame' } });
  });

  test('status, counter, angle, a decimal comma, what says nothing, and a checksum in hexadecimal', () => {
    const full = inText([
      { is: 'text', text: '$' },
      {
        is: 'status',
        texts: [
          { text: 'ST', means: 'valid' },
          { text: 'US', means: 'no-value', label: 'moving' },
        ],
      },
      { is: 'text', text: ';' },
      { is: 'counter', digits: 3, counts: 'frames' },
      { is: 'text', text: ';' },
      { is: 'unused', until: ';' },
      { is: 'text', text: ';' },
      { is: 'value', resolution: '0.1', unit: 'N·m', decimalMark: ',' },
      { is: 'text', text: ';' },
      { is: 'angle', resolution: '1' },
      { is: 'text', text: '*' },
      { is: 'checksum', kind: 'xor-8', from: 1 },
    ]);
    const line = (status: string) => {
      const text = `$${status};042;id 7 .*;-25,3;180*`;
      const sum = [...text.slice(1)].reduce((x, c) => x ^ c.charCodeAt(0), 0);
      return `${text}${sum.toString(16).padStart(2, '0')}`;
    };
    expect(readText(full, line('ST'))).toMatchObject({
      value: { counts: [-253], angleCounts: [180], counter: 42 },
    });
    expect(readText(full, line('US'))).toMatchObject({ value: { counts: [null], noValue: 'moving' } });
    expect(readText(full, line('ST').replace('180', '181'))).toMatchObject({ ok: false });
    expect(readText(full, line('XX'))).toMatchObject({ ok: false });
  });

  test('no text costs more than its length: what is tried is never tried again', () => {
    const hostile = inText([
      { is: 'unused', until: 'ab' },
      { is: 'text', text: 'ab' },
      { is: 'blanks' },
      { is: 'value', resolution: '1', unit: 'N·m' },
      { is: 'blanks' },
      { is: 'text', text: 'end' },
    ]);
    expect(readText(hostile, `${'a'.repeat(300)}${' '.repeat(150)}1`)).toMatchObject({ ok: false });
    expect(readText(hostile, `${'a'.repeat(300)}b${' '.repeat(150)}1end`)).toMatchObject({
      value: { counts: [1] },
    });
  });
});

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

describe('a profile that cannot hold is refused, with the place', () => {
  const refused = (change: Record<string, unknown>) => {
    const parsed = parseProfile(JSON.stringify({ ...rawProfile(), ...change }), 'p.json');
    return parsed.ok ? undefined : parsed.error;
  };
  const value = { ...NM, type: 'sint16' };
  const inBig = (...fields: readonly Record<string, unknown>[]) => ({
    layout: { of: 'bytes', byteOrder: 'big', fields },
  });
  const text = (...fields: readonly Record<string, unknown>[]) => ({ layout: { of: 'text', fields } });
  const flag = (bit: number) => ({ is: 'flag', bit, means: 'valid' });
  const number = { is: 'value', resolution: '0.1', unit: 'N·m' };

  test.each<[string, Record<string, unknown>, string, RegExp]>([
    ['the first form', { form: 'plugmark/profile/1' }, 'p.json: form', /profile\/2/],
    ['a field that does not exist', inBig({ ...value, sclae: '1' }), 'p.json: layout.fields[0]', /sclae/],
    [
      'a scale that is a number',
      inBig({ ...value, scale: 0.02 }),
      'p.json: layout.fields[0].scale',
      /string/,
    ],
    [
      'a scale of nothing',
      inBig({ ...value, scale: '0.00' }),
      'p.json: layout.fields[0].scale',
      /other than 0/,
    ],
    [
      'no scale',
      inBig({ is: 'value', type: 'sint16', unit: 'N·m' }),
      'p.json: layout.fields[0].scale',
      /value of 1/,
    ],
    ['no unit', inBig({ is: 'value', type: 'sint16', scale: '1' }), 'p.json: layout.fields[0].unit', /unit/],
    [
      'a unit of another quantity',
      inBig({ ...value, unit: 'mm' }),
      'p.json: layout.fields[0].unit',
      /no unit of torque/,
    ],
    [
      'a unit both given and told',
      inBig(value, { is: 'unit', type: 'uint8', codes: [{ code: 0, unit: 'N·m' }] }),
      'p.json: layout.fields[0].unit',
      /told by the frame/,
    ],
    [
      'a UUID that is none',
      {
        link: {
          kind: 'bluetooth-le',
          advertised: '185',
          service: '185a',
          characteristic: '2c0b',
          by: { how: 'notify' },
        },
      },
      'p.json: link.advertised',
      /UUID/,
    ],
    ['no value', inBig({ is: 'unused', bytes: 1 }), 'p.json: layout.fields', /one field "value"/],
    ['two values', inBig(value, value), 'p.json: layout.fields', /found 2/],
    [
      'two counters',
      inBig(
        value,
        { is: 'counter', type: 'uint8', counts: 'frames' },
        { is: 'counter', type: 'uint8', counts: 'frames' },
      ),
      'p.json: layout.fields[2]',
      /already/,
    ],
    [
      'a counter in the samples',
      inBig({
        is: 'samples',
        count: 2,
        fields: [
          value,
          { is: 'bits', type: 'uint8', parts: [{ is: 'counter', bit: 0, bits: 8, counts: 'frames' }] },
        ],
      }),
      'p.json: layout.fields[0].fields[1].parts[0]',
      /outside of the samples/,
    ],
    [
      'a bit that is not there',
      inBig(value, { is: 'bits', type: 'uint8', parts: [flag(8)] }),
      'p.json: layout.fields[1].parts[0]',
      /a uint8 has no bit 8/,
    ],
    [
      'a bit that is there twice',
      inBig(value, { is: 'bits', type: 'uint8', parts: [flag(3), flag(3)] }),
      'p.json: layout.fields[1].parts[1]',
      /twice/,
    ],
    [
      'a floating point number without a step',
      inBig({ ...value, type: 'float32' }),
      'p.json: layout.fields[0].resolution',
      /smallest step/,
    ],
    [
      'a step finer than the numbers',
      inBig({ ...value, resolution: '0.001' }),
      'p.json: layout.fields[0].resolution',
      /can tell/,
    ],
    [
      'a step that nobody can record',
      { quantity: 'length', ...inBig({ ...value, scale: '0.000000001', unit: 'µm' }) },
      'p.json: layout.fields[0].scale',
      /too fine/,
    ],
    [
      'a frame longer than any',
      inBig(value, { is: 'unused', bytes: 511 }),
      'p.json: layout.fields',
      /513 bytes/,
    ],
    ['a length of text', { frames: { by: 'length' }, ...text(number) }, 'p.json: frames.by', /no length/],
    [
      'a length of nothing',
      {
        frames: { by: 'length' },
        ...inBig({ is: 'samples', count: 'rest', fields: [value] }, { is: 'fixed', hex: '0d' }),
      },
      'p.json: layout.fields[0]',
      /"size"/,
    ],
    [
      'a length that a lost byte would shift',
      { frames: { by: 'length' }, ...inBig(value) },
      'p.json: frames.quietMs',
      /lost byte/,
    ],
    [
      'packets of a serial port',
      { link: { kind: 'serial', baud: 9600, by: { how: 'sent' } } },
      'p.json: frames.by',
      /no packets/,
    ],
    [
      'a figure that has no end',
      text(number, { is: 'counter', digits: 2, counts: 'frames' }),
      'p.json: layout.fields[1]',
      /ends/,
    ],
    [
      'a text that begins with a digit behind a figure',
      text(number, { is: 'text', text: '0x' }),
      'p.json: layout.fields[1]',
      /ends/,
    ],
    [
      'text that says nothing and has no end',
      text({ is: 'unused' }, number),
      'p.json: layout.fields[0]',
      /either/,
    ],
    [
      'an angle of a gauge',
      { quantity: 'length', ...inBig({ ...value, unit: 'mm' }, { is: 'angle', type: 'uint16', scale: '1' }) },
      'p.json: layout.fields[1]',
      /torque tool/,
    ],
    [
      'a checksum of nothing',
      inBig({ is: 'checksum', kind: 'xor-8' }, value),
      'p.json: layout.fields[0].from',
      /nothing/,
    ],
  ])('%s', (_name, change, where, message) => {
    expect(refused(change)).toMatchObject({
      code: 'input-not-valid',
      where: expect.stringContaining(where),
      message: expect.stringMatching(message),
    });
  });

  test('what is no JSON names the file', () => {
    expect(parseProfile('{', 'p.json')).toMatchObject({
      error: { code: 'file-unreadable', where: 'p.json' },
    });
  });
});

test('no bytes make it throw or invent: a value comes only from a frame of exactly the described form', () => {
  const decode = decoderOf(wrenchProfile().layout);
  const nearly = fc
    .tuple(fc.constantFrom(0xa5, 0xa4), fc.nat(255), fc.uint8Array({ minLength: 8, maxLength: 12 }))
    .map(([first, status, rest]) => Uint8Array.of(first, status, ...rest));
  let decoded = 0;
  fc.assert(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 40 }), nearly), (packet) => {
      const result = decode(Buffer.from(packet));
      if (!result.ok) return;
      decoded += 1;
      expect(packet).toHaveLength(12);
      expect(packet[0]).toBe(0xa5);
      expect((packet[1] ?? 0) & 0b0111_1100).toBe(0);
      const valid = ((packet[1] ?? 0) & 0b11) === 0b01;
      const raw = Buffer.from(packet);
      expect(result.value.counts).toEqual(
        [4, 6, 8, 10].map((at) => {
          const value = raw.readInt16BE(at);
          return valid && value !== -0x8000 ? (value === 0 ? 0 : value * 2) : null;
        }),
      );
    }),
    { numRuns: 5_000 },
  );
  // Else the property above would have said nothing about frames that decode.
  expect(decoded).toBeGreaterThan(0);
});
