import { describe, expect, test } from 'vitest';
import { decodeMeasurementDescription } from '../../drivers/imds/measurement-description.ts';
import { LENGTH, type QuantityFormat, TORQUE } from '../../drivers/imds/numbers.ts';
import { contradiction, decodePresentation, encodePresentation } from '../../drivers/imds/presentation.ts';
import { decodeValidRange, encodeValidRange } from '../../drivers/imds/valid-range.ts';
import { decodeValue, encodeValue } from '../../drivers/imds/value.ts';
import { scaled } from '../../src/reading.ts';

const bytes = (hex: string) => Uint8Array.from(Buffer.from(hex.replaceAll(' ', ''), 'hex'));

/**
 * Torque 0x2C0B: sint32, M=1 d=-2 b=0, 0x7FFFFFFF not known. Length 0x2C0A: uint32, M=1 d=-7 b=0, 0xFFFFFFFF not known.
 * Source: Bluetooth SIG GATT Specification Supplement, as published in the generated documentation of trouble-host 0.2.0
 * (`characteristic::TORQUE`, `characteristic::LENGTH`). The figures are worked from these layouts by hand.
 */
describe('GATT Specification Supplement: Torque and Length', () => {
  test.each<[QuantityFormat, number, number, string]>([
    [TORQUE, 2_500, 25, 'C4 09 00 00'],
    [TORQUE, 2_850, 28.5, '22 0B 00 00'],
    [TORQUE, -1_234, -12.34, '2E FB FF FF'],
    [LENGTH, 8_000, 0.000_8, '40 1F 00 00'],
    [LENGTH, 11_000, 0.001_1, 'F8 2A 00 00'],
    [LENGTH, 7_600, 0.000_76, 'B0 1D 00 00'],
  ])('%o, %d counts', (format, counts, si, hex) => {
    expect(decodeValue(format, bytes(hex))).toEqual({ ok: true, value: { kind: 'value', counts } });
    expect(encodeValue(format, { kind: 'value', counts })).toEqual({ ok: true, value: bytes(hex) });
    expect(scaled(counts, format.exponent)).toBe(si);
  });

  test.each<[QuantityFormat, string]>([
    [TORQUE, 'FF FF FF 7F'],
    [LENGTH, 'FF FF FF FF'],
  ])('%o, value not known', (format, hex) => {
    expect(decodeValue(format, bytes(hex))).toEqual({ ok: true, value: { kind: 'not-known' } });
    expect(encodeValue(format, { kind: 'not-known' })).toEqual({ ok: true, value: bytes(hex) });
  });
});

/**
 * 0x2904: format, exponent, unit, name space, description. Source: org.bluetooth.descriptor.gatt.characteristic_presentation_format
 * (collection gatt-xml); codes 0x10 sint32, 0x08 uint32, 0x2741 N·m, 0x2701 m from the Assigned Numbers, 2026-06-23.
 */
describe('Characteristic Presentation Format', () => {
  test.each<[QuantityFormat, string]>([
    [TORQUE, '10 FE 41 27 01 00 00'],
    [LENGTH, '08 F9 01 27 01 00 00'],
  ])('%o presents itself as it is defined', (format, hex) => {
    const { formatCode, exponent, unitCode } = format;
    const presentation = { formatCode, exponent, unitCode, description: 0 };
    expect(decodePresentation(bytes(hex))).toEqual({ ok: true, value: presentation });
    expect(encodePresentation(presentation)).toEqual({ ok: true, value: bytes(hex) });
    expect(contradiction(presentation, format)).toBeUndefined();
  });
});

/** The two worked examples of org.bluetooth.descriptor.valid_range (collection gatt-xml). */
describe('Valid Range', () => {
  test.each([
    [
      'uint16, 600 to 7200 s',
      { signed: false, size: 2 },
      { lowerCounts: 600, upperCounts: 7_200 },
      '58 02 20 1C',
    ],
    [
      'sint16, exponent -1, -40.0 to 85.0 °C',
      { signed: true, size: 2 },
      { lowerCounts: -400, upperCounts: 850 },
      '70 FE 52 03',
    ],
  ] as const)('%s', (_name, format, range, hex) => {
    expect(decodeValidRange(format, bytes(hex))).toEqual({ ok: true, value: range });
    expect(encodeValidRange(format, range)).toEqual({ ok: true, value: bytes(hex) });
  });
});

/**
 * Order and sizes of the fields of 0x2912 as in the one public decoder found (toolBLEx, BleDescriptors, 2026), not yet
 * compared with the IMDS specification itself. The bytes are worked by hand from that layout.
 */
test('Measurement Description: peak torque, every 10 ms, 0.01 N·m, 4.0 %', () => {
  expect(decodeMeasurementDescription(TORQUE, bytes('35 00 04 0A 00 00 01 00 00 00 28'))).toEqual({
    ok: true,
    value: {
      samplingFunction: 'maximum',
      updateIntervalMs: 10,
      resolution: { kind: 'value', counts: 1 },
      relativeUncertaintyPermille: 40,
    },
  });
});
