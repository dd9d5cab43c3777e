import type { AttemptRow } from '../../src/audit/attempt.ts';
import { type Setup, setupKey, setupOf, specificationKey } from '../../src/audit/setup.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import type { Decision } from '../../src/job/basis.ts';
import { foldAll } from '../../src/job/fold.ts';
import { judgedBy } from '../../src/job/judging.ts';
import { openJob } from '../../src/job/open.ts';
import type { Adapter } from '../../src/plug/geometry.ts';
import { exampleOrder, INSTRUMENTS } from '../job/workshop.ts';

export const ON = '2026-05-04';

/** What a job with this wrench is opened with: 25 to 30 N·m, 0.7 to 0.8 mm. */
export function setupWith(
  wrench: Instrument,
  given: { readonly adapter?: Adapter; readonly decision?: Decision } = {},
): Setup {
  const { adapter, decision = { rule: { kind: 'guard-band', r: 1 }, grades: false } } = given;
  const order = { ...exampleOrder(4), ...(adapter === undefined ? {} : { adapter }) };
  const gauge = INSTRUMENTS.filter(({ quantity }) => quantity === 'length');
  const opened = openJob(order, [wrench, ...gauge], { on: ON, decision, overrides: [] });
  if (!opened.ok) throw new Error(opened.error.message);
  const state = foldAll(opened.value);
  if (state === null) throw new Error('no job');
  return setupOf(state);
}

/** A pull as it was judged on its day. */
export function pullRow(setup: Setup, readingSi: number, given: Partial<AttemptRow> = {}): AttemptRow {
  const wrench = setup.instruments.find(({ quantity }) => quantity === 'torque');
  if (wrench === undefined) throw new Error('no wrench');
  const { peakStandardSi = null, on = ON } = given;
  const circumstances = { on, adapter: setup.adapter ?? undefined };
  const by = { instrument: wrench, circumstances, window: setup.torqueWindow, rule: setup.decision.rule };
  const judgement = judgedBy(by, readingSi, peakStandardSi);
  return {
    stream: 'job:J-1',
    job: 'J-1',
    seq: 10,
    at: `${on}T09:30:00.000Z`,
    day: on,
    on,
    quantity: 'torque',
    cylinder: 1,
    number: 1,
    tool: wrench.id,
    serial: wrench.serial ?? null,
    certificate: wrench.certificate?.number ?? null,
    technician: 'Technician One',
    kind: 'tightening',
    result: judgement.result,
    side: judgement.side,
    readingSi,
    valueSi: judgement.value,
    expanded: judgement.expandedUncertainty,
    peakStandardSi,
    stage: 'final',
    censored: null,
    first: true,
    last: true,
    early: false,
    held: false,
    part: setup.plug.part,
    lot: null,
    lowerLimit: setup.torqueWindow.lowerLimit,
    upperLimit: setup.torqueWindow.upperLimit,
    specificationKey: specificationKey(setup),
    setupKey: setupKey(setup),
    vin: null,
    plate: 'EXAMPLE 1',
    fleet: null,
    engine: null,
    source: 'linked',
    voided: false,
    open: false,
    ...given,
  };
}

export const setupsOf = (...setups: readonly Setup[]) =>
  new Map(setups.map((setup) => [setupKey(setup), setup]));
