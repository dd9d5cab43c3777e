import { columnsOf, fill } from '../../ui/printable.ts';

export type Row = readonly [label: string, text: string];

/** A line each, the texts below one another whatever the labels are in the reader's language. */
export function labelled(rows: readonly Row[], indent = ''): readonly string[] {
  const width = Math.max(0, ...rows.map(([label]) => columnsOf(label)));
  return rows.map(([label, text]) => `${indent}${fill(label, width, '')}  ${text}`.trimEnd());
}
