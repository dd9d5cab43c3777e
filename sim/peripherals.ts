import { encodeBattery } from '../drivers/bluetooth/battery.ts';
import { encodeText } from '../drivers/bluetooth/text.ts';
import { encodeMeasurementDescription } from '../drivers/imds/measurement-description.ts';
import {
  APPEARANCE,
  CHARACTERISTIC,
  DESCRIPTOR,
  LENGTH,
  type QuantityFormat,
  SERVICE,
  TORQUE,
} from '../drivers/imds/numbers.ts';
import { encodePresentation } from '../drivers/imds/presentation.ts';
import { encodeValidRange } from '../drivers/imds/valid-range.ts';
import { encodeValue } from '../drivers/imds/value.ts';
import { orThrow } from '../src/result.ts';
import type { PeripheralDefinition } from './controller/index.ts';

/** A simulated tool as it presents itself on the air. */
export interface Presented {
  readonly quantity: 'torque' | 'length';
  readonly address: string;
  readonly name: string;
  readonly serial: string;
  readonly batteryPercent: number;
  readonly updateIntervalMs: number;
  readonly samplingFunction: 'instantaneous' | 'maximum';
  readonly resolutionCounts: number;
  /** In steps of 0.1 %; what the device claims of itself. */
  readonly uncertaintyPermille: number;
  readonly rangeCounts: readonly [number, number];
}

const KIND = {
  torque: { format: TORQUE, characteristic: CHARACTERISTIC.torque, appearance: APPEARANCE.torqueWrench },
  length: {
    format: LENGTH,
    characteristic: CHARACTERISTIC.length,
    appearance: APPEARANCE.industrialMeasurementDevice,
  },
} as const;

/** The peripheral of a tool: Industrial Measurement Device Service, Device Information, Battery. */
export function peripheralOf(tool: Presented): PeripheralDefinition {
  const { format, characteristic, appearance } = KIND[tool.quantity];
  const text = (value: string) => orThrow(encodeText('Device Information', value));
  return {
    address: tool.address,
    addressType: 'random',
    name: tool.name,
    appearance,
    advertisedServices: [onAir(SERVICE.industrialMeasurement)],
    advertisingIntervalMs: 100,
    rssi: -58,
    mtu: 64,
    services: [
      {
        uuid: onAir(SERVICE.industrialMeasurement),
        characteristics: [
          { uuid: onAir(characteristic), properties: ['notify'], descriptors: descriptorsOf(tool, format) },
        ],
      },
      {
        uuid: onAir(SERVICE.deviceInformation),
        characteristics: [
          { uuid: onAir(CHARACTERISTIC.maker), properties: ['read'], value: text('Simulated') },
          {
            uuid: onAir(CHARACTERISTIC.model),
            properties: ['read'],
            value: text(`Simulated ${tool.quantity}`),
          },
          { uuid: onAir(CHARACTERISTIC.serial), properties: ['read'], value: text(tool.serial) },
          { uuid: onAir(CHARACTERISTIC.firmware), properties: ['read'], value: text('sim 1') },
        ],
      },
      {
        uuid: onAir(SERVICE.battery),
        characteristics: [
          {
            uuid: onAir(CHARACTERISTIC.batteryLevel),
            properties: ['read'],
            value: orThrow(encodeBattery(tool.batteryPercent)),
          },
        ],
      },
    ],
  };
}

/** One notification of the tool. */
export function notification(quantity: 'torque' | 'length', counts: number): Uint8Array {
  return orThrow(encodeValue(KIND[quantity].format, { kind: 'value', counts }));
}

/** The characteristic that the tool notifies. */
export const measuredBy = (quantity: 'torque' | 'length') => onAir(KIND[quantity].characteristic);

/** The 16-bit number that a short UUID stands for. */
function onAir(uuid: string): number {
  return Number.parseInt(uuid, 16);
}

function descriptorsOf(tool: Presented, format: QuantityFormat) {
  const [lower, upper] = tool.rangeCounts;
  return [
    {
      uuid: onAir(DESCRIPTOR.presentationFormat),
      value: orThrow(
        encodePresentation({
          formatCode: format.formatCode,
          exponent: format.exponent,
          unitCode: format.unitCode,
          description: 0,
        }),
      ),
    },
    {
      uuid: onAir(DESCRIPTOR.validRange),
      value: orThrow(encodeValidRange(format.integer, { lowerCounts: lower, upperCounts: upper })),
    },
    {
      uuid: onAir(DESCRIPTOR.measurementDescription),
      value: orThrow(
        encodeMeasurementDescription(format, {
          samplingFunction: tool.samplingFunction,
          updateIntervalMs: tool.updateIntervalMs,
          resolution: { kind: 'value', counts: tool.resolutionCounts },
          relativeUncertaintyPermille: tool.uncertaintyPermille,
        }),
      ),
    },
  ];
}
