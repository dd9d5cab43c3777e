/** A language that marks what goes through the catalogue: what stands outside the marks was never looked up. Its figures have a comma. */
import type { Dictionary } from '../../src/words/catalogue.ts';

export const PSEUDO: Dictionary = {
  language: 'de',
  wordingOf: (english) => {
    const [one, other] = english.split('|');
    return other === undefined ? marked(english) : { one: marked(one ?? ''), other: marked(other) };
  },
};

/** Figures and names stay outside: `⟦The gap of ⟧Z4⟦ is open.⟧` */
const marked = (english: string): string =>
  english
    .split(/(\{\d+\}|#)/)
    .map((part) => (part === '' || /^(\{\d+\}|#)$/.test(part) ? part : `⟦${part}⟧`))
    .join('');

/** The words of a text that no dictionary can reach: runs of letters outside the marks, less those that are no words of a language, and figures that nobody wrote for a reader. */
export const unspoken = (text: string, facts: readonly (string | RegExp)[]): readonly string[] => {
  const outside = facts.reduce<string>(
    (left, fact) => left.replaceAll(typeof fact === 'string' ? fact : new RegExp(fact, 'gu'), ' '),
    text.replaceAll(/⟦[^⟧]*⟧/gu, ' '),
  );
  return outside.match(/\p{L}{2,}|\d+\.\d+(?![.\d])/gu) ?? [];
};
