/** Languages and units of the station, and which of its languages nobody of the trade has read yet. */
import { inUnits, shownUnit } from '../../../quantity/shown.ts';
import { LANGUAGE_NAMES } from '../../../words/catalogue.ts';
import type { Reads } from '../reads.ts';
import { type Finding, good } from './finding.ts';

export function readsFinding({ screen, papers, units }: Reads): Finding {
  const [torque, length] = inUnits(units, () => [shownUnit('N.m'), shownUnit('mm')]);
  const foreign = [...new Set([screen, papers])].filter((language) => language !== 'en');
  const unread =
    foreign.length === 0
      ? ''
      : `; ${foreign.map((language) => LANGUAGE_NAMES[language]).join(' and ')} not yet read by a native of the trade`;
  return good(
    'reads',
    `screen ${LANGUAGE_NAMES[screen]}, papers ${LANGUAGE_NAMES[papers]}, ${torque}, ${length}${unread}`,
  );
}
