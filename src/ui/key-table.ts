/**
 * The one table of keys: a key means one thing on all screens, and what is not in it means nothing. Digits choose a line of a
 * list, arrows move the mark, Enter confirms what is marked.
 */
import { type Language, spokenLanguage } from '../words/catalogue.ts';

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

/**
 * The letter of yes in a language, as on the keyboard there, and where its other meaning went: no letter means two things.
 * What the table calls these letters is what the rest of the program knows.
 */
const LETTERS: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {},
  de: { [KEY.yes]: 'j' },
  fr: { [KEY.yes]: 'o', [KEY.oneByOne]: 'j' },
  es: { [KEY.yes]: 's', [KEY.sign]: 'j' },
};

const lettersNow = (): Readonly<Record<string, string>> =>
  Object.entries(LETTERS).find(([language]) => language === spokenLanguage())?.[1] ?? {};

/** The letter that a key of the table has in the reader's language. */
export const letterOf = (key: string): string => lettersNow()[key] ?? key;

/** The key of the table that a letter of the reader's language means; `y` is yes in every language. */
export const keyOfLetter = (letter: string): string =>
  Object.entries(lettersNow()).find(([, own]) => own === letter.toLowerCase())?.[0] ?? letter;
