import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { LinkState } from '../../../drivers/driver.ts';
import { readRecording } from '../../../drivers/replay/file.ts';
import { parseRecording } from '../../../drivers/replay/recording.ts';
import { type Pace, replayTool } from '../../../drivers/replay/tool.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import type { Reading } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { write } from './write.ts';

const RECORDED: readonly Reading[] = [
  { kind: 'value', n: 1, atUs: 1_000_000, counts: 10 },
  { kind: 'value', n: 2, atUs: 1_010_000, counts: 20 },
  { kind: 'missed', n: 3, atUs: 3_010_000, fromUs: 1_010_000, reason: 'out-of-reach' },
  { kind: 'value', n: 4, atUs: 3_010_000, counts: 30 },
];

async function start(pace: Pace, recorded: readonly Reading[] = RECORDED) {
  const scheduler = virtualScheduler();
  await scheduler.runFor(500);
  const recording = good(parseRecording(write(recorded), 'x'));
  const tool = replayTool({ id: 'wrench', recording, pace, clock: scheduler, after: scheduler.after });
  const heard: { readonly reading: Reading; readonly heardUs: number }[] = [];
  const links: LinkState[] = [];
  let completed = false;
  tool.link$.subscribe((link) => links.push(link));
  tool.readings$.subscribe({
    next: (reading) => heard.push({ reading, heardUs: scheduler.nowUs() }),
    complete: () => {
      completed = true;
    },
  });
  return {
    scheduler,
    tool,
    heard,
    links,
    states: () => links.map((link) => link.state),
    completed: () => completed,
  };
}

describe('a replayed tool', () => {
  test('says that it is a file, whatever link it was recorded over', async () => {
    const { tool, links } = await start('at-once');
    const description = good(await tool.connect());
    expect(description).toMatchObject({
      serial: 'W-1',
      exponent: -2,
      link: { kind: 'file', authenticated: false },
    });
    expect(description.link).not.toHaveProperty('address');
    expect(links).toEqual([{ state: 'linked', description }]);
    expect([tool.quantity, tool.timing]).toEqual(['torque', { stamps: 'arrival' }]);
    await tool.close();
  });

  test.each<[string, Pace, readonly number[]]>([
    ['as recorded', { speed: 1 }, [0, 10_000, 2_010_000, 2_010_000]],
    ['ten times as fast', { speed: 10 }, [0, 1_000, 201_000, 201_000]],
    ['at half speed', { speed: 0.5 }, [0, 20_000, 4_020_000, 4_020_000]],
    ['at once', 'at-once', [0, 0, 0, 0]],
  ])('plays %s; the stamps keep their distances from the start', async (_name, pace, offsets) => {
    const { scheduler, tool, heard, completed, states } = await start(pace);
    good(await tool.connect());
    const startUs = scheduler.nowUs();
    await scheduler.run();
    expect(heard.map(({ heardUs }) => heardUs - startUs)).toEqual(offsets);
    expect(heard.map(({ reading }) => reading)).toEqual([
      { kind: 'value', n: 1, atUs: startUs, counts: 10 },
      { kind: 'value', n: 2, atUs: startUs + 10_000, counts: 20 },
      { kind: 'missed', n: 3, atUs: startUs + 2_010_000, fromUs: startUs + 10_000, reason: 'out-of-reach' },
      { kind: 'value', n: 4, atUs: startUs + 2_010_000, counts: 30 },
    ]);
    expect(completed()).toBe(true);
    expect(states()).toEqual(['linked', 'closed']);
  });

  test('nothing is heard before the connection has resolved', async () => {
    const { scheduler, tool, heard } = await start('at-once');
    await tool.connect();
    expect(heard).toEqual([]);
    await scheduler.run();
    expect(heard).toHaveLength(4);
  });

  test('a long one at once still lets others have their turn', async () => {
    const many = Array.from(
      { length: 5_000 },
      (_, i): Reading => ({ kind: 'value', n: i + 1, atUs: i, counts: i }),
    );
    const { scheduler, tool, heard } = await start('at-once', many);
    const atTurns: number[] = [];
    await tool.connect();
    for (let i = 0; i < 5; i++) scheduler.after(0, () => atTurns.push(heard.length));
    await scheduler.run();
    expect(heard.map(({ reading }) => reading.n)).toEqual(many.map((reading) => reading.n));
    expect(atTurns[0]).toBeLessThan(many.length);
  });

  test('an empty recording ends at once', async () => {
    const { scheduler, tool, states } = await start({ speed: 1 }, []);
    good(await tool.connect());
    await scheduler.run();
    expect(states()).toEqual(['linked', 'closed']);
  });

  test('closed in the middle it stops, leaves no timer and can be closed again', async () => {
    const { scheduler, tool, heard, completed, states } = await start({ speed: 1 });
    await tool.connect();
    await scheduler.runFor(15_000);
    await tool.close();
    await scheduler.run();
    await tool.close();
    expect(heard).toHaveLength(2);
    expect(completed()).toBe(true);
    expect(states()).toEqual(['linked', 'closed']);
  });

  test('closed by a listener it stops within the same go', async () => {
    const { scheduler, tool, heard } = await start('at-once');
    tool.readings$.subscribe(() => void tool.close());
    await tool.connect();
    await scheduler.run();
    expect(heard).toHaveLength(1);
  });

  test.each([0, -1, Number.NaN])('no recording plays at speed %d', async (speed) => {
    await expect(start({ speed })).rejects.toThrow(RangeError);
  });
});

const MEANING = { tool: 'wrench', quantity: 'torque' } as const;

describe('reading the file', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'recording-'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test('gives the recording', async () => {
    const file = join(folder, 'run.jsonl');
    await writeFile(file, write(RECORDED));
    expect(good(await readRecording(file, MEANING)).readings).toEqual(RECORDED);
  });

  test('one that is not there and one that is no text are problems that name the file', async () => {
    const file = join(folder, 'run.jsonl');
    expect(await readRecording(file, MEANING)).toMatchObject({
      ok: false,
      error: { code: 'file-unreadable', where: file },
    });
    await writeFile(file, Buffer.from([0x7b, 0xff, 0x0a]));
    expect(await readRecording(file, MEANING)).toMatchObject({
      ok: false,
      error: { code: 'file-unreadable', message: expect.stringContaining('UTF-8') },
    });
  });
});
