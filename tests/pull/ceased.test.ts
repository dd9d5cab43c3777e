import { describe, expect, it } from 'vitest';
import { createPullDetector } from '../../src/pull/detector.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { drawn, turningPull } from './shapes.ts';

const SAMPLES = [...drawn([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, 27, 22, 22)])];

/** A second and more behind all that is sent here. */
const SILENT_US = 10_000_000;

/** The pull up to the first reading that lies below `nm` behind the peak, and what else is pushed. */
function upTo(nm: number) {
  const detector = createPullDetector(detectorSettings(25));
  const peak = SAMPLES.reduce((best, { nm: x }, i) => (x > (SAMPLES[best]?.nm ?? 0) ? i : best), 0);
  const end = SAMPLES.findIndex((sample, i) => i > peak && sample.nm < nm);
  const pushed = SAMPLES.slice(0, end + 1);
  for (const { atUs, nm: x } of pushed) expect(detector.push(atUs, x)).toBeNull();
  return { detector, last: pushed.at(-1) };
}

describe('a tool that sends nothing more', () => {
  it('has ended its pull, when the torque that came last was low', () => {
    const { detector, last } = upTo(0.5);
    const pull = detector.silent(SILENT_US);
    expect(pull).toMatchObject({ cut: null, release: 'seen', endUs: last?.atUs });
    expect(pull?.peakNm).toBeCloseTo(27, 0);
    expect(detector.live().pulling).toBe(false);
    expect(detector.silent(SILENT_US)).toBeNull();
  });

  it('may be in the middle of a pull, when it was not', () => {
    const { detector } = upTo(15);
    expect(detector.silent(SILENT_US)).toBeNull();
    expect(detector.live().pulling).toBe(true);
  });

  it('had no pull at rest', () => {
    const detector = createPullDetector(detectorSettings(25));
    for (let i = 0; i < 50; i++) detector.push(i * 10_000, 0);
    expect(detector.silent(SILENT_US)).toBeNull();
  });

  it('sees the next pull as a new one', () => {
    const { detector, last } = upTo(0.5);
    detector.silent(SILENT_US);
    const laterUs = (last?.atUs ?? 0) + 5_000_000;
    const pulls = SAMPLES.flatMap(({ atUs, nm }) => detector.push(laterUs + atUs, nm) ?? []);
    expect([...pulls, ...[detector.silent(laterUs + SILENT_US)].filter((one) => one !== null)]).toMatchObject(
      [{ cut: null, release: 'seen' }],
    );
  });

  it('gives the maximum that stands, where it sends nothing else', () => {
    const detector = createPullDetector(detectorSettings(25, { stream: 'maxima' }));
    expect(detector.push(0, 27.1)).toBeNull();
    expect(detector.silent(SILENT_US)).toMatchObject({ peakNm: 27.1, cut: null });
    expect(detector.silent(SILENT_US)).toBeNull();
  });
});
