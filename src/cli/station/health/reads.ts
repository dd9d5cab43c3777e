/** Languages and units of the station, and which of its languages nobody of the trade has read yet. */
import { inUnits, shownUnit } from '../../../quantity/shown.ts';
import { type Language, phrases, w } from '../../../words/catalogue.ts';
import type { Reads } from '../reads.ts';
import { type Finding, good } from './finding.ts';

const NAMES: Readonly<Record<Language, string>> = phrases({
  en: 'English',
  de: 'German',
  fr: 'French',
  es: 'Spanish',
});

export function readsFinding({ screen, papers, units }: Reads): Finding {
  const [torque, length] = inUnits(units, () => [shownUnit('N.m'), shownUnit('mm')]);
  const foreign = [...new Set([screen, papers])].filter((language) => language !== 'en');
  const unread =
    foreign.length === 0
      ? ''
      : w`; ${foreign.map((language) => NAMES[language]).join(', ')} not yet read by a native of the trade`;
  return good(w`reads`, w`screen ${NAMES[screen]}, papers ${NAMES[papers]}, ${torque}, ${length}${unread}`);
}
