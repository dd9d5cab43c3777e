import { expect, test } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import type { Tool } from '../../../drivers/driver.ts';
import { bluetoothProfile, parseProfile, serialProfile } from '../../../drivers/profile/file.ts';
import { described } from '../../../drivers/profile/language.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { described as overSerial } from '../../../drivers/serial/language.ts';
import type { OpenPort } from '../../../drivers/serial/port.ts';
import { serialTool } from '../../../drivers/serial/tool.ts';
import { CATALOGUE, type DeviceName } from '../../../sim/devices/catalogue.ts';
import { Sender } from '../../../sim/devices/device.ts';
import { type VirtualScheduler, virtualScheduler } from '../../../sim/scheduler.ts';
import { onAir } from '../../../sim/serve/on-air.ts';
import { type Port, play } from '../../../sim/serve/player.ts';
import { scenarioSchema } from '../../../sim/serve/scenario.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { createBench } from '../../../src/job/bench.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { fold } from '../../../src/job/fold.ts';
import type { LinkEnd } from '../../../src/reading.ts';
import { ok } from '../../../src/result.ts';
import { logOf, opening, seal, station, technician, trusting } from '../../evidence/sample-job.ts';
import { GAUGE, handsOn } from '../../job/workshop.ts';
import { good, onBench } from '../bench.ts';

// Every kind of device through a whole job: from the order, over the unmodified radio library, to the signed record.

const PRESENTED = { address: 'c0:00:00:00:00:41', name: 'invented', serial: 'D-41' };

const scenario = (steps: readonly unknown[]) =>
  scenarioSchema.parse({
    form: 'plugmark/scenario/1',
    title: 'two plugs',
    air: '/tmp/air',
    tools: [{ id: 'wrench', profile: 'p', address: PRESENTED.address }],
    steps,
  });
const PEAK_NM = 27.4;
const STEPS = [
  { do: 'wait', ms: 4_000 },
  { do: 'pull', tool: 'wrench', peakNm: PEAK_NM, riseMs: 700, turnDeg: 60 },
  { do: 'wait', ms: 4_000 },
];

/** Works a job on two plugs, each pulled with the tool at `port`; between them the device sends `also`. */
async function jobWith(
  scheduler: VirtualScheduler,
  tool: Tool,
  { profile, port }: { readonly profile: Profile; readonly port: Port },
  also: Buffer,
) {
  const opened = opening();
  const events: JobEvent[] = [opened];
  const hands = handsOn(createBench(fold(null, opened)), events);
  hands.give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  const link = { state: 'linked', description: GAUGE } as const;
  hands.give({ kind: 'link', tool: 'gauge', driver: 'test', source: 'simulated', link });
  for (const mm of [0.75, 0.74]) hands.gap(mm);
  tool.link$.subscribe((state) =>
    hands.give({ kind: 'link', tool: 'wrench', driver: tool.driver, source: tool.source, link: state }),
  );
  tool.readings$.subscribe((reading) => hands.give({ kind: 'reading', tool: 'wrench', reading }));
  good(await scheduler.runUntil(tool.connect()));
  const served = [{ id: 'wrench', profile, port, noiseNm: 0.01 }];
  for (const more of [also, null]) {
    await scheduler.runUntil(play(scenario(STEPS), served, scheduler).done);
    if (more !== null) port.send(more);
    await scheduler.runFor(2_000_000);
  }
  hands.give({ kind: 'command', command: { do: 'close' } });
  const closing = tool.close();
  await scheduler.runFor(1_000_000);
  await closing;
  return events;
}

/** A frame that tells of a pull that nobody made, and is not to be believed. */
function falseFrame(profile: Profile, fault: Fault): Buffer {
  const sender = new Sender(profile);
  const samples = profile.layout.fields.find((field) => field.is === 'samples');
  const n = samples?.is === 'samples' ? (samples.count === 'rest' ? 3 : samples.count) : 1;
  const si = fault === 'no value' ? null : 29;
  const frame = sender.frame(Array.from({ length: n }, () => ({ si, angleDeg: 0 })));
  if (fault === 'no value') return frame;
  if (fault === 'foreign') return Buffer.from('ff00ff00', 'hex');
  // The last byte of what is checked, in front of the checksum and what is behind it.
  const at = frame.length - CHECKED[fault];
  frame[at] = (frame[at] ?? 0) ^ 1;
  return frame;
}

/** From the end of the frame to a byte that the checksum covers. */
const CHECKED = {
  'checksum of 1': 2,
  'checksum of 2': 3,
  'checksum and end': 4,
  'checksum in text': 6,
} as const;
type Fault = 'no value' | 'foreign' | keyof typeof CHECKED;

const FAULTS: Readonly<Record<DeviceName, Fault>> = {
  'status behind the value': 'no value',
  'checksum behind the samples': 'checksum of 1',
  'lines of text': 'foreign',
  'frames over several packets': 'checksum of 2',
  'packed decimal': 'checksum of 1',
  '12 bits': 'no value',
  'sign and magnitude': 'checksum of 1',
  'zero offset': 'checksum of 1',
  'negative scale': 'foreign',
  'unit by a byte': 'checksum of 1',
  'unit by text': 'checksum in text',
  'torque and angle': 'checksum and end',
  'flag below the value': 'no value',
  'flag above the value': 'no value',
};

/** Both pulls and nothing else were judged, and the record holds. */
function holds(events: readonly JobEvent[], fault: Fault): void {
  const peaks = events.flatMap((event) => (event.type === 'pull-detected' ? [event.peakNm] : []));
  expect(peaks).toHaveLength(2);
  for (const peak of peaks) expect(Math.abs(peak - PEAK_NM)).toBeLessThan(0.5);
  const raw = events.filter(({ type }) => type === 'raw-value');
  expect(raw.length > 0).toBe(fault !== 'no value');
  const report = verifyRecord(seal(logOf(events)), trusting(station, technician));
  expect(report.verdict).toBe('unproven'); // authentic, complete, and simulated
  expect(report.checks.filter(({ outcome }) => outcome !== 'passed')).toEqual([]);
  expect(report.record?.summary.cylinders.map(({ torque }) => torque)).toMatchObject([
    { state: 'done', attempts: 1, judgement: { grade: 'pass' }, source: 'simulated' },
    { state: 'done', attempts: 1, judgement: { grade: 'pass' }, source: 'simulated' },
  ]);
}

test.each(Object.keys(CATALOGUE) as DeviceName[])('%s: from the order to the signed record', (name) =>
  onBench(async ({ radio, scheduler, controller }) => {
    const profile = good(bluetoothProfile(CATALOGUE[name], name));
    const port = onAir(controller, profile, PRESENTED);
    const tool = bluetoothTool({
      id: 'wrench',
      language: described(profile),
      adopted: PRESENTED,
      radio,
      clock: scheduler,
      after: scheduler.after,
      random: () => 0.5,
    });
    const fault = FAULTS[name];
    holds(await jobWith(scheduler, tool, { profile, port }, falseFrame(profile, fault)), fault);
  }),
);

test('a wrench on a serial line: from the order to the signed record', async () => {
  const scheduler = virtualScheduler();
  const link = { kind: 'serial', baud: 9_600, by: { how: 'sent' } };
  const lines = { ...CATALOGUE['lines of text'], link };
  const profile = good(serialProfile(good(parseProfile(JSON.stringify(lines), 'wrench')), 'wrench'));
  let take: (bytes: Uint8Array) => void = () => {};
  let gone: (end: LinkEnd) => void = () => {};
  const opened: OpenPort = {
    simulated: true,
    down: new Promise((resolve) => {
      gone = resolve;
    }),
    listen: (listener) => {
      take = listener;
    },
    write: () => Promise.resolve(ok(undefined)),
    close: () => Promise.resolve(gone({ reason: 'ended-by-station' })),
  };
  const port: Port = {
    // Each line in two pieces, as a busy machine hands them over.
    send: (bytes) => {
      take(bytes.subarray(0, 5));
      take(bytes.subarray(5));
    },
    heard: () => {},
    unplug: () => Promise.resolve(),
    plug: () => Promise.resolve(),
  };
  const tool = serialTool({
    id: 'wrench',
    language: overSerial(profile),
    port: '/dev/ttyS9',
    clock: scheduler,
    after: scheduler.after,
    open: () => Promise.resolve(ok(opened)),
    random: () => 0,
  });
  holds(await jobWith(scheduler, tool, { profile, port }, Buffer.from('T+029.x0Nm\r\n')), 'foreign');
});
