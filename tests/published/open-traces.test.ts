/**
 * Traces of machines, published under CC BY 4.0; they are not part of this project and are looked for beside it.
 * Screw runs: N. West, RIF e.V. / TU Dortmund IPS, github.com/nikolaiwest/pyscrew (doi 10.5281/zenodo.14729547); target of
 * the last stage 1.4 N·m. Unfastening: Al Assadi et al., Fraunhofer IPA, github.com/AAAipa/dataset_unfastening
 * (doi 10.1016/j.jmsy.2022.07.013). Nobody published traces of a hand wrench that clicks.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parseTrace, type TraceColumns } from '../../src/pull/columns.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { detectorSettings } from '../../src/pull/settings.ts';

/** Beside the project's own folder. */
const DATA = join(fileURLToPath(new URL('../../..', import.meta.url)), 'shared', 'data');
const SCREWS = join(DATA, 'screw_runs_1p4Nm');
const UNFASTENING = join(DATA, 'unfastening_M4_M8');
const NAMES = { time: 'time_s', torque: 'torque_Nm', angle: 'angle_deg', secondsPerUnit: 1, nmPerUnit: 1 };

function traceOf(text: string, file: string): TraceColumns {
  const trace = parseTrace(text, NAMES, file);
  if (!trace.ok) throw new Error(`${trace.error.where}: ${trace.error.message}`);
  return trace.value;
}

function pullsOf({ atUs, nm, angleDeg }: TraceColumns, lowerNm: number): DetectedPull[] {
  const detector = createPullDetector(detectorSettings(lowerNm, { stepNm: 0.001 }));
  const found = detector.pushBatch(atUs, nm, 0, atUs.length, angleDeg ?? undefined);
  const last = detector.cut('stopped');
  return last === null ? found : [...found, last];
}

const extreme = (nm: Float64Array, sign: 1 | -1) =>
  sign * nm.reduce((most, x) => Math.max(most, sign * x), 0);
const screws = existsSync(SCREWS) ? readdirSync(SCREWS).filter((name) => name.endsWith('.csv')) : [];

describe('screws driven to 1.4 N·m', () => {
  it.skipIf(screws.length > 0)('SKIPPED: the published screw runs are not on this machine', () => {
    expect(screws).toEqual([]);
  });

  it.each(screws)(
    '%s: the peak is that of the last stage, within its uncertainty of the plain maximum',
    (name) => {
      const text = readFileSync(join(SCREWS, name), 'utf8');
      const trace = traceOf(text, name);
      const plain = extreme(trace.nm, 1);
      const stages = text.trimEnd().split('\n').slice(1);
      const lastStageFromUs = 1e6 * Number(stages.find((row) => row.startsWith('4,'))?.split(',')[1]);
      const highest = pullsOf(trace, 1.2).reduce((best, pull) => (pull.peakNm > best.peakNm ? pull : best));
      expect(highest.highestNm).toBeCloseTo(plain, 9);
      expect(highest.peakUs).toBeGreaterThanOrEqual(lastStageFromUs);
      expect(Math.abs(highest.peakNm / plain - 1)).toBeLessThan(0.025);
      expect(highest.turn?.startToPeakDeg).toBeGreaterThan(300);
    },
  );
});

describe('screws taken out, M4 to M8', () => {
  const there = existsSync(UNFASTENING);

  it.skipIf(there)('SKIPPED: the published unfastening runs are not on this machine', () => {
    expect(there).toBe(false);
  });

  it.skipIf(!there)('finds the breakaway of every run that came loose, and measures it', () => {
    const runs = new Map<string, string[]>();
    for (const row of readFileSync(join(UNFASTENING, 'traces.csv'), 'utf8').trimEnd().split('\n').slice(1)) {
      const [run = '', ...rest] = row.split(',');
      runs.set(run, [...(runs.get(run) ?? []), rest.join(',')]);
    }
    const index = readFileSync(join(UNFASTENING, 'index.csv'), 'utf8').trimEnd().split('\n').slice(1);
    const released = index.map((row) => row.split(',')).filter(([, , label]) => label === 'releasable');
    expect(released.length).toBeGreaterThan(200);
    const errors = released.map(([run = '']) => {
      const trace = traceOf(`time_s,angle_deg,torque_Nm\n${runs.get(run)?.join('\n')}`, run);
      const plain = extreme(trace.nm, -1);
      const breakaway = pullsOf(trace, 0.5 * -plain).find(({ highestNm }) => highestNm <= 0.9 * plain);
      expect(breakaway, `run ${run}: ${plain} N·m`).toBeDefined();
      if (breakaway === undefined) return 0;
      expect(Math.abs(breakaway.peakNm - plain)).toBeLessThan(Math.max(4 * breakaway.peakStandardNm, 0.02));
      return breakaway.peakNm / plain - 1;
    });
    errors.sort((a, b) => a - b);
    expect(Math.abs(errors[errors.length >> 1] ?? 1)).toBeLessThan(0.005);
  });
});
