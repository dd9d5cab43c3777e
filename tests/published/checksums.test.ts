import { describe, expect, test } from 'vitest';
import {
  CHECKSUM_KINDS,
  type ChecksumKind,
  checksumOf,
  checksumSize,
} from '../../drivers/profile/checksum.ts';

const text = (ascii: string) => Buffer.from(ascii, 'latin1');
const of = (kind: ChecksumKind, bytes: Buffer) => checksumOf(kind)(bytes, 0, bytes.length, -1, -1);

/** Source: G. Cook, Catalogue of parametrised CRC algorithms (RevEng): `check`, what each gives for "123456789". */
const CHECKS: Partial<Record<ChecksumKind, number>> = {
  'crc-8/autosar': 0xdf,
  'crc-8/bluetooth': 0x26,
  'crc-8/cdma2000': 0xda,
  'crc-8/darc': 0x15,
  'crc-8/dvb-s2': 0xbc,
  'crc-8/gsm-a': 0x37,
  'crc-8/gsm-b': 0x94,
  'crc-8/hitag': 0xb4,
  'crc-8/i-432-1': 0xa1,
  'crc-8/i-code': 0x7e,
  'crc-8/lte': 0xea,
  'crc-8/maxim-dow': 0xa1,
  'crc-8/mifare-mad': 0x99,
  'crc-8/nrsc-5': 0xf7,
  'crc-8/opensafety': 0x3e,
  'crc-8/rohc': 0xd0,
  'crc-8/sae-j1850': 0x4b,
  'crc-8/smbus': 0xf4,
  'crc-8/tech-3250': 0x97,
  'crc-8/wcdma': 0x25,
  'crc-16/arc': 0xbb3d,
  'crc-16/cdma2000': 0x4c06,
  'crc-16/cms': 0xaee7,
  'crc-16/dds-110': 0x9ecf,
  'crc-16/dect-r': 0x007e,
  'crc-16/dect-x': 0x007f,
  'crc-16/dnp': 0xea82,
  'crc-16/en-13757': 0xc2b7,
  'crc-16/genibus': 0xd64e,
  'crc-16/gsm': 0xce3c,
  'crc-16/ibm-3740': 0x29b1,
  'crc-16/ibm-sdlc': 0x906e,
  'crc-16/iso-iec-14443-3-a': 0xbf05,
  'crc-16/kermit': 0x2189,
  'crc-16/lj1200': 0xbdf4,
  'crc-16/m17': 0x772b,
  'crc-16/maxim-dow': 0x44c2,
  'crc-16/mcrf4xx': 0x6f91,
  'crc-16/modbus': 0x4b37,
  'crc-16/nrsc-5': 0xa066,
  'crc-16/opensafety-a': 0x5d38,
  'crc-16/opensafety-b': 0x20fe,
  'crc-16/profibus': 0xa819,
  'crc-16/riello': 0x63d0,
  'crc-16/spi-fujitsu': 0xe5cc,
  'crc-16/t10-dif': 0xd0db,
  'crc-16/teledisk': 0x0fb3,
  'crc-16/tms37157': 0x26b1,
  'crc-16/umts': 0xfee8,
  'crc-16/usb': 0xb4c8,
  'crc-16/xmodem': 0x31c3,
};

describe('CRCs as published', () => {
  test.each(Object.entries(CHECKS))('%s of 123456789', (kind, check) => {
    const known = CHECKSUM_KINDS.find((one) => one === kind);
    expect(known).toBeDefined();
    if (known !== undefined) expect(of(known, text('123456789'))).toBe(check);
  });

  test('none is without a published check', () => {
    const crcs = CHECKSUM_KINDS.filter((kind) => kind.startsWith('crc-'));
    expect(crcs.filter((kind) => CHECKS[kind] === undefined)).toEqual([]);
    expect(crcs.length).toBeGreaterThan(40);
  });
});

/** Fletcher-16: test vectors as J. Fletcher's algorithm is commonly cited with them ("abcde", "abcdef", "abcdefgh"). */
test.each([
  ['abcde', 0xc8f0],
  ['abcdef', 0x2057],
  ['abcdefgh', 0x0627],
])('Fletcher-16 of %s', (ascii, check) => {
  expect(of('fletcher-16', text(ascii))).toBe(check);
});

test('sums by their definition', () => {
  const bytes = Buffer.from('f00f81ff', 'hex'); // 240 + 15 + 129 + 255 = 639
  expect(of('sum-8', bytes)).toBe(639 % 256);
  expect(of('sum-16', Buffer.alloc(300, 0xff))).toBe((300 * 255) % 65_536);
  expect((of('sum-8-negated', bytes) + 639) % 256).toBe(0);
  expect((of('sum-8-inverted', bytes) + 639) % 256).toBe(255);
  expect(of('xor-8', bytes)).toBe(0xf0 ^ 0x0f ^ 0x81 ^ 0xff);
  expect(CHECKSUM_KINDS.map(checksumSize).every((size) => size === 1 || size === 2)).toBe(true);
});

test('its own bytes are left out wherever they are', () => {
  const sum = checksumOf('crc-16/modbus');
  const plain = text('123456789');
  for (let at = 0; at <= plain.length; at++) {
    const framed = Buffer.concat([plain.subarray(0, at), Buffer.from('ffff', 'hex'), plain.subarray(at)]);
    expect(sum(framed, 0, framed.length, at, at + 2)).toBe(0x4b37);
  }
});
