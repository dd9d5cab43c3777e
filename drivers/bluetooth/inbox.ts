import type { Arrival } from './counter.ts';

/** What may come between the subscription and its announcement: a second at a rate that no tool keeps up. */
const MOST = 4_096;

/** Holds what arrives while the tool is not yet announced as linked; what does not fit is counted, never forgotten. */
export class Inbox {
  #waiting: Arrival[] = [];
  #dropped = 0;
  #listener: ((arrival: Arrival) => void) | undefined;

  put(arrival: Arrival): void {
    if (this.#listener !== undefined) this.#listener(arrival);
    else if (this.#waiting.length < MOST) this.#waiting.push(arrival);
    else this.#dropped += 1;
  }

  /** Hands over what came in so far, then everything as it comes. */
  open(listener: (arrival: Arrival) => void): void {
    this.#listener = listener;
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const arrival of waiting) listener(arrival);
    const atUs = waiting.at(-1)?.atUs;
    if (this.#dropped === 0 || atUs === undefined) return;
    listener({ kind: 'missed', atUs, readings: this.#dropped, reason: 'too-many' });
  }
}
