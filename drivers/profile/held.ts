/** A piece of a byte stream, and when its last byte came. */
export interface Piece {
  readonly bytes: Buffer;
  readonly atUs: number;
}

const NOTHING = Buffer.alloc(0);

/** Bytes that wait for the rest of their frame, with their arrivals. */
export class Held {
  #bytes: Buffer = NOTHING;
  /** Where each arrival ends. */
  #arrivals: { end: number; readonly atUs: number }[] = [];

  get bytes(): Buffer {
    return this.#bytes;
  }

  get length(): number {
    return this.#bytes.length;
  }

  add(bytes: Uint8Array, atUs: number): void {
    const more = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#bytes = this.#bytes.length === 0 ? more : Buffer.concat([this.#bytes, more]);
    this.#arrivals.push({ end: this.#bytes.length, atUs });
  }

  take(length: number): Piece {
    const [only] = this.#arrivals;
    if (length === this.#bytes.length && this.#arrivals.length === 1 && only !== undefined) {
      const whole = { bytes: this.#bytes, atUs: only.atUs };
      this.#bytes = NOTHING;
      this.#arrivals.length = 0;
      return whole;
    }
    const bytes = this.#bytes.subarray(0, length);
    this.#bytes = this.#bytes.subarray(length);
    const atUs = this.#arrivals.find(({ end }) => end >= length)?.atUs ?? 0;
    this.#arrivals = this.#arrivals.filter(({ end }) => end > length);
    for (const arrival of this.#arrivals) arrival.end -= length;
    return { bytes, atUs };
  }
}
