import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import { SERVICE, UNCONFIRMED } from './numbers.ts';

/**
 * Hands on the bytes of all that the device has and no public source explains: what can be read once, what is sent
 * as it comes. It ends at the first step that fails, without harm: the measurement does not depend on any of it.
 */
export async function keepUnconfirmed(
  link: Link,
  characteristics: readonly RemoteCharacteristic[],
  measurement: RemoteCharacteristic,
  descriptors: readonly string[],
  keep: (source: string, bytes: Uint8Array) => void,
): Promise<void> {
  const kept = (source: string, result: Result<Uint8Array, Problem>): boolean => {
    if (result.ok && result.value.length > 0) keep(source, result.value);
    return result.ok;
  };
  for (const uuid of descriptors.filter((uuid) => oneOf(UNCONFIRMED.descriptors, uuid))) {
    if (!kept(uuid, await link.readDescriptor(measurement, uuid))) return;
  }
  for (const characteristic of characteristics) {
    const { service, uuid, properties } = characteristic;
    if (service !== SERVICE.industrialMeasurement || !oneOf(UNCONFIRMED.characteristics, uuid)) continue;
    if (properties.includes('read') && !kept(uuid, await link.read(characteristic))) return;
    if (!properties.includes('notify') && !properties.includes('indicate')) continue;
    if (!(await link.subscribe(characteristic, (bytes) => keep(uuid, bytes))).ok) return;
  }
}

function oneOf(list: readonly string[], uuid: string): boolean {
  return list.includes(uuid);
}
