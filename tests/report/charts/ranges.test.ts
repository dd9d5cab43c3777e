import { expect, it } from 'vitest';
import { rangesDrawing } from '../../../src/report/charts/control.ts';
import { controlChart } from '../../../src/report/charts/control-chart.ts';
import { orThrow } from '../../../src/result.ts';
import { individualsChart, individualsLimits } from '../../../src/statistics/individuals.ts';

const steady = [27, 27.2, 26.9, 27.1, 27, 26.8, 27.1, 27, 27.2, 26.9];
const chart = orThrow(individualsChart([...steady, 29, 29.1], orThrow(individualsLimits(steady))));
const labels = [...steady, 29, 29.1].map((_, i) => `pull ${i + 1}`);
const drawing = rangesDrawing(chart, { title: 'Peak torque', unit: 'N.m', labels });

it('moving ranges stand at the reading that they lead to, from zero up to their limit', () => {
  expect(drawing.rows).toHaveLength(11);
  expect(drawing.rows[0]).toMatchObject({ label: 'pull 2', lower: 0, side: null });
  expect(drawing.rows.map(({ value }) => value)).toEqual(chart.ranges);
  for (const { upper } of drawing.rows) expect(upper).toBe(chart.limits.rangeUpper);
});

it('a jump is a signal at the reading behind it, in words as well', () => {
  expect(drawing.rows.flatMap(({ label, side }) => (side === null ? [] : [label]))).toEqual(['pull 11']);
  const { words, title } = controlChart(drawing);
  expect(title).toBe('Moving ranges: Peak torque');
  expect(words).toContain('11 moving ranges in order. Signals: pull 11 above (beyond the limit).');
});
