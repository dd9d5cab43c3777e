/** The golden artefacts of an edition: files, and the verdict that each of them must get from every later program. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import { jsonText } from '../../src/cli/terminal/json-text.ts';
import { readCheckpoint } from '../../src/evidence/checkpoint.ts';
import { jwsSchema } from '../../src/evidence/jws.ts';
import { countersignRecord, fileBytes, openRecord, type RecordFault } from '../../src/evidence/record.ts';
import { sharedRecord } from '../../src/evidence/sharing.ts';
import { VERDICTS } from '../../src/evidence/verdict.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { makePackage } from '../../src/package/make.ts';
import { orThrow, type Result } from '../../src/result.ts';
import * as driverJobs from './driver-jobs.ts';
import * as jobs from './jobs.ts';
import { GoldenStation, keyOf, trusted } from './station.ts';

const outcomes = z.record(z.string(), z.enum(['passed', 'doubtful', 'failed', 'not-applicable']));

/** One run of `plugmark verify` on a file or folder of the edition, and what it must say. */
export const expectedSchema = z.strictObject({
  path: z.string(),
  options: z.strictObject({ trust: z.string(), kept: z.string().exactOptional() }),
  exit: z.int(),
  verdict: z.enum(VERDICTS),
  /** All that did not pass; every other check passes. */
  checks: outcomes,
  /** Personal texts that are withheld, by kind. */
  withheld: z.record(z.string(), z.int()),
});
export type Expected = z.infer<typeof expectedSchema>;

export const EXPECTED_FILE = 'expected.json';
const TRUST = 'trusted-keys.json';
const STRANGERS = 'strangers-keys.json';

interface Artefacts {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly expected: readonly Expected[];
}

const AUTHENTIC = { exit: 0, verdict: 'authentic', checks: {}, withheld: {} } as const;
const NOT_COMPLETE = {
  ...AUTHENTIC,
  exit: 1,
  verdict: 'incomplete',
  checks: { completeness: 'failed' },
} as const;

const NOT_PROVEN = { ...AUTHENTIC, exit: 1, verdict: 'unproven' } as const;

/** In order of the log; those behind `rotated` are signed by the second key. */
const JOBS: readonly {
  readonly job: string;
  readonly make: (job: string, on: string) => readonly JobEvent[] | Promise<readonly JobEvent[]>;
  readonly technicianSigns?: false;
  readonly expected: Omit<Expected, 'path' | 'options'>;
}[] = [
  { job: 'complete', make: jobs.complete, expected: AUTHENTIC },
  { job: 'exceptions', make: jobs.exceptions, expected: AUTHENTIC },
  // Who it was handed over to has no key.
  { job: 'eventful', make: jobs.eventful, technicianSigns: false, expected: AUTHENTIC },
  { job: 'incomplete', make: jobs.incomplete, expected: NOT_COMPLETE },
  { job: 'void', make: jobs.voided, expected: NOT_COMPLETE },
  { job: 'two-plugs', make: jobs.twoPlugs, expected: AUTHENTIC },
  { job: 'two-stage', make: jobs.twoStage, expected: AUTHENTIC },
  { job: 'by-wire', make: jobs.byWire, expected: AUTHENTIC },
  { job: 'simulated', make: driverJobs.simulated, expected: NOT_PROVEN },
  { job: 'over-the-air', make: driverJobs.overTheAir, expected: NOT_PROVEN },
  { job: 'profile-and-typed', make: driverJobs.profileAndTyped, expected: NOT_PROVEN },
  { job: 'replayed', make: driverJobs.replayed, expected: NOT_PROVEN },
];

/** Writes the artefacts of the open edition into a folder; returns how many bytes they take. */
export async function writeArtefacts(folder: string): Promise<number> {
  const { files, expected } = await artefacts();
  const whole = new Map(files).set(EXPECTED_FILE, Buffer.from(jsonText(expected)));
  for (const [path, bytes] of whole) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
  return [...whole.values()].reduce((sum, { length }) => sum + length, 0);
}

async function artefacts(): Promise<Artefacts> {
  const files = new Map<string, Uint8Array>();
  const expected: Expected[] = [];
  const add = (path: string, bytes: Uint8Array) => void files.set(path, bytes);
  const expect = (
    path: string,
    what: Omit<Expected, 'path' | 'options'>,
    options: Partial<Expected['options']> = {},
  ) => expected.push({ path, options: { trust: TRUST, ...options }, ...what });

  const station = new GoldenStation();
  const trust = {
    keys: [
      trusted(station.key, 'Example bay'),
      trusted(keyOf('the foreman'), 'Foreman One', 'countersigner'),
    ],
  };
  add(TRUST, Buffer.from(jsonText(trust)));
  add(STRANGERS, Buffer.from(jsonText({ keys: [trusted(keyOf('a stranger'), 'Stranger')] })));

  for (const { job, make, technicianSigns = true, expected: verdict } of JOBS) {
    station.work(job, await make(job, station.today));
    const file = `${job}.record.json`;
    add(file, station.seal(job, { technicianSigns }));
    expect(file, verdict);
  }
  add('kept.checkpoint', Buffer.from(station.checkpoint()));

  const complete = files.get('complete.record.json') ?? new Uint8Array();
  expect(
    'complete.record.json',
    { ...AUTHENTIC, exit: 3, verdict: 'untrusted', checks: { signer: 'failed' } },
    { trust: STRANGERS },
  );
  add(
    'countersigned.record.json',
    orThrowFault(
      countersignRecord(complete, { privateKey: keyOf('the foreman'), signedAt: '2026-03-20T10:00:00.000Z' }),
    ),
  );
  expect('countersigned.record.json', AUTHENTIC);
  add(
    'withheld.record.json',
    sharedRecord(orThrowFault(openRecord(complete)), new Set(['plate', 'vin', 'customer'])),
  );
  expect('withheld.record.json', { ...AUTHENTIC, withheld: { plate: 1, vin: 1, customer: 1 } });
  add('content-changed.record.json', contentChanged(complete));
  expect('content-changed.record.json', {
    ...AUTHENTIC,
    exit: 1,
    verdict: 'rejected',
    checks: { signatures: 'failed', signer: 'failed' },
  });

  station.rotateKey();
  station.work('after-rotation', jobs.complete('after-rotation', station.today));
  add('after-rotation.record.json', station.seal('after-rotation'));
  expect('after-rotation.record.json', AUTHENTIC);

  station.work('judged-otherwise', peakRaised(jobs.complete('judged-otherwise', station.today)));
  add('judged-otherwise.record.json', station.seal('judged-otherwise'));
  expect('judged-otherwise.record.json', {
    ...AUTHENTIC,
    exit: 1,
    verdict: 'rejected',
    checks: { 'judged again': 'failed' },
  });

  await addPackage(
    station,
    JOBS.slice(0, 5).map(({ job }) => job),
    files,
  );
  expect('package', AUTHENTIC, { kept: 'kept.checkpoint' });
  add('other-log.checkpoint', Buffer.from(new GoldenStation('the other station').checkpoint()));
  expect(
    'package',
    { ...AUTHENTIC, exit: 1, verdict: 'rejected', checks: { since: 'failed' } },
    { kept: 'other-log.checkpoint' },
  );
  return { files, expected };
}

/** What a dishonest station could write: a pull's highest torque is not what its samples give. */
const peakRaised = (events: readonly JobEvent[]): readonly JobEvent[] =>
  events.map((event) =>
    event.type === 'pull-detected' && event.pull === 2 ? { ...event, peakNm: event.peakNm + 0.5 } : event,
  );

/** The same signatures over another content: the version of the program that sealed it. */
function contentChanged(record: Uint8Array): Uint8Array {
  const { payload, ...rest } = jwsSchema.parse(JSON.parse(Buffer.from(record).toString('utf8')));
  const text = Buffer.from(payload, 'base64url').toString('utf8');
  const changed = text.replace('"version":"0.1.0"', '"version":"0.1.1"');
  if (changed === text) throw new Error('nothing changed');
  return fileBytes({ payload: Buffer.from(changed).toString('base64url'), ...rest });
}

/** As `plugmark package` makes it, with the records that were sealed before; without papers. */
async function addPackage(station: GoldenStation, given: readonly string[], files: Map<string, Uint8Array>) {
  const checkpoint = station.checkpoint();
  await makePackage(
    {
      station: station.state(),
      key: station.key,
      log: { tree: station.tree(), entries: station.entries, stationEntries: station.stationEntries },
      checkpoint,
      cosigned: null,
      trustList: files.get(TRUST) ?? new Uint8Array(),
      recordsBefore: (job) => [files.get(`${job}.record.json`) ?? new Uint8Array()],
    },
    { write: async (path, content) => void files.set(`package/${path}`, content) },
    {
      purpose: 'audit',
      asked: {},
      jobs: given.map((job) => ({ stream: `job:${job}`, job, state: 'complete' })),
      since: orThrow(
        readCheckpoint(Buffer.from(files.get('kept.checkpoint') ?? '').toString(), 'kept.checkpoint'),
      ),
      without: new Set(),
      stationEntries: station.stationEntries(),
      drawPapers: null,
      extra: async () => [['jobs.csv', Buffer.from('job\r\n')]],
    },
    { at: '2026-03-25T10:00:00.000Z', version: '0.1.0', progress: () => ({ at: () => {}, end: () => {} }) },
  );
}

function orThrowFault<T>(result: Result<T, RecordFault>): T {
  if (result.ok) return result.value;
  throw new Error(result.error.problem.message);
}
