import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decoderOf } from '../../../drivers/profile/decoder.ts';
import { inBytes, wrenchProfile } from './example.ts';
import { bytes, NM, read } from './reading.ts';

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
