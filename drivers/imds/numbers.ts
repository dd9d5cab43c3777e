import type { Quantity } from '../../src/reading.ts';

// Numbers from the Bluetooth SIG's Assigned Numbers (edition of 2026-06-23), as short lower-case UUIDs.

export const SERVICE = { deviceInformation: '180a', battery: '180f', industrialMeasurement: '185a' } as const;

export const CHARACTERISTIC = {
  batteryLevel: '2a19',
  model: '2a24',
  serial: '2a25',
  firmware: '2a26',
  maker: '2a29',
  length: '2c0a',
  torque: '2c0b',
} as const;

export const DESCRIPTOR = {
  presentationFormat: '2904',
  validRange: '2906',
  measurementDescription: '2912',
} as const;

/**
 * Known by number, but no public source confirms their layouts: kept as raw bytes, never interpreted.
 * IMD Control 0x2C12 and Historical Data 0x2C13 belong here too; they only answer commands, which nobody sends.
 */
export const UNCONFIRMED = {
  characteristics: ['2c0c', '2c0d', '2c0e', '2c0f', '2c10', '2c11'],
  descriptors: ['2913', '2914', '2915'],
} as const;

/** Appearance values (advertising data type 0x19, characteristic 0x2A01) of the tools that speak this service. */
export const APPEARANCE = {
  industrialMeasurementDevice: 0x1480,
  torqueTestingDevice: 0x1481,
  caliper: 0x1482,
  dialIndicator: 0x1483,
  micrometer: 0x1484,
  heightGauge: 0x1485,
  forceGauge: 0x1486,
  industrialTool: 0x14c0,
  torqueWrench: 0x14c8,
  torqueScrewdriver: 0x14c9,
} as const;

/** Codes of the format field of 0x2904; a code without a name is reserved. */
export const FORMAT_NAMES: ReadonlyMap<number, string> = new Map(
  [
    'boolean',
    'uint2',
    'uint4',
    'uint8',
    'uint12',
    'uint16',
    'uint24',
    'uint32',
    'uint48',
    'uint64',
    'uint128',
    'sint8',
    'sint12',
    'sint16',
    'sint24',
    'sint32',
    'sint48',
    'sint64',
    'sint128',
    'float32',
    'float64',
    'medfloat16',
    'medfloat32',
    'uint16[2]',
    'utf8s',
    'utf16s',
    'struct',
    'medASN1',
  ].map((name, index) => [index + 1, name]),
);

/** An integer as it lies in a characteristic. */
export interface IntegerFormat {
  readonly signed: boolean;
  readonly size: 1 | 2 | 3 | 4;
}

/** How a measured quantity lies on air: the value is `counts · 10^exponent` of the unit. */
export interface QuantityFormat {
  readonly quantity: Quantity;
  readonly name: string;
  readonly characteristic: string;
  readonly integer: IntegerFormat;
  readonly formatCode: number;
  readonly exponent: number;
  readonly unitCode: number;
  readonly unit: 'N.m' | 'm';
  /** The counts that mean "value is not known". */
  readonly notKnown: number;
}

/** Steps of 0.01 N·m, positive clockwise. */
export const TORQUE: QuantityFormat = {
  quantity: 'torque',
  name: 'Torque 0x2C0B',
  characteristic: CHARACTERISTIC.torque,
  integer: { signed: true, size: 4 },
  formatCode: 0x10,
  exponent: -2,
  unitCode: 0x2741,
  unit: 'N.m',
  notKnown: 0x7fff_ffff,
};

/** Steps of 100 nm. */
export const LENGTH: QuantityFormat = {
  quantity: 'length',
  name: 'Length 0x2C0A',
  characteristic: CHARACTERISTIC.length,
  integer: { signed: false, size: 4 },
  formatCode: 0x08,
  exponent: -7,
  unitCode: 0x2701,
  unit: 'm',
  notKnown: 0xffff_ffff,
};

export const FORMATS: Readonly<Record<Quantity, QuantityFormat>> = { torque: TORQUE, length: LENGTH };
