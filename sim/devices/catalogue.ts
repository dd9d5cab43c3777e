import { parseProfile } from '../../drivers/profile/file.ts';
import type { Profile } from '../../drivers/profile/schema.ts';
import { orThrow } from '../../src/result.ts';

/** Invented devices of the kinds that real tools are of. None is that of any maker. */

const uuid = (n: number) => `5d${n.toString(16).padStart(2, '0')}0001-7c3e-4b7a-9d10-2a6b8c0d4e5f`;

/** A wrench that notifies; `packet` unless its frames are cut otherwise. */
function wrench(n: number, title: string, layout: unknown, more: Record<string, unknown> = {}): Profile {
  const profile = {
    form: 'plugmark/profile/2',
    title,
    source: 'invented for trying the program',
    quantity: 'torque',
    link: {
      kind: 'bluetooth-le',
      advertised: uuid(n),
      service: uuid(n),
      characteristic: uuid(n + 0x40),
      by: { how: 'notify' },
    },
    frames: { by: 'packet' },
    layout,
    samplingFunction: 'instantaneous',
    updateIntervalMs: 20,
    ...more,
  };
  return orThrow(parseProfile(JSON.stringify(profile), title));
}

const big = (...fields: readonly unknown[]) => ({ of: 'bytes', byteOrder: 'big', fields });
const little = (...fields: readonly unknown[]) => ({ of: 'bytes', byteOrder: 'little', fields });
const text = (...fields: readonly unknown[]) => ({ of: 'text', fields });
const value = (type: string, scale: string, more: Record<string, unknown> = {}) => ({
  is: 'value',
  type,
  scale,
  unit: 'N·m',
  ...more,
});
const fixed = (hex: string) => ({ is: 'fixed', hex });
const sum = (kind: string, more: Record<string, unknown> = {}) => ({ is: 'checksum', kind, ...more });
const flags = (...parts: readonly unknown[]) => ({ is: 'bits', type: 'uint8', parts });
const valid = { is: 'flag', bit: 0, means: 'valid', label: 'not settled' };
const UNITS_BY_CODE = [
  { code: 1, unit: 'N·m', scale: '0.1' },
  { code: 2, unit: 'lbf·ft', scale: '0.1' },
];
const UNITS_BY_TEXT = [
  { text: 'Nm', unit: 'N·m' },
  { text: 'lbft', unit: 'lbf·ft' },
];

/** By what is special about it. */
export const CATALOGUE = {
  'status behind the value': wrench(1, 'Invented wrench 1', big(value('sint16', '0.01'), flags(valid))),
  'checksum behind the samples': wrench(
    2,
    'Invented wrench 2',
    little(
      fixed('a5'),
      { is: 'samples', count: 4, spacingMs: 5, fields: [value('sint16', '0.02')] },
      sum('crc-8/maxim-dow'),
    ),
  ),
  'lines of text': wrench(
    3,
    'Invented wrench 3',
    text(
      { is: 'text', text: 'T' },
      { is: 'value', resolution: '0.01', unit: 'N·m' },
      { is: 'text', text: 'Nm' },
    ),
    { frames: { by: 'delimiter', hex: '0d0a' } },
  ),
  'frames over several packets': wrench(
    4,
    'Invented wrench 4',
    little(
      fixed('a55a'),
      { is: 'size', type: 'uint8' },
      value('float32', '1', { resolution: '0.01' }),
      sum('crc-16/modbus'),
    ),
    { frames: { by: 'length' } },
  ),
  'packed decimal': wrench(
    5,
    'Invented wrench 5',
    big(flags({ is: 'flag', bit: 7, means: 'negative' }), value('bcd16', '0.01'), sum('sum-8')),
  ),
  '12 bits': wrench(
    6,
    'Invented wrench 6',
    big({
      is: 'bits',
      type: 'uint24',
      parts: [
        { is: 'value', bit: 12, bits: 12, type: 'sint', scale: '0.05', unit: 'N·m' },
        { is: 'counter', bit: 4, bits: 8, counts: 'frames' },
        { is: 'flag', bit: 0, means: 'valid' },
      ],
    }),
  ),
  'sign and magnitude': wrench(7, 'Invented wrench 7', little(value('signmag16', '0.02'), sum('xor-8'))),
  'zero offset': wrench(
    8,
    'Invented wrench 8',
    big(value('uint16', '0.01', { zero: 32_768 }), sum('crc-8/smbus')),
  ),
  'negative scale': wrench(
    9,
    'Invented wrench 9',
    little({ is: 'counter', type: 'uint8', counts: 'frames' }, value('sint16', '-0.01')),
  ),
  'unit by a byte': wrench(
    10,
    'Invented wrench 10',
    big(
      { is: 'unit', type: 'uint8', codes: UNITS_BY_CODE },
      { is: 'value', type: 'sint16' },
      sum('sum-8-negated'),
    ),
  ),
  'unit by text': wrench(
    11,
    'Invented wrench 11',
    text(
      { is: 'counter', digits: 4, counts: 'frames' },
      { is: 'text', text: ';' },
      { is: 'value', resolution: '0.1' },
      { is: 'blanks' },
      { is: 'unit', texts: UNITS_BY_TEXT },
      { is: 'text', text: '*' },
      sum('xor-8'),
    ),
    { frames: { by: 'delimiter', hex: '0d0a' } },
  ),
  'torque and angle': wrench(
    12,
    'Invented wrench 12',
    big(
      fixed('02'),
      { is: 'count', type: 'uint8' },
      {
        is: 'samples',
        count: 'rest',
        spacingMs: 10,
        fields: [value('sint16', '0.01'), { is: 'angle', type: 'sint24', scale: '0.1' }],
      },
      sum('crc-16/xmodem'),
      fixed('03'),
    ),
  ),
  'flag below the value': wrench(
    13,
    'Invented wrench 13',
    little({
      is: 'bits',
      type: 'uint16',
      parts: [
        { is: 'value', bit: 1, bits: 15, type: 'sint', scale: '0.01', unit: 'N·m' },
        { is: 'flag', bit: 0, means: 'no-value', label: 'overloaded' },
      ],
    }),
  ),
  'flag above the value': wrench(
    14,
    'Invented wrench 14',
    big({
      is: 'bits',
      type: 'uint16',
      parts: [
        { is: 'value', bit: 0, bits: 12, type: 'sint', scale: '0.05', unit: 'N·m' },
        { is: 'flag', bit: 15, means: 'no-value', label: 'overloaded' },
      ],
    }),
  ),
} as const satisfies Record<string, Profile>;

export type DeviceName = keyof typeof CATALOGUE;
