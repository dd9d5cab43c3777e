import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Candidate } from '../../../drivers/bluetooth/survey.ts';
import { adoptInto, adoption } from '../../../src/cli/station/adopt.ts';
import { type StationFile, stationFileSchema } from '../../../src/cli/station/station-file.ts';
import { exampleFile } from '../../../src/files/input.ts';

const WRENCH: Candidate = {
  address: 'c2:00:00:00:00:01',
  name: 'wrench',
  kind: 'torque wrench',
  rssi: -50,
  services: ['185a'],
  lasting: true,
};
const SERIAL = 'W-1';

/** The example station with the tools as they are before anything was adopted. */
async function fresh(): Promise<StationFile> {
  const station = stationFileSchema.parse(JSON.parse(await readFile(exampleFile('station.json'), 'utf8')));
  const tools = station.tools.map(({ serial: _serial, ...tool }) => ({
    ...tool,
    driver: { use: 'imds' as const },
  }));
  return { ...station, tools };
}

async function adopted(candidate = WRENCH, serial = SERIAL): Promise<StationFile> {
  const given = adoption(await fresh(), { tool: 'wrench' }, candidate, serial);
  if (!given.ok) throw new Error(given.error.message);
  return given.value;
}

describe('adopting a device', () => {
  test('writes its serial number, address and name, and leaves all else as it was', async () => {
    const before = await fresh();
    const after = await adopted();
    expect(after.tools.find(({ id }) => id === 'wrench')).toEqual({
      ...before.tools.find(({ id }) => id === 'wrench'),
      serial: SERIAL,
      driver: { use: 'imds', address: WRENCH.address, name: 'wrench' },
    });
    expect(after.tools.filter(({ id }) => id !== 'wrench')).toEqual(
      before.tools.filter(({ id }) => id !== 'wrench'),
    );
  });

  test('by a profile names the profile', async () => {
    const given = adoption(await fresh(), { tool: 'wrench', profile: 'p.json' }, WRENCH, SERIAL);
    expect(given).toMatchObject({ ok: true });
    expect(given.ok && given.value.tools.find(({ id }) => id === 'wrench')?.driver).toMatchObject({
      use: 'profile',
      profile: 'p.json',
    });
  });

  test('again, the same one, changes nothing', async () => {
    const once = await adopted();
    expect(adoption(once, { tool: 'wrench' }, WRENCH, SERIAL)).toEqual({ ok: true, value: once });
  });

  const other: Candidate = { ...WRENCH, address: 'c2:00:00:00:00:02', name: 'gauge' };
  test.each<[string, string, Candidate, string | undefined, string]>([
    [
      'an adopted serial number from another address',
      'wrench',
      { ...other, name: 'wrench' },
      SERIAL,
      'serial-elsewhere',
    ],
    ['another serial number than the station file has', 'wrench', WRENCH, 'W-2', 'tool-other-serial'],
    ['a device that is another tool already', 'gauge', WRENCH, SERIAL, 'already-adopted'],
    ['a serial number that another tool has', 'gauge', other, SERIAL, 'already-adopted'],
    ['a second tool of the same name', 'gauge', { ...other, name: 'wrench' }, 'G-1', 'name-taken'],
    ['one without a serial number', 'gauge', other, undefined, 'serial-missing'],
    ['one whose address changes', 'gauge', { ...other, lasting: false }, 'G-1', 'address-changes'],
    ['a tool that the station does not have', 'lamp', other, 'L-1', 'tool-unknown'],
  ])('refuses %s', async (_name, tool, candidate, serial, code) => {
    expect(adoption(await adopted(), { tool }, candidate, serial)).toMatchObject({
      ok: false,
      error: { code, where: candidate.address },
    });
  });
});

describe('the station file', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'adopt-'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test('is written whole and is valid again; a refusal leaves it alone', async () => {
    const file = join(folder, 'station.json');
    await writeFile(file, JSON.stringify(await fresh()));
    await adoptInto(file, { tool: 'wrench' }, WRENCH, SERIAL);
    const written = stationFileSchema.parse(JSON.parse(await readFile(file, 'utf8')));
    expect(written.tools.find(({ id }) => id === 'wrench')).toMatchObject({ serial: SERIAL });
    const before = await readFile(file, 'utf8');
    await expect(adoptInto(file, { tool: 'gauge' }, WRENCH, SERIAL)).rejects.toMatchObject({
      problem: { code: 'already-adopted' },
    });
    expect(await readFile(file, 'utf8')).toBe(before);
  });
});
