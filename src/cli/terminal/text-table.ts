import { textTable as tableIn } from '../../report/text-table.ts';
import { screenColumns } from './wrapped.ts';

/** A table as wide as the terminal. */
export const textTable = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  columns = screenColumns(),
): readonly string[] => tableIn(head, rows, columns);
