import type { KeyPress } from './key-press.ts';

/*
 * A gauge that types like a keyboard sends its figure into whatever is asked at the moment. It types faster than anybody does;
 * so keys that could begin a figure wait for a moment, and a figure that comes in one burst goes to the gauge, never to a question.
 */

/** From one key to the next: no hand is so fast three times in a row, no such gauge so slow. Practice, no source. */
const FAST_MS = 40;
const FEWEST_KEYS = 3;

const STARTS = /^[0-9.,+-]$/;
/** What may follow in a figure: digits, a mark, a unit. */
const GOES_ON = /^[0-9.,+\- mNinMI"·]$/u;
const FIGURE = /^[+-]?\d*[.,]?\d+ ?(mm|in|"|N·?m)?$/iu;

export interface BurstKeys {
  /** A key of a person. */
  readonly press: (press: KeyPress) => void;
  /** A figure that a gauge typed. */
  readonly figure: (text: string) => void;
  readonly nowMs: () => number;
  /** Calls `run` once after so long; the returned function ends that. */
  readonly after: (ms: number, run: () => void) => () => void;
}

/** Takes the keys of the terminal; what it returns is told each. */
export function burstKeys({ press, figure, nowMs, after }: BurstKeys): (press: KeyPress) => void {
  let held: KeyPress[] = [];
  let lastMs = Number.NEGATIVE_INFINITY;
  let cancel = () => {};
  const text = () => held.map(({ key }) => key).join('');
  const release = () => {
    cancel();
    const keys = held;
    held = [];
    for (const key of keys) press(key);
  };
  /** Nothing more came: a gauge that sends no Enter has ended its figure, and a person has typed a key. */
  const paused = () => {
    const typed = text();
    if (held.length <= FEWEST_KEYS || !FIGURE.test(typed)) return release();
    held = [];
    figure(typed);
  };
  return (next) => {
    const now = nowMs();
    const isFast = now - lastMs <= FAST_MS;
    lastMs = now;
    if (held.length > 0 && !isFast) release();
    const isEnd = next.key === 'enter' || next.key === 'tab';
    if (isEnd && held.length >= FEWEST_KEYS && FIGURE.test(text())) {
      cancel();
      const typed = text();
      held = [];
      return figure(typed);
    }
    const belongs = next.ctrl !== true && (held.length === 0 ? STARTS : GOES_ON).test(next.key);
    if (!belongs) {
      release();
      return press(next);
    }
    held.push(next);
    cancel();
    cancel = after(FAST_MS, paused);
  };
}
