import { expect, it } from 'vitest';
import { itemsOf, listPhaseSchema, USUAL_ROUTINE } from '../../../src/job/routine.ts';
import { reasonText } from '../../../src/report/words/index.ts';

const items = listPhaseSchema.options.flatMap((phase) => itemsOf(USUAL_ROUTINE, phase));

it.each(items.map((item) => [item.id, item] as const))(
  '%s of the usual routine says why, in one line',
  (_, item) => {
    expect(reasonText(item)).toMatch(/^Why: .{10,110} \(.+\)$/);
  },
);

it('a reason of the shop goes first, and an item of its own has none but that', () => {
  expect(reasonText({ id: 'boots', text: 'Boots', reason: 'They cost 80 each.' })).toBe(
    'Why: They cost 80 each.',
  );
  expect(reasonText({ id: 'toString', text: 'x' })).toBeNull();
});
