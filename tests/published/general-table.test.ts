import { describe, expect, it } from 'vitest';
import { tableView } from '../../src/plug/plausibility.ts';
import type { Fit } from '../../src/plug/specification.ts';
import { newtonMetres } from '../../src/quantity/torque.ts';
import { agrees } from './published.ts';

/** The same chart as converted to N·m by hand, from its pages; a second path to each figure. */
const CHART = 'NGK, installation chart, US edition';
const CONVERTED: readonly (readonly [Fit, lower: number, upper: number])[] = [
  [{ thread: 'M8x1', seat: 'gasket', head: 'aluminium' }, 7.9, 9.8],
  [{ thread: 'M10x1', seat: 'gasket', head: 'cast-iron' }, 9.8, 14.6],
  [{ thread: 'M10x1', seat: 'gasket', head: 'aluminium' }, 9.8, 11.8],
  [{ thread: 'M12x1.25', seat: 'gasket', head: 'cast-iron' }, 14.6, 24.4],
  [{ thread: 'M12x1.25', seat: 'gasket', head: 'aluminium' }, 14.6, 19.7],
  [{ thread: 'M14x1.25', seat: 'gasket', head: 'cast-iron' }, 24.4, 34.3],
  [{ thread: 'M14x1.25', seat: 'gasket', head: 'aluminium' }, 24.4, 29.3],
  [{ thread: 'M18x1.5', seat: 'gasket', head: 'aluminium' }, 34.3, 44.1],
  [{ thread: 'M14x1.25', seat: 'conical', head: 'cast-iron' }, 14.6, 24.4],
  [{ thread: 'M14x1.25', seat: 'conical', head: 'aluminium' }, 9.8, 19.7],
  [{ thread: 'M18x1.5', seat: 'conical', head: 'cast-iron' }, 19.7, 29.3],
];

describe('the general table in N·m', () => {
  for (const [fit, lower, upper] of CONVERTED) {
    const row = tableView(fit)?.rows.find(({ cited }) => cited === CHART);
    const what = `${fit.thread}, ${fit.seat}, ${fit.head}`;
    for (const [end, value] of [
      ['lower', lower],
      ['upper', upper],
    ] as const)
      agrees(
        { what: `${what}: ${end}, N·m`, value, within: 0.05, source: CHART, confirmed: 'second-hand' },
        () => (row === undefined ? Number.NaN : newtonMetres(row[end], row.unit)),
      );
  }
});

describe('where publishers disagree', () => {
  it('M14 gasket on cast iron: a university lies wholly above the makers', () => {
    const view = tableView({ thread: 'M14x1.25', seat: 'gasket', head: 'cast-iron' });
    expect(view?.common).toBeNull();
    expect(view?.lowestNm).toBe(20);
    expect(view?.highestNm).toBe(40);
  });

  it('M18 gasket on aluminium: no torque suits all', () => {
    expect(tableView({ thread: 'M18x1.5', seat: 'gasket', head: 'aluminium' })?.common).toBeNull();
  });

  it('M14 conical on aluminium: 22 N·m passes one table and no other', () => {
    const view = tableView({ thread: 'M14x1.25', seat: 'conical', head: 'aluminium' });
    const passes = view?.rows.filter(
      ({ lower, upper, unit }) => newtonMetres(lower, unit) <= 22 && newtonMetres(upper, unit) >= 22,
    );
    expect(passes?.map(({ threads }) => threads)).toEqual(['lightly oiled']);
  });

  it('M10 and M12 conical stand in no general table', () => {
    for (const thread of ['M10x1', 'M12x1.25'] as const)
      expect(tableView({ thread, seat: 'conical', head: 'aluminium' })).toBeNull();
  });
});
