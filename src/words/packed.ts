/** Wordings for a place where every kilobyte counts: each under a short number of its English sentence instead of the sentence. */
import type { Dictionary, Wording } from './catalogue.ts';

export interface PackedWords {
  readonly language: string;
  readonly wordings: Readonly<Record<string, Wording>>;
}

/** FNV-1a, 32 bits. Whoever packs sees to it that no two of its sentences have the same. */
export function numberOf(english: string): string {
  let number = 0x811c9dc5;
  for (let at = 0; at < english.length; at++)
    number = Math.imul(number ^ english.charCodeAt(at), 0x01000193) >>> 0;
  return number.toString(36);
}

export const dictionaryIn = ({ language, wordings }: PackedWords): Dictionary => ({
  language,
  wordingOf: (english) => wordings[numberOf(english)],
});
