/** A small invented job on a two-cylinder engine, with keys from published seeds, for the tests of the evidence. */
import { createPrivateKey, type KeyObject } from 'node:crypto';
import { chain, EMPTY_HEAD } from '../../src/evidence/chain.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import type { Signer } from '../../src/evidence/jws.ts';
import type { Draft, LogEntry } from '../../src/evidence/log.ts';
import { sealRecord } from '../../src/evidence/record.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import type { Judgement } from '../../src/metrology/judgement.ts';

export const AT = '2026-03-02T09:30:00.000Z';
export const PROGRAM = { name: 'plugmark', version: '0.1.0' };
export const STATION = 'bay 1';

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

export const station: Signer = { privateKey: stationKey, role: 'station', signedAt: AT };
export const technician: Signer = { privateKey: technicianKey, role: 'technician', signedAt: AT };
export const stranger: Signer = { privateKey: otherKey, role: 'station', signedAt: AT };

export const kidOf = ({ privateKey }: Signer) => thumbprint(publicJwk(privateKey));
export const trusting = (...signers: Signer[]): TrustList => ({
  keys: signers.map((signer) => ({ ...publicJwk(signer.privateKey), kid: kidOf(signer), name: STATION })),
});

export const ok = (value: number, expandedUncertainty: number): Judgement => ({
  result: 'OK',
  side: 'inside',
  grade: 'pass',
  value,
  expandedUncertainty,
  conformanceProbability: 0.999,
});

export const opening = (job = 'WO-1'): JobEventOf<'job-opened'> => ({
  type: 'job-opened',
  order: {
    form: 'plugmark/work-order/1',
    job,
    technician: 'A. Example',
    vehicle: { vin: '11111111111111111', plate: 'EX 100' },
    engine: { banks: [[1, 2]], serviceOrder: [1, 2], headMaterial: 'aluminium' },
    plug: { part: 'EXAMPLE-14', thread: 'M14x1.25', seat: 'gasket', gasket: 'new' },
    specification: {
      torque: '25-30 N·m',
      gap: '0.7-0.8 mm',
      threads: 'dry',
      source: { kind: 'invented-example', title: 'Example sheet' },
    },
  },
  instruments: [
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
  ],
  torqueWindow: {
    unit: 'N.m',
    lowerLimit: 25,
    upperLimit: 30,
    guardBandFactor: 1,
    expandedAtLower: 0.5,
    expandedAtUpper: 0.6,
    acceptLower: 25.5,
    acceptUpper: 29.4,
    decidable: true,
  },
  gapWindow: {
    unit: 'mm',
    lowerLimit: 0.7,
    upperLimit: 0.8,
    guardBandFactor: 1,
    expandedAtLower: 0.01,
    expandedAtUpper: 0.01,
    acceptLower: 0.71,
    acceptUpper: 0.79,
    decidable: true,
  },
  rules: 'plugmark/rules/1',
});

const gap = (cylinder: number): JobEvent => ({
  type: 'gap-measured',
  tool: 'gauge',
  reading: cylinder,
  atUs: cylinder,
  cylinder,
  judgement: ok(0.75, 0.01),
});

const pull = (number: number): JobEvent[] => [
  {
    type: 'pull-found',
    pull: number,
    tool: 'wrench',
    startUs: 10,
    endUs: 20,
    peakNm: 27.43,
    peakUs: 15,
    releaseNm: 27.1,
    releaseUs: 14,
    riseMs: 120.5,
    zeroNm: 0,
    samples: 40,
    cut: null,
  },
  {
    type: 'pull-placed',
    pull: number,
    cylinder: number,
    kind: 'tightening',
    because: 'the cylinder that was due',
    judgement: ok(27.43, 0.55),
  },
];

/** Everything proven, closed. */
export const wholeJob = (job?: string): JobEvent[] => [
  opening(job),
  { type: 'session-started', session: 1, program: 'plugmark 0.1.0', platform: 'test', simulated: false },
  gap(1),
  gap(2),
  ...pull(1),
  ...pull(2),
  { type: 'job-closed', complete: true, open: [] },
];

export const drafts = (events: readonly JobEvent[]): Draft[] =>
  events.map((event) => ({ by: 'A. Example', event }));

/** The events as the first entries of a new log. */
export const logOf = (events: readonly JobEvent[], stream = 'job:WO-1'): LogEntry[] =>
  chain(EMPTY_HEAD, stream, 0, drafts(events), { at: AT, monoUs: 1000 }).map(({ entry }) => entry);

export const seal = (entries: readonly LogEntry[], ...signers: Signer[]): Buffer =>
  sealRecord(
    { program: PROGRAM, station: STATION, entries },
    signers.length === 0 ? [station, technician] : signers,
  );
