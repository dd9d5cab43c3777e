import { describe, expect, it, vi } from 'vitest';
import * as routine from '../../../src/job/routine.ts';
import { itemsOf, listPhaseSchema, USUAL_ROUTINE } from '../../../src/job/routine.ts';
import { choiceText, itemText, reasonText } from '../../../src/report/words/index.ts';
import { inLanguage } from '../../../src/words/catalogue.ts';
import { PSEUDO } from '../../words/pseudo.ts';

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

describe('the texts of the usual routine', () => {
  const [first] = USUAL_ROUTINE.beforeRemoval;
  if (first === undefined) throw new Error('no items');
  const chased = USUAL_ROUTINE.fitting.find(({ id }) => id === 'chased');

  it('are shown in the language of the reader', () => {
    expect(inLanguage(PSEUDO, () => itemText(first))).toBe(`⟦${first.text}⟧`);
    expect(inLanguage(PSEUDO, () => choiceText(chased, 'not-needed'))).toBe('⟦not needed⟧');
  });

  it('are the words of the shop where it changed them', () => {
    const own = { ...first, text: 'Cold enough to touch' };
    const ownChoice = { id: 'chased', text: 'x', choices: [{ id: 'not-needed', text: 'no' }] };
    expect(inLanguage(PSEUDO, () => [itemText(own), choiceText(ownChoice, 'not-needed')])).toEqual([
      own.text,
      'no',
    ]);
  });

  it('are signed in English, whoever reads when they are loaded', async () => {
    vi.resetModules();
    const { speak, ENGLISH } = await import('../../../src/words/catalogue.ts');
    speak(PSEUDO);
    const again = await import('../../../src/job/routine.ts').finally(() => speak(ENGLISH));
    expect(again.USUAL_ROUTINE).toEqual(USUAL_ROUTINE);
    expect(again).not.toBe(routine);
  });
});
