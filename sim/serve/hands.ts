import { type Bench, createBench, type Emission } from '../physics/bench.ts';
import { Random } from '../random.ts';
import type { Scheduler } from '../scheduler.ts';
import { handAction } from '../technician/scripted.ts';
import type { Scenario } from './scenario.ts';

/** Invented: what the plugs of a scenario are like, beside their limits. */
const PLUGS = { thread: 'M14x1.25', seat: 'gasket', gasket: 'new' } as const;

/** The simulated technician at the engine of a scenario. */
export class Hands {
  readonly #bench: Bench;
  readonly #cylinders: readonly number[];
  readonly #random: Random;

  constructor(
    { cylinders, lowerNm, upperNm, gapLowerMm, gapUpperMm }: NonNullable<Scenario['engine']>,
    seed: number,
  ) {
    this.#random = new Random(seed).fork('hands');
    this.#cylinders = Array.from({ length: cylinders }, (_, i) => i + 1);
    this.#bench = createBench({
      seed,
      cylinders: this.#cylinders,
      plug: { ...PLUGS, lowerNm, upperNm, gapLowerMm, gapUpperMm },
    });
  }

  /** Does what the line says, as long as it takes; `feel` hears what the tools feel meanwhile. */
  async move(
    line: string,
    scheduler: Scheduler,
    pause: (ms: number) => Promise<void>,
    feel: (emission: Readonly<Emission>) => void,
  ): Promise<void> {
    const action = handAction(line, this.#random, this.#cylinders);
    if (action === null || action.do === 'press') return;
    const bench = this.#bench;
    const originUs = scheduler.nowUs() - bench.nowUs;
    const until = (us: number) => pause(Math.max(0, us - scheduler.nowUs()) / 1_000);
    bench.begin(action);
    for (let emission = bench.next(); emission !== null; emission = bench.next()) {
      await until(originUs + emission.atUs);
      feel(emission);
    }
    await until(originUs + bench.nowUs);
  }
}
