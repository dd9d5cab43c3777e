/** Which part of the screen gets how many rows; worked out once a frame, so that the parts always add up. */

import { w } from '../words/catalogue.ts';

export interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** `boxed`: a frame of four rows; `pair`: gap over torque; `tiny`: number and one word. */
type CellForm = 'boxed' | 'pair' | 'tiny';

export interface EngineLayout {
  readonly form: CellForm;
  readonly cellColumns: number;
  readonly perRow: number;
  readonly rows: number;
}

export interface Layout {
  readonly engine: EngineLayout;
  readonly next: number;
  readonly bar: number;
  readonly scaleFigures: boolean;
  readonly letters: number;
  /** A row for advice on the last pull. */
  readonly advice: number;
  readonly trace: number;
  /** Empty rows between the parts, at most four. */
  readonly breaths: number;
}

export const SMALLEST: Size = { columns: 60, rows: 20 };

export const isLargeEnough = ({ columns, rows }: Size): boolean =>
  columns >= SMALLEST.columns && rows >= SMALLEST.rows;

export const tooSmallText = ({ columns, rows }: Size): string =>
  w`The window is ${columns} by ${rows}; make it at least ${SMALLEST.columns} by ${SMALLEST.rows}.`;

/** The words `gap` and `torque` to the left of the cells. */
export const PAIR_MARGIN = 8;

const FORMS: Readonly<Record<CellForm, { margin: number; least: number; most: number; rows: number }>> = {
  boxed: { margin: 1, least: 21, most: 30, rows: 4 },
  pair: { margin: PAIR_MARGIN, least: 10, most: 22, rows: 2 },
  tiny: { margin: 1, least: 9, most: 14, rows: 1 },
};

function engineLayout(form: CellForm, banks: readonly (readonly number[])[], columns: number): EngineLayout {
  const { margin, least, most, rows } = FORMS[form];
  const room = columns - margin;
  const longest = Math.max(...banks.map((bank) => bank.length));
  const perRow = Math.min(longest, Math.floor(room / least));
  return {
    form,
    perRow,
    cellColumns: Math.min(most, Math.floor(room / perRow)),
    rows: rows * banks.reduce((sum, bank) => sum + Math.ceil(bank.length / perRow), 0),
  };
}

/** One row each: title, middle line of the engine, heading of the bar, its scale, two captions of the letters, tools, keys; next two, bar one. */
const LEAST_BUT_ENGINE = 11;
const SMALL_LETTERS = 3;

/**
 * Shares `size.rows - 1` rows out (a frame as tall as the terminal flickers): first what must be there, then what
 * helps most. `banks` as in the work order; `nextRows`: what the sentence at the top takes.
 */
export function layoutFor(size: Size, banks: readonly (readonly number[])[], nextRows = 2): Layout {
  const longest = Math.max(...banks.map((bank) => bank.length));
  const forms = {
    boxed: engineLayout('boxed', banks, size.columns),
    pair: engineLayout('pair', banks, size.columns),
    tiny: engineLayout('tiny', banks, size.columns),
  };
  const height = size.rows - 1 - LEAST_BUT_ENGINE;
  const fits = (engine: EngineLayout) => engine.rows + SMALL_LETTERS <= height;
  const whole = (engine: EngineLayout) => fits(engine) && engine.perRow === longest;
  let engine = [forms.pair, forms.tiny].find(whole) ?? [forms.pair].find(fits) ?? forms.tiny;

  let spare = height - engine.rows;
  const take = (rows: number): number => {
    if (spare < rows) return 0;
    spare -= rows;
    return rows;
  };
  let letters = take(SMALL_LETTERS);
  let next = 2;
  while (next < Math.max(nextRows, size.columns < 80 ? 3 : 2) && take(1) > 0) next += 1;
  const roomy = size.columns >= 70 && size.rows >= 22;
  if (letters > 0) letters += take(2);
  let trace = roomy ? take(1) : 0;
  const advice = take(1);
  const scaleFigures = take(1) > 0;
  let breaths = 0;
  while (breaths < 4 && take(1) > 0) breaths += 1;
  const bar = 1 + take(1);
  if (whole(forms.boxed) && spare >= forms.boxed.rows - engine.rows) {
    take(forms.boxed.rows - engine.rows);
    engine = forms.boxed;
  }
  if (trace > 0) trace += take(3);
  if (letters === 5) letters += take(5);
  if (trace > 0) trace += Math.min(4, spare);
  return { engine, next, bar, scaleFigures, letters, advice, trace, breaths };
}

/** The roomiest engine of at most `rows` rows that keeps each bank in one row; null where none fits. */
export function engineWithin(
  columns: number,
  rows: number,
  banks: readonly (readonly number[])[],
): EngineLayout | null {
  const longest = Math.max(...banks.map((bank) => bank.length));
  const forms = (['pair', 'tiny'] as const).map((form) => engineLayout(form, banks, columns));
  return (
    forms.find((one) => one.rows < rows && one.perRow === longest) ??
    forms.find((one) => one.rows < rows) ??
    null
  );
}
