/** Whose language the commands of the office speak: that of the screen in the station file, or what the environment says. */
import { ENGLISH, LANGUAGES, type Language, speak } from '../../words/catalogue.ts';
import { quietStationFile, readSmallJson, USUAL_FILE } from './station-at-hand.ts';

/** For a machine without a station, and for somebody who reads another language than his shop. */
export const LANGUAGE_VARIABLE = 'PLUGMARK_LANGUAGE';

/** From now on the program speaks as its reader does. What a program reads (`--json`) stays as it is, whoever is there. */
export async function speakToReader(words: readonly string[]): Promise<void> {
  const language = languageFor(words);
  await speakIn(language);
}

/** A dictionary is loaded only where its language is spoken. */
export async function speakIn(language: Language): Promise<void> {
  if (language === 'en') return speak(ENGLISH);
  const [{ dictionary }, { inPlainLetters }, { speaksUtf8 }] = await Promise.all([
    import('../../words/dictionaries.ts'),
    import('../../words/plain-letters.ts'),
    import('../terminal/letters.ts'),
  ]);
  const spoken = await dictionary(language);
  speak(speaksUtf8() ? spoken : inPlainLetters(spoken));
}

/** `words`: what was typed behind the name of the program. */
export function languageFor(words: readonly string[]): Language {
  if (words.includes('--json') || isForPrograms(words)) return 'en';
  return ownLanguage() ?? languageOfStation(stationNamed(words)) ?? 'en';
}

/** What the environment says; undefined where it says nothing. */
export const ownLanguage = (): Language | undefined => languageIn(process.env[LANGUAGE_VARIABLE]);

/** What these write is read by a shell, by `man`, or by a validator. */
const FOR_PROGRAMS: ReadonlySet<string> = new Set(['completion', 'complete', 'schema']);

const isForPrograms = (words: readonly string[]): boolean =>
  !words.includes('--help') &&
  (FOR_PROGRAMS.has(words[0] ?? '') ||
    (words[0] === 'manual' && ['commands', '--roff', '--out'].some((word) => words.includes(word))));

const languageIn = (value: unknown): Language | undefined => LANGUAGES.find((language) => language === value);

function stationNamed(words: readonly string[]): string {
  const at = words.indexOf('--station');
  const joined = words.find((word) => word.startsWith('--station='));
  return (at < 0 ? joined?.slice('--station='.length) : words[at + 1]) ?? USUAL_FILE;
}

/** Whatever is wrong with the file is for the command to say. */
function languageOfStation(named: string): Language | undefined {
  const file = quietStationFile(named);
  const value = file === null ? null : readSmallJson(file);
  return isObject(value) && isObject(value['reads']) ? languageIn(value['reads']['screen']) : undefined;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
