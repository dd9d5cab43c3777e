/** The station's own trust list is lost or damaged: it is made again from the log, and no command does half of its work. */
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { stationHealth } from '../../../src/cli/station/health/station.ts';
import { rotateKey } from '../../../src/cli/station/rotate.ts';
import { openStation, openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { readTrust } from '../../../src/cli/station/trust-file.ts';
import { publicJwk, thumbprint } from '../../../src/evidence/jwk.ts';
import { keyOfSeed } from '../../evidence/sample-job.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation } from '../audit/audit-station.ts';

const station = auditStation();
const list = () => join(station.data, 'trusted-keys.json');
const stamp = () => ({ at: '2026-09-04T09:30:00.000Z', monoUs: 1 });
const open = async () => (await openStation('Example bay', station.data, stamp)).log.close();

async function atStderr(work: () => Promise<unknown>): Promise<string> {
  const spy = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  try {
    await work();
    return spy.mock.calls.map(([chunk]) => String(chunk)).join('');
  } finally {
    spy.mockRestore();
  }
}

async function logNow() {
  const { log, ...folder } = await openStationFolder(station.data);
  try {
    return { size: log.size(), kid: stateOf({ log, ...folder }).keys.at(-1)?.kid };
  } finally {
    log.close();
  }
}
const finding = async () =>
  (await stationHealth(station.data)).findings.find(({ name }) => name === 'trust list');

const LOSSES: readonly (readonly [string, () => void])[] = [
  ['empty', () => writeFileSync(list(), '')],
  ['damaged', () => writeFileSync(list(), readFileSync(list(), 'utf8').slice(0, 100))],
  ['missing', () => rmSync(list())],
  ['without the key of the station', () => writeFileSync(list(), '{"keys":[]}')],
];

describe.each(LOSSES)('a trust list that is %s', (what, happens) => {
  it('is found by doctor, made again when a job is opened, and told where something was in it', async () => {
    expect(await finding()).toMatchObject({ state: 'good' });
    const before = readFileSync(list(), 'utf8');
    happens();
    expect(await finding()).toMatchObject({ state: 'bad' });
    const told = await atStderr(open);
    expect(readFileSync(list(), 'utf8')).toBe(before);
    expect(await finding()).toMatchObject({ state: 'good' });
    expect(told.includes('made again from the log')).toBe(what === 'empty' || what === 'damaged');
    expect(existsSync(`${list()}.damaged`)).toBe(what === 'damaged');
  });

  it('does not keep a new key from being made', async () => {
    happens();
    await atStderr(() => said(() => rotateKey(station.scope())));
    const { kid } = await logNow();
    expect((await readTrust(list())).keys.map((key) => key.kid)).toContain(kid);
  });
});

it('where a key of another history followed the old one, the list names the one that the log names, and can be read', async () => {
  const { kid: old } = await logNow();
  const other = publicJwk(keyOfSeed('c3'.repeat(32)));
  const { keys } = await readTrust(list());
  const added = { ...other, kid: thumbprint(other), name: 'Example bay', follows: old };
  writeFileSync(list(), JSON.stringify({ keys: [...keys, added] }));
  await said(() => rotateKey(station.scope()));
  const { kid } = await logNow();
  const now = (await readTrust(list())).keys;
  expect(now.filter(({ follows }) => follows === old).map((key) => key.kid)).toEqual([kid]);
  expect(now.map((key) => key.kid)).toContain(thumbprint(other));
});

it('a new key comes about with its list and its file, or not at all', async () => {
  const before = await logNow();
  const keys = readdirSync(join(station.data, 'keys'));
  const text = readFileSync(list(), 'utf8');
  // What has the name of the list can neither be read nor be replaced.
  rmSync(list());
  mkdirSync(join(list(), 'in the way'), { recursive: true });
  const outcome = await said(() => problemOf(() => rotateKey(station.scope())));
  expect(outcome.text).toBe('');
  expect(outcome.value.code).toBe('trust-list');
  expect(await logNow()).toEqual(before);
  expect(readdirSync(join(station.data, 'keys'))).toEqual(keys);
  rmSync(list(), { recursive: true });
  writeFileSync(list(), text);
  await said(() => rotateKey(station.scope()));
  expect(await logNow()).not.toEqual(before);
});

it('where nothing can be written into the folder, the log stays as it is', async () => {
  if (process.getuid?.() === 0) return;
  const before = await logNow();
  chmodSync(station.data, 0o500);
  try {
    await problemOf(() => rotateKey(station.scope()));
  } finally {
    chmodSync(station.data, 0o700);
  }
  expect(await logNow()).toEqual(before);
});
