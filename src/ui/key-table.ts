/**
 * The one table of keys: a key means one thing on all screens, and what is not in it means nothing. Digits choose a line of a
 * list, arrows move the mark, Enter confirms what is marked.
 */
export const KEY = {
  /** All that are left. */
  all: 'a',
  /** The plug is backed out, and fitted again. */
  backOut: 'b',
  /** Something did not go as planned. */
  otherwise: 'c',
  /** This plug is thrown away. */
  discard: 'd',
  /** A study rests, or goes on. */
  pause: 'e',
  /** The pull was the tightening of this cylinder. */
  tightening: 'f',
  /** The pull was not finished. */
  goOn: 'g',
  /** No plug was turned. */
  handling: 'h',
  /** The wires are too tight. */
  tight: 'i',
  /** Kept as it is; a named person answers for it. */
  keep: 'k',
  lot: 'l',
  bell: 'm',
  normal: 'n',
  /** One cylinder at a time. */
  oneByOne: 'o',
  part: 'p',
  leave: 'q',
  /** The pull was on a plug already tight. */
  rehit: 'r',
  sign: 's',
  /** The thread in the head. */
  thread: 't',
  takeBack: 'u',
  /** Good: the gap by eye or by wires. */
  good: 'v',
  /** In words of one's own. */
  note: 'w',
  /** Not as it should be: not done, not good, damaged, different. */
  not: 'x',
  yes: 'y',
  /** The wires are too wide. */
  wide: 'z',
  tick: ' ',
  help: '?',
} as const;
