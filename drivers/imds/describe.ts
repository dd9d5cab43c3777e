import type { Problem } from '../../src/problem.ts';
import type { DeclaredUncertainty, ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow, type Result } from '../../src/result.ts';
import { present, readInformation } from '../bluetooth/information.ts';
import type { Unfit } from '../bluetooth/language.ts';
import { OptionalReader, pick, type RawValue } from '../bluetooth/optional.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import { decodeMeasurementDescription, type MeasurementDescription } from './measurement-description.ts';
import { DESCRIPTOR, type QuantityFormat, SERVICE } from './numbers.ts';
import { contradiction, decodePresentation } from './presentation.ts';
import { decodeValidRange } from './valid-range.ts';

export interface Described {
  readonly description: ToolDescription;
  readonly measurement: RemoteCharacteristic;
  readonly descriptors: readonly string[];
  /** Parts of the description that could not be read; they are missing from it. */
  readonly unread: readonly RawValue[];
}

/**
 * All that the device says of itself. The error is a refusal: the device is not what it should be, and asking again
 * will not change that. Throws link problems.
 */
export async function describe(
  link: Link,
  characteristics: readonly RemoteCharacteristic[],
  format: QuantityFormat,
): Promise<Result<Described, Unfit>> {
  const measurement = pick(characteristics, SERVICE.industrialMeasurement, format.characteristic);
  if (measurement === undefined) return err(notMeasuring(link.address, format, 'does not offer'));
  if (!measurement.properties.some((property) => property === 'notify' || property === 'indicate')) {
    return err(notMeasuring(link.address, format, 'does not send'));
  }
  const descriptors = orThrow(await link.descriptors(measurement));
  const presentation = await checkPresentation(link, measurement, descriptors, format);
  if (!presentation.ok) return err({ reason: 'other-format', problem: presentation.error });

  const reader = new OptionalReader(link);
  const descriptor = <T>(uuid: string, decode: (bytes: Uint8Array) => Result<T, Problem>) =>
    descriptors.includes(uuid) ? reader.readDescriptor(measurement, uuid, decode) : undefined;

  const information = await readInformation(link, characteristics, reader);
  const validRange = await descriptor(DESCRIPTOR.validRange, (bytes) =>
    decodeValidRange(format.integer, bytes),
  );
  const stated = await descriptor(DESCRIPTOR.measurementDescription, (bytes) =>
    decodeMeasurementDescription(format, bytes),
  );
  const description: ToolDescription = {
    quantity: format.quantity,
    unit: format.unit,
    exponent: format.exponent,
    ...information,
    ...(validRange !== undefined && { validRange }),
    ...measurementPart(stated ?? {}),
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

function measurementPart(stated: MeasurementDescription) {
  return {
    samplingFunction: stated.samplingFunction ?? ('unspecified' as const),
    ...present({
      updateIntervalMs: stated.updateIntervalMs,
      resolutionCounts: stated.resolution?.kind === 'value' ? stated.resolution.counts : undefined,
      uncertainty: uncertaintyOf(stated),
    }),
  };
}

/** The description has room for one; the relative one is preferred, because it holds over the whole range. */
function uncertaintyOf(stated: MeasurementDescription): DeclaredUncertainty | undefined {
  if (stated.relativeUncertaintyPermille !== undefined) {
    return { kind: 'relative', percent: stated.relativeUncertaintyPermille / 10 };
  }
  if (stated.absoluteUncertainty?.kind === 'value') {
    return { kind: 'absolute', counts: stated.absoluteUncertainty.counts };
  }
  return undefined;
}

function notMeasuring(address: string, format: QuantityFormat, how: string): Unfit {
  const problem: Problem = {
    code: 'tool-not-measuring',
    where: address,
    message: `the device at ${address} ${how} ${format.name}, so it cannot measure ${format.quantity}`,
    next: 'Name another device for this tool in the configuration of the station.',
  };
  return { reason: 'not-measuring', problem };
}
