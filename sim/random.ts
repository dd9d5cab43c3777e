/**
 * The only source of chance in the simulation: sfc32 (C. Doty-Humphrey, PractRand, public domain), seeded by the
 * MurmurHash3 mixing of a text. A fork depends on the seed and its label alone, never on what was drawn before, so
 * that a new consumer changes nobody else's stream.
 */
export class Random {
  readonly #key: string;
  #a: number;
  #b: number;
  #c: number;
  #counter = 1;
  #spare: number | null = null;

  constructor(seed: number | string) {
    this.#key = String(seed);
    const word = wordsOf(this.#key);
    this.#a = word();
    this.#b = word();
    this.#c = word();
    for (let i = 0; i < 12; i++) this.word();
  }

  /** An independent stream named by its label; the same label gives the same stream again. */
  fork(label: string): Random {
    return new Random(`${this.#key.length}:${this.#key}/${label}`);
  }

  /** The next 32 bits. */
  word(): number {
    const sum = (this.#a + this.#b + this.#counter) | 0;
    this.#counter = (this.#counter + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + sum) | 0;
    return sum >>> 0;
  }

  /** Evenly spread over [lower, upper). */
  uniform(lower = 0, upper = 1): number {
    return lower + (upper - lower) * (this.word() / 2 ** 32);
  }

  /** Normal with the mean and standard deviation given (polar method of Marsaglia). */
  normal(mean = 0, sigma = 1): number {
    if (this.#spare !== null) {
      const spare = this.#spare;
      this.#spare = null;
      return mean + sigma * spare;
    }
    for (;;) {
      const u = this.uniform(-1, 1);
      const v = this.uniform(-1, 1);
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const f = Math.sqrt((-2 * Math.log(s)) / s);
      this.#spare = v * f;
      return mean + sigma * u * f;
    }
  }

  /** A normal drawn again until it lies within `reach` standard deviations: tolerances have ends. */
  within(mean: number, sigma: number, reach: number): number {
    for (;;) {
      const value = this.normal();
      if (Math.abs(value) <= reach) return mean + sigma * value;
    }
  }

  chance(probability: number): boolean {
    return this.uniform() < probability;
  }
}

function wordsOf(text: string): () => number {
  let h = 1779033703 ^ text.length;
  for (let i = 0; i < text.length; i++) {
    h = Math.imul(h ^ text.charCodeAt(i), 3432918353);
    h = (h << 13) | (h >>> 19);
  }
  return () => {
    h = Math.imul(h ^ (h >>> 16), 2246822507);
    h = Math.imul(h ^ (h >>> 13), 3266489909);
    h ^= h >>> 16;
    return h | 0;
  };
}
