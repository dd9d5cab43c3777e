/** A tool whose rate changes in a job: each pull is worth what its own readings are, and nothing is filled in. */
import { describe, expect, it } from 'vitest';
import type { JobEventOf } from '../../src/job/event.ts';
import { replay } from '../../src/job/replay.ts';
import { type Corner, clickPull, drawn } from '../pull/shapes.ts';
import { WRENCH, workshop } from './workshop.ts';

/** A job at which the wrench reads every so many milliseconds, as said for each pull or within it. */
function shop() {
  const job = workshop();
  let n = job.next('wrench');
  let nowMs = 10_000;
  const readings = (corners: readonly Corner[], stepMs: (atMs: number) => number) => {
    const fine = drawn(corners, 1);
    for (let atMs = 0; atMs < fine.length; atMs += stepMs(atMs)) {
      const nm = fine[atMs]?.nm ?? 0;
      const atUs = 1000 * (nowMs + atMs);
      job.give({
        kind: 'reading',
        tool: 'wrench',
        reading: { kind: 'value', n, atUs, counts: Math.round(100 * nm) },
      });
      n += 1;
    }
    nowMs += fine.length;
  };
  return {
    ...job,
    pull: (nm: number, stepMs: (atMs: number) => number) =>
      readings(
        [
          { atMs: 0, nm: 0 },
          { atMs: 4000, nm: 0 },
          { atMs: 4360, nm: 0.2 * nm },
          { atMs: 4660, nm: 0.5 * nm },
          { atMs: 4870, nm: 0.8 * nm },
          ...clickPull(4870, 130, nm, 0.8 * nm, 0.8 * nm).slice(1),
          { atMs: 7500, nm: 0 },
        ],
        stepMs,
      ),
    link: (change: Partial<typeof WRENCH>) =>
      job.give({
        kind: 'link',
        tool: 'wrench',
        driver: 'test',
        source: 'linked',
        link: { state: 'linked', description: { ...WRENCH, ...change } },
      }),
    pulls: () =>
      job.events.filter((event): event is JobEventOf<'pull-detected'> => event.type === 'pull-detected'),
    verdicts: () =>
      job.events.flatMap((event) => (event.type === 'pull-placed' ? [event.judgement?.result ?? null] : [])),
  };
}

describe('a tool that reads at another rate from one pull to the next', () => {
  it('has each pull measured at its own rate, and judged by what that leaves open', () => {
    const job = shop();
    for (const stepMs of [10, 2, 20, 10]) job.pull(27.4, () => stepMs);
    const pulls = job.pulls();
    expect(pulls.map(({ intervalUs }) => intervalUs)).toEqual([10_000, 2_000, 20_000, 10_000]);
    for (const { peakNm, peakStandardNm } of pulls)
      expect(Math.abs(peakNm - 27.4)).toBeLessThan(Math.max(0.05, 4 * peakStandardNm));
    expect(pulls.every(({ release }) => release === 'seen')).toBe(true);
    expect(replay(job.events).ok).toBe(true);
  });

  it('claims no click where its readings lie too far apart, and none is made up from the pulls before', () => {
    const job = shop();
    job.pull(27.4, () => 10);
    job.pull(27.4, () => 60);
    const [fast, slow] = job.pulls();
    expect(fast?.release).toBe('seen');
    expect(slow).toMatchObject({ release: 'not-visible', intervalUs: 60_000 });
    expect(slow?.peakStandardNm).toBeGreaterThan(5 * (fast?.peakStandardNm ?? 1));
    expect(replay(job.events).ok).toBe(true);
  });
});

describe('a tool that changes its rate within a pull', () => {
  const change = (from: number, to: number, atMs: number) => (now: number) => (now < atMs ? from : to);

  it.each([
    ['slower before the click', 5, 20],
    ['faster before the click', 20, 5],
  ])('%s: the truth stays within what the pull leaves open', (_what, from, to) => {
    const job = shop();
    job.pull(27.4, change(from, to, 4700));
    const [pull] = job.pulls();
    expect(job.pulls()).toHaveLength(1);
    expect(pull?.longestGapUs).toBe(20_000);
    expect(Math.abs((pull?.peakNm ?? 0) - 27.4)).toBeLessThan(4 * (pull?.peakStandardNm ?? 0) + 0.05);
    expect(replay(job.events).ok).toBe(true);
  });

  it('falling to three readings a second it proves nothing', () => {
    const job = shop();
    job.pull(27.4, change(10, 330, 4500));
    expect(job.verdicts()).not.toContain('OK');
    expect(replay(job.events).ok).toBe(true);
  });
});

describe('a tool that says another rate when it is linked again', () => {
  it('is read as it says from then on; pulls before and after are both judged again alike', () => {
    const job = shop();
    job.link({ updateIntervalMs: 10 });
    job.pull(27.4, () => 10);
    job.link({ updateIntervalMs: 2, exponent: -2 });
    job.pull(27.4, () => 2);
    expect(job.pulls().map(({ intervalUs }) => intervalUs)).toEqual([10_000, 2_000]);
    const linked = job.events.filter(({ type }) => type === 'tool-linked');
    expect(linked.length).toBeGreaterThan(2);
    expect(replay(job.events).ok).toBe(true);
  });
});
