/** A paper as lines for the terminal. */

import { columnsOf, printable } from '../ui/printable.ts';
import { wrapped as broken } from './lines.ts';
import type { Labelled, Paper, Part } from './paper.ts';
import { textTable } from './text-table.ts';
import { wrapped } from './text-wrap.ts';
import { MARK_PAPER } from './words/index.ts';

export interface Terminal {
  /** Infinite where nothing breaks lines. */
  readonly columns: number;
  /** Only characters of ASCII. */
  readonly ascii: boolean;
}

/** Charts are no wider, nor narrower than they can be read. */
const CHART = { widest: 120, usual: 80 } as const;
const LONGEST = 1000;
const LABEL = 24;

/** The headline first, then facts and parts under their titles; text from outside is made safe. */
export function paperLines(paper: Paper, { columns, ascii }: Terminal): readonly string[] {
  const { title, subtitle, status, marks, facts, parts } = paper;
  const paragraph = (text: string) => wrapped(printable(text, LONGEST), columns);
  const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
    textTable(head, rows, columns - 2).map((line) => `  ${line}`);
  const chart = { width: Number.isFinite(columns) ? Math.min(columns, CHART.widest) : CHART.usual, ascii };
  const factLines = (all: readonly Labelled[]) =>
    all.flatMap(({ label, value }) =>
      wrapped(`  ${label.padEnd(labelWidth(all))}${printable(value, LONGEST)}`, columns),
    );
  const partLines = (part: Part): readonly string[] => {
    switch (part.kind) {
      case 'chart':
        return part.chart.text === null ? [] : ['', ...part.chart.text(chart)];
      case 'text':
        return part.paperOnly
          ? []
          : ['', ...paragraph(part.title), ...part.paragraphs.flatMap((text) => indented(text, columns))];
      case 'facts':
        return ['', ...paragraph(part.title), ...factLines(part.facts)];
      case 'table':
        return [
          '',
          ...paragraph(part.title),
          ...(part.note === '' ? [] : indented(part.note, columns)),
          ...(part.rows.length === 0
            ? []
            : table(
                part.columns.map(({ title }) => title),
                part.rows.map((row) =>
                  row.map(({ text }, i) => text || (part.columns[i]?.title && '-') || ''),
                ),
              )),
        ];
    }
  };
  return [
    ...paragraph(`${status.word}: ${title}, ${subtitle}`),
    ...(status.text === '' ? [] : paragraph(status.text)),
    ...marks.flatMap((mark) => paragraph(MARK_PAPER[mark])),
    ...(facts.length === 0 ? [] : ['', ...factLines(facts)]),
    ...parts.flatMap(partLines),
  ];
}

/** Two spaces after the longest label. */
const labelWidth = (facts: readonly Labelled[]) =>
  Math.min(LABEL, 2 + Math.max(...facts.map(({ label }) => label.length)));

/** Text under a title, all lines at the same column. */
const indented = (text: string, columns: number) =>
  broken(printable(text, LONGEST), columns - 2, Number.POSITIVE_INFINITY, columnsOf).lines.map(
    (line) => `  ${line.trimEnd()}`,
  );
