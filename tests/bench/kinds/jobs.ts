/** Whole jobs: a simulated technician at the real bench of src/job, each seeing what the other does. */
import { peakSender } from '../../../sim/peak-sender.ts';
import { createBench as createEngine, type Emission, type PlugSpec } from '../../../sim/physics/bench.ts';
import type { TruePull } from '../../../sim/physics/truth.ts';
import { Random } from '../../../sim/random.ts';
import { SIMULATED_INSTRUMENTS } from '../../../sim/station.ts';
import type { Habits } from '../../../sim/technician/habits.ts';
import { type Leaving, technician } from '../../../sim/technician/technician.ts';
import { USUAL_DECISION } from '../../../src/job/basis.ts';
import { type BenchInput, createBench } from '../../../src/job/bench.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { foldAll } from '../../../src/job/fold.ts';
import { openJob } from '../../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../../src/job/order.ts';
import type { JobState } from '../../../src/job/state.ts';
import type { ToolDescription } from '../../../src/reading.ts';
import { orThrow } from '../../../src/result.ts';

export interface JobSpec {
  readonly seed: string;
  readonly plug: PlugSpec;
  readonly cylinders: number;
  readonly habits: Habits;
  readonly rateHz: number;
  /** Standard deviation of a reading, as a share of the capacity. */
  readonly noiseShare: number;
  /** The wrench sends the highest torque of each pull and nothing else. */
  readonly sendsPeaks?: boolean;
}

export interface DoneJob {
  readonly events: readonly JobEvent[];
  readonly state: JobState;
  readonly truth: readonly TruePull[];
  readonly leaving: Leaving;
}

const CAPACITIES_NM = [25, 60, 120];

/** Works a job from beginning to end; the same spec gives the same events. */
export function workJob(spec: JobSpec): DoneJob {
  const { plug, seed } = spec;
  const cylinders = Array.from({ length: spec.cylinders }, (_, i) => i + 1);
  const instruments = SIMULATED_INSTRUMENTS.map((one) =>
    one.quantity === 'torque' ? { ...one, range: { from: 0.4 * plug.lowerNm, to: 2 * plug.upperNm } } : one,
  );
  const opened = orThrow(
    openJob(orderFor(plug, cylinders), instruments, {
      on: '2026-01-15',
      decision: USUAL_DECISION,
      overrides: [],
    }),
  );
  const state = foldAll(opened);
  if (state === null || state.gapWindow === null) throw new Error('the job did not open');
  const events: JobEvent[] = [...opened];
  const bench = createBench(state);
  const give = (input: BenchInput) => {
    const out = bench.accept(input);
    if (out.ok) events.push(...out.value);
    else throw new Error(out.error.message);
  };
  give({ kind: 'session', program: 'measurement', platform: 'simulation' });
  for (const tool of ['wrench', 'gauge'])
    give({
      kind: 'link',
      tool,
      driver: 'simulated',
      source: 'simulated',
      link: { state: 'linked', description: described(tool, spec.sendsPeaks === true) },
    });

  const capacityNm = CAPACITIES_NM.find((nm) => plug.upperNm <= 0.8 * nm) ?? 120;
  const engine = createEngine({
    seed,
    cylinders,
    plug,
    wrench: {
      settingNm: (state.torqueWindow.acceptLower + state.torqueWindow.acceptUpper) / 2,
      capacityNm,
      noiseNm: spec.noiseShare * capacityNm,
      sampleIntervalUs: 1e6 / spec.rateHz,
    },
  });
  const person = technician(
    {
      habits: spec.habits,
      order: cylinders,
      gapLowerMm: state.gapWindow.acceptLower,
      gapUpperMm: state.gapWindow.acceptUpper,
      hurtFromNm: 1.15 * plug.upperNm,
    },
    new Random(seed).fork('technician'),
  );
  const sent = spec.sendsPeaks === true ? peakSender() : (emission: Readonly<Emission>) => emission;
  const numbers = { torque: 0, gap: 0 };
  let step = person.next(bench.state());
  while (step.done !== true) {
    if (step.value.do === 'press') give({ kind: 'command', command: step.value.command });
    else {
      engine.begin(step.value);
      for (let next = engine.next(); next !== null; next = engine.next()) {
        const e = sent(next);
        if (e === null) continue;
        numbers[e.kind] += 1;
        const reading = { kind: 'value', n: numbers[e.kind], atUs: e.atUs, counts: e.counts } as const;
        give({ kind: 'reading', tool: e.kind === 'torque' ? 'wrench' : 'gauge', reading });
      }
    }
    for (
      let waits = bench.waitsFor();
      waits !== null && waits.untilUs <= engine.nowUs;
      waits = bench.waitsFor()
    )
      give({ kind: 'silence', tool: waits.tool, atUs: waits.untilUs });
    step = person.next(bench.state());
  }
  return { events, state: bench.state(), truth: engine.truth.pulls, leaving: step.value };
}

function orderFor(plug: PlugSpec, cylinders: readonly number[]): WorkOrder {
  return workOrderSchema.parse({
    form: 'plugmark/work-order/1',
    job: 'MEASURED',
    technician: 'Simulated',
    vehicle: {},
    engine: { banks: [cylinders], serviceOrder: cylinders, headMaterial: 'aluminium' },
    plug: { part: 'EXAMPLE', thread: plug.thread, seat: plug.seat, gasket: plug.gasket },
    specification: {
      torque: `${plug.lowerNm}-${plug.upperNm} N·m`,
      gap: `${plug.gapLowerMm}-${plug.gapUpperMm} mm`,
      threads: 'dry',
      source: { kind: 'invented-example', title: 'For measuring the program.' },
    },
  });
}

function described(tool: string, peaks: boolean): ToolDescription {
  return {
    quantity: tool === 'wrench' ? 'torque' : 'length',
    unit: tool === 'wrench' ? 'N.m' : 'm',
    exponent: tool === 'wrench' ? -2 : -7,
    samplingFunction: peaks && tool === 'wrench' ? 'maximum' : 'instantaneous',
    link: { kind: 'direct', authenticated: false },
  };
}
