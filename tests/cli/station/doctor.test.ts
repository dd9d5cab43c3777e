import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { radioProblem } from '../../../drivers/radio/problems.ts';
import { NEEDED_NODE } from '../../../src/cli/needed-node.ts';
import { doctor, findingLines } from '../../../src/cli/station/doctor.ts';
import {
  isBlocked,
  permittedBy,
  type RadioFacts,
  radioFindings,
} from '../../../src/cli/station/health/bluetooth.ts';
import { type ClockFacts, clockFindings } from '../../../src/cli/station/health/clock.ts';
import type { Finding } from '../../../src/cli/station/health/finding.ts';
import { nodeFinding, roomFinding } from '../../../src/cli/station/health/machine.ts';
import { databaseFinding, stationHealth, tooLarge } from '../../../src/cli/station/health/station.ts';
import { terminalFindings } from '../../../src/cli/station/health/terminal.ts';
import { openStation } from '../../../src/cli/station/station.ts';
import { withoutRules, withPlain } from '../../db/plain.ts';
import { said } from '../answers.ts';
import { example, exampleJson, folder } from '../program.ts';

const stamp = () => ({ at: '2026-05-04T09:30:00.000Z', monoUs: 1 });
const stateOf = (findings: readonly Finding[], name: string) =>
  findings.find((one) => one.name === name)?.state;

/** A station file with these drivers, its station opened once. */
async function station(dir: string, use: object = { use: 'replay', file: 'none.ndjson' }): Promise<string> {
  const file = exampleJson('station.json');
  const path = join(dir, 'station.json');
  const tools = file.tools.map((tool: object) => ({ ...tool, driver: use }));
  writeFileSync(path, JSON.stringify({ ...file, data: 'data', tools }));
  (await openStation(file.station, join(dir, 'data'), stamp)).log.close();
  return path;
}

/** Names, sizes and times of all files below a folder. */
const picture = (dir: string) =>
  readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => [name, statSync(join(dir, name)).size, statSync(join(dir, name)).mtimeMs]);

describe('the doctor', () => {
  it('finds a sound station sound, exits 0, and leaves every file as it was', async () => {
    const dir = folder();
    const path = await station(dir);
    const before = picture(dir);
    const { value, text } = await said(() => doctor({ station: path, json: true }));
    expect(picture(dir)).toEqual(before);
    const { sound, findings } = JSON.parse(text);
    expect({ value, sound }).toEqual({ value: 0, sound: true });
    for (const name of ['node', 'database', 'station', 'log', 'key', 'disk', 'clock'])
      expect(stateOf(findings, name), name).toBe('good');
    for (const { state, next } of findings) expect(next === undefined).toBe(state === 'good');
  });

  it('exits 1 for a log that was changed, and names the entry', async () => {
    const dir = folder();
    const path = await station(dir);
    const db = new Database(join(dir, 'data', 'station.db'));
    withoutRules(withPlain(db)).exec(
      "UPDATE entries SET body = packed(replace(plain(body, salt), 'Example', 'Another'))",
    );
    db.close();
    const { value, text } = await said(() => doctor({ station: path }));
    expect(value).toBe(1);
    expect(text).toMatch(/✗ FAIL +log +entry 1: /);
    expect(text).toContain('of these first.');
  });

  it('exits 1 for a station file that is not right, in the words that every command uses', async () => {
    const dir = folder();
    const path = join(dir, 'station.json');
    writeFileSync(path, JSON.stringify({ ...exampleJson('station.json'), form: 'other' }));
    const { value, text } = await said(() => doctor({ station: path, json: true }));
    expect(value).toBe(1);
    const found = JSON.parse(text).findings.find(({ name }: Finding) => name === 'station');
    expect(found).toMatchObject({ state: 'bad', text: expect.stringContaining('station.json: form') });
  });

  it('exits 1 where a tool has no profile, or one for another kind of link', async () => {
    const dir = folder();
    const profiles = ['none.json', example('profile-wrench.json')];
    for (const profile of profiles) {
      const path = await station(dir, { use: 'serial', port: '/dev/ttyUSB0', profile });
      const { value, text } = await said(() => doctor({ station: path, json: true }));
      expect(value).toBe(1);
      expect(JSON.parse(text).findings.filter(({ state }: Finding) => state === 'bad')).toMatchObject([
        { name: 'tool wrench', text: expect.stringContaining(profile) },
        { name: 'tool gauge' },
      ]);
    }
  });

  it('breaks its lines between words where the terminal ends, but no command that is to be copied', () => {
    const command = 'sudo setcap cap_net_raw,cap_net_admin+eip /usr/bin/node';
    const lines = findingLines(
      [
        { name: 'a', state: 'good', text: 'one two three four five six seven eight' },
        { name: 'b', state: 'bad', text: 'x', next: `Run: ${command}` },
      ],
      false,
      40,
    );
    expect(lines.slice(0, 2).every((line) => line.length <= 40)).toBe(true);
    expect(lines.slice(0, 2).join(' ').replace(/ +/g, ' ')).toBe(
      '✓ ok a one two three four five six seven eight',
    );
    expect(lines.some((line) => line.endsWith(command))).toBe(true);
  });

  it.each([true, false])('gives every line a word and a symbol (ascii %s)', (ascii) => {
    const lines = findingLines(
      [
        { name: 'a', state: 'good', text: 'x' },
        { name: 'bc', state: 'warning', text: 'y\u001b[2J', next: 'do' },
        { name: 'd', state: 'bad', text: 'z', next: 'do' },
      ],
      ascii,
    );
    expect(lines.filter((line) => !line.startsWith(' ')).slice(0, 3)).toEqual(
      ascii
        ? ['+ ok    a   x', '! note  bc  y[2J', 'x FAIL  d   z']
        : ['✓ ok    a   x', '! note  bc  y[2J', '✗ FAIL  d   z'],
    );
  });
});

describe('the log and the key', () => {
  it('are looked at while another program has the log open', async () => {
    const data = join(folder(), 'data');
    const open = await openStation('Example bay', data, stamp);
    const { findings, lastEntry } = await stationHealth(data);
    expect(findings.map(({ state }) => state)).toEqual(['good', 'good', 'good']);
    expect(lastEntry).toBe(stamp().at);
    open.log.close();
  });

  it('are not copied where that would take too long or too much room, and the command that reads them is named', async () => {
    const data = join(folder(), 'data');
    (await openStation('Example bay', data, stamp)).log.close();
    truncateSync(join(data, 'station.db'), 600e6);
    const { findings, lastEntry } = await stationHealth(data);
    expect(lastEntry).toBeNull();
    expect(findings).toEqual([
      {
        name: 'log',
        state: 'warning',
        text: expect.stringContaining('600 MB, more than the 500 MB'),
        next: expect.stringContaining('plugmark log check'),
      },
    ]);
    truncateSync(join(data, 'station.db'), 100e6);
    expect(tooLarge(join(data, 'station.db'), 200e6)).toBeNull();
    expect(tooLarge(join(data, 'station.db'), 199e6)).toContain('100 MB, too large for a copy');
  });

  it('a key that others may read is bad, and a missing one too', async () => {
    const data = join(folder(), 'data');
    const { key, log } = await openStation('Example bay', data, stamp);
    log.close();
    const path = join(data, 'keys', `station.${key.kid}.pem`);
    chmodSync(path, 0o644);
    const { findings } = await stationHealth(data);
    expect(findings[1]).toMatchObject({
      name: 'key',
      state: 'bad',
      next: expect.stringContaining('chmod 600'),
    });
  });

  it('no log yet is worth a note; a file that is none is bad and stays as it is', async () => {
    const data = join(folder(), 'data');
    expect((await stationHealth(data)).findings).toEqual([
      expect.objectContaining({ name: 'log', state: 'warning' }),
    ]);
    mkdirSync(data);
    writeFileSync(join(data, 'station.db'), 'not a database, but long enough'.repeat(100));
    expect((await stationHealth(data)).findings).toEqual([
      expect.objectContaining({
        name: 'log',
        state: 'bad',
        text: expect.stringContaining(join(data, 'station.db')),
      }),
    ]);
    expect(readdirSync(data)).toEqual(['station.db']);
  });

  it('the database itself is tried in an empty folder', async () => {
    expect(await databaseFinding()).toMatchObject({ state: 'good', text: expect.stringContaining('FULL') });
  });
});

describe('Bluetooth', () => {
  const fine: RadioFacts = {
    socket: null,
    linux: true,
    adapters: ['hci0'],
    blocked: false,
    permitted: true,
    node: '/usr/bin/node',
  };
  const states = (facts: Partial<RadioFacts>, tools: readonly string[]) =>
    radioFindings({ ...fine, ...facts }, tools).map(({ state }) => state);

  it('is a failure only where the station has a tool on the radio', () => {
    const missing: Partial<RadioFacts>[] = [
      { socket: radioProblem('radio-no-bluetooth') },
      { socket: radioProblem('radio-not-installed') },
      { adapters: [] },
    ];
    for (const facts of missing) {
      expect(states(facts, [])).toEqual(['warning']);
      expect(states(facts, ['wrench'])).toEqual(['bad']);
    }
    expect(states({ blocked: true }, ['wrench'])).toEqual(['bad', 'good']);
    expect(states({}, ['wrench'])).toEqual(['good', 'good']);
  });

  it('gives the exact line that mends the rights, with the path of this very node', () => {
    const [, rights] = radioFindings({ ...fine, permitted: false, node: '/opt/node 20/bin/node' }, [
      'wrench',
    ]);
    expect(rights?.next).toContain("sudo setcap cap_net_raw,cap_net_admin+eip '/opt/node 20/bin/node'");
  });

  it('names the group that may use it where the Debian package runs', () => {
    const [, rights] = radioFindings({ ...fine, permitted: false, node: '/usr/lib/plugmark/node' }, [
      'wrench',
    ]);
    expect(rights?.next).toBe(
      'Add this user to the group plugmark, and log in again: sudo adduser "$USER" plugmark',
    );
  });

  it('reads the rights of the process as the kernel writes them: bits 12 and 13', () => {
    expect(permittedBy('Name:\tnode\nCapEff:\t0000000000003000\n')).toBe(true);
    expect(permittedBy('CapEff:\t000001fffeffffff\n')).toBe(true);
    for (const lacking of ['0000000000001000', '0000000000002000', '0000000000000000'])
      expect(permittedBy(`CapEff:\t${lacking}\n`)).toBe(false);
    expect(permittedBy('')).toBeNull();
  });

  it('is switched off when every Bluetooth switch of rfkill is', () => {
    const dir = folder();
    const put = (name: string, type: string, soft: string) => {
      mkdirSync(join(dir, name));
      for (const [file, text] of Object.entries({ type, soft, hard: '0' }))
        writeFileSync(join(dir, name, file), `${text}\n`);
    };
    expect(isBlocked(dir)).toBe(false);
    put('rfkill0', 'wlan', '1');
    expect(isBlocked(dir)).toBe(false);
    put('rfkill1', 'bluetooth', '1');
    expect(isBlocked(dir)).toBe(true);
    put('rfkill2', 'bluetooth', '0');
    expect(isBlocked(dir)).toBe(false);
  });
});

describe('machine, clock and terminal', () => {
  it('asks for the Node that package.json asks for', () => {
    const { engines } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
    expect(engines.node).toBe(`>=${NEEDED_NODE}`);
    for (const version of ['22.12.0', '22.23.5', '24.0.0', '26.10.0', '100.1.0'])
      expect(nodeFinding(version).state).toBe('good');
    for (const version of ['22.11.9', '20.20.2', '9.30.0']) expect(nodeFinding(version).state).toBe('bad');
  });

  it('warns of little room and fails for almost none', () => {
    expect([5e9, 5e8, 5e7].map((free) => roomFinding(free, '/data').state)).toEqual([
      'good',
      'warning',
      'bad',
    ]);
  });

  it.each<[string, Partial<ClockFacts>, readonly Finding['state'][]]>([
    ['synchronised by the network', { synchronised: true }, ['good', 'good']],
    ['not synchronised', { synchronised: false }, ['good', 'warning']],
    ['nobody to ask', {}, ['good']],
    ['stepped while watched', { driftMs: -900 }, ['warning']],
    ['without a battery', { now: new Date('1970-01-01T00:03:00Z') }, ['bad']],
    ['before the newest entry', { lastEntry: '2026-05-04T09:30:00.001Z' }, ['bad']],
  ])('a clock: %s', (_what, change, states) => {
    const facts: ClockFacts = {
      now: new Date('2026-05-04T09:30:00.000Z'),
      driftMs: 0.2,
      sampleMs: 400,
      synchronised: null,
      lastEntry: null,
    };
    expect(clockFindings({ ...facts, ...change }).map(({ state }) => state)).toEqual(states);
  });

  it('never fails for the terminal, because plain lines do without', () => {
    const facts = { screen: true, columns: 120, rows: 40, utf8: true, color: true };
    const states = (change: Partial<typeof facts>) =>
      terminalFindings({ ...facts, ...change }).map(({ state }) => state);
    expect(states({})).toEqual(['good', 'good']);
    expect(states({ columns: 40 })).toEqual(['warning', 'good']);
    expect(states({ utf8: false })).toEqual(['good', 'warning']);
    expect(states({ screen: false })).toEqual(['warning']);
  });
});
