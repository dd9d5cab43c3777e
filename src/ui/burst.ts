import type { KeyPress } from './key-press.ts';

/*
 * A gauge that types like a keyboard sends its figure into whatever is asked at the moment. It types faster than anybody does;
 * so keys that could begin a figure wait for a moment, and a figure that comes in one burst goes to the gauge, never to a question.
 */

/** From one key to the next: no hand is so fast twice in a row within a figure, no such gauge so slow. Practice, no source. */
const FAST_MS = 40;
const FEWEST_KEYS = 3;
/** A gauge may stall in the middle of its figure: two keys at once wait so long for a third one. */
const UNSURE_MS = 250;
/** What began as a burst owns the line until its Enter, or until so long nothing more came. */
const OWNED_MS = 1_000;
/** Some gauges end their figure with two keys: Tab and Enter, or one for each of CR and LF. */
const ENDS_MS = 100;

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
  /** Keys without a pause in front of them, one after the other. */
  let fast = 0;
  let hasStalled = false;
  let isOwned = false;
  let lastMs = Number.NEGATIVE_INFINITY;
  let endedMs = Number.NEGATIVE_INFINITY;
  let cancel = () => {};
  const text = () => held.map(({ key }) => key).join('');
  const taken = (): readonly KeyPress[] => {
    cancel();
    const keys = held;
    held = [];
    fast = 0;
    hasStalled = false;
    isOwned = false;
    return keys;
  };
  const release = () => {
    for (const key of taken()) press(key);
  };
  /** Nothing more came: a gauge that sends no Enter has ended its figure, and a person has typed a key. */
  const paused = () => {
    const typed = text();
    if (!isOwned || held.length <= FEWEST_KEYS || !FIGURE.test(typed)) return release();
    taken();
    figure(typed);
  };
  const waitMs = () => {
    if (isOwned) return OWNED_MS;
    return held.length < 2 ? FAST_MS : UNSURE_MS;
  };
  return (next) => {
    if (next.ctrl === true) return press(next);
    const now = nowMs();
    const isFast = now - lastMs <= FAST_MS;
    lastMs = now;
    const isEnd = next.key === 'enter' || next.key === 'tab';
    if (isEnd && held.length === 0 && now - endedMs <= ENDS_MS) return;
    if (held.length > 0 && !isFast && !isOwned) {
      if (hasStalled || isEnd) release();
      else hasStalled = true;
    }
    fast = isFast && held.length > 0 ? fast + 1 : 0;
    isOwned ||= held.length >= 2 && fast >= 2;
    if (isEnd && isOwned && held.length >= FEWEST_KEYS && FIGURE.test(text())) {
      const typed = text();
      taken();
      endedMs = now;
      return figure(typed);
    }
    const belongs = (held.length === 0 ? STARTS : GOES_ON).test(next.key);
    if (!belongs) {
      release();
      return press(next);
    }
    held.push(next);
    cancel();
    cancel = after(waitMs(), paused);
  };
}
