import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { fixed, inLanguage, phrases, plural, spokenLanguage, w } from '../../src/words/catalogue.ts';
import { dictionaryOf } from '../../src/words/dictionaries.ts';
import { PSEUDO, unspoken } from './pseudo.ts';
import { sentencesIn } from './sentences.ts';

const german = dictionaryOf('de', [
  {
    '{0} of {1} done.': 'Von {1} sind {0} erledigt.',
    '# plug|# plugs': { one: '# Zündkerze', other: '# Zündkerzen' },
    'the gap': 'der Elektrodenabstand',
  },
]);

describe('a sentence in the language of its reader', () => {
  it('has figures as that language writes them, never a zero with a minus sign', () => {
    const text = () => w`${0.75} ${fixed(25, 2)} ${fixed(-0.001, 2)} ${'M14x1.25'}`;
    expect(text()).toBe('0.75 25.00 0.00 M14x1.25');
    expect(inLanguage(german, text)).toBe('0,75 25,00 0,00 M14x1.25');
  });

  it('is English where nobody asked for another language', () => {
    expect(w`${3} of ${8} done.`).toBe('3 of 8 done.');
    expect(spokenLanguage()).toBe('en');
  });

  it('puts figures and names where the other language has them', () => {
    expect(inLanguage(german, () => w`${3} of ${8} done.`)).toBe('Von 8 sind 3 erledigt.');
  });

  it('stays English where the dictionary does not have it', () => {
    expect(inLanguage(german, () => w`${3} left`)).toBe('3 left');
  });

  it('never reads a place into a name that looks like one', () => {
    expect(inLanguage(german, () => w`${'{1}'} of ${8} done.`)).toBe('Von 8 sind {1} erledigt.');
  });

  it('is English again behind it, also when it could not be made', () => {
    const failing = () => {
      throw new Error('not made');
    };
    expect(() => inLanguage(german, failing)).toThrow('not made');
    expect(spokenLanguage()).toBe('en');
  });

  it('is not made by something that waits', () => {
    expect(() => inLanguage(german, () => Promise.resolve('later'))).toThrow('without waiting');
  });
});

describe('what is counted', () => {
  const plugs = (count: number) => plural(count, { one: '# plug', other: '# plugs' });

  it.each([
    [0, '0 plugs', '0 Zündkerzen'],
    [1, '1 plug', '1 Zündkerze'],
    [8, '8 plugs', '8 Zündkerzen'],
  ])('%d', (count, english, other) => {
    expect(plugs(count)).toBe(english);
    expect(inLanguage(german, () => plugs(count))).toBe(other);
  });
});

describe('a table of phrases', () => {
  const table = phrases({
    gap: 'the gap',
    deep: { list: ['the gap', 'the torque'] },
    made: (name: string) => w`${name}!`,
  });

  it('is made once and read in any language', () => {
    expect(table.gap).toBe('the gap');
    expect(inLanguage(german, () => [table.gap, ...table.deep.list])).toEqual([
      'der Elektrodenabstand',
      'der Elektrodenabstand',
      'the torque',
    ]);
  });

  it('keeps its functions', () => {
    expect(table.made('Z4')).toBe('Z4!');
  });
});

describe('the sentences of a source', () => {
  const read = (text: string) => sentencesIn(ts.createSourceFile('x.ts', text, ts.ScriptTarget.Latest, true));

  it('are its tagged templates, what it counts, and its tables', () => {
    const source =
      "const a = w`a @{b} of @{c}`; plural(n, { one: '# x', other: '# y' }); phrases({ p: 'q', r: { s: ['t'] }, f: () => w`u` });";
    expect(read(source.replaceAll('@', '$'))).toEqual(['a {0} of {1}', '# x|# y', 'q', 't', 'u']);
  });
});

describe('the language that marks', () => {
  it('shows what nobody looked up', () => {
    const text = inLanguage(PSEUDO, () => `${w`The gap of ${'Z4'} is`} open ${fixed(0.75, 2)} mm`);
    expect(text).toBe('⟦The gap of ⟧Z4⟦ is⟧ open 0,75 mm');
    expect(unspoken(text, ['mm', /Z\d/])).toEqual(['open']);
  });
});
