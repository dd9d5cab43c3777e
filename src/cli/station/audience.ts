/** Whom the papers of a command are for: as its options say, else as the station file has it. */
import type { Audience } from '../../report/reader.ts';
import type { Language } from '../../words/catalogue.ts';
import { readsOf, UNITS } from './reads.ts';
import type { Scope } from './scope.ts';
import { readStationFile } from './station-file.ts';

/** What `--language` and `--units` name. */
export interface AudienceOptions {
  readonly language?: Language;
  readonly units?: keyof typeof UNITS;
}

/** English, N·m and mm where no option and no station file says anything else. */
export async function audienceOf(
  options: AudienceOptions & Partial<Scope> & { readonly archive?: string },
): Promise<Audience> {
  const { language, units, station, data, archive } = options;
  const isFile = station !== undefined && data === undefined && archive === undefined;
  const reads = isFile ? (await readStationFile(station)).reads : readsOf();
  return {
    language: language ?? reads.papers,
    units: units === undefined ? reads.units : UNITS[units],
  };
}
