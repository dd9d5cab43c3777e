/** The units of a paper as a keyword of its file, in the letters of UCUM, so that the same paper can be made again. */
import { SHOWN_LENGTH, SHOWN_TORQUE, type ShownUnits, SI } from '../quantity/shown.ts';

export const unitsAsKeyword = ({ torque, length }: ShownUnits): string =>
  `torque in ${torque}; length in ${length}`;

/** N·m and mm where a file names no units that papers are written in. */
export const unitsOfKeyword = (keyword: string): ShownUnits =>
  SHOWN_TORQUE.flatMap((torque) => SHOWN_LENGTH.map((length) => ({ torque, length }))).find(
    (units) => unitsAsKeyword(units) === keyword,
  ) ?? SI;
