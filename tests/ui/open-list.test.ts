import { describe, expect, it } from 'vitest';
import { gathered } from '../../src/ui/open-list.ts';

describe('what is open', () => {
  it('is said once for all the cylinders that it is true of, in the order in which it came', () => {
    expect(
      gathered([
        'cylinder 1: gap not measured',
        'cylinder 1: no torque yet',
        'cylinder 3: gap not measured',
        'cylinder 4: no torque yet',
        'windows not confirmed',
        'pull 7: question not answered',
        'cylinder 4: plug to be replaced: it was dropped',
      ]),
    ).toEqual([
      'cylinders 1, 3: gap not measured',
      'cylinders 1, 4: no torque yet',
      'windows not confirmed',
      'pull 7: question not answered',
      'cylinder 4: plug to be replaced: it was dropped',
    ]);
    expect(gathered([])).toEqual([]);
  });
});
