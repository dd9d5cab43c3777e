import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typedEngine, typedNumbers, withTwoPlugs } from '../../src/job/engine-layout.ts';
import { workOrderSchema } from '../../src/job/order.ts';
import { exampleOrder } from './workshop.ts';

const numberings = (text: string) => {
  const typed = typedEngine(text);
  if (!typed.ok) throw new Error(typed.error);
  return typed.value.numberings;
};

describe('an engine typed in a few words', () => {
  it.each(['in-line 4', 'inline 4', 'I4', ' straight 4 '])('%j is a bank from front to rear', (text) => {
    expect(typedEngine(text)).toEqual({
      ok: true,
      value: { name: 'in-line 4', numberings: [[[1, 2, 3, 4]]] },
    });
  });

  it('of two banks has every numbering that makers use, and none of them first', () => {
    expect(numberings('V8')).toEqual([
      [
        [1, 3, 5, 7],
        [2, 4, 6, 8],
      ],
      [
        [2, 4, 6, 8],
        [1, 3, 5, 7],
      ],
      [
        [1, 2, 3, 4],
        [5, 6, 7, 8],
      ],
      [
        [5, 6, 7, 8],
        [1, 2, 3, 4],
      ],
    ]);
    expect(numberings('flat 6')).toContainEqual([
      [1, 2, 3],
      [4, 5, 6],
    ]);
    expect(numberings('V5')[0]).toEqual([
      [1, 3, 5],
      [2, 4],
    ]);
    expect(numberings('V2')).toHaveLength(2);
  });

  it('may be typed bank by bank, and is then taken as it stands', () => {
    expect(typedEngine('4 3 / 2,1')).toEqual({
      ok: true,
      value: {
        name: null,
        numberings: [
          [
            [4, 3],
            [2, 1],
          ],
        ],
      },
    });
  });

  it.each(['', 'V', 'W16', 'V8 V8', 'rotary 2', 'in-line 25', 'V1', '1 / x'])('%j is refused', (text) => {
    expect(typedEngine(text).ok).toBe(false);
  });

  it('always numbers every cylinder once, so that an order takes it', () => {
    fc.assert(
      fc.property(fc.constantFrom('in-line', 'V', 'flat'), fc.integer({ min: 2, max: 24 }), (form, count) => {
        for (const banks of numberings(`${form} ${count}`)) {
          const serviceOrder = banks.flat();
          const engine = { banks, serviceOrder, headMaterial: 'aluminium' };
          expect(workOrderSchema.safeParse({ ...exampleOrder(4), engine }).success).toBe(true);
          expect([...serviceOrder].sort((a, b) => a - b)).toEqual(
            Array.from({ length: count }, (_, i) => i + 1),
          );
        }
      }),
    );
  });

  it('with two plugs a cylinder gives each plug a number of its own, which an order takes too', () => {
    const plugged = withTwoPlugs([
      [1, 3],
      [2, 4],
    ]);
    expect(plugged.banks).toEqual([
      [1, 3],
      [5, 7],
      [2, 4],
      [6, 8],
    ]);
    expect(plugged.plugs).toContainEqual({ cylinder: 3, plugs: [3, 7] });
    const engine = { ...plugged, serviceOrder: plugged.banks.flat(), headMaterial: 'aluminium' };
    expect(workOrderSchema.safeParse({ ...exampleOrder(4), engine }).success).toBe(true);
  });
});

describe('cylinder numbers in a row', () => {
  it('may be set apart by spaces, commas or hyphens', () => {
    for (const text of ['1 3 4 2', '1-3-4-2', '1, 3, 4, 2'])
      expect(typedNumbers(text)).toEqual({ ok: true, value: [1, 3, 4, 2] });
    expect(typedNumbers('1 3 four').ok).toBe(false);
    expect(typedNumbers(' ').ok).toBe(false);
  });
});
