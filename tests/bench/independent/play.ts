/** One job of the generator through the program's own bench, in memory; questions are answered with the truth, at once. */
import { USUAL_DECISION } from '../../../src/job/basis.ts';
import { type BenchInput, createBench } from '../../../src/job/bench.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { foldAll } from '../../../src/job/fold.ts';
import { openJob } from '../../../src/job/open.ts';
import { workOrderSchema } from '../../../src/job/order.ts';
import type { Routine } from '../../../src/job/routine.ts';
import type { JobState, Question } from '../../../src/job/state.ts';
import type { Pull } from '../../../src/pull/pull.ts';
import { orThrow } from '../../../src/result.ts';
import { answerTo } from './answers.ts';
import type { Tape, Truth } from './lines.ts';

const TOOL = 'wrench';
/** Nothing is asked around the torque but the click. */
const TRIAL: Routine = {
  form: 'plugmark/routine/1',
  confirmWindows: false,
  ...{ beforeRemoval: [], oldPlugs: false, newPlugs: false, fitting: [], afterwards: [] },
  trialClick: true,
};

/** A pull that was detected, and the true one that it shows. */
export interface Seen {
  readonly pull: Pull;
  readonly truth: Truth | null;
}

export interface Played {
  readonly tape: Tape;
  readonly state: JobState;
  readonly events: readonly JobEvent[];
  readonly seen: readonly Seen[];
  /** Pulls about which a person said something. */
  readonly answered: ReadonlySet<number>;
  /** Questions that no command could answer with the truth. */
  readonly stuck: number;
}

export function opened({ job }: Tape): JobState {
  const cylinders = Array.from({ length: job.cylinders }, (_, i) => i + 1);
  const order = workOrderSchema.parse({
    form: 'plugmark/work-order/1',
    job: 'MEASURED',
    technician: 'Invented',
    vehicle: {},
    engine: { banks: [cylinders], serviceOrder: cylinders, headMaterial: 'aluminium' },
    plug: {
      part: 'EXAMPLE',
      thread: 'M14x1.25',
      seat: job.seat === 'cone' ? 'conical' : 'gasket',
      ...(job.seat === 'cone' ? {} : { gasket: job.seat === 'new gasket' ? 'new' : 'used' }),
    },
    specification: {
      torque: `${job.lowerNm}-${job.upperNm} N·m`,
      gapRules: { check: 'not-permitted' },
      threads: 'dry',
      source: { kind: 'invented-example', title: 'For measuring the program.' },
    },
  });
  const wrench = {
    id: TOOL,
    quantity: 'torque',
    type: job.clicks ? 'setting' : 'indicating',
    serial: 'INVENTED',
    range: { from: 0.4 * job.lowerNm, to: 2 * job.upperNm },
    permissibleDeviation: { kind: 'relative', percent: 2 },
    resolution: job.stepCounts / 100,
    basis: 'invented data sheet',
  } as const;
  const events = orThrow(
    openJob(order, [wrench], {
      on: '2026-01-15',
      decision: USUAL_DECISION,
      overrides: [],
      ...(job.key['trial'] === true ? { routine: TRIAL } : {}),
    }),
  );
  const state = foldAll(events);
  if (state === null) throw new Error('the job did not open');
  return state;
}

/** `silent`: the pull that nobody answers for, by what it truly was. */
export function play(tape: Tape, silent: string | null = null): Played {
  const bench = createBench(opened(tape));
  const events: JobEvent[] = [];
  const seen: Seen[] = [];
  const answered = new Set<number>();
  const given = new Set<string>();
  let n = 0;
  const give = (input: BenchInput): boolean => {
    const out = bench.accept(input);
    if (!out.ok) return false;
    for (const event of out.value) {
      if (event.type === 'readings') continue;
      events.push(event);
      if (event.type === 'pull-detected') seen.push({ pull: event, truth: truthOf(tape.truth, event) });
    }
    if (out.value.length > 0) answer();
    return true;
  };
  /** Every open question once about a cylinder; what an answer raises is answered in turn. */
  const answer = () => {
    const { questions } = bench.state();
    const question = questions.find((one) => !given.has(named(one)));
    if (question === undefined) return;
    given.add(named(question));
    const one = seen.find(({ pull }) => pull.pull === question.pull);
    const command =
      one === undefined || one.truth?.was === silent ? null : answerTo(question, one, bench.state());
    if (command !== null && give({ kind: 'command', command })) answered.add(question.pull);
    else answer();
  };
  const angle = tape.parts.some((part) => 't' in part && part.a !== undefined);
  begin(give, tape.job.stepCounts, angle);
  for (const part of tape.parts)
    if ('command' in part)
      give({
        kind: 'command',
        command: { ...part.command, newPlug: false, why: 'done again' },
      });
    else if ('missed' in part) {
      n += 1;
      give({ kind: 'reading', tool: TOOL, reading: missed(n, part.missed) });
    } else
      part.t.forEach((atUs, i) => {
        n += 1;
        give({
          kind: 'reading',
          tool: TOOL,
          reading: {
            kind: 'value',
            n,
            atUs,
            counts: part.c[i] ?? Number.NaN,
            ...(part.a !== undefined && { angleCounts: part.a[i] ?? 0 }),
          },
        });
      });
  const state = bench.state();
  const stuck = state.questions.length;
  return { tape, state, events, seen, answered, stuck };
}

const named = ({ pull, kind, cylinder }: Question): string => `${pull} ${kind} ${cylinder}`;

const missed = (n: number, gap: { fromUs: number; atUs: number; readings: number }) =>
  ({ kind: 'missed', n, ...gap, reason: 'counter-jumped' }) as const;

export function begin(give: (input: BenchInput) => unknown, stepCounts = 1, angle = false): void {
  give({ kind: 'session', program: 'measurement', platform: 'generator' });
  const link = { kind: 'direct', authenticated: false } as const;
  const description = {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    samplingFunction: 'instantaneous',
    resolutionCounts: stepCounts,
    ...(angle && { angle: { exponent: -2, resolutionCounts: 10 } }),
    link,
  } as const;
  give({
    kind: 'link',
    tool: TOOL,
    driver: 'generator',
    source: 'linked',
    link: { state: 'linked', description },
  });
}

/** A link delays readings by so much at most. */
const LATE_US = 150_000;

/** Of the true pulls under a detected one the strongest. */
function truthOf(truths: readonly Truth[], { startUs, endUs }: Pull): Truth | null {
  return truths
    .filter(({ fromUs, toUs }) => fromUs <= endUs && startUs <= toUs + LATE_US)
    .reduce<Truth | null>(
      (best, one) => (best === null || Math.abs(one.peakNm) > Math.abs(best.peakNm) ? one : best),
      null,
    );
}
