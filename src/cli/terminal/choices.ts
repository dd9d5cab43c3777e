/** The choices of a file as people call them: a file keeps its own word, a question shows the reader's, and either may be typed. */
import { phrases, w } from '../../words/catalogue.ts';

const WORDS: Readonly<Record<string, string>> = phrases({
  torque: 'torque',
  length: 'length',
  setting: 'setting',
  indicating: 'indicating',
  relative: 'relative',
  absolute: 'absolute',
  aluminium: 'aluminium',
  'cast-iron': 'cast-iron',
  gasket: 'gasket',
  conical: 'conical',
  new: 'new',
  used: 'used',
  nickel: 'nickel',
  platinum: 'platinum',
  iridium: 'iridium',
  'other-precious': 'other-precious',
  dry: 'dry',
  oiled: 'oiled',
  'anti-seize': 'anti-seize',
  'factory-coated': 'factory-coated',
  gauge: 'gauge',
  wire: 'wire',
  'visual-only': 'visual-only',
  'not-permitted': 'not-permitted',
  yes: 'yes',
  'new-only': 'new-only',
  no: 'no',
  'engine-maker': 'engine-maker',
  'plug-box': 'plug-box',
  'general-table': 'general-table',
  'invented-example': 'invented-example',
});

/** A name that only programs give, such as that of a driver, is the same in every language. */
export const choiceWord = (option: string): string => WORDS[option] ?? option;

/** `torque, length`, as a question lists them. */
export const choiceWords = (options: readonly string[]): string => options.map(choiceWord).join(', ');

/** `N·m`, `N.m` and `Nm` are one unit; `si` is `sí` on a keyboard of another country. */
const folded = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\s.·⋅*-]|\p{M}/gu, '');

/** The one option that begins with `text`, or that is it; undefined where several do, or none. */
export function chosenOption(options: readonly string[], text: string): string | undefined {
  const wanted = folded(text);
  const isIt = (option: string) => [choiceWord(option), option].some((word) => folded(word) === wanted);
  const begins = (option: string) =>
    [choiceWord(option), option].some((word) => folded(word).startsWith(wanted));
  const beginning = options.filter((option) => wanted !== '' && begins(option));
  return options.find(isIt) ?? (beginning.length === 1 ? beginning[0] : undefined);
}

export const notAChoice = (options: readonly string[]): string => w`expected one of ${choiceWords(options)}`;
