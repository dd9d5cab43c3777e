import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartSvg } from '../../../src/report/charts/chart.ts';
import { histogram } from '../../../src/report/charts/histogram.ts';
import { histogramChart } from '../../../src/report/charts/histogram-chart.ts';
import { histogramText } from '../../../src/report/charts/histogram-text.ts';
import { count } from '../../../src/statistics/limits.ts';
import { elements } from './xml.ts';

const WINDOW = { lower: 0.7, upper: 0.8 };
const CAPTION = { title: 'Gap as delivered', unit: 'mm' } as const;
const GAPS = [0.68, 0.7, 0.71, 0.72, 0.73, 0.74, 0.74, 0.75, 0.75, 0.75, 0.76, 0.77, 0.79, 0.8, 0.81];

const gap = fc.integer({ min: 400, max: 1200 }).map((um) => um / 1000);
const gaps = fc.array(gap, { maxLength: 80 });
const limits = fc.constantFrom(
  WINDOW,
  { lower: 0.7, upper: null },
  { lower: null, upper: 0.8 },
  { lower: 0.7333, upper: 0.7334 },
);

describe('the bins of a histogram', () => {
  it('hold every reading once, on the side of the limits where it lies', () => {
    fc.assert(
      fc.property(gaps, limits, (readings, { lower, upper }) => {
        const bins = histogram(readings, { lower, upper });
        const total = (where: string) =>
          bins.filter((bin) => bin.where === where).reduce((sum, bin) => sum + bin.count, 0);
        expect({ below: total('below'), within: total('within'), above: total('above') }).toEqual(
          count(readings, { lower, upper }),
        );
      }),
    );
  });

  it('follow each other without a gap, and a limit is always an edge', () => {
    fc.assert(
      fc.property(gaps, limits, (readings, { lower, upper }) => {
        const bins = histogram(readings, { lower, upper });
        for (const [i, bin] of bins.entries()) {
          expect(bin.from).toBeLessThan(bin.to);
          if (i > 0) expect(bin.from).toBe(bins[i - 1]?.to);
        }
        const edges = bins.flatMap(({ from, to }) => [from, to]);
        if (lower !== null) expect(edges).toContain(lower);
        if (upper !== null) expect(edges).toContain(upper);
      }),
    );
  });

  it('hold the readings that lie between their edges', () => {
    fc.assert(
      fc.property(gaps, limits, (readings, { lower, upper }) => {
        for (const { from, to, count: n } of histogram(readings, { lower, upper })) {
          const near = readings.filter((x) => x >= from - 1e-9 && x <= to + 1e-9).length;
          const sure = readings.filter((x) => x > from + 1e-9 && x < to - 1e-9).length;
          expect(n).toBeLessThanOrEqual(near);
          expect(n).toBeGreaterThanOrEqual(sure);
        }
      }),
    );
  });

  it('stay few when one reading is absurd, which falls into an open one', () => {
    const bins = histogram([...GAPS, 1e9], WINDOW);
    expect(bins.length).toBeLessThanOrEqual(36);
    expect(bins.at(-1)).toMatchObject({ to: Number.POSITIVE_INFINITY, count: 1, where: 'above' });
  });

  it('do not depend on the order of the readings', () => {
    fc.assert(
      fc.property(gaps, limits, (readings, given) => {
        expect(histogram([...readings].reverse(), given)).toEqual(histogram(readings, given));
      }),
    );
  });
});

describe('a histogram as text', () => {
  it('draws bars by count, rules at the limits, and names what is outside', () => {
    const lines = histogramText(GAPS, WINDOW, CAPTION, { width: 72, ascii: false });
    const at = (text: string) => lines.findIndex((line) => line.startsWith(text));
    expect(lines[0]).toBe('Histogram: Gap as delivered, mm, 15 readings');
    expect(lines[at('lower limit 0.700 mm') - 1]).toMatch(/█.* 1 below$/);
    expect(lines[at('upper limit 0.800 mm') + 1]).toMatch(/█.* 1 above$/);
    expect(lines.at(-1)).toBe('1 below 0.700 mm, 13 within, 1 above 0.800 mm.');
    const longest = [...lines].sort((a, b) => b.split('█').length - a.split('█').length)[0];
    const most = Math.max(...histogram(GAPS, WINDOW).map((bin) => bin.count));
    expect(longest?.trim().split(/\s+/).at(-1)).toBe(String(most));
  });

  it('is never wider than asked, nor holds anything but ASCII where that is asked', () => {
    fc.assert(
      fc.property(
        gaps,
        limits,
        fc.integer({ min: 40, max: 150 }),
        fc.string({ unit: 'grapheme' }),
        (readings, given, width, title) => {
          for (const line of histogramText(readings, given, { ...CAPTION, title }, { width, ascii: true })) {
            expect(line.length).toBeLessThanOrEqual(width);
            expect(line).toMatch(/^[\x20-\x7e]*$/);
          }
        },
      ),
    );
  });
});

describe('a histogram as SVG', () => {
  it('has a bar with its count for every bin that holds something, and both limits by name', () => {
    const svg = elements(chartSvg(histogramChart(GAPS, WINDOW, CAPTION), { width: 640, height: 320 }));
    const used = histogram(GAPS, WINDOW).filter((bin) => bin.count > 0);
    // One more rectangle is the ground.
    expect(svg.count('rect')).toBe(used.length + 1);
    expect(svg.texts('text')).toEqual(
      expect.arrayContaining(['lower limit 0.700 mm', 'upper limit 0.800 mm', 'reading, mm']),
    );
    expect(svg.texts('desc')).toEqual(['1 below 0.700 mm, 13 within, 1 above 0.800 mm.']);
  });

  it('is well-formed whatever the readings and the title', () => {
    fc.assert(
      fc.property(gaps, limits, fc.string({ unit: 'binary' }), (readings, given, title) => {
        const svg = elements(
          chartSvg(histogramChart(readings, given, { ...CAPTION, title }), { width: 640, height: 320 }),
        );
        expect(svg.points().flat().every(Number.isFinite)).toBe(true);
      }),
    );
  });
});
