import type { Problem } from '../../src/problem.ts';
import { err, type Result } from '../../src/result.ts';
import { within } from '../after.ts';
import type { NobleCharacteristic, NobleDescriptor, NoblePeripheral } from './noble.ts';
import type { Link, RemoteCharacteristic } from './radio.ts';
import { linkLost, linkStep } from './step.ts';
import type { TamedNoble } from './tame.ts';

const STEP_TIMEOUT_MS = 5_000;
const CLOSE_TIMEOUT_MS = 2_000;

/** HCI reasons (Core specification, Vol 1 Part F) that a user can do something about. */
const REASONS: Readonly<Record<number, string>> = {
  8: 'out of reach or switched off',
  19: 'ended by the tool',
  21: 'the tool is switching off',
  22: 'ended by this station',
  62: 'the connection could not be established',
};

/**
 * The link over a peripheral that has just connected. All of noble's objects found on it live and die with it: after
 * a reconnect noble makes new ones, and the old ones never hear anything again.
 */
export class NobleLink implements Link {
  readonly address: string;
  readonly down: Promise<string>;
  readonly #tamed: TamedNoble;
  readonly #peripheral: NoblePeripheral;
  readonly #characteristics = new Map<string, NobleCharacteristic>();
  readonly #descriptors = new Map<string, NobleDescriptor>();
  #gone: string | undefined;

  constructor(tamed: TamedNoble, peripheral: NoblePeripheral, address: string) {
    this.address = address;
    this.#tamed = tamed;
    this.#peripheral = peripheral;
    this.down = new Promise((resolve) => {
      peripheral.once('disconnect', (code?: unknown) => resolve(this.#end(code)));
    });
  }

  discover(services: readonly string[]): Promise<Result<readonly RemoteCharacteristic[], Problem>> {
    return this.#step('finding its services', async () => {
      const found: RemoteCharacteristic[] = [];
      for (const service of await this.#peripheral.discoverServicesAsync(services)) {
        for (const characteristic of await service.discoverCharacteristicsAsync([])) {
          const { uuid, properties } = characteristic;
          this.#characteristics.set(key(service.uuid, uuid), characteristic);
          found.push({ service: service.uuid, uuid, properties });
        }
      }
      return found;
    });
  }

  descriptors(of: RemoteCharacteristic): Promise<Result<readonly string[], Problem>> {
    return this.#step(`finding the descriptors of ${of.uuid}`, async () => {
      const found = await this.#characteristic(of).discoverDescriptorsAsync();
      for (const descriptor of found)
        this.#descriptors.set(key(of.service, of.uuid, descriptor.uuid), descriptor);
      return found.map((descriptor) => descriptor.uuid);
    });
  }

  read(of: RemoteCharacteristic): Promise<Result<Uint8Array, Problem>> {
    return this.#step(`reading ${of.uuid}`, () => this.#characteristic(of).readAsync());
  }

  readDescriptor(of: RemoteCharacteristic, descriptor: string): Promise<Result<Uint8Array, Problem>> {
    return this.#step(`reading ${descriptor} of ${of.uuid}`, () =>
      known(this.#descriptors, key(of.service, of.uuid, descriptor)).readValueAsync(),
    );
  }

  subscribe(to: RemoteCharacteristic, listener: (bytes: Uint8Array) => void): Promise<Result<void, Problem>> {
    return this.#step(`subscribing to ${to.uuid}`, () => {
      const characteristic = this.#characteristic(to);
      characteristic.on('data', (bytes: Uint8Array, isNotification: boolean) => {
        if (isNotification) listener(bytes);
      });
      return characteristic.subscribeAsync();
    });
  }

  async close(): Promise<void> {
    if (this.#gone !== undefined) return;
    this.#tamed.noble.disconnect(this.#peripheral.id);
    const answered = await within(this.#tamed.after, this.down, CLOSE_TIMEOUT_MS);
    if (answered === undefined) this.declareDown();
  }

  /** For a link that no controller speaks for any more. */
  declareDown(): void {
    if (this.#gone === undefined) this.#tamed.declareDown(this.#peripheral.id);
  }

  #step<T>(name: string, start: () => Promise<T>): Promise<Result<T, Problem>> {
    // noble answers nothing at all on a link that is gone.
    if (this.#gone !== undefined) return Promise.resolve(err(linkLost(name, this.#gone)));
    return linkStep(this.#tamed.after, name, STEP_TIMEOUT_MS, this.down, start);
  }

  #characteristic(of: RemoteCharacteristic): NobleCharacteristic {
    return known(this.#characteristics, key(of.service, of.uuid));
  }

  #end(code: unknown): string {
    const reason =
      typeof code === 'number' ? (REASONS[code] ?? `reason 0x${code.toString(16)}`) : 'the link ended';
    this.#gone = reason;
    for (const characteristic of this.#characteristics.values()) characteristic.removeAllListeners();
    this.#peripheral.removeAllListeners();
    this.#characteristics.clear();
    this.#descriptors.clear();
    return reason;
  }
}

function key(...uuids: readonly string[]): string {
  return uuids.join('/');
}

function known<T>(map: ReadonlyMap<string, T>, name: string): T {
  const found = map.get(name);
  if (found === undefined) throw new Error(`${name} was not discovered on this link`);
  return found;
}
