/** The reader whom an option, a setting or a file names, with the dictionary that he needs. */

import type { Audience, PaperReader } from '../../report/reader.ts';
import { dictionary } from '../../words/dictionaries.ts';

export const readerOf = async ({ language, units }: Audience): Promise<PaperReader> => ({
  dictionary: await dictionary(language),
  units,
});
