/** Jobs in which every text that a person can type was typed, each of them with MARK in it, and a station with the same. */
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../src/job/order.ts';
import { itemsOf, type ListPhase, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { finishedStudy, startedStudy } from '../audit/study-entries.ts';
import { exampleOrder, handsOn } from '../job/workshop.ts';
import { AT, INSTRUMENTS, station, stranger } from './sample-job.ts';

const [WRENCH, GAUGE] = INSTRUMENTS;
if (WRENCH === undefined || GAUGE === undefined) throw new Error('two instruments');

/** Out of date, so that somebody has to answer for it. */
const OVERDUE: Instrument = {
  ...WRENCH,
  serial: 'W-1',
  certificate: {
    number: 'C-7',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2025-01-15',
    due: '2025-12-31',
    unit: 'N.m',
    points: [10, 60].map((reading) => ({ reading, error: 0.05, expanded: 0.1, k: 2 })),
  },
};
export const TYPED_INSTRUMENTS = [OVERDUE, GAUGE];

const SPECIFICATION: WorkOrder['specification'] = {
  ...exampleOrder(4).specification,
  torque: '27.8-33.4 N·m',
  reduction: { percent: 10, lubricant: 'oiled', setBy: 'MARK set the rule' },
  checkedBy: 'MARK checked the figure',
};

const orderOf = (job: string): WorkOrder =>
  workOrderSchema.parse({
    ...exampleOrder(4),
    job,
    technician: 'MARK technician',
    vehicle: {
      vin: 'MARK0000000000001',
      plate: 'MARK plate',
      description: 'MARK vehicle',
      fleet: 'MARK fleet',
      odometerKm: 7,
    },
    customer: 'MARK customer',
    complaint: 'MARK complaint',
    specification: SPECIFICATION,
  });

const attest = (phase: ListPhase): Command => ({
  do: 'attest',
  phase,
  steps: itemsOf(USUAL_ROUTINE, phase).map(({ id, choices }, i) =>
    i === 0
      ? { item: id, as: 'not-done', why: `MARK why not ${phase}` }
      : { item: id, as: choices?.[0]?.id ?? 'done' },
  ),
});

function openedJob(job: string) {
  const order = orderOf(job);
  const opened = openJob(order, TYPED_INSTRUMENTS, {
    on: AT.slice(0, 10),
    decision: USUAL_DECISION,
    overrides: [{ tool: 'wrench', by: 'MARK supervisor', reason: 'MARK reason of the supervisor' }],
    routine: USUAL_ROUTINE,
  });
  if (!opened.ok) throw new Error(opened.error.message);
  const events: JobEvent[] = [...opened.value];
  const bench = createBench(opened.value.reduce<ReturnType<typeof fold> | null>(fold, null) ?? fail());
  const hands = handsOn(bench, events);
  const say = (command: Command) => {
    const out = hands.give({ kind: 'command', command });
    if (!out.ok) throw new Error(out.error.message);
  };
  hands.give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'test' });
  hands.join();
  say({ do: 'confirm-windows' });
  say(attest('before-removal'));
  const cylinders = order.engine.serviceOrder;
  say({
    do: 'read-old-plugs',
    cylinders,
    condition: 'worn',
    damage: [],
    thread: 'sound',
    note: 'MARK old plugs',
  });
  say({ do: 'check-new-plugs', cylinders, part: order.plug.part, lot: 'LOT-1', differs: [] });
  for (const _ of cylinders) hands.gap(0.75);
  say(attest('fitting'));
  return { events, hands, say };
}

const fail = (): never => {
  throw new Error('no job');
};

/** Two cylinders mixed up, one started again, handed over, and closed with things left open. */
function mixedUp(job: string): readonly JobEvent[] {
  const { events, hands, say } = openedJob(job);
  for (const nm of [27.5, 27.4, 27.6]) hands.pull(nm);
  hands.rest();
  hands.again(27.7);
  say({ do: 'left-out', pull: 4, cylinder: 2, on: 4, why: 'MARK left out' });
  hands.pull(27.5);
  // The first pull behind a jump is confirmed.
  hands.answer('fresh');
  say({ do: 'give-pull', pull: 5, cylinder: 3, why: 'MARK given' });
  say({ do: 'start-again', cylinder: 1, newPlug: false, why: 'MARK started again' });
  say({ do: 'hand-over', to: 'MARK successor' });
  say({ do: 'hand-over', to: 'MARK technician' });
  say({ do: 'close' });
  return events;
}

/** One left over the window by name, the others by angle; closed complete. */
function settled(job: string): readonly JobEvent[] {
  const { events, hands, say } = openedJob(job);
  hands.pull(36);
  say({ do: 'accept', pull: 1, by: 'MARK foreman', reason: 'MARK accepted' });
  for (const cylinder of [2, 3, 4])
    say({ do: 'fit-by-angle', cylinder, turn: '1/2 turn', why: 'MARK by angle' });
  say(attest('afterwards'));
  say({ do: 'close' });
  return events;
}

function voided(job: string): readonly JobEvent[] {
  const { events, say } = openedJob(job);
  say({ do: 'void', by: 'MARK boss', reason: 'MARK voided' });
  return events;
}

export const typedJobs = (): Readonly<Record<string, readonly JobEvent[]>> => ({
  'WO-1': mixedUp('WO-1'),
  'WO-2': settled('WO-2'),
  'WO-3': voided('WO-3'),
});

export const typedStation: readonly StationEvent[] = [
  { type: 'station-set-up', station: 'bay 1', key: publicJwk(stranger.privateKey) },
  { type: 'key-replaced', key: publicJwk(station.privateKey), because: 'MARK lost in the move' },
  {
    type: 'key-revoked',
    kid: thumbprint(publicJwk(stranger.privateKey)),
    from: '2026-01-01T00:00:00.000Z',
    reason: 'lost',
    because: 'MARK revoked',
  },
  { type: 'person-recorded', person: 'MARK technician', key: null },
  { type: 'person-recorded', person: 'MARK successor', key: null },
  ...TYPED_INSTRUMENTS.map((instrument) => ({ type: 'instrument-recorded' as const, instrument })),
  { type: 'specification-recorded', specification: SPECIFICATION },
  {
    ...startedStudy([
      [0, 1, 2],
      [0, 1, 2],
      [0, 1, 2],
      [0, 1, 2],
    ]),
    appraisers: ['MARK Ann', 'MARK Ben'],
  },
  { type: 'gauge-study-dropped', study: 'GS-1', because: 'MARK dropped' },
  {
    ...finishedStudy([
      [
        [1, 1],
        [2, 2],
        [3, 3],
      ],
      [
        [1, 1],
        [2, 2],
        [3, 3],
      ],
    ]),
    study: 'GS-2',
    appraisers: ['MARK Ann', 'MARK Ben'],
  },
  {
    type: 'assessment-made',
    assessment: 'IA-1',
    tool: 'wrench',
    serial: 'W-1',
    asFound: 'AF-1',
    digest: 'a'.repeat(64),
    lastGood: null,
    foundOn: '2026-03-01',
    from: '2026-01-01',
    to: '2026-03-01',
    sources: ['linked'],
    attempts: 1,
    stillIn: 0,
    doubtful: 1,
    out: 0,
    items: [
      {
        job: 'WO-1',
        on: '2026-03-02',
        vin: 'MARK0000000000001',
        plate: 'MARK plate',
        fleet: 'MARK fleet',
        sort: 'doubtful',
        attempts: [
          {
            cylinder: 1,
            quantity: 'torque',
            number: 1,
            source: 'linked',
            sort: 'doubtful',
            was: 27.5,
            value: 27,
            expanded: 0.6,
            lowerLimit: 25,
            upperLimit: 30,
            covered: true,
          },
        ],
      },
    ],
  },
  { type: 'item-decided', assessment: 'IA-1', job: 'WO-1', decision: 'inform', because: 'MARK decided' },
  { type: 'assessment-closed', assessment: 'IA-1', because: 'MARK closed' },
  { type: 'texts-forgotten', texts: [{ entry: 1, text: 0, kind: 'plate' }], because: 'MARK forgotten' },
];
