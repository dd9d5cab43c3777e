import { describe, expect, it } from 'vitest';
import { createBench, type PlugSpec } from '../../sim/physics/bench.ts';
import { Random } from '../../sim/random.ts';
import { drawStyle } from '../../sim/technician/habits.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import { type Seating, seatingOf } from '../../src/pull/seat.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { CONICAL, GASKET, USED } from '../sim/physics/rig.ts';

/** One sweep on a plug that was turned in by hand, and a second one, by a wrench that tells its angle. */
function seatings(plug: PlugSpec, seed: number): (Seating | null)[] {
  const bench = createBench({ seed, cylinders: [1], plug });
  const detector = createPullDetector(detectorSettings(plug.lowerNm, { stepNm: 0.01 }));
  const manner = seed % 2 === 0 ? 'careful' : 'hurried';
  const style = { ...drawStyle(manner, new Random(seed)), strokeDeg: 600 };
  const pull = { do: 'pull', cylinder: 1, style } as const;
  const wait = { do: 'wait', ms: 900 } as const;
  const found: (Seating | null)[] = [];
  for (const action of [wait, { do: 'fit', cylinder: 1 } as const, pull, wait, pull, wait]) {
    bench.begin(action);
    for (let e = bench.next(); e !== null; e = bench.next()) {
      const one = detector.push(e.atUs, e.counts / 100, e.angleDeg);
      if (one !== null) found.push(one.turn === null ? null : seatingOf(one.turn));
    }
  }
  return found;
}

describe('what a plug came to sit on, by the angle', () => {
  const M10 = { ...GASKET, thread: 'M10x1', lowerNm: 10, upperNm: 13 } as const;
  it.each<[string, PlugSpec, Seating]>([
    ['a new gasket', GASKET, 'soft'],
    ['a new gasket, M10', M10, 'soft'],
    ['a used gasket', USED, 'hard'],
    ['a conical seat', CONICAL, 'hard'],
    ['no gasket', { ...GASKET, gasket: 'missing' }, 'hardly'],
    ['two gaskets', { ...GASKET, gasket: 'doubled' }, 'doubled'],
    ['a crossed thread', { ...GASKET, crossThreaded: [1] }, 'binding'],
    ['a crossed thread on a conical seat', { ...CONICAL, crossThreaded: [1] }, 'binding'],
  ])('%s, and a tight plug hardly turns', (_what, plug, seating) => {
    for (let seed = 0; seed < 12; seed++) expect(seatings(plug, seed)).toEqual([seating, 'hardly']);
  });
});
