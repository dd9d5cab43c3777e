import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { realAfter } from '../../../drivers/after.ts';
import { parseProfile, serialProfile } from '../../../drivers/profile/file.ts';
import type { SerialProfile } from '../../../drivers/profile/schema.ts';
import { described } from '../../../drivers/serial/language.ts';
import { openSerial } from '../../../drivers/serial/open.ts';
import { serialTool } from '../../../drivers/serial/tool.ts';
import type { LinkState, Reading } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { textProfile } from '../profile/example.ts';
import { Line, NO_LINE, until } from './lines.ts';

/** A gap gauge that answers "?" with its figure in mm. */
const asked = (): SerialProfile => {
  const profile = {
    ...textProfile(),
    quantity: 'length',
    link: {
      kind: 'serial',
      baud: 9600,
      start: [{ hex: '4f4e0d' }],
      by: { how: 'ask', hex: '3f0d', everyMs: 50 },
      keepAlive: { hex: '00', everyMs: 40 },
    },
    frames: { by: 'delimiter', hex: '0d' },
    layout: { of: 'text', fields: [{ is: 'value', resolution: '0.001', unit: 'mm' }] },
  };
  return good(serialProfile(good(parseProfile(JSON.stringify(profile), 'gauge.json')), 'gauge.json'));
};

describe.skipIf(NO_LINE !== null)('a tool on a serial line', () => {
  let line: Line;
  beforeEach(() => {
    line = new Line();
  });
  afterEach(() => line.end());

  function listen(profile: SerialProfile) {
    const clock = { nowUs: () => Math.floor(performance.now() * 1_000) };
    const tool = serialTool({
      id: 'tool',
      language: described(profile),
      port: line.port,
      clock,
      open: openSerial,
      after: realAfter,
      random: () => 0,
    });
    const readings: Reading[] = [];
    const links: LinkState[] = [];
    tool.readings$.subscribe((reading) => readings.push(reading));
    tool.link$.subscribe((link) => links.push(link));
    return { tool, readings, links, states: () => links.map(({ state }) => state) };
  }
  const counts = (readings: readonly Reading[]) =>
    readings.map((reading) => (reading.kind === 'value' ? reading.counts : reading.kind));

  test('is described, and its lines are read, whole or in pieces', async () => {
    await line.plug();
    const { tool, readings } = listen(textProfile());
    expect(good(await tool.connect())).toMatchObject({
      quantity: 'torque',
      exponent: -5,
      link: { kind: 'serial', authenticated: false },
    });
    expect(tool.source).toBe('simulated');
    line.say('T+025.34Nm\r\nT+0');
    await until(() => readings.length === 1, 'the first line');
    line.say('26.00Nm\r\nTOLNm\r\nnoise\r\n');
    await until(() => readings.length === 4, 'the others');
    expect(counts(readings)).toEqual([2_534_000, 2_600_000, 'not-known', 'raw']);
    expect(readings.map(({ n }) => n)).toEqual([1, 2, 3, 4]);
    await tool.close();
  });

  test('is sought until it is plugged in, lost when it is pulled out, and joined again', async () => {
    const { tool, readings, links, states } = listen(textProfile());
    const connecting = tool.connect();
    await until(() => states().includes('not-joined'), 'the first attempt');
    expect(links.at(-1)).toMatchObject({ problem: { code: 'port-missing', where: line.port } });
    await line.plug();
    good(await connecting);
    line.say('T+025.34Nm\r\n');
    await until(() => readings.length === 1, 'a line');
    await line.unplug();
    await until(() => states().includes('lost'), 'the loss');
    expect(links.find(({ state }) => state === 'lost')).toEqual({ state: 'lost', reason: 'port-gone' });
    await line.plug();
    await until(() => states().at(-1) === 'linked', 'the port again');
    line.say('T+001.00Nm\r\n');
    await until(() => readings.length === 3, 'a line after the gap');
    expect(counts(readings)).toEqual([2_534_000, 'missed', 100_000]);
    expect(readings[1]).toMatchObject({ reason: 'port-gone' });
    await tool.close();
    expect(states().at(-1)).toBe('closed');
  });

  test('is started, kept alive and asked; a figure is given once; where no answer comes the tool is lost', async () => {
    await line.plug();
    const { tool, readings, states } = listen(asked());
    good(await tool.connect());
    await until(() => line.heard.split('?').length > 3, 'the questions');
    expect(line.heard.startsWith('ON\r')).toBe(true);
    expect(line.heard).toContain('\0');
    line.say('0.750\r0.750\r');
    line.say('0.751\r');
    await until(() => readings.length === 2, 'the answers');
    expect(counts(readings)).toEqual([7_500, 7_510].map((x) => x / 10));
    await until(() => states().at(-1) === 'lost', 'the loss');
    line.say('0.752\r');
    await until(() => states().at(-1) === 'linked', 'the return');
    expect(counts(readings)).toEqual([750, 751, 'missed', 752]);
    await tool.close();
  });

  test('a port that another program has is told, with its name', async () => {
    await line.plug();
    const first = listen(textProfile());
    good(await first.tool.connect());
    const second = listen(textProfile());
    void second.tool.connect();
    await until(() => second.states().includes('not-joined'), 'the refusal');
    expect(second.links.at(-1)).toMatchObject({ problem: { code: 'port-busy', where: line.port } });
    await second.tool.close();
    await first.tool.close();
  });
});

test('closed before its port was there, it says so', async () => {
  const clock = { nowUs: () => 0 };
  const tool = serialTool({
    id: 'tool',
    language: described(textProfile()),
    port: '/dev/no-such-port',
    clock,
    open: openSerial,
  });
  const connecting = tool.connect();
  await tool.close();
  expect(await connecting).toMatchObject({ ok: false, error: { code: 'tool-closed' } });
});
