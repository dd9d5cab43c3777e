/** Simulated pulls with what the plug truly did, to fit the model of src/sequence/shape.ts on and to try it on. */
import { type Bench, createBench, type PlugSpec } from '../../../sim/physics/bench.ts';
import { Random } from '../../../sim/random.ts';
import { drawStyle, type Manner } from '../../../sim/technician/habits.ts';
import { createPullDetector } from '../../../src/pull/detector.ts';
import type { DetectedPull } from '../../../src/pull/pull.ts';
import { detectorSettings } from '../../../src/pull/settings.ts';

export interface Example {
  readonly shape: 'turned' | 'wentOn' | 'stood' | 'knock';
  readonly pull: DetectedPull;
}

const CAPACITIES_NM = [25, 60, 120];
const INTERVALS_US = [2_000, 5_000, 10_000, 20_000];
const MANNERS: readonly Manner[] = ['careful', 'hurried', 'hurried', 'lean'];

/** One plug: fitted, pulled, perhaps stopped short and gone on, pulled again, taken out and done once more; and a knock. */
export function scene(plug: PlugSpec, seed: string): Example[] {
  const random = new Random(seed).fork('scene');
  const capacityNm = CAPACITIES_NM.find((nm) => plug.upperNm <= 0.8 * nm) ?? 120;
  const bench = createBench({
    seed,
    cylinders: [1],
    plug,
    wrench: {
      capacityNm,
      noiseNm: random.uniform(0.0003, 0.003) * capacityNm,
      sampleIntervalUs: INTERVALS_US[Math.floor(random.uniform(0, INTERVALS_US.length))] ?? 10_000,
    },
  });
  const found = new Finder(bench, plug);
  const pull = (manner: Manner) => found.act({ do: 'pull', cylinder: 1, style: drawStyle(manner, random) });
  const some = () => MANNERS[Math.floor(random.uniform(0, MANNERS.length))] ?? 'careful';
  for (let round = 0; round < 2; round++) {
    found.act({ do: 'fit', cylinder: 1 });
    if (random.chance(0.5)) found.act({ do: 'knock', peakNm: random.uniform(2, 9) });
    if (random.chance(0.4)) pull('short');
    pull(some());
    for (let again = 0; again < 2; again++) {
      found.act({ do: 'wait', ms: 1500 });
      pull(some());
    }
    found.act({ do: 'loosen', cylinder: 1, with: 'ratchet' });
  }
  return found.examples;
}

class Finder {
  readonly examples: Example[] = [];
  readonly #bench: Bench;
  readonly #detector: ReturnType<typeof createPullDetector>;
  #clicked = false;

  constructor(bench: Bench, plug: PlugSpec) {
    this.#bench = bench;
    this.#detector = createPullDetector(detectorSettings(plug.lowerNm));
  }

  act(action: Parameters<Bench['begin']>[0]): void {
    const before = this.#bench.truth.pulls.length;
    const pulls: DetectedPull[] = [];
    for (const one of [action, { do: 'wait', ms: 400 } as const]) {
      this.#bench.begin(one);
      for (let e = this.#bench.next(); e !== null; e = this.#bench.next()) {
        const pull = e.kind === 'torque' ? this.#detector.push(e.atUs, e.counts / 100) : null;
        if (pull !== null) pulls.push(pull);
      }
    }
    for (const truth of this.#bench.truth.pulls.slice(before)) {
      if (truth.kind === 'tightening' || truth.kind === 'loosening') this.#clicked = false;
      const pull = pulls.find(({ startUs, endUs }) => startUs < truth.endUs && endUs > truth.startUs);
      const shape = truth.kind === 'handling' ? 'knock' : this.#clicked ? 'stood' : SHAPE[truth.kind];
      if (pull !== undefined && shape !== null) this.examples.push({ shape, pull });
      this.#clicked ||= truth.releaseNm !== null;
    }
  }
}

const SHAPE = { tightening: 'turned', continuation: 'wentOn', rehit: 'stood', loosening: null } as const;
