import { describe, expect, it } from 'vitest';
import { periodsOf } from '../../../src/audit/calibrations.ts';
import { certificateLines } from '../../../src/audit/certificate-line.ts';
import { certificatesChart } from '../../../src/report/charts/certificates-chart.ts';
import { chartSvg } from '../../../src/report/charts/chart.ts';
import { certificate } from '../../audit/shop.ts';
import { accepted } from '../../statistics/outcome.ts';
import { elements } from './xml.ts';

const SIZE = { width: 600, height: 300 };
const found = (number = 'CAL-2') =>
  accepted(
    certificateLines(
      periodsOf({
        issued: [certificate('CAL-1', '2024-01-12'), certificate(number, '2025-01-12')],
        asFound: [certificate(number, '2025-01-12', { error: 0.4 })],
      }),
      { permissible: { kind: 'relative', percent: 4 }, due: '2026-01-12', used: 27 },
    ),
  );

describe('the certificates of a tool as a picture', () => {
  const svg = elements(chartSvg(certificatesChart(found(), { title: 'EXAMPLE-W-1', unit: 'N.m' }), SIZE));

  it('has a circle for each certificate, a square for what was found, and a line for each period', () => {
    expect(svg.count('circle')).toBe(2);
    // The ground and the square.
    expect(svg.count('rect')).toBe(2);
    // Axes, two limits, two edges, two lines, three bars of U.
    expect(svg.count('polyline')).toBe(10);
    expect(svg.texts('text')).toContain('Certificates at 30.00 N·m: EXAMPLE-W-1');
  });

  it('says in words what it shows', () => {
    const [words] = svg.texts('desc');
    expect(words).toContain('2025-01-12 CAL-2 (as found) 0.40, U 0.20; 2025-01-12 CAL-2 (as left) 0.00');
    expect(words).toContain('On 2026-01-12 the line is at 0.40');
    expect(words).toContain('permitted: ± 1.20');
  });

  it('stays within its frame, whatever was found', () => {
    for (const error of [1e5, -1e5]) {
      const far = { ...found(), inUse: { ...found().inUse, permissible: Math.abs(error) * 1e-9 } };
      for (const [x, y] of elements(
        chartSvg(certificatesChart(far, { title: '', unit: 'N.m' }), SIZE),
      ).points()) {
        expect(x >= 0 && x <= SIZE.width).toBe(true);
        expect(y >= 0 && y <= SIZE.height).toBe(true);
      }
    }
  });

  it('is well-formed with any number on a certificate', () => {
    const hostile = chartSvg(certificatesChart(found('<b>&"\u001b[2J'), { title: '<i>', unit: 'N.m' }), SIZE);
    expect(elements(hostile).texts('desc')[0]).toContain('<b>&"');
    expect(hostile).not.toContain('\u001b');
  });
});
