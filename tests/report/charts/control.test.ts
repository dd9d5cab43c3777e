import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartSvg, type PictureSize } from '../../../src/report/charts/chart.ts';
import { type ControlDrawing, ewmaDrawing, individualsDrawing } from '../../../src/report/charts/control.ts';
import { controlChart } from '../../../src/report/charts/control-chart.ts';
import { controlText } from '../../../src/report/charts/control-text.ts';
import { ewmaChart } from '../../../src/statistics/ewma.ts';
import { individualsChart, individualsLimits } from '../../../src/statistics/individuals.ts';
import { accepted } from '../../statistics/outcome.ts';
import { elements } from './xml.ts';

const BASELINE = [25, 25.4, 24.8, 25.1, 24.7, 25.3, 25.2, 24.9, 25.1, 24.8];
const LIMITS = accepted(individualsLimits(BASELINE));
const CAPTION = { title: 'Peak torque, wrench 7', unit: 'N.m' } as const;

const individuals = (readings: readonly number[], title: string = CAPTION.title): ControlDrawing =>
  individualsDrawing(accepted(individualsChart(readings, LIMITS)), { ...CAPTION, title });
const ewma = (readings: readonly number[]): ControlDrawing =>
  ewmaDrawing(
    accepted(ewmaChart(readings, { lambda: 0.2, target: 25, sigma: LIMITS.sigma, width: 3 })),
    CAPTION,
  );

const controlSvg = (drawing: ControlDrawing, size: PictureSize) => chartSvg(controlChart(drawing), size);

const FULL = { width: 80, ascii: false };
const PLAIN = { width: 60, ascii: true };

describe('a control chart as text', () => {
  it('has a line for every reading, with its figure, and a mark of its own for a signal', () => {
    const lines = controlText(individuals([25.1, 24.9, 28]), FULL);
    const rows = lines.slice(3, 6);
    expect(rows.map((row) => row.trim().split(/\s+/).at(-1))).toEqual(['25.10', '24.90', '28.00']);
    expect(rows[0]).toContain('•');
    expect(rows[2]).toContain('▲');
    expect(rows[2]).not.toContain('•');
    expect(rows.every((row) => row.includes('│') && row.includes('┊'))).toBe(true);
  });

  it('says in words what is wrong, with the unit of its figures', () => {
    const text = controlText(individuals([25.1, 24.9, 28]), FULL).join('\n');
    expect(text).toContain('Individuals chart: Peak torque, wrench 7');
    expect(text).toContain('N·m');
    expect(text).toContain('3 above (beyond 3 sigma)');
    expect(controlText(individuals([25.1]), FULL).at(-1)).toBe('1 reading in order. No signal.');
  });

  it('puts a mark further to the right the larger its value', () => {
    const rows = controlText(individuals([24.8, 25, 25.2]), FULL).slice(3, 6);
    const at = rows.map((row) => row.indexOf('•'));
    expect(at[0]).toBeLessThan(at[1] ?? 0);
    expect(at[1]).toBeLessThan(at[2] ?? 0);
  });

  it('keeps its scale when one reading is absurd, and shows it at the edge with its figure', () => {
    const rows = controlText(individuals([24.8, 25.2, 1e9]), FULL).slice(3, 6);
    expect(rows[0]?.indexOf('•')).not.toBe(rows[1]?.indexOf('•'));
    expect(rows[2]).toContain('1.000e+9');
  });

  it('keeps its scale when one reading is absurdly low', () => {
    const rows = controlText(individuals([24.8, 25.2, -1e9]), FULL).slice(3, 6);
    expect(rows[0]?.indexOf('•')).not.toBe(rows[1]?.indexOf('•'));
    expect(rows[2]).toContain('▼');
  });

  it('cuts a long title and says so', () => {
    const [title] = controlText(individuals([25], 'x'.repeat(200)), PLAIN);
    expect(title).toHaveLength(60);
    expect(title?.endsWith('x~')).toBe(true);
  });

  it('tells limits apart that lie within one shown step, where readings hardly differ', () => {
    const near = [...Array(39).fill(27), 27.01];
    const chart = accepted(individualsChart(near, accepted(individualsLimits(near))));
    const drawing = individualsDrawing(chart, CAPTION);
    const text = controlText(drawing, FULL).join(' ');
    expect(text).toContain('limits 26.9996 to 27.0009, mean 27.0003 N·m');
    const svg = elements(controlSvg(drawing, { width: 600, height: 300 }));
    const figures = svg.texts('text').filter((one) => /^[\d.]+$/.test(one));
    expect(figures.length).toBeGreaterThan(2);
    expect(new Set(figures).size).toBe(figures.length);
  });

  it('draws weighted means with the limits of each', () => {
    const rows = controlText(ewma(Array(12).fill(25.4)), FULL).slice(3, 15);
    expect(rows[0]?.lastIndexOf('│')).toBeLessThan(rows[11]?.lastIndexOf('│') ?? 0);
    expect(rows[11]).toContain('▲');
  });

  const readings = fc
    .array(fc.integer({ min: 2000, max: 3000 }), { maxLength: 30 })
    .map((xs) => xs.map((x) => x / 100));
  const width = fc.integer({ min: 40, max: 160 });

  it('is never wider than asked, nor holds anything but ASCII where that is asked', () => {
    fc.assert(
      fc.property(
        readings,
        width,
        fc.boolean(),
        fc.string({ unit: 'grapheme' }),
        (xs, columns, ascii, title) => {
          const lines = controlText(individuals(xs, title), { width: columns, ascii });
          for (const line of lines) {
            expect([...line].length).toBeLessThanOrEqual(columns);
            if (ascii) expect(line).toMatch(/^[\x20-\x7e]*$/);
          }
        },
      ),
    );
  });

  it('lets no control character of a title or label through', () => {
    const chart = accepted(individualsChart([25], LIMITS));
    const drawing = individualsDrawing(chart, { title: 'a\x1b[2Jb', unit: 'mm', labels: ['x\ny\u202e'] });
    for (const line of controlText(drawing, PLAIN)) expect(line).not.toMatch(/[\p{Cc}\u202e]/u);
  });
});

describe('a control chart as SVG', () => {
  it('is well-formed whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (title) => {
        const svg = elements(controlSvg(individuals([25, 28], title), { width: 600, height: 300 }));
        expect(svg.name).toBe('svg');
      }),
    );
    const svg = controlSvg(individuals([25], '</title><script>alert(1)</script>&'), {
      width: 600,
      height: 300,
    });
    expect(svg).not.toContain('<script');
  });

  it('shows a signal by its shape and tells the chart in words', () => {
    const svg = elements(controlSvg(individuals([25.1, 24.9, 28]), { width: 600, height: 300 }));
    expect(svg.count('circle')).toBe(2);
    expect(svg.count('polygon')).toBe(1);
    expect(svg.texts('desc')).toEqual(['3 readings in order. Signals: 3 above (beyond 3 sigma).']);
    expect(svg.texts('text').join(' ')).toMatch(/upper \d+\.\d\d N·m/);
    expect(svg.texts('text')).toContain('reading, N·m');
  });

  it('uses no colour that is not a grey', () => {
    const svg = controlSvg(individuals([25.1, 24.9, 28]), { width: 600, height: 300 });
    const colours = [...svg.matchAll(/#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/g)];
    expect(colours.length).toBeGreaterThan(0);
    for (const [, red, green, blue] of colours) expect([green, blue]).toEqual([red, red]);
  });

  it('keeps every mark inside the picture, which is never too small for its captions', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { maxLength: 40 }), (xs) => {
        const svg = elements(controlSvg(ewma(xs), { width: 10, height: 10 }));
        for (const [x, y] of svg.points()) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(320);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(180);
        }
      }),
    );
  });
});
