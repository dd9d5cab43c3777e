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
    expect(['g', 't', 'w'].map((key) => press(key, job))).toEqual(
      ['fits', 'tight', 'wide'].map((outcome) => ({ do: 'gap-wire', cylinder: 1, outcome })),
    );
    expect(nextSentence(job)).toContain('Try both wires');
    expect(press('g', jobWith(0))).toBeNull();
  });

  it('goes to the scrap by one key, with the reason', () => {
    expect(press('d', jobWith(0))).toEqual({ do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    expect(press('e', jobWith(0))).toEqual({ do: 'scrap-plug', cylinder: 1, reason: 'broken-tip' });
    expect(press('d', { ...jobWith(0), closed: { complete: false, open: [] } })).toBeNull();
  });

  it('does not go there by a key that answers questions, which may come a moment too late', () => {
    for (const key of ['f', 'r', 'h', 'b', 'n', 'u', 'y']) expect(press(key, jobWith(0))).toBeNull();
  });

  it('to be replaced says why, and which key comes next', () => {
    const step = { do: 'replace', because: 'tip-not-adjustable' } as const;
    const job = jobWith(0, { plugs: { 1: { gapsBefore: 0, step } } });
    expect(nextSentence(job)).toBe(
      'Replace the plug for cylinder 1: only nickel tips are adjusted unless the specification allows it. Take a new one and press y.',
    );
    expect(press('y', job)).toEqual({ do: 'scrap-plug', cylinder: 1, reason: 'gap' });
  });
});
