/** Who a paper is made for: the language that it speaks, and the units that it shows. */
import { inUnits, type ShownUnits, SI } from '../quantity/shown.ts';
import { type Dictionary, ENGLISH, inLanguage, type Language } from '../words/catalogue.ts';

/** As an option, a setting or a file names them. */
export interface Audience {
  readonly language: Language;
  readonly units: ShownUnits;
}

export interface PaperReader {
  readonly dictionary: Dictionary;
  readonly units: ShownUnits;
}

/** Nobody in particular: English, N·m and mm. */
export const ANYBODY: PaperReader = { dictionary: ENGLISH, units: SI };

/** Makes a text or draws a page for a reader, whatever language the program speaks otherwise. */
export const madeFor = <T>({ dictionary, units }: PaperReader, make: () => T): T =>
  inLanguage(dictionary, () => inUnits(units, make));
