/** Files appear whole, follow no link that somebody put in their way, and carry the rights that the shop means them to have. */
import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUpLog } from '../../db/backup.ts';
import { newKey, relockKeyFile, writeKeyFile } from '../../db/keyfile.ts';
import { openStationLog } from '../../db/log.ts';
import { recoverLog } from '../../db/recover.ts';
import { bondsIn } from '../../drivers/radio/bonds.ts';
import { adoptInto } from '../../src/cli/station/adopt.ts';
import { writeInPlace, writeNew, writeWhole } from '../../src/files/output.ts';
import { problemOf } from '../cli/answers.ts';
import { exampleJson, folder } from '../cli/program.ts';
import { AT, drafts, stationEvents, wholeJob } from '../evidence/sample-job.ts';

let dir: string;
/** Somebody else's file, which is to stay as it is. */
let victim: string;
beforeEach(() => {
  dir = folder();
  victim = join(dir, 'victim');
  writeFileSync(victim, 'mine');
});
const isUntouched = () => {
  expect(readFileSync(victim, 'utf8')).toBe('mine');
};
const link = (name: string) => {
  symlinkSync(victim, join(dir, name));
  return join(dir, name);
};

async function smallLog(path: string): Promise<void> {
  const log = await openStationLog(path);
  log.appendStation(
    stationEvents.map((event) => ({ by: 'station', event })),
    { at: AT, monoUs: 1 },
  );
  log.append('job:WO-1', drafts(wholeJob('WO-1')), { at: AT, monoUs: 1 });
  log.close();
}

describe('a link in the way of a file', () => {
  it.each(['paper.pdf.part', 'paper.pdf'])('%s is not followed by a paper', (name) => {
    link(name);
    writeWhole(join(dir, 'paper.pdf'), 'new');
    isUntouched();
    expect(lstatSync(join(dir, 'paper.pdf')).isFile()).toBe(true);
    expect(readFileSync(join(dir, 'paper.pdf'), 'utf8')).toBe('new');
  });

  it('is not followed by the list of bonds, the station file, a new record or a key', async () => {
    for (const name of ['bonds.json.part', 'station.json.part', 'key.pem.new']) link(name);
    const bond = { key: '0'.repeat(32), diversifier: '0000', random: '0'.repeat(16) };
    expect(bondsIn(join(dir, 'bonds.json')).keep('c0:00:00:00:00:01', bond).ok).toBe(true);
    const station = join(dir, 'station.json');
    writeFileSync(station, JSON.stringify(exampleJson('station.json')));
    const candidate = {
      address: 'c0:00:00:00:00:02',
      name: 'A wrench',
      kind: 'torque',
      lasting: true,
      services: [],
    };
    await adoptInto(station, { tool: 'wrench' }, candidate, 'EXAMPLE-W-1');
    expect(readFileSync(station, 'utf8')).toContain('c0:00:00:00:00:02');
    const key = newKey();
    expect(writeKeyFile(join(dir, 'key.pem'), key, null).ok).toBe(true);
    expect(relockKeyFile(join(dir, 'key.pem'), key, 'secret').ok).toBe(true);
    expect((await problemOf(() => writeNew(link('new.record.json'), 'x'))).code).toBe('file-not-written');
    expect(writeKeyFile(link('other.pem'), key, null).ok).toBe(false);
    isUntouched();
  });

  it('is not followed by a backup or a recovered log', async () => {
    const log = join(dir, 'station.db');
    await smallLog(log);
    for (const name of ['b.db.part', 'b.db.part-journal', 'r.db']) link(name);
    symlinkSync(join(dir, 'nowhere'), join(dir, 'dangling.db'));
    await backUpLog(log, join(dir, 'b.db'));
    for (const name of ['r.db', 'dangling.db'])
      expect(
        (await problemOf(() => recoverLog(log, { out: join(dir, name), beside: join(dir, 'beside') }, [])))
          .code,
      ).toBe('file-exists');
    expect((await problemOf(() => backUpLog(log, join(dir, 'dangling.db')))).code).toBe('file-exists');
    expect(existsSync(join(dir, 'nowhere'))).toBe(false);
    isUntouched();
  });

  it('is refused where a file is named that may be a pipe; a device is written into', async () => {
    expect(await problemOf(() => writeInPlace(link('note'), 'new'))).toMatchObject({
      code: 'file-not-written',
      message: expect.stringContaining('link'),
    });
    symlinkSync('/dev/null', join(dir, 'null'));
    await writeInPlace(join(dir, 'null'), 'new');
    await writeInPlace('/dev/null', 'new');
    expect(lstatSync(join(dir, 'null')).isSymbolicLink()).toBe(true);
    isUntouched();
  });
});

describe('a file that cannot be finished', () => {
  it('leaves nothing behind, and what had its name before', async () => {
    const path = join(dir, 'taken');
    mkdirSync(path);
    writeFileSync(join(path, 'inside'), 'x');
    expect((await problemOf(() => writeWhole(path, 'new'))).code).toBe('file-system');
    expect(readdirSync(dir).sort()).toEqual(['taken', 'victim']);
  });
});

describe('rights', () => {
  const before = process.umask();
  afterEach(() => void process.umask(before));

  it('of papers and lists for others are what the umask of the shop says, of keys and bonds the owner alone', () => {
    for (const [umask, paper] of [
      [0o022, 0o644],
      [0o027, 0o640],
      [0o002, 0o664],
    ] as const) {
      process.umask(umask);
      writeWhole(join(dir, 'paper'), 'x');
      expect(statSync(join(dir, 'paper')).mode & 0o777).toBe(paper);
      writeWhole(join(dir, 'secret'), 'x', { mode: 0o600 });
      expect(statSync(join(dir, 'secret')).mode & 0o777).toBe(0o600);
    }
    process.umask(0o777);
    writeWhole(join(dir, 'secret'), 'x', { mode: 0o600 });
    expect(statSync(join(dir, 'secret')).mode & 0o777).toBe(0o600);
    chmodSync(dir, 0o700);
  });
});
