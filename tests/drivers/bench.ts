import { encodeBattery } from '../../drivers/bluetooth/battery.ts';
import { encodeText } from '../../drivers/bluetooth/text.ts';
import { encodeMeasurementDescription } from '../../drivers/imds/measurement-description.ts';
import { APPEARANCE, LENGTH, type QuantityFormat, TORQUE } from '../../drivers/imds/numbers.ts';
import { encodePresentation, type PresentationFormat } from '../../drivers/imds/presentation.ts';
import { encodeValidRange } from '../../drivers/imds/valid-range.ts';
import { encodeValue } from '../../drivers/imds/value.ts';
import type { Bonds } from '../../drivers/radio/bonds.ts';
import { openRadio } from '../../drivers/radio/open.ts';
import type { Radio } from '../../drivers/radio/radio.ts';
import {
  type Controller,
  createController,
  type HciSocketClass,
  type PeripheralDefinition,
} from '../../sim/controller/index.ts';
import { type VirtualScheduler, virtualScheduler } from '../../sim/scheduler.ts';
import type { Result } from '../../src/result.ts';

/** The value of a result that has to be good for the test to make sense. */
export function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
}

export const counts = (format: QuantityFormat, value: number) =>
  good(encodeValue(format, { kind: 'value', counts: value }));

export interface ToolSpecification {
  readonly address: string;
  readonly name: string;
  readonly serial: string;
  readonly presentation?: Partial<PresentationFormat>;
}

/** A device as data; everything about it can be asked back through the driver. */
function device(format: QuantityFormat, tool: ToolSpecification): PeripheralDefinition {
  const text = (uuid: number, value: string) => ({
    uuid,
    properties: ['read'] as const,
    value: good(encodeText('text', value)),
  });
  const presentation = {
    formatCode: format.formatCode,
    exponent: format.exponent,
    unitCode: format.unitCode,
  };
  return {
    address: tool.address,
    addressType: 'public',
    name: tool.name,
    appearance: format === TORQUE ? APPEARANCE.torqueWrench : APPEARANCE.caliper,
    advertisedServices: [0x185a],
    advertisingIntervalMs: 100,
    rssi: -50,
    mtu: 247,
    services: [
      {
        uuid: 0x185a,
        characteristics: [
          {
            uuid: Number.parseInt(format.characteristic, 16),
            properties: ['notify', 'read'],
            value: good(encodeValue(format, { kind: 'not-known' })),
            descriptors: [
              {
                uuid: 0x2904,
                value: good(encodePresentation({ ...presentation, description: 0, ...tool.presentation })),
              },
              {
                uuid: 0x2906,
                value: good(encodeValidRange(format.integer, { lowerCounts: 0, upperCounts: 20_000 })),
              },
              {
                uuid: 0x2912,
                value: good(
                  encodeMeasurementDescription(format, {
                    samplingFunction: 'instantaneous',
                    updateIntervalMs: 10,
                    resolution: { kind: 'value', counts: 1 },
                    relativeUncertaintyPermille: 40,
                  }),
                ),
              },
              { uuid: 0x2913, value: Uint8Array.of(0xde, 0xad) },
            ],
          },
        ],
      },
      {
        uuid: 0x180a,
        characteristics: [
          text(0x2a29, 'Example Tools'),
          text(0x2a24, `${tool.name}-model`),
          text(0x2a25, tool.serial),
          text(0x2a26, '1.2.3'),
        ],
      },
      {
        uuid: 0x180f,
        characteristics: [{ uuid: 0x2a19, properties: ['read'], value: good(encodeBattery(83)) }],
      },
    ],
  };
}

export const WRENCH = { address: 'c0:00:00:00:00:01', name: 'wrench', serial: 'W-1' } as const;
export const GAUGE = { address: 'c0:00:00:00:00:02', name: 'gauge', serial: 'G-1' } as const;
export const wrench = (change: Partial<ToolSpecification> = {}) => device(TORQUE, { ...WRENCH, ...change });
export const gauge = (change: Partial<ToolSpecification> = {}) => device(LENGTH, { ...GAUGE, ...change });

export interface Bench {
  readonly scheduler: VirtualScheduler;
  readonly controller: Controller;
  readonly radio: Radio;
  /** The socket between noble and the controller, for packets that no well-behaved controller would send. */
  readonly socket: InstanceType<HciSocketClass>;
}

/**
 * The real noble over a virtual controller, all in virtual time; the adapter is given back at the end. `change` puts
 * another socket class in between; `bonds` is what the station keeps of devices that pair.
 */
export async function onBench(
  body: (bench: Bench) => Promise<void>,
  change: (socket: HciSocketClass) => HciSocketClass = (socket) => socket,
  bonds?: Bonds,
): Promise<void> {
  const scheduler = virtualScheduler();
  const controller = createController({ scheduler, address: 'c0:ff:ee:00:00:00' });
  const sockets: InstanceType<HciSocketClass>[] = [];
  class Kept extends change(controller.HciSocket) {
    constructor() {
      super();
      sockets.push(this);
    }
  }
  const opened = openRadio({
    socket: Kept,
    after: scheduler.after,
    ...(bonds !== undefined && { bonds }),
  });
  const radio = good(await scheduler.runUntil(opened));
  const [socket] = sockets;
  if (socket === undefined) throw new Error('noble made no socket');
  try {
    await body({ scheduler, controller, radio, socket });
  } finally {
    await scheduler.runUntil(radio.close());
    controller.close();
  }
}
