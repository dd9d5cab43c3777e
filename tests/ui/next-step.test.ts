import { describe, expect, it } from 'vitest';
import { nextSentence, nextTask } from '../../src/ui/next-step.ts';
import {
  attemptOf,
  cylinderIn,
  gapAttemptOf,
  jobWith,
  judged,
  linked,
  lost,
  questionOn,
  seeking,
  withCylinder,
} from './fixtures.ts';
import { VIEWS } from './views.ts';

const measured = withCylinder(jobWith(2), cylinderIn(5, 'done', 'todo'));

describe('the next step', () => {
  it('measures a plug before it is fitted', () => {
    expect(nextSentence(jobWith(1))).toBe('Measure the gap of the plug for cylinder 3.');
    expect(nextSentence(measured)).toBe(
      'Cylinder 5: fit the plug by hand, then pull until the wrench clicks.',
    );
  });

  it('follows the cylinder that a person chose', () => {
    expect(nextSentence({ ...measured, torqueTarget: 7 })).toBe(
      'Measure the gap of the plug for cylinder 7.',
    );
    expect(nextTask({ ...measured, gapTarget: 8, torqueTarget: 8 })).toEqual({ kind: 'gap', cylinder: 8 });
  });

  it.each([
    ['NotOK', 'low', 0.66, 'Gap too small for cylinder 1: set it and measure again.'],
    ['NotOK', 'high', 0.84, 'Gap too large for cylinder 1: set it and measure again.'],
    ['NotDecidable', 'high', 0.795, 'Gap not proven for cylinder 1: set it and measure again.'],
    ['OK', 'inside', 0.75, 'Measure the gap of the new plug for cylinder 1.'],
  ] as const)('after a gap that was %s, %s', (result, side, value, sentence) => {
    const gaps = [gapAttemptOf(1, judged(result, side, value, 'mm'))];
    expect(nextSentence(withCylinder(jobWith(0), { ...cylinderIn(1, 'again', 'todo'), gaps }))).toBe(
      sentence,
    );
  });

  it('says how to go on after a pull that proved nothing', () => {
    const again = withCylinder(jobWith(0), cylinderIn(1, 'done', 'again'));
    expect(nextSentence(again)).toBe('Cylinder 1 is not proven: pull once more until the wrench clicks.');
    expect(nextSentence({ ...again, refitting: 1 })).toBe(
      'Cylinder 1: fit the plug by hand, then pull until the wrench clicks.',
    );
    const over = attemptOf(1, judged('NotOK', 'high', 33, 'N.m'), { answer: 'replace' });
    const replaced = withCylinder(jobWith(0), { ...cylinderIn(1, 'done', 'again'), pulls: [over] });
    expect(nextSentence({ ...replaced, refitting: 1 })).toContain('fit the new plug by hand');
  });

  it('puts a question first, with its keys', () => {
    const asked = withCylinder(measured, {
      ...cylinderIn(1, 'done', 'ask'),
      pulls: [attemptOf(5, null, { because: 'end-missing' })],
    });
    const question = questionOn(1, 'unsure', ['fresh', 'rehit', 'handling']);
    expect(nextSentence({ ...asked, questions: [question] })).toBe(
      'Cylinder 1: What was this pull? (its end is missing.)',
    );
  });

  it('asks for a tool that is missing only when that tool is needed', () => {
    const tools = { ...measured.tools, wrench: lost('wrench', 'out-of-reach') };
    const flat = {
      ...lost('wrench', 'no-answer'),
      description: { ...linked('wrench').description, batteryPercent: 4 },
    };
    expect(nextSentence({ ...measured, tools: { wrench: flat as ReturnType<typeof lost> } })).toContain(
      'Its battery was at 4 %',
    );
    expect(nextSentence({ ...measured, tools })).toMatch(/^The wrench is lost/);
    expect(nextSentence({ ...jobWith(1), tools })).toBe('Measure the gap of the plug for cylinder 3.');
    expect(nextSentence({ ...jobWith(1), tools: { gauge: seeking('gauge') } })).toBe(
      'Switch on the gauge. Waiting for it.',
    );
  });

  it('ends with signing, and then with leaving', () => {
    expect(nextSentence(jobWith(8))).toBe('All cylinders proven. Press s to sign and finish.');
    expect(nextSentence(jobWith(8, { closed: { complete: true, open: [] } }))).toContain(
      'closed and complete',
    );
    expect(
      nextSentence(jobWith(6, { closed: { complete: false, open: [{ kind: 'no-torque', cylinder: 6 }] } })),
    ).toContain('not complete');
  });

  it('is one sentence or two in every state of the screen, never empty', () => {
    for (const view of Object.values(VIEWS)) expect(nextSentence(view.job)).toMatch(/^[A-Z].{15,}/);
  });
});
