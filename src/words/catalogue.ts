/**
 * The one catalogue of words. English stands where a sentence is made and is its key: w`${name} is due.` has the key
 * `{0} is due.`. A dictionary gives the same sentence in another language; what it does not have stays English.
 *
 * The reader's language is a scope around the making of a text, as the standard library does it for a locale: a text is made
 * in one go, without waiting, so that two readers of one program never meet. `tests/words` counts what a dictionary lacks.
 */

/** Languages that there is a dictionary for, by their tags (BCP 47). */
export const LANGUAGES = ['en', 'de', 'fr', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** One sentence, or its forms by the plural category of its count (CLDR, as Intl.PluralRules names them). */
export type Wording =
  | string
  | ({ readonly [C in Exclude<Intl.LDMLPluralRule, 'other'>]?: string } & { readonly other: string });

/** English sentence, as its key, to sentence. */
export type Entries = Readonly<Record<string, Wording>>;

export interface Dictionary {
  readonly language: string;
  /** What an English sentence is called there; undefined where nobody has said it yet. */
  readonly wordingOf: (english: string) => Wording | undefined;
}

export const ENGLISH: Dictionary = { language: 'en', wordingOf: () => undefined };

let reader = ENGLISH;

/** Makes a text in the language of a dictionary. What waits inside would be made in another one: it is refused. */
export function inLanguage<T>(dictionary: Dictionary, make: () => T): T {
  const before = reader;
  reader = dictionary;
  try {
    const text = make();
    if (text instanceof Promise)
      throw new Error('a text in the language of its reader is made without waiting');
    return text;
  } finally {
    reader = before;
  }
}

/** For a program with one reader, from now on. */
export function speak(dictionary: Dictionary): void {
  reader = dictionary;
}

/** The tag of the language that texts are made in now. */
export const spokenLanguage = (): string => reader.language;

/** A sentence with its figures and names, in the reader's language: w`${name} is due.` */
export function w(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const wording = reader === ENGLISH ? undefined : reader.wordingOf(keyOf(parts));
  return wording === undefined
    ? parts.reduce((text, part, at) => `${text}${inserted(values[at - 1])}${part}`)
    : filled(typeof wording === 'string' ? wording : wording.other, values);
}

/** A sentence that is made whenever it is read, in the language of whoever reads it then. */
export type Sentence = () => string;

/** The same as {@link w} for what is found once and may be read in several languages; it may hold other sentences. */
export const sentence =
  (parts: TemplateStringsArray, ...values: readonly (string | number | Sentence)[]): Sentence =>
  () =>
    w(parts, ...values.map((value) => (typeof value === 'function' ? value() : value)));

/** Of several sentences: one behind the other, or joined by something else. */
export const joined =
  (sentences: readonly Sentence[], by = ' '): Sentence =>
  () =>
    sentences.map((one) => one()).join(by);

/** `{one: '# plug', other: '# plugs'}` for a count; `#` is the count. Its key is `# plug|# plugs`. */
export function plural(count: number, english: { readonly one: string; readonly other: string }): string {
  const wording: Wording =
    (reader === ENGLISH ? undefined : reader.wordingOf(`${english.one}|${english.other}`)) ?? english;
  const form =
    typeof wording === 'string'
      ? wording
      : (wording[rulesOf(reader.language).select(count)] ?? wording.other);
  return form.replaceAll('#', plainFigure(count));
}

/** A table of sentences without figures: each is looked up when it is read, so that a table may be made once. */
export function phrases<const T extends object>(table: T): T {
  const spoken = Array.isArray(table) ? [] : {};
  for (const [key, value] of Object.entries(table))
    Object.defineProperty(
      spoken,
      key,
      typeof value === 'string'
        ? { enumerable: true, get: () => spokenPhrase(value) }
        : { enumerable: true, value: isTable(value) ? phrases(value) : value },
    );
  return spoken as T;
}

/** A sentence that is kept elsewhere: in a table of {@link phrases}, in a schema, or in the declaration of a command. */
export function spokenPhrase(english: string): string {
  const wording = reader.wordingOf(english) ?? english;
  return typeof wording === 'string' ? wording : wording.other;
}

const isTable = (value: unknown): value is object =>
  typeof value === 'object' &&
  value !== null &&
  (Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype);

const keys = new WeakMap<TemplateStringsArray, string>();

/** The English sentence with its places numbered: `{0} is due.` */
export function keyOf(parts: TemplateStringsArray): string {
  const kept = keys.get(parts);
  if (kept !== undefined) return kept;
  const key = parts.reduce((text, part, at) => `${text}{${at - 1}}${part}`);
  keys.set(parts, key);
  return key;
}

const filled = (wording: string, values: readonly (string | number)[]): string =>
  wording.replaceAll(/\{(\d+)\}/g, (_, at: string) => inserted(values[Number(at)]));

const inserted = (value: string | number | undefined): string =>
  typeof value === 'number' ? plainFigure(value) : `${value}`;

/** A number with so many decimals and the decimal sign of the reader's language; never a zero with a minus sign. */
export function fixed(value: number, decimals: number): string {
  const digits = value.toFixed(decimals);
  return inWriting(/^-0(\.0*)?$/.test(digits) ? digits.slice(1) : digits);
}

/** A number with as many decimals as it has, and the decimal sign of the reader's language. */
export const plainFigure = (value: number): string => inWriting(`${value}`);

/** Digits as programs write them, with the decimal sign of the reader's language. */
export const inWriting = (digits: string): string =>
  reader === ENGLISH ? digits : digits.replace('.', decimalSignOf(reader.language));

const signs = new Map<string, string>();

function decimalSignOf(language: string): string {
  const own =
    signs.get(language) ??
    new Intl.NumberFormat(language, { numberingSystem: 'latn' })
      .formatToParts(0.5)
      .find(({ type }) => type === 'decimal')?.value ??
    '.';
  signs.set(language, own);
  return own;
}

const rules = new Map<string, Intl.PluralRules>();

function rulesOf(language: string): Intl.PluralRules {
  const own = rules.get(language) ?? new Intl.PluralRules(language);
  rules.set(language, own);
  return own;
}
