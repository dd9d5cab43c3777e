import { describe, expect, it } from 'vitest';
import { gathered } from '../../src/ui/open-list.ts';

describe('what is open', () => {
  it('is said once for all the cylinders that it is true of, in the order in which it came', () => {
    expect(
      gathered([
        { kind: 'gap-not-measured', cylinder: 1 },
        { kind: 'no-torque', cylinder: 1 },
        { kind: 'gap-not-measured', cylinder: 3 },
        { kind: 'no-torque', cylinder: 4 },
        { kind: 'windows-not-confirmed' },
        { kind: 'question-not-answered', pull: 7 },
        { kind: 'plug-to-be-replaced', cylinder: 4, because: 'not-sound' },
      ]),
    ).toEqual([
      'cylinders 1, 3: gap not measured',
      'cylinders 1, 4: no torque yet',
      'windows not confirmed',
      'pull 7: question not answered',
      'cylinder 4: plug to be replaced: it does not look sound',
    ]);
    expect(gathered([])).toEqual([]);
  });
});
