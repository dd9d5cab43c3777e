import { Observable, type Subscriber } from 'rxjs';
import type { After } from '../after.ts';
import type { Noble, NoblePeripheral } from './noble.ts';
import type { Sighting } from './radio.ts';

/** Another program that scans ends our scan without a word; starting it again now and then heals that. */
const RENEW_US = 10_000_000;

interface Wish {
  readonly service: string;
  readonly subscriber: Subscriber<Sighting>;
}

/** The one scan of the adapter on behalf of all who wish for one. */
export class Scanner {
  readonly #noble: Noble;
  readonly #after: After;
  readonly #wishes = new Set<Wish>();
  readonly #seen = new Map<string, NoblePeripheral>();
  /** Why it must not scan now; each reason counts once. */
  readonly #pauses = new Set<string>();
  #stopRenewing: (() => void) | undefined;

  constructor(noble: Noble, after: After) {
    this.#noble = noble;
    this.#after = after;
    noble.on('discover', (peripheral: NoblePeripheral) => this.#report(peripheral));
  }

  scan(service: string): Observable<Sighting> {
    return new Observable((subscriber) => {
      if (this.#pauses.has('closed')) return subscriber.complete();
      const wish = { service, subscriber };
      this.#wishes.add(wish);
      this.#adjust();
      return () => {
        this.#wishes.delete(wish);
        this.#adjust();
      };
    });
  }

  /** A device that some scan has shown. */
  seen(address: string): NoblePeripheral | undefined {
    return this.#seen.get(address);
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
    this.#seen.clear();
  }

  #adjust(): void {
    if (this.#stopRenewing !== undefined) {
      this.#stopRenewing();
      this.#stopRenewing = undefined;
      // With the adapter off there is nothing to stop, and nobody who would hear it.
      if (this.#noble._state === 'poweredOn') this.#noble.stopScanning();
    }
    if (this.#wishes.size > 0 && this.#pauses.size === 0) this.#start();
  }

  #start(): void {
    const services = [...new Set([...this.#wishes].map((wish) => wish.service))];
    // Duplicates are wanted: without them a device that went away and came back is not reported again.
    this.#noble.startScanning(services, true);
    this.#stopRenewing = this.#after(RENEW_US, () => this.#start());
  }

  #report(peripheral: NoblePeripheral): void {
    const address = peripheral.address === '' ? peripheral.id : peripheral.address;
    const { localName, serviceUuids = [] } = peripheral.advertisement;
    this.#seen.set(address, peripheral);
    const sighting: Sighting = {
      address,
      rssi: peripheral.rssi,
      ...(localName !== undefined && { name: localName }),
    };
    for (const { service, subscriber } of [...this.#wishes]) {
      if (serviceUuids.includes(service)) subscriber.next(sighting);
    }
  }
}
