/** The reader whom an option, a setting or a file names, with the dictionary that he needs. */
import { dictionary } from '../words/dictionaries.ts';
import type { Audience, PaperReader } from './reader.ts';

export const readerOf = async ({ language, units }: Audience): Promise<PaperReader> => ({
  dictionary: await dictionary(language),
  units,
});
