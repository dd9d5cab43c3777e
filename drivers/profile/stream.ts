import type { Arrival } from '../bluetooth/counter.ts';
import { sizeOf } from './number.ts';
import { decodePacket } from './packet.ts';
import type { Profile } from './schema.ts';

/** Turns the packets of one link into arrivals: spreads samples over time and looks after the device's counter. */
export class PacketStream {
  readonly #profile: Profile;
  readonly #put: (arrival: Arrival) => void;
  #expected: number | undefined;
  #lastUs = Number.NEGATIVE_INFINITY;
  #lastHex: string | undefined;

  constructor(profile: Profile, put: (arrival: Arrival) => void) {
    this.#profile = profile;
    this.#put = put;
  }

  /** `stored`: from the memory of the device, of readings that it took at another time. */
  take(bytes: Uint8Array, atUs: number, kind: 'value' | 'stored' = 'value'): void {
    const { readings } = this.#profile;
    const hex = Buffer.from(bytes).toString('hex');
    // What is polled faster than it changes is one reading, not many.
    if (kind === 'value' && readings.by.how === 'poll') {
      if (hex === this.#lastHex) return;
      this.#lastHex = hex;
    }
    const decoded = decodePacket(this.#profile, bytes);
    if (!decoded.ok) {
      this.#put({ kind: 'raw', atUs, source: readings.characteristic, hex });
      return;
    }
    const { samples, counter } = decoded.value;
    if (kind === 'value' && counter !== undefined) this.#follow(counter, samples.length, atUs);
    samples.forEach((counts, i) => {
      const stampUs = kind === 'value' ? this.#stampUs(atUs, samples.length - 1 - i) : atUs;
      if (counts === null) this.#put({ kind: 'not-known', atUs: stampUs });
      else this.#put({ kind, atUs: stampUs, counts });
    });
  }

  /** Time never goes back, even where a packet came sooner than its samples took. */
  #stampUs(atUs: number, samplesLater: number): number {
    const { spacingMs = 0 } = this.#profile.packet.samples;
    this.#lastUs = Math.max(this.#lastUs, atUs - Math.round(samplesLater * spacingMs * 1_000));
    return this.#lastUs;
  }

  #follow(counter: number, samples: number, atUs: number): void {
    const { counter: field } = this.#profile.packet;
    if (field === undefined) return;
    const span = 2 ** (8 * sizeOf(field.type));
    const step = field.counts === 'samples' ? samples : 1;
    const skipped = this.#expected === undefined ? 0 : (counter - this.#expected + span) % span;
    this.#expected = (counter + step) % span;
    if (skipped === 0) return;
    const readings = field.counts === 'samples' ? skipped : skipped * samples;
    this.#put({
      kind: 'missed',
      atUs: Math.max(atUs, this.#lastUs),
      readings,
      reason: 'counter-jumped',
    });
  }
}
