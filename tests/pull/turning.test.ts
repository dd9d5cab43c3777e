import { describe, expect, it } from 'vitest';
import { createPullDetector } from '../../src/pull/detector.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { snugOf } from '../../src/pull/snug.ts';
import { Turning } from '../../src/pull/turning.ts';
import { clickPull } from './shapes.ts';
import { gasket, stands, type TurnedSample, turned } from './turned-samples.ts';

const START_NM = 2;
const settings = detectorSettings(25, { stepNm: 0.01, angle: { stepDeg: 0.1, driftDegPerS: 0.1 } });
const corners = [{ atMs: 0, nm: 0 }, ...clickPull(3000, 700, 27, 21, 22)];

function pullIn(samples: readonly (Omit<TurnedSample, 'deg'> & { readonly deg?: number })[]): DetectedPull {
  const detector = createPullDetector(settings);
  const pulls = samples.flatMap(({ atUs, nm, deg }) => detector.push(atUs, nm, deg) ?? []);
  if (pulls.length !== 1 || pulls[0] === undefined) throw new Error(`${pulls.length} pulls`);
  return pulls[0];
}

describe('the turn of the plug', () => {
  it.each([0.5, 2, 8])('is without the wind-up of the tools: %d N·m a degree', (nmPerDeg) => {
    const { turn } = pullIn(turned(corners, { nmPerDeg, plugDeg: gasket(180) }));
    const truth = 180 - gasket(180)(START_NM);
    expect(Math.abs((turn?.plug?.turnedDeg ?? 0) - truth)).toBeLessThan(2);
    expect(Math.abs((turn?.plug?.windUpDeg ?? 0) - (27 - START_NM) / nmPerDeg)).toBeLessThan(2);
  });

  it.each([0.5, 2, 8])('is none on a tight plug: %d N·m a degree', (nmPerDeg) => {
    const { turn } = pullIn(turned(corners, { nmPerDeg, plugDeg: stands }));
    expect(Math.abs(turn?.plug?.turnedDeg ?? 99)).toBeLessThan(0.3);
  });

  it('does not count the way back of a ratchet between strokes without a rest', () => {
    const stroke = (fromMs: number, nm: number) => [
      { atMs: fromMs, nm: 0 },
      { atMs: fromMs + 400, nm },
      { atMs: fromMs + 500, nm: 0 },
    ];
    const samples = turned(
      [{ atMs: 0, nm: 0 }, ...stroke(3000, 15), ...stroke(3660, 27), { atMs: 5000, nm: 0 }],
      {
        nmPerDeg: 2,
        plugDeg: gasket(60),
      },
    );
    // Swung back by 40 degrees while there is no torque.
    const back = (atUs: number) => 40 * Math.min(1, Math.max(0, (atUs - 3_510_000) / 140_000));
    const detector = createPullDetector(settings);
    const pulls = samples.flatMap(({ atUs, nm, deg }) => detector.push(atUs, nm, deg - back(atUs)) ?? []);
    const total = pulls.reduce((sum, { turn }) => sum + (turn?.plug?.turnedDeg ?? Number.NaN), 0);
    expect(Math.abs(total - (60 - gasket(60)(START_NM)))).toBeLessThan(2.5);
  });

  it('is the same by single readings and in batches', () => {
    const samples = turned(corners, { nmPerDeg: 2, plugDeg: gasket(180) });
    const column = (of: (s: TurnedSample) => number) => Float64Array.from(samples, of);
    const [batch] = createPullDetector(settings).pushBatch(
      column((s) => s.atUs),
      column((s) => s.nm),
      0,
      samples.length,
      column((s) => s.deg),
    );
    expect(batch).toEqual(pullIn(samples));
  });

  it('is not told of a pull whose end was not seen', () => {
    const detector = createPullDetector(settings);
    const half = turned(corners, { nmPerDeg: 2, plugDeg: gasket(180) }).filter(
      ({ atUs }) => atUs < 3_600_000,
    );
    for (const { atUs, nm, deg } of half) detector.push(atUs, nm, deg);
    expect(detector.cut('link-lost')?.turn?.plug).toBeUndefined();
  });
});

describe('strokes of one pull', () => {
  it('are added: the turn of the plug, and how far the tools were wound up in each', () => {
    const turning = new Turning({ nm: 0, deg: 0 }, { nm: 3, deg: 1.5 }, START_NM);
    // Up to 15 N·m with 20° of the plug, let off, swung back by 40°, up to 27 N·m with 30° more; 2 N·m a degree.
    turning.add(20 + 7.5, 15, 10_000);
    turning.add(20, 0, 10_000);
    turning.add(-20, 0, 10_000);
    turning.add(-20 + 7.5, 15, 10_000);
    turning.add(-20 + 30 + 13.5, 27, 10_000);
    turning.add(10, 0, 10_000);
    expect(turning.strokes).toBe(2);
    expect(turning.plugDeg).toBeCloseTo(20 + 30, 6);
    expect(turning.woundUpDeg).toBeCloseTo((15 - START_NM) / 2 + (27 - START_NM) / 2, 6);
    expect(turning.degPerNm).toBeCloseTo(1 / 2, 6);
    expect(turning.firstTopNm).toBe(15);
  });
});

describe('a stroke that comes down', () => {
  it('counts from where it came back to the torque of the start; as let off, from half of that', () => {
    const turning = new Turning({ nm: 0, deg: 0 }, { nm: 4, deg: 2 }, START_NM);
    // The start lies half way between the last reading at rest and the first of the pull.
    expect(turning.fromDeg).toBe(-1);
    turning.add(12, 20, 100_000);
    expect([turning.strokes, turning.plugDeg, turning.woundUpDeg]).toEqual([1, Number.NaN, 0]);
    expect(turning.soFarDeg).toBe(11);
    // 2 N·m a degree: back at the start after 9 degrees, at half of the start nothing is left of the stroke.
    turning.add(2.75, 1.5, 100_000);
    expect(turning.plugDeg).toBeCloseTo(3 - 2 + 1, 6);
    expect(turning.woundUpDeg).toBeCloseTo(9, 6);
    expect(turning.degPerNm).toBeCloseTo(0.5, 6);
    expect(turning.soFarDeg).toBeCloseTo(2, 6);
    turning.add(2.4, 0.8, 100_000);
    expect(turning.woundUpDeg).toBeCloseTo(9, 6);
    expect(turning.soFarDeg).toBeCloseTo(2, 6);
    expect(turning.workJ).toBeCloseTo(
      ((0.5 * (4 + 20) * 10 - 0.5 * (20 + 1.5) * 9.25 - 0.5 * (1.5 + 0.8) * 0.35) * Math.PI) / 180,
      9,
    );
  });

  it('is counted from its first reading where none at rest came before', () => {
    const turning = new Turning(null, { nm: 5, deg: 7 }, START_NM);
    expect([turning.fromNm, turning.fromDeg, turning.firstNm]).toEqual([5, -0, 5]);
    expect(new Turning({ nm: 2.5, deg: 1 }, { nm: 5, deg: 7 }, START_NM).fromNm).toBe(5);
  });

  it('goes no faster than a hand, which lets go faster than it pulls', () => {
    const jumped = (deg: number) => {
      const turning = new Turning(null, { nm: 5, deg: 0 }, START_NM);
      turning.add(deg, 6, 10_000);
      return turning.jumped;
    };
    // 4 degrees, and 1500 or 2500 a second.
    expect([jumped(18.9), jumped(19.1), jumped(-28.9), jumped(-29.1)]).toEqual([false, true, false, true]);
  });

  it('hardly moved where least and most lie together', () => {
    const turning = new Turning(null, { nm: 5, deg: 0 }, START_NM);
    turning.add(0.3, 10, 10_000);
    turning.add(-0.2, 3, 10_000);
    expect([turning.within(0.5), turning.within(0.51)]).toEqual([false, true]);
  });
});

describe('how far before its first turn contact may lie', () => {
  const contactOf = (plugDeg: (nm: number) => number, nmPerDeg = 2) =>
    pullIn(turned(corners, { nmPerDeg, plugDeg })).turn?.plug?.contactDeg;

  it.each([0.5, 2, 8])('in a line by as much as to the start of the pull: %d N·m a degree', (nmPerDeg) => {
    expect(Math.abs((contactOf((nm) => 3 * nm, nmPerDeg) ?? 0) - 3 * START_NM)).toBeLessThan(1);
  });

  it('where a gasket gives way at once no less than the truth, however it does', () => {
    for (const power of [0.3, 0.4, 0.6, 0.8, 1, 1.5, 2])
      expect(contactOf((nm) => 180 * (nm / 27) ** power) ?? 0, `power ${power}`).toBeGreaterThan(
        0.85 * 180 * (START_NM / 27) ** power,
      );
  });

  it('is the more the tighter the plug was before, at least as far as it had been turned', () => {
    const heldNm = [3, 5, 8];
    const below = heldNm.map((held) => contactOf((nm) => 3 * Math.max(0, nm - held)) ?? 0);
    for (const [i, held] of heldNm.entries()) expect(below[i]).toBeGreaterThan(0.9 * 3 * held);
  });

  it('cannot be said of a plug that stands', () => {
    expect(contactOf(stands)).toBeUndefined();
  });
});

describe('an angle that says nothing', () => {
  const good = turned(corners, { nmPerDeg: 2, plugDeg: gasket(180) });
  const spoilt = (change: (deg: number, atUs: number) => number | undefined) =>
    pullIn(
      good.map(({ atUs, nm, deg }) => {
        const to = change(deg, atUs);
        return { atUs, nm, ...(to !== undefined && { deg: to }) };
      }),
    );

  it.each<[string, DetectedPull['angleFault'], (deg: number, atUs: number) => number | undefined]>([
    ['starts again at a quarter turn', 'jumped', (deg) => deg % 90],
    ['jumps by 30 degrees', 'jumped', (deg, atUs) => deg + (atUs > 3_400_000 ? 30 : 0)],
    ['stands still', 'stuck', () => 12.3],
    ['runs the other way', 'backwards', (deg) => -deg],
    ['runs by itself', 'drifting', (deg, atUs) => deg + (2 * atUs) / 1e6],
    ['is missing with one reading', 'missing', (deg, atUs) => (atUs === 3_400_000 ? undefined : deg)],
  ])('one that %s: %s', (_what, fault, change) => {
    expect(spoilt(change)).toMatchObject({ turn: null, angleFault: fault });
  });

  it('is no fault where it drifts as little as the tool says', () => {
    expect(spoilt((deg, atUs) => deg + (0.08 * atUs) / 1e6).angleFault).toBeUndefined();
  });

  it('is no fault of a tool that sends none', () => {
    const pull = createPullDetector(detectorSettings(25));
    const pulls = good.flatMap(({ atUs, nm }) => pull.push(atUs, nm) ?? []);
    expect(pulls).toMatchObject([{ turn: null }]);
    expect(pulls[0]?.angleFault).toBeUndefined();
  });
});

describe('the snug point', () => {
  it('is at the beginning where the torque rises in a line', () => {
    const { turn } = pullIn(turned(corners, { nmPerDeg: 2, plugDeg: (nm) => 3 * nm }));
    expect(snugOf(turn?.plug ?? expect.fail('no turn')).runDownDeg).toBeLessThan(3);
  });

  it('is where the line begins, behind a plug that was run down at a low torque', () => {
    const runDown = (nm: number) => (nm < 4 ? 100 * Math.max(0, (nm - 3) / 1) : 100 + 3 * (nm - 4));
    const slowly = [
      { atMs: 3000, nm: 0 },
      { atMs: 3200, nm: 3 },
      { atMs: 5200, nm: 4 },
    ];
    const [, ...click] = clickPull(5200, 700, 27, 21, 22);
    const { turn } = pullIn(
      turned([{ atMs: 0, nm: 0 }, ...slowly, ...click], { nmPerDeg: 2, plugDeg: runDown }),
    );
    const { runDownDeg, beyondDeg } = snugOf(turn?.plug ?? expect.fail('no turn'));
    expect(Math.abs(runDownDeg - 88)).toBeLessThan(6);
    expect(Math.abs(beyondDeg - 81)).toBeLessThan(8);
  });
});
