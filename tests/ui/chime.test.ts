import { describe, expect, it } from 'vitest';
import { chimeFor, strokesOf } from '../../src/ui/chime.ts';
import { jobWith, judged, linked, lost, okTorque, questionOn } from './fixtures.ts';

const before = jobWith(2);
const verdict = (judgement: ReturnType<typeof judged>) => ({
  ...before,
  lastVerdict: { quantity: 'torque' as const, cylinder: 5, judgement },
});

describe('the bell', () => {
  it('says OK once, a question twice and NOT OK three times, apart from each other', () => {
    expect(strokesOf('ok')).toEqual([0]);
    const strokes = strokesOf('notOk');
    expect(strokes).toHaveLength(3);
    for (const [i, ms] of strokes.entries())
      expect(ms - (strokes[i - 1] ?? -200)).toBeGreaterThanOrEqual(200);
  });

  it('tells an OK from every other verdict', () => {
    expect(chimeFor(before, verdict(okTorque()))).toBe('ok');
    expect(chimeFor(before, verdict(judged('NotOK', 'high', 31, 'N.m')))).toBe('notOk');
    expect(chimeFor(before, verdict(judged('NotDecidable', 'high', 29.6, 'N.m')))).toBe('notOk');
  });

  it('calls for a new question and a lost tool, and is silent where nothing is new', () => {
    const asked = { ...before, questions: [questionOn(5, 'unsure', ['fresh'])] };
    expect(chimeFor(before, asked)).toBe('question');
    expect(chimeFor(asked, { ...asked })).toBeNull();
    expect(chimeFor(asked, before)).toBeNull();
    const gone = { ...before, tools: { wrench: lost('wrench', 'out-of-reach'), gauge: linked('gauge') } };
    expect(chimeFor(before, gone)).toBe('notOk');
    const shown = verdict(okTorque());
    expect(chimeFor(shown, { ...shown, pullCount: 9 })).toBeNull();
  });
});
