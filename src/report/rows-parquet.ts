import { parquetWriteBuffer } from 'hyparquet-writer';
import { clean } from './clean.ts';
import { type Column, rowsOf, shortened } from './rows.ts';

/** Rows as Apache Parquet: columns of figures as DOUBLE, all others as UTF-8 text, both with room for nothing. */
export function rowsParquet<T>(columns: readonly Column<T>[], rows: readonly T[]): Uint8Array {
  const cells = rowsOf(columns, rows);
  const columnData = columns.map(({ header, isFigure }, at) => ({
    name: header,
    type: isFigure === true ? ('DOUBLE' as const) : ('STRING' as const),
    nullable: true,
    data: cells.map((row) => {
      const value = row[at] ?? null;
      return typeof value === 'number' ? shortened(value) : value === null ? null : clean(value);
    }),
  }));
  return new Uint8Array(parquetWriteBuffer({ columnData, createdBy: 'plugmark' }));
}
