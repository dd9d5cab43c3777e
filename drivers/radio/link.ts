import type { Problem } from '../../src/problem.ts';
import type { LinkEnd } from '../../src/reading.ts';
import { err, type Result } from '../../src/result.ts';
import { within } from '../after.ts';
import type { NobleCharacteristic, NobleDescriptor, NoblePeripheral } from './noble.ts';
import type { Pairing } from './pairing.ts';
import type { Link, RemoteCharacteristic } from './radio.ts';
import { linkLost, linkStep } from './step.ts';
import type { TamedNoble } from './tame.ts';

const STEP_TIMEOUT_MS = 5_000;
/** Longer than the supervision time-out of 2 s that noble asks for: by then every live adapter has answered. */
const CLOSE_TIMEOUT_MS = 4_000;

/** HCI reasons (Core specification, Vol 1 Part F) that a user can do something about. */
const REASONS: Readonly<Record<number, readonly [LinkEnd['reason'], words: string]>> = {
  5: ['pairing-failed', 'the pairing failed'],
  6: ['pairing-missing', 'the tool asks for a pairing that is not there'],
  8: ['out-of-reach', 'out of reach or switched off'],
  19: ['ended-by-tool', 'ended by the tool'],
  21: ['tool-switching-off', 'the tool is switching off'],
  22: ['ended-by-station', 'ended by this station'],
  62: ['not-established', 'the connection could not be established'],
};

/**
 * The link over a peripheral that has just connected. All of noble's objects found on it live and die with it: after
 * a reconnect noble makes new ones, and the old ones never hear anything again.
 */
export class NobleLink implements Link {
  readonly address: string;
  readonly down: Promise<LinkEnd>;
  readonly #tamed: TamedNoble;
  readonly #peripheral: NoblePeripheral;
  readonly #onDead: () => void;
  readonly #pairing: Pairing;
  readonly #unpaired: Promise<Problem>;
  readonly #characteristics = new Map<string, NobleCharacteristic>();
  readonly #descriptors = new Map<string, NobleDescriptor>();
  #gone: LinkEnd | undefined;

  /** `onDead` is called when the adapter has not answered and cannot be relied on any more. */
  constructor(tamed: TamedNoble, peripheral: NoblePeripheral, address: string, onDead: () => void) {
    this.address = address;
    this.#tamed = tamed;
    this.#peripheral = peripheral;
    this.#onDead = onDead;
    this.down = new Promise((resolve) => {
      peripheral.once('disconnect', (code?: unknown) => resolve(this.#end(code)));
    });
    let onUnpaired: (problem: Problem) => void = () => {};
    this.#unpaired = new Promise((resolve) => {
      onUnpaired = resolve;
    });
    this.#pairing = tamed.pairing(peripheral.id, address, onUnpaired);
  }

  encrypted(): boolean {
    return this.#gone === undefined && this.#tamed.encrypted(this.#peripheral.id);
  }

  get bonded(): boolean {
    return this.#pairing.bonded;
  }

  keepBond(): Result<void, Problem> {
    return this.#pairing.keepBond();
  }

  discover(services: readonly string[]): Promise<Result<readonly RemoteCharacteristic[], Problem>> {
    return this.#step('finding its services', async () => {
      const discovered: RemoteCharacteristic[] = [];
      const offered = await this.#peripheral.discoverServicesAsync(services);
      // Two services of one number are one to noble, the last one, and the first one's answer would never come.
      for (const service of new Map(offered.map((one) => [one.uuid, one])).values()) {
        for (const characteristic of await service.discoverCharacteristicsAsync([])) {
          const { uuid, properties } = characteristic;
          this.#characteristics.set(key(service.uuid, uuid), characteristic);
          discovered.push({ service: service.uuid, uuid, properties });
        }
      }
      return discovered;
    });
  }

  descriptors(of: RemoteCharacteristic): Promise<Result<readonly string[], Problem>> {
    return this.#step(`finding the descriptors of ${of.uuid}`, async () => {
      const descriptors = await this.#characteristic(of).discoverDescriptorsAsync();
      for (const descriptor of descriptors)
        this.#descriptors.set(key(of.service, of.uuid, descriptor.uuid), descriptor);
      return descriptors.map((descriptor) => descriptor.uuid);
    });
  }

  read(of: RemoteCharacteristic): Promise<Result<Uint8Array, Problem>> {
    return this.#step(`reading ${of.uuid}`, () => this.#characteristic(of).readAsync());
  }

  readDescriptor(of: RemoteCharacteristic, descriptor: string): Promise<Result<Uint8Array, Problem>> {
    return this.#step(`reading ${descriptor} of ${of.uuid}`, () =>
      entryOf(this.#descriptors, key(of.service, of.uuid, descriptor)).readValueAsync(),
    );
  }

  write(to: RemoteCharacteristic, bytes: Uint8Array): Promise<Result<void, Problem>> {
    const withoutResponse = !to.properties.includes('write');
    return this.#step(`writing ${to.uuid}`, () =>
      this.#characteristic(to).writeAsync(Buffer.from(bytes), withoutResponse),
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
    if (answered === undefined) this.#onDead();
  }

  /** For a link that no controller speaks for any more. */
  declareDown(): void {
    if (this.#gone === undefined) this.#tamed.declareDown(this.#peripheral.id);
  }

  #step<T>(name: string, start: () => Promise<T>): Promise<Result<T, Problem>> {
    // noble answers nothing at all on a link that is gone.
    if (this.#gone !== undefined) return Promise.resolve(err(linkLost(name, wordsOf(this.#gone))));
    const ended = Promise.race([this.down.then((end) => linkLost(name, wordsOf(end))), this.#unpaired]);
    return linkStep(this.#tamed.after, name, STEP_TIMEOUT_MS, ended, start);
  }

  #characteristic(of: RemoteCharacteristic): NobleCharacteristic {
    return entryOf(this.#characteristics, key(of.service, of.uuid));
  }

  #end(code: unknown): LinkEnd {
    const end: LinkEnd =
      typeof code === 'number'
        ? { reason: REASONS[code]?.[0] ?? 'link-ended', controllerReason: code }
        : { reason: 'link-ended' };
    this.#gone = end;
    for (const characteristic of this.#characteristics.values()) characteristic.removeAllListeners();
    this.#peripheral.removeAllListeners();
    this.#characteristics.clear();
    this.#descriptors.clear();
    return end;
  }
}

/** For the problem of a step that the end of the link cut off. */
function wordsOf({ controllerReason: code }: LinkEnd): string {
  return code === undefined ? 'the link ended' : (REASONS[code]?.[1] ?? `reason 0x${code.toString(16)}`);
}

function key(...uuids: readonly string[]): string {
  return uuids.join('/');
}

function entryOf<T>(map: ReadonlyMap<string, T>, name: string): T {
  const entry = map.get(name);
  if (entry === undefined) throw new Error(`${name} was not discovered on this link`);
  return entry;
}
