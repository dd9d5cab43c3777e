import type { ToolDescription } from '../../src/reading.ts';
import { err, ok, orThrow } from '../../src/result.ts';
import { readInformation } from '../bluetooth/information.ts';
import type { Language } from '../bluetooth/language.ts';
import { OptionalReader, pick } from '../bluetooth/optional.ts';
import type { SerialLanguage } from '../serial/language.ts';
import type { PackageLink } from './contract.ts';
import type { LoadedDriver } from './load.ts';
import { GuardedSession } from './session.ts';

type LinkOf<K extends PackageLink['kind']> = Extract<PackageLink, { readonly kind: K }>;

/** What the driver says of the tool. */
function aboutOf({ driver }: LoadedDriver): Omit<ToolDescription, 'link'> {
  const { quantity, exponent, resolution, samplingFunction, updateIntervalMs, angle } = driver;
  return {
    quantity,
    unit: quantity === 'torque' ? 'N.m' : 'm',
    exponent,
    resolutionCounts: resolution,
    samplingFunction,
    ...(updateIntervalMs !== undefined && { updateIntervalMs }),
    ...(angle !== undefined && { angle: { exponent: angle.exponent, resolutionCounts: angle.resolution } }),
  };
}

/** A Bluetooth device that the driver of a package reads. */
export function packagedBluetooth(loaded: LoadedDriver, way: LinkOf<'bluetooth-le'>): Language {
  const endpoints = [way, ...way.start];
  return {
    driver: loaded.purl,
    quantity: loaded.driver.quantity,
    advertised: way.advertised,
    services: [...new Set(endpoints.map(({ service }) => service))],
    async open({ link, characteristics, put, clock }) {
      const there = (at: { readonly service: string; readonly characteristic: string }) =>
        pick(characteristics, at.service, at.characteristic);
      const missing = endpoints.find((at) => there(at) === undefined);
      const source = there(way);
      if (missing !== undefined || source === undefined)
        return err({
          reason: 'not-as-described',
          problem: {
            code: 'tool-not-as-described',
            where: link.address,
            message: `the device at ${link.address} has no characteristic ${(missing ?? way).characteristic}, which its driver names`,
            next: 'Choose the driver of this device.',
          },
        });
      const reader = new OptionalReader(link);
      const description = { ...aboutOf(loaded), ...(await readInformation(link, characteristics, reader)) };
      for (const unread of reader.unread) put({ kind: 'raw', atUs: clock.nowUs(), ...unread });
      const session = new GuardedSession(loaded.driver, put, way.characteristic);
      orThrow(await link.subscribe(source, (bytes) => session.take(bytes, clock.nowUs())));
      for (const { hex, ...at } of way.start) {
        const target = there(at);
        if (target !== undefined) orThrow(await link.write(target, Buffer.from(hex, 'hex')));
      }
      return ok({ description });
    },
  };
}

/** A tool on a serial port that the driver of a package reads. */
export const packagedSerial = (loaded: LoadedDriver, way: LinkOf<'serial'>): SerialLanguage => ({
  driver: loaded.purl,
  settings: way,
  about: aboutOf(loaded),
  start: way.start.map(({ hex }) => hex),
  stream: (put, source) => new GuardedSession(loaded.driver, put, source),
});
