import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/report/charts/pen.ts';
import { ground, type Point, pullShape } from '../../src/report/plot.ts';
import type { PullPlot } from '../../src/report/plots.ts';
import { TORQUE_WINDOW, traceOf } from './fixtures.ts';

const BOX: Box = { x: 50, y: 100, width: 110, height: 60 };
const SCALE = { lowNm: 0, highNm: 33 };

function plot(change: Partial<PullPlot> = {}): PullPlot {
  return {
    pull: 1,
    verdict: 'ok',
    trace: traceOf(27, 26.6),
    durationMs: 1600,
    peak: { tMs: 1120, nm: 27 },
    release: { tMs: 898, nm: 26.6 },
    snugMs: null,
    words: '',
    ...change,
  };
}

const inside = ({ x, y }: Point) =>
  x >= BOX.x - 1e-6 && x <= BOX.x + BOX.width + 1e-6 && y >= BOX.y - 1e-6 && y <= BOX.y + BOX.height + 1e-6;

describe('a plot', () => {
  test('puts limits, acceptance zone and marks where the scale says', () => {
    const { limits, acceptance } = ground(SCALE, TORQUE_WINDOW, BOX);
    const yOf = (nm: number) => BOX.y + BOX.height * (1 - nm / 33);
    expect(limits.y).toBeCloseTo(yOf(30));
    expect(limits.y + limits.height).toBeCloseTo(yOf(25));
    expect(acceptance?.y).toBeCloseTo(yOf(29.301));
    const shape = pullShape(plot(), SCALE, BOX);
    expect(shape.peak.x).toBeCloseTo(BOX.x + (BOX.width * 1120) / 1600);
    expect(shape.peak.y).toBeCloseTo(yOf(27));
    expect(shape.release?.y).toBeCloseTo(yOf(26.6));
    expect(shape.spanMs).toBe(1600);
  });

  test('has round ticks with as many decimals as the step needs', () => {
    const texts = (highNm: number) =>
      ground({ lowNm: 0, highNm }, TORQUE_WINDOW, BOX).torqueTicks.map(({ text }) => text);
    expect(texts(33)).toEqual(['0', '10', '20', '30']);
    expect(texts(1.65)).toEqual(['0.0', '0.5', '1.0', '1.5']);
  });

  test('shows no acceptance zone where there is none, no release where there was none, no curve without samples', () => {
    expect(ground(SCALE, { ...TORQUE_WINDOW, decidable: false }, BOX).acceptance).toBeNull();
    const shape = pullShape(plot({ trace: null, release: null }), SCALE, BOX);
    expect(shape).toMatchObject({ release: null, curve: [] });
    expect(shape.peak.x).toBeCloseTo(BOX.x + (BOX.width * 1120) / 1600);
  });

  test('thins a long trace without losing its highest and lowest point', () => {
    const trace = traceOf(27, 26.6, 20_000);
    const nm = trace.nm.map((value, i) => (i === 7777 ? 31.9 : value));
    const { curve } = pullShape(plot({ trace: { ...trace, nm } }), SCALE, BOX);
    expect(curve.length).toBeLessThan(1000);
    expect(Math.min(...curve.map(({ y }) => y))).toBeCloseTo(BOX.y + BOX.height * (1 - 31.9 / 33));
    expect(curve.at(0)?.x).toBeCloseTo(BOX.x);
    expect(curve.at(-1)?.x).toBeCloseTo(BOX.x + BOX.width);
  });

  test('stays in its box whatever the samples are', () => {
    const sample = fc.tuple(fc.double({ min: -500, max: 1e5 }), fc.double());
    fc.assert(
      fc.property(fc.array(sample, { maxLength: 200 }), (samples) => {
        const sorted = [...samples].sort(([a], [b]) => a - b);
        const trace = { tMs: sorted.map(([t]) => t), nm: sorted.map(([, nm]) => nm) };
        const { curve, peak, release } = pullShape(plot({ trace }), SCALE, BOX);
        for (const point of [...curve, peak, ...(release ? [release] : [])]) expect(inside(point)).toBe(true);
      }),
    );
  });
});
