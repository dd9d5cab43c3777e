/** What the numbers of a record stand for: cylinders, or plugs where a cylinder has two. */
import type { Numbering } from '../sequence/plan.ts';

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
  const noun = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;
  const ofThem = (count: number, of: number | undefined, word: string) =>
    of === undefined ? noun(count, word) : `${count} of ${noun(of, word)}`;
  if (!several)
    return {
      counted: (count, of) => ofThem(count, of, 'cylinder'),
      column: 'Cyl.',
      cell: (position) => String(cylinderOf(position) ?? position),
      title: (position) => `Cyl. ${cylinderOf(position) ?? position}`,
      note: null,
    };
  const cell = (position: number) => `${position} (cyl. ${cylinderOf(position)})`;
  return {
    counted: (count, of) => `${ofThem(count, of, 'plug')} in ${noun(cylinders, 'cylinder')}`,
    column: 'Plug',
    cell,
    title: (position) => `Plug ${cell(position)}`,
    note: `A number names a plug, not a cylinder: ${plugs
      .map((one) => `cylinder ${one.cylinder} has the plugs ${one.plugs.join(' and ')}`)
      .join('; ')}.`,
  };
}
