/** What the numbers of a record stand for: cylinders, or plugs where a cylinder has two. */

import type { Numbering } from '../sequence/plan.ts';
import { plural, w } from '../words/catalogue.ts';

export interface Positions {
  /** Of a number of them: `8 cylinders`, `8 plugs in 4 cylinders`. */
  readonly counted: (count: number, of?: number) => string;
  /** At the head of a column. */
  readonly column: string;
  /** In a cell: `5`, `11 (cyl. 3)`. */
  readonly cell: (position: number) => string;
  /** Above a plot: `Cyl. 5`, `Plug 11 (cyl. 3)`. */
  readonly title: (position: number) => string;
  /** Null where every number is a cylinder. */
  readonly note: string | null;
}

export function positionsOf({ banks, plugs = [] }: Numbering): Positions {
  const several = plugs.some((one) => one.plugs.length > 1);
  const cylinderOf = (position: number) => plugs.find((one) => one.plugs.includes(position))?.cylinder;
  const cylinders = several ? plugs.length : banks.flat().length;
  if (!several)
    return {
      counted: (count, of) => (of === undefined ? cylindersText(count) : `${count} ${ofCylinders(of)}`),
      column: w`Cyl.`,
      cell: (position) => String(cylinderOf(position) ?? position),
      title: (position) => w`Cyl. ${cylinderOf(position) ?? position}`,
      note: null,
    };
  const cell = (position: number) => w`${position} (cyl. ${cylinderOf(position) ?? ''})`;
  return {
    counted: (count, of) =>
      `${of === undefined ? plugsText(count) : `${count} ${ofPlugs(of)}`} ${inCylinders(cylinders)}`,
    column: w`Plug`,
    cell,
    title: (position) => w`Plug ${cell(position)}`,
    note: w`A number names a plug, not a cylinder: ${plugs
      .map((one) => w`cylinder ${one.cylinder} has the plugs ${one.plugs.join(w` and `)}`)
      .join('; ')}.`,
  };
}

const cylindersText = (count: number) => plural(count, { one: '# cylinder', other: '# cylinders' });
const plugsText = (count: number) => plural(count, { one: '# plug', other: '# plugs' });
const ofCylinders = (count: number) => plural(count, { one: 'of # cylinder', other: 'of # cylinders' });
const ofPlugs = (count: number) => plural(count, { one: 'of # plug', other: 'of # plugs' });
const inCylinders = (count: number) => plural(count, { one: 'in # cylinder', other: 'in # cylinders' });
