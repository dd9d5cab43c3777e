/** No text that a person typed is signed, hashed into the log, or stored with it, in any job: all of them are beside it. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entryTable } from '../../db/entries.ts';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { askedFor } from '../../src/cli/evidence/package.ts';
import { signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { personalTexts } from '../../src/evidence/entry.ts';
import { disclosuresIn, withDisclosures } from '../../src/evidence/jws.ts';
import type { AnyEntry } from '../../src/evidence/log.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { sealRecord } from '../../src/evidence/seal.ts';
import { stationOf } from '../../src/evidence/station.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { writerOf } from '../../src/job/command-event.ts';
import { makePackage } from '../../src/package/make.ts';
import { personalKindSchema } from '../../src/personal.ts';
import { fileOf, jwsOf } from '../evidence/forge.ts';
import { AT, PROGRAM, station, trusting } from '../evidence/sample-job.ts';
import { typedJobs, typedStation } from '../evidence/typed-jobs.ts';

const jobs = typedJobs();
const stamp = { at: AT, monoUs: 9e9 };
let folder: string;
let path: string;
let log: StationLogFile;
let records: ReadonlyMap<string, Uint8Array>;
let all: readonly AnyEntry[];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'typed-'));
  path = join(folder, 'station.db');
  log = await openStationLog(path);
  log.appendStation(
    typedStation.map((event, i) => ({ by: i % 2 === 0 ? 'station' : 'MARK clerk', event })),
    stamp,
  );
  for (const [job, events] of Object.entries(jobs))
    log.append(
      `job:${job}`,
      events.map((event) => ({ by: writerOf(event), event })),
      stamp,
    );
  all = [...log.stationEntries(), ...log.streams().flatMap((stream) => log.entries(stream))];
  records = new Map(
    Object.keys(jobs).map((job) => [
      job,
      sealRecord(
        {
          program: PROGRAM,
          station: log.stationEntries(),
          entries: log.entries(`job:${job}`),
          log: { tree: log.tree, size: log.size() },
        },
        [station],
      ).bytes,
    ]),
  );
});
afterAll(() => {
  log.close();
  rmSync(folder, { recursive: true });
});

const verified = (bytes: Uint8Array) => {
  const { verdict, checks } = verifyRecord(bytes, trusting(station));
  return { verdict, failed: checks.filter(({ outcome }) => outcome === 'failed').map(({ name }) => name) };
};

describe('what a person typed', () => {
  it('is in these jobs in every event that can hold it, and of every kind', () => {
    const texts = all.flatMap(personalTexts);
    expect(texts.length).toBeGreaterThan(60);
    expect(texts.filter(({ text }) => !text.includes('MARK'))).toEqual([]);
    expect(new Set(texts.map(({ kind }) => kind))).toEqual(new Set(personalKindSchema.options));
    const types = new Set(
      all
        .filter((entry) => personalTexts(entry).some(({ place }) => place[0] === 'event'))
        .map(({ event }) => event.type),
    );
    expect([...types].sort()).toEqual([
      'assessment-closed',
      'assessment-made',
      'cylinder-left-out',
      'cylinder-restarted',
      'fitted-by-angle',
      'gauge-study-dropped',
      'gauge-study-finished',
      'gauge-study-started',
      'instrument-overridden',
      'item-decided',
      'job-handed-over',
      'job-opened',
      'job-voided',
      'key-replaced',
      'key-revoked',
      'old-plugs-read',
      'person-recorded',
      'pull-accepted',
      'pull-given',
      'specification-recorded',
      'steps-attested',
      'texts-forgotten',
    ]);
  });

  it('is in no body of the table of entries', () => {
    const db = new Sqlite(path, { readonly: true });
    const bodies = [...entryTable(db).all()].map(({ body }) => body?.toString('utf8') ?? 'MARK: no body');
    db.close();
    expect(bodies).toHaveLength(all.length);
    expect(bodies.filter((body) => body.includes('MARK'))).toEqual([]);
  });

  it.each(Object.keys(jobs))('is not in what is signed of the record of %s, and travels beside it', (job) => {
    const jws = jwsOf(records.get(job) ?? Buffer.alloc(0));
    expect(Buffer.from(jws.payload, 'base64url').toString('utf8')).not.toContain('MARK');
    for (const { protected: head } of jws.signatures)
      expect(Buffer.from(head, 'base64url').toString('utf8')).not.toContain('MARK');
    const texts = disclosuresIn(jws).map((one) => Buffer.from(one, 'base64url').toString('utf8'));
    expect(texts.length).toBeGreaterThan(10);
    expect(texts.filter((text) => !text.includes('MARK'))).toEqual([]);
  });

  it.each(Object.keys(jobs))('makes no difference to the verdict on the record of %s', (job) => {
    const bytes = records.get(job) ?? Buffer.alloc(0);
    const jws = jwsOf(bytes);
    const texts = disclosuresIn(jws);
    const whole = verified(bytes);
    expect(whole.verdict).toBe(job === 'WO-2' ? 'authentic' : 'incomplete');
    const without = [[], texts.slice(1), ...texts.map((_, i) => texts.filter((_one, j) => j !== i))];
    for (const some of without) expect(verified(fileOf(withDisclosures(jws, some)))).toEqual(whole);
    const none = openRecord(fileOf(withDisclosures(jws, [])));
    expect(none.ok && JSON.stringify(none.value.record)).not.toContain('MARK');
  });

  it('is in no file of a package that is signed or proven', async () => {
    const files = new Map<string, Uint8Array>();
    const state = stationOf(log.stationEntries());
    if (state === null) throw new Error('no station');
    const size = log.size();
    await makePackage(
      {
        station: state,
        key: station.privateKey,
        log,
        checkpoint: signCheckpoint(
          { origin: state.origin, size, root: treeRoot(log.tree, size) },
          station.privateKey,
        ),
        cosigned: null,
        trustList: Buffer.from('{"keys":[]}'),
        recordsBefore: () => [],
      },
      { write: async (name, content) => void files.set(name, content) },
      {
        purpose: 'audit',
        asked: askedFor({
          vin: 'MARK0000000000001',
          plate: 'MARK plate',
          technician: 'MARK technician',
          from: '2026-01-01',
        }),
        jobs: Object.keys(jobs).map((job) => ({ stream: `job:${job}`, job, state: 'complete' })),
        since: null,
        stationEntries: log.stationEntries(),
        without: new Set(),
        drawPapers: null,
        extra: async () => [],
      },
      { at: AT, version: '0.1.0', progress: () => ({ at: () => {}, end: () => {} }) },
    );
    const text = (name: string) => Buffer.from(files.get(name) ?? []).toString('utf8');
    for (const name of ['index.json', 'index.jws', 'proofs.json', 'log.checkpoint'])
      expect(text(name), name).not.toContain('MARK');
    expect(JSON.parse(text('index.json')).asked).toEqual({
      vin: null,
      plate: null,
      technician: null,
      from: '2026-01-01',
    });
    const own = JSON.parse(text('station-entries.json'));
    expect(JSON.stringify(own.entries)).not.toContain('MARK');
    expect(own.disclosures.length).toBeGreaterThan(10);
    for (const job of Object.keys(jobs)) {
      const { payload } = jwsOf(Buffer.from(files.get(`records/${job}.record.json`) ?? []));
      expect(Buffer.from(payload, 'base64url').toString('utf8')).not.toContain('MARK');
    }
  });

  it('can be forgotten whole: log, checkpoints and every verdict hold, and nothing of it is in the file', () => {
    const [size, root] = [log.size(), treeRoot(log.tree, log.size())];
    const texts = [...log.texts()];
    expect(texts).toHaveLength(all.flatMap(personalTexts).length);
    const places = texts.map(({ entry, text, kind }) => ({ entry, text, kind }));
    log.forget(texts, { by: 'station', event: { type: 'texts-forgotten', texts: places } }, stamp);
    expect(log.sweep()).toBe('done');
    expect(log.checkAll()).toEqual({ fault: null, texts: [] });
    expect(treeRoot(log.tree, size)).toEqual(root);
    for (const end of ['', '-wal'])
      expect(readFileSync(`${path}${end}`).toString('latin1'), end).not.toContain('MARK');
    for (const [job, bytes] of records) {
      const content = {
        program: PROGRAM,
        station: log.stationEntries(),
        entries: log.entries(`job:${job}`),
        log: { tree: log.tree, size: log.size() },
      };
      expect(verified(sealRecord(content, [station]).bytes), job).toEqual(verified(bytes));
    }
    expect(log.history.attemptsOf({}).length).toBeGreaterThan(0);
  });
});
