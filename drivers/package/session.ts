import type { Arrival } from '../bluetooth/counter.ts';
import { isSession, madeListSchema, type PackageDriver, type Session } from './contract.ts';

/**
 * A session of somebody else's driver, as the station lets it work. What it gives is held against the contract; where it fails,
 * the bytes are kept raw and the session is begun anew.
 */
export class GuardedSession {
  readonly #driver: Pick<PackageDriver, 'session' | 'angle'>;
  readonly #put: (arrival: Arrival) => void;
  readonly #source: string;
  #session: Session | null;
  /** Nothing is held back here: what is unfinished is with the driver. */
  readonly pauseUs = undefined;

  constructor(
    driver: Pick<PackageDriver, 'session' | 'angle'>,
    put: (arrival: Arrival) => void,
    source: string,
  ) {
    this.#driver = driver;
    this.#put = put;
    this.#source = source;
    this.#session = this.#anew();
  }

  take(bytes: Uint8Array, atUs: number): void {
    const raw = (kept: Uint8Array) => {
      const hex = Buffer.from(kept).toString('hex');
      this.#put({ kind: 'raw', atUs, source: this.#source, hex });
    };
    const made = this.#madeOf(bytes);
    if (made === null) {
      this.#session = this.#anew();
      raw(bytes);
      return;
    }
    for (const one of made) {
      if ('raw' in one) raw(one.raw);
      else if (one.value === null) this.#put({ kind: 'not-known', atUs });
      else
        this.#put({
          kind: 'value',
          atUs,
          counts: one.value,
          ...(one.angle !== undefined && this.#driver.angle !== undefined && { angleCounts: one.angle }),
        });
    }
  }

  pause(): void {}

  #madeOf(bytes: Uint8Array) {
    if (this.#session === null) return null;
    try {
      // A copy: what the driver does to it changes no raw reading.
      const made = madeListSchema.safeParse(this.#session.take(Uint8Array.from(bytes)));
      return made.success ? made.data : null;
    } catch {
      return null;
    }
  }

  #anew(): Session | null {
    try {
      const session = this.#driver.session();
      return isSession(session) ? session : null;
    } catch {
      return null;
    }
  }
}
