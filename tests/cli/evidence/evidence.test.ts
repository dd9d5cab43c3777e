/** The commands that keep evidence, run as a user runs them on the station of the demo. */
import { execFileSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { readCheckpoint } from '../../../src/evidence/checkpoint.ts';
import { inclusionHolds } from '../../../src/evidence/merkle.ts';
import { withoutRules, withPlain } from '../../db/plain.ts';
import { slowly } from '../answers.ts';

let folder: string;
/** The station as the first job left it; every test works on a copy. */
let original: string;
let said: string;
const NAME = 'EX-4001-1.record.json';
const at = (...names: string[]) => join(folder, ...names);

async function run(...args: string[]): Promise<number> {
  said = '';
  return await main(['node', 'plugmark', ...args]);
}
const onStation = (...args: string[]) => run(...args, '--data', folder);
const job = () =>
  run('demo', '--fast', '--direct', '--cylinders', '4', '--technician', 'careful', '--out', folder);
/** All jobs here are simulated: authentic, and not proven. */
const NOT_PROVEN = 1;
/** Seals the job anew from the log, with the keys as they are now, into a folder of its own. */
const sealAgain = () => onStation('jobs', 'papers', 'EX-4001-1', '--out', at('again'));
/** An entry more in the log. */
const decide = (how: 'sign' | 'do-not-sign') => onStation('keys', 'technicians', how);

beforeAll(async () => {
  listen();
  original = folder = mkdtempSync(join(tmpdir(), 'station-'));
  expect(await job()).toBe(0);
});
afterAll(() => rmSync(original, { recursive: true }));

beforeEach(() => {
  listen();
  folder = mkdtempSync(join(tmpdir(), 'station-'));
  execFileSync('cp', ['-r', `${original}/.`, folder]);
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

function listen(): void {
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said += String(text);
      return true;
    });
}

describe('plugmark log', () => {
  it('signs a checkpoint that later proves that nothing in front of it changed', async () => {
    const kept = at('kept.txt');
    expect(await onStation('log', 'checkpoint', '--out', kept)).toBe(0);
    expect(readCheckpoint(readFileSync(kept, 'utf8'), kept)).toMatchObject({ ok: true });
    expect(await decide('do-not-sign')).toBe(0);
    expect(await onStation('log', 'check', kept, at(NAME))).toBe(0);
    expect(said).toContain('nothing before it was removed or changed');
    expect(await onStation('log', 'prove', 'consistency', kept)).toBe(0);
    expect(JSON.parse(said)).toMatchObject({ from: expect.any(Number), path: expect.any(Array) });
  });

  it('names an old copy of the database that was put back', async () => {
    copyFileSync(at('station.db'), at('old.db'));
    for (const how of ['do-not-sign', 'sign'] as const) await decide(how);
    const kept = at('kept.txt');
    await onStation('log', 'checkpoint', '--out', kept);
    copyFileSync(at('old.db'), at('station.db'));
    expect(await onStation('log', 'check', kept)).toBe(1);
    expect(said).toMatch(/DIVERGED. Entries \d+ to \d+ are missing\. .* an old copy was put back/);
  });

  it('names a log that went its own way from an old copy on', async () => {
    copyFileSync(at('station.db'), at('old.db'));
    for (const how of ['do-not-sign', 'sign'] as const) await decide(how);
    const kept = at('kept.txt');
    await onStation('log', 'checkpoint', '--out', kept);
    copyFileSync(at('old.db'), at('station.db'));
    for (const how of ['sign', 'do-not-sign', 'sign'] as const) await decide(how);
    expect(await onStation('log', 'check', kept, at(NAME))).toBe(1);
    expect(said).toMatch(/DIVERGED. Between entry \d+ and entry \d+ something was changed/);
  });

  it('names the entry that was rewritten', async () => {
    const db = new Sqlite(at('station.db'));
    withoutRules(withPlain(db)).exec(
      `UPDATE entries SET body = packed(replace(plain(body, salt), '"by":"technician"', '"by":"station"')) WHERE seq = 6`,
    );
    db.close();
    expect(await onStation('log', 'check', at(NAME))).toBe(1);
    expect(said).toContain('DIVERGED at entry 6');
  });

  it('proves that an entry is in it, for any program that knows RFC 9162', async () => {
    expect(await onStation('log', 'prove', 'inclusion', '3')).toBe(0);
    const { index, size, leaf, path, checkpoint } = JSON.parse(said);
    const note = readCheckpoint(checkpoint, 'proof');
    if (!note.ok) throw new Error(note.error.message);
    const bytes = (text: string) => Buffer.from(text, 'base64');
    expect(inclusionHolds(bytes(leaf), { index, size, path: path.map(bytes), root: note.value.root })).toBe(
      true,
    );
    expect(await onStation('log', 'prove', 'inclusion', '99999')).toBe(2);
  });

  it('takes no file for a checkpoint that is none', async () => {
    writeFileSync(at('note.txt'), 'paid in full');
    expect(await onStation('log', 'check', at('note.txt'))).toBe(2);
    expect(said).toContain('this is not a checkpoint');
  });
});

describe('plugmark keys', () => {
  // A job in virtual time ends minutes ahead of the real clock; what follows it must come after.
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 3_600_000 });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('rotates: the old key names the new one, and whoever trusts the old list believes the next record', async () => {
    copyFileSync(at('trusted-keys.json'), at('old-list.json'));
    expect(await onStation('keys', 'rotate')).toBe(0);
    expect(await sealAgain()).toBe(NOT_PROVEN);
    const next = at('again', NAME);
    expect(await run('verify', next, '--trust', at('trusted-keys.json'))).toBe(NOT_PROVEN);
    expect(await run('verify', next, '--trust', at('old-list.json'))).toBe(NOT_PROVEN);
    expect(said).toContain('whose earlier key named this one');
    expect(await run('verify', at(NAME), '--trust', at('trusted-keys.json'))).toBe(NOT_PROVEN);
    expect(await onStation('log', 'check', at(NAME), next)).toBe(0);
  });

  it('replaces a lost key: the new one has to be trusted anew, and old records stay good', async () => {
    copyFileSync(at('trusted-keys.json'), at('old-list.json'));
    const [kid] =
      /[\w-]{43}/.exec(readFileSync(at('trusted-keys.json'), 'utf8').split('"kid"')[1] ?? '') ?? [];
    rmSync(at('keys'), { recursive: true });
    expect(await sealAgain()).toBe(2);
    expect(await onStation('keys', 'rotate', '--lost', '--because', 'the disk broke')).toBe(0);
    expect(
      await onStation('keys', 'revoke', String(kid), '--as', 'lost', '--because', 'the disk broke'),
    ).toBe(0);
    expect(await onStation('keys', 'list')).toBe(0);
    expect(said).toMatch(/REVOKED from .* \(lost\)/);
    expect(await sealAgain()).toBe(NOT_PROVEN);
    const next = at('again', NAME);
    expect(await run('verify', next, '--trust', at('old-list.json'))).toBe(3);
    expect(await run('verify', next, '--trust', at('trusted-keys.json'))).toBe(NOT_PROVEN);
    expect(await run('verify', at(NAME), '--trust', at('trusted-keys.json'))).toBe(NOT_PROVEN);
  });

  it('of a station that was revoked signs nothing any more', async () => {
    await onStation('keys', 'list');
    const [kid] = /[\w-]{43}/.exec(said) ?? [];
    const words = ['--as', 'compromised', '--because', 'stolen'];
    expect(await onStation('keys', 'revoke', String(kid), '--from', 'soon', ...words)).toBe(2);
    expect(await onStation('keys', 'revoke', 'x', ...words)).toBe(2);
    const hyphenated = `-${'A'.repeat(42)}`;
    expect(await onStation('keys', 'revoke', hyphenated, ...words)).toBe(2);
    expect(said).toContain(hyphenated);
    expect(said).not.toContain('unknown option');
    expect(await onStation('keys', 'revoke', String(kid), '--from', '2026-01-01', ...words)).toBe(0);
    expect(await sealAgain()).toBe(2);
    expect(said).toContain('is revoked');
    expect(await run('verify', at(NAME), '--trust', at('trusted-keys.json'))).toBe(3);
  });

  it('gives a technician a key under a PIN, and the next record carries both signatures', async () => {
    vi.stubEnv('PLUGMARK_PIN', '1234');
    expect(await onStation('keys', 'technician', 'Technician One')).toBe(2);
    vi.stubEnv('PLUGMARK_PIN', '123456');
    expect(await onStation('keys', 'technician', 'Technician One')).toBe(0);
    expect(await sealAgain()).toBe(NOT_PROVEN);
    expect(said).toContain('the technician signed with a key of his own');
    expect(readFileSync(at('again', 'EX-4001-1.pdf'), 'latin1')).toContain('technician');
    vi.stubEnv('PLUGMARK_PIN', '');
    expect(await sealAgain()).toBe(NOT_PROVEN);
    expect(said).toContain('has a key and did NOT sign');
    expect(await onStation('keys', 'technicians', 'do-not-sign')).toBe(0);
    expect(await sealAgain()).toBe(NOT_PROVEN);
    expect(said).toContain("this shop does without technicians' signatures");
    vi.stubEnv('PLUGMARK_PIN', '654321');
    expect(await onStation('keys', 'technicians', 'sign')).toBe(0);
    expect(await sealAgain()).toBe(2);
    expect(said).toContain('the passphrase is wrong');
  });

  it.runIf(process.platform !== 'win32')(
    'puts the key under a passphrase; the files belong to their owner alone',
    async () => {
      await onStation('keys', 'list');
      const file = at('keys', `station.${/[\w-]{43}/.exec(said)?.[0]}.pem`);
      expect(statSync(file).mode & 0o777).toBe(0o600);
      vi.stubEnv('PLUGMARK_PASSPHRASE', 'open sesame');
      expect(await onStation('keys', 'lock')).toBe(0);
      expect(readFileSync(file, 'utf8')).toContain('BEGIN ENCRYPTED PRIVATE KEY');
      expect(await sealAgain()).toBe(NOT_PROVEN);
      vi.stubEnv('PLUGMARK_PASSPHRASE', 'open barley');
      expect(await sealAgain()).toBe(2);
    },
  );
});

describe('plugmark countersign', () => {
  it('adds a foreman’s signature as a new file, which verification names', async () => {
    const key = at('foreman.pem');
    vi.stubEnv('PLUGMARK_PASSPHRASE', '');
    expect(await run('keys', 'make', key, '--name', 'Foreman One')).toBe(0);
    const list = JSON.parse(readFileSync(at('trusted-keys.json'), 'utf8'));
    writeFileSync(at('list.json'), JSON.stringify({ keys: [...list.keys, JSON.parse(said)] }));
    const before = readFileSync(at(NAME));
    expect(await run('countersign', at(NAME), '--key', key)).toBe(0);
    expect(readFileSync(at(NAME)).equals(before)).toBe(true);
    const signed = at('EX-4001-1.countersigned.record.json');
    expect(await run('verify', signed, '--trust', at('list.json'))).toBe(NOT_PROVEN);
    expect(said).toContain('countersigned by Foreman One');
    expect(await run('countersign', at(NAME), '--key', key)).toBe(2);
    expect(await run('countersign', at('trusted-keys.json'), '--key', key)).toBe(2);
  });
});

describe('plugmark verify', () => {
  const { isTTY } = process.stderr;
  afterEach(() => {
    process.stderr.isTTY = isTTY;
  });

  it('takes a folder, on several threads, and names what is not authentic', async () => {
    const many = at('many');
    mkdirSync(join(many, 'deep'), { recursive: true });
    for (let i = 0; i < 20; i++) copyFileSync(at(NAME), join(many, 'deep', `${i}.record.json`));
    const trust = ['--trust', at('trusted-keys.json')];
    writeFileSync(join(many, 'bad.record.json'), readFileSync(at(NAME), 'utf8').replace('A', 'B'));
    writeFileSync(join(many, 'none.record.json'), 'nothing');
    process.stderr.isTTY = true;
    slowly();
    expect(await run('verify', many, ...trust)).toBe(1);
    vi.mocked(performance.now).mockRestore();
    expect(said).toMatch(/\r\u001b\[K\[#+\.+\] (6|16) of 22 records, \d+ s left/);
    expect(said).toMatch(/\r\u001b\[K\[#{30}\] 22 of 22 records, 0 s left\r\u001b\[K/);
    expect(said).toMatch(/NOT AUTHENTIC .*bad\.record\.json: /);
    expect(said).toMatch(/UNREADABLE .*none\.record\.json: /);
    expect(said).toContain(
      '22 records: 0 authentic, 20 authentic, not proven, 1 unreadable, 1 not authentic',
    );
    expect(await run('verify', at('keys'))).toBe(2);
  });

  it('does not read a file larger than any record', async () => {
    const file = at('large.record.json');
    writeFileSync(file, '{"payload":"');
    truncateSync(file, 100 << 20);
    expect(await run('verify', file)).toBe(2);
    expect(said).toContain('larger than 32 MB');
  });
});

describe('plugmark schema', () => {
  it.each(['record', 'record-file', 'log-entry', 'station-entry', 'work-order', 'station', 'trust-list'])(
    'prints the JSON Schema of %s',
    async (form) => {
      expect(await run('schema', form)).toBe(0);
      expect(JSON.parse(said)).toMatchObject({
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        type: 'object',
        additionalProperties: false,
      });
    },
  );

  it('names the forms it knows', async () => {
    expect(await run('schema', 'horoscope')).toBe(2);
    expect(said).toContain('record');
  });
});

it('a station that names no folder keeps its data below the XDG data directory', async () => {
  const { usualFolder } = await import('../../../src/cli/station/station-log.ts');
  vi.stubEnv('XDG_DATA_HOME', '/data');
  expect(usualFolder('Bay 1, north')).toBe('/data/plugmark/bay-1-north');
  expect(usualFolder('../../etc')).toBe('/data/plugmark/etc');
  expect(usualFolder('...')).toBe('/data/plugmark/station');
  expect(existsSync(at('trusted-keys.json'))).toBe(true);
});
