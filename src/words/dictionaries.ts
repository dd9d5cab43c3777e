/** The dictionaries, each loaded when it is first asked for. */
import { type Dictionary, ENGLISH, type Entries, type Language } from './catalogue.ts';

/** A file a language and a part of the house, so that a sentence is found beside its like. */
const PARTS: Readonly<
  Record<Exclude<Language, 'en'>, () => Promise<readonly { readonly ENTRIES: Entries }[]>>
> = {
  de: () =>
    Promise.all([
      import('./de/audit.ts'),
      import('./de/verify.ts'),
      import('./de/bench.ts'),
      import('./de/table.ts'),
      import('./de/papers.ts'),
      import('./de/page.ts'),
      import('./de/office.ts'),
    ]),
  fr: () =>
    Promise.all([
      import('./fr/audit.ts'),
      import('./fr/verify.ts'),
      import('./fr/bench.ts'),
      import('./fr/table.ts'),
      import('./fr/papers.ts'),
      import('./fr/page.ts'),
      import('./fr/office.ts'),
    ]),
  es: () =>
    Promise.all([
      import('./es/audit.ts'),
      import('./es/verify.ts'),
      import('./es/bench.ts'),
      import('./es/table.ts'),
      import('./es/papers.ts'),
      import('./es/page.ts'),
      import('./es/office.ts'),
    ]),
};

export const entriesOf = async (language: Exclude<Language, 'en'>): Promise<readonly Entries[]> =>
  (await PARTS[language]()).map(({ ENTRIES }) => ENTRIES);

export const dictionary = async (language: Language): Promise<Dictionary> =>
  language === 'en' ? ENGLISH : dictionaryOf(language, await entriesOf(language));

export function dictionaryOf(language: string, parts: readonly Entries[]): Dictionary {
  const wordings = new Map(parts.flatMap((part) => Object.entries(part)));
  return { language, wordingOf: (english) => wordings.get(english) };
}
