import { describe, expect, it } from 'vitest';
import type { Note } from '../../../src/plug/note.ts';
import { inUnits } from '../../../src/quantity/shown.ts';
import { noteLines } from '../../../src/report/words/index.ts';
import { exampleOrder } from '../../job/workshop.ts';

const order = exampleOrder(4);
const { specification } = order;

describe('the notes of an order in words', () => {
  it('give the figures of their codes', () => {
    const notes: readonly Note[] = [
      { code: 'outside-general-tables', lowestNm: 20, highestNm: 30.04, seat: 'gasket', head: 'aluminium' },
      { code: 'reduction-by-friction', frictionDry: 0.15, frictionLubricated: 0.1, percent: 31 },
    ];
    expect(noteLines(order, notes)).toEqual([
      'General tables say 20 to 30 N·m (gasket seat, aluminium head). No table holds the whole of this range; a better source goes before them.',
      'For the same clamp force, friction falling from 0.15 to 0.10 would ask for 31 % less (Motosh; seat ring assumed).',
    ]);
  });

  it('name who answers for the figures, which no signed note does', () => {
    const reduction = { percent: 30, lubricant: 'anti-seize', setBy: 'A. Foreman' } as const;
    const named = { ...order, specification: { ...specification, reduction, checkedBy: 'B. Foreman' } };
    expect(noteLines(named, [])).toEqual([
      'The figure was checked by B. Foreman.',
      'The rule for anti-seize threads was set by A. Foreman.',
    ]);
  });

  it('give torques in the unit that the shop reads', () => {
    const notes: readonly Note[] = [
      { code: 'outside-general-tables', lowestNm: 20, highestNm: 30.04, seat: 'gasket', head: 'aluminium' },
    ];
    const [line] = inUnits({ torque: '[ft_i].[lbf_av]', length: 'mm' }, () => noteLines(order, notes));
    expect(line).toMatch(/^General tables say 14\.8 to 22\.2 lbf·ft /);
  });
});
