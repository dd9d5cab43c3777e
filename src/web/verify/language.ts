/** The reader's language: by the preference of the browser, or chosen on the page. Its words lie packed in the page. */
import { decompress } from 'fzstd';
import { ENGLISH, LANGUAGES, type Language, phrases, speak, type Wording } from '../../words/catalogue.ts';
import { dictionaryIn, type PackedWords } from '../../words/packed.ts';
import { fromBase91 } from './base91.ts';
import { byId, h } from './dom.ts';

/** As whoever speaks it calls it. */
const OWN_NAMES: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
};

/** What the build packed into a template of the page. */
export const unpackedFrom = (id: string): string =>
  new TextDecoder().decode(decompress(fromBase91(byId(id, HTMLTemplateElement).content.textContent.trim())));

/** As the build packs it: the numbers of sentences, and for each language their wordings in the same order. */
interface AllWords {
  readonly numbers: readonly string[];
  readonly wordings: Readonly<Record<Exclude<Language, 'en'>, readonly Wording[]>>;
}

let all: AllWords | null = null;
let words: PackedWords | null = null;

/** Null for English. */
export const wordsNow = (): PackedWords | null => words;

function wordsOf(language: Exclude<Language, 'en'>): PackedWords {
  // Not from outside: the page that packs it is this one.
  all ??= JSON.parse(unpackedFrom('words')) as AllWords;
  const { numbers, wordings } = all;
  const own = wordings[language];
  return { language, wordings: Object.fromEntries(numbers.map((number, at) => [number, own[at] ?? ''])) };
}

/** The first language of the reader that there is; English for any other. */
export const preferred = (wanted: readonly string[]): Language =>
  wanted
    .map((tag) => LANGUAGES.find((one) => tag.toLowerCase().split('-')[0] === one))
    .find((one) => one !== undefined) ?? 'en';

/** Says the page in the reader's language, and in every other that is chosen. */
export function offerLanguages(chosen: () => void): void {
  const choice = byId('language', HTMLSelectElement);
  choice.append(...LANGUAGES.map((one) => h('option', { value: one, lang: one }, OWN_NAMES[one])));
  choice.value = preferred(navigator.languages);
  const take = () => speakOnPage(LANGUAGES.find((one) => one === choice.value) ?? 'en');
  choice.addEventListener('change', () => {
    take();
    chosen();
  });
  take();
}

function speakOnPage(language: Language): void {
  words = language === 'en' ? null : wordsOf(language);
  speak(words === null ? ENGLISH : dictionaryIn(words));
  document.documentElement.lang = language;
  sayPage();
}

/** What page.html says in English, by the place that says it. */
const places = [...document.querySelectorAll('[data-words]')].map((place) => {
  const label = place.getAttribute('aria-label');
  return { place, label, said: phrases({ english: label ?? place.textContent }) };
});

function sayPage(): void {
  const isAnswered = document.body.classList.contains('answered');
  for (const { place, label, said } of places)
    if (label !== null) place.setAttribute('aria-label', said.english);
    else if (!(isAnswered && place instanceof HTMLTitleElement)) place.textContent = said.english;
}
