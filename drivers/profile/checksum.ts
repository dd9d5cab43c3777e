/*
 * Checksums by name. The CRCs are those of the RevEng catalogue of parametrised CRC algorithms under its names: width,
 * polynomial, first register, whether bits are reflected, and what the result is XORed with; what each of them gives for
 * "123456789" is in tests/published/checksums.test.ts. All of a catalogue entry are reflected on both sides or on neither.
 */

type Crc = readonly [width: 8 | 16, poly: number, init: number, reflected: boolean, xorout: number];

const CRCS = {
  'crc-8/autosar': [8, 0x2f, 0xff, false, 0xff],
  'crc-8/bluetooth': [8, 0xa7, 0x00, true, 0x00],
  'crc-8/cdma2000': [8, 0x9b, 0xff, false, 0x00],
  'crc-8/darc': [8, 0x39, 0x00, true, 0x00],
  'crc-8/dvb-s2': [8, 0xd5, 0x00, false, 0x00],
  'crc-8/gsm-a': [8, 0x1d, 0x00, false, 0x00],
  'crc-8/gsm-b': [8, 0x49, 0x00, false, 0xff],
  'crc-8/hitag': [8, 0x1d, 0xff, false, 0x00],
  'crc-8/i-432-1': [8, 0x07, 0x00, false, 0x55],
  'crc-8/i-code': [8, 0x1d, 0xfd, false, 0x00],
  'crc-8/lte': [8, 0x9b, 0x00, false, 0x00],
  'crc-8/maxim-dow': [8, 0x31, 0x00, true, 0x00],
  'crc-8/mifare-mad': [8, 0x1d, 0xc7, false, 0x00],
  'crc-8/nrsc-5': [8, 0x31, 0xff, false, 0x00],
  'crc-8/opensafety': [8, 0x2f, 0x00, false, 0x00],
  'crc-8/rohc': [8, 0x07, 0xff, true, 0x00],
  'crc-8/sae-j1850': [8, 0x1d, 0xff, false, 0xff],
  'crc-8/smbus': [8, 0x07, 0x00, false, 0x00],
  'crc-8/tech-3250': [8, 0x1d, 0xff, true, 0x00],
  'crc-8/wcdma': [8, 0x9b, 0x00, true, 0x00],
  'crc-16/arc': [16, 0x8005, 0x0000, true, 0x0000],
  'crc-16/cdma2000': [16, 0xc867, 0xffff, false, 0x0000],
  'crc-16/cms': [16, 0x8005, 0xffff, false, 0x0000],
  'crc-16/dds-110': [16, 0x8005, 0x800d, false, 0x0000],
  'crc-16/dect-r': [16, 0x0589, 0x0000, false, 0x0001],
  'crc-16/dect-x': [16, 0x0589, 0x0000, false, 0x0000],
  'crc-16/dnp': [16, 0x3d65, 0x0000, true, 0xffff],
  'crc-16/en-13757': [16, 0x3d65, 0x0000, false, 0xffff],
  'crc-16/genibus': [16, 0x1021, 0xffff, false, 0xffff],
  'crc-16/gsm': [16, 0x1021, 0x0000, false, 0xffff],
  'crc-16/ibm-3740': [16, 0x1021, 0xffff, false, 0x0000],
  'crc-16/ibm-sdlc': [16, 0x1021, 0xffff, true, 0xffff],
  'crc-16/iso-iec-14443-3-a': [16, 0x1021, 0xc6c6, true, 0x0000],
  'crc-16/kermit': [16, 0x1021, 0x0000, true, 0x0000],
  'crc-16/lj1200': [16, 0x6f63, 0x0000, false, 0x0000],
  'crc-16/m17': [16, 0x5935, 0xffff, false, 0x0000],
  'crc-16/maxim-dow': [16, 0x8005, 0x0000, true, 0xffff],
  'crc-16/mcrf4xx': [16, 0x1021, 0xffff, true, 0x0000],
  'crc-16/modbus': [16, 0x8005, 0xffff, true, 0x0000],
  'crc-16/nrsc-5': [16, 0x080b, 0xffff, true, 0x0000],
  'crc-16/opensafety-a': [16, 0x5935, 0x0000, false, 0x0000],
  'crc-16/opensafety-b': [16, 0x755b, 0x0000, false, 0x0000],
  'crc-16/profibus': [16, 0x1dcf, 0xffff, false, 0xffff],
  'crc-16/riello': [16, 0x1021, 0xb2aa, true, 0x0000],
  'crc-16/spi-fujitsu': [16, 0x1021, 0x1d0f, false, 0x0000],
  'crc-16/t10-dif': [16, 0x8bb7, 0x0000, false, 0x0000],
  'crc-16/teledisk': [16, 0xa097, 0x0000, false, 0x0000],
  'crc-16/tms37157': [16, 0x1021, 0x89ec, true, 0x0000],
  'crc-16/umts': [16, 0x8005, 0x0000, false, 0x0000],
  'crc-16/usb': [16, 0x8005, 0xffff, true, 0xffff],
  'crc-16/xmodem': [16, 0x1021, 0x0000, false, 0x0000],
} as const satisfies Record<string, Crc>;

/** Of the sums `negated` makes the sum over all bytes and itself 0, `inverted` all ones. */
const SUMS = ['sum-8', 'sum-8-negated', 'sum-8-inverted', 'xor-8', 'sum-16', 'fletcher-16'] as const;

export type ChecksumKind = keyof typeof CRCS | (typeof SUMS)[number];
export const CHECKSUM_KINDS = [...SUMS, ...Object.keys(CRCS)] as [ChecksumKind, ...ChecksumKind[]];

const isCrc = (kind: ChecksumKind): kind is keyof typeof CRCS => Object.hasOwn(CRCS, kind);

/** Bytes that a checksum takes. */
export const checksumSize = (kind: ChecksumKind): 1 | 2 => {
  if (isCrc(kind)) return CRCS[kind][0] === 8 ? 1 : 2;
  return kind === 'sum-16' || kind === 'fletcher-16' ? 2 : 1;
};

/** The checksum of all bytes of `bytes` from `from` up to `to`, without those from `skip` up to `skipTo`. */
export type Checksum = (bytes: Uint8Array, from: number, to: number, skip: number, skipTo: number) => number;

export function checksumOf(kind: ChecksumKind): Checksum {
  const take = isCrc(kind) ? crc(CRCS[kind]) : sum(kind);
  return (bytes, from, to, skip, skipTo) => {
    let register = take.first;
    for (let i = from; i < to; i++) {
      if (i === skip) i = skipTo;
      if (i >= to) break;
      register = take.next(register, bytes[i] ?? 0);
    }
    return take.last(register);
  };
}

interface Take {
  readonly first: number;
  readonly next: (register: number, byte: number) => number;
  readonly last: (register: number) => number;
}

const same = (register: number) => register;

function sum(kind: (typeof SUMS)[number]): Take {
  switch (kind) {
    case 'sum-8':
      return { first: 0, next: (sum, byte) => (sum + byte) & 0xff, last: same };
    case 'sum-8-negated':
      return { first: 0, next: (sum, byte) => (sum + byte) & 0xff, last: (sum) => -sum & 0xff };
    case 'sum-8-inverted':
      return { first: 0, next: (sum, byte) => (sum + byte) & 0xff, last: (sum) => ~sum & 0xff };
    case 'xor-8':
      return { first: 0, next: (sum, byte) => sum ^ byte, last: same };
    case 'sum-16':
      return { first: 0, next: (sum, byte) => (sum + byte) & 0xffff, last: same };
    case 'fletcher-16':
      return {
        first: 0,
        next: (both, byte) => {
          const low = ((both & 0xff) + byte) % 255;
          return ((((both >> 8) + low) % 255) << 8) | low;
        },
        last: same,
      };
  }
}

/** By a table of 256 entries, which is made once for each kind that a profile names. */
function crc([width, poly, init, reflected, xorout]: Crc): Take {
  const mask = 2 ** width - 1;
  const top = 2 ** (width - 1);
  const table = Uint16Array.from({ length: 256 }, (_, byte) => {
    let register = reflected ? byte : byte << (width - 8);
    for (let bit = 0; bit < 8; bit++)
      register = reflected
        ? (register >> 1) ^ (register & 1 ? mirrored(poly, width) : 0)
        : ((register << 1) ^ (register & top ? poly : 0)) & mask;
    return register;
  });
  const next = reflected
    ? (register: number, byte: number) => (register >> 8) ^ (table[(register ^ byte) & 0xff] ?? 0)
    : (register: number, byte: number) =>
        ((register << 8) & mask) ^ (table[((register >> (width - 8)) ^ byte) & 0xff] ?? 0);
  return {
    first: reflected ? mirrored(init, width) : init,
    next,
    last: (register) => (register ^ xorout) & mask,
  };
}

function mirrored(value: number, width: number): number {
  let back = 0;
  for (let bit = 0; bit < width; bit++) if (value & (1 << bit)) back |= 1 << (width - 1 - bit);
  return back;
}
