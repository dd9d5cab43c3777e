/** A list as rows and columns, whichever file it goes into: CSV, a workbook, Parquet. */
import { ENGLISH, inLanguage } from '../words/catalogue.ts';

export type Value = string | number | null;

/** A column of a list: what stands above it, and what it takes from a row. */
export interface Column<T> {
  readonly header: string;
  readonly value: (row: T) => Value;
  /** Of figures alone, so that it is one of numbers where no row has any. */
  readonly isFigure?: true;
}

/** In English for every reader: other programs read it. */
export const rowsOf = <T>(columns: readonly Column<T>[], rows: readonly T[]): readonly (readonly Value[])[] =>
  inLanguage(ENGLISH, () => rows.map((row) => columns.map(({ value }) => value(row))));

/** Four decimals are finer than any instrument here; what binary fractions add beyond is dropped. */
export const shortened = (value: number): number => Number(value.toFixed(4)) + 0;
