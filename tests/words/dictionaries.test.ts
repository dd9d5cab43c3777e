/** Every sentence has its wording in every language, and no dictionary has one that nobody says. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type Entries, LANGUAGES, type Wording } from '../../src/words/catalogue.ts';
import { entriesOf } from '../../src/words/dictionaries.ts';
import { sentencesOfProgram } from './sentences.ts';

const SENTENCES = sentencesOfProgram();
const forms = (wording: Wording): readonly string[] =>
  typeof wording === 'string' ? [wording] : Object.values(wording);
/** Figures and names of a sentence, each once: `{0}`, `{1}`, `#`. */
const places = (text: string): readonly string[] => [...new Set(text.match(/\{\d+\}|#/g))].sort();
/** Keys that a sentence names: `[s]`. */
const keys = (text: string): readonly string[] => (text.match(/\[[^\]{]{1,9}\]/g) ?? []).sort();

describe.each(LANGUAGES.filter((language) => language !== 'en'))('the dictionary of %s', (language) => {
  let entries: Entries = {};
  let parts: readonly Entries[] = [];
  beforeAll(async () => {
    parts = await entriesOf(language);
    entries = Object.assign({}, ...parts) as Entries;
  });

  it('has every sentence', () => {
    const missing = [...SENTENCES].filter(([sentence]) => entries[sentence] === undefined);
    expect(missing.map(([sentence, file]) => `${file}: ${sentence}`)).toEqual([]);
  });

  it('has no sentence that is not made any more, and none twice', () => {
    const all = parts.flatMap((part) => Object.keys(part));
    expect(all.filter((english, at) => !SENTENCES.has(english) || all.indexOf(english) !== at)).toEqual([]);
  });

  it('keeps figures, names and keys of each sentence', () => {
    const wrong = Object.entries(entries).filter(([english, wording]) =>
      forms(wording).some(
        (text) =>
          // One plug may be said without its figure.
          (typeof wording === 'string' && `${places(text)}` !== `${places(english)}`) ||
          (!english.includes('|') && `${keys(text)}` !== `${keys(english)}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('writes no sentence with a space too many or too few at its ends', () => {
    const ends = (text: string) => `${/^\s*/.exec(text)?.[0]}|${/\s*$/.exec(text)?.[0]}`;
    const wrong = Object.entries(entries).filter(([english, wording]) =>
      forms(wording).some(
        (text) => /\S {2}\S/.test(text) !== /\S {2}\S/.test(english) || ends(text) !== ends(english),
      ),
    );
    expect(wrong).toEqual([]);
  });
});
