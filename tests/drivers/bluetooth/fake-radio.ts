import { BehaviorSubject, Subject } from 'rxjs';
import { FORMATS } from '../../../drivers/imds/numbers.ts';
import type { Link, Radio, RemoteCharacteristic, Sighting } from '../../../drivers/radio/radio.ts';
import type { Problem } from '../../../src/problem.ts';
import type { LinkEnd, Quantity } from '../../../src/reading.ts';
import { err, ok, type Result } from '../../../src/result.ts';
import { counts } from '../bench.ts';

const measured = (quantity: Quantity): RemoteCharacteristic => ({
  service: '185a',
  uuid: FORMATS[quantity].characteristic,
  properties: ['notify'],
});
const SERIAL_ON_IT: RemoteCharacteristic = { service: '180a', uuid: '2a25', properties: ['read'] };

const PROBLEM: Problem = { code: 'link-not-made', message: 'No connection.', next: 'Try again.' };

/** One link to a tool that says nothing of itself but its serial number. */
export class FakeLink implements Link {
  readonly address: string;
  readonly quantity: Quantity;
  readonly down: Promise<LinkEnd>;
  drop: (end: LinkEnd) => void = () => {};
  /** Whether it answers when it is asked. */
  answers = true;
  #listener: ((bytes: Uint8Array) => void) | undefined;

  constructor(address: string, quantity: Quantity) {
    this.address = address;
    this.quantity = quantity;
    this.down = new Promise((resolve) => {
      this.drop = resolve;
    });
  }

  send(value: number): void {
    this.#listener?.(counts(FORMATS[this.quantity], value));
  }

  encrypted = () => false;
  readonly bonded = false;
  keepBond = () => ok(undefined);
  discover = () => Promise.resolve(ok([measured(this.quantity), SERIAL_ON_IT]));
  descriptors = () => Promise.resolve(ok([]));
  read = () =>
    this.answers ? Promise.resolve(ok(Buffer.from('W-1'))) : new Promise<Result<Uint8Array>>(() => {});
  write = () => Promise.resolve(err(PROBLEM));
  readDescriptor = () => Promise.resolve(err(PROBLEM));
  subscribe = (_to: RemoteCharacteristic, listener: (bytes: Uint8Array) => void) => {
    this.#listener = listener;
    return Promise.resolve(ok(undefined));
  };
  close = () => {
    this.drop({ reason: 'ended-by-station' });
    return Promise.resolve();
  };
}

/** A radio on which the test decides what is seen and which connections succeed. */
export class FakeRadio implements Radio {
  readonly simulated: boolean;
  readonly #quantity: Quantity;
  readonly powered$ = new BehaviorSubject(true);
  readonly sightings = new Subject<Sighting>();
  readonly links: FakeLink[] = [];
  /** How many of the coming connections fail. */
  failures = 0;
  attempts = 0;

  constructor({ simulated = false, quantity = 'torque' as Quantity } = {}) {
    this.simulated = simulated;
    this.#quantity = quantity;
  }

  scan = () => this.sightings;

  connect(address: string): Promise<Result<Link, Problem>> {
    this.attempts += 1;
    if (this.failures > 0) {
      this.failures -= 1;
      return Promise.resolve(err(PROBLEM));
    }
    const link = new FakeLink(address, this.#quantity);
    this.links.push(link);
    return Promise.resolve(ok(link));
  }

  close = () => Promise.resolve();

  see(address: string, name?: string): void {
    this.sightings.next({ address, rssi: -50, services: ['185a'], ...(name !== undefined && { name }) });
  }
}
