/** What a measurement may ask of the command line (`name=value`), and where it says how far it is. */
export interface Terms {
  readonly number: (name: string, otherwise: number) => number;
  readonly text: (name: string, otherwise: string) => string;
  /** `share` of the work done, 0 to 1. */
  readonly progress: (share: number, note: string) => void;
}

/** Something that can be measured by name. Bounded in time; returns the lines of its table and asserts nothing. */
export interface Measurement {
  readonly name: string;
  readonly what: string;
  readonly run: (terms: Terms) => readonly string[] | Promise<readonly string[]>;
}
