/** Records that a station sealed, of many kinds; what is hostile is made from them. */
import { originOf } from '../../../src/evidence/checkpoint.ts';
import { entryHash } from '../../../src/evidence/entry.ts';
import { publicJwk } from '../../../src/evidence/jwk.ts';
import { disclosuresIn, type Signer, withDisclosures } from '../../../src/evidence/jws.ts';
import { treeOf } from '../../../src/evidence/merkle.ts';
import { countersignRecord, openRecord } from '../../../src/evidence/record.ts';
import { sealRecord } from '../../../src/evidence/seal.ts';
import { sharedRecord } from '../../../src/evidence/sharing.ts';
import type { StationEvent } from '../../../src/evidence/station-event.ts';
import { stateSuccession } from '../../../src/evidence/succession.ts';
import type { Command } from '../../../src/job/command.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { USUAL_ROUTINE } from '../../../src/job/routine.ts';
import { eventsOf } from '../../audit/shop.ts';
import { aroundJob } from '../../evidence/around-job.ts';
import { fileOf, jwsOf } from '../../evidence/forge.ts';
import {
  AT,
  keyOfSeed,
  kidOf,
  logOf,
  PROGRAM,
  type SampleLog,
  seal,
  station,
  stationEvents,
  stranger,
  technician,
  wholeJob,
} from '../../evidence/sample-job.ts';
import { typedJobs, typedStation } from '../../evidence/typed-jobs.ts';
import { turningShop } from '../../job/turning-shop.ts';
import { shopWithTwo } from '../../job/two-wrenches.ts';
import { exampleOrder, INSTRUMENTS, workshop } from '../../job/workshop.ts';

/** Two plugs, everything proven, signed by station and technician. */
export const WHOLE = seal(logOf(wholeJob()));

/** The same among entries of other jobs, so that the proof has hashes to show. */
export const AMONG_OTHERS = sealedAmong(logOf(wholeJob()), 40);

function sealedAmong(log: SampleLog, others: number): Buffer {
  const own = [...log.station, ...log.entries].map(entryHash);
  const tree = treeOf([...own, ...Array.from({ length: others }, (_, i) => Buffer.alloc(32, i))]);
  const content = { program: PROGRAM, ...log, log: { tree, size: tree.size } };
  return Buffer.from(sealRecord(content, [station, technician]).bytes);
}

export const countersigner: Signer = {
  privateKey: keyOfSeed('77'.repeat(32)),
  role: 'countersigner',
  signedAt: '2027-01-01T00:00:00.000Z',
};

export const COUNTERSIGNED = unwrapped(countersignRecord(WHOLE, countersigner));

/** Nobody but the station signs; `people` say whether the technician has a key, and what the shop decided. */
const alone = (events: readonly JobEvent[], job: string, ofStation: readonly StationEvent[]) =>
  seal(logOf(events, `job:${job}`, ofStation), station);

/** The key of `stranger` set the log up, and named that of the station. */
const rotation = (
  log = originOf(kidOf(stranger)),
  by = stranger,
  next = station,
): readonly StationEvent[] => [
  { type: 'station-set-up', station: 'bay 1', key: publicJwk(stranger.privateKey) },
  {
    type: 'key-rotated',
    key: publicJwk(station.privateKey),
    statement: stateSuccession({ log, next: publicJwk(next.privateKey), at: AT }, by.privateKey),
  },
  ...stationEvents.slice(1),
];
const rotated = (...how: Parameters<typeof rotation>) =>
  seal(logOf(wholeJob(), 'job:WO-1', rotation(...how)));
export const ROTATED = rotated();
/** A log that is named under the domain of its shop. */
const UNDER_DOMAIN = seal(
  logOf(wholeJob(), 'job:WO-1', [
    { type: 'station-set-up', station: 'bay 1', key: publicJwk(station.privateKey), domain: 'shop.example' },
    ...stationEvents.slice(1),
  ]),
);
/** Statements that name nobody: of another log, by another key, for another key. */
export const WRONGLY_NAMED: Readonly<Record<string, Buffer>> = {
  'of another log': rotated('plugmark/log/other'),
  'by a key that is not the one before': rotated(undefined, technician),
  'for another key': rotated(undefined, undefined, technician),
};

/** With simulated tools, on four plugs. */
const SIMULATED = () => {
  const events = eventsOf({ job: 'S-1', on: '2026-03-02', peaks: [27, 27, 27, 27], source: 'simulated' });
  return alone(events, 'S-1', stationOf(events));
};

/** A station that recorded what a job rests on. */
function stationOf(events: readonly JobEvent[]): readonly StationEvent[] {
  const [opened] = events;
  if (opened?.type !== 'job-opened') throw new Error('no job');
  return [
    ...stationEvents.slice(0, 1),
    { type: 'person-recorded', person: opened.order.technician, key: null },
    ...opened.instruments.map((instrument) => ({ type: 'instrument-recorded' as const, instrument })),
    { type: 'specification-recorded', specification: opened.order.specification },
  ];
}

/** The first plug turned within the limits, the second by hand. */
function byAngle(): Buffer {
  const shop = turningShop({ specification: { torque: '1/2-2/3 turn' }, on: AT.slice(0, 10) });
  shop.stroke(28, (nm) => 7.5 * nm);
  for (const cylinder of [2, 3, 4])
    shop.say({ do: 'fit-by-angle', cylinder, turn: '1/2 turn', why: 'no-room-for-the-wrench' });
  shop.say({ do: 'close' });
  const { job } = shop.bench.state().order;
  return alone(shop.events, job, stationOf(shop.events));
}

/** Two wrenches and two technicians on one engine: told apart by the wrench in hand and by a key, and handed over at last. */
function byTwo(): Buffer {
  const order = exampleOrder(4);
  const toolsOf = [{ tool: 'wrench-2', technician: 'B. Second' }];
  const shop = shopWithTwo({ on: AT.slice(0, 10), toolsOf });
  const say = (command: Command) => shop.give({ kind: 'command', command });
  for (const mm of [0.74, 0.75]) shop.gap(mm);
  say({ do: 'at-work', person: 'C. Third' });
  for (const mm of [0.76, 0.75]) shop.gap(mm);
  shop.pull(27);
  shop.rest();
  shop.second(27.2);
  shop.second(27.4);
  say({ do: 'at-work', person: order.technician });
  shop.second(27.1);
  say({ do: 'hand-over', to: 'C. Third' });
  say({ do: 'close' });
  return alone(shop.events, order.job, stationOf(shop.events));
}

/** The shop has the click tried; somebody passed over it. */
function withoutTrial(): Buffer {
  const order = exampleOrder(4);
  const instruments = INSTRUMENTS.map((one) =>
    one.quantity === 'torque' ? { ...one, type: 'setting' as const } : one,
  );
  const routine = {
    ...USUAL_ROUTINE,
    confirmWindows: false,
    beforeRemoval: [],
    oldPlugs: false,
    newPlugs: false,
  };
  const only = { ...routine, fitting: [], trialClick: true, afterwards: [] };
  const shop = workshop(order, only, instruments, { on: AT.slice(0, 10) });
  for (let i = 0; i < 4; i++) shop.gap(0.75);
  shop.give({ kind: 'command', command: { do: 'skip-trial' } });
  return alone(shop.events, order.job, stationOf(shop.events));
}

const typed = () =>
  Object.entries(typedJobs()).map(
    ([job, events]) => [`a job with every text typed, ${job}`, alone(events, job, typedStation)] as const,
  );

/** By name; each is what its station sealed. */
export const validRecords = (): Readonly<Record<string, Uint8Array>> => ({
  'a whole job': WHOLE,
  'a whole job among others in its log': AMONG_OTHERS,
  'a countersigned one': COUNTERSIGNED,
  'one whose log is named under the domain of the shop': UNDER_DOMAIN,
  'one under a key that the first one named': ROTATED,
  'one with a routine, settled by name and by angle': seal(logOf(aroundJob())),
  'one by an angle in place of a torque': byAngle(),
  'one of two wrenches and several technicians': byTwo(),
  'one whose trial click was passed over': withoutTrial(),
  'one of simulated tools': SIMULATED(),
  'one that was not closed': seal(logOf(wholeJob().slice(0, -1))),
  'one whose technician has a key and did not sign': seal(logOf(wholeJob()), station),
  'one of a shop that does without': alone(wholeJob(), 'WO-1', [
    ...stationEvents,
    { type: 'technicians-decided', technicians: 'do-not-sign' },
  ]),
  'one of a station that was renamed': alone(wholeJob(), 'WO-1', [
    ...stationEvents,
    { type: 'station-renamed', station: 'bay 2' },
  ]),
  ...Object.fromEntries(typed()),
  ...Object.fromEntries(typed().map(([name, bytes]) => [`${name}, without names and plates`, shared(bytes)])),
  ...withheldOneByOne(),
  'one without any text': fileOf(withDisclosures(jwsOf(WHOLE), [])),
  'one with its last text alone': fileOf(
    withDisclosures(jwsOf(WHOLE), disclosuresIn(jwsOf(WHOLE)).slice(-1)),
  ),
});

/** Of a job with every text typed, each text withheld alone: none of them decides anything. */
const withheldOneByOne = () =>
  Object.fromEntries(
    typed().flatMap(([name, bytes]) => {
      const all = disclosuresIn(jwsOf(bytes));
      return all.map((_one, i) => {
        const others = all.filter((_other, j) => j !== i);
        return [`${name}, without its text ${i + 1}`, fileOf(withDisclosures(jwsOf(bytes), others))];
      });
    }),
  );

const shared = (bytes: Buffer) => sharedRecord(unwrapped(openRecord(bytes)), new Set(['person', 'plate']));

function unwrapped<T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!result.ok) throw new Error('a record of the test cannot be read');
  return result.value;
}
