/** A key means one thing on all screens, and one that no screen shows does nothing. */
import { describe, expect, it } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import { newInputState, pressed } from '../../src/ui/input-state.ts';
import { KEY, keyOfLetter, letterOf } from '../../src/ui/key-table.ts';
import { inLanguage, LANGUAGES } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';
import { jobWith, questionOn } from './fixtures.ts';
import { helpKeys } from './help-keys.ts';
import { ROUTINE_JOBS, VIEWS } from './views.ts';

const JOBS: Readonly<Record<string, JobState>> = {
  ...Object.fromEntries(Object.entries(VIEWS).map(([name, { job }]) => [name, job])),
  ...ROUTINE_JOBS,
};
const PRINTED = [...'abcdefghijklmnopqrstuvwxyz0123456789.,-+/* '];

describe.each(LANGUAGES)('a letter in %s', (language) => {
  it('means one key, and no other one means it, but that y is yes everywhere', async () => {
    const words = await dictionary(language);
    inLanguage(words, () => {
      const letters = Object.values(KEY).map(letterOf);
      expect(new Set(letters).size).toBe(letters.length);
      expect(letters.map(keyOfLetter)).toEqual(Object.values(KEY));
      expect(keyOfLetter('y')).toBe(KEY.yes);
      expect(letters.filter((letter) => letter === 'y')).toHaveLength(language === 'en' ? 1 : 0);
    });
  });

  it('answers yes where the screen shows it, and so does y', async () => {
    const words = await dictionary(language);
    const job = { ...jobWith(3), questions: [questionOn(3, 'by-plan', ['fresh', 'rehit'])] };
    const letter = { en: 'y', de: 'j', fr: 'o', es: 's' }[language];
    expect([...inLanguage(words, () => helpKeys(job))]).toContain(letter);
    for (const key of [letter, letter.toUpperCase(), 'y', 'Y'])
      expect(inLanguage(words, () => pressed(newInputState(), { key }, job, false).out)).toEqual({
        do: 'answer',
        pull: 5,
        answer: 'fresh',
      });
  });

  it.each(Object.keys(JOBS))('that does something on the screen %s is shown in its help', async (name) => {
    const words = await dictionary(language);
    const job = JOBS[name] ?? expect.fail('no job');
    const hidden = inLanguage(words, () => {
      const shown = helpKeys(job);
      // Digits and space have words there that differ by language.
      const keys = PRINTED.filter((key) => language === 'en' || /[a-z]/.test(key));
      return keys.filter(
        (key) =>
          pressed(newInputState(), { key, shownMs: 5000 }, job, false).taken &&
          !shown.has(key) &&
          !shown.has(letterOf(keyOfLetter(key))),
      );
    });
    expect(hidden).toEqual([]);
  });
});

describe('the keys', () => {
  it('each have one meaning', () => {
    expect(new Set(Object.values(KEY)).size).toBe(Object.values(KEY).length);
  });

  it.each(Object.keys(JOBS))('in the help of the screen %s are those of the table', (name) => {
    const table = new Set<string>(Object.values(KEY));
    const strange = [...helpKeys(JOBS[name] ?? expect.fail('no job'))].filter(
      (key) => !table.has(key) && !/^[1-9]$/.test(key),
    );
    expect(strange).toEqual([]);
  });
});
