/**
 * Names of stations beside those of the reader's list. What a station calls itself is its own word: it may be the name of
 * another, or one that nobody can tell from it.
 */
import { type Sentence, sentence } from '../words/catalogue.ts';
import type { TrustList } from './trust.ts';

export const NAME_OF_ANOTHER = sentence`THE NAME OF ANOTHER STATION: your list has the name that this station calls itself for another key.`;

/** A station as the reader's list names it; with what it calls itself where that is another name. */
export const stationNamed = (
  called: string,
  { name, listed }: { readonly name: string | Sentence; readonly listed: string },
): string | Sentence =>
  looksOf(called) === looksOf(listed) ? name : sentence`${name} (which calls itself "${called}")`;

/** Whether a station calls itself what the list calls another. */
export const isNameOfAnother = (called: string, listed: string, { keys }: TrustList): boolean =>
  looksOf(called) !== looksOf(listed) &&
  keys.some(
    ({ name, role }) => role !== 'technician' && name !== undefined && looksOf(name) === looksOf(called),
  );

/** Small letters of other scripts that are drawn like Latin ones, each in front of that one. */
const LOOK_ALIKES = 'аaеeоoрpсcуyхxіiјjѕsһhԁdԛqԝwкkмmтtвbнhαaοoρpνvιiκkτtυuхxεeηn';
const LATIN = new Map(
  Array.from({ length: LOOK_ALIKES.length / 2 }, (_, i) => [
    LOOK_ALIKES[2 * i] ?? '',
    LOOK_ALIKES[2 * i + 1] ?? '',
  ]),
);

/** The same for names that people take for one another: what is not seen left out, one kind of letter, no accents on nothing. */
function looksOf(name: string): string {
  const seen = name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\p{Default_Ignorable_Code_Point}\p{Cc}\p{Cf}\p{White_Space}\u2800]/gu, '')
    .replace(/\p{Dash_Punctuation}/gu, '-');
  return Array.from(seen, (letter) => LATIN.get(letter) ?? letter).join('');
}
