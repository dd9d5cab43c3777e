import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openTools, type ToolEntry } from '../../drivers/index.ts';
import { ProblemError } from '../../src/problem.ts';
import { write } from './replay/write.ts';

const clock = { nowUs: () => 0 };
const replay = (change: Partial<ToolEntry> = {}): ToolEntry => ({
  id: 'wrench',
  quantity: 'torque',
  driver: { use: 'replay', file: 'run.jsonl', speed: 1 },
  ...change,
});

describe('opening the tools of a station', () => {
  let base: string;
  beforeEach(async () => {
    base = await mkdtemp(join(tmpdir(), 'station-'));
    await writeFile(join(base, 'run.jsonl'), write([{ kind: 'value', n: 1, atUs: 0, counts: 5 }]));
  });
  afterEach(() => rm(base, { recursive: true }));

  test('a recording is found beside the station file, without anything of Bluetooth being loaded', async () => {
    const { tools, close } = await openTools([replay()], { base, clock });
    expect(tools.map(({ id, driver, quantity }) => ({ id, driver, quantity }))).toEqual([
      { id: 'wrench', driver: 'replay', quantity: 'torque' },
    ]);
    const loaded = Object.keys(createRequire(import.meta.url).cache);
    expect(loaded.filter((path) => path.includes('noble'))).toEqual([]);
    await close();
  });

  test('a recording of another quantity is refused, and nothing stays open', async () => {
    const opening = openTools([replay(), replay({ id: 'gauge', quantity: 'length' })], { base, clock });
    await expect(opening).rejects.toThrow(ProblemError);
    await expect(opening).rejects.toMatchObject({ problem: { code: 'tool-other-quantity', where: 'gauge' } });
  });

  test('a file that is not there is the problem of the one who asked', async () => {
    const driver = { use: 'replay', file: 'other.jsonl', speed: 1 } as const;
    await expect(openTools([replay({ driver })], { base, clock })).rejects.toMatchObject({
      problem: { code: 'file-unreadable', where: join(base, 'other.jsonl') },
    });
  });
});
