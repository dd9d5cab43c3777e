import { describe, expect, it } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import type { Specification } from '../../src/plug/specification.ts';
import { benchCommand } from '../../src/ui/keys.ts';
import { nextSentence } from '../../src/ui/next-step.ts';
import { jobWith } from './fixtures.ts';

const checked = (
  check: NonNullable<Specification['gapRules']>['check'],
  more: Partial<JobState> = {},
): JobState => {
  const job = jobWith(0, more);
  const gapRules = {
    ...(check === undefined ? {} : { check }),
    wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' },
  };
  return { ...job, order: { ...job.order, specification: { ...job.order.specification, gapRules } } };
};
const press = (key: string, job: JobState) => benchCommand({ key }, job, false);

describe('a plug without a tool', () => {
  it('is looked at where it may only be looked at', () => {
    const job = checked('visual-only', { gapWindow: null });
    expect(press('v', job)).toEqual({ do: 'gap-inspected', cylinder: 1, sound: true });
    expect(press('x', job)).toEqual({ do: 'gap-inspected', cylinder: 1, sound: false });
    expect(nextSentence(job)).toContain('Put nothing into it');
    expect(press('v', jobWith(0))).toBeNull();
  });

  it('is tried with wires where it is checked by wires', () => {
    const job = checked('wire');
    expect(['v', 'i', 'z'].map((key) => press(key, job))).toEqual(
      ['fits', 'tight', 'wide'].map((outcome) => ({ do: 'gap-wire', cylinder: 1, outcome })),
    );
    expect(nextSentence(job)).toContain('Try both round wires');
    expect(press('v', jobWith(0))).toBeNull();
  });

  it('does not go to the scrap by any one key', () => {
    for (const key of 'abcdefghijklmnopqrstuvwxyz') expect(press(key, jobWith(0)), key).toBeNull();
  });

  it('to be replaced says why, and which key comes next', () => {
    const step = { do: 'replace', because: 'tip-not-adjustable' } as const;
    const job = jobWith(0, { plugs: { 1: { gapsBefore: 0, step } } });
    expect(nextSentence(job)).toBe(
      'Replace the plug for cylinder 1: only nickel tips are adjusted unless the specification allows it. Take a new one and press d.',
    );
  });
});
