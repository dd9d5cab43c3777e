/**
 * Control charts of the audit as a model that the plain-text and the SVG drawing share. Nothing is computed here: limits and
 * signals come from src/statistics.
 */

import type { EwmaChart } from '../../statistics/ewma.ts';
import type { IndividualsChart } from '../../statistics/individuals.ts';
import type { RunRule } from '../../statistics/run-rules.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import { clean } from '../clean.ts';
import { figuresApart, type Unit } from '../figures.ts';

/** A rule as a person reads it. */
const RULES: Readonly<Record<RunRule, string>> = phrases({
  'one-beyond-3': 'beyond 3 sigma',
  'two-of-three-beyond-2': '2 of 3 beyond 2 sigma',
  'four-of-five-beyond-1': '4 of 5 beyond 1 sigma',
  'eight-on-one-side': '8 in a row on one side',
});

/** What one mark of a chart is. */
export const MARKS = phrases({
  reading: 'reading',
  'moving range': 'moving range',
  'weighted mean': 'weighted mean',
});

/** So many of them. */
export function marksText(mark: keyof typeof MARKS, count: number): string {
  switch (mark) {
    case 'reading':
      return plural(count, { one: '# reading', other: '# readings' });
    case 'moving range':
      return plural(count, { one: '# moving range', other: '# moving ranges' });
    case 'weighted mean':
      return plural(count, { one: '# weighted mean', other: '# weighted means' });
  }
}

export const CENTRES = phrases({ mean: 'mean', target: 'target' });

const SIDES = phrases({ above: 'above', below: 'below' });

export const sideText = (side: 'above' | 'below' | null): string => (side === null ? '' : SIDES[side]);

/** What the statistics do not know: where the values came from. */
export interface Caption {
  /** `Peak torque, wrench W-07`. */
  readonly title: string;
  readonly unit: Unit;
  /** One to a reading, such as a date; numbers from 1 where there are none. */
  readonly labels?: readonly string[];
}

export interface ControlRow {
  readonly label: string;
  readonly value: number;
  readonly lower: number;
  readonly upper: number;
  readonly side: 'above' | 'below' | null;
  /** Why the row is a signal, in words; empty when it is none. */
  readonly reasons: readonly string[];
}

export interface ControlDrawing {
  readonly title: string;
  /** What one mark is. */
  readonly mark: keyof typeof MARKS;
  readonly unit: Unit;
  readonly centreName: 'mean' | 'target';
  readonly centre: number;
  readonly rows: readonly ControlRow[];
}

/** Writes its limits and centre: readings that hardly differ have limits that only more decimals tell apart. */
export function figureOf({ rows, centre, unit }: ControlDrawing): (value: number) => string {
  const { upper, lower } = rows.at(-1) ?? { upper: centre, lower: centre };
  return figuresApart((upper - lower) / 2, unit);
}

/** An individuals chart to be drawn; its signals stand at the readings that complete them. */
export function individualsDrawing(chart: IndividualsChart, caption: Caption): ControlDrawing {
  const { centre, lower, upper } = chart.limits;
  return {
    title: w`Individuals chart: ${clean(caption.title)}`,
    mark: 'reading',
    unit: caption.unit,
    centreName: 'mean',
    centre,
    rows: chart.readings.map((value, index) => {
      const signals = chart.signals.filter((signal) => signal.index === index);
      return {
        label: label(caption, index),
        value,
        lower,
        upper,
        side: signals[0]?.side ?? null,
        reasons: signals.map(({ rule }) => RULES[rule]),
      };
    }),
  };
}

/** The moving ranges beside an individuals chart: each reading's distance from the one before. */
export function rangesDrawing(
  { ranges, limits, wideRanges }: IndividualsChart,
  caption: Caption,
): ControlDrawing {
  const { rangeCentre, rangeUpper } = limits;
  return {
    title: w`Moving ranges: ${clean(caption.title)}`,
    mark: 'moving range',
    unit: caption.unit,
    centreName: 'mean',
    centre: rangeCentre,
    rows: ranges.map((value, index) => ({
      label: label(caption, index + 1),
      value,
      lower: 0,
      upper: rangeUpper,
      side: wideRanges.includes(index + 1) ? 'above' : null,
      reasons: wideRanges.includes(index + 1) ? [w`beyond the limit`] : [],
    })),
  };
}

/** A chart of weighted means to be drawn, with the limits that are exact for each. */
export function ewmaDrawing(chart: EwmaChart, caption: Caption): ControlDrawing {
  return {
    title: w`EWMA chart, weight ${chart.settings.lambda}: ${clean(caption.title)}`,
    mark: 'weighted mean',
    unit: caption.unit,
    centreName: 'target',
    centre: chart.settings.target,
    rows: chart.points.map(({ mean, lower, upper, signal }, index) => ({
      label: label(caption, index),
      value: mean,
      lower,
      upper,
      side: signal,
      reasons: signal === null ? [] : [w`beyond the limit`],
    })),
  };
}

/** All that the drawing shows, in two sentences, for who cannot see it. */
export function controlInWords({ mark, rows }: ControlDrawing): string {
  const out = rows.filter(({ side }) => side !== null);
  const named = out
    .slice(0, 5)
    .map(({ label, side, reasons }) => `${label} ${sideText(side)} (${reasons.join(', ')})`);
  const more = out.length > named.length ? w`, and ${out.length - named.length} more` : '';
  const count = w`${marksText(mark, rows.length)} in order.`;
  return out.length === 0
    ? `${count} ${w`No signal.`}`
    : `${count} ${w`Signals: ${named.join('; ')}${more}.`}`;
}

function label({ labels }: Caption, index: number): string {
  return clean(labels?.[index] ?? String(index + 1));
}
