import { describe, expect, it } from 'vitest';
import { histogramChart } from '../../src/report/charts/histogram-chart.ts';
import type { Paper } from '../../src/report/paper.ts';
import { paperLines } from '../../src/report/paper-text.ts';
import { columnsOf } from '../../src/ui/printable.ts';

const PAPER: Paper = {
  title: 'Impact assessment',
  subtitle: 'IA-1: wrench, serial EXAMPLE-W-1',
  status: { word: 'PROOFS DO NOT HOLD', text: 'Of 8 proofs 7 still in, 0 doubtful, 1 out.' },
  marks: [],
  facts: [
    { label: 'Tool', value: 'wrench' },
    { label: 'Last good check', value: `CAL-1 ${'of the laboratory '.repeat(8)}` },
  ],
  parts: [
    { kind: 'text', title: 'For auditors', paragraphs: ['Clauses of a standard.'], paperOnly: true },
    { kind: 'text', title: 'What was judged', paragraphs: [`All attempts ${'and more '.repeat(20)}`] },
    {
      kind: 'table',
      title: 'Vehicles',
      note: 'What is decided.',
      columns: [
        { title: '', share: 1 },
        { title: 'Job', share: 1 },
        { title: 'VIN', share: 1 },
        { title: 'Why', share: 1 },
      ],
      rows: [
        [{ text: '>' }, { text: 'J-1' }, { text: 'ZZ9EXAMP1PM000104' }, { text: `plug ${'x '.repeat(60)}` }],
        [{ text: '' }, { text: 'J-2' }, { text: '' }, { text: 'short' }],
      ],
    },
    {
      kind: 'chart',
      chart: histogramChart([26, 27, 27], { lower: 25, upper: 30 }, { title: 'Peaks', unit: 'N.m' }),
    },
  ],
  footer: 'Impact assessment IA-1',
  program: 'plugmark test',
  madeAt: '2026-10-02T10:00:00.000Z',
};
const lines = (columns: number, paper: Partial<Paper> = {}) =>
  paperLines({ ...PAPER, ...paper }, { columns, ascii: false });

describe('a paper on the terminal', () => {
  it('begins with its conclusion', () => {
    expect(lines(120)[0]).toBe('PROOFS DO NOT HOLD: Impact assessment, IA-1: wrench, serial EXAMPLE-W-1');
    expect(lines(120)[1]).toBe('Of 8 proofs 7 still in, 0 doubtful, 1 out.');
  });

  it('is never wider than the terminal', () => {
    for (const columns of [50, 80, 120])
      for (const line of lines(columns)) expect(columnsOf(line)).toBeLessThanOrEqual(columns);
  });

  it('keeps a row whole: what does not fit beside the others follows below it, after its name', () => {
    const text = lines(80).join('\n');
    expect(text).toMatch(/^ {2}> {2}J-1 {2}ZZ9EXAMP1PM000104\n +Why: plug x x/m);
    expect(text).toMatch(/^ {5}J-2 {2}-\n +Why: short$/m);
  });

  it('draws its charts', () => {
    expect(lines(80).join('\n')).toContain('upper limit 30.00 N·m ───');
  });

  it('leaves out what is for readers of the paper alone', () => {
    expect(lines(80).join('\n')).not.toContain('For auditors');
  });

  it('says that tools were simulated before anything else is shown', () => {
    expect(lines(200, { marks: ['simulated'] })[2]).toMatch(/^SIMULATED: /);
  });

  it('breaks nothing where lines have no end, so that a row is a line', () => {
    const rows = lines(Number.POSITIVE_INFINITY).filter((line) => line.includes('ZZ9EXAMP1PM000104'));
    expect(rows).toHaveLength(1);
    expect(rows[0]).toContain('plug x x');
  });

  it('lets no control character through', () => {
    const hostile = 'a\u001b[2Jb\u202e';
    const text = lines(80, {
      subtitle: hostile,
      status: { word: hostile, text: hostile },
      facts: [{ label: 'Tool', value: hostile }],
    });
    for (const line of text) expect(line).not.toMatch(/[\p{Cc}\u202e]/u);
  });
});
