import { describe, expect, test } from 'vitest';
import { medicalFloat16, medicalFloat32 } from '../../drivers/profile/medical-float.ts';
import { readNumber } from '../../drivers/profile/number.ts';

const bytes = (hex: string) => Buffer.from(hex.replaceAll(' ', ''), 'hex');

/**
 * IEEE 11073-20601 FLOAT. Sources: Bluetooth SIG, Personal Health Devices Transcoding White Paper v16, 2.2.1 (36.4);
 * stackoverflow.com question 60841331 (34.79, 36.97); the negative ones and 25.000 are worked from the same layout.
 */
describe('FLOAT as published', () => {
  test.each<[string, number, number, number]>([
    ['6C 01 00 FF', 364, -1, 36.4],
    ['97 0D 00 FE', 3_479, -2, 34.79],
    ['71 0E 00 FE', 3_697, -2, 36.97],
    ['73 01 00 FF', 371, -1, 37.1],
    ['FF FF FF 00', -1, 0, -1],
    ['94 FE FF FF', -364, -1, -36.4],
    ['A8 61 00 FD', 25_000, -3, 25],
    ['FD FF 7F 00', 8_388_605, 0, 8_388_605],
    ['03 00 80 00', -8_388_605, 0, -8_388_605],
  ])('%s is %d · 10^%d', (hex, mantissa, exponent, value) => {
    expect(readNumber(bytes(hex), 0, 'medfloat32', 'little')).toEqual({ mantissa, exponent });
    expect(exponent < 0 ? mantissa / 10 ** -exponent : mantissa).toBe(value);
    expect(readNumber(bytes(hex).reverse(), 0, 'medfloat32', 'big')).toEqual({ mantissa, exponent });
  });

  test.each([
    [0x007f_ffff, 'nan'],
    [0x0080_0000, 'nres'],
    [0x007f_fffe, '+inf'],
    [0x0080_0002, '-inf'],
    [0x0080_0001, 'reserved'],
  ] as const)('0x%s is no number', (raw, none) => {
    expect(medicalFloat32(raw)).toEqual({ none });
  });

  test('the same mantissas are numbers at any other exponent', () => {
    expect(medicalFloat32(0xff7f_ffff)).toEqual({ mantissa: 0x7f_ffff, exponent: -1 });
  });
});

/** SFLOAT. Source: the same white paper, 2.2.2 (114); 36.4, -1 and 500 as in open implementations of it. */
describe('SFLOAT as published', () => {
  test.each<[string, number, number]>([
    ['72 00', 114, 0],
    ['6C F1', 364, -1],
    ['FF 0F', -1, 0],
    ['05 20', 5, 2],
  ])('%s is %d · 10^%d', (hex, mantissa, exponent) => {
    expect(readNumber(bytes(hex), 0, 'medfloat16', 'little')).toEqual({ mantissa, exponent });
  });

  test.each([
    [0x07ff, 'nan'],
    [0x0800, 'nres'],
    [0x07fe, '+inf'],
    [0x0802, '-inf'],
    [0x0801, 'reserved'],
  ] as const)('0x%s is no number', (raw, none) => {
    expect(medicalFloat16(raw)).toEqual({ none });
  });

  test('the neighbours of the codes are numbers', () => {
    expect(medicalFloat16(0x07fd)).toEqual({ mantissa: 2_045, exponent: 0 });
    expect(medicalFloat16(0x0803)).toEqual({ mantissa: -2_045, exponent: 0 });
  });
});
