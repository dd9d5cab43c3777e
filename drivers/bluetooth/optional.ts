import type { Problem } from '../../src/problem.ts';
import { orThrow, type Result } from '../../src/result.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';

/** Bytes kept as they came, because they could not be read or no public layout exists. */
export interface RawValue {
  readonly source: string;
  readonly hex: string;
}

/** Reads what a device may have and need not have; throws the problem of a link step, with which all joining ends. */
export class OptionalReader {
  readonly #link: Link;
  readonly unread: RawValue[] = [];

  constructor(link: Link) {
    this.#link = link;
  }

  async read<T>(
    characteristics: readonly RemoteCharacteristic[],
    service: string,
    uuid: string,
    decode: (bytes: Uint8Array) => Result<T, Problem>,
  ): Promise<T | undefined> {
    const characteristic = pick(characteristics, service, uuid);
    if (characteristic === undefined) return undefined;
    return this.#decoded(uuid, orThrow(await this.#link.read(characteristic)), decode);
  }

  async readDescriptor<T>(
    of: RemoteCharacteristic,
    uuid: string,
    decode: (bytes: Uint8Array) => Result<T, Problem>,
  ): Promise<T | undefined> {
    return this.#decoded(uuid, orThrow(await this.#link.readDescriptor(of, uuid)), decode);
  }

  #decoded<T>(
    uuid: string,
    bytes: Uint8Array,
    decode: (bytes: Uint8Array) => Result<T, Problem>,
  ): T | undefined {
    if (bytes.length === 0) return undefined;
    const decoded = decode(bytes);
    if (decoded.ok) return decoded.value;
    this.unread.push({ source: uuid, hex: Buffer.from(bytes).toString('hex') });
    return undefined;
  }
}

export function pick(
  characteristics: readonly RemoteCharacteristic[],
  service: string,
  uuid: string,
): RemoteCharacteristic | undefined {
  return characteristics.find(
    (characteristic) => characteristic.service === service && characteristic.uuid === uuid,
  );
}
