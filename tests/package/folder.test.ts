/** A package made and verified in memory: all that the room needs of a disk, a clock or a key comes in. */
import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { passed } from '../../src/evidence/check.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { stationOf } from '../../src/evidence/station.ts';
import { findingOf } from '../../src/package/finding.ts';
import { type FolderToRead, type FolderToWrite, put } from '../../src/package/folder.ts';
import { paperPath } from '../../src/package/format.ts';
import { type Contents, makePackage } from '../../src/package/make.ts';
import { verifyPackage } from '../../src/package/verify.ts';
import { ProblemError } from '../../src/problem.ts';
import { recordOf, signedAnew } from '../evidence/forge.ts';
import { AT, logOf, seal, station, stranger, trusting, wholeJob } from '../evidence/sample-job.ts';

const NOW = '2026-03-05T08:00:00.000Z';
const log = logOf(wholeJob());
const all = [...log.station, ...log.entries];
const tree = treeOf(all.map(entryHash));
const state = stationOf(log.station);
if (state === null) throw new Error('no station');
const checkpoint = signCheckpoint(
  { origin: state.origin, size: tree.size, root: treeRoot(tree, tree.size) },
  station.privateKey,
);
const JOB = { stream: 'job:WO-1', job: 'WO-1', state: 'complete' } as const;
const silent = () => ({ at: () => {}, end: () => {} });

const inMemory = (files: Map<string, Uint8Array>): FolderToRead & FolderToWrite => {
  const bytesOf = (path: string) => {
    const bytes = files.get(path);
    if (bytes !== undefined) return bytes;
    throw new ProblemError({ code: 'file-unreadable', where: path, message: 'no such file', next: '-' });
  };
  return {
    read: async (path) => bytesOf(path),
    list: () => [...files].map(([path, { length }]) => ({ path, bytes: length, isPlain: true })),
    digest: async (path) => createHash('sha256').update(bytesOf(path)).digest('hex'),
    write: async (path, content) => void files.set(path, content),
  };
};

describe('a package', () => {
  const files = new Map<string, Uint8Array>();
  const folder = inMemory(files);
  const make = (given: Partial<Contents> = {}, before: readonly Uint8Array[] = []) =>
    makePackage(
      {
        station: state,
        key: station.privateKey,
        log: { tree, entries: () => log.entries, stationEntries: () => log.station },
        checkpoint,
        cosigned: null,
        trustList: Buffer.from('{"keys":[]}'),
        recordsBefore: () => before,
      },
      folder,
      {
        purpose: 'audit',
        asked: {},
        jobs: [JOB],
        since: null,
        without: new Set(),
        stationEntries: log.station,
        drawPapers: null,
        extra: async () => [['jobs.csv', Buffer.from('job\r\n')]],
        ...given,
      },
      { at: NOW, version: '0.1.0', progress: silent },
    );
  const bytesAt = (path: string) => files.get(path) ?? Buffer.alloc(0);
  const verified = (
    trust = trusting(station),
    kept: string | null = null,
    recordAt = bytesAt,
    readAt = NOW,
  ) => {
    const note = kept === null ? null : readCheckpoint(kept, 'kept');
    return verifyPackage(folder, {
      trust,
      policy: null,
      trustFault: null,
      kept: note?.ok === true ? note.value : null,
      progress: silent,
      readAt,
      checkReadings: async () => passed('papers', () => 'Not looked at here.'),
      verifyRecords: async (paths, take) =>
        take(paths.map((path) => findingOf(path, recordAt(path), trust, NOW))),
    });
  };
  const failedNames = async () =>
    (await verified()).checks.flatMap(({ name, outcome }) => (outcome === 'failed' ? [name] : []));
  beforeEach(() => files.clear());

  it('with a record that only a newer version can read is neither called whole nor forged', async () => {
    await make();
    const bytes = bytesAt('records/WO-1.record.json');
    const newer = signedAnew({ ...recordOf(bytes), form: 'plugmark/record/2' }, station);
    const report = await verified(trusting(station), null, () => newer);
    expect(report.verdict).toBe('newer');
    expect(report.checks).toContainEqual(
      expect.objectContaining({ name: 'records', outcome: 'not-applicable' }),
    );
  });

  it('is whole, and carries the time and the version that came in', async () => {
    const index = await make();
    expect(index).toMatchObject({ at: NOW, program: 'plugmark 0.1.0', station: state.name, leftOut: [] });
    expect([...files.keys()].at(-1)).toBe('index.json');
    expect(await failedNames()).toEqual([]);
    expect(await verified()).toMatchObject({
      verdict: 'authentic',
      held: false,
      unproven: { simulated: 0, replayed: 0, typed: 0 },
    });
    expect((await verified(trusting(station), checkpoint)).held).toBe(true);
  });

  it('is the same, byte for byte, from the same log, key and time', async () => {
    await make();
    const first = new Map(files);
    files.clear();
    await make();
    expect([...files].map(([path, bytes]) => [path, Buffer.from(bytes).toString('base64')])).toEqual(
      [...first].map(([path, bytes]) => [path, Buffer.from(bytes).toString('base64')]),
    );
  });

  it('takes the record that was sealed before, and none that another station sealed', async () => {
    const before = seal(log);
    const index = await make({}, [seal(log, stranger), Buffer.from('no record'), before]);
    expect(Buffer.from(files.get(index.jobs[0]?.record ?? '') ?? []).equals(before)).toBe(true);
    expect((await verified()).verdict).toBe('authentic');
  });

  it('seals the job itself, under the time that came in, where no record is left', async () => {
    const index = await make({}, [seal(log, stranger)]);
    const record = files.get(index.jobs[0]?.record ?? '') ?? Buffer.alloc(0);
    const { signatures } = JSON.parse(Buffer.from(record).toString('utf8'));
    expect(JSON.parse(Buffer.from(signatures[0].protected, 'base64url').toString('utf8')).signedAt).toBe(NOW);
    expect(NOW).not.toBe(AT);
  });

  it('leaves out a job that is open, and says so', async () => {
    const { jobs, leftOut } = await make({ jobs: [{ ...JOB, state: 'open' }] });
    expect(jobs).toEqual([]);
    expect(leftOut).toEqual([{ job: 'WO-1', because: 'still-open' }]);
  });

  it('lists papers that somebody else drew', async () => {
    const index = await make({
      drawPapers: async (jobs, take) => {
        for (const job of jobs) take([await put(folder, paperPath(job), Buffer.from('%PDF-'))]);
      },
    });
    expect(index.jobs[0]?.paper).toBe('papers/WO-1.pdf');
    expect(index.files.map(({ path }) => path)).toContain('papers/WO-1.pdf');
    expect(await failedNames()).toEqual([]);
  });

  it.each<[string, () => void, string[]]>([
    ['a list was changed', () => files.set('jobs.csv', Buffer.from('jab\r\n')), ['files']],
    ['a file was added', () => files.set('note.txt', Buffer.from('x')), ['files']],
    ['the record is gone', () => files.delete('records/WO-1.record.json'), ['files', 'records']],
    ['the proofs are gone', () => files.delete('proofs.json'), ['signatures', 'files', 'log']],
    ['the signature is gone', () => files.delete('index.jws'), ['signatures', 'signer']],
  ])('is rejected where %s', async (_, tamper, failed) => {
    await make();
    tamper();
    expect(await failedNames()).toEqual(failed);
    expect((await verified()).verdict).toBe('rejected');
  });

  it('is whole and not trusted for a reader who does not trust the station', async () => {
    await make();
    expect((await verified(trusting(stranger))).verdict).toBe('untrusted');
  });

  it('without its index is no package, and the reader learns which file is missing', async () => {
    await make();
    files.delete('index.json');
    await expect(verified()).rejects.toMatchObject({ problem: { where: 'index.json' } });
  });
});
