/** Invented jobs worked by hands: between them they hold every kind of event that a job can have but those of drivers. */
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { Answer, JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { type Override, openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { itemsOf, type ListPhase, type Routine, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { orThrow } from '../../src/result.ts';
import { exampleOrder, handsOn } from '../job/workshop.ts';
import { TECHNICIAN } from './station.ts';

const CERTIFICATE = {
  number: 'EXAMPLE-1',
  laboratory: 'Example Laboratory',
  serial: 'EXAMPLE-W-1',
  date: '2026-01-12',
  unit: 'N.m' as const,
  points: [5, 20, 40, 60].map((reading) => ({ reading, error: 0.1, expanded: 0.2, k: 2 })),
};
export const WRENCH: Instrument = {
  id: 'wrench',
  quantity: 'torque',
  type: 'setting',
  serial: 'EXAMPLE-W-1',
  resolution: 0.01,
  basis: 'calibration certificate',
  certificate: CERTIFICATE,
  correct: true,
};
export const GAUGE: Instrument = {
  id: 'gauge',
  quantity: 'length',
  serial: 'EXAMPLE-G-1',
  permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  resolution: 0.001,
  basis: 'invented data sheet',
};
/** The wrench while its certificate has run out, so that somebody has to answer for it. */
export const OVERDUE: Instrument = { ...WRENCH, certificate: { ...CERTIFICATE, due: '2026-02-01' } };

interface Opening {
  readonly on: string;
  readonly wrench?: Instrument;
  readonly overrides?: readonly Override[];
  readonly routine?: Routine;
}

/** An order of this shop. */
export function orderOf(job: string, changed: Partial<WorkOrder> = {}): WorkOrder {
  return { ...exampleOrder(4), job, technician: TECHNICIAN, customer: 'Example customer', ...changed };
}

/** The order for two cylinders, which keeps an artefact small. */
const small = (job: string, changed: Partial<WorkOrder> = {}) =>
  orderOf(job, {
    engine: { banks: [[1, 2]], serviceOrder: [1, 2], headMaterial: 'aluminium' },
    ...changed,
  });

function begun(order: WorkOrder, { on, wrench = WRENCH, overrides = [], routine }: Opening) {
  const opened = orThrow(
    openJob(order, [wrench, GAUGE], {
      on,
      decision: USUAL_DECISION,
      overrides,
      ...(routine !== undefined && { routine }),
    }),
  );
  const events: JobEvent[] = [...opened];
  const state = foldAll(opened);
  if (state === null) throw new Error('no job');
  const bench = createBench(state);
  const hands = handsOn(bench, events);
  const say = (command: Command) => {
    orThrow(hands.give({ kind: 'command', command }));
  };
  const attest = (phase: ListPhase) =>
    say({
      do: 'attest',
      phase,
      steps: itemsOf(USUAL_ROUTINE, phase).map(({ id, choices }, i) =>
        i === 0
          ? { item: id, as: 'not-done', why: 'an invented reason' }
          : { item: id, as: choices?.[0]?.id ?? 'done' },
      ),
    });
  hands.give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'golden' });
  hands.join();
  return {
    events,
    hands,
    say,
    attest,
    answer: (answer: Answer, pull: number) => say({ do: 'answer', pull, answer }),
    bench,
  };
}

/** Everything proven. */
export function complete(job: string, on: string): readonly JobEvent[] {
  const { events, hands, say } = begun(orderOf(job), { on });
  for (const mm of [0.75, 0.74, 0.76, 0.75]) hands.gap(mm);
  for (const nm of [27.4, 27.1, 27.6, 27.3]) hands.pull(nm);
  say({ do: 'close' });
  return events;
}

/** The whole routine; an instrument that a supervisor answered for; one plug accepted by name, one fitted by angle. */
export function exceptions(job: string, on: string): readonly JobEvent[] {
  const overrides = [{ tool: 'wrench', by: 'Supervisor One', reason: 'an invented reason' }];
  const order = small(job);
  const { events, hands, say, attest } = begun(order, {
    on,
    wrench: OVERDUE,
    overrides,
    routine: USUAL_ROUTINE,
  });
  say({ do: 'confirm-windows' });
  attest('before-removal');
  hands.rest();
  hands.loosen(19);
  hands.gap(1.12);
  say({ do: 'read-old-plugs', cylinders: [1], condition: 'worn', damage: ['flashover'], thread: 'sound' });
  say({ do: 'read-old-plugs', cylinders: [2], condition: 'normal', damage: [], thread: 'sound' });
  say({ do: 'check-new-plugs', cylinders: [1, 2], part: order.plug.part, lot: 'EXAMPLE-LOT', differs: [] });
  hands.gap(0.75);
  hands.gap(0.74);
  attest('fitting');
  hands.pull(34);
  say({ do: 'accept', pull: 2, by: 'Foreman One', reason: 'an invented reason' });
  say({ do: 'fit-by-angle', cylinder: 2, turn: '1/2 turn', why: 'an invented reason' });
  attest('afterwards');
  say({ do: 'close' });
  return events;
}

/** Strokes that stopped short, a second click, an overpull backed out, a link lost in a pull, questions, a hand-over. */
export function eventful(job: string, on: string): readonly JobEvent[] {
  const { events, hands, say, answer } = begun(orderOf(job), { on });
  for (const mm of [0.74, 0.9, 0.76, 0.75, 0.75]) hands.gap(mm);
  hands.stopShort(19);
  hands.again(27);
  hands.again(27.3);
  hands.pull(32);
  answer('refit', 4);
  hands.loosen(18);
  hands.pull(27);
  hands.pull(27.2);
  say({ do: 'hand-over', to: 'Technician Two' });
  hands.pull(27.5);
  say({ do: 'start-again', cylinder: 1, newPlug: false, why: 'an invented reason' });
  say({ do: 'choose-cylinder', quantity: 'torque', cylinder: 1 });
  hands.pull(27.1);
  say({ do: 'close' });
  return events;
}

/** Closed with one cylinder not done. */
export function incomplete(job: string, on: string): readonly JobEvent[] {
  const { events, hands, say } = begun(small(job), { on });
  hands.gap(0.75);
  hands.gap(0.74);
  hands.pull(27.4);
  say({ do: 'close' });
  return events;
}

export function voided(job: string, on: string): readonly JobEvent[] {
  const { events, hands, say } = begun(small(job), { on });
  hands.gap(0.75);
  hands.gap(0.74);
  hands.pull(27.4);
  hands.pull(27.2);
  say({ do: 'close' });
  say({ do: 'void', by: 'Foreman One', reason: 'an invented reason' });
  return events;
}

/** Two cylinders with two plugs each. */
export function twoPlugs(job: string, on: string): readonly JobEvent[] {
  const order = orderOf(job, {
    engine: {
      banks: [
        [1, 2],
        [3, 4],
      ],
      serviceOrder: [1, 3, 2, 4],
      plugs: [
        { cylinder: 1, plugs: [1, 3] },
        { cylinder: 2, plugs: [2, 4] },
      ],
      headMaterial: 'aluminium',
    },
  });
  const { events, hands, say } = begun(order, { on });
  for (const mm of [0.75, 0.74, 0.76, 0.75]) hands.gap(mm);
  for (const nm of [27.4, 27.1, 27.6, 27.3]) hands.pull(nm);
  say({ do: 'close' });
  return events;
}

/** Tightened, loosened, and tightened again to another torque. */
export function twoStage(job: string, on: string): readonly JobEvent[] {
  const { specification } = exampleOrder(4);
  const order = small(job, {
    specification: { ...specification, tightenFirst: '28-32 N·m', torque: '20-24 N·m' },
  });
  const { events, hands, say } = begun(order, { on });
  hands.gap(0.75);
  hands.gap(0.74);
  for (const _ of [1, 2]) {
    hands.pull(30);
    hands.loosen(20);
    hands.pull(22);
  }
  say({ do: 'close' });
  return events;
}

/** Gaps by wires, a torque that is checked afterwards. */
export function byWire(job: string, on: string): readonly JobEvent[] {
  const { specification } = exampleOrder(4);
  const gapRules = { check: 'wire' as const, wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' } };
  const { events, hands, say } = begun(small(job, { specification: { ...specification, gapRules } }), { on });
  for (const cylinder of [1, 2]) say({ do: 'gap-wire', cylinder, outcome: 'fits' });
  hands.pull(27.4);
  hands.pull(27.2);
  hands.again(27.3);
  say({ do: 'close' });
  return events;
}
