/** One key: a printed character, or by name `left`, `right`, `up`, `down`, `home`, `end`, `enter`, `escape`, `backspace`, `tab`. */
export interface KeyPress {
  readonly key: string;
  readonly ctrl?: boolean;
  /** For how long the person has had before the eyes what the key answers; absent where nobody knows. */
  readonly shownMs?: number;
}

/** q or Ctrl-C: a person wants to leave. */
export const isQuit = ({ key, ctrl }: KeyPress): boolean => key.toLowerCase() === (ctrl === true ? 'c' : 'q');

/** The character that a key prints; null for a named key. */
export const printed = ({ key, ctrl }: KeyPress): string | null =>
  ctrl !== true && [...key].length === 1 ? key : null;
