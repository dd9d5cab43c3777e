/** The reader's language: by the preference of the browser, or chosen on the page. Its words lie packed in the page. */
import { ENGLISH, LANGUAGES, type Language, phrases, speak, type Wording } from '../../words/catalogue.ts';
import { dictionaryIn, type PackedWords } from '../../words/packed.ts';
import { fromBase85 } from './base85.ts';
import { byId, h } from './dom.ts';

/** As whoever speaks it calls it. */
const OWN_NAMES: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
};

/** What the build packed into a template of the page. */
export function unpackedFrom(id: string): Promise<string> {
  const bytes = fromBase85(byId(id, HTMLTemplateElement).content.textContent.trim());
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();
}

/** A sentence a row, as the build packs it: its number, and its wordings in the languages but English, in their order. */
type Row = readonly [string, ...Wording[]];
let rows: Promise<readonly Row[]> | null = null;
let words: PackedWords | null = null;

/** Null for English. */
export const wordsNow = (): PackedWords | null => words;

async function wordsOf(language: Language): Promise<PackedWords | null> {
  const column = LANGUAGES.indexOf(language);
  if (column === 0) return null;
  rows ??= unpackedFrom('words').then((text) => JSON.parse(text) as readonly Row[]);
  return {
    language,
    wordings: Object.fromEntries((await rows).map((row) => [row[0], row[column] ?? ''])),
  };
}

/** The first language of the reader that there is; English for any other. */
export const preferred = (wanted: readonly string[]): Language =>
  wanted
    .map((tag) => LANGUAGES.find((one) => tag.toLowerCase().split('-')[0] === one))
    .find((one) => one !== undefined) ?? 'en';

/** Says the page in the reader's language, and in every other that is chosen: `changes` gets each choice as it is made. */
export async function offerLanguages(changes: (changed: Promise<void>) => void): Promise<void> {
  const choice = byId('language', HTMLSelectElement);
  choice.append(...LANGUAGES.map((one) => h('option', { value: one, lang: one }, OWN_NAMES[one])));
  choice.value = preferred(navigator.languages);
  const chosen = () => LANGUAGES.find((one) => one === choice.value) ?? 'en';
  choice.addEventListener('change', () => changes(speakOnPage(chosen())));
  if (chosen() !== 'en') await speakOnPage(chosen());
}

let last = 0;

async function speakOnPage(language: Language): Promise<void> {
  const turn = ++last;
  const wanted = await wordsOf(language);
  // Somebody who goes through the list by keys has chosen another one meanwhile.
  if (turn !== last) return;
  words = wanted;
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
