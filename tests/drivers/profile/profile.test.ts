import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseProfile } from '../../../drivers/profile/file.ts';
import { decodePacket, scaleOfProfile } from '../../../drivers/profile/packet.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { scaled } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { gaugeProfile, rawProfile, wrenchProfile } from './example.ts';

const bytes = (hex: string) => Buffer.from(hex.replaceAll(' ', ''), 'hex');
const read = (profile: Profile, hex: string) => decodePacket(profile, bytes(hex));

/** A profile of one bare number. */
function plain(change: Record<string, unknown>): Profile {
  const { packet, start: _start, resolution: _resolution, ...rest } = rawProfile();
  expect(packet).toBeTypeOf('object');
  return good(
    parseProfile(
      JSON.stringify({ ...rest, packet: { samples: { offset: 0, type: 'sint16' } }, ...change }),
      'plain.json',
    ),
  );
}

describe('a packet is read as it is described', () => {
  test('fixed byte, status, counter and four samples in big-endian order', () => {
    expect(read(wrenchProfile(), 'a5 01 01 02 0064 0064 ff9c 8000')).toEqual({
      ok: true,
      value: { samples: [200, 200, -200, null], noValue: undefined, counter: 0x0102 },
    });
  });

  test('a status that says that there is no value makes all samples unknown, with the reason', () => {
    expect(read(wrenchProfile(), 'a5 82 0000 0064 0064 0064 0064')).toMatchObject({
      value: { samples: [null, null, null, null], noValue: 'the wrench has not settled, overload' },
    });
  });

  test.each<[string, string, RegExp]>([
    [
      'another fixed byte',
      'a6 01 0000 0064 0064 0064 0064',
      /^byte 0: expected the fixed bytes a5, found a6/,
    ],
    [
      'a status bit that nobody described',
      'a5 21 0000 0064 0064 0064 0064',
      /^byte 1: status bits 0x20 are set/,
    ],
    [
      'a packet cut short',
      'a5 01 0000 0064 0064 0064 00',
      /^byte 11: expected a packet of 12 bytes, found 11/,
    ],
    ['a packet too long', 'a5 01 0000 0064 0064 0064 0064 00', /expected a packet of 12 bytes, found 13/],
    ['nothing', '', /^byte 0: expected a packet of 12 bytes, found 0/],
  ])('%s is no reading', (_name, hex, message) => {
    expect(read(wrenchProfile(), hex)).toMatchObject({
      ok: false,
      error: { code: 'profile-packet', message: expect.stringMatching(message) },
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
    const exact = /int/.test(type);
    const profile = plain({
      byteOrder: 'little',
      packet: { samples: { offset: 0, type } },
      scale: '1',
      ...(exact ? {} : { resolution: '1' }),
    });
    expect(read(profile, hex)).toMatchObject({ value: { samples: [counts] } });
  });

  test('as many samples as the packet has room for, with bytes in between', () => {
    const samples = { offset: 1, type: 'uint16', count: 'rest', every: 3 };
    const profile = plain({ packet: { samples }, scale: '1' });
    expect(read(profile, 'ff 0001 aa 0002 bb 0003')).toMatchObject({ value: { samples: [1, 2, 3] } });
    expect(read(profile, 'ff 0001 aa 0002 bb')).toMatchObject({ value: { samples: [1, 2] } });
    expect(read(profile, 'ff 0001 aa 00')).toMatchObject({ ok: false });
    expect(read(profile, 'ff')).toMatchObject({ ok: false });
  });
});

describe('scale and unit', () => {
  test.each<[string, string, string, number, number]>([
    ['N·m', '0.01', '2500', 2_500, -2],
    ['N·m', '0.02', '1250', 2_500, -2],
    ['mN·m', '50', '500', 2_500, -2],
    ['cN·m', '1', '2500', 2_500, -2],
  ])('%s times %s: %s is exact', (unit, scale, raw, counts, exponent) => {
    const profile = plain({ unit, scale, packet: { samples: { offset: 0, type: 'uint16' } } });
    expect(scaleOfProfile(profile).exponent).toBe(exponent);
    const packet = Buffer.alloc(2);
    packet.writeUInt16BE(Number(raw));
    expect(decodePacket(profile, packet)).toMatchObject({ value: { samples: [counts] } });
  });

  test.each<[string, string, number]>([
    ['lbf·ft', '0.1', 0.135_581_794_833_14],
    ['lbf·in', '0.5', 0.056_492_414_513_808],
    ['kgf·m', '0.01', 0.098_066_5],
    ['kgf·cm', '1', 0.098_066_5],
  ])('%s times %s becomes N·m to a thousandth of a step', (unit, scale, stepNm) => {
    const profile = plain({ unit, scale });
    const { exponent } = scaleOfProfile(profile);
    fc.assert(
      fc.property(fc.integer({ min: -0x8000, max: 0x7fff }), (raw) => {
        const packet = Buffer.alloc(2);
        packet.writeInt16BE(raw);
        const [counts] = good(decodePacket(profile, packet)).samples;
        expect(Math.abs(scaled(counts ?? Number.NaN, exponent) - raw * stepNm)).toBeLessThanOrEqual(
          stepNm / 1_000,
        );
      }),
    );
  });

  test('a gauge in inches', () => {
    const profile = gaugeProfile();
    const { samples } = good(read(profile, '01 1c0000fd'));
    expect(scaled(samples[0] ?? Number.NaN, scaleOfProfile(profile).exponent)).toBeCloseTo(
      0.028 * 0.0254,
      12,
    );
  });
});

describe('a profile that cannot hold is refused, with the place', () => {
  const refused = (change: (profile: Record<string, unknown>) => void) => {
    const profile = rawProfile();
    change(profile);
    const parsed = parseProfile(JSON.stringify(profile), 'p.json');
    return parsed.ok ? undefined : parsed.error;
  };
  const packet = (profile: Record<string, unknown>, change: Record<string, unknown>) =>
    Object.assign(profile['packet'] as object, change);

  test.each<[string, (profile: Record<string, unknown>) => void, string, RegExp]>([
    ['a field that does not exist', (p) => Object.assign(p, { sclae: '1' }), 'p.json', /sclae/],
    ['a scale that is a number', (p) => Object.assign(p, { scale: 0.02 }), 'p.json: scale', /string/],
    ['a scale of nothing', (p) => Object.assign(p, { scale: '0.00' }), 'p.json: scale', /above 0/],
    [
      'a unit of another quantity',
      (p) => Object.assign(p, { unit: 'mm' }),
      'p.json: unit',
      /no unit of torque/,
    ],
    ['a UUID that is none', (p) => Object.assign(p, { advertised: '185' }), 'p.json: advertised', /UUID/],
    [
      'a counter that lies over the status',
      (p) => packet(p, { counter: { offset: 1, type: 'uint16', counts: 'samples' } }),
      'p.json: packet.counter',
      /lies over packet.status/,
    ],
    [
      'a counter that reaches into the samples',
      (p) => packet(p, { counter: { offset: 3, type: 'uint16', counts: 'samples' } }),
      'p.json: packet.counter',
      /reaches into the samples at byte 4/,
    ],
    [
      'a bit that the status does not have',
      (p) => packet(p, { status: { offset: 1, type: 'uint8', bits: [{ bit: 8, means: 'valid' }] } }),
      'p.json: packet.status.bits[0].bit',
      /a uint8 has no bit 8/,
    ],
    [
      'samples that lie over each other',
      (p) => packet(p, { samples: { offset: 4, type: 'sint16', count: 4, every: 1 } }),
      'p.json: packet.samples.every',
      /at least the 2 bytes/,
    ],
    [
      'a floating point number without a step',
      (p) => packet(p, { samples: { offset: 4, type: 'float32' } }),
      'p.json: resolution',
      /smallest step/,
    ],
    [
      'a step finer than an integer',
      (p) => Object.assign(p, { resolution: '0.001' }),
      'p.json: resolution',
      /0.02/,
    ],
  ])('%s', (_name, change, where, message) => {
    expect(refused(change)).toMatchObject({
      code: 'input-not-valid',
      where,
      message: expect.stringMatching(message),
    });
  });

  test('what is no JSON names the file', () => {
    expect(parseProfile('{', 'p.json')).toMatchObject({
      error: { code: 'file-unreadable', where: 'p.json' },
    });
  });
});

test('no bytes make it throw or invent: a value comes only from a packet of exactly the described form', () => {
  const profile = wrenchProfile();
  const nearly = fc
    .tuple(fc.constantFrom(0xa5, 0xa4), fc.nat(255), fc.uint8Array({ minLength: 8, maxLength: 12 }))
    .map(([first, status, rest]) => Uint8Array.of(first, status, ...rest));
  let decoded = 0;
  fc.assert(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 40 }), nearly), (packet) => {
      const result = decodePacket(profile, packet);
      if (!result.ok) return;
      decoded += 1;
      expect(packet).toHaveLength(12);
      expect(packet[0]).toBe(0xa5);
      expect((packet[1] ?? 0) & 0b0111_1100).toBe(0);
      const valid = ((packet[1] ?? 0) & 0b11) === 0b01;
      const raw = Buffer.from(packet);
      expect(result.value.samples).toEqual(
        [4, 6, 8, 10].map((at) => {
          const value = raw.readInt16BE(at);
          return valid && value !== -0x8000 ? (value === 0 ? 0 : value * 2) : null;
        }),
      );
    }),
    { numRuns: 5_000 },
  );
  // Else the property above would have said nothing about packets that decode.
  expect(decoded).toBeGreaterThan(0);
});
