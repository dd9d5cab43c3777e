/** A figure that is typed without a unit has that of its tool, whatever unit the screen is in; and the screen says so. */
import { expect, it } from 'vitest';
import { parseTyped, TYPED_EXPONENT } from '../../drivers/typed/figure.ts';
import { inUnits } from '../../src/quantity/shown.ts';
import { keysLine } from '../../src/ui/foot.ts';
import { newInputState } from '../../src/ui/input-state.ts';
import { asTaken } from '../../src/ui/typed-figure.ts';
import { jobWith } from './fixtures.ts';

const IMPERIAL = { torque: '[ft_i].[lbf_av]', length: '[in_i]' } as const;
const job = jobWith(2);

it('of a wrench that shows lbf·ft is taken in lbf·ft', () => {
  const taken = parseTyped('20', 'torque', 'lbf·ft');
  expect(taken.ok && taken.value * 10 ** TYPED_EXPONENT.torque).toBeCloseTo(27.1164, 4);
});

it('is shown with the unit that it will have', () => {
  expect(asTaken('20', job, { torque: 'lbf·ft' })).toBe('20 lbf·ft');
  expect(asTaken('.030 in', job, { length: 'mm' })).toBe('.030 in');
  // Where both are typed, what is due decides: here a gap.
  expect(asTaken('0.75', job, { torque: 'N·m', length: 'mm' })).toBe('0.75 mm');
});

it('keeps that unit on a screen in other units', () => {
  const input = newInputState({ types: true, typedUnits: { torque: 'N·m' } });
  inUnits(IMPERIAL, () =>
    expect(keysLine(job, { ...input, figure: '20' }, 80)[0]?.text).toContain('typed so far: 20 N·m  [Enter]'),
  );
});
