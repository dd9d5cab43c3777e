import { Random } from '../random.ts';
import type { BenchAction } from './action.ts';
import { type BenchSpec, type WrenchSpec, wrenchOf } from './bench-spec.ts';
import { Gyroscope } from './gyroscope.ts';
import { Hands } from './hands.ts';
import { TorqueSensor } from './sensor.ts';
import type { Truth } from './truth.ts';
import { type Emission, World } from './world.ts';

export type { BenchSpec, PlugSpec, WrenchSpec } from './bench-spec.ts';
export type { Emission } from './world.ts';

/** An engine, a wrench, a gauge and a pair of hands, as physics; no radio and no clock but its own. */
export interface Bench {
  readonly wrench: WrenchSpec;
  readonly truth: Truth;
  /** The bench's own time, from 0. */
  readonly nowUs: number;
  /** Starts an action; the one before must be over. */
  begin(action: BenchAction): void;
  /**
   * The next reading that a tool sends, or null when the action is over. The object is reused. Whoever joins the bench
   * to a scheduler delivers it when its clock comes to `atUs`.
   */
  next(): Emission | null;
}

/** A bench made from a seed: the same spec gives the same bytes. Throws RangeError on a setting outside the window. */
export function createBench(spec: BenchSpec): Bench {
  const random = new Random(spec.seed);
  const wrench = wrenchOf(spec, random.fork('wrench'));
  const sensor = new TorqueSensor(wrench, random.fork('sensor'));
  const gyroscope = new Gyroscope(random.fork('gyroscope'));
  const hands = new Hands(spec, wrench, random);
  const world = new World({
    sample: (nm) => sensor.sample(nm),
    sampleAngle: (deg, atUs) => gyroscope.sample(deg, atUs),
    intervalUs: wrench.sampleIntervalUs,
    jitterUs: wrench.jitterUs,
    random: random.fork('sampling'),
  });
  return {
    wrench,
    truth: hands,
    get nowUs() {
      return world.nowUs;
    },
    begin: (action) => world.begin(hands.perform(action, () => world.nowUs)),
    next: () => world.next(),
  };
}
