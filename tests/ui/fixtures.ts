/** An invented vehicle and its jobs, built by hand: the screen is tested without the fold. */
import type { Answer } from '../../src/job/event.ts';
import type { Engine, WorkOrder } from '../../src/job/order.ts';
import { RULES } from '../../src/job/rules.ts';
import {
  type CylinderState,
  type GapAttempt,
  isOver,
  type JobState,
  type Question,
  type StepState,
  type ToolState,
  type TorqueAttempt,
} from '../../src/job/state.ts';
import type { Evaluation, Judgement, Window } from '../../src/metrology/judgement.ts';
import type { Pull } from '../../src/pull/pull.ts';
import type { LinkEnd, ToolDescription } from '../../src/reading.ts';
import type { BenchView, LiveTorque } from '../../src/ui/view.ts';
import { A_PULL } from '../pull/a-pull.ts';

export const TORQUE_WINDOW: Window = {
  unit: 'N.m',
  lowerLimit: 25,
  upperLimit: 30,
  guardBandFactor: 1,
  expandedAtLower: 0.61,
  expandedAtUpper: 0.73,
  acceptLower: 25.61,
  acceptUpper: 29.27,
  decidable: true,
};

export const GAP_WINDOW: Window = {
  unit: 'mm',
  lowerLimit: 0.7,
  upperLimit: 0.8,
  guardBandFactor: 1,
  expandedAtLower: 0.012,
  expandedAtUpper: 0.012,
  acceptLower: 0.712,
  acceptUpper: 0.788,
  decidable: true,
};

const V8: Engine = {
  banks: [
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ],
  serviceOrder: [1, 3, 5, 7, 2, 4, 6, 8],
  headMaterial: 'aluminium',
};

/** An engine with the given number of cylinders in each bank, numbered through. */
export function engineOf(sizes: readonly number[]): Engine {
  let number = 0;
  const banks = sizes.map((size) => Array.from({ length: size }, () => ++number));
  return { banks, serviceOrder: banks.flat(), headMaterial: 'aluminium' };
}

function orderOf(engine: Engine): WorkOrder {
  return {
    form: 'plugmark/work-order/1',
    job: 'J-1042',
    technician: 'A. Example',
    vehicle: { vin: '11111111111111111', plate: 'EX 123', description: 'Example estate, V8' },
    engine,
    plug: { part: 'EX-1234', thread: 'M14x1.25', seat: 'gasket' },
    specification: {
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: { kind: 'invented-example', title: 'Invented for the tests' },
    },
  };
}

export function judged(
  result: Evaluation,
  side: Judgement['side'],
  value: number,
  unit: Window['unit'],
): Judgement {
  const grade = result === 'OK' ? 'pass' : result === 'NotOK' ? 'fail' : 'conditional-pass';
  const expandedUncertainty = unit === 'mm' ? 0.012 : 0.64;
  return {
    result,
    side,
    grade,
    value,
    expandedUncertainty,
    conformanceProbability: result === 'OK' ? 0.999 : 0.1,
  };
}

const DESCRIPTIONS: Readonly<Record<'wrench' | 'gauge', ToolDescription>> = {
  wrench: {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    maker: 'Example Tools',
    batteryPercent: 81,
    samplingFunction: 'instantaneous',
    link: { kind: 'bluetooth-le', authenticated: false },
  },
  gauge: {
    quantity: 'length',
    unit: 'm',
    exponent: -6,
    batteryPercent: 64,
    samplingFunction: 'instantaneous',
    link: { kind: 'bluetooth-le', authenticated: false },
  },
};

export const linked = (tool: 'wrench' | 'gauge'): ToolState => ({
  tool,
  link: 'linked',
  description: DESCRIPTIONS[tool],
});

export const seeking = (tool: 'wrench' | 'gauge'): ToolState => ({ tool, link: 'seeking' });

export const lost = (tool: 'wrench' | 'gauge', reason: LinkEnd['reason']): ToolState => ({
  tool,
  link: 'lost',
  end: { reason },
  description: DESCRIPTIONS[tool],
});

export function pullOf(pull: number, peakNm: number): Pull {
  return {
    ...A_PULL,
    pull,
    tool: 'wrench',
    source: 'linked',
    startUs: 1_000_000,
    endUs: 2_000_000,
    peakNm,
    peakUs: 1_800_000,
    releaseNm: peakNm - 0.3,
    releaseUs: 1_700_000,
    riseMs: 400,
    zeroNm: 0,
    samples: 100,
    cut: null,
  };
}

export function attemptOf(
  pull: number,
  judgement: Judgement | null,
  more: Partial<TorqueAttempt> = {},
): TorqueAttempt {
  return {
    pull: pullOf(pull, judgement?.value ?? 20),
    technician: 'Technician One',
    kind: judgement === null ? 'unsure' : 'tightening',
    because: 'first-plug',
    judgement,
    answer: null,
    ...more,
  };
}

export const gapAttemptOf = (reading: number, judgement: Judgement): GapAttempt => ({
  reading,
  tool: 'gauge',
  source: 'linked',
  technician: 'Technician One',
  judgement,
});

const okGap = (value = 0.752) => judged('OK', 'inside', value, 'mm');
export const okTorque = (value = 27.41) => judged('OK', 'inside', value, 'N.m');

/** A cylinder in a state, with the attempts that lead there. */
export function cylinderIn(cylinder: number, gap: StepState, torque: StepState): CylinderState {
  const gapJudgement = gap === 'done' ? okGap() : judged('NotOK', 'low', 0.66, 'mm');
  const torqueJudgement = torque === 'done' ? okTorque() : judged('NotOK', 'low', 22.1, 'N.m');
  return {
    cylinder,
    gap,
    torque,
    gaps: gap === 'todo' ? [] : [gapAttemptOf(cylinder, gapJudgement)],
    pulls: torque === 'todo' ? [] : [attemptOf(cylinder, torque === 'ask' ? null : torqueJudgement)],
  };
}

/** A job in which the first `proven` cylinders of the service order are done and the rest untouched. */
export function jobWith(proven: number, more: Partial<JobState> = {}, engine: Engine = V8): JobState {
  const order = engine.serviceOrder;
  const target = order[proven] ?? null;
  return {
    order: orderOf(engine),
    technician: orderOf(engine).technician,
    windows: {},
    inUse: { torque: 'wrench', length: 'gauge' },
    toolsOf: {},
    stopped: {},
    instruments: [
      {
        id: 'wrench',
        quantity: 'torque',
        permissibleDeviation: { kind: 'relative', percent: 2 },
        resolution: 0.01,
        basis: 'test',
      },
      {
        id: 'gauge',
        quantity: 'length',
        permissibleDeviation: { kind: 'absolute', amount: 0.01 },
        resolution: 0.001,
        basis: 'test',
      },
    ],
    torqueWindow: TORQUE_WINDOW,
    gapWindow: GAP_WINDOW,
    basis: {
      on: '2026-05-04',
      decision: { rule: { kind: 'guard-band', r: 1 }, grades: false },
      firstTorqueWindow: null,
      gap: { check: 'gauge', adjustable: true, bendMostMm: 0.2 },
      notes: [],
    },
    plugs: {},
    rules: RULES,
    session: 1,
    sources: ['linked'],
    cylinders: order.map((number, at) => {
      const step = at < proven ? 'done' : 'todo';
      return cylinderIn(number, step, step);
    }),
    gapTarget: target,
    torqueTarget: target,
    chosen: { torque: null, length: null, 'old-plug': null },
    routine: null,
    windowsConfirmed: false,
    trialSkipped: false,
    attested: {},
    oldPlugs: {},
    newPlugs: {},
    oldPlugTarget: null,
    refitting: null,
    lastTight: null,
    tools: { wrench: linked('wrench'), gauge: linked('gauge') },
    inHand: null,
    strays: [],
    pullCount: proven,
    lastPull: null,
    lastVerdict: null,
    tooEarly: null,
    doneAfter: {},
    outOfOrder: [],
    keptGap: null,
    statements: [],
    beforeAnswer: null,
    questions: [],
    closed: null,
    voided: null,
    ...more,
  };
}

/** `job` with one cylinder replaced, and the targets moved to the first open steps. */
export function withCylinder(job: JobState, one: CylinderState): JobState {
  const cylinders = job.cylinders.map((old) => (old.cylinder === one.cylinder ? one : old));
  const first = (step: 'gap' | 'torque') => cylinders.find((c) => !isOver(c[step]))?.cylinder ?? null;
  return { ...job, cylinders, gapTarget: first('gap'), torqueTarget: first('torque') };
}

export const questionOn = (
  cylinder: number,
  kind: Question['kind'],
  answers: readonly Answer[],
  pull = 5,
): Question => ({ pull, cylinder, kind, answers });

const RESTING: LiveTorque = { nowNm: 0, pulling: false, peakNm: null, turnedDeg: null, trace: [] };

export const viewOf = (
  job: JobState,
  live: Partial<LiveTorque> = {},
  more: Partial<BenchView> = {},
): BenchView => ({
  station: 'bay 2',
  job,
  live: { ...RESTING, ...live },
  forecast: null,
  logEntries: 142,
  pullTimes: new Map(),
  sources: ['linked'],
  ...more,
});
