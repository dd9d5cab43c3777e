import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPullDetector, detectorSettings } from '../../src/pull/detector.ts';
import type { FoundPull } from '../../src/pull/pull.ts';
import { clickPull, drawn } from './shapes.ts';

const settings = detectorSettings(25);

function pullsIn(samples: readonly { atUs: number; nm: number }[]): FoundPull[] {
  const detector = createPullDetector(settings);
  return samples.flatMap(({ atUs, nm }) => detector.push(atUs, nm) ?? []);
}

const rest = { atMs: 0, nm: 0 };

describe('finding a pull', () => {
  it('keeps the click and the peak apart when the hand follows through', () => {
    const [pull, ...more] = pullsIn(drawn([rest, ...clickPull(1000, 600, 27, 22, 27.8)]));
    expect(more).toEqual([]);
    expect(pull?.releaseNm).toBeCloseTo(27, 6);
    expect(pull?.releaseUs).toBe(1_600_000);
    expect(pull?.peakNm).toBeCloseTo(27.8, 6);
    expect(pull?.peakUs).toBe(1_720_000);
    expect(pull?.cut).toBeNull();
  });

  it('takes the click as the peak when the hand lets go', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, 27, 20, 20)]));
    expect(pull?.releaseNm).toBeCloseTo(27, 6);
    expect(pull?.peakNm).toBeCloseTo(27, 6);
  });

  it('sees no click in a pull that is let off slowly', () => {
    const [pull] = pullsIn(
      drawn([
        rest,
        { atMs: 1000, nm: 0 },
        { atMs: 1600, nm: 18 },
        { atMs: 2600, nm: 0 },
        { atMs: 3000, nm: 0 },
      ]),
    );
    expect(pull?.releaseNm).toBeNull();
    expect(pull?.peakNm).toBeCloseTo(18, 6);
  });

  it('reads the rise from 20 % to 80 % of the peak', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, 27, 20, 20)], 1));
    expect(pull?.riseMs).toBeGreaterThan(345);
    expect(pull?.riseMs).toBeLessThan(375);
  });

  it('is not split by noise about its thresholds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.4, max: 0.4, noNaN: true }), { minLength: 300, maxLength: 300 }),
        (noise) => {
          const samples = drawn([rest, ...clickPull(1000, 600, 27, 22, 27.8)]);
          const noisy = samples.map(({ atUs, nm }, i) => ({ atUs, nm: nm + (noise[i] ?? 0) }));
          expect(pullsIn(noisy)).toHaveLength(1);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('takes the zero of a wrench at rest off', () => {
    const samples = drawn([rest, ...clickPull(1000, 600, 27, 22, 27.8)]);
    const [pull] = pullsIn(samples.map(({ atUs, nm }) => ({ atUs, nm: nm + 0.3 })));
    expect(pull?.zeroNm).toBeCloseTo(0.3, 2);
    expect(pull?.peakNm).toBeCloseTo(27.8, 2);
  });

  it('gives loosening a negative peak', () => {
    const [pull] = pullsIn(drawn([rest, ...clickPull(1000, 600, -27, -20, -20)]));
    expect(pull?.peakNm).toBeCloseTo(-27, 6);
  });

  it('keeps two pulls apart that return to rest between them', () => {
    const first = clickPull(1000, 600, 27, 22, 27.8);
    const second = clickPull(3000, 80, 27, 22, 27.5);
    const pulls = pullsIn(drawn([rest, ...first, ...second]));
    expect(pulls.map(({ peakUs }) => peakUs)).toEqual([1_720_000, 3_200_000]);
    expect(pulls[1]?.riseMs).toBeLessThan(60);
  });

  it('marks a pull whose readings break off', () => {
    const samples = drawn([rest, ...clickPull(1000, 600, 27, 22, 27.8)]);
    const holed = [...samples.filter(({ atUs }) => atUs < 1_500_000), { atUs: 9_000_000, nm: 0 }];
    expect(pullsIn(holed).map(({ cut }) => cut)).toEqual(['link-lost']);
  });

  it('gives the pull under way when it is told that no more samples come', () => {
    const detector = createPullDetector(settings);
    for (const { atUs, nm } of drawn([rest, { atMs: 1000, nm: 0 }, { atMs: 1500, nm: 20 }]))
      detector.push(atUs, nm);
    expect(detector.live().pulling).toBe(true);
    const pull = detector.cut('stopped');
    expect(pull?.cut).toBe('stopped');
    expect(pull?.peakNm).toBeCloseTo(20, 6);
    expect(detector.cut('stopped')).toBeNull();
  });

  it('does not depend on when the station clock started', () => {
    const samples = drawn([rest, ...clickPull(1000, 600, 27, 22, 27.8)]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 46 }), (shift) => {
        const moved = pullsIn(samples.map(({ atUs, nm }) => ({ atUs: atUs + shift, nm })));
        const still = pullsIn(samples);
        expect(moved).toEqual(
          still.map((pull) => ({
            ...pull,
            startUs: pull.startUs + shift,
            endUs: pull.endUs + shift,
            peakUs: pull.peakUs + shift,
            releaseUs: pull.releaseUs === null ? null : pull.releaseUs + shift,
          })),
        );
      }),
    );
  });
});
