import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../src/metrology/budget.ts';
import { turnTerms } from '../../src/metrology/turn-terms.ts';

const sure = { standardDeg: 0, toolDeg: 0, turnedDeg: 180, contactDeg: 0, windUpDeg: 0 };
const standard = (change: Partial<typeof sure> | { readonly toolDeg: number | null }) =>
  budgetOf(turnTerms({ ...sure, standardDeg: 1e-9, ...change })).standard;

describe('the budget of a turn', () => {
  it('takes what the pull leaves open as it stands, and all else as a half-width', () => {
    expect(standard({ standardDeg: 0.5 })).toBeCloseTo(0.5, 6);
    expect(standard({ toolDeg: 2 })).toBeCloseTo(2 / Math.sqrt(3), 6);
    expect(standard({ contactDeg: 6 })).toBeCloseTo(6 / Math.sqrt(3), 6);
    expect(standard({ windUpDeg: 20 })).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  it('assumes 2 % of the turn, and 1° at least, of a tool that says nothing', () => {
    expect(standard({ toolDeg: null })).toBeCloseTo(3.6 / Math.sqrt(3), 6);
    expect(standard({ toolDeg: null, turnedDeg: 22.5 })).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  it('adds squares', () => {
    expect(standard({ standardDeg: 3, contactDeg: 4 * Math.sqrt(3) })).toBeCloseTo(5, 6);
  });
});
