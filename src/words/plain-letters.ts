/** Words for a terminal that has plain ASCII alone, written as people write them there: `ä` as `ae`, `é` as `e`. */
import type { Dictionary, Wording } from './catalogue.ts';

const WRITTEN: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  Ä: 'Ae',
  Ö: 'Oe',
  Ü: 'Ue',
  ß: 'ss',
  '¿': '',
  '¡': '',
  º: '.',
  '°': ' deg',
  '’': "'",
  '·': '.',
  '…': '...',
};

/** In a word of capitals the second letter is one too. */
const afterCapitals = (text: string): string =>
  text.replace(/[ÄÖÜ](?=[A-ZÄÖÜ])|(?<=[A-ZÄÖÜ])[ÄÖÜ]/gu, (letter) => (WRITTEN[letter] ?? '').toUpperCase());

export const plainLetters = (text: string): string =>
  afterCapitals(text)
    .replace(/[^\x20-\x7e]/gu, (letter) => WRITTEN[letter] ?? letter)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '');

/** The same dictionary in plain letters; here and not where lines leave, so that every width is that of what is printed. */
export function inPlainLetters({ language, wordingOf }: Dictionary): Dictionary {
  const plain = (wording: Wording): Wording =>
    typeof wording === 'string'
      ? plainLetters(wording)
      : {
          ...Object.fromEntries(Object.entries(wording).map(([of, text]) => [of, plainLetters(text)])),
          other: plainLetters(wording.other),
        };
  return {
    language,
    wordingOf: (english) => {
      const wording = wordingOf(english);
      return wording === undefined ? undefined : plain(wording);
    },
  };
}
