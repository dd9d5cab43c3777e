/** The samples about a top, by number. */
export interface Samples {
  readonly has: (i: number) => boolean;
  /** Microseconds since the start of the pull. */
  readonly timeUs: (i: number) => number;
  readonly nm: (i: number) => number;
}
