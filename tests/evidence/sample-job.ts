/** A small invented job on a two-cylinder engine, made by a bench, with keys from published seeds, for the tests of the evidence. */
import { createPrivateKey, type KeyObject } from 'node:crypto';
import { entryHash, isJobEntry, isStationEntry, written } from '../../src/evidence/entry.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import type { Signer } from '../../src/evidence/jws.ts';
import { type Draft, type LogEntry, STATION_STREAM, type StationEntry } from '../../src/evidence/log.ts';
import { treeOf } from '../../src/evidence/merkle.ts';
import { sealRecord } from '../../src/evidence/seal.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import { writerOf } from '../../src/job/command-event.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { workOrderSchema } from '../../src/job/order.ts';
import { decodeSamples } from '../../src/pull/trace.ts';
import { handsOn } from '../job/workshop.ts';
import { salts } from './entries.ts';

export const AT = '2026-03-02T09:30:00.000Z';
export const PROGRAM = { name: 'plugmark', version: '0.1.0' };
export const STATION = 'bay 1';
export const TECHNICIAN = 'A. Example';

/** An Ed25519 key from its 32-byte seed: the PKCS#8 frame of RFC 8410 around it. */
export function keyOfSeed(seedHex: string): KeyObject {
  const der = Buffer.concat([
    Buffer.from('302e020100300506032b657004220420', 'hex'),
    Buffer.from(seedHex, 'hex'),
  ]);
  return createPrivateKey({ key: der, format: 'der', type: 'pkcs8' });
}

// Seeds 1 to 3 of RFC 8032, 7.1: public, and therefore good for nothing but tests.
const stationKey = keyOfSeed('9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60');
const technicianKey = keyOfSeed('4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb');
const otherKey = keyOfSeed('c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7');

export const station: FileSigner = { privateKey: stationKey, role: 'station', signedAt: AT };
export const technician: FileSigner = { privateKey: technicianKey, role: 'technician', signedAt: AT };
export const stranger: FileSigner = { privateKey: otherKey, role: 'station', signedAt: AT };

/** Whose key lies in memory. */
interface FileSigner extends Signer {
  readonly privateKey: KeyObject;
}

export const kidOf = ({ privateKey }: Signer) => thumbprint(publicJwk(privateKey));
export const trusting = (...signers: Signer[]): TrustList => ({
  keys: signers.map((signer) => ({ ...publicJwk(signer.privateKey), kid: kidOf(signer), name: STATION })),
});

export const INSTRUMENTS: readonly Instrument[] = [
  {
    id: 'wrench',
    quantity: 'torque',
    permissibleDeviation: { kind: 'relative', percent: 2 },
    resolution: 0.01,
    basis: 'example',
  },
  {
    id: 'gauge',
    quantity: 'length',
    permissibleDeviation: { kind: 'absolute', amount: 0.01 },
    resolution: 0.001,
    basis: 'example',
  },
];

const orderOf = (job: string) =>
  workOrderSchema.parse({
    form: 'plugmark/work-order/1',
    job,
    technician: TECHNICIAN,
    vehicle: { vin: '11111111111111111', plate: 'EX 100' },
    engine: { banks: [[1, 2]], serviceOrder: [1, 2], headMaterial: 'aluminium' },
    plug: { part: 'EXAMPLE-14', thread: 'M14x1.25', seat: 'gasket', gasket: 'new' },
    specification: {
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: { kind: 'invented-example', title: 'Example sheet' },
    },
  });

export function opening(job = 'WO-1'): JobEventOf<'job-opened'> {
  const opened = openJob(orderOf(job), INSTRUMENTS, {
    on: AT.slice(0, 10),
    decision: USUAL_DECISION,
    overrides: [],
  });
  if (!opened.ok) throw new Error(opened.error.message);
  return opened.value[0];
}

/** Nothing on the wrench, for as long as it takes to go to another plug. */
const WALK = [
  { atMs: 0, nm: 0 },
  { atMs: 8000, nm: 0 },
];

/** A job worked by hands that get everything right, with tools that join as `join` has it. */
export function worked(
  job: string,
  join: (hands: ReturnType<typeof handsOn>) => void = (hands) => hands.join(),
): JobEvent[] {
  const opened = opening(job);
  const events: JobEvent[] = [opened];
  const bench = createBench(fold(null, opened));
  const hands = handsOn(bench, events);
  hands.give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'test' });
  join(hands);
  for (const mm of [0.75, 0.74]) hands.gap(mm);
  for (const nm of [27.4, 27.1]) {
    hands.draw(WALK);
    hands.pull(nm);
  }
  hands.give({ kind: 'command', command: { do: 'close' } });
  return events;
}

const jobs = new Map<string, JobEvent[]>();
/** Everything proven, closed. */
export function wholeJob(job = 'WO-1'): JobEvent[] {
  const events = jobs.get(job) ?? worked(job);
  jobs.set(job, events);
  return [...events];
}

export const drafts = (events: readonly JobEvent[]): Draft[] =>
  events.map((event) => ({ by: writerOf(event), event }));

/** What a station records before its first job. */
export const stationEvents: readonly StationEvent[] = [
  { type: 'station-set-up', station: STATION, key: publicJwk(stationKey) },
  { type: 'person-recorded', person: TECHNICIAN, key: publicJwk(technicianKey) },
  ...INSTRUMENTS.map((instrument) => ({ type: 'instrument-recorded' as const, instrument })),
  { type: 'specification-recorded', specification: orderOf('WO-1').specification },
];

/** A log as lists: the station's stream and those of jobs, in the order in which they were written. */
export interface SampleLog {
  readonly station: readonly StationEntry[];
  readonly entries: readonly LogEntry[];
}

const EARLIER = '2026-03-02T08:00:00.000Z';

/** The events as entries behind those of the station; each stamped when its last sample had come. */
export function logOf(
  events: readonly JobEvent[],
  stream = 'job:WO-1',
  ofStation: readonly StationEvent[] = stationEvents,
): SampleLog {
  const salt = salts();
  const first = written(
    { seq: 0, n: 0 },
    STATION_STREAM,
    ofStation.map((event) => ({ by: 'station', event })),
    { at: EARLIER, monoUs: 0 },
    salt,
  );
  let monoUs = 1000;
  const entries = events.flatMap((event, i) => {
    monoUs = Math.max(monoUs, lastSampleUs(event));
    const at = new Date(Date.parse(AT) + monoUs / 1000).toISOString();
    return written({ seq: first.length + i, n: i }, stream, drafts([event]), { at, monoUs }, salt);
  });
  return {
    station: first.map(({ entry }) => entry).filter(isStationEntry),
    entries: entries.map(({ entry }) => entry).filter(isJobEntry),
  };
}

function lastSampleUs(event: JobEvent): number {
  if ('atUs' in event) return event.atUs;
  if ('toUs' in event) return event.toUs;
  const samples = event.type === 'readings' ? decodeSamples(event) : null;
  return samples?.ok === true ? (samples.value.atUs.at(-1) ?? 0) : 0;
}

/** Seals whatever the log holds, as a station would that wrote just this. */
export function seal(log: SampleLog, ...signers: Signer[]): Buffer {
  const all = [...log.station, ...log.entries].sort((a, b) => a.seq - b.seq);
  const tree = treeOf(all.map(entryHash));
  const content = { program: PROGRAM, ...log, log: { tree, size: tree.size } };
  return Buffer.from(sealRecord(content, signers.length === 0 ? [station, technician] : signers).bytes);
}
