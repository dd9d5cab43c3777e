import { mkdtempSync, rmSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { realAfter } from '../../../drivers/after.ts';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { described } from '../../../drivers/profile/language.ts';
import { packetsIn, socketOnAir } from '../../../drivers/radio/air.ts';
import { openRadio } from '../../../drivers/radio/open.ts';
import type { Radio } from '../../../drivers/radio/radio.ts';
import { realScheduler, type Scheduler } from '../../../sim/scheduler.ts';
import { type Air, airOn } from '../../../sim/serve/air.ts';
import { onAir } from '../../../sim/serve/on-air.ts';
import { type Port, play } from '../../../sim/serve/player.ts';
import { type Scenario, scenarioSchema } from '../../../sim/serve/scenario.ts';
import type { Reading } from '../../../src/reading.ts';
import { good } from '../../drivers/bench.ts';
import { wrenchProfile } from '../../drivers/profile/example.ts';
import { until } from '../../drivers/serial/lines.ts';

// Bluetooth tools of a scenario, over a socket of this machine, through the noble that ships.

const PRESENTED = { address: 'c2:00:00:00:00:11', name: 'invented', serial: 'SIM-W-0011' };

let folder: string;
let path: string;
let scheduler: Scheduler;
let air: Air;
let port: Port;
let radio: Radio;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'air-'));
  path = join(folder, 'air');
  scheduler = realScheduler();
  air = await airOn(path, scheduler);
  port = onAir(air.controller, wrenchProfile(), PRESENTED);
  radio = good(await openRadio({ socket: await socketOnAir(path) }));
});
afterEach(async () => {
  await radio.close();
  await air.close();
  rmSync(folder, { recursive: true, force: true });
});

function listen() {
  const tool = bluetoothTool({
    id: 'wrench',
    language: described(wrenchProfile()),
    adopted: PRESENTED,
    radio,
    clock: scheduler,
    after: realAfter,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  return { tool, readings };
}

const scenario = (steps: readonly unknown[]): Scenario =>
  scenarioSchema.parse({
    form: 'plugmark/scenario/1',
    title: 'a test',
    air: '/tmp/x',
    engine: { wrench: 'wrench', cylinders: 2, lowerNm: 25, upperNm: 30 },
    tools: [{ id: 'wrench', profile: 'p', address: PRESENTED.address }],
    steps,
  });

describe('a Bluetooth tool of a scenario', () => {
  it('is joined like any other; what it sends is simulated', async () => {
    const { tool, readings } = listen();
    good(await tool.connect());
    expect(tool.source).toBe('simulated');
    const played = play(
      scenario([{ do: 'pull', tool: 'wrench', peakNm: 12, riseMs: 200 }]),
      [{ id: 'wrench', profile: wrenchProfile(), port, noiseNm: 0 }],
      scheduler,
    );
    await played.done;
    const nm = readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts / 100] : []));
    expect(Math.max(...nm)).toBeGreaterThan(11);
    expect(Math.max(...nm)).toBeLessThanOrEqual(12);
    expect(nm.at(-1)).toBe(0);
    await tool.close();
  });

  it('feels the hands of the simulated technician', async () => {
    const { tool, readings } = listen();
    good(await tool.connect());
    const played = play(
      scenario([{ do: 'hands', move: 'knock 9' }]),
      [{ id: 'wrench', profile: wrenchProfile(), port, noiseNm: 0 }],
      scheduler,
    );
    await played.done;
    const most = Math.max(
      ...readings.map((reading) => (reading.kind === 'value' ? reading.counts / 100 : 0)),
    );
    expect(most).toBeGreaterThan(4);
    await tool.close();
  });

  it('is lost where its link breaks, and found again', async () => {
    const { tool } = listen();
    const states: string[] = [];
    tool.link$.subscribe(({ state }) => states.push(state));
    good(await tool.connect());
    await port.unplug();
    await until(() => states.includes('lost'), 'the loss');
    await port.plug();
    await until(() => states.at(-1) === 'linked', 'the return');
    await tool.close();
  });

  it('serves one program at a time, and the next one once that has gone', async () => {
    const second = connect(path);
    await new Promise((closed) => second.once('close', closed));
    await radio.close();
    for (;;) {
      const next = await openRadio({ socket: await socketOnAir(path) });
      if (next.ok) radio = next.value;
      if (next.ok) break;
    }
    const { tool } = listen();
    good(await tool.connect());
    await tool.close();
  });
});

it('where something else answers at the socket, no adapter is there, and the program goes on', async () => {
  const other = join(folder, 'other');
  const server = createServer((line) => void line.on('error', () => {}).write('HTTP/1.1 400 Bad Request'));
  await new Promise<void>((listens) => server.listen(other, listens));
  const HciSocket = await socketOnAir(other);
  const socket = new HciSocket();
  socket.start();
  await until(() => !socket.isDevUp(), 'the end of the line');
  expect(await openRadio({ socket: HciSocket })).toMatchObject({ ok: false });
  await new Promise((closed) => server.close(closed));
});

it('a scenario needs a place for its Bluetooth tools, one way to each tool, and an engine for hands', () => {
  const place = (change: Record<string, unknown>) =>
    scenarioSchema
      .safeParse(JSON.parse(JSON.stringify({ ...scenario([{ do: 'wait', ms: 1 }]), ...change })))
      .error?.issues.map((issue) => issue.path.join('.'));
  expect(place({ air: undefined })).toEqual(['air']);
  expect(place({ tools: [{ id: 'wrench', profile: 'p' }] })).toEqual(['tools.0']);
  expect(place({ engine: undefined, steps: [{ do: 'hands', move: 'pull 1' }] })).toEqual(['steps.0']);
  expect(place({ engine: { wrench: 'spanner', cylinders: 2, lowerNm: 25, upperNm: 30 } })).toEqual([
    'engine.wrench',
  ]);
  expect(place({ steps: [{ do: 'hands', move: 'pull 1 fast' }] })).toEqual(['steps.0.move']);
  const engine = { wrench: 'wrench', cylinders: 2, lowerNm: 30, upperNm: 25 };
  expect(place({ engine })).toEqual(['engine.upperNm']);
  const at = (address: string) => ({ id: address, profile: 'p', address });
  expect(place({ tools: [{ ...at('c2:00:00:00:00:0a'), id: 'wrench' }, at('C2:00:00:00:00:0A')] })).toEqual([
    'tools.1.address',
  ]);
  expect(place({ tools: [{ ...at('0123456789abcdef0123456789abcdef'), id: 'wrench' }] })).toEqual([
    'tools.0.address',
  ]);
});

it.each([
  [['fit 1', 'pull 1', 'loosen 1', 'fit 1', 'pull 1 lean', 'replace 1', 'measure 1', 'knock 9'], []],
  [['pull 1'], ['steps.0.move']],
  [['fit 1', 'loosen 1', 'pull 1'], ['steps.2.move']],
  [['fit 1', 'replace 1', 'loosen 1'], ['steps.2.move']],
  [
    ['measure 3', 'bend 0 0.1'],
    ['steps.0.move', 'steps.1.move'],
  ],
])('hands at an engine of two cylinders: %j is refused at %j', (moves, places) => {
  const steps = moves.map((move) => ({ do: 'hands', move }));
  const given = JSON.parse(JSON.stringify(scenario([{ do: 'wait', ms: 1 }])));
  const read = scenarioSchema.safeParse({ ...given, steps });
  expect(read.error?.issues.map((issue) => issue.path.join('.')) ?? []).toEqual(places);
});

it('packets of the controller are cut out of the stream wherever it was broken', () => {
  const packets = ['01030c00', '040e0401030c00', '02010004000a0b0c0d'].map((hex) => Buffer.from(hex, 'hex'));
  const stream = Buffer.concat(packets);
  for (let at = 0; at <= stream.length; at++) {
    const cut: string[] = [];
    const take = packetsIn((packet) => cut.push(packet.toString('hex')));
    take(stream.subarray(0, at));
    take(stream.subarray(at));
    expect(cut).toEqual(packets.map((packet) => packet.toString('hex')));
  }
  expect(() => packetsIn(() => {})(Buffer.of(0x7f))).toThrow(/no HCI packet/);
});
