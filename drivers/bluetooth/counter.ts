import type { Contradiction, LinkEnd, MissReason, Reading } from '../../src/reading.ts';

/** A reading before it has its number; `atUs` is its arrival. */
export type Arrival =
  | {
      readonly kind: 'value' | 'stored';
      readonly atUs: number;
      readonly counts: number;
      readonly angleCounts?: number;
    }
  | { readonly kind: 'not-known'; readonly atUs: number }
  | { readonly kind: 'raw'; readonly atUs: number; readonly source: string; readonly hex: string }
  | { readonly kind: 'contradicted'; readonly atUs: number; readonly because: Contradiction }
  /** The tool's own counter skipped `readings`, or the station let them fall; since the last reading. */
  | {
      readonly kind: 'missed';
      readonly atUs: number;
      readonly readings: number;
      readonly reason: MissReason;
    };

/**
 * Numbers the readings of one tool through all its links, and puts a `missed` reading in front of the first one after
 * a gap: what the tool sent from its last reading on, nobody knows.
 */
export class ReadingCounter {
  #n = 0;
  #lastUs: number | undefined;
  #gap: { readonly fromUs: number; readonly reason: MissReason } | undefined;

  /** A link that had been serving is gone; of several in a row the first one began the gap. */
  lost(atUs: number, { reason }: LinkEnd): void {
    this.#gap ??= { fromUs: this.#lastUs ?? atUs, reason };
  }

  take(arrival: Arrival): readonly Reading[] {
    const gap = this.#gap;
    const fromUs = this.#lastUs ?? arrival.atUs;
    this.#gap = undefined;
    this.#lastUs = arrival.atUs;
    const missed: readonly Reading[] =
      gap === undefined ? [] : [{ kind: 'missed', n: this.#next(), atUs: arrival.atUs, ...gap }];
    const reading: Reading =
      arrival.kind === 'missed'
        ? { ...arrival, n: this.#next(), fromUs: Math.min(fromUs, arrival.atUs) }
        : { ...arrival, n: this.#next() };
    return [...missed, reading];
  }

  #next(): number {
    this.#n += 1;
    return this.#n;
  }
}
