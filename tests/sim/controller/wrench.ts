/** The peripherals that these tests put on air. */
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';

export const TORQUE = 0x2c0b;
export const COMMAND = '8d53dc1d-1db7-4cd3-868b-8a527460aa84';
const SERIAL = 0x2a25;
const LOG = 0x2a28;
export const PRIVATE_SERVICE = '5f0c1e2a-77a4-4b6e-9a53-0f2d6c9b1e40';

/** Long enough to need several parts at any MTU used here. */
export const LOG_BYTES = Buffer.from(Array.from({ length: 300 }, (_, index) => (index * 7) & 0xff));

/** Characteristic Presentation Format: sint32, exponent -2, unit 0x2741 (newton metre). */
export const TORQUE_FORMAT = Buffer.from('10fe4127010000', 'hex');

/** A torque wrench with one characteristic of every sort; `written` collects what was written to it. */
export function wrench(
  changes: Partial<PeripheralDefinition> = {},
  written: Buffer[] = [],
): PeripheralDefinition {
  return {
    address: 'c0:00:00:00:00:01',
    addressType: 'random',
    name: 'W',
    appearance: 0x14c8,
    advertisedServices: [0x185a],
    advertisingIntervalMs: 100,
    rssi: -57,
    mtu: 185,
    services: [
      {
        uuid: 0x185a,
        characteristics: [
          {
            uuid: TORQUE,
            properties: ['read', 'notify'],
            read: () => Buffer.from([0xc4, 0x09, 0, 0]),
            descriptors: [{ uuid: 0x2904, value: TORQUE_FORMAT }],
          },
          {
            uuid: COMMAND,
            properties: ['write', 'writeWithoutResponse', 'indicate'],
            write: (bytes) => void written.push(bytes),
          },
          { uuid: SERIAL, properties: ['read', 'write'], value: Buffer.from('S-1'), requires: 'encryption' },
        ],
      },
      { uuid: PRIVATE_SERVICE, characteristics: [{ uuid: LOG, properties: ['read'], value: LOG_BYTES }] },
    ],
    ...changes,
  };
}
