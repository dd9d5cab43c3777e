import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeBattery, encodeBattery } from '../../../drivers/bluetooth/battery.ts';
import {
  decodeMeasurementDescription,
  encodeMeasurementDescription,
} from '../../../drivers/imds/measurement-description.ts';
import { LENGTH, TORQUE } from '../../../drivers/imds/numbers.ts';
import { contradiction, decodePresentation, encodePresentation } from '../../../drivers/imds/presentation.ts';
import { decodeValidRange, encodeValidRange } from '../../../drivers/imds/valid-range.ts';
import { decodeValue, encodeValue } from '../../../drivers/imds/value.ts';
import type { Problem } from '../../../src/problem.ts';
import type { Result } from '../../../src/result.ts';
import { good } from '../bench.ts';

const bytes = (hex: string) => Uint8Array.from(Buffer.from(hex.replaceAll(' ', ''), 'hex'));
const problemOf = (result: Result<unknown, Problem>) => (result.ok ? undefined : result.error);

const format = fc.constantFrom(TORQUE, LENGTH);
const torqueCounts = fc.integer({ min: -0x8000_0000, max: 0x7fff_fffe });
const measured = fc.oneof(
  fc.constant({ kind: 'not-known' } as const),
  fc.record({ kind: fc.constant('value' as const), counts: torqueCounts }),
);
const amount = fc.oneof(
  fc.constant({ kind: 'not-known' } as const),
  fc.record({ kind: fc.constant('value' as const), counts: fc.nat(0x7fff_fffe) }),
);
const u24 = fc.nat(0xff_ffff);
const presentation = fc.record({
  formatCode: fc.integer({ min: 1, max: 0x1c }),
  exponent: fc.integer({ min: -128, max: 127 }),
  unitCode: fc.nat(0xffff),
  description: fc.nat(0xffff),
});
const range = fc
  .tuple(torqueCounts, torqueCounts)
  .map(([a, b]) => ({ lowerCounts: Math.min(a, b), upperCounts: Math.max(a, b) }));
const measurementDescription = fc.record(
  {
    samplingFunction: fc.constantFrom(
      'unspecified',
      'instantaneous',
      'mean',
      'rms',
      'maximum',
      'minimum',
      'moving-average',
    ),
    measurementPeriodMs: u24,
    updateIntervalMs: u24,
    description: fc.nat(0xffff),
    resolution: amount,
    relativeUncertaintyPermille: fc.nat(0xff),
    absoluteUncertainty: amount,
  },
  { requiredKeys: [] },
);

describe('what was encoded is decoded to the same', () => {
  const identity = <T>(values: fc.Arbitrary<T>, roundTrip: (value: T) => T) =>
    fc.assert(
      fc.property(values, (value) => {
        expect(roundTrip(value)).toEqual(value);
      }),
      { numRuns: 500 },
    );

  test('torque', () => identity(measured, (v) => good(decodeValue(TORQUE, good(encodeValue(TORQUE, v))))));
  test('presentation format', () =>
    identity(presentation, (v) => good(decodePresentation(good(encodePresentation(v))))));
  test('valid range', () =>
    identity(range, (v) =>
      good(decodeValidRange(TORQUE.integer, good(encodeValidRange(TORQUE.integer, v)))),
    ));
  test('measurement description', () =>
    identity(measurementDescription, (v) =>
      good(decodeMeasurementDescription(LENGTH, good(encodeMeasurementDescription(LENGTH, v)))),
    ));
  test('battery', () => identity(fc.nat(100), (v) => good(decodeBattery(good(encodeBattery(v))))));
});

/** Whatever can be read gives the same bytes again; whatever cannot is a problem with an offset. */
function checkBytes<T>(
  input: Uint8Array,
  decoded: Result<T>,
  encode: (value: T) => Result<Uint8Array>,
): void {
  if (decoded.ok) {
    expect(Buffer.from(good(encode(decoded.value))).toString('hex')).toBe(Buffer.from(input).toString('hex'));
  } else {
    expect(decoded.error).toMatchObject({
      code: 'bluetooth-layout',
      where: expect.stringMatching(/ byte \d+$/),
    });
  }
}

test('no bytes make a decoder throw, and each value has only one form on air', () => {
  const input = fc.uint8Array({ maxLength: 24 });
  // Small flags and the right length are rare by chance; without them the long layout is hardly ever reached.
  const described = fc
    .tuple(fc.nat(0x7f), fc.uint8Array({ maxLength: 20 }))
    .map(([f, rest]) => Uint8Array.of(f, 0, ...rest));
  fc.assert(
    fc.property(fc.oneof(input, described), format, (bytes, quantity) => {
      checkBytes(bytes, decodePresentation(bytes), encodePresentation);
      checkBytes(bytes, decodeBattery(bytes), encodeBattery);
      checkBytes(bytes, decodeValue(quantity, bytes), (v) => encodeValue(quantity, v));
      checkBytes(bytes, decodeValidRange(quantity.integer, bytes), (v) =>
        encodeValidRange(quantity.integer, v),
      );
      checkBytes(bytes, decodeMeasurementDescription(quantity, bytes), (v) =>
        encodeMeasurementDescription(quantity, v),
      );
    }),
    { numRuns: 2_000 },
  );
});

describe('bytes that break the layout are refused, with the offset', () => {
  test.each<[string, Result<unknown, Problem>, number, RegExp]>([
    [
      'a value too short',
      decodeValue(TORQUE, bytes('C4 09 00')),
      0,
      /expected 4 bytes of the value, found 3/,
    ],
    [
      'a value too long',
      decodeValue(LENGTH, bytes('40 1F 00 00 00')),
      4,
      /expected the end after 4 bytes, found 1 more/,
    ],
    ['no value', decodeValue(TORQUE, bytes('')), 0, /found 0/],
    ['a reserved format', decodePresentation(bytes('1D FE 41 27 01 00 00')), 0, /reserved 0x1D/],
    ['format 0', decodePresentation(bytes('00 FE 41 27 01 00 00')), 0, /reserved 0x00/],
    ['another name space', decodePresentation(bytes('10 FE 41 27 02 00 00')), 4, /name space 0x01/],
    ['a presentation cut in its unit', decodePresentation(bytes('10 FE 41')), 2, /the unit/],
    ['a presentation too long', decodePresentation(bytes('10 FE 41 27 01 00 00 00')), 7, /1 more/],
    [
      'a range upside down',
      decodeValidRange(TORQUE.integer, bytes('02 00 00 00 01 00 00 00')),
      4,
      /at least 2, found 1/,
    ],
    ['a range of another size', decodeValidRange(TORQUE.integer, bytes('58 02 20 1C')), 4, /the upper value/],
    [
      'reserved flag bits',
      decodeMeasurementDescription(TORQUE, bytes('80 00')),
      0,
      /bits 7 to 15 to be 0, found 0x0080/,
    ],
    ['reserved high flag bits', decodeMeasurementDescription(TORQUE, bytes('01 80 01')), 0, /0x8001/],
    [
      'a reserved sampling function',
      decodeMeasurementDescription(TORQUE, bytes('01 00 07')),
      2,
      /0 to 6, found 7/,
    ],
    [
      'an interval cut',
      decodeMeasurementDescription(TORQUE, bytes('05 00 01 0A 00')),
      3,
      /3 bytes of the update interval/,
    ],
    [
      'a resolution below nothing',
      decodeMeasurementDescription(TORQUE, bytes('10 00 FF FF FF FF')),
      2,
      /0 counts or more/,
    ],
    ['fields without flags', decodeMeasurementDescription(TORQUE, bytes('00 00 04')), 2, /1 more/],
    ['a battery above full', decodeBattery(bytes('65')), 0, /0 to 100 percent, found 101/],
    ['a battery of two bytes', decodeBattery(bytes('32 00')), 1, /1 more/],
  ])('%s', (_name, result, offset, message) => {
    expect(problemOf(result)).toMatchObject({
      code: 'bluetooth-layout',
      where: expect.stringMatching(new RegExp(` byte ${offset}$`)),
      message: expect.stringMatching(message),
    });
  });
});

describe('values that no bytes can carry are refused by the encoders', () => {
  test.each<[string, Result<unknown, Problem>, RegExp]>([
    [
      'the counts that mean "not known"',
      encodeValue(TORQUE, { kind: 'value', counts: 0x7fff_ffff }),
      /not known/,
    ],
    ['too many counts', encodeValue(LENGTH, { kind: 'value', counts: 2 ** 32 }), /0 to 4294967295/],
    ['a length below nothing', encodeValue(LENGTH, { kind: 'value', counts: -1 }), /got -1/],
    ['half a count', encodeValue(TORQUE, { kind: 'value', counts: 0.5 }), /whole number/],
    ['no number', encodeValue(TORQUE, { kind: 'value', counts: Number.NaN }), /got NaN/],
    [
      'a reserved format',
      encodePresentation({ formatCode: 0, exponent: 0, unitCode: 0, description: 0 }),
      /reserved/,
    ],
    [
      'an exponent out of range',
      encodePresentation({ formatCode: 4, exponent: 200, unitCode: 0, description: 0 }),
      /exponent/,
    ],
    [
      'a range upside down',
      encodeValidRange(LENGTH.integer, { lowerCounts: 2, upperCounts: 1 }),
      /at least 2/,
    ],
    [
      'an interval out of range',
      encodeMeasurementDescription(TORQUE, { updateIntervalMs: 2 ** 24 }),
      /update interval/,
    ],
    [
      'a negative uncertainty',
      encodeMeasurementDescription(TORQUE, { absoluteUncertainty: { kind: 'value', counts: -1 } }),
      /0 counts or more/,
    ],
    ['a battery above full', encodeBattery(101), /0 to 100/],
  ])('%s', (_name, result, message) => {
    expect(problemOf(result)).toMatchObject({
      code: 'bluetooth-layout',
      message: expect.stringMatching(message),
    });
  });
});

test('a presentation that contradicts the definition names every field that does', () => {
  const found = { formatCode: 0x10, exponent: -1, unitCode: 0x2725, description: 0 };
  expect(contradiction(found, TORQUE)).toMatchObject({
    code: 'imds-format-contradiction',
    where: 'Presentation Format 0x2904 byte 1',
    message:
      'the tool presents Torque 0x2C0B with exponent -1 where -2 is defined, unit 0x2725 where 0x2741 is defined; its readings cannot be trusted',
  });
});
