import { Observable, type Subscriber } from 'rxjs';
import type { After } from '../after.ts';
import { peripheralId } from './adverts.ts';
import type { NoblePeripheral } from './noble.ts';
import type { Sighting } from './radio.ts';
import type { TamedNoble } from './tame.ts';

/** Another program that scans ends our scan without a word; starting it again now and then heals that. */
const RENEW_US = 2_000_000;

/** Core, Vol 4 Part E 7.7.65.2: the signal strength is not available. */
const NOT_MEASURED = 127;

interface Wish {
  readonly service: string | undefined;
  readonly address: string | undefined;
  readonly subscriber: Subscriber<Sighting>;
}

/** The one scan of the adapter on behalf of all who wish for one; it goes on with the next noble when one is given up. */
export class Scanner {
  readonly #after: After;
  readonly #wishes = new Set<Wish>();
  /** Why it must not scan now; each reason counts once. */
  readonly #pauses = new Set<string>();
  #tamed: TamedNoble | undefined;
  #stopRenewing: (() => void) | undefined;

  constructor(after: After) {
    this.#after = after;
  }

  attach(tamed: TamedNoble): void {
    this.#tamed = tamed;
    tamed.adverts.protect((address) => [...this.#wishes].some((wish) => wish.address === address));
    tamed.noble.on('discover', (peripheral: NoblePeripheral) => this.#report(tamed, peripheral));
    this.#adjust();
  }

  /** The noble is of no use any more. */
  detach(): void {
    this.#stopRenewing?.();
    this.#stopRenewing = undefined;
    this.#tamed = undefined;
  }

  scan(service: string | undefined, address: string | undefined): Observable<Sighting> {
    return new Observable((subscriber) => {
      if (this.#pauses.has('closed')) return subscriber.complete();
      const wish = { service, address, subscriber };
      this.#wishes.add(wish);
      this.#adjust();
      return () => {
        this.#wishes.delete(wish);
        this.#adjust();
      };
    });
  }

  /** A device that a scan has shown. */
  seen(address: string): NoblePeripheral | undefined {
    return this.#tamed?.noble._peripherals[peripheralId(address)];
  }

  pause(reason: string): void {
    this.#pauses.add(reason);
    this.#adjust();
  }

  resume(reason: string): void {
    this.#pauses.delete(reason);
    this.#adjust();
  }

  close(): void {
    this.pause('closed');
    for (const { subscriber } of [...this.#wishes]) subscriber.complete();
  }

  #adjust(): void {
    const { noble } = this.#tamed ?? {};
    if (noble === undefined) return;
    if (this.#stopRenewing !== undefined) {
      this.#stopRenewing();
      this.#stopRenewing = undefined;
      // With the adapter off there is nothing to stop, and nobody who would hear it.
      if (noble._state === 'poweredOn') noble.stopScanning();
    }
    if (this.#wishes.size > 0 && this.#pauses.size === 0) this.#start();
  }

  #start(): void {
    const wished = [...this.#wishes].map((wish) => wish.service);
    const services = wished.includes(undefined) ? [] : [...new Set(wished)];
    // Duplicates are wanted: without them a device that went away and came back is not reported again.
    this.#tamed?.noble.startScanning(
      services.filter((service) => service !== undefined),
      true,
    );
    this.#stopRenewing = this.#after(RENEW_US, () => this.#start());
  }

  #report({ adverts }: TamedNoble, peripheral: NoblePeripheral): void {
    const address = peripheral.address === '' ? peripheral.id : peripheral.address;
    const { localName, serviceUuids = [] } = peripheral.advertisement;
    const appearance = adverts.appearance(address);
    const lasting = keepsAddress(peripheral);
    const sighting: Sighting = {
      address,
      services: serviceUuids,
      ...(peripheral.rssi !== NOT_MEASURED && { rssi: peripheral.rssi }),
      ...(lasting !== undefined && { lasting }),
      ...(localName !== undefined && { name: localName }),
      ...(appearance !== undefined && { appearance }),
    };
    for (const { service, subscriber } of [...this.#wishes]) {
      if (service === undefined || serviceUuids.includes(service)) subscriber.next(sighting);
    }
  }
}

/** Public and static random addresses stay; the two top bits tell the random ones apart (Core, Vol 6 Part B 1.3.2). */
function keepsAddress({ address, addressType }: NoblePeripheral): boolean | undefined {
  if (addressType === 'public') return true;
  if (addressType !== 'random') return undefined;
  const top = Number.parseInt(address.slice(0, 2), 16);
  return Number.isNaN(top) ? undefined : top >= 0xc0;
}
