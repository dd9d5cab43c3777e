import type { ToolDescription } from '../../src/reading.ts';
import { CHARACTERISTIC, SERVICE } from '../imds/numbers.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import { decodeBattery } from './battery.ts';
import { OptionalReader } from './optional.ts';
import { decodeText } from './text.ts';

const decodeSerial = (bytes: Uint8Array) => decodeText('Serial Number 0x2A25', bytes);
const textOf = (text: string | undefined) => (text === '' ? undefined : text);

/** The cleaned serial number, `undefined` when there is none that can be read. Throws link problems. */
export async function readSerial(
  link: Link,
  characteristics: readonly RemoteCharacteristic[],
): Promise<string | undefined> {
  const reader = new OptionalReader(link);
  return textOf(
    await reader.read(characteristics, SERVICE.deviceInformation, CHARACTERISTIC.serial, decodeSerial),
  );
}

/** What Device Information and Battery say, and how the link stands; what cannot be read is left with `reader`. */
export async function readInformation(
  link: Link,
  characteristics: readonly RemoteCharacteristic[],
  reader: OptionalReader,
): Promise<Pick<ToolDescription, 'maker' | 'model' | 'serial' | 'firmware' | 'batteryPercent' | 'link'>> {
  const info = async (uuid: string, what: string) =>
    textOf(
      await reader.read(characteristics, SERVICE.deviceInformation, uuid, (bytes) => decodeText(what, bytes)),
    );
  const parts = {
    maker: await info(CHARACTERISTIC.maker, 'Manufacturer Name 0x2A29'),
    model: await info(CHARACTERISTIC.model, 'Model Number 0x2A24'),
    serial: await info(CHARACTERISTIC.serial, 'Serial Number 0x2A25'),
    firmware: await info(CHARACTERISTIC.firmware, 'Firmware Revision 0x2A26'),
    batteryPercent: await reader.read(
      characteristics,
      SERVICE.battery,
      CHARACTERISTIC.batteryLevel,
      decodeBattery,
    ),
  };
  return {
    ...present(parts),
    link: {
      kind: 'bluetooth-le',
      address: link.address,
      ...(link.encrypted() && { encrypted: true }),
      // Just Works keeps listeners out and proves nothing about who is at the other end.
      authenticated: false,
    },
  };
}

/** The fields that are there, and no others. */
export function present<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
