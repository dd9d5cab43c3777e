/**
 * A paper of the audit desk as a model: headed parts of facts, texts, tables and charts. paper-text.ts prints it on the
 * terminal, paper-pdf.ts as PDF; its charts are SVG pictures as well.
 */
import type { Mark } from '../job/proof.ts';
import type { Chart } from './charts/chart.ts';
import type { Cell, Column } from './table.ts';

/** A label and its value. */
export interface Labelled {
  readonly label: string;
  readonly value: string;
}

export type Part =
  | {
      readonly kind: 'text';
      readonly title: string;
      readonly paragraphs: readonly string[];
      /** For those who read the paper without the program: left out on the terminal. */
      readonly paperOnly?: true;
    }
  | { readonly kind: 'facts'; readonly title: string; readonly facts: readonly Labelled[] }
  | { readonly kind: 'chart'; readonly chart: Chart }
  | {
      readonly kind: 'table';
      readonly title: string;
      /** Above the table; alone where there are no rows. */
      readonly note: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    };

export interface Paper {
  readonly title: string;
  readonly subtitle: string;
  readonly status: { readonly word: string; readonly text: string };
  /** At least one job in it rests on simulated or replayed figures: every page says so. */
  readonly marks: readonly Mark[];
  readonly facts: readonly Labelled[];
  readonly parts: readonly Part[];
  /** At the foot of every page. */
  readonly footer: string;
  /** Name and version of the program. */
  readonly program: string;
  /** ISO time; the only date that the file itself carries. */
  readonly madeAt: string;
}
