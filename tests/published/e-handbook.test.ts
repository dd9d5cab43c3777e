import { describe, expect, it } from 'vitest';
import { indices } from '../../src/statistics/capability.ts';
import { type EwmaChart, ewmaChart } from '../../src/statistics/ewma.ts';
import { individualsChart, individualsLimits } from '../../src/statistics/individuals.ts';
import { RUN_RULES, runSignals } from '../../src/statistics/run-rules.ts';
import { normals } from '../statistics/generator.ts';
import { accepted } from '../statistics/outcome.ts';
import { agrees } from './published.ts';

describe('e-Handbook 6.1.6: capability of a process with limits 8 and 20, mean 16, sigma 2', () => {
  const ours = indices(16, 2, { lower: 8, upper: 20 });
  const check = (what: string, value: number, got: number | null) =>
    agrees(
      { what, value, within: 5e-5, source: 'e-Handbook 6.1.6', confirmed: 'read' },
      () => got ?? Number.NaN,
    );
  check('Cp', 1, ours.spread);
  check('Cpu', 0.6667, ours.upper);
  check('Cpl', 1.3333, ours.lower);
  check('Cpk', 0.6667, ours.nearest);
  check('k', 0.3333, ours.offCentre);
});

const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe('e-Handbook 6.3.2.2: individuals chart of ten flow rates', () => {
  const limits = accepted(individualsLimits(FLOW));
  const check = (what: string, value: number, within: number, got: number) =>
    agrees({ what, value, within, source: 'e-Handbook 6.3.2.2', confirmed: 'read' }, () => got);
  check('mean', 50.81, 1e-12, limits.centre);
  check('mean moving range', 1.8778, 5e-5, limits.rangeCentre);
  check('upper limit', 55.8041, 5e-5, limits.upper);
  check('lower limit', 45.8159, 5e-5, limits.lower);
  check('upper limit of the moving range', 6.1347, 5e-5, limits.rangeUpper);

  it('none of the ten is out of control', () => {
    const chart = accepted(individualsChart(FLOW, limits));
    expect(chart.signals).toEqual([]);
    expect(chart.wideRanges).toEqual([]);
  });
});

describe('e-Handbook 6.3.2.4: EWMA chart, weight 0.3, target 50, sigma 2.0539', () => {
  const readings = [52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, ...FLOW];
  const printed = [
    50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
    49.92, 50.73, 51.23, 51.94, 51.99,
  ];
  const chart: EwmaChart = accepted(
    ewmaChart(readings, { lambda: 0.3, target: 50, sigma: 2.0539, width: 3 }),
  );
  const check = (what: string, value: number, within: number, got: number | undefined) =>
    agrees({ what, value, within, source: 'e-Handbook 6.3.2.4', confirmed: 'read' }, () => got ?? Number.NaN);
  for (const [i, value] of printed.entries()) check(`mean ${i + 1}`, value, 0.0051, chart.points[i]?.mean);
  check('upper limit', 52.5884, 5e-5, chart.asymptotic.upper);
  // Printed truncated.
  check('lower limit', 47.4115, 1e-4, chart.asymptotic.lower);
  check('exact upper limit after twenty', 52.5884, 5e-5, chart.points.at(-1)?.upper);

  it('the process is in control', () => {
    expect(chart.points.every(({ signal }) => signal === null)).toBe(true);
  });
});

describe('e-Handbook 6.3.2: how often the run rules raise a false alarm', () => {
  const next = normals(20_260_101);
  /** Readings until the first signal of a stable process, averaged. */
  const meanRun = (runs: number, rules: readonly string[]) => {
    let total = 0;
    for (let run = 0; run < runs; run += 1) {
      const recent: number[] = [];
      for (;;) {
        recent.push(next());
        total += 1;
        const last = Math.min(recent.length, 8) - 1;
        const signals = runSignals(recent.slice(-8), 0, 1);
        if (signals.some(({ index, rule }) => index === last && rules.includes(rule))) break;
      }
    }
    return total / runs;
  };
  // Lengths scatter about as much as they are long, so this is three standard errors.
  const alarm = (what: string, value: number, runs: number, rules: readonly string[]) =>
    agrees(
      {
        what,
        value,
        within: (3 * value) / Math.sqrt(runs),
        source: 'e-Handbook 6.3.2; C. W. Champ, W. H. Woodall, 1987',
        confirmed: 'from memory',
      },
      () => meanRun(runs, rules),
    );
  alarm('mean run to a false alarm, all four', 91.75, 6000, RUN_RULES);
  alarm('mean run to a false alarm, beyond 3 sigma only', 370.4, 2000, ['one-beyond-3']);
});
