import { describe, expect, it } from 'vitest';
import { specifiedBy } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { ceilingNm } from '../../src/plug/bounds.ts';
import { tableView } from '../../src/plug/plausibility.ts';
import { threadSchema } from '../../src/plug/specification.ts';
import { exampleOrder } from '../job/workshop.ts';

type Figures = Partial<WorkOrder['specification']>;
type PlugFigures = Partial<WorkOrder['plug']>;

/** An M14 plug with a gasket in aluminium unless told otherwise. */
function asked(
  specification: Figures,
  plug: PlugFigures = {},
): { code: string; where: string | undefined } | null {
  const order = exampleOrder(4);
  const typed: WorkOrder = {
    ...order,
    plug: { ...order.plug, thread: 'M14x1.25', seat: 'gasket', ...plug },
    specification: { ...order.specification, torque: '25-30 N·m', gap: '0.7-0.8 mm', ...specification },
  };
  const specified = specifiedBy(typed, '2026-11-03');
  return specified.ok ? null : { code: specified.error.code, where: specified.error.where };
}

const question = (where: string) => ({ code: 'figure-implausible', where });
const refused = (where: string) => ({ code: 'figure-impossible', where });

describe('a typed figure', () => {
  it('that is usual opens a job', () => {
    expect(asked({})).toBeNull();
    expect(asked({ torque: '18-21.6 lbf·ft', gap: '0.028-0.031 in' })).toBeNull();
    expect(
      asked({ tightenFirst: '20-25 N·m', angle: '1/2-2/3 turn' }, { hexMm: 16, reachMm: 26.5 }),
    ).toBeNull();
    expect(asked({ torque: '10-12 N·m' }, { thread: 'M10x1', hexMm: 16, reachMm: 19 })).toBeNull();
    expect(asked({ torque: '10-20 N·m', angle: '1/16 turn' }, { seat: 'conical', hexMm: 16 })).toBeNull();
  });

  it.each<[what: string, Figures, PlugFigures, { code: string; where: string }]>([
    ['lbf·ft where N·m is meant', { torque: '25-30 lbf·ft' }, {}, question('specification.torque')],
    ['a torque above 1.25 times the tables', { torque: '34-39 N·m' }, {}, question('specification.torque')],
    ['a torque below them', { torque: '12-15 N·m' }, {}, question('specification.torque')],
    ['a slip of the decimal point', { torque: '2.5-3 N·m' }, {}, refused('specification.torque')],
    ['another', { torque: '225-230 N·m' }, {}, refused('specification.torque')],
    [
      'a first step that strips the thread',
      { tightenFirst: '80-90 N·m' },
      {},
      refused('specification.tightenFirst'),
    ],
    ['a first step that is high', { tightenFirst: '35-45 N·m' }, {}, question('specification.tightenFirst')],
    [
      'a torque where no table has one, beyond what the thread bears',
      { torque: '80-95 N·m' },
      { thread: 'M12x1.25', seat: 'conical' },
      refused('specification.torque'),
    ],
    [
      'a torque where no table has one, near it',
      { torque: '35-40 N·m' },
      { thread: 'M12x1.25', seat: 'conical' },
      question('specification.torque'),
    ],
    ['inches for millimetres', { gap: '0.7-0.8 in' }, {}, refused('specification.gap')],
    ['a gap ten times too wide', { gap: '7-8 mm' }, {}, refused('specification.gap')],
    ['a gap ten times too narrow', { gap: '0.07-0.08 mm' }, {}, refused('specification.gap')],
    ['a wide gap', { gap: '1.8-2 mm' }, {}, question('specification.gap')],
    ['a hexagon of another plug', {}, { thread: 'M10x1', hexMm: 40 }, refused('plug.hexMm')],
    ['a hexagon that is narrower than the thread', {}, { hexMm: 13 }, refused('plug.hexMm')],
    ['an unusual hexagon', {}, { hexMm: 27 }, question('plug.hexMm')],
    ['a reach in another unit', {}, { reachMm: 0.75 }, refused('plug.reachMm')],
    ['an unusual reach', {}, { reachMm: 38 }, question('plug.reachMm')],
    ['a bend of 3 mm', { gapRules: { bendMost: '3 mm' } }, {}, refused('specification.gapRules.bendMost')],
    [
      'a bend of 0.8 mm',
      { gapRules: { bendMost: '0.8 mm' } },
      {},
      question('specification.gapRules.bendMost'),
    ],
    ['five turns', { angle: '5 turns' }, {}, refused('specification.angle')],
    ['one turn and a half', { angle: '1.5 turns' }, {}, question('specification.angle')],
    [
      'a reduction by half',
      { torque: '25-30 N·m', reduction: { percent: 45, lubricant: 'anti-seize', setBy: 'Foreman One' } },
      {},
      question('specification.torque'),
    ],
    [
      'wires that are known to a tenth of a millimetre',
      { gapRules: { check: 'wire', wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.05 mm' } } },
      {},
      question('specification.gapRules.wires.within'),
    ],
    [
      'a wire of a tenth',
      { gapRules: { check: 'wire', wires: { go: '0.072 mm', noGo: '0.78 mm', within: '0.003 mm' } } },
      {},
      refused('specification.gapRules.wires.go'),
    ],
  ])('is asked about or refused: %s', (_, specification, plug, expected) => {
    const checked = { ...specification, checkedBy: 'Foreman One' };
    if (plug.thread === 'M10x1' && specification.torque === undefined) {
      expect(asked({ ...specification, torque: '10-12 N·m' }, plug)).toEqual(expected);
      return;
    }
    expect(asked(specification, plug)).toEqual(expected);
    // A person's name answers a question; it does not make possible what is not.
    expect(asked(checked, plug)).toEqual(expected.code === 'figure-impossible' ? expected : null);
  });
});

describe('the torque at which a solid thread of mild steel yields', () => {
  it('is worked out from stress area, yield point and friction', () => {
    // M14x1.25 by hand: A_s = π/4·(14 - 0.9382·1.25)² = 129.2 mm², F = 240·129.2 = 31.0 kN, T/F = 2.65 mm.
    expect(ceilingNm('M14x1.25')).toBeCloseTo(82, 0);
  });

  it('lies above every published table', () => {
    for (const thread of threadSchema.options)
      for (const seat of ['gasket', 'conical'] as const)
        for (const head of ['aluminium', 'cast-iron'] as const) {
          const table = tableView({ thread, seat, head });
          if (table !== null) expect(table.highestNm).toBeLessThan(ceilingNm(thread));
        }
  });
});
