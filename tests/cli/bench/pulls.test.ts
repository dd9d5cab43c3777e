import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readTrace, reportLines } from '../../../src/cli/bench/pulls.ts';
import { pullsReportSchema, reportOn } from '../../../src/cli/bench/pulls-report.ts';
import { recordingOf } from '../../../src/cli/bench/replay.ts';
import { schemaOf } from '../../../src/cli/help/schema.ts';
import { parseTrace } from '../../../src/pull/columns.ts';
import { clickPull, drawn } from '../../pull/shapes.ts';

const NAMES = { time: 'time_s', torque: 'torque_Nm', angle: null, secondsPerUnit: 1, nmPerUnit: 1 };
const OPTIONS = { timeColumn: 'time_s', torqueColumn: 'torque_Nm', timeUnit: 's', torqueUnit: 'N·m' };
const folder = mkdtempSync(join(tmpdir(), 'plugmark-pulls-'));
afterAll(() => rmSync(folder, { recursive: true }));

const samples = drawn([{ atMs: 0, nm: 0 }, ...clickPull(1000, 600, 27, 22, 27.8)]);
const csv = (rows: readonly string[]) => `time_s,torque_Nm\n${rows.join('\n')}\n`;
const rows = samples.map(({ atUs, nm }) => `${atUs / 1e6},${nm.toFixed(3)}`);

function written(text: string): string {
  const file = join(folder, `${Math.abs(text.length)}.csv`);
  writeFileSync(file, text);
  return file;
}

describe('a trace as a file', () => {
  it('gives its pulls as JSON that its own schema accepts', async () => {
    const trace = await readTrace(written(csv(rows)), OPTIONS);
    const report = reportOn(trace, 'pull.csv', { lowerNm: 25, maxima: false });
    expect(report.pulls).toMatchObject([{ pull: 1, release: 'seen' }]);
    expect(pullsReportSchema.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  });

  it('has a schema that names every figure of a pull', () => {
    const schema = schemaOf('pulls');
    expect(schema).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', type: 'object' });
    const pull = z.toJSONSchema(pullsReportSchema.shape.pulls.element).properties ?? {};
    const listed = JSON.stringify(schema);
    for (const name of Object.keys(pull)) expect(listed).toContain(`"${name}"`);
    expect(Object.keys(pull)).toContain('peakStandardNm');
  });

  it('is drawn with the peak and the click below the curve, in plain ASCII where that is all there is', async () => {
    const trace = await readTrace(written(csv(rows)), OPTIONS);
    const lines = reportLines(reportOn(trace, 'pull.csv', { lowerNm: null, maxima: false }), trace, true);
    expect(lines.join('\n')).toMatch(/pull 1: peak 27\.8\d Nm .* click 2[67]\.\d\d Nm/);
    expect(lines.some((line) => /c.*P/.test(line) && line.includes('P peak, c click'))).toBe(true);
  });

  it('takes other names and units, semicolons and a byte order mark', async () => {
    const text = `\uFEFFt;"torque lbf·ft"\n${samples.map(({ atUs, nm }) => `${atUs / 1e3};${nm / 1.3558179483314}`).join('\r\n')}`;
    const named = { timeColumn: 't', torqueColumn: 'torque lbf·ft', timeUnit: 'ms', torqueUnit: 'lbf·ft' };
    const trace = await readTrace(written(text), named);
    expect(
      Math.abs((reportOn(trace, '', { lowerNm: 25, maxima: false }).pulls[0]?.peakNm ?? 0) - 27.8),
    ).toBeLessThan(0.1);
  });

  it('keeps a row without a torque as a gap, and plays it as a value that the tool did not know', () => {
    const trace = parseTrace(csv(['0,0.1', '0.01,', '0.02,NaN', '0.03,0.1']), NAMES, 'x.csv');
    if (!trace.ok) throw new Error(trace.error.message);
    expect(trace.value.gaps.map(({ row }) => row)).toEqual([3, 4]);
    expect(recordingOf(trace.value).readings.map(({ kind, n }) => [kind, n])).toEqual([
      ['value', 1],
      ['not-known', 2],
      ['not-known', 3],
      ['value', 4],
    ]);
  });

  it.each<[string, string, string]>([
    ['an empty file', '', 'x.csv: row 1'],
    ['a header alone', 'time_s,torque_Nm\n', 'x.csv'],
    ['a header without the torque', 'time_s,angle_deg\n0,1\n', 'x.csv: row 1'],
    ['time that goes back', csv(['0.1,0', '0.2,0', '0.15,0']), 'x.csv: row 4'],
    ['a time that is no number', csv(['0,0', 'soon,0']), 'x.csv: row 3'],
    ['a time that stands still', csv(['0.1,0', '0.1,5', '0.1,0']), 'x.csv: row 2'],
    ['a time below zero', csv(['-1,0']), 'x.csv: row 2'],
    ['a torque that is no number', csv(['0,0', '1,strong']), 'x.csv: row 3'],
    ['an endless torque', csv(['0,0', '1,Infinity']), 'x.csv: row 3'],
    ['a row that is too short', csv(['0,0', '1']), 'x.csv: row 3'],
  ])('refuses %s and names the row', (_what, text, where) => {
    const trace = parseTrace(text, NAMES, 'x.csv');
    expect(trace).toMatchObject({ ok: false, error: { where } });
  });
});
