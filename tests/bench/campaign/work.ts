import type { BenchAction } from '../../../sim/physics/action.ts';
import { createBench } from '../../../sim/physics/bench.ts';
import type { TruePull } from '../../../sim/physics/truth.ts';
import { Random } from '../../../sim/random.ts';
import { drawManner, drawStyle } from '../../../sim/technician/habits.ts';
import { PEOPLE } from '../../../sim/technician/people.ts';
import type { Case } from './case.ts';

/** What a wrench sent of one engine, and what really happened. */
export interface Worked {
  readonly atUs: Float64Array;
  /** As the wrench reads it, in N·m. */
  readonly nm: Float64Array;
  readonly pulls: readonly TruePull[];
  readonly gain: number;
}

/** What is sent of a sample; null: nothing. */
export type Send = (atUs: number, nm: number) => number | null;

const AS_IT_IS: Send = (_, nm) => nm;

/**
 * Lets a technician with his habits go once round an engine and keeps what arrives of the wrench's samples. He does not
 * look at a screen: what he does next depends on chance alone. Samples are lost one by one with the share of the case.
 */
export function worked(one: Case, send: Send = AS_IT_IS): Worked {
  const bench = createBench(one.bench);
  const random = new Random(one.seed).fork('campaign');
  const lost = random.fork('lost');
  const atUs: number[] = [];
  const nm: number[] = [];
  const perform = (action: BenchAction) => {
    bench.begin(action);
    for (let e = bench.next(); e !== null; e = bench.next()) {
      if (e.kind !== 'torque' || lost.chance(one.lossShare)) continue;
      const sentNm = send(e.atUs, e.counts / 100);
      if (sentNm === null) continue;
      atUs.push(one.bunchUs > 0 ? Math.ceil(e.atUs / one.bunchUs) * one.bunchUs : e.atUs);
      nm.push(sentNm);
    }
  };
  for (const cylinder of one.bench.cylinders)
    for (const action of actionsOn(cylinder, one, random)) perform(action);
  perform({ do: 'wait', ms: 1500 });
  return {
    atUs: Float64Array.from(atUs),
    nm: Float64Array.from(nm),
    pulls: bench.truth.pulls,
    gain: bench.wrench.gain,
  };
}

function* actionsOn(cylinder: number, { person }: Case, random: Random): Generator<BenchAction> {
  const habits = PEOPLE[person];
  const manner = drawManner(habits, random);
  // Nobody takes more than a moment between plugs here: only the pulls and the rest about them matter.
  if (cylinder === 1) yield { do: 'wait', ms: random.uniform(800, 2000) };
  yield { do: 'fit', cylinder };
  if (random.chance(habits.knocks)) yield { do: 'knock', peakNm: random.uniform(2, 9) };
  yield { do: 'pull', cylinder, style: drawStyle(manner, random) };
  const after = manner === 'lean' ? 'hurried' : manner;
  if (manner === 'short') yield { do: 'pull', cylinder, style: drawStyle('careful', random) };
  else if (random.chance(habits.clicksTwice)) yield { do: 'pull', cylinder, style: drawStyle(after, random) };
  if (manner !== 'lean') return;
  yield { do: 'loosen', cylinder, with: random.chance(habits.loosensWithWrench) ? 'wrench' : 'ratchet' };
  yield { do: 'fit', cylinder };
  yield { do: 'pull', cylinder, style: drawStyle('careful', random) };
}
