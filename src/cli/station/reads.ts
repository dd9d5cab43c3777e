/** Languages and units that the people of a station read; the record has neither: it keeps codes, N·m and mm. */
import { z } from 'zod';
import { SHOWN_LENGTH, SHOWN_TORQUE, type ShownUnits, SI, showIn } from '../../quantity/shown.ts';
import { LANGUAGES, type Language, speak } from '../../words/catalogue.ts';
import { dictionary } from '../../words/dictionaries.ts';
import { inPlainLetters } from '../../words/plain-letters.ts';

export const languageSchema = z.enum(LANGUAGES);

export const readsSchema = z
  .strictObject({
    screen: languageSchema
      .exactOptional()
      .describe('Language of the screen and of what commands print; English unless given.'),
    papers: languageSchema
      .exactOptional()
      .describe('Language of papers for customers and auditors; English unless given.'),
    torque: z
      .enum(SHOWN_TORQUE)
      .exactOptional()
      .describe('Unit that torque is shown in (UCUM), on screen and paper; N·m unless given.'),
    length: z
      .enum(SHOWN_LENGTH)
      .exactOptional()
      .describe('Unit that gaps are shown in (UCUM), on screen and paper; mm unless given.'),
  })
  .describe('Languages and units as the shop reads them. Records keep codes, N·m and mm.');

/** Both units at once, as options name them. */
export const UNITS = {
  'N.m-mm': SI,
  'lbf.ft-in': { torque: '[ft_i].[lbf_av]', length: '[in_i]' },
} as const satisfies Record<string, ShownUnits>;

type ReadsInFile = z.infer<typeof readsSchema>;

/** The same with what is usual filled in. */
export interface Reads {
  readonly screen: Language;
  readonly papers: Language;
  readonly units: ShownUnits;
}

export const readsOf = ({ screen, papers, torque, length }: ReadsInFile = {}): Reads => ({
  screen: screen ?? 'en',
  papers: papers ?? 'en',
  units: { torque: torque ?? SI.torque, length: length ?? SI.length },
});

/** From now on the program writes for the people at its screen; `ascii`: their terminal has no other letters. */
export async function showFor(language: Language, units: ShownUnits, ascii: boolean): Promise<void> {
  const words = await dictionary(language);
  speak(ascii ? inPlainLetters(words) : words);
  showIn(units);
}
