import { createHash } from 'node:crypto';
import type { LogEntry } from '../../src/evidence/log.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { type WorkOrder, workOrderSchema } from '../../src/job/order.ts';
import { RULES } from '../../src/job/rules.ts';
import type { JobState } from '../../src/job/state.ts';
import type { Judgement, Window } from '../../src/metrology/judgement.ts';
import type { Pull } from '../../src/pull/pull.ts';
import type { FigureSource, LinkDescription } from '../../src/reading.ts';
import { type ReportInput, type ReportModel, reportModel } from '../../src/report/model.ts';
import { writePdf } from '../../src/report/pdf.ts';
import type { Trace } from '../../src/report/plots.ts';
import { jobEntry, salts } from '../evidence/entries.ts';
import { A_PULL } from '../pull/a-pull.ts';

export const TORQUE_WINDOW: Window = {
  unit: 'N.m',
  lowerLimit: 25,
  upperLimit: 30,
  guardBandFactor: 1,
  expandedAtLower: 0.583,
  expandedAtUpper: 0.699,
  acceptLower: 25.583,
  acceptUpper: 29.301,
  decidable: true,
};

export const GAP_WINDOW: Window = {
  unit: 'mm',
  lowerLimit: 0.7,
  upperLimit: 0.8,
  guardBandFactor: 1,
  expandedAtLower: 0.0126,
  expandedAtUpper: 0.0126,
  acceptLower: 0.7126,
  acceptUpper: 0.7874,
  decidable: true,
};

/** A judgement as the metrology room would word it, made by hand so that these tests stand on their own. */
function judge(value: number, window: Window): Judgement {
  const inside = value >= window.acceptLower && value <= window.acceptUpper;
  const within = value >= window.lowerLimit && value <= window.upperLimit;
  return {
    result: inside ? 'OK' : within ? 'NotDecidable' : 'NotOK',
    side: inside ? 'inside' : value < window.acceptLower ? 'low' : 'high',
    grade: inside ? 'pass' : within ? 'conditional-pass' : 'fail',
    value,
    expandedUncertainty: window.expandedAtUpper,
    conformanceProbability: inside ? 0.9987 : within ? 0.81 : 0.002,
  };
}

/** A pull as a wrench would feel it: rise, click, dip, follow-through, let-off. */
export function traceOf(peakNm: number, releaseNm: number | null, samples = 400): Trace {
  const tMs = Array.from({ length: samples }, (_, i) => (i * 1600) / (samples - 1));
  const top = releaseNm ?? peakNm;
  const nm = tMs.map((t) => {
    if (t < 900) return top * (t / 900) ** 1.6;
    if (releaseNm !== null && t < 940) return top * 0.8;
    if (t < 1200) return Math.min(peakNm, top * 0.8 + (peakNm - top * 0.8) * ((t - 940) / 180));
    return peakNm * Math.exp(-(t - 1200) / 60);
  });
  return { tMs, nm };
}

export interface JobOptions {
  readonly order?: Partial<WorkOrder>;
  readonly banks?: readonly (readonly number[])[];
  readonly by?: string;
  readonly serial?: string;
  /** Where the figures of all tools come from. */
  readonly source?: FigureSource;
  /** What the session's own entry says. */
  readonly sessionSimulated?: boolean;
  readonly model?: string;
  /** Events put between the cylinders' work and the closing. */
  readonly late?: readonly JobEvent[];
  /** Torque of the first pull by cylinder, where it is not the usual one. */
  readonly firstPull?: Readonly<Record<number, number>>;
  /** Strokes by cylinder that ended low, before the first pull. */
  readonly runDowns?: Readonly<Record<number, number>>;
  readonly skip?: readonly number[];
  readonly close?: boolean;
}

/** A made job: the events as the bench would have logged them, and the report's input from their fold. */
export function madeJob(options: JobOptions = {}): {
  readonly input: ReportInput;
  readonly record: Uint8Array;
} {
  const banks = (
    options.banks ?? [
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ]
  ).map((bank) => [...bank]);
  const order = workOrderSchema.parse({
    form: 'plugmark/work-order/1',
    job: 'JOB-2041',
    technician: 'Ann Example',
    vehicle: {
      vin: '1M8GDM9AXKP042788',
      plate: 'AB 123',
      description: 'Van, petrol, 2014',
      odometerKm: 148210,
    },
    engine: {
      banks,
      serviceOrder: banks.flat(),
      headMaterial: 'aluminium',
      description: 'V8, made up for this test',
    },
    plug: { part: 'EX-14G', thread: 'M14x1.25', seat: 'gasket', reachMm: 19, hexMm: 16, gasket: 'new' },
    specification: {
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: {
        kind: 'engine-maker',
        title: 'Service data of this engine',
        edition: '3',
        date: '2019-05-01',
      },
    },
    ...options.order,
  });
  const made = workEvents(order, options);
  const events = made.events;
  const salt = salts();
  const entries = events.map((event, index) => entryOf(event, index, options.by ?? 'technician', salt));
  const state = foldAll(events);
  if (state === null) throw new Error('the fixture made no job');
  const record = new TextEncoder().encode(JSON.stringify({ entries }));
  return { input: inputOf(state, entries, made.traces, record), record };
}

export function modelOf(options: JobOptions = {}): {
  readonly model: ReportModel;
  readonly record: Uint8Array;
} {
  const { input, record } = madeJob(options);
  return { model: reportModel(input), record };
}

/** The finished PDF of a made job, with its record inside. */
export async function pdfOf(
  options: JobOptions = {},
): Promise<{ readonly pdf: Uint8Array; readonly record: Uint8Array }> {
  const { model, record } = modelOf(options);
  return { pdf: await writePdf(model, { recordBytes: record, recordName: `${model.job}.json` }), record };
}

/** Eight cylinders, the third over the window at first and done again. */
export const V8_WITH_REDO: JobOptions = { firstPull: { 3: 31.42 } };

function inputOf(
  state: JobState,
  entries: readonly LogEntry[],
  traces: ReadonlyMap<number, Trace>,
  record: Uint8Array,
): ReportInput {
  return {
    state,
    entries,
    traces,
    recordDigest: createHash('sha256').update(record).digest('hex'),
    signers: [{ role: 'station', kid: 'kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k' }],
    technicianSignature: 'the technician has no key of his own',
    checkpoint: `plugmark/log/example\n12\n${Buffer.alloc(32, 7).toString('base64')}\n\n— plugmark/log/example ${Buffer.alloc(68, 1).toString('base64')}\n`,
    program: 'plugmark 0.1.0',
    station: 'Bay 1',
    replaces: null,
    beforeSigning: null,
  };
}

function entryOf(event: JobEvent, index: number, by: string, salt: () => string): LogEntry {
  const at = new Date(Date.UTC(2025, 5, 3, 8, 15, 0) + index * 7_000).toISOString();
  return jobEntry(event, { seq: index + 1, at, monoUs: index * 7_000_000, by, salt }, 'JOB-2041');
}

function workEvents(order: WorkOrder, options: JobOptions) {
  const traces = new Map<number, Trace>();
  const events: JobEvent[] = [...opening(order, options)];
  let pull = 0;
  const runDown = (cylinder: number) => {
    pull += 1;
    traces.set(pull, traceOf(12.3, null));
    events.push(pullDetected(pull, { peakNm: 12.3, releaseNm: null, releaseUs: null }), {
      type: 'pull-placed',
      pull,
      cylinder,
      kind: 'run-down',
      because: 'ended-low',
      judgement: null,
    });
  };
  const place = (cylinder: number, peakNm: number) => {
    pull += 1;
    const releaseNm = Number((peakNm * 0.985).toFixed(3));
    traces.set(pull, traceOf(peakNm, releaseNm));
    events.push(...pullEvents(pull, cylinder, peakNm, releaseNm));
    return pull;
  };
  order.engine.serviceOrder
    .filter((cylinder) => !(options.skip ?? []).includes(cylinder))
    .forEach((cylinder, index) => {
      events.push(gapEvent(cylinder, 0.742 + (index % 5) * 0.004));
      for (let i = 0; i < (options.runDowns?.[cylinder] ?? 0); i++) runDown(cylinder);
      const first = options.firstPull?.[cylinder] ?? 27.1 + ((index * 7) % 11) / 10;
      const number = place(cylinder, first);
      if (first > TORQUE_WINDOW.acceptUpper) {
        events.push({ type: 'question-answered', pull: number, answer: 'refit' });
        place(cylinder, 27.8);
      } else if (first < TORQUE_WINDOW.acceptLower) place(cylinder, 27.8);
    });
  events.push(...(options.late ?? []));
  if (options.close ?? true) {
    const open = (options.skip ?? []).map((cylinder) => ({ kind: 'no-torque', cylinder }) as const);
    events.push({ type: 'job-closed', complete: open.length === 0, open });
  }
  return { events, traces };
}

function opening(order: WorkOrder, options: JobOptions): JobEvent[] {
  return [
    {
      type: 'job-opened',
      order,
      instruments: [
        {
          id: 'wrench',
          quantity: 'torque',
          serial: 'W-1187',
          permissibleDeviation: { kind: 'relative', percent: 2 },
          resolution: 0.01,
          basis: "maker's data sheet, ±2 % of the reading",
        },
        {
          id: 'gauge',
          quantity: 'length',
          serial: 'G-204',
          permissibleDeviation: { kind: 'absolute', amount: 0.02 },
          resolution: 0.01,
          basis: "maker's data sheet, ±0.02 mm",
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
      rules: RULES,
    },
    {
      type: 'session-started',
      session: 1,
      program: 'plugmark 0.1.0',
      platform: 'linux',
    },
    linked(
      'wrench',
      'torque',
      options.serial ?? 'W-1187',
      options.model ?? 'TW-60',
      AUTHENTICATED,
      options.source,
    ),
    linked('gauge', 'length', 'G-204', 'PG-1', AUTHENTICATED, options.source),
  ];
}

const AUTHENTICATED: LinkDescription = {
  kind: 'bluetooth-le',
  address: 'C4:11:22:33:44:55',
  authenticated: true,
};

function linked(
  tool: string,
  quantity: 'torque' | 'length',
  serial: string,
  model: string,
  link: LinkDescription = AUTHENTICATED,
  source: FigureSource = 'linked',
): JobEvent {
  return {
    type: 'tool-linked',
    tool,
    driver: 'measurement-device',
    source: link.kind === 'keyboard' ? 'typed' : source,
    description: {
      quantity,
      unit: quantity === 'torque' ? 'N.m' : 'm',
      exponent: quantity === 'torque' ? -2 : -5,
      maker: 'Example Tools',
      model,
      serial,
      firmware: '1.4.2',
      samplingFunction: 'instantaneous',
      link,
    },
  };
}

function gapEvent(cylinder: number, value: number): JobEvent {
  return {
    type: 'gap-measured',
    tool: 'gauge',
    reading: cylinder,
    atUs: cylinder * 1000,
    source: 'linked',
    cylinder,
    judgement: judge(value, GAP_WINDOW),
  };
}

function pullDetected(pull: number, felt: Partial<Pull> & { readonly peakNm: number }): JobEvent {
  const startUs = pull * 10_000_000;
  return {
    ...A_PULL,
    type: 'pull-detected',
    pull,
    tool: 'wrench',
    source: 'linked',
    startUs,
    endUs: startUs + 1_600_000,
    peakUs: startUs + 1_120_000,
    releaseNm: felt.peakNm * 0.985,
    releaseUs: startUs + 898_000,
    riseMs: 412,
    zeroNm: 0.02,
    samples: 400,
    cut: null,
    ...felt,
  };
}

function pullEvents(pull: number, cylinder: number, peakNm: number, releaseNm: number): JobEvent[] {
  return [
    pullDetected(pull, { peakNm, releaseNm }),
    {
      type: 'pull-placed',
      pull,
      cylinder,
      kind: 'tightening',
      because: 'plug-turned',
      judgement: judge(peakNm, TORQUE_WINDOW),
    },
  ];
}

/** Eight cylinders as hands do them: strokes on the way down, one over the window, a link that was lost, a re-hit. */
export const V8_BY_HAND: JobOptions = {
  firstPull: { 3: 31.42, 6: 24.1 },
  runDowns: { 1: 3, 2: 1, 3: 2, 4: 2, 5: 1, 6: 2, 7: 3, 8: 1 },
  late: [
    { type: 'tool-lost', tool: 'wrench', reason: 'out-of-reach' },
    { type: 'readings-missed', tool: 'wrench', fromUs: 50_000_000, toUs: 51_250_000, reason: 'out-of-reach' },
    pullDetected(30, { peakNm: 28.4, riseMs: 61 }),
    {
      type: 'pull-placed',
      pull: 30,
      cylinder: 8,
      kind: 'rehit',
      because: 'same-plug-again',
      judgement: null,
    },
    { type: 'cylinder-chosen', quantity: 'torque', cylinder: 3 },
  ],
};

/** Sixteen plugs in two banks, all proven. */
export const SIXTEEN: JobOptions = {
  banks: [
    [1, 3, 5, 7, 9, 11, 13, 15],
    [2, 4, 6, 8, 10, 12, 14, 16],
  ],
};

/** Names as long as the work order allows, without a place to break them. */
export const LONG_NAMES: JobOptions = {
  order: {
    technician: 'Wolfeschlegelsteinhausenbergerdorff'.repeat(3).slice(0, 80),
    vehicle: { description: 'X'.repeat(120), plate: 'W'.repeat(20), vin: '1M8GDM9AXKP042788' },
  },
  model: 'M'.repeat(256),
};

/** Names in other scripts, with accents outside Windows-1252, and with marks meant to mislead. */
export const OTHER_SCRIPTS: JobOptions = {
  order: {
    technician: '王小明 / Łukasz Őry',
    vehicle: { description: 'Фургон \u202Egnp.exe\u0000 «Été»', plate: 'Ж 777' },
  },
};

/** Everything that can go out of the ordinary, once each. */
export const TROUBLED: JobOptions = {
  banks: [[1, 2, 3]],
  serial: 'W-9999',
  firstPull: { 2: 31.42 },
  late: [
    { type: 'session-started', session: 2, program: 'plugmark 0.1.0', platform: 'linux' },
    { type: 'cylinder-chosen', quantity: 'torque', cylinder: 3 },
    { type: 'tool-lost', tool: 'wrench', reason: 'out-of-reach' },
    { type: 'readings-missed', tool: 'wrench', fromUs: 50_000_000, toUs: 51_250_000, reason: 'out-of-reach' },
    { type: 'value-not-known', tool: 'gauge', reading: 9, atUs: 1 },
    { type: 'value-not-known', tool: 'gauge', reading: 10, atUs: 2 },
    { type: 'raw-value', tool: 'gauge', atUs: 3, source: '0x2A00', hex: '00ff' },
    pullDetected(5, { peakNm: 26.2, releaseNm: null, releaseUs: null, cut: 'link-lost' }),
    {
      type: 'pull-placed',
      pull: 5,
      cylinder: 3,
      kind: 'unsure',
      because: 'end-missing',
      judgement: null,
    },
    { type: 'question-answered', pull: 5, answer: 'handling' },
    {
      type: 'pull-placed',
      pull: 5,
      cylinder: null,
      kind: 'handling',
      because: 'answered',
      judgement: null,
    },
    pullDetected(6, { peakNm: 28.4, riseMs: 61 }),
    { type: 'pull-placed', pull: 6, cylinder: 3, kind: 'rehit', because: 'same-plug-again', judgement: null },
    pullDetected(7, { peakNm: -14.3, releaseNm: null, releaseUs: null }),
    {
      type: 'pull-placed',
      pull: 7,
      cylinder: 1,
      kind: 'loosening',
      because: 'to-be-backed-out',
      judgement: null,
    },
    linked('wrench', 'torque', 'W-1187', 'TW-60', { kind: 'bluetooth-le', authenticated: false }),
    linked('gauge', 'length', 'G-204', 'PG-1', { kind: 'keyboard', authenticated: false }),
  ],
  close: false,
};
