import type { Problem } from '../../src/problem.ts';
import type { DeclaredUncertainty, ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow, type Result } from '../../src/result.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import { decodeBattery } from './battery.ts';
import { decodeMeasurementDescription, type MeasurementDescription } from './measurement-description.ts';
import { CHARACTERISTIC, DESCRIPTOR, type QuantityFormat, SERVICE } from './numbers.ts';
import { OptionalReader, pick, type RawValue } from './optional.ts';
import { contradiction, decodePresentation } from './presentation.ts';
import { decodeText } from './text.ts';
import { decodeValidRange } from './valid-range.ts';

export interface Described {
  readonly description: ToolDescription;
  readonly measurement: RemoteCharacteristic;
  readonly descriptors: readonly string[];
  /** Parts of the description that could not be read; they are missing from it. */
  readonly unread: readonly RawValue[];
}

/** The cleaned serial number, `undefined` when there is none that can be read. Throws link problems. */
export async function readSerial(
  link: Link,
  found: readonly RemoteCharacteristic[],
): Promise<string | undefined> {
  const reader = new OptionalReader(link);
  return textOf(await reader.read(found, SERVICE.deviceInformation, CHARACTERISTIC.serial, decodeSerial));
}

const decodeSerial = (bytes: Uint8Array) => decodeText('Serial Number 0x2A25', bytes);
const textOf = (text: string | undefined) => (text === '' ? undefined : text);

/**
 * All that the device says of itself. The error is a refusal: the device is not what it should be, and asking again
 * will not change that. Throws link problems.
 */
export async function describe(
  link: Link,
  found: readonly RemoteCharacteristic[],
  format: QuantityFormat,
): Promise<Result<Described, Problem>> {
  const measurement = pick(found, SERVICE.industrialMeasurement, format.characteristic);
  if (measurement === undefined) return err(notMeasuring(link.address, format, 'does not offer'));
  if (!measurement.properties.some((property) => property === 'notify' || property === 'indicate')) {
    return err(notMeasuring(link.address, format, 'does not send'));
  }
  const descriptors = orThrow(await link.descriptors(measurement));
  const presentation = await checkPresentation(link, measurement, descriptors, format);
  if (!presentation.ok) return presentation;

  const reader = new OptionalReader(link);
  const info = async (uuid: string, what: string) =>
    textOf(await reader.read(found, SERVICE.deviceInformation, uuid, (bytes) => decodeText(what, bytes)));
  const descriptor = <T>(uuid: string, decode: (bytes: Uint8Array) => Result<T, Problem>) =>
    descriptors.includes(uuid) ? reader.readDescriptor(measurement, uuid, decode) : undefined;

  const parts = {
    maker: await info(CHARACTERISTIC.maker, 'Manufacturer Name 0x2A29'),
    model: await info(CHARACTERISTIC.model, 'Model Number 0x2A24'),
    serial: textOf(await reader.read(found, SERVICE.deviceInformation, CHARACTERISTIC.serial, decodeSerial)),
    firmware: await info(CHARACTERISTIC.firmware, 'Firmware Revision 0x2A26'),
    batteryPercent: await reader.read(found, SERVICE.battery, CHARACTERISTIC.batteryLevel, decodeBattery),
    validRange: await descriptor(DESCRIPTOR.validRange, (bytes) => decodeValidRange(format.integer, bytes)),
  };
  const said = await descriptor(DESCRIPTOR.measurementDescription, (bytes) =>
    decodeMeasurementDescription(format, bytes),
  );
  const description: ToolDescription = {
    quantity: format.quantity,
    unit: format.unit,
    exponent: format.exponent,
    ...present(parts),
    ...measurementPart(said ?? {}),
    link: { kind: 'bluetooth-le', address: link.address, authenticated: false },
  };
  return ok({ description, measurement, descriptors, unread: reader.unread });
}

/** A format that is there must be readable and the defined one: a wrong exponent would be a wrong torque. */
async function checkPresentation(
  link: Link,
  measurement: RemoteCharacteristic,
  descriptors: readonly string[],
  format: QuantityFormat,
): Promise<Result<void, Problem>> {
  if (!descriptors.includes(DESCRIPTOR.presentationFormat)) return ok(undefined);
  const decoded = decodePresentation(
    orThrow(await link.readDescriptor(measurement, DESCRIPTOR.presentationFormat)),
  );
  if (!decoded.ok) return decoded;
  const problem = contradiction(decoded.value, format);
  return problem === undefined ? ok(undefined) : err(problem);
}

function measurementPart(said: MeasurementDescription) {
  return {
    samplingFunction: said.samplingFunction ?? ('unspecified' as const),
    ...present({
      updateIntervalMs: said.updateIntervalMs,
      resolutionCounts: said.resolution?.kind === 'value' ? said.resolution.counts : undefined,
      uncertainty: uncertaintyOf(said),
    }),
  };
}

/** The description has room for one; the relative one is preferred, because it holds over the whole range. */
function uncertaintyOf(said: MeasurementDescription): DeclaredUncertainty | undefined {
  if (said.relativeUncertaintyPermille !== undefined) {
    return { kind: 'relative', percent: said.relativeUncertaintyPermille / 10 };
  }
  if (said.absoluteUncertainty?.kind === 'value') {
    return { kind: 'absolute', counts: said.absoluteUncertainty.counts };
  }
  return undefined;
}

/** The fields that are there, and no others. */
function present<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function notMeasuring(address: string, format: QuantityFormat, how: string): Problem {
  return {
    code: 'tool-not-measuring',
    where: address,
    message: `The device at ${address} ${how} ${format.name}, so it cannot measure ${format.quantity}.`,
    next: 'Name another device for this tool in the configuration of the station.',
  };
}
